import type { Row } from '../boring/model.js';
import type { Panel } from '../carcass/model.js';
import { roleOf } from '../carcass/roles.js';
import { lineEnd, lineStart } from '../document/lines.js';
import { readCarcassTree } from '../document/parts.js';
import type { Part, Path, Place } from '../document/place.js';
import { readTree } from '../document/read.js';
import type { MapEntry, ScalarNode, TreeNode } from '../document/tree.js';
import { isBalanced } from '../findings/lookups.js';
import { means } from '../job/panel-key.js';
import type { Shop } from '../shop/model.js';
import { lastPlace } from '../length/grid.js';
import type { Micrometres } from '../length/units.js';
import type { JobAnalysis } from './analysis.js';
import type { CarcassAnalysis } from './carcass-analysis.js';

/** What stands at an offset of a job file. */
export interface Cursor {
  /** Which text `path` and the places are counted in; `carcass` is the index where it is 'self'. */
  readonly part: Exclude<Part, 'shop'>;
  readonly carcass: number | null;
  /** From the root of the part to the innermost value at the offset, keys and list indexes; of a carcass, [] is its name or itself. */
  readonly path: Path;
  /** The key at the offset; null where the offset stands at a value. */
  readonly key: { readonly name: string; readonly place: Place } | null;
  /** The scalar at the offset; null where there is none. */
  readonly scalar: ScalarNode | null;
}

/**
 * What stands at an offset, which is put inside the text. In the indentation of a line, or behind its value, the offset
 * counts as that of the line's content.
 */
export function cursorAt(analysis: JobAnalysis, offset: number): Cursor {
  const carcass = analysis.carcassAt(offset);
  const inContent = toContent(analysis.text, offset);
  if (carcass !== null) {
    const part = analysis.parts.carcasses[carcass]!;
    const { entry } = readCarcassTree(part);
    return { ...inEntry(entry, inContent - part.origin), part: 'self', carcass };
  }
  const { head, tail } = analysis.parts;
  const inTail = tail.text !== '' && offset >= tail.start;
  const { root } = inTail ? readTree(tail.text, 'tail') : readTree(head.text, 'head');
  const found = descend(root, inContent - (inTail ? tail.start : 0), []);
  return { ...found, part: inTail ? 'tail' : 'head', carcass: null };
}

type Found = Pick<Cursor, 'path' | 'key' | 'scalar'>;

/** The value of an entry is the root of a carcass's paths; its key is the carcass's name. */
function inEntry(entry: MapEntry | null, offset: number): Found {
  if (entry === null) return { path: [], key: null, scalar: null };
  const { keyPlace } = entry;
  if (holds(keyPlace, offset)) return { path: [], key: { name: entry.key, place: keyPlace }, scalar: null };
  return descend(entry.value, offset, []);
}

/** What stands at an offset of a tree. */
export function descend(node: TreeNode | null, offset: number, path: Path): Found {
  switch (node?.kind) {
    case 'map': {
      const entry = node.entries.find(({ place }) => holds(place, offset));
      if (entry === undefined) return { path, key: null, scalar: null };
      const here = [...path, entry.key];
      if (holds(entry.keyPlace, offset))
        return { path: here, key: { name: entry.key, place: entry.keyPlace }, scalar: null };
      return descend(entry.value, offset, here);
    }
    case 'list': {
      const index = node.items.findIndex(({ place }) => holds(place, offset));
      return index === -1 ? { path, key: null, scalar: null } : descend(node.items[index]!, offset, [...path, index]);
    }
    case 'scalar':
      return { path, key: null, scalar: holds(node.place, offset) ? node : null };
    case undefined:
      return { path, key: null, scalar: null };
  }
}

/** The end counts: that is where a cursor stands after typing. */
function holds(place: Place, offset: number): boolean {
  return place.start <= offset && offset <= place.end;
}

/** Moves an offset out of its line's indentation, trailing space or comment, onto the text between. */
function toContent(text: string, offset: number): number {
  const start = lineStart(text, offset);
  const line = text.slice(start, lineEnd(text, offset));
  const content = line.replace(/\s#.*$/, '').trimEnd();
  const first = content.search(/[^\s-]/);
  if (first === -1) return offset;
  return start + Math.min(Math.max(offset - start, first), content.length);
}

/**
 * The panels that the text at a cursor speaks of, in the order of the carcass; all of them where it speaks of the carcass
 * as a whole.
 */
export function panelsAt(carcass: CarcassAnalysis, path: Path): readonly Panel[] {
  const panels = carcass.carcass?.panels ?? [];
  const chosen = panels.filter((panel) => speaksOf(path, panel));
  return chosen.length > 0 ? chosen : panels;
}

/** True where the path names the panels it speaks of, and does not mean the carcass as a whole. */
export function namesPanels(carcass: CarcassAnalysis, path: Path): boolean {
  return (carcass.carcass?.panels ?? []).some((panel) => speaksOf(path, panel));
}

function speaksOf(path: Path, panel: Panel): boolean {
  const [first, second] = path;
  if (first === 'panels') return typeof second === 'string' && means(second, panel.key);
  const keys: Readonly<Record<string, 'all' | 'each'>> = roleOf(panel).keys;
  const which = typeof first === 'string' && Object.hasOwn(keys, first) ? keys[first] : undefined;
  return which === 'all' || (which === 'each' && touches(path, panel.path));
}

/** One leads to the other. */
function touches(a: Path, b: Path): boolean {
  const common = Math.min(a.length, b.length);
  for (let index = 0; index < common; index += 1) if (a[index] !== b[index]) return false;
  return true;
}

/** A row and how it lies between the ends of its panel. */
export interface RowFacts {
  readonly row: Row;
  /** From the last hole to the far end. */
  readonly rest: Micrometres;
  /** See `isBalanced`. */
  readonly balanced: boolean;
}

/** The rows of a panel, front before rear. */
export function rowFacts(carcass: CarcassAnalysis, panel: Panel, shop: Shop): readonly RowFacts[] {
  const rows = carcass.boring?.rows.filter((row) => row.panel === panel.key) ?? [];
  return rows.map((row) => ({
    row,
    rest: panel.length - lastPlace(row),
    balanced: isBalanced(panel, row, shop),
  }));
}
