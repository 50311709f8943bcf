import { describe, expect, test } from 'vitest';
import { blankOf } from '../../../../shared-core/machining/blank.js';
import { changesBetween, settingsOf } from '../../../../shared-core/machining/plan/changeover.js';
import { headsOver } from '../../../../shared-core/machining/plan/heads.js';
import { handOfEnd, handOfFrontEdge } from '../../../../shared-core/machining/plan/orientation.js';
import { orderSetUps } from '../../../../shared-core/machining/plan/plan.js';
import { setUpsOf } from '../../../../shared-core/machining/plan/set-ups.js';
import { replayPanel } from '../../../../shared-core/machining/replay/replay.js';
import type { LineDrill, Machine, Shop } from '../../../../shared-core/shop/model.js';
import { mm } from '../../specs.js';
import { demoJob, readJob, secondsOf, shed } from './jobs.js';

const cupboard = `unit: mm
carcasses:
  cupboard: { kind: base, width: 600, loose-shelves: 1 }
`;

/** The demo's shop with one machine changed. */
function shedWith<K extends Machine['kind']>(kind: K, change: Partial<Extract<Machine, { kind: K }>>): Shop {
  const machines = [...shed.machines.values()].map((machine) =>
    machine.kind === kind ? { ...machine, ...change } : machine,
  );
  return { ...shed, machines: new Map(machines.map((machine) => [machine.name, machine])) };
}

const missed = (text: string, shop: Shop): [string, string | null, number | null][] =>
  readJob(text, shop).flatMap(({ operations }) =>
    operations.unreachable.map((one): [string, string | null, number | null] => [one.panel, one.parameter, one.needed]),
  );

describe('sides and their mirror images', () => {
  const setUps = setUpsOf(readJob(cupboard, shed).map((one) => one.operations)).map(({ setUp }) => setUp);

  test('left and right are served by mirrored stops of one set-up', () => {
    const lines = setUps.filter((setUp) => setUp.machine.kind === 'vertical');
    expect(lines).not.toHaveLength(0);
    for (const setUp of lines) {
      const [left, right] = setUp.stops;
      expect([left?.side, right?.side]).toEqual(['left', 'right']);
      expect(left?.position).toBe(right?.position);
      const stopOf = (panel: string): string[] =>
        setUp.runs.filter((run) => run.panel === panel).flatMap((run) => run.steps.map((step) => step.stop));
      const mirrored = (stop: string): string =>
        stop.replace(/left|right/, (hand) => (hand === 'left' ? 'right' : 'left'));
      expect(stopOf('left').length).toBeGreaterThan(0);
      expect(stopOf('right')).toEqual(stopOf('left').map(mirrored));
    }
  });

  test('the front edge is at the fence and the outside face down in every construction bore of a dowelled box', () => {
    for (const { runs } of setUps) {
      for (const { edge, down } of runs.flatMap((run) => run.steps)) expect([edge, down]).toEqual(['front', 'outside']);
    }
  });

  test.each([
    ['reference-end', 'outside', 'right', 'far', 'left'],
    ['far-end', 'outside', 'right', 'far', 'right'],
    ['reference-end', 'outside', 'left', 'far', 'right'],
    ['reference-end', 'inside', 'right', 'far', 'right'],
    ['reference-end', 'outside', 'right', 'near', 'right'],
    ['reference-end', 'inside', 'left', 'near', 'right'],
  ] as const)('%s, %s face down, %s-handed, fence %s: to the %s', (end, down, hand, fence, side) => {
    expect(handOfEnd(end, down, hand, fence)).toBe(side);
  });

  test('half a turn on the table takes the front edge to the other hand', () => {
    expect(handOfFrontEdge('far-end', 'outside', 'right')).toBe('left');
    expect(handOfFrontEdge('reference-end', 'outside', 'right')).toBe('right');
  });
});

test.each([
  // Two pitches of 32 from the top end are 64: a line nearer than that belongs to what closes the box there.
  [720, 640, ['reference-end', mm(640)]],
  [720, 640.001, ['far-end', mm(703.999 - 640)]],
  [720, 600, ['reference-end', mm(600)]],
  // Of a side 88 long too, but to the end that is nearer: the very middle to the bottom.
  [104, 44, ['reference-end', mm(44)]],
  [104, 44.001, ['far-end', mm(43.999)]],
])('in a carcass %d high a shelf %d up is set out from the end that it belongs to', (height, at, wanted) => {
  const text = `unit: mm
carcasses:
  a: { kind: base, width: 600, height: ${height}, top: over, rows: none, fixed-shelves: [${at}] }
`;
  // However small a panel is.
  const anySize = shedWith('vertical', { panel: { length: null, width: null, thickness: null } });
  const ways = readJob(text, anySize).flatMap(({ operations }) =>
    operations.operations.filter(({ panel }) => panel === 'left').flatMap(({ ways: [way] }) => (way ? [way] : [])),
  );
  expect(ways.map(({ end, position }) => [end, position])).toContainEqual(wanted);
});

describe('one depth stop, one thickness', () => {
  const mixed = `carcasses:
  thin: { kind: wall, width: 600, joint: dowel-8x30 }
  thick: { kind: wall, width: 600, joint: dowel-8x30, board: birch-19 }
`;
  const thicknessesIn = (shop: Shop): Set<number>[] => {
    const jobs = readJob(mixed, shop);
    const thicknessOf = (carcass: string, panel: string): number =>
      jobs.find(({ spec }) => spec.name.value === carcass)!.carcass.panels.find(({ key }) => key === panel)!.thickness;
    return setUpsOf(jobs.map((one) => one.operations)).flatMap(({ setUp: { machine, runs } }) =>
      machine.kind === 'line' ? [new Set(runs.map(({ carcass, panel }) => thicknessOf(carcass, panel)))] : [],
    );
  };

  test('where the bits come from above, since the head stops over the table', () => {
    expect(thicknessesIn(shed).map((found) => [...found])).toEqual([[mm(16)], [mm(19)]]);
  });
  test('where they come from below one setting serves both', () => {
    const rowOffset = { ...shed, habits: { ...shed.habits, rowOffset: mm(8) } };
    const machines = new Map(rowOffset.machines);
    const rowDrill = machines.get('row-drill') as LineDrill;
    machines.set('row-drill', { ...rowDrill, from: 'below' });
    expect(thicknessesIn({ ...rowOffset, machines }).map((found) => [...found])).toEqual([[mm(16), mm(19)]]);
  });
  test('another thickness is another setting of the depth', () => {
    const setUps = setUpsOf(readJob(mixed, shed).map((one) => one.operations)).filter(
      ({ setUp }) => setUp.machine.kind === 'line',
    );
    expect(changesBetween(settingsOf(setUps[0]!.batch), settingsOf(setUps[1]!.batch)).depth).toBe(true);
  });
});

test('stops of one hand never stand past each other where their ranges let them do otherwise', () => {
  const job = cupboard.replace('base, width: 600', 'tall, width: 900, dividers: 2, fixed-shelves: [360, 680, 1000]');
  const borer = shed.machines.get('borer-up');
  if (borer?.kind !== 'vertical') throw new Error('the demo’s shop has changed');
  const long = shedWith('vertical', {
    stops: borer.stops.map((stop) => ({ ...stop, range: { min: 0, max: mm(1300) } })),
  });
  const setUps = setUpsOf(readJob(job, long).map((one) => one.operations)).map(({ setUp }) => setUp);
  const pairs = setUps.flatMap(({ machine, stops }) =>
    machine.kind === 'vertical'
      ? (['left', 'right'] as const).map((side) => stops.filter((stop) => stop.side === side))
      : [],
  );
  expect(pairs.some((pair) => pair.length > 1)).toBe(true);
  // In the order of the shop file, which is that of their names here: near before long.
  for (const pair of pairs)
    expect(pair.map(({ position }) => position)).toEqual(pair.map(({ position }) => position).sort((a, b) => a - b));
});

const drill = shed.machines.get('row-drill') as LineDrill;

describe('what a machine cannot do, with the parameter that would allow it', () => {
  test('all of it can be done in the demo’s shop', () => {
    expect(missed(cupboard, shed)).toEqual([]);
  });
  test('no stop on one hand', () => {
    const onlyLeft = shedWith('line', { stops: drill.stops.filter((stop) => stop.side === 'left') });
    // The right side can still be set out from its top end, since that comes to lie left.
    expect(missed(cupboard, onlyLeft)).toEqual([]);
    expect(missed(cupboard, shedWith('line', { stops: [] }))).toEqual([
      ['left', 'stops', mm(8)],
      ['right', 'stops', mm(8)],
    ]);
  });
  test('a throat that is not deep enough', () => {
    expect(missed(cupboard, shedWith('line', { throat: mm(480) }))).toEqual([
      ['left', 'throat', mm(485)],
      ['right', 'throat', mm(485)],
    ]);
  });
  test('spindles that cannot come down to the half thickness', () => {
    const found = missed(cupboard, shedWith('horizontal', { height: { min: mm(9), max: mm(40) } }));
    expect(new Set(found.map(([, parameter, needed]) => `${parameter} ${needed}`))).toEqual(new Set(['height 8000']));
    expect(found.map(([panel]) => panel)).toContain('bottom');
  });
  test('a spindle line that is too short for the depth', () => {
    const found = missed(cupboard.replace('600', '600, dowels: [53, 501]'), shedWith('vertical', { spindles: 9 }));
    expect(found).toContainEqual(['left', 'spindles', mm(501)]);
    expect(found).toContainEqual(['right', 'spindles', mm(501)]);
  });
  test('of the places of a joint only those past the reach', () => {
    const deep = cupboard.replace('base, width: 600', 'wall, width: 600, depth: 560, dowels: [53, 501]');
    const one = readJob(deep, shedWith('vertical', { spindles: 9 }));
    const places = one.flatMap(({ operations }) =>
      operations.unreachable.flatMap(({ bores }) => bores.map(({ u }) => u)),
    );
    expect(new Set(places)).toEqual(new Set([mm(501)]));
  });
  test('a row longer than one stroke, and no index pins', () => {
    const tall = cupboard.replace('base', 'tall');
    expect(missed(tall, shed)).toEqual([]);
    // From both ends, with the stops set further out for each stroke, it can still be done.
    expect(missed(tall, shedWith('line', { indexPins: 'none' }))).toEqual([]);
    const near = drill.stops.map((stop) => ({ ...stop, range: { min: 0, max: mm(20) } }));
    expect(missed(tall, shedWith('line', { indexPins: 'none', stops: near }))).toEqual([
      ['left', 'index-pins', null],
      ['right', 'index-pins', null],
    ]);
  });
  test('a row longer than the panel can be moved along', () => {
    // 65 holes by 23 spindles: from the first hole on, the last spindle comes over the last one 64 - 22 pitches further.
    expect(missed(cupboard.replace('base', 'tall'), shedWith('line', { indexRange: mm(300) }))).toEqual([
      ['left', 'index-range', mm(42 * 32)],
      ['right', 'index-range', mm(42 * 32)],
    ]);
  });
  test('balanced rows without index pins are bored from both ends', () => {
    const short = shedWith('line', {
      indexPins: 'none',
      spindles: 13,
      stops: drill.stops.map((stop) => ({ ...stop, range: { min: 0, max: mm(20) } })),
    });
    expect(missed(cupboard, short)).toEqual([]);
    const runs = setUpsOf(readJob(cupboard, short).map((one) => one.operations))
      .flatMap(({ setUp }) => (setUp.machine.kind === 'line' ? setUp.runs : []))
      .filter((run) => run.panel === 'left');
    expect(runs.flatMap((run) => run.steps.map((step) => [step.end, step.holes.length]))).toEqual([
      ['reference-end', 24],
      ['far-end', 22],
    ]);
  });
  test('rows whose stop cannot be lowered for an index move are bored from both ends too', () => {
    const fixed = shedWith('line', {
      spindles: 13,
      stops: drill.stops.map((stop) => ({ ...stop, range: { min: 0, max: mm(20) }, lowers: false })),
    });
    expect(missed(cupboard, fixed)).toEqual([]);
    // On one hand only there is no second end to bore from.
    const oneHand = fixed.machines.get('row-drill') as LineDrill;
    const stops = oneHand.stops.filter(({ side }) => side === 'left');
    const machines = new Map(fixed.machines).set('row-drill', { ...oneHand, stops });
    expect(missed(cupboard, { ...fixed, machines }).map(([, parameter]) => parameter)).toEqual(['lowers', 'lowers']);
  });
  test('a bit that the shop has not', () => {
    expect(missed(cupboard, { ...shed, bits: [mm(8)] })).toEqual([
      ['left', 'bits', mm(5)],
      ['right', 'bits', mm(5)],
    ]);
  });
});

describe('a line longer than the spindle line', () => {
  test('of one spindle is bored place by place, each with the fence set anew', () => {
    const job = cupboard.replace('base, width: 600', 'wall, width: 600, dowels: [53, 181, 245]');
    const vertical = shed.machines.get('borer-up');
    const machines = new Map(
      shedWith('vertical', { spindles: 1, fenceOffset: { min: mm(20), max: mm(500) } }).machines,
    );
    const level = shed.machines.get('borer-level');
    if (vertical?.kind !== 'vertical' || level?.kind !== 'horizontal') throw new Error('the demo’s shop has changed');
    const stops = level.stops.map((stop) => ({ ...stop, range: { min: mm(20), max: mm(500) } }));
    machines.set(level.name, { ...level, spindles: 1, stops });
    const shop = { ...shed, machines };
    expect(missed(job, shop)).toEqual([]);
    const setUps = setUpsOf(readJob(job, shop).map((one) => one.operations)).map(({ setUp }) => setUp);
    const fences = setUps.flatMap(({ machine, fence }) => (machine.kind === 'vertical' ? fence : []));
    expect([...new Set(fences)].sort((a, b) => a - b)).toEqual([mm(53), mm(181), mm(245)]);
  });
  test('is bored in the fewest strokes', () => {
    // Places 0, 4, 6 and 7 pitches on: five spindles take the first two at once, then the rest.
    const job = cupboard.replace('base, width: 600', 'wall, width: 600, dowels: [53, 181, 245, 277]');
    const setUps = setUpsOf(
      readJob(job, shedWith('vertical', { spindles: 5, fenceOffset: { min: mm(20), max: mm(300) } })).map(
        (one) => one.operations,
      ),
    );
    const left = setUps.flatMap(({ setUp }) =>
      setUp.machine.kind === 'vertical' ? setUp.runs.filter((run) => run.panel === 'left') : [],
    );
    // Bottom and top, each in two strokes.
    expect(left.flatMap((run) => run.steps.map((step) => step.holes.length))).toEqual([2, 2, 2, 2]);
  });
});

describe('rows longer than the spindle line', () => {
  const tall = cupboard.replace('base', 'tall');
  const rowsIn = (shop: Shop) =>
    setUpsOf(readJob(tall, shop).map((one) => one.operations))
      .map(({ setUp }) => setUp)
      .filter((setUp) => setUp.machine.kind === 'line');

  test('take a full head as it is, its last spindles in the air past the end: one set-up for both sides, no bit changed', () => {
    const setUps = rowsIn(shed);
    expect(setUps).toHaveLength(1);
    const holes = setUps[0]?.runs.map((run) => run.steps.map((step) => step.holes.length));
    expect(holes).toEqual([
      [46, 46, 38],
      [46, 46, 38],
    ]);
  });

  test('where half a head twice would do, still take the full head where left and right then share their bits', () => {
    // 24 holes of 8 mm from both ends of 752 mm; 13 spindles: 12 twice are other bits from the left than from the right.
    const thirteen = shedWith('line', { spindles: 13 });
    const setUps = setUpsOf(
      readJob('carcasses:\n  a: { kind: wall, width: 600, height: 752, loose-shelves: 1 }\n', thirteen).map(
        ({ operations }) => operations,
      ),
    ).filter(({ setUp }) => setUp.machine.kind === 'line');
    expect(setUps).toHaveLength(1);
    const { runs } = setUps[0]!.setUp;
    expect(runs.map(({ panel }) => panel)).toEqual(['left', 'right']);
    for (const { steps } of runs) {
      expect(steps.map(({ holes }) => holes.length)).toEqual([26, 22]);
      expect(new Set(steps[0]!.spindles.map(({ spindle }) => spindle)).size).toBe(13);
    }
  });

  test('where bits must change, what moves along on pins comes after what bores the holes for them', () => {
    // No stop can be set so that every third stroke begins at a stop, and 10 spindles do not divide 65 holes in equal steps.
    const held = { ...shed, machines: new Map(shed.machines) };
    held.machines.set('row-drill', { ...drill, spindles: 10, indexRange: mm(2080 - 13 * 32) });
    const plan = orderSetUps(setUpsOf(readJob(tall, held).map((one) => one.operations)), shed.changeover);
    const steps = plan.setUps.flatMap(({ setUp }) =>
      setUp.runs.filter((run) => run.panel === 'left' && setUp.machine.kind === 'line').flatMap((run) => run.steps),
    );
    expect(steps[0]?.moved).toBe(0);
  });
});

describe('bores that go through', () => {
  const screwed = cupboard.replace('width: 600', 'width: 600, joint: screw-7x50');
  const through = (shop: Shop) => {
    const carcasses = readJob(screwed, shop);
    const setUps = setUpsOf(carcasses.map((one) => one.operations)).map(({ setUp }) => setUp);
    return { carcasses, setUps, found: setUps.filter((setUp) => setUp.through) };
  };

  test('have the depth stop beyond the thickness by the shop’s allowance, and a depth of the thickness in the bore map', () => {
    const { found } = through(shed);
    expect(found.length).toBeGreaterThan(0);
    for (const { depth, runs } of found) {
      expect(depth).toBe(mm(16) + shed.habits.throughAllowance);
      for (const { depth: bored, through: out } of runs.flatMap(({ steps }) => steps.flatMap(({ holes }) => holes))) {
        expect([bored, out]).toEqual([mm(16), true]);
      }
    }
  });
  test('so go through a board that is a little thick, where a stop at the thickness would not let them', () => {
    const thick = (shop: Shop): boolean[] => {
      const { carcasses, setUps, found } = through(shop);
      const panels = new Set(found.flatMap(({ runs }) => runs.map(({ panel }) => panel)));
      return carcasses.flatMap(({ spec, carcass }) =>
        carcass.panels
          .filter(({ key }) => panels.has(key))
          .map((panel) => {
            const blank = { ...blankOf(panel), thickness: panel.thickness + shed.tolerances.thickness };
            return replayPanel(
              setUps.filter((setUp) => setUp.through),
              spec.name.value,
              panel.key,
              blank,
            ).ok;
          }),
      );
    };
    expect(new Set(thick(shed))).toEqual(new Set([true]));
    expect(new Set(thick({ ...shed, habits: { ...shed.habits, throughAllowance: 0 } }))).toEqual(new Set([false]));
  });
  test('cannot be made where the machine does not go so deep', () => {
    expect(missed(screwed, shedWith('vertical', { depth: { min: mm(2), max: mm(17) } }))).toContainEqual([
      'left',
      'depth',
      mm(16) + shed.habits.throughAllowance,
    ]);
  });
});

describe('heads over rows', () => {
  const three = { ...drill, heads: 3, headDistance: { min: mm(100), max: mm(200) } };
  test.each([
    ['front and rear in one stroke', [mm(37), mm(485)], drill, { fence: [mm(37), mm(485)], over: [0, 1] }],
    ['a rear row alone, by the second head', [mm(485)], drill, { fence: [mm(37), mm(485)], over: [1] }],
    [
      'a head between that carries no bits',
      [mm(37), mm(377)],
      three,
      { fence: [mm(37), mm(207), mm(377)], over: [0, 2] },
    ],
  ] as const)('%s', (_, rows, machine, places) => {
    expect(headsOver(rows, machine, mm(37))).toEqual(places);
  });
  test('too far apart', () => {
    expect(headsOver([mm(37), mm(485)], three, mm(37))).toMatchObject({ parameter: 'head-distance', needed: mm(448) });
  });
});

describe('the order of the set-ups', () => {
  const setUps = setUpsOf(demoJob('kitchen.carcass.yaml', shed).map((one) => one.operations));
  const plan = orderSetUps(setUps, shed.changeover);

  test('runs every set-up once', () => {
    expect(plan.setUps.map((one) => one.setUp.id).sort()).toEqual(setUps.map((one) => one.setUp.id).sort());
  });
  test('costs what its changeovers cost, and no less than the bound', () => {
    expect(plan.setUps.reduce((sum, one) => sum + one.seconds, 0)).toBe(plan.seconds);
    expect(plan.leastSeconds).toBeLessThanOrEqual(plan.seconds);
    // The gap of this job, which the set-up list prints; of orders that turn the borer's head once, none takes less.
    expect((plan.seconds - plan.leastSeconds) / plan.seconds).toBeLessThan(0.03);
    expect(plan.provenOnce).toBe(true);
  });
  test('beats running the set-ups as they come', () => {
    expect(plan.seconds).toBeLessThan(secondsOf(setUps, shed));
  });
  test('does not depend on chance', () => {
    expect(orderSetUps(setUps, shed.changeover)).toEqual(plan);
  });
});
