import type { Span } from '../document/structure.js';
import type { FileFinding, JobAnalysis, Where } from '../engine.js';
import { boresConcerned, type Finding, type Severity } from '../findings/finding.js';
import { counted } from '../words/english.js';
import { tell } from '../words/message.js';
import type { AnalysedFile } from './file.js';

/** A finding in words, where a reader of the file sees it. */
export interface Told {
  readonly rule: string;
  readonly severity: Severity;
  readonly message: string;
  readonly at: Span;
  /** Other places that it speaks of; 'shop' is the shop file of a job, or the file itself where that is a shop file. */
  readonly related: readonly { readonly where: Where; readonly message: string }[];
  /** null where it is of no one carcass or panel. */
  readonly carcass: string | null;
  readonly panel: string | null;
  readonly bores: readonly string[];
}

/** The findings of a file that are known without waiting, in the order of its text; no more than `most`. */
export function knownFindings(file: AnalysedFile, most: number): readonly Told[] {
  if (file.kind === 'job') return toldOf(file.analysis, file.analysis.known().slice(0, most));
  const { findings, shop } = file.analysis;
  return findings.slice(0, most).map((finding) => {
    const { start, end } = finding.place;
    const related = finding.related.map(({ place, message }) => ({
      where: { file: 'shop', start: place.start, end: place.end } as const,
      message: tell(message, shop.unit),
    }));
    return told(finding, tell(finding.message, shop.unit), { start, end }, related, null);
  });
}

/** Every finding of a file, in the order of its text; of a job also what takes a while to find. */
export function allFindings(file: AnalysedFile): readonly Told[] {
  return file.kind === 'job' ? toldOf(file.analysis, file.analysis.findings()) : knownFindings(file, Infinity);
}

/** Findings of a job in words. */
export function toldOf(analysis: JobAnalysis, findings: readonly FileFinding[]): readonly Told[] {
  return findings.map(({ finding, carcass }) => {
    const related = finding.related.flatMap((one): Told['related'] => {
      const where = analysis.locate(one.place, one.carcass ?? carcass);
      // The built-in shop has no file to be opened.
      if (where.file === 'shop' && analysis.used.uri === null) return [];
      return [{ where, message: tell(one.message, analysis.unit) }];
    });
    const name = carcass === null ? null : (analysis.carcasses[carcass]?.name ?? null);
    const at = shownAt(analysis, { finding, carcass });
    return told(finding, tell(finding.message, analysis.unit), at, related, name);
  });
}

function told(finding: Finding, message: string, at: Span, related: Told['related'], carcass: string | null): Told {
  const { rule, severity, panel } = finding;
  return { rule, severity, message, at, related, carcass, panel: panel ?? null, bores: boresConcerned(finding) };
}

/** A finding in one line, without the place in its file: 'error near-edge: ... (base-1, left)'. */
export function findingWords({
  severity,
  rule,
  message,
  carcass,
  panel,
}: Omit<Told, 'at' | 'related' | 'bores'>): string {
  const where = [carcass, panel].filter((word) => word !== null && word !== '').join(', ');
  return `${severity} ${rule}: ${message}${where === '' ? '' : ` (${where})`}`;
}

/** '2 files, 1 error, 3 warnings, 1 info.'; the last only where there is any. */
export function findingTotals(files: number, findings: readonly Pick<Told, 'severity'>[]): string {
  const count = (severity: Severity): number => findings.filter((one) => one.severity === severity).length;
  const total = [
    counted(files, 'file'),
    counted(count('error'), 'error'),
    counted(count('warning'), 'warning'),
    ...(count('info') > 0 ? [counted(count('info'), 'info', 'info')] : []),
  ];
  return `${total.join(', ')}.`;
}

/** Where a finding stands in the job file; one in the shop file is shown where the job names its shop. */
function shownAt(analysis: JobAnalysis, { finding, carcass }: FileFinding): Span {
  const { start, end } =
    finding.place.part === 'shop'
      ? analysis.locate(analysis.head.shopRef?.place ?? analysis.head.place, null)
      : analysis.locate(finding.place, carcass);
  return { start, end };
}
