import type { TextEdit } from '../document/pieces.js';
import {
  batchEdits,
  batchesFor,
  inOneGo,
  isOfShop,
  lengthOfText,
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
  | {
      readonly title: string;
      readonly preferred: boolean;
      /** The file itself, or the shop file of a job. */
      readonly in: 'own' | 'shop';
      readonly edits: readonly TextEdit[];
    }
  | { readonly title: string; readonly batch: BatchKey };

/**
 * The repairs of the findings chosen by their index in `knownFindings`, finding by finding; a batch only with the first. Of very
 * many no more than can be tried in one go.
 * @param isAsked chooses
 */
export function repairsFor(
  file: AnalysedFile,
  isAsked: (index: number) => boolean,
): readonly { readonly finding: number; readonly repairs: readonly OfferedRepair[] }[] {
  if (file.kind === 'shop') {
    const { text, findings, shop } = file.analysis;
    const look = inOneGo(() => text.length);
    return findings.flatMap((one, finding) => {
      if (!isAsked(finding)) return [];
      const offered = look({ finding: one }).map((repair): OfferedRepair => ({
        title: tell(repair.title, shop.unit),
        preferred: repair.preferred,
        in: 'own',
        edits: shopRepairEdits(text, [repair]),
      }));
      return [{ finding, repairs: offered }];
    });
  }
  const { analysis } = file;
  const offered = new Set<string>();
  const look = inOneGo(lengthOfText(analysis));
  return analysis.known().flatMap((one, finding) => {
    if (!isAsked(finding)) return [];
    const repairs = look(one);
    if (repairs.length === 0) return [];
    const own = repairs.flatMap((repair): OfferedRepair[] => {
      const { preferred } = repair;
      const title = tell(repair.title, analysis.unit);
      if (isOfShop(repair))
        return [{ title, preferred, in: 'shop', edits: shopRepairEdits(analysis.used.text, [repair]) }];
      const edits = repairEdits(analysis, { carcass: one.carcass, repair });
      return edits === null ? [] : [{ title, preferred, in: 'own', edits }];
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
export function editsOfBatch(analysis: JobAnalysis, batch: BatchKey): readonly TextEdit[] {
  return batchEdits(analysis, repairsOf(analysis, batch));
}

/** The edits that may be taken without asking: the preferred repair of every finding that has one and that the reader wants told. */
export function editsWithoutChoice(file: AnalysedFile): readonly TextEdit[] {
  const isWanted = (rule: string): boolean => file.analysis.wishes.findings.get(rule) !== null;
  if (file.kind === 'job') return batchEdits(file.analysis, preferredRepairs(file.analysis, isWanted));
  const { text, findings } = file.analysis;
  const look = inOneGo(() => text.length);
  const repairs = findings.flatMap((finding) =>
    isWanted(finding.rule) ? (look({ finding }).find(({ preferred }) => preferred) ?? []) : [],
  );
  return shopRepairEdits(text, repairs);
}
