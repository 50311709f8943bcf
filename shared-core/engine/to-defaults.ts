import { CARCASSES_KEY } from '../document/outline.js';
import { readCarcassTree } from '../document/parts.js';
import type { Path } from '../document/place.js';
import type { TextEdit } from '../document/pieces.js';
import { readTree } from '../document/read.js';
import type { MapNode, TreeNode } from '../document/tree.js';
import type { CarcassSpec } from '../carcass/spec.js';
import { isAboveFloor } from '../job/above-floor.js';
import { headEdits } from '../job/edits.js';
import { jobSchema } from '../job/schema.js';
import { schemaAt } from '../schema/at.js';
import { messages } from '../words/message.js';
import type { JobAnalysis } from './analysis.js';
import { cursorAt } from './cursor.js';
import type { Refactor } from './refactor.js';
import { editsInCarcass } from './repairs.js';

export const say = messages('to-defaults', {
  move: ({ path, text, carcasses }: Moved) => `Move ${written(path, text)} of ${carcasses} carcasses to the defaults`,
  drop: ({ path, text, carcasses }: Moved) =>
    carcasses === 1
      ? `Remove ${written(path, text)}, which the defaults say too`
      : `Remove ${written(path, text)} from ${carcasses} carcasses, as the defaults say it too`,
});

interface Moved {
  readonly path: readonly string[];
  readonly text: string;
  readonly carcasses: number;
}

const written = (path: readonly string[], text: string): string => `‘${[...path, text].join(': ')}’`;

/**
 * A value that several carcasses have alike, written once in the defaults. Every carcass of the job must say the value itself,
 * so that the default changes nothing for any of them; those that say another, or have a comment beside it, keep theirs.
 */
export function toDefaults(analysis: JobAnalysis, offset: number): readonly Refactor[] {
  const { part, carcass, path: at } = cursorAt(analysis, offset);
  const path = at.filter((step) => typeof step === 'string');
  if (part !== 'self' || carcass === null || path.length === 0 || path.length < at.length) return [];
  if (analysis.parts.whole !== null || schemaAt(jobSchema, ['defaults', ...path]) === null) return [];
  const said = saidAt(analysis, path);
  const text = said?.[carcass];
  if (said === null || text === undefined || text === null) return [];
  const { head, tail } = analysis.parts;
  const root = readTree(head.text, 'head').root;
  const below = readTree(tail.text, 'tail').root;
  if (root?.kind !== 'map' || entriesOf(below).some(({ key }) => key === 'defaults')) return [];
  const before = inDefaults(root, path);
  if (before === 'other' || (typeof before === 'object' && textOf(head.text, before.node) !== text)) return [];
  const removed = analysis.parts.carcasses.map((_, index) =>
    said[index] === text ? removal(analysis, index, path) : [],
  );
  const carcasses = removed.filter((edits) => edits.length > 0).length;
  if (removed[carcass]?.length === 0 || carcasses < (before === 'nothing' ? 2 : 1)) return [];
  const above = before === 'nothing' ? headWith(head.text, root, path, text) : [];
  if (above === null) return [];
  const title = (before === 'nothing' ? say.move : say.drop)({ path, text, carcasses });
  return [{ title, edits: [...above.map((edit) => moved(edit, head.start)), ...removed.flat()] }];
}

/** What each carcass writes at a path, null where it may not be moved; null where one of them does not write it itself. */
function saidAt(analysis: JobAnalysis, path: Path): readonly (string | null)[] | null {
  const said: (string | null)[] = [];
  for (const [index, part] of analysis.parts.carcasses.entries()) {
    const { entry, problems } = readCarcassTree(part);
    const node = problems.length > 0 ? undefined : valueAt(entry?.value ?? null, path);
    if (node === undefined) return null;
    said.push(takesDefault(analysis.carcasses[index]?.spec ?? null, path) ? textOf(part.text, node) : null);
  }
  return said;
}

/** What hangs takes no plinth from the defaults. */
function takesDefault(spec: CarcassSpec | null, [key]: Path): boolean {
  return key !== 'plinth' || (spec !== null && !isAboveFloor(spec));
}

/** The value at a path of maps, each key written once; undefined where nothing stands there, or a map that is laid over another. */
function valueAt(node: TreeNode | null, path: Path): TreeNode | undefined {
  let here: TreeNode | null = node;
  for (const step of path) {
    const found: MapNode['entries'] = entriesOf(here).filter(({ key }) => key === step);
    if (found.length !== 1) return undefined;
    here = found[0]!.value;
  }
  return here === null || here.kind === 'map' ? undefined : here;
}

/** A value as it is written on one line; null for any other. */
function textOf(source: string, node: TreeNode): string | null {
  const text = source.slice(node.place.start, node.place.end);
  const isOne = node.alias === undefined && (node.kind === 'scalar' || (node.kind === 'list' && node.flow));
  return isOne && text !== '' && !/[\r\n#&*!|>]/.test(text) ? text : null;
}

/** What the defaults say at a path: nothing, the value itself, or something that stands in its way. */
function inDefaults(root: MapNode, path: Path): 'nothing' | 'other' | { readonly node: TreeNode } {
  let here: TreeNode | null = root;
  for (const step of ['defaults', ...path]) {
    if (here === null) return 'nothing';
    if (here.kind !== 'map' || here.alias !== undefined) return 'other';
    const found: MapNode['entries'] = here.entries.filter(({ key }) => key === step);
    if (found.length > 1) return 'other';
    if (found.length === 0) return 'nothing';
    here = found[0]!.value;
  }
  return here === null ? 'other' : { node: here };
}

/** Takes the value out of a carcass; none where a comment would go with it. */
function removal(analysis: JobAnalysis, index: number, path: Path): readonly TextEdit[] {
  const edits = editsInCarcass(analysis, index, [{ kind: 'remove', part: 'self', path }]);
  return edits.some(({ start, end }) => analysis.text.slice(start, end).includes('#')) ? [] : edits;
}

/** Edits of the head that write a default; null where they cannot be made. */
function headWith(head: string, root: MapNode, path: readonly string[], text: string): readonly TextEdit[] | null {
  const set = { kind: 'set', part: 'head', path: ['defaults', ...path], text } as const;
  if (root.entries.some(({ key }) => key === 'defaults')) {
    const edits = headEdits(head, root, [set]);
    return edits.length > 0 ? edits : null;
  }
  const carcasses = root.entries.findIndex(({ key }) => key === CARCASSES_KEY);
  if (carcasses === -1) return null;
  // Above the comments of `carcasses:`, where something stands before them that these cannot be of.
  const last = root.entries[carcasses - 1];
  const key = root.entries[carcasses]!.keyPlace.start;
  const at = last === undefined ? key : head.indexOf('\n', last.place.end) + 1;
  const eol = head.includes('\r\n') ? '\r\n' : '\n';
  const lines = ['defaults:', ...path.map((step, i) => `${'  '.repeat(i + 1)}${step}:`)];
  return [{ start: at, end: at, text: `${lines.join(eol)} ${text}${eol}` }];
}

function entriesOf(node: TreeNode | null): MapNode['entries'] {
  return node?.kind === 'map' && node.alias === undefined ? node.entries : [];
}

function moved(edit: TextEdit, by: number): TextEdit {
  return { ...edit, start: edit.start + by, end: edit.end + by };
}
