import { SymbolKind, type SymbolInformation } from 'vscode-languageserver';
import { baseName } from '../files.js';
import { locationOf, type Names } from '../names.js';

const KINDS: Readonly<Record<string, SymbolKind>> = { carcass: SymbolKind.Class, machine: SymbolKind.Object };
const MOST = 500;

/** Carcasses, boards, fittings, machines and the rest of all files of the workspace whose names hold the letters in this order. */
export function workspaceSymbols(query: string, names: Names): SymbolInformation[] {
  const wanted = query.toLowerCase();
  return names
    .described()
    .filter(({ mention: { name } }) => holds(name.toLowerCase(), wanted))
    .slice(0, MOST)
    .map((stand) => ({
      name: stand.mention.name,
      kind: KINDS[stand.mention.of] ?? SymbolKind.Constant,
      containerName: [baseName(stand.file.uri), ...stand.mention.within].join(', '),
      location: locationOf(stand),
    }));
}

/** True where the letters stand in the name one after the other. */
function holds(name: string, letters: string): boolean {
  let from = 0;
  for (const letter of letters) {
    const at = name.indexOf(letter, from);
    if (at === -1) return false;
    from = at + letter.length;
  }
  return true;
}
