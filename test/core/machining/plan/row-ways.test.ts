import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Derived } from '../../../../shared-core/derived/derived.js';
import type { Obstacle } from '../../../../shared-core/machining/plan/lines.js';
import { waysFrom, type RowWays } from '../../../../shared-core/machining/plan/row-ways.js';
import { blankOf } from '../../../../shared-core/machining/blank.js';
import { mm } from '../../specs.js';
import { rowCase, side, upTo, type Case } from './row-case.js';

function ways(one: Case): RowWays | Obstacle {
  const { fence = [37], end = 'reference-end' } = one;
  const { panel, row, bores, drill } = rowCase(one);
  const setting = {
    panel,
    blank: blankOf(panel),
    drill,
    row,
    depth: row.depth,
    lines: [{ u: row.u, bores: new Map(bores.map((bore) => [bore.v, bore])) }],
    derived: new Derived(),
    fence: fence.map(mm),
    over: [0],
  };
  return waysFrom(setting, end);
}

/** Of each way where the stop stands, and of its strokes the index move and where the bores stand, in mm from the end. */
function laid(one: Case) {
  const found = ways(one);
  if ('parameter' in found) return [found.parameter, found.needed === null ? null : found.needed / 1000];
  return found.ways.map(({ position, strokes }) => ({
    stop: position / 1000,
    strokes: strokes.map(({ moved, wanted }) => [moved / 1000, wanted.map(({ spindle }) => spindle).join('')]),
  }));
}

describe('where a stop must stand for a row', () => {
  test('over the first hole at the least: a stop one pitch further leaves it unbored', () => {
    const holes = upTo(5);
    expect(laid({ nearest: 16, holes, stops: [[16, 16]] })).toEqual([{ stop: 16, strokes: [[0, '01234']] }]);
    expect(laid({ nearest: 16, holes, stops: [[48, 48]] })).toEqual(['stops', 16]);
  });
  test('with the last spindle over the first hole at the most', () => {
    // 176 - 4 x 32 = 48
    const holes = [0];
    expect(laid({ nearest: 176, holes, stops: [[48, 48]] })).toEqual([{ stop: 48, strokes: [[0, '4']] }]);
    expect(laid({ nearest: 176, holes, stops: [[16, 16]] })).toEqual(['stops', 176]);
  });
  test('on the row’s own pitch, anywhere in its range to the very end', () => {
    const one = { nearest: 16, holes: upTo(5) };
    expect(laid({ ...one, stops: [[0, 16]] })).toEqual([{ stop: 16, strokes: [[0, '01234']] }]);
    expect(laid({ ...one, stops: [[0, 15.999]] })).toEqual(['stops', 16]);
    expect(laid({ ...one, stops: [[16.001, 40]] })).toEqual(['stops', 16]);
    expect(laid({ ...one, nearest: 40, stops: [[30, 48]] })).toEqual([{ stop: 40, strokes: [[0, '01234']] }]);
  });
  test('on the hand on which the end comes to lie', () => {
    const one = { nearest: 16, holes: upTo(5), stops: [[48, 48]], onRight: [[16, 16]] } as const;
    expect(laid(one)).toEqual(['stops', 16]);
    // The far end lies right: the last spindle is the nearest, and every second one bores twice, one pitch to the right.
    expect(laid({ ...one, holes: upTo(6), end: 'far-end' })).toEqual([
      {
        stop: 16,
        strokes: [
          [0, '420'],
          [32, '420'],
        ],
      },
    ]);
  });
  test('not between two that it has, though the row would lie in the middle of the head from there', () => {
    // Three holes in the middle of five spindles would ask for 112.
    expect(
      laid({
        nearest: 144,
        holes: upTo(3),
        stops: [
          [16, 16],
          [144, 144],
        ],
      }),
    ).toEqual([{ stop: 144, strokes: [[0, '012']] }]);
  });
  test('so that a hole before the first spindle needs another stroke', () => {
    // Spindles 2 to 4 over holes 0 to 2; moved along by 3 pitches the same three bore the next.
    expect(laid({ nearest: 80, holes: upTo(6), stops: [[16, 16]] })).toEqual([
      {
        stop: 16,
        strokes: [
          [0, '234'],
          [-96, '234'],
        ],
      },
    ]);
  });
});

describe('a row that goes on by index moves', () => {
  // 10 holes: 0 to 4, and 5 pitches on 5 to 9
  const ten = { nearest: 16, holes: upTo(10), stops: [[16, 16]] } as const;
  const both = [
    {
      stop: 16,
      strokes: [
        [0, '01234'],
        [-160, '01234'],
      ],
    },
  ];
  test('does so as far as the panel can just be moved', () => {
    expect(laid({ ...ten, drill: { indexRange: mm(160) } })).toEqual(both);
    expect(laid({ ...ten, drill: { indexRange: mm(159.999) } })).toEqual(['index-range', 160]);
    // From one pitch before the first hole to three past it.
    const before = { ...ten, nearest: 48, holes: upTo(8) };
    expect(laid({ ...before, drill: { indexRange: mm(127.999) } })).toEqual(['index-range', 128]);
    expect(laid({ ...before, drill: { indexRange: mm(128) } })).toHaveLength(1);
  });
  test('changes bits where the same ones would ask for a longer move than there is', () => {
    // Four and four are moved by four pitches; five, and then the last three of the head, by three.
    const eight = { ...ten, holes: upTo(8), behind: 16 };
    expect(laid({ ...eight, drill: { indexRange: mm(96) } })).toEqual([
      { stop: 16, strokes: [[0, '01234']] },
      { stop: 16, strokes: [[-96, '234']] },
    ]);
    expect(laid({ ...eight, drill: { indexRange: mm(95.999) } })).toEqual(['index-range', 96]);
  });
  test('is refused only where no stroke after a move of whole pitches reaches a hole, with the least range that would do', () => {
    let [refused, saved] = [0, 0];
    const rows = fc.record({
      holes: fc
        .uniqueArray(fc.integer({ min: 1, max: 17 }), { maxLength: 12 })
        .map((some) => [0, ...some].sort((a, b) => a - b)),
      spindles: fc.integer({ min: 1, max: 6 }),
      range: fc.nat(12),
      // The stop stands so many pitches before the first hole, over a stretch.
      before: fc.nat(4),
      stretch: fc.nat(3),
      // Another stop stands past it.
      past: fc.nat(9),
      meetsHolesTwice: fc.boolean(),
    });
    fc.assert(
      fc.property(rows, ({ holes, spindles, range, before, stretch, past, meetsHolesTwice }) => {
        const nearest = 16 + 32 * (before + stretch);
        const stops = [
          [16, 16 + 32 * stretch],
          [nearest + 32, nearest + 32 * past],
        ] as const;
        const drill = { spindles, indexRange: mm(32 * range), meetsHolesTwice };
        const found = ways({ nearest, holes, stops, drill });
        const starts = Array.from({ length: stretch + 1 }, (_, k) => -before - k).filter((start) => start > -spindles);
        if (starts.length === 0) {
          expect(found).toMatchObject({ parameter: 'stops' });
          return;
        }
        const goes = (most: number): boolean =>
          starts.some((first) => holes.every((hole) => hole >= first && hole <= first + most + spindles - 1));
        const least = Array.from({ length: 40 }, (_, most) => most).find(goes)!;
        if ('parameter' in found) {
          refused += 1;
          expect([found.parameter, found.needed]).toEqual(['index-range', mm(32 * least)]);
          expect(range).toBeLessThan(least);
          return;
        }
        expect(range).toBeGreaterThanOrEqual(least);
        const strokes = found.ways.flatMap((way) => way.strokes);
        for (const { moved } of strokes) expect(Math.abs(moved)).toBeLessThanOrEqual(mm(32 * range));
        const bored = strokes.flatMap(({ wanted }) => wanted.map(({ bore }) => Number(bore.id)));
        expect([...new Set(bored)].sort((a, b) => a - b)).toEqual(holes);
        if (!meetsHolesTwice) expect(bored).toHaveLength(holes.length);
        const free = ways({ nearest, holes, stops, drill: { ...drill, indexRange: null } });
        const furthest =
          'ways' in free ? free.ways.flatMap((way) => way.strokes.map(({ moved }) => Math.abs(moved))) : [];
        if (Math.max(...furthest) > mm(32 * range)) saved += 1;
      }),
      { numRuns: 1000 },
    );
    expect(refused).toBeGreaterThan(50);
    expect(saved).toBeGreaterThan(10);
  });
  test('needs no index move where one stroke does', () => {
    expect(laid({ ...ten, holes: upTo(5), drill: { indexRange: 0 } })).toEqual([{ stop: 16, strokes: [[0, '01234']] }]);
    expect(laid({ nearest: 176, holes: [0], stops: [[48, 48]], drill: { indexRange: 0 } })).toEqual([
      { stop: 48, strokes: [[0, '4']] },
    ]);
  });
  test('goes on to the last hole, to bore it alone', () => {
    const single = { nearest: 16, holes: [0, 3], stops: [[16, 16]], drill: { spindles: 1 } } as const;
    const strokes = [
      [0, '0'],
      [-96, '0'],
    ];
    expect(laid(single)).toEqual([{ stop: 16, strokes }]);
  });
  test('has a way for each load of the spindles, the later ones moved along from the same stop', () => {
    // 9 holes cannot be shared out evenly, and the wood goes on under place 9: five and four, four pitches on.
    expect(laid({ ...ten, holes: upTo(9), behind: 48 })).toEqual([
      { stop: 16, strokes: [[0, '01234']] },
      { stop: 16, strokes: [[-128, '1234']] },
    ]);
  });
});

describe('a row without index moves', () => {
  const none = { nearest: 16, holes: upTo(6), drill: { indexPins: 'none' } } as const;
  test('is bored from a stop for each stroke, the last hole too', () => {
    const stops = [
      [16, 16],
      [176, 176],
    ] as const;
    expect(laid({ ...none, stops })).toEqual([
      { stop: 16, strokes: [[0, '01234']] },
      { stop: 176, strokes: [[0, '0']] },
    ]);
  });
  test('has no way where no stop reaches the last hole', () => {
    const stops = [
      [16, 16],
      [208, 400],
    ] as const;
    expect(laid({ ...none, stops })).toEqual(['index-pins', null]);
  });
});

describe('a full head that bores past the row', () => {
  // 8 holes: four and four, or five and three with two spindles past the row, over places 8 and 9.
  const eight = { nearest: 16, holes: upTo(8), stops: [[16, 16]] } as const;
  const other = (one: Case): unknown => {
    const found = ways(one);
    if ('parameter' in found) return found.parameter;
    return found.other && found.other.strokes.map(({ moved, wanted }) => [moved / 1000, wanted.length]);
  };
  test('is a second way where what is past the row clears the end, if only by touching it', () => {
    // Place 8 is 32 past the last hole; a bit of 5 there reaches back to 29.5.
    const full = [
      [0, 5],
      [-160, 3],
    ];
    expect(other({ ...eight, behind: 29.5 })).toEqual(full);
    expect(other({ ...eight, behind: 29.501 })).toBeNull();
  });
  test('goes further than an even share: not where the panel cannot be moved so far', () => {
    expect(laid({ ...eight, drill: { indexRange: mm(128) } })).toEqual([
      {
        stop: 16,
        strokes: [
          [0, '0123'],
          [-128, '0123'],
        ],
      },
    ]);
    expect(other({ ...eight, drill: { indexRange: mm(159.999) } })).toBeNull();
    expect(other({ ...eight, drill: { indexRange: mm(160) } })).not.toBeNull();
  });
  test('begins at the first hole: not where no stop puts the first spindle there', () => {
    // From 16 spindles 1 to 4 bore four and four.
    expect(laid({ ...eight, nearest: 48 })).toEqual([
      {
        stop: 16,
        strokes: [
          [0, '1234'],
          [-128, '1234'],
        ],
      },
    ]);
    expect(other({ ...eight, nearest: 48 })).toBeNull();
  });
  test('is the only way where an even share would need a change of bits', () => {
    // 9 holes: five and four, the fifth spindle 32 - 16 past the end.
    expect(laid({ ...eight, holes: upTo(9) })).toEqual([
      {
        stop: 16,
        strokes: [
          [0, '01234'],
          [-160, '0123'],
        ],
      },
    ]);
    expect(other({ ...eight, holes: upTo(9) })).toBeNull();
  });
  test('is none where one stroke bores the row, or the row is broken', () => {
    expect(other({ ...eight, holes: upTo(5) })).toBeNull();
    expect(other({ ...eight, holes: [...upTo(5), 6, 7, 8, 9, 10] })).toBeNull();
  });
});

describe('a spindle that bores nothing', () => {
  const limits = (one: Case): readonly number[] => {
    const found = ways(one);
    return 'parameter' in found ? [] : found.ways[0]!.load.limit.map((limit) => limit / 1000);
  };
  const three = { nearest: 16, holes: upTo(3), stops: [[16, 16]] } as const;

  test('may carry a bit that clears the end of the panel, twice as thick as that is far', () => {
    // Places 3 and 4 are 32 and 64 past the last hole, 16 and 48 past the end.
    expect(limits(three)).toEqual([Infinity, Infinity, Infinity, 32, 96]);
  });
  test('may carry none that any stroke has over wood', () => {
    // Four and four: the last spindle over place 4, then 16 past the end.
    expect(limits({ ...three, holes: upTo(8) }).at(-1)).toBe(0);
  });
  test('of a head past the back edge may carry what clears that, and of a head out of the way anything', () => {
    const far = { ...three, drill: { heads: 3 }, fence: [37, 700] };
    expect(side.width).toBe(mm(560));
    expect(limits(far).slice(5)).toEqual([280, 280, 280, 280, 280, ...new Array<number>(5).fill(Infinity)]);
    // Over the panel it is the end that counts.
    expect(limits({ ...far, fence: [37, 300] }).slice(5, 10)).toEqual([0, 0, 0, 32, 96]);
  });
});
