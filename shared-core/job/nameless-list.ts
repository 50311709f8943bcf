import type { Repair, Rewrite } from '../document/finding.js';
import { columnOf, nextLineStart, writtenLines } from '../document/lines.js';
import type { Part } from '../document/place.js';
import type { MapNode, TreeNode } from '../document/tree.js';
import { freeNames, lineFeedOf } from './free-names.js';
import { say } from './messages.js';

/** Columns between a carcass’s name and what it stands in, where the text shows no other. */
const STEP = 2;

/**
 * The offer to name the carcasses of a list of maps: `- kind: base` with its keys below becomes `carcass-1:` above them. None
 * where an item is anything else, or has a name that another repair makes use of.
 * @param owner where the key of the list stands
 */
export function namesForList(text: string, node: TreeNode, owner: number, part: Part): readonly Repair[] {
  if (node.kind !== 'list' || node.flow || node.alias !== undefined || node.dashes === null) return [];
  const { dashes } = node;
  const maps = node.items.filter((item): item is MapNode => item.kind === 'map' && item.alias === undefined);
  if (maps.length === 0 || maps.length < node.items.length) return [];
  if (maps.some(({ entries }) => entries.length === 0 || entries.some(({ key }) => key === 'name'))) return [];
  const names = freeNames(text, maps.length);
  // A list may stand in the column of its key; names may not.
  const by = columnOf(text, dashes[0]!) > columnOf(text, owner) ? 0 : STEP;
  const rewrites = maps.flatMap((item, i): readonly Rewrite[] => {
    const dash = dashes[i]!;
    const { start } = item.place;
    const name = `${' '.repeat(by)}${names[i]!}:`;
    // Keys behind the dash go to a line of their own.
    const behind = item.flow ? ' ' : `${lineFeedOf(text)}${' '.repeat(columnOf(text, start) + by)}`;
    return [
      { part, start: dash, end: start, text: `${name}${behind}` },
      ...shifted(text, nextLineStart(text, dash), dashes[i + 1] ?? item.place.end, by).map((one) => ({ part, ...one })),
    ];
  });
  return [{ title: say.nameThem({ names }), changes: [], rewrites, preferred: false }];
}

/** Every line that begins in this run and is not blank, so many columns farther in. */
function shifted(text: string, from: number, to: number, by: number): readonly Omit<Rewrite, 'part'>[] {
  if (by === 0) return [];
  return writtenLines(text, from, to).map((at) => ({ start: at, end: at, text: ' '.repeat(by) }));
}
