import type { Location, Position } from 'vscode-languageserver';
import { locationOf, type Names, named } from '../names.js';
import type { OpenFile } from '../workspace.js';

/** Where the thing of the name at a position is described; of a shop file, its first line. */
export function definition(file: OpenFile, position: Position, names: Names): Location[] {
  const mention = names.at(file, position);
  if (mention === null) return [];
  if (mention.of === 'shop-file') {
    const shop = names.shopOf(named(file));
    const start = { line: 0, character: 0 };
    return shop === null ? [] : [{ uri: shop.document.uri, range: { start, end: start } }];
  }
  return names
    .everywhere(file, mention)
    .filter((stand) => stand.mention.gives)
    .map(locationOf);
}
