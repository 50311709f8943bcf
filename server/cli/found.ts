import type { Range } from 'vscode-languageserver';
import { allFindings, findingWords, type Severity } from '../../shared-core/service.js';
import { asItIs, type Told } from '../../shared-core/words/told.js';
import { rangeOf } from '../text.js';
import type { OpenFile } from '../workspace.js';

/** One finding as the JSON of `check` shows it; positions are zero-based, in UTF-16 code units. */
export interface ShownFinding {
  readonly rule: string;
  readonly severity: Severity;
  readonly message: Told;
  readonly range: Range;
  readonly carcass?: string;
  readonly panel?: string;
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

/** Lines and columns count from one here, as editors show them. */
export function findingLine(file: string, { range: { start }, carcass, panel, ...finding }: ShownFinding): Told {
  const words = findingWords({ ...finding, carcass: carcass ?? null, panel: panel ?? null });
  return asItIs(`${file}:${start.line + 1}:${start.character + 1}: ${words}`);
}
