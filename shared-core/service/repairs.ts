import type { RepairEdits } from '../engine/repairs.js';
import {
  batchEdits,
  batchesFor,
  preferredRepairs,
  repairEdits,
  repairsOf,
  shopRepairEdits,
} from '../engine/repairs.js';
import type { JobAnalysis } from '../engine.js';
import { tell } from '../words/message.js';
import type { AnalysedFile } from './file.js';

/** What tells one batch of repairs from all others of a job. */
export interface BatchKey {
  readonly key: string;
  readonly rule: string;
  readonly carcass: number | null;
}

/** A repair of one finding, with its edits; or a batch that it belongs to, whose edits take a while to work out. */
export type OfferedRepair =
  | { readonly title: string; readonly preferred: boolean; readonly edits: RepairEdits }
  | { readonly title: string; readonly batch: BatchKey };

/**
 * The repairs of the findings chosen by their index in `knownFindings`, finding by finding; a batch only with the first.
 * @param isAsked chooses
 */
export function repairsFor(
  file: AnalysedFile,
  isAsked: (index: number) => boolean,
): readonly { readonly finding: number; readonly repairs: readonly OfferedRepair[] }[] {
  if (file.kind === 'shop') {
    const { text, findings, shop } = file.analysis;
    return findings.flatMap(({ repairs }, finding) => {
      if (!isAsked(finding)) return [];
      const offered = repairs.map((repair): OfferedRepair => ({
        title: tell(repair.title, shop.unit),
        preferred: repair.preferred,
        edits: { job: [], shop: shopRepairEdits(text, [repair]) },
      }));
      return [{ finding, repairs: offered }];
    });
  }
  const { analysis } = file;
  const offered = new Set<string>();
  return analysis.known().flatMap((one, finding) => {
    if (!isAsked(finding)) return [];
    const own = one.finding.repairs.flatMap((repair): OfferedRepair[] => {
      const edits = repairEdits(analysis, { carcass: one.carcass, repair });
      return edits === null ? [] : [{ title: tell(repair.title, analysis.unit), preferred: repair.preferred, edits }];
    });
    const batches = batchesFor(analysis, one).flatMap(({ title: words, key, rule, carcass }): OfferedRepair[] => {
      const title = tell(words, analysis.unit);
      if (offered.has(title)) return [];
      offered.add(title);
      return [{ title, batch: { key, rule, carcass } }];
    });
    return [{ finding, repairs: [...own, ...batches] }];
  });
}

/** The edits of a batch: each of its repairs is tried. */
export function editsOfBatch(analysis: JobAnalysis, batch: BatchKey): RepairEdits {
  return batchEdits(analysis, repairsOf(analysis, batch));
}

/** The edits that may be taken without asking: the preferred repair of every finding that has one. */
export function editsWithoutChoice(file: AnalysedFile): RepairEdits {
  if (file.kind === 'job') return batchEdits(file.analysis, preferredRepairs(file.analysis));
  const { text, findings } = file.analysis;
  const repairs = findings.flatMap((finding) => finding.repairs.find(({ preferred }) => preferred) ?? []);
  return { job: [], shop: shopRepairEdits(text, repairs) };
}
