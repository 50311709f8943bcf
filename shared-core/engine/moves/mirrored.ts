import { otherHand } from '../../carcass/hands.js';
import { mirror } from '../../carcass/mirror.js';
import type { Change } from '../../document/finding.js';
import { keyText } from '../../document/scalar-text.js';
import type { TextEdit } from '../../document/pieces.js';
import type { MapEntry, MapNode } from '../../document/tree.js';
import { setLength } from '../../findings/changes.js';
import { wouldCount } from '../../findings/circumstances.js';
import { over, standsAcross, type CarcassSaid } from '../../job/like.js';
import { inchesOf } from '../../job/notation.js';
import { mirroredEdges } from '../../job/panel-key.js';
import type { JobAnalysis } from '../analysis.js';
import type { Hand } from '../../shop/model.js';
import { cursorAt } from '../cursor.js';
import type { Refactor } from '../refactor.js';
import { editsInCarcass } from '../repairs.js';
import { changesTo } from './changed.js';
import { say } from './messages.js';
import { bare, defaultsOf, hasUnlikeSides, ownSaid } from './said.js';

/** A carcass as its mirror image, in the text that says it: every value stays on its line, and comments stay. */
export function mirroredText(analysis: JobAnalysis, offset: number): readonly Refactor[] {
  const { part, carcass, path } = cursorAt(analysis, offset);
  if (part !== 'self' || carcass === null || path.length > 0 || analysis.parts.whole !== null) return [];
  const said = ownSaid(analysis, carcass);
  const { spec, carcass: built, boring } = analysis.carcasses[carcass]!;
  // What is like another one is mirrored by a word; and which side leads can only be said there.
  if (said === null || spec === null || said.own.like !== undefined) return [];
  const { entry, own } = said;
  const given = defaultsOf(analysis);
  const whole = over(own, given);
  const isUnlike = hasUnlikeSides(whole);
  if (isUnlike && hasOwnRows(whole)) return [];
  const image = mirror(whole);
  if (bare(image) === bare(whole)) return [];
  const how = { unit: analysis.unit, inches: inchesOf(entry.value) };
  const made = built === null || boring === null ? [] : [{ spec, carcass: built, boring }];
  const length = (key: 'height' | 'row-offset', value: number): readonly Change[] =>
    isUnlike && whole[key] === undefined && wouldCount([key], made) ? [setLength(how, [key], value)] : [];
  const handed = ONE_HANDED.flatMap((key) => oneHand(key, whole));
  // What the job's defaults say of one hand cannot be unsaid here.
  if (handed.some(({ key, hand }) => own[key]?.value[hand] === undefined)) return [];
  const { panels: _, ...rest } = { ...image, ...stillHanded(handed, whole) };
  const { origin, text } = analysis.parts.carcasses[carcass]!;
  const edits = [
    ...editsInCarcass(analysis, carcass, [
      ...changesTo(rest, own, whole, how),
      ...handed.map(({ key, hand }) => renamedHand(key, hand)),
      ...length('height', spec.height.value),
      ...length('row-offset', spec.rowOffset.value),
    ]),
    ...renamedPanels(text, entry, own, image).map(({ start, end, text }) => ({
      start: origin + start,
      end: origin + end,
      text,
    })),
  ];
  return edits.length === 0 ? [] : [{ title: say.mirrored(), edits }];
}

/** Maps that say something of the left and of the right. */
const ONE_HANDED = ['fillers', 'blind', 'diagonal'] as const;

interface Handed {
  readonly key: (typeof ONE_HANDED)[number];
  readonly hand: Hand;
}

/** The hand that alone is spoken of. */
function oneHand(key: Handed['key'], said: CarcassSaid): readonly Handed[] {
  const { left, right } = said[key]?.value ?? {};
  if ((left === undefined) === (right === undefined)) return [];
  return [{ key, hand: left === undefined ? 'right' : 'left' }];
}

/** Their maps as they are, since the hand in them is renamed where it stands. */
function stillHanded(handed: readonly Handed[], said: CarcassSaid): CarcassSaid {
  return Object.fromEntries(handed.map(({ key }) => [key, said[key]]));
}

function renamedHand(key: Handed['key'], hand: Hand): Change {
  return { kind: 'rename-key', part: 'self', path: [key, hand], text: otherHand(hand) };
}

function hasOwnRows({ panels }: CarcassSaid): boolean {
  return (panels?.value ?? []).some(({ value }) => value.value['row-offset'] !== undefined);
}

/** The names of panels, and of the edges of those that lie across, where they stand in the carcass's text. */
function renamedPanels(
  text: string,
  { value }: MapEntry,
  own: CarcassSaid,
  { panels: after }: CarcassSaid,
): readonly TextEdit[] {
  const { panels: before } = own;
  const isDiagonal = standsAcross(own);
  const written = entryOf(value, 'panels')?.value;
  if (before === undefined || after === undefined || written?.kind !== 'map') return [];
  return before.value.flatMap(({ name }, i): readonly TextEdit[] => {
    const entry = written.entries.find(({ key }) => key === name.value);
    const to = after.value[i]!.name.value;
    if (entry === undefined) return [];
    const renamed = to === name.value ? [] : [renaming(text, entry, to, written)];
    const other = mirroredEdges(name.value, isDiagonal);
    const swapped = [entry.value, entryOf(entry.value, 'bands')?.value].flatMap((map) =>
      map?.kind !== 'map'
        ? []
        : map.entries.flatMap((edge) => {
            const by = other.get(edge.key);
            return by === undefined ? [] : [renaming(text, edge, by, map)];
          }),
    );
    return [...renamed, ...swapped];
  });
}

function renaming(text: string, { keyPlace: { start, end } }: MapEntry, to: string, { flow }: MapNode): TextEdit {
  const first = text.charAt(start);
  return { start, end, text: keyText(to, flow, first === '"' || first === "'" ? first : '') };
}

function entryOf(node: MapEntry['value'], key: string): MapEntry | undefined {
  return node?.kind === 'map' ? node.entries.find((entry) => entry.key === key) : undefined;
}
