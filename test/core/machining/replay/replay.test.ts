import { describe, expect, it } from 'vitest';
import { compareHoles } from '../../../../shared-core/machining/replay/compare.js';
import { replayPanel, type Replay, type ReplayedHole } from '../../../../shared-core/machining/replay/replay.js';
import type { Blank, SetUp, Step } from '../../../../shared-core/machining/set-up.js';
import { inWords as told } from '../../../in-words.js';
import { blank, CUP, HORIZONTAL, LINE, mm, setUp, step, VERTICAL } from './set-ups.js';

/** 'face u v diameter depth', millimetres. */
const inWords = (replay: Replay): string[] =>
  replay.ok
    ? replay.holes.map(
        ({ face, u, v, diameter, depth, through }) =>
          `${face} ${u / 1000} ${v / 1000} ${diameter / 1000} ${through ? 'through' : depth / 1000}`,
      )
    : replay.problems.map(({ message }) => `PROBLEM ${told(message)}`);

const replay = (setUps: SetUp | readonly SetUp[], panel: string, of: Blank): string[] =>
  inWords(replayPanel([setUps].flat(), 'box', panel, of));

const LEFT = blank(720, 560, 16, 'right');
const RIGHT = blank(720, 560, 16, 'left');
const BOTTOM = blank(568, 560, 16, 'left');

describe('hand-worked examples', () => {
  /**
   * Left side 720 x 560 x 16 on the vertical head, bottom joint. Stand at the table: X right, Y away, Z up; fence at Y = 0
   * far away, the spindle line along Y at X = 0.
   * 1. Its frame in the carcass: u to the back, v up, t to the right (inside). Back x up = right, so it is right-handed.
   * 2. Outside down: t points up (+Z). Front edge on the far fence: u points at the operator (-Y).
   *    v = t x u = (+Z) x (-Y) = +X: the bottom end lies left, the top end right. So the bottom end goes to a left stop.
   * 3. The stop stands 8 mm left of the line: the bottom end is at X = -8, the line at v = 8.
   * 4. Fence offset 53: spindle k bores at u = 53 + 32 k. Spindles 0, 5, 10, 15: u = 53, 213, 373, 533.
   * 5. From above, the inside face up: the bit enters the inside face, 12 deep.
   */
  it('bores the bottom joint of a left side', () => {
    const given = setUp(
      VERTICAL,
      { fence: [53], stops: { 'near-left': 8 }, depth: 12 },
      {
        left: [step({ down: 'outside', edge: 'front', end: 'reference-end', stop: 'near-left' }, [0, 5, 10, 15], 8)],
      },
    );
    expect(replay(given, 'left', LEFT)).toEqual([
      'inside 53 8 8 12',
      'inside 213 8 8 12',
      'inside 373 8 8 12',
      'inside 533 8 8 12',
    ]);
  });

  /** The head stops 16 - 12 = 4 over the table: in a board of 19 the bit is then 15 deep. From below, 12 are 12. */
  it('bores a thicker panel deeper than the depth stop is set for, but not from below', () => {
    const given = setUp(
      VERTICAL,
      { fence: [53], stops: { 'near-left': 8 }, depth: 12 },
      { left: [step({ down: 'outside', edge: 'front', end: 'reference-end', stop: 'near-left' }, [0], 8)] },
    );
    const thick = blank(720, 560, 19, 'right');
    expect(replay({ ...given, thickness: mm(16) }, 'left', LEFT)).toEqual(['inside 53 8 8 12']);
    expect(replay({ ...given, thickness: mm(16) }, 'left', thick)).toEqual(['inside 53 8 8 15']);
    const below = setUp(
      { ...VERTICAL, from: 'below' },
      { fence: [53], stops: { 'near-left': 8 }, depth: 12 },
      { left: [step({ down: 'inside', edge: 'front', end: 'far-end', stop: 'near-left' }, [0], 8)] },
    );
    expect(replay({ ...below, thickness: mm(16) }, 'left', thick)).toEqual(['inside 53 712 8 12']);
  });

  /** The right side is the mirror image: v = u x t = (-Y) x (+Z) = -X, so its bottom end lies right, at the right stop. */
  it('needs the mirrored stop for the right side, and refuses the left one', () => {
    const on = (name: string, end: Step['end']): SetUp =>
      setUp(
        VERTICAL,
        { fence: [53], stops: { 'near-left': 8, 'near-right': 8 }, depth: 12 },
        {
          right: [step({ down: 'outside', edge: 'front', end, stop: name }, [0, 15], 8)],
        },
      );
    expect(replay(on('near-right', 'reference-end'), 'right', RIGHT)).toEqual([
      'inside 53 8 8 12',
      'inside 533 8 8 12',
    ]);
    expect(replay(on('near-left', 'reference-end'), 'right', RIGHT)).toEqual([
      'PROBLEM The top or right end comes to stop ‘near-left’ on the left, not the bottom or left end.',
    ]);
    // The top joint stands 8 mm under the far end: v = 720 - 8.
    expect(replay(on('near-left', 'far-end'), 'right', RIGHT)).toEqual(['inside 53 712 8 12', 'inside 533 712 8 12']);
  });

  /**
   * Bottom 568 x 560 x 16 on the horizontal head, whose plate is the plane Y = 0 at the far side, spindle k at X = 32 k.
   * 1. Frame: u back, v right, t up (outside is the underside). Back x right = down, so u x v = -t: left-handed.
   * 2. Outside down: t up. Left end against the plate: v points at the operator (-Y). Left-handed: u = -(v x t)
   *    = -((-Y) x (+Z)) = +X. The front edge looks left, so it lies against the left squaring stop, at X = -53.
   * 3. Spindle k bores at u = 53 + 32 k. Height 8 over the table: 8 mm from the outside face.
   * 4. Turned by half a turn on the table: far end to the plate, front edge to the right stop. The stop's face stands 53
   *    right of the last spindle, number 20: spindle k bores at u = 53 + 32 (20 - k). So spindles 20, 15, 10, 5 make the
   *    same places as 0, 5, 10, 15 before.
   */
  it('bores both ends of a bottom alike by turning it', () => {
    const given = setUp(
      HORIZONTAL,
      { height: 8, stops: { 'square-left': 53, 'square-right': 53 }, depth: 19 },
      {
        bottom: [
          step({ down: 'outside', edge: 'front', end: 'reference-end', stop: 'square-left' }, [0, 5, 10, 15], 8),
          step({ down: 'outside', edge: 'front', end: 'far-end', stop: 'square-right' }, [20, 15, 10, 5], 8),
        ],
      },
    );
    const places = ['53 8 8 19', '213 8 8 19', '373 8 8 19', '533 8 8 19'];
    expect(replay(given, 'bottom', BOTTOM)).toEqual([
      ...places.map((place) => `reference-end ${place}`),
      ...places.map((place) => `far-end ${place}`),
    ]);
  });

  it('refuses the same squaring stop for the second end: the panel would have to be flipped', () => {
    const both = setUp(
      HORIZONTAL,
      { height: 8, stops: { 'square-left': 53 }, depth: 19 },
      {
        bottom: [step({ down: 'outside', edge: 'front', end: 'far-end', stop: 'square-left' }, [0], 8)],
      },
    );
    expect(replay(both, 'bottom', BOTTOM)).toEqual([
      'PROBLEM The back edge comes to stop ‘square-left’ on the left, not the front edge.',
    ]);
  });

  /**
   * Tall left side 2064 long, rows on the line drill with 21 spindles from X = 0 to 640, two heads 37 and 453 from the
   * fence. Left stop 8: v = 8 + 32 k. Moved 672 (21 pitches) to the left through its lowered stop: v = 8 + 672 + 32 k.
   */
  it('bores rows in two strokes with an index move', () => {
    const lies = { down: 'outside', edge: 'front', end: 'reference-end', stop: 'end-left' } as const;
    const heads = (spindles: readonly number[]): Step['spindles'] =>
      [0, 1].flatMap((head) => spindles.map((spindle) => ({ head, spindle, diameter: mm(5) })));
    const given = setUp(
      LINE,
      { fence: [37, 453], stops: { 'end-left': 8 }, depth: 13 },
      {
        left: [
          { ...step(lies, [], 5), spindles: heads([0, 20]) },
          { ...step(lies, [], 5, mm(-672)), spindles: heads([0]) },
        ],
      },
    );
    expect(replay(given, 'left', blank(2064, 560, 16, 'right'))).toEqual([
      'inside 37 8 5 13',
      'inside 37 648 5 13',
      'inside 453 8 5 13',
      'inside 453 648 5 13',
      'inside 37 680 5 13',
      'inside 453 680 5 13',
    ]);
  });

  /** From below with a near fence: the face that lies down is bored. u points away (+Y), t down: v = t x u = (-Z) x Y = +X. */
  it('bores the face that lies down where the bits come from below', () => {
    const machine = { ...LINE, from: 'below', fence: 'near' } as const;
    const given = setUp(
      machine,
      { fence: [37], stops: { 'end-left': 8 }, depth: 13 },
      {
        left: [step({ down: 'inside', edge: 'front', end: 'reference-end', stop: 'end-left' }, [0, 1], 5)],
      },
    );
    expect(replay(given, 'left', LEFT)).toEqual(['inside 37 8 5 13', 'inside 37 40 5 13']);
  });

  /** Clearance holes come in from the outside, so the inside lies down: t down, u at the operator: v = (-Z) x (-Y) = -X. */
  it('bores through holes from the face that lies up', () => {
    const given = setUp(
      VERTICAL,
      { fence: [53], stops: { 'near-right': 8 }, depth: 16, through: true },
      {
        left: [step({ down: 'inside', edge: 'front', end: 'reference-end', stop: 'near-right' }, [0], 7)],
      },
    );
    expect(replay(given, 'left', LEFT)).toEqual(['outside 53 8 7 through']);
  });

  it('bores a cup in a door that lies on its face', () => {
    const door = blank(716, 396, 19, 'right');
    const given = setUp(
      CUP,
      { fence: [22.5], stops: { 'door-left': 100 }, depth: 12.5 },
      {
        door: [step({ down: 'outside', edge: 'front', end: 'reference-end', stop: 'door-left' }, [0], 35)],
      },
    );
    expect(replay(given, 'door', door)).toEqual(['inside 22.5 100 35 12.5']);
  });
});

describe('a wrong reference is still bored, and shows where it leads', () => {
  it('counts from the back edge where that lies on the fence', () => {
    const given = setUp(
      VERTICAL,
      { fence: [27], stops: { 'near-right': 8 }, depth: 12 },
      {
        left: [step({ down: 'outside', edge: 'back', end: 'reference-end', stop: 'near-right' }, [0], 8)],
      },
    );
    // 560 - 27 = 533 from the front edge.
    expect(replay(given, 'left', LEFT)).toEqual(['inside 533 8 8 12']);
  });

  it('counts the height from the inside face where that lies down', () => {
    const given = setUp(
      HORIZONTAL,
      { height: 7, stops: { 'square-right': 53 }, depth: 19 },
      {
        bottom: [step({ down: 'inside', edge: 'front', end: 'reference-end', stop: 'square-right' }, [20], 8)],
      },
    );
    expect(replay(given, 'bottom', BOTTOM)).toEqual(['reference-end 53 9 8 19']);
  });
});

describe('a set-up that cannot be carried out says why', () => {
  const lies = { down: 'outside', edge: 'front', end: 'reference-end', stop: 'near-left' } as const;
  const onVertical = (
    change: Partial<Parameters<typeof setUp>[1]>,
    strokes: readonly Step[] = [step(lies, [0], 8)],
    machine: SetUp['machine'] = VERTICAL,
  ): string[] =>
    replay(
      setUp(machine, { fence: [53], stops: { 'near-left': 8 }, depth: 12, ...change }, { left: strokes }),
      'left',
      LEFT,
    );
  const rowLies = { ...lies, stop: 'end-left' };
  const onLine = (change: object, strokes: readonly Step[], machine = LINE): string[] =>
    replay(
      setUp(machine, { fence: [37], stops: { 'end-left': 8 }, depth: 13, ...change }, { left: strokes }),
      'left',
      LEFT,
    );

  it.each<[string, () => string[]]>([
    ['The depth of 61 mm is outside the range of ‘upright’, 0 mm to 60 mm.', () => onVertical({ depth: 61 })],
    [
      'The fence distance of 19 mm is outside the range of ‘upright’, 20 mm to 80 mm.',
      () => onVertical({ fence: [19] }),
    ],
    ['‘upright’ takes 1 fence distance; the set-up gives 0.', () => onVertical({ fence: [] })],
    ['‘upright’ has no height to set.', () => onVertical({ height: 8 })],
    [
      'Stop ‘near-left’ at 61 mm is outside the range of ‘upright’, 0 mm to 60 mm.',
      () => onVertical({ stops: { 'near-left': 61 } }),
    ],
    [
      'With the extension, stop ‘far-left’ at 2001 mm is outside the range of ‘upright’, 60 mm to 2000 mm.',
      () => onVertical({ stops: { 'near-left': 8, 'far-left': 2001 }, extension: true }),
    ],
    [
      'Stop ‘near-left’ at 61 mm is outside the range of ‘upright’, 0 mm to 60 mm.',
      () => onVertical({ stops: { 'near-left': 61 }, extension: true }),
    ],
    ['‘upright’ has no stop ‘middle’.', () => onVertical({ stops: { 'near-left': 8, middle: 8 } })],
    [
      'The panel is to lie against stop ‘near-right’, which is not set.',
      () => onVertical({}, [step({ ...lies, stop: 'near-right' }, [0], 8)]),
    ],
    ['‘upright’ has spindles 1 to 21, not 22.', () => onVertical({}, [step(lies, [21], 8)])],
    ['‘upright’ has spindles 1 to 21, not 1.5.', () => onVertical({}, [step(lies, [0.5], 8)])],
    ['Spindle 4 carries two bits.', () => onVertical({}, [step(lies, [3, 3], 8)])],
    ['Spindle 4 carries a bit of 0 mm.', () => onVertical({}, [step(lies, [3], 0)])],
    ['No spindle is loaded.', () => onVertical({}, [step(lies, [], 8)])],
    ['‘upright’ is no line drill and makes no index moves.', () => onVertical({}, [step(lies, [0], 8, mm(32))])],
    [
      'The 12 mm hole at 565 mm, 8 mm in the inside face cuts into an edge of the panel, which measures 560 mm by 720 mm there.',
      () => onVertical({}, [step(lies, [16], 12)]),
    ],
    ['Every bit comes down beside the panel.', () => onVertical({}, [step(lies, [16, 17], 8)])],
    [
      'The 8 mm hole at 53 mm, 0 mm in the inside face cuts into an edge of the panel, which measures 560 mm by 720 mm there.',
      () => onVertical({ stops: { 'near-left': 0 } }),
    ],
    [
      'The 8 mm hole at 53 mm, 8 mm in the inside face comes out on the other side: it is 16 mm deep in 16 mm.',
      () => onVertical({ depth: 16 }),
    ],
    [
      'The 8 mm hole at 53 mm, 8 mm in the inside face must go through 16 mm, but the depth stop is at 12 mm.',
      () => onVertical({ through: true }),
    ],
    [
      'The 8 mm hole at 53 mm, 8 mm in the inside face is bored twice.',
      () => onVertical({}, [step(lies, [0], 8), step(lies, [0], 8)]),
    ],
    [
      'The panel’s length of 720 mm is outside the range of ‘upright’, 200 mm to 700 mm.',
      () =>
        onVertical({}, undefined, {
          ...VERTICAL,
          panel: { ...VERTICAL.panel, length: { min: mm(200), max: mm(700) } },
        }),
    ],
    [
      'Stop ‘near-left’ at 60 mm would have to pass ‘far-left’ at 60 mm, which stands further out on the same fence.',
      () => onVertical({ stops: { 'near-left': 60, 'far-left': 60 } }),
    ],
    [
      'The head setback of 81 mm is outside the range of ‘liner’, 20 mm to 80 mm.',
      () => onLine({ fence: [81] }, [step(rowLies, [0], 5)]),
    ],
    [
      'The distance of two heads of 95 mm is outside the range of ‘liner’, 96 mm to 640 mm.',
      () => onLine({ fence: [37, 132] }, [step(rowLies, [0], 5)]),
    ],
    [
      'A head stands 701 mm from the fence; the throat of ‘liner’ is 700 mm deep.',
      () => onLine({ fence: [80, 701] }, [step(rowLies, [0], 5)]),
    ],
    ['‘liner’ has 2 heads; the set-up sets 3.', () => onLine({ fence: [37, 200, 400] }, [step(rowLies, [0], 5)])],
    ['‘liner’ has no fence extension.', () => onLine({ extension: true }, [step(rowLies, [0], 5)])],
    [
      'Head 2 is not set: ‘liner’ has 1 head set.',
      () => onLine({}, [{ ...step(rowLies, [], 5), spindles: [{ head: 1, spindle: 0, diameter: mm(5) }] }]),
    ],
    [
      'An index move of 40 mm is not a whole number of pitches of 32 mm.',
      () => onLine({}, [step(rowLies, [10], 5, mm(40))]),
    ],
    ['No hole of the row is bored yet for the index pins.', () => onLine({}, [step(rowLies, [10], 5, mm(32))])],
    [
      'An index move of 2016 mm is too long; the maximum of ‘liner’ is 2000 mm.',
      () => onLine({}, [step(rowLies, [10], 5, mm(2016))]),
    ],
    [
      '‘liner’ has no index pins for an index move of 32 mm.',
      () => onLine({}, [step(rowLies, [10], 5, mm(32))], { ...LINE, indexPins: 'none' }),
    ],
    [
      'The panel lies over stop ‘end-left’ at 8 mm, or ends at it, and the stop does not lower.',
      () =>
        onLine({}, [step(rowLies, [0], 5, mm(-32))], {
          ...LINE,
          stops: LINE.stops.map((one) => ({ ...one, lowers: false })),
        }),
    ],
  ])('%s', (message, run) => {
    expect(run()).toContain(`PROBLEM ${message}`);
  });

  it('a horizontal head out of its height, and an end bored through', () => {
    const run = (height: number | undefined, through: boolean): string[] =>
      replay(
        setUp(
          HORIZONTAL,
          { ...(height === undefined ? {} : { height }), stops: { 'square-left': 53 }, depth: 19, through },
          { bottom: [step({ down: 'outside', edge: 'front', end: 'reference-end', stop: 'square-left' }, [0], 8)] },
        ),
        'bottom',
        BOTTOM,
      );
    expect(run(41, false)).toEqual(['PROBLEM The height of 41 mm is outside the range of ‘level’, 4 mm to 40 mm.']);
    expect(run(undefined, false)).toEqual(['PROBLEM The set-up gives no height for ‘level’.']);
    expect(run(8, true)).toEqual([
      'PROBLEM The 8 mm hole at 53 mm, 8 mm in the bottom or left end would have to go through the whole length of the panel.',
    ]);
    expect(run(16, false)).toEqual([
      'PROBLEM The 8 mm hole at 53 mm, 16 mm in the bottom or left end cuts into an edge of the panel, which measures 560 mm by 16 mm there.',
    ]);
  });

  it('a stop of the other hand stands in the way unless it lowers', () => {
    const fixed = {
      ...VERTICAL,
      stops: VERTICAL.stops.flatMap((one) => {
        const long = { ...one, lowers: false, range: { min: mm(0), max: mm(800) } };
        return one.name === 'near-right'
          ? [
              { ...one, lowers: false },
              { ...long, name: 'far-right' },
            ]
          : [{ ...one, lowers: false }];
      }),
    };
    expect(onVertical({ stops: { 'near-left': 8, 'near-right': 8 } })).toEqual(['inside 53 8 8 12']);
    expect(onVertical({ stops: { 'near-left': 8, 'near-right': 8 } }, undefined, fixed)).toEqual([
      'PROBLEM The panel lies over stop ‘near-right’ at 8 mm, or ends at it, and the stop does not lower.',
    ]);
    // 720 long from 8 on the left: its other end comes to 712 on the right, where a stop must leave 2 mm.
    const onRight = (long: number): string[] =>
      onVertical({ stops: { 'near-left': 8, 'far-right': long } }, undefined, fixed);
    expect(onRight(712)).toHaveLength(1);
    expect(onRight(713.999)[0]).toMatch(/^PROBLEM The panel lies over stop ‘far-right’ at 713\.999 mm, or ends at it/);
    expect(onRight(714)).toEqual(['inside 53 8 8 12']);
    // Its end at -8 is clear of a stop further out on the same hand.
    expect(onVertical({ stops: { 'near-left': 8, 'far-left': 60 } }, undefined, fixed)).toEqual(['inside 53 8 8 12']);
  });

  it('a spindle that the panel does not reach bores air', () => {
    expect(onVertical({}, [step(lies, [0, 16, 20], 8)])).toEqual(['inside 53 8 8 12']);
  });

  it('a hole may be met twice only on a line drill that allows it', () => {
    const twice = [step(rowLies, [0, 1], 5), step(rowLies, [1, 2], 5)];
    expect(onLine({}, twice)).toEqual(['PROBLEM The 5 mm hole at 37 mm, 40 mm in the inside face is bored twice.']);
    expect(onLine({}, twice, { ...LINE, meetsHolesTwice: true })).toEqual([
      'inside 37 8 5 13',
      'inside 37 40 5 13',
      'inside 37 72 5 13',
    ]);
  });

  it('a panel is moved along either way as far as the index range, and no further', () => {
    const near = { ...LINE, indexRange: mm(320) };
    const stops = { 'end-left': 8, 'end-right': 8 };
    const rightLies = { ...rowLies, end: 'far-end', stop: 'end-right' } as const;
    const toLeft = (moved: number): string[] =>
      onLine({ stops }, [step(rowLies, [0], 5), step(rowLies, [1], 5, mm(-moved))], near);
    const toRight = (moved: number): string[] =>
      onLine({ stops }, [step(rightLies, [20], 5), step(rightLies, [19], 5, mm(moved))], near);
    expect(toLeft(320)).toEqual(['inside 37 8 5 13', 'inside 37 360 5 13']);
    expect(toRight(320)).toEqual(['inside 37 712 5 13', 'inside 37 360 5 13']);
    for (const run of [toLeft, toRight]) expect(run(352)[0]).toMatch(/^PROBLEM .*352 mm.*320 mm/);
  });

  it('spindles are counted from 1 to as many as there are', () => {
    expect(onVertical({}, [step(lies, [15], 8)])).toEqual(['inside 533 8 8 12']);
    expect(onVertical({}, [step(lies, [-1], 8)])[0]).toBe('PROBLEM ‘upright’ has spindles 1 to 21, not 0.');
  });

  it('a bit that only touches the panel from beside it bores air; one that reaches in cuts the edge', () => {
    // Spindle 16 stands 565 from the fence, 5 past the back edge.
    expect(onVertical({}, [step(lies, [0, 16], 10)])).toEqual(['inside 53 8 10 12']);
    expect(onVertical({}, [step(lies, [0, 16], 10.001)])[0]).toMatch(
      /^PROBLEM The 10\.001 mm hole at 565 mm, 8 mm .* cuts into an edge/,
    );
    // Spindle 20 at 648 and the head at 37 stand 8 and 6 beside the corner of 640 by 31: 10 from it.
    const atCorner = (diameter: number): string[] =>
      replay(
        setUp(LINE, { fence: [37], stops: { 'end-left': 8 }, depth: 13 }, { left: [step(rowLies, [20], diameter)] }),
        'left',
        blank(640, 31, 16, 'right'),
      );
    expect(atCorner(20)).toEqual(['PROBLEM Every bit comes down beside the panel.']);
    expect(atCorner(20.001)[0]).toMatch(/cuts into an edge/);
  });

  it('a hole whose middle is on an edge cuts into it', () => {
    const anywhere = { ...VERTICAL, fenceOffset: { min: 0, max: mm(80) } };
    const at = (fence: number, stop: number, spindle: number): string[] =>
      onVertical({ fence: [fence], stops: { 'near-left': stop } }, [step(lies, [spindle], 8)], anywhere);
    // 48 + 16 x 32 = 560, the width
    for (const [fence, stop, spindle] of [
      [0, 8, 0],
      [48, 8, 16],
      [53, 0, 0],
    ] as const)
      expect(at(fence, stop, spindle)[0]).toMatch(/cuts into an edge/);
    expect(at(0.001, 0.001, 0)).toEqual(['inside 0.001 0.001 8 12']);
  });

  it('index pins stand in holes that were bored from the same stop, not from the panel’s other end', () => {
    const stops = { 'end-left': 8, 'end-right': 8 };
    const fromFarEnd = step({ ...rowLies, end: 'far-end', stop: 'end-right' }, [20], 5);
    const movedAlong = step(rowLies, [10], 5, mm(-32));
    expect(onLine({ stops }, [fromFarEnd, movedAlong])).toEqual([
      'PROBLEM No hole of the row is bored yet for the index pins.',
    ]);
    expect(onLine({ stops }, [step(rowLies, [0], 5), fromFarEnd, movedAlong])).toEqual([
      'inside 37 8 5 13',
      'inside 37 712 5 13',
      'inside 37 360 5 13',
    ]);
  });

  it('index pins stand in holes of their own machine, which are as wide as they are', () => {
    const movedAlong = setUp(
      LINE,
      { id: 'moved', fence: [37], stops: { 'end-left': 8 }, depth: 13 },
      { left: [step(rowLies, [10], 5, mm(-32))] },
    );
    const first = (spindle: number, diameter: number): SetUp =>
      setUp(LINE, { fence: [37], stops: { 'end-left': 8 }, depth: 13 }, { left: [step(rowLies, [spindle], diameter)] });
    const elsewhere = (diameter: number): SetUp =>
      setUp(
        VERTICAL,
        { fence: [37], stops: { 'near-left': 8 }, depth: 13 },
        { left: [step({ ...rowLies, stop: 'near-left' }, [0], diameter)] },
      );
    const refused = 'PROBLEM No hole of the row is bored yet for the index pins.';
    expect(replay([first(0, 5), movedAlong], 'left', LEFT)).toEqual(['inside 37 8 5 13', 'inside 37 360 5 13']);
    expect(replay([first(0, 8), movedAlong], 'left', LEFT)).toEqual([refused]);
    expect(replay([elsewhere(5), movedAlong], 'left', LEFT)).toEqual([refused]);
    expect(replay([elsewhere(5), first(1, 5), movedAlong], 'left', LEFT)).toHaveLength(3);
  });

  it('names the set-up and the step', () => {
    const given = setUp(
      VERTICAL,
      { fence: [53], stops: { 'near-left': 8 }, depth: 12 },
      {
        left: [step(lies, [0], 8), step(lies, [21], 8)],
      },
    );
    expect(replayPanel([given], 'box', 'left', LEFT)).toMatchObject({
      ok: false,
      problems: [{ setUp: 'upright-1', step: 1 }],
    });
    expect(replayPanel([given], 'box', 'right', LEFT)).toEqual({ ok: true, holes: [] });
  });
});

describe('compareHoles', () => {
  const hole = (u: number, depth = 12): ReplayedHole => ({
    ...{ face: 'inside', u: mm(u), v: mm(8), diameter: mm(8), depth: mm(depth), through: false },
    ...{ setUp: 'a', step: 0, head: 0, spindle: 0 },
  });

  it('is null where every bore is made once, in whatever order', () => {
    expect(compareHoles([hole(53), hole(85)], [hole(85), hole(53)])).toBeNull();
    expect(compareHoles([], [])).toBeNull();
  });

  it('counts: a hole made once for two bores leaves one missing', () => {
    const difference = compareHoles([hole(53)], [hole(53), hole(53)]);
    expect(difference?.missing).toHaveLength(1);
    expect(difference?.extra).toHaveLength(0);
  });

  it('says what is missing and what is too much, with figures', () => {
    expect(told(compareHoles([hole(53), hole(85, 13)], [hole(53), hole(85)])!.message)).toBe(
      '1 hole is not bored: 8 mm × 12 mm at 85 mm, 8 mm in the inside face. 1 hole is bored that no bore map shows: 8 mm × 13 mm at 85 mm, 8 mm in the inside face.',
    );
    expect(told(compareHoles([], [hole(1), hole(2), hole(3), hole(4), hole(5)])!.message)).toMatch(/; and 2 more\.$/);
  });
});
