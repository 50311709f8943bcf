import type { Diagnostic, Range } from 'vscode-languageserver';
import { DiagnosticSeverity } from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { knownFindings, type Severity, type ToldFinding } from '../../shared-core/service.js';
import type { ClientAbilities } from '../abilities.js';
import { NOT_OPEN, rangeOf } from '../text.js';
import type { OpenFile } from '../workspace.js';

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

/** The findings of a file that are known without waiting and that the reader wants, each where it stands. */
export function diagnostics(file: OpenFile, abilities: Abilities): Diagnostic[] {
  return diagnosticsInOrder(file, abilities).filter((one) => one !== null);
}

/** The same in the order of `knownFindings`; null for those that the reader has turned off. */
export function diagnosticsInOrder(file: OpenFile, abilities: Abilities): readonly (Diagnostic | null)[] {
  const found = knownFindings(file, MOST);
  const speaksOfShop = found.some((one) => one?.related.some(({ where }) => where.file === 'shop'));
  const shop = speaksOfShop ? shopOf(file) : null;
  return found.map((one) => (one === null ? null : diagnostic(one, file.document, shop, abilities)));
}

/** The shop file that a job is read with, which need not be open; null for the built-in shop. */
export function shopOf(file: OpenFile): TextDocument | null {
  if (file.kind === 'shop') return file.document;
  const { uri, text } = file.analysis.used;
  return uri === null ? null : TextDocument.create(uri, 'borewright-shop', NOT_OPEN, text);
}

function diagnostic(
  { rule, severity, message, at, related, carcass, panel, bores }: ToldFinding,
  own: TextDocument,
  shop: TextDocument | null,
  { related: showsRelated, codeDescription, reference }: Abilities,
): Diagnostic {
  const data: DiagnosticData = { rule, carcass, panel, bores };
  const range = (document: TextDocument, { start, end }: ToldFinding['at']): Range => rangeOf(document, start, end);
  return {
    range: range(own, at),
    severity: SEVERITIES[severity],
    source: SOURCE,
    code: rule,
    ...(codeDescription && reference !== null && { codeDescription: { href: reference.address('findings', rule) } }),
    message,
    ...(showsRelated &&
      related.length > 0 && {
        relatedInformation: related.map((one) => {
          const document = one.where.file === 'shop' && shop !== null ? shop : own;
          return { location: { uri: document.uri, range: range(document, one.where) }, message: one.message };
        }),
      }),
    data,
  };
}
