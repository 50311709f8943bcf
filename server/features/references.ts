import type { Location, Position } from 'vscode-languageserver';
import { locationOf, type Names } from '../names.js';
import type { OpenFile } from '../workspace.js';

/** Every place, in all files of the workspace, that asks for the thing of the name at a position. */
export function references(file: OpenFile, position: Position, withDescription: boolean, names: Names): Location[] {
  const mention = names.at(file, position);
  if (mention === null) return [];
  return names
    .everywhere(file, mention)
    .filter((stand) => withDescription || !stand.mention.gives)
    .map(locationOf);
}
