import type { Diagnostic, DiagnosticRelatedInformation, Location, Range } from 'vscode-languageserver';
import { DiagnosticSeverity } from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import type { FileFinding, JobAnalysis } from '../../shared-core/engine.js';
import type { Place } from '../../shared-core/document/place.js';
import type { Finding, Severity } from '../../shared-core/findings/finding.js';
import type { ClientAbilities } from '../abilities.js';
import { rangeOf } from '../text.js';
import type { OpenFile } from '../workspace.js';
import type { Unit } from '../../shared-core/length/units.js';
import { tell } from '../../shared-core/words/message.js';

const SEVERITIES: Readonly<Record<Severity, DiagnosticSeverity>> = {
  error: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  info: DiagnosticSeverity.Information,
};

/** More than this many findings help nobody, and an editor chokes on them. */
const MOST = 1000;

const SOURCE = 'borewright';

/** What a client hands back with a finding's diagnostic. */
export interface DiagnosticData {
  readonly rule: string;
  readonly carcass: string | null;
  readonly panel: string | null;
  readonly bores: readonly string[];
}

type Abilities = Pick<ClientAbilities, 'related' | 'codeDescription' | 'reference'>;

/** The findings of a file that are known without waiting, each where it stands. */
export function diagnostics(file: OpenFile, abilities: Abilities): Diagnostic[] {
  if (file.kind === 'shop') {
    const range = (place: Place): Range => rangeOf(file.document, place.start, place.end);
    const { unit } = file.analysis.shop;
    return file.analysis.findings.slice(0, MOST).map((finding) => {
      const related = finding.related.map(({ place, message }) => ({
        location: { uri: file.document.uri, range: range(place) },
        message: tell(message, unit),
      }));
      return diagnostic(finding, unit, null, range(finding.place), related, abilities);
    });
  }
  const { analysis } = file;
  const places = new JobPlaces(file.document, analysis);
  return analysis
    .known()
    .slice(0, MOST)
    .map(({ finding, carcass }) => {
      const related = finding.related.flatMap((one): DiagnosticRelatedInformation[] => {
        const location = places.location(one.place, one.carcass ?? carcass);
        return location === null ? [] : [{ location, message: tell(one.message, analysis.unit) }];
      });
      const name = carcass === null ? null : (analysis.carcasses[carcass]?.name ?? null);
      return diagnostic(finding, analysis.unit, name, places.range({ finding, carcass }), related, abilities);
    });
}

function diagnostic(
  finding: Finding,
  unit: Unit,
  carcass: string | null,
  range: Range,
  related: DiagnosticRelatedInformation[],
  { related: showsRelated, codeDescription, reference }: Abilities,
): Diagnostic {
  const data: DiagnosticData = { rule: finding.rule, carcass, panel: finding.panel ?? null, bores: finding.bores };
  return {
    range,
    severity: SEVERITIES[finding.severity],
    source: SOURCE,
    code: finding.rule,
    ...(codeDescription && reference !== null && { codeDescription: { href: `${reference}#${finding.rule}` } }),
    message: tell(finding.message, unit),
    ...(showsRelated && related.length > 0 && { relatedInformation: related }),
    data,
  };
}

/** Places of an analysis as the protocol's ranges, in the job or its shop file. */
export class JobPlaces {
  private shop: TextDocument | null = null;

  constructor(
    private readonly document: TextDocument,
    private readonly analysis: JobAnalysis,
  ) {}

  /** Null where the place is in a shop that has no file. */
  location(place: Place, carcass: number | null): Location | null {
    const where = this.analysis.locate(place, carcass);
    if (where.file === 'job') return { uri: this.document.uri, range: rangeOf(this.document, where.start, where.end) };
    const { uri, text } = this.analysis.used;
    if (uri === null) return null;
    this.shop ??= TextDocument.create(uri, 'borewright-shop', 0, text);
    return { uri, range: rangeOf(this.shop, where.start, where.end) };
  }

  /** Where a finding stands in the job file; one in the shop file is shown where the job names its shop. */
  range({ finding, carcass }: FileFinding): Range {
    const { analysis, document } = this;
    const { start, end } =
      finding.place.part === 'shop'
        ? analysis.locate(analysis.head.shopRef?.place ?? analysis.head.place, null)
        : analysis.locate(finding.place, carcass);
    return rangeOf(document, start, end);
  }
}
