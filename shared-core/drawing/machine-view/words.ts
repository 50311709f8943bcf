import { listed } from '../../words/english.js';
import type { Panel } from '../../carcass/model.js';
import type { Micrometres, Unit } from '../../length/units.js';
import type { TableLayout } from '../../machining/replay/layout.js';
import type { LoadedSpindle, SetUp, Step } from '../../machining/set-up.js';
import { described, headsSet } from '../../machining/described.js';
import { nominal, showLength } from '../../length/show.js';
import { edgeWord, endWord, sentence, stopCalled, surfaceWord } from '../words.js';
import type { Acted, Working } from './strokes.js';

const OTHER = { inside: 'outside', outside: 'inside' } as const;

/**
 * 'Inside face up, front edge at the fence, bottom end against near-left.'; after an index move the end has left the stop:
 * 'Inside face up, front edge at the fence, bottom end 736 mm past row-left.'
 */
export function lieWords(panel: Panel, setUp: SetUp, step: Step, unit: Unit): string {
  const up = `${sentence(surfaceWord(panel, OTHER[step.down]))} up`;
  const edge = edgeWord(panel, step.edge);
  const end = endWord(panel, step.end);
  if (described(setUp.machine).bores === 'ends')
    return `${up}, ${end} pressed against the head, ${edge} against ${stopCalled(step.stop)}.`;
  const place = step.moved === 0 ? `against ${stopCalled(step.stop)}` : movedWords(setUp, step, unit);
  return `${up}, ${edge} at the fence, ${end} ${place}.`;
}

/** Where an index move has brought the end: '736 mm past row-left'. */
export function movedWords(setUp: SetUp, step: Step, unit: Unit): string {
  return `${showLength(Math.abs(step.moved), unit)} ${isPast(setUp, step) ? 'past' : 'short of'} ${stopCalled(step.stop)}`;
}

/** Whether an index move has pushed the end over its stop, not away from it. */
function isPast({ stops }: SetUp, { stop, moved }: Step): boolean {
  return stops.find(({ name }) => name === stop)?.side === 'right' ? moved > 0 : moved < 0;
}

/** '736 mm to the left, 23 pitches, onto the pins in the row' */
export function indexWords({ machine }: SetUp, by: Micrometres, unit: Unit): string {
  const way = `${showLength(Math.abs(by), unit)} to the ${by < 0 ? 'left' : 'right'}`;
  const { index } = described(machine);
  if (index === null) return way;
  const pitches = Math.round(Math.abs(by) / index.pitch);
  const counted = `${way}, ${pitches} ${pitches === 1 ? 'pitch' : 'pitches'}`;
  return index.on === 'none'
    ? counted
    : `${counted}, ${index.on === 'row' ? 'onto the pins in the row' : 'to the pins in the fence'}`;
}

/** Which way the panel's length runs on the table, from the reference end. */
function headingOf({ panel: [reference, far] }: TableLayout): string {
  const [dx, dy] = [far![0] - reference![0], far![1] - reference![1]];
  return `${Math.sign(Math.round(dx))} ${Math.sign(Math.round(dy))}`;
}

/**
 * How a panel comes from one lay on the table to the next, seen by where its corners come to lie. Another end at a stop is no
 * turn by itself: a panel that is slid from a left stop to a right one shows the right one its other end.
 */
export function turnOf(before: TableLayout, after: TableLayout): 'over' | 'half' | 'none' {
  if (before.up !== after.up) return 'over';
  return headingOf(before) === headingOf(after) ? 'none' : 'half';
}

/** What is done with the panel between two strokes of one set-up; the words of its first where there is none before. */
export function moveWords(panel: Panel, { stroke, layout, before }: Acted, unit: Unit): string | null {
  const { setUp, step } = stroke;
  if (before === null) {
    return step.moved === 0
      ? null
      : `Push it against ${stopCalled(step.stop)}, then an index move: ${indexWords(setUp, step.moved, unit)}.`;
  }
  const { step: last } = before.stroke;
  const turn = turnOf(before.layout, layout);
  if (turn === 'over') {
    return `Turn it over: the ${OTHER[step.down]} face comes up, the ${edgeWord(panel, step.edge)} stays the reference.`;
  }
  const end = endWord(panel, step.end);
  const to =
    described(setUp.machine).bores === 'ends'
      ? `the ${end} comes to the head, the ${edgeWord(panel, step.edge)} to ${stopCalled(step.stop)}`
      : `the ${end} comes to ${stopCalled(step.stop)}`;
  if (turn === 'half') return `Turn it by 180 degrees on the table: the ${step.down} face stays down, ${to}.`;
  if (last.stop !== step.stop || last.end !== step.end) return `Slide it along, do not turn it: ${to}.`;
  const by = step.moved - last.moved;
  return by === 0 ? 'Leave it where it is.' : `Index move: ${indexWords(setUp, by, unit)}.`;
}

/** Spindles of a set-up are counted from 1: from the fence on an upright head, from the left on the others. */
export function spindleName(setUp: SetUp, { head, spindle }: Pick<LoadedSpindle, 'head' | 'spindle'>): string {
  if (described(setUp.machine).spindles === 'one') return 'the spindle';
  const heads = headsSet(setUp);
  return heads > 1 ? `${headName(head, heads)}, spindle ${spindle + 1}` : `spindle ${spindle + 1}`;
}

/** A head as its operator calls it: 'front head' and 'rear head' of two, 'head 2' of more, 'head' of one. */
export function headName(head: number, heads: number): string {
  if (heads === 2) return head === 0 ? 'front head' : 'rear head';
  return heads > 2 ? `head ${head + 1}` : 'head';
}

/** Numbers in a list, three and more in a row as a run: '1, 6 and 10 to 15'. */
export function runsOfNumbers(numbers: readonly number[]): string {
  const runs: number[][] = [];
  for (const number of [...numbers].sort((a, b) => a - b)) {
    const run = runs.at(-1);
    if (run?.at(-1) === number - 1) run.push(number);
    else runs.push([number]);
  }
  return listed(
    runs.flatMap((run) => (run.length > 2 ? [`${run[0]!} to ${run.at(-1)!}`] : run.map((number) => String(number)))),
  );
}

/** 'spindles 1, 6 and 10'; 'spindles 1 to 23 of both heads'; 'spindles 1 to 9 of the front head, 1 and 2 of the rear head' */
function spindlesWords(setUp: SetUp, spindles: readonly Pick<LoadedSpindle, 'head' | 'spindle'>[]): string {
  if (described(setUp.machine).spindles === 'one') return 'the spindle';
  const heads = [...new Set(spindles.map(({ head }) => head))].sort((a, b) => a - b);
  const many = headsSet(setUp) > 1;
  const lists = heads.map((head) => {
    const numbers = spindles.filter((one) => one.head === head).map(({ spindle }) => spindle + 1);
    return many ? `${runsOfNumbers(numbers)} of the ${headName(head, setUp.fence.length)}` : runsOfNumbers(numbers);
  });
  const numbers = heads.map((head) => spindles.filter((one) => one.head === head).map(({ spindle }) => spindle));
  if (heads.length === 2 && setUp.fence.length === 2 && String(numbers[0]) === String(numbers[1]))
    return `spindles ${runsOfNumbers(numbers[0]!.map((spindle) => spindle + 1))} of both heads`;
  return `${spindles.length === 1 ? 'spindle' : 'spindles'} ${many ? lists.join(', ') : listed(lists)}`;
}

/** 'Spindles 1, 6, 10 and 15 bore 4 holes Ø 8 mm, 12 mm deep.' */
export function boreWords({ stroke, working }: Acted, unit: Unit): string {
  const { setUp } = stroke;
  const show = (length: Micrometres): string => showLength(length, unit);
  const depth = setUp.through ? 'through' : `${show(setUp.depth)} deep`;
  const bores = working.filter(({ makes }) => makes !== null);
  const parts = diametersOf(bores).map((diameter) => {
    const those = bores.filter((one) => one.diameter === diameter);
    const holes = those.length === 1 ? '1 hole' : `${those.length} holes`;
    return `${spindlesWords(setUp, those)} ${those.length === 1 ? 'bores' : 'bore'} ${holes} Ø ${nominal(diameter, unit)}`;
  });
  return `${sentence(listed(parts))}, ${depth}${described(setUp.machine).bitsCome === 'up' ? ', from below' : ''}.`;
}

/** How the spindles of a machine come to the panel: 'come down', 'come up', 'come out'. */
export function comeWords({ machine }: SetUp): 'down' | 'up' | 'out' {
  return described(machine).bitsCome;
}

/** What else is to be seen to in a stroke. */
export function noteWords({ stroke, layout, working }: Acted): string[] {
  const { setUp } = stroke;
  const lowered = layout.stops.filter((one) => one.lowered).map(({ name }) => stopCalled(name));
  const beside = working.filter(({ makes }) => makes === null);
  return [
    ...(lowered.length > 0 ? [`Lower ${listed(lowered)}, out of the panel’s way.`] : []),
    ...(beside.length > 0
      ? [
          `${sentence(spindlesWords(setUp, beside))} ${beside.length === 1 ? 'is' : 'are'} loaded too, and ${beside.length === 1 ? 'comes' : 'come'} ${comeWords(setUp)} beside the panel.`,
        ]
      : []),
    ...(layout.clamps.length > 0 && !layout.clamps.some(({ holds }) => holds)
      ? ['No clamp comes down on the panel: hold it in a fixture.']
      : []),
    ...(setUp.extension ? ['The fence extension is on.'] : []),
  ];
}

/** How far the panel is when the stroke is done. */
export function leftWords({ holes }: Acted): string {
  const open = holes.filter(({ state }) => state === 'to-come').length;
  return open === 0
    ? 'After this stroke the panel has all its holes.'
    : `${open === 1 ? '1 hole is' : `${open} holes are`} still to come.`;
}

function diametersOf(working: readonly Pick<Working, 'diameter'>[]): Micrometres[] {
  return [...new Set(working.map(({ diameter }) => diameter))].sort((a, b) => a - b);
}
