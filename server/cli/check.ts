import { tell } from '../../shared-core/words/message.js';
import { say } from './messages.js';
import type { Range } from 'vscode-languageserver';
import { allFindings, findingTotals, findingWords, type Severity } from '../../shared-core/service.js';
import { asItIs, type Told } from '../../shared-core/words/told.js';
import { rangeOf } from '../text.js';
import type { OpenFile } from '../workspace.js';
import type { FoundFile } from './files.js';
import { openAll } from './files.js';
import type { Outcome } from './run.js';
import { asJson, CouldNotRun, readArguments, readFormat } from './run.js';

/** One finding as the JSON of `check` shows it; positions are zero-based, in UTF-16 code units. */
interface ShownFinding {
  readonly rule: string;
  readonly severity: Severity;
  readonly message: Told;
  readonly range: Range;
  readonly carcass?: string;
  readonly panel?: string;
}
interface ShownFile {
  readonly file: string;
  readonly findings: readonly ShownFinding[];
}

/** `borewright check PATH... [--format text|json]` */
export function check(args: readonly string[]): Outcome {
  const { options, rest } = readArguments(args, ['format']);
  const format = readFormat(options.format);
  if (rest.length === 0) throw new CouldNotRun(say.jobOrFolder());
  const { found, missing } = openAll(rest);
  const files = found.map(({ path, file }: FoundFile): ShownFile => ({
    file: path,
    findings: findingsOf(file),
  }));
  const all = files.flatMap(({ findings }) => findings);
  const errors = all.some(({ severity }) => severity === 'error');
  return {
    // Where nothing was found there is nothing to sum up.
    output: found.length === 0 ? '' : format === 'json' ? asJson({ files }) : asText(files),
    errors: missing.map((why) => `${tell(say.refused({ why }), 'mm')}\n`).join(''),
    code: missing.length > 0 ? 2 : errors ? 1 : 0,
  };
}

/** The findings of a file, with their places in lines and columns. */
export function findingsOf(file: OpenFile): readonly ShownFinding[] {
  return allFindings(file).map(({ rule, severity, message, at, carcass, panel }): ShownFinding => ({
    rule,
    severity,
    message,
    range: rangeOf(file.document, at.start, at.end),
    ...(carcass !== null && { carcass }),
    ...(panel !== null && { panel }),
  }));
}

function asText(files: readonly ShownFile[]): string {
  const lines = files.flatMap(({ file, findings }) => findings.map((finding) => findingLine(file, finding)));
  const all = files.flatMap(({ findings }) => findings);
  return [...lines, findingTotals(files.length, all), ''].join('\n');
}

/** Lines and columns count from one here, as editors show them. */
export function findingLine(file: string, { range: { start }, carcass, panel, ...finding }: ShownFinding): Told {
  const words = findingWords({ ...finding, carcass: carcass ?? null, panel: panel ?? null });
  return asItIs(`${file}:${start.line + 1}:${start.character + 1}: ${words}`);
}
