import type { Repair, Rewrite } from '../../document/finding.js';
import type { Part } from '../../document/place.js';
import { keyText } from '../../document/scalar-text.js';
import type { MapNode, TreeNode } from '../../document/tree.js';
import { say } from '../messages.js';

// Dashes make a list of what belongs into one map.

/** The offer to write the keys of a list's items as one map; none where they would meet there. */
export function withoutDashes(node: TreeNode, part: Part): readonly Repair[] {
  const list = listOfMaps(node);
  if (list === null) return [];
  const keys = list.flatMap(({ item }) => item.entries.map(({ key }) => key));
  if (new Set(keys).size < keys.length) return [];
  const rewrites = list.map(({ dash }): Rewrite => ({ part, start: dash, end: dash + 1, text: ' ' }));
  return [{ title: say.withoutDashes({ count: list.length }), changes: [], rewrites, preferred: true }];
}

/** The same where a map by names is asked for: `- name: N` with its keys below becomes `N:` with them. */
export function namedWithoutDashes(node: TreeNode, part: Part): readonly Repair[] {
  const list = listOfMaps(node);
  if (list === null) return [];
  if (list.every(({ item }) => item.entries.length === 1 && item.entries[0]!.value?.kind === 'map'))
    return withoutDashes(node, part);
  const names: string[] = [];
  const rewrites: Rewrite[] = [];
  for (const { dash, item } of list) {
    const [first, second] = item.entries;
    if (first?.key !== 'name' || first.value?.kind !== 'scalar' || second === undefined) return [];
    names.push(first.value.text);
    rewrites.push({ part, start: dash, end: first.place.end, text: `${keyText(first.value.text, true)}:` });
  }
  if (new Set(names).size < names.length) return [];
  return [{ title: say.nameAsKey({ count: names.length }), changes: [], rewrites, preferred: true }];
}

interface DashedMap {
  readonly dash: number;
  readonly item: MapNode;
}

/** Null where the node is anything else than a list of maps, each below or behind its dash. */
function listOfMaps(node: TreeNode): readonly DashedMap[] | null {
  if (node.kind !== 'list' || node.alias !== undefined) return null;
  const { dashes, items } = node;
  if (dashes === null || items.length === 0) return null;
  const maps = items.flatMap((item, i): DashedMap[] =>
    item.kind === 'map' && !item.flow && item.alias === undefined ? [{ dash: dashes[i]!, item }] : [],
  );
  // Keys of two columns make no one map.
  const steps = new Set(maps.map(({ dash, item }) => item.place.start - dash));
  return maps.length === items.length && steps.size === 1 ? maps : null;
}
