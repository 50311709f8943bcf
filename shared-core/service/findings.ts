import type { Span } from '../document/structure.js';
import type { FileFinding, JobAnalysis, Where } from '../engine.js';
import { boresConcerned, type Finding, type Severity } from '../findings/finding.js';
import { loudness } from '../findings/wanted.js';
import { tell } from '../words/message.js';
import { asItIs, type Told } from '../words/told.js';
import { say } from './messages.js';
import type { AnalysedFile } from './file.js';

/** A finding in words, where a reader of the file sees it. */
export interface ToldFinding {
  readonly rule: string;
  readonly severity: Severity;
  readonly message: Told;
  readonly at: Span;
  /** Other places that it speaks of; 'shop' is the shop file of a job, or the file itself where that is a shop file. */
  readonly related: readonly { readonly where: Where; readonly message: string }[];
  /** null where it is of no one carcass or panel. */
  readonly carcass: string | null;
  readonly panel: string | null;
  readonly bores: readonly string[];
}

/**
 * The findings of a file that are known without waiting, in the order of its text; no more than `most`. Null stands for those
 * that the reader does not want told.
 */
export function knownFindings(file: AnalysedFile, most: number): readonly (ToldFinding | null)[] {
  if (file.kind === 'job') return toldOf(file.analysis, file.analysis.known().slice(0, most));
  const { findings, reader, wishes } = file.analysis;
  return findings.slice(0, most).map((finding) => {
    const severity = loudness(finding, wishes.findings);
    if (severity === null) return null;
    const { start, end } = finding.place;
    const related = finding.related.map(({ place, message }) => ({
      where: { file: 'shop', start: place.start, end: place.end } as const,
      message: tell(message, reader),
    }));
    return told(finding, severity, tell(finding.message, reader), { start, end }, related, null);
  });
}

/** Every finding of a file, in the order of its text; of a job also what takes a while to find. */
export function allFindings(file: AnalysedFile): readonly ToldFinding[] {
  const all = file.kind === 'job' ? toldOf(file.analysis, file.analysis.findings()) : knownFindings(file, Infinity);
  return all.filter((one) => one !== null);
}

/** How many errors a job has, of those that the reader wants told. */
export const errorsOf = (analysis: JobAnalysis): number =>
  analysis.findings().filter(({ finding }) => loudness(finding, analysis.wishes.findings) === 'error').length;

/** Findings of a job in words; null for those that the reader does not want told. */
export function toldOf(analysis: JobAnalysis, findings: readonly FileFinding[]): readonly (ToldFinding | null)[] {
  return findings.map(({ finding, carcass }) => {
    const severity = loudness(finding, analysis.wishes.findings);
    if (severity === null) return null;
    const related = finding.related.flatMap((one): ToldFinding['related'] => {
      const where = analysis.locate(one.place, one.carcass ?? carcass);
      // The built-in shop has no file to be opened.
      if (where.file === 'shop' && analysis.used.uri === null) return [];
      return [{ where, message: tell(one.message, analysis.reader) }];
    });
    const name = carcass === null ? null : (analysis.carcasses[carcass]?.name ?? null);
    const at = shownAt(analysis, { finding, carcass });
    return told(finding, severity, tell(finding.message, analysis.reader), at, related, name);
  });
}

/** Its repairs are not looked at: that tries them. */
function told(
  finding: Finding,
  severity: Severity,
  message: Told,
  at: Span,
  related: ToldFinding['related'],
  carcass: string | null,
): ToldFinding {
  const { rule, panel } = finding;
  return { rule, severity, message, at, related, carcass, panel: panel ?? null, bores: boresConcerned(finding) };
}

/** A finding in one line, without the place in its file: 'error near-edge: ... (base-1, left)'. */
export function findingWords({
  severity,
  rule,
  message,
  carcass,
  panel,
}: Omit<ToldFinding, 'at' | 'related' | 'bores'>): Told {
  const where = [carcass, panel].filter((word) => word !== null && word !== '').join(', ');
  return asItIs(`${severity} ${rule}: ${message}${where === '' ? '' : ` (${where})`}`);
}

/** '2 files, 1 error, 3 warnings, 1 info.'; the last only where there is any. */
export function findingTotals(files: number, findings: readonly Pick<ToldFinding, 'severity'>[]): Told {
  const count = (severity: Severity): number => findings.filter((one) => one.severity === severity).length;
  const figures = { files, errors: count('error'), warnings: count('warning'), infos: count('info') };
  return tell(say.findingTotals(figures), 'mm');
}

/** Where a finding stands in the job file; one in the shop file is shown where the job names its shop. */
function shownAt(analysis: JobAnalysis, { finding, carcass }: FileFinding): Span {
  const { start, end } =
    finding.place.part === 'shop'
      ? analysis.locate(analysis.head.shopRef?.place ?? analysis.head.place, null)
      : analysis.locate(finding.place, carcass);
  return { start, end };
}
