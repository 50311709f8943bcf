import { tell, type Message } from '../../words/message.js';
import type { Panel } from '../../carcass/model.js';
import type { Reader } from '../../length/reader.js';
import type { Micrometres } from '../../length/units.js';
import type { TableLayout } from '../../machining/replay/layout.js';
import type { LoadedSpindle, SetUp, Step } from '../../machining/set-up.js';
import { described, headsSet } from '../../machining/described.js';
import { edgeWord, stopCalled, surfaceWord } from '../words.js';
import { FACES } from '../../words/names.js';
import type { Told } from '../../words/told.js';
import { NAMES, say, type IndexMove, type OffStop, type SpindlesTold } from './messages.js';
import type { Acted, Working } from './strokes.js';

const OTHER = { inside: 'outside', outside: 'inside' } as const;

/**
 * 'Inside face up, front edge at the fence, bottom end against near-left.'; after an index move the end has left the stop:
 * 'Inside face up, front edge at the fence, bottom end 736 mm past row-left.'
 */
export function lieWords(panel: Panel, setUp: SetUp, step: Step, reader: Reader): Told {
  const lie = {
    up: surfaceWord(panel, OTHER[step.down]),
    edge: edgeWord(panel, step.edge),
    end: edgeWord(panel, step.end),
    stop: stopCalled(step.stop),
  };
  if (described(setUp.machine).bores === 'ends') return tell(say.liesAtHead(lie), reader);
  if (step.moved === 0) return tell(say.liesAtStop(lie), reader);
  return tell(say.liesMoved({ ...lie, ...offStop(setUp, step) }), reader);
}

/** Where an index move has brought the end: so far past its stop, or short of it. */
export function offStop({ stops }: SetUp, { stop, moved }: Step): OffStop {
  // To push the end over its stop is to move it toward that stop's side.
  const past = stops.find(({ name }) => name === stop)?.side === 'right' ? moved > 0 : moved < 0;
  return { by: Math.abs(moved), past, stop: stopCalled(stop) };
}

/** An index move of so much to the right, or to the left where negative. */
export function indexMove({ machine }: SetUp, by: Micrometres): IndexMove {
  // A machine without one makes no moves, as the replay sees to.
  const { pitch, on } = described(machine).index!;
  return { by: Math.abs(by), way: by < 0 ? 'left' : 'right', pitches: Math.round(Math.abs(by) / pitch), on };
}

/** Which way the panel's length runs on the table, from the reference end. */
function headingOf({ panel: [reference, far] }: TableLayout): { readonly dx: number; readonly dy: number } {
  const [dx, dy] = [far![0] - reference![0], far![1] - reference![1]];
  return { dx: Math.sign(Math.round(dx)), dy: Math.sign(Math.round(dy)) };
}

/**
 * How a panel comes from one lay on the table to the next, seen by where its corners come to lie. Another end at a stop is no
 * turn by itself: a panel that is slid from a left stop to a right one shows the right one its other end.
 */
export function turnOf(before: TableLayout, after: TableLayout): 'over' | 'half' | 'quarter' | 'none' {
  if (before.up !== after.up) return 'over';
  const [was, is] = [headingOf(before), headingOf(after)];
  // To the right, to the left, or across the table.
  if ((was.dx === 0) !== (is.dx === 0)) return 'quarter';
  return was.dx === is.dx && was.dy === is.dy ? 'none' : 'half';
}

/** What is done with the panel between two strokes of one set-up; the words of its first where there is none before. */
export function moveWords(panel: Panel, acted: Acted, reader: Reader): Told | null {
  const message = moveTold(panel, acted);
  return message === null ? null : tell(message, reader);
}

function moveTold(panel: Panel, { stroke, layout, before }: Acted): Message | null {
  const { setUp, step } = stroke;
  const to = { end: edgeWord(panel, step.end), edge: edgeWord(panel, step.edge), stop: stopCalled(step.stop) };
  const atHead = described(setUp.machine).bores === 'ends';
  if (before === null) {
    return step.moved === 0 ? null : say.pushThenMove({ stop: to.stop, ...indexMove(setUp, step.moved) });
  }
  const { step: last } = before.stroke;
  const turn = turnOf(before.layout, layout);
  if (turn === 'over') {
    const edge = edgeWord(panel, step.edge === 'back' ? 'back' : 'front');
    return say.turnOver({ face: FACES[OTHER[step.down]], edge });
  }
  if (turn === 'quarter') return say.turnQuarter({ ...to, face: FACES[step.down] });
  if (turn === 'half') return (atHead ? say.turnHalfToHead : say.turnHalf)({ ...to, face: FACES[step.down] });
  if (last.stop !== step.stop || last.end !== step.end) return (atHead ? say.slideToHead : say.slide)(to);
  const by = step.moved - last.moved;
  return by === 0 ? say.leave() : say.indexMove(indexMove(setUp, by));
}

/** Spindles of a set-up are counted from 1: from the fence on an upright head, from the left on the others. */
export function spindleName(setUp: SetUp, { head, spindle }: Pick<LoadedSpindle, 'head' | 'spindle'>): Told {
  if (described(setUp.machine).spindles === 'one') return NAMES.spindle;
  const heads = headsSet(setUp);
  const number = spindle + 1;
  return tell(heads > 1 ? say.spindleOfHead({ head: headName(head, heads), number }) : say.spindle({ number }), 'mm');
}

/** A head as its operator calls it: 'front head' and 'rear head' of two, 'head 2' of more, 'head' of one. */
export function headName(head: number, heads: number): Told {
  if (heads === 2) return head === 0 ? NAMES.frontHead : NAMES.rearHead;
  return heads > 2 ? tell(say.head({ number: head + 1 }), 'mm') : NAMES.head;
}

/** Spindles as a sentence tells them: head by head, or once for both heads where both have the same. */
function spindlesOf(setUp: SetUp, spindles: readonly Pick<LoadedSpindle, 'head' | 'spindle'>[]): SpindlesTold {
  if (described(setUp.machine).spindles === 'one') return { kind: 'one' };
  const heads = [...new Set(spindles.map(({ head }) => head))].sort((a, b) => a - b);
  const byHead = heads.map((head) => ({
    head: headName(head, setUp.fence.length),
    numbers: spindles.filter((one) => one.head === head).map(({ spindle }) => spindle + 1),
  }));
  if (headsSet(setUp) < 2) return { kind: 'alone', numbers: byHead.flatMap(({ numbers }) => numbers) };
  const [first, second] = byHead;
  const same = second !== undefined && String(first!.numbers) === String(second.numbers);
  return same && byHead.length === 2 && setUp.fence.length === 2
    ? { kind: 'on-both', numbers: first!.numbers }
    : { kind: 'on-heads', byHead };
}

/** 'Spindles 1, 6, 10 and 15 bore 4 holes Ø 8 mm, 12 mm deep.' */
export function boreWords({ stroke, working }: Acted, reader: Reader): Told {
  const { setUp } = stroke;
  const bores = working.filter(({ makes }) => makes !== null);
  const parts = diametersOf(bores).map((diameter) => {
    const those = bores.filter((one) => one.diameter === diameter);
    return { spindles: spindlesOf(setUp, those), count: those.length, diameter };
  });
  const { depth, through, machine } = setUp;
  return tell(say.bores({ parts, depth, through, upward: described(machine).bitsCome === 'up' }), reader);
}

/** How the spindles of a machine come to the panel: 'come down', 'come up', 'come out'. */
export function comeWords({ machine }: SetUp): 'down' | 'up' | 'out' {
  return described(machine).bitsCome;
}

/** What else is to be seen to in a stroke. */
export function noteWords({ stroke, layout, working }: Acted): Told[] {
  const { setUp } = stroke;
  const lowered = layout.stops.filter((one) => one.lowered).map(({ name }) => stopCalled(name));
  const beside = working.filter(({ makes }) => makes === null);
  return [
    ...(lowered.length > 0 ? [say.lower({ stops: lowered })] : []),
    ...(beside.length > 0
      ? [say.beside({ spindles: spindlesOf(setUp, beside), count: beside.length, comes: comeWords(setUp) })]
      : []),
    ...(layout.clamps.length > 0 && !layout.clamps.some(({ holds }) => holds) ? [say.unheld()] : []),
    ...(setUp.extension ? [say.extension()] : []),
  ].map((message) => tell(message, 'mm'));
}

/** How far the panel is when the stroke is done. */
export function leftWords({ holes }: Acted): Told {
  const open = holes.filter(({ state }) => state === 'to-come').length;
  return tell(open === 0 ? say.done() : say.open({ holes: open }), 'mm');
}

function diametersOf(working: readonly Pick<Working, 'diameter'>[]): Micrometres[] {
  return [...new Set(working.map(({ diameter }) => diameter))].sort((a, b) => a - b);
}
