import type { DocumentSymbol } from 'vscode-languageserver';
import { SymbolKind } from 'vscode-languageserver';
import { outlineOf, type Outlined } from '../../shared-core/service.js';
import { rangeOf } from '../text.js';
import type { OpenFile } from '../workspace.js';

const KINDS: Readonly<Record<Outlined['sort'], SymbolKind>> = {
  carcass: SymbolKind.Class,
  panel: SymbolKind.Field,
  section: SymbolKind.Module,
  thing: SymbolKind.Object,
};

/** Outline: of a job its carcasses and under each its panels; of a shop its sections and the things named in them. */
export function symbols(file: OpenFile): DocumentSymbol[] {
  const symbol = ({ sort, name, detail, whole, own, within }: Outlined): DocumentSymbol => ({
    name,
    ...(detail !== undefined && { detail }),
    kind: KINDS[sort],
    range: rangeOf(file.document, whole.start, whole.end),
    selectionRange: rangeOf(file.document, own.start, own.end),
    ...(sort !== 'panel' && { children: within.map(symbol) }),
  });
  return outlineOf(file).map(symbol);
}
