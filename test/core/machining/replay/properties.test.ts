import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cross, dot, QUARTER_TURNS } from '../../../../shared-core/machining/replay/vector.js';
import { replayPanel, strokesOf, type ReplayedHole } from '../../../../shared-core/machining/replay/replay.js';
import { bore } from '../../../../shared-core/machining/replay/bore.js';
import type { Blank, SetUp, Step } from '../../../../shared-core/machining/set-up.js';
import { HORIZONTAL, LINE, mm, setUp, step, VERTICAL } from './set-ups.js';
import { inWords } from '../../../in-words.js';
import { holeKey } from '../hole-key.js';

const holes = (given: SetUp, of: Blank): readonly ReplayedHole[] => {
  const replay = replayPanel([given], 'box', 'p', of);
  if (!replay.ok) throw new Error(replay.problems.map(({ message }) => inWords(message)).join('; '));
  return replay.holes;
};
const keys = (given: SetUp, of: Blank): string[] => holes(given, of).map(holeKey).sort();
const mirrored = (of: Blank): Blank => ({ ...of, hand: of.hand === 'right' ? 'left' : 'right' });
const otherEnd = (end: Step['end']): Step['end'] => (end === 'far-end' ? 'reference-end' : 'far-end');

const anyBlank: fc.Arbitrary<Blank> = fc.record({
  length: fc.integer({ min: mm(300), max: mm(2600) }),
  width: fc.integer({ min: mm(120), max: mm(900) }),
  thickness: fc.integer({ min: mm(14), max: mm(40) }),
  hand: fc.constantFrom('left', 'right'),
});
/** Spindles that stand over a panel at least 120 wide. */
const loaded = fc.uniqueArray(fc.integer({ min: 0, max: 2 }), { minLength: 1, maxLength: 3 });
const stopAt = fc.integer({ min: 1, max: mm(60) });
const fenceAt = fc.integer({ min: mm(20), max: mm(55) });
const down = fc.constantFrom('inside', 'outside');
const fence = fc.constantFrom('far', 'near');
const from = fc.constantFrom('above', 'below');

/** The end that this blank has at the left stop of a vertical head, found by asking the replay. */
function endOnTheLeft(machine: typeof VERTICAL, of: Blank, lies: Pick<Step, 'down' | 'edge'>): Step['end'] {
  const carried = (end: Step['end']): boolean =>
    replayPanel(
      [
        setUp(
          machine,
          { fence: [20], stops: { 'near-left': 1 }, depth: 5 },
          { p: [step({ ...lies, end, stop: 'near-left' }, [0], 5)] },
        ),
      ],
      'box',
      'p',
      of,
    ).ok;
  const ends = (['reference-end', 'far-end'] as const).filter(carried);
  expect(ends).toHaveLength(1);
  return ends[0]!;
}

describe('the turns of a brick', () => {
  it('are 24, all different, and none is a mirror image', () => {
    expect(QUARTER_TURNS).toHaveLength(24);
    expect(new Set(QUARTER_TURNS.map((r) => JSON.stringify(r).replaceAll('-0', '0'))).size).toBe(24);
    for (const r of QUARTER_TURNS) expect(dot(cross(r.a, r.b), r.c)).toBe(1);
  });
});

describe('properties of the replay', () => {
  it('a panel and its mirror image at mirrored stops get mirror-image holes', () => {
    fc.assert(
      fc.property(
        anyBlank,
        stopAt,
        fenceAt,
        loaded,
        down,
        fence,
        from,
        (of, at, offset, spindles, face, side, hand) => {
          const machine = { ...VERTICAL, fence: side, from: hand } as const;
          const end = endOnTheLeft(machine, of, { down: face, edge: 'front' });
          const given = (name: string): SetUp =>
            setUp(
              machine,
              { fence: [offset / 1000], stops: { [name]: at / 1000 }, depth: 12 },
              {
                p: [step({ down: face, edge: 'front', end, stop: name }, spindles, 8)],
              },
            );
          // A bore is written from the front edge and the reference end, so mirror images read the same.
          expect(keys(given('near-right'), mirrored(of))).toEqual(keys(given('near-left'), of));
          expect(replayPanel([given('near-left')], 'box', 'p', mirrored(of)).ok).toBe(false);
        },
      ),
    );
  });

  it('half a turn on the table with the stop of the other hand bores the other end at v, mirrored about mid-length', () => {
    fc.assert(
      fc.property(anyBlank, stopAt, fenceAt, loaded, down, (of, at, offset, spindles, face) => {
        // On the table, half a turn brings the back edge to the fence: the same place is then `width - u` from it.
        const end = endOnTheLeft(VERTICAL, of, { down: face, edge: 'front' });
        const bored = (stop: string, edge: Step['edge'], which: Step['end']): readonly ReplayedHole[] =>
          holes(
            setUp(
              VERTICAL,
              { fence: [offset / 1000], stops: { [stop]: at / 1000 }, depth: 12 },
              {
                p: [step({ down: face, edge, end: which, stop }, spindles, 8)],
              },
            ),
            of,
          );
        const turned = bored('near-left', 'back', otherEnd(end));
        expect(turned.map(({ u, v }) => [of.width - u, of.length - v])).toEqual(
          bored('near-left', 'front', end).map(({ u, v }) => [u, v]),
        );
        expect(bored('near-right', 'front', otherEnd(end)).map(({ u, v }) => [u, of.length - v])).toEqual(
          bored('near-left', 'front', end).map(({ u, v }) => [u, v]),
        );
      }),
    );
  });

  it('both ends of a turned horizontal get the same holes', () => {
    fc.assert(
      fc.property(
        anyBlank,
        fc.integer({ min: mm(20), max: mm(55) }),
        fc.integer({ min: mm(4), max: mm(13) }),
        loaded,
        (of, at, height, spindles) => {
          const ends: readonly Step['end'][] =
            of.hand === 'right' ? ['far-end', 'reference-end'] : ['reference-end', 'far-end'];
          const made = holes(
            setUp(
              HORIZONTAL,
              { height: height / 1000, stops: { 'square-left': at / 1000, 'square-right': at / 1000 }, depth: 22 },
              {
                p: [
                  step({ down: 'outside', edge: 'front', end: ends[0]!, stop: 'square-left' }, spindles, 8),
                  step(
                    { down: 'outside', edge: 'front', end: ends[1]!, stop: 'square-right' },
                    spindles.map((k) => 20 - k),
                    8,
                  ),
                ],
              },
            ),
            of,
          );
          const at1 = made.filter(({ face }) => face === ends[0]).map(({ u, v, depth }) => [u, v, depth]);
          const at2 = made.filter(({ face }) => face === ends[1]).map(({ u, v, depth }) => [u, v, depth]);
          expect(at1).toHaveLength(spindles.length);
          expect(at2).toEqual(at1);
          expect(at1.map(([u]) => u)).toEqual(spindles.map((k) => at + k * mm(32)));
          expect(new Set(at1.map(([, v]) => v))).toEqual(new Set([height]));
        },
      ),
    );
  });

  it('an index move shifts every hole by as much, and nothing else', () => {
    fc.assert(
      fc.property(anyBlank, fc.integer({ min: 1, max: 3 }), down, (of, pitches, face) => {
        const lies = { down: face, edge: 'front', stop: 'end-left' } as const;
        const end = endOnTheLeft(VERTICAL, of, lies);
        const bored = (spindle: number, moved: number): readonly ReplayedHole[] =>
          holes(
            setUp(
              // Pins in the fence need no hole of the row to stand in.
              { ...LINE, indexPins: 'fence' },
              { fence: [37], stops: { 'end-left': 16 }, depth: 12 },
              {
                p: [step({ ...lies, end }, [spindle], 5, moved)],
              },
            ),
            of,
          );
        // To the left by n pitches: spindle k then stands where spindle k + n stood.
        expect(bored(1, -pitches * mm(32)).map(holeKey)).toEqual(bored(1 + pitches, 0).map(holeKey));
      }),
    );
  });

  it('gives whole micrometres, and does not depend on the holes that a step claims', () => {
    fc.assert(
      fc.property(anyBlank, stopAt, fenceAt, loaded, (of, at, offset, spindles) => {
        const lies = { down: 'outside', edge: 'front', stop: 'near-left' } as const;
        const plain = step({ ...lies, end: endOnTheLeft(VERTICAL, of, lies) }, spindles, 8);
        const lie = { bore: 'x', face: 'outside', u: 1, v: 1, diameter: 1, depth: 1, through: false } as const;
        const given = (one: Step): SetUp =>
          setUp(VERTICAL, { fence: [offset / 1000], stops: { 'near-left': at / 1000 }, depth: 12 }, { p: [one] });
        const made = holes(given(plain), of);
        for (const { u, v, depth } of made) expect([u, v, depth].every(Number.isSafeInteger)).toBe(true);
        expect(holes(given({ ...plain, holes: [lie] }), of)).toEqual(made);
      }),
    );
  });
});

describe('a real panel', () => {
  /** Which way each bore goes when one measure of the panel strays by 1 mm; micrometres. */
  const moves = (given: SetUp, of: Blank, kind: 'thickness' | 'width' | 'length'): number[][] => {
    const read = strokesOf([given], 'box', 'p', of);
    if (!read.ok) throw new Error(inWords(read.problems[0]!.message));
    return read.strokes.flatMap((stroke) => {
      const nominal = bore(stroke, () => 0);
      return bore(stroke, (what) => (what === kind ? 1000 : 0)).map((real, i) => [
        real.u - nominal[i]!.u,
        real.v - nominal[i]!.v,
        real.depth - nominal[i]!.depth,
      ]);
    });
  };
  const of: Blank = { length: mm(720), width: mm(560), thickness: mm(16), hand: 'right' };
  const vertical = (lies: Pick<Step, 'edge' | 'end' | 'stop'>): SetUp =>
    setUp(
      VERTICAL,
      { fence: [53], stops: { [lies.stop]: 8 }, depth: 12 },
      { p: [step({ ...lies, down: 'outside' }, [0], 8)] },
    );

  it('keeps its bores where the front edge and the named end touch, and strays on the other sides', () => {
    const good = vertical({ edge: 'front', end: 'reference-end', stop: 'near-left' });
    expect(moves(good, of, 'width')).toEqual([[0, 0, 0]]);
    expect(moves(good, of, 'length')).toEqual([[0, 0, 0]]);
    // The head's travel is set for the blank, so a thicker panel is bored deeper.
    expect(moves(good, of, 'thickness')).toEqual([[0, 0, 1000]]);
  });

  it('carries its width and length into the bores where the back edge or the other end touches', () => {
    expect(moves(vertical({ edge: 'back', end: 'reference-end', stop: 'near-right' }), of, 'width')).toEqual([
      [1000, 0, 0],
    ]);
    expect(moves(vertical({ edge: 'front', end: 'far-end', stop: 'near-right' }), of, 'length')).toEqual([
      [0, 1000, 0],
    ]);
  });

  it('carries its thickness into the bores of an end where the inside face lies down', () => {
    const lying = (face: Step['down'], end: Step['end']): SetUp =>
      setUp(
        HORIZONTAL,
        { height: 8, stops: { 'square-left': 53 }, depth: 19 },
        {
          p: [step({ down: face, edge: 'front', end, stop: 'square-left' }, [0], 8)],
        },
      );
    expect(moves(lying('outside', 'far-end'), of, 'thickness')).toEqual([[0, 0, 0]]);
    expect(moves(lying('inside', 'reference-end'), of, 'thickness')).toEqual([[0, 1000, 0]]);
  });

  it('touches a wide plate with the corner of its end that stands out', () => {
    const given = setUp(
      HORIZONTAL,
      { height: 8, stops: { 'square-left': 53 }, depth: 19 },
      {
        p: [step({ down: 'outside', edge: 'front', end: 'far-end', stop: 'square-left' }, [0], 8)],
      },
    );
    const read = strokesOf([given], 'box', 'p', of);
    if (!read.ok) throw new Error(inWords(read.problems[0]!.message));
    const depth = (outOfSquare: number): number =>
      bore(read.strokes[0]!, (kind, what) => (kind === 'squareness' && what.endsWith('far-end') ? outOfSquare : 0))[0]!
        .depth;
    expect(depth(0)).toBe(19_000);
    // 1 mm over a metre. Back corner out by 0.56: the place 53 from the front stands 0.507 back from the plate.
    expect(depth(1000)).toBeCloseTo(19_000 - (560 - 53), 6);
    // Back corner in: the front corner touches, and the place stands 0.053 back.
    expect(depth(-1000)).toBeCloseTo(19_000 - 53, 6);
  });
});
