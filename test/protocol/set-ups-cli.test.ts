import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { demo, Folder } from './client.js';
import { borewright, type Ran } from './command-line.js';

let folder: Folder;
beforeAll(() => {
  folder = new Folder();
  for (const file of ['shed.shop.yaml', 'faults.shop.yaml', 'kitchen.carcass.yaml', 'studio.carcass.yaml'])
    folder.write(file, demo(file));
});
afterAll(() => folder.close());

/** The same command is run once. */
const ran = new Map<string, Ran>();

function run(...args: string[]): Ran {
  const known = ran.get(args.join(' '));
  if (known !== undefined) return known;
  const result = borewright(folder.path, ...args);
  ran.set(args.join(' '), result);
  return result;
}

type Face = 'inside' | 'outside' | 'reference-end' | 'far-end';
interface Hole {
  readonly face: Face;
  readonly u: number;
  readonly v: number;
  readonly diameter: number;
  readonly depth: number;
  readonly through: boolean;
}
interface Step {
  readonly down: 'inside' | 'outside';
  readonly edge: string;
  readonly end: 'reference-end' | 'far-end';
  readonly stop: string;
  readonly moved: number;
  readonly spindles: readonly { readonly head: number; readonly spindle: number; readonly diameter: number }[];
  readonly holes: readonly (Hole & { readonly bore: string })[];
}
interface SetUp {
  readonly id: string;
  readonly machine: string;
  readonly kind: 'vertical' | 'horizontal' | 'line' | 'cup';
  readonly fence: readonly number[];
  readonly height: number | null;
  readonly stops: readonly { readonly name: string; readonly side: 'left' | 'right'; readonly position: number }[];
  readonly extension: boolean;
  readonly depth: number;
  readonly through: boolean;
  readonly spindles: Step['spindles'];
  readonly changeoverSeconds: number;
  readonly changes: { readonly stops: readonly string[]; readonly bits: number };
  readonly panels: readonly { readonly carcass: string; readonly panel: string; readonly steps: readonly Step[] }[];
}
interface Planned {
  readonly setups: readonly SetUp[];
  readonly unreachable: readonly {
    readonly carcass: string;
    readonly panel: string;
    readonly bores: readonly string[];
  }[];
  readonly changeover: {
    readonly seconds: number;
    readonly least: number;
    readonly proven: boolean;
    readonly provenOnce: boolean;
    readonly gap: number;
  };
  readonly replay: {
    readonly panels: number;
    readonly holes: number;
    readonly differences: readonly unknown[];
    readonly notReplayed: readonly unknown[];
  };
}
interface Panel {
  readonly name: string;
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  readonly bores: readonly (Hole & { readonly id: string })[];
}
interface Panels {
  readonly carcasses: readonly { readonly name: string; readonly panels: readonly Panel[] }[];
}

const PITCH = 32;
/** Spindles of a head: of the shed's machines, and of the built-in shop's. */
const SHED = { vertical: 21, horizontal: 21, line: 23, cup: 1 } as const;
const BUILT_IN = { vertical: 24, horizontal: 22, line: 27, cup: 1 } as const;
type Spindles = Readonly<Record<keyof typeof SHED, number>>;

/**
 * The holes of a stroke, from the settings alone: distances from the stop to each spindle, by the words of the set-up
 * set-up's frame. All heads of both shops bore from above, with a far fence.
 */
function holesOf(spindles: Spindles, setUp: SetUp, step: Step, { length, width, thickness }: Panel): Hole[] {
  const stop = setUp.stops.find(({ name }) => name === step.stop)!;
  const last = spindles[setUp.kind] - 1;
  const way = stop.side === 'left' ? 1 : -1;
  const from = (spindle: number): number =>
    stop.position + (stop.side === 'left' ? spindle : last - spindle) * PITCH - way * step.moved;
  return step.spindles.flatMap(({ head, spindle, diameter }): Hole[] => {
    if (setUp.kind === 'horizontal') {
      const u = from(spindle);
      const v = step.down === 'outside' ? setUp.height! : thickness - setUp.height!;
      return u > 0 && u < width ? [{ face: step.end, u, v, diameter, depth: setUp.depth, through: false }] : [];
    }
    const u = setUp.kind === 'vertical' ? setUp.fence[0]! + spindle * PITCH : setUp.fence[head]!;
    const along = setUp.kind === 'vertical' ? stop.position : from(spindle);
    const v = step.end === 'reference-end' ? along : length - along;
    const face = step.down === 'outside' ? 'inside' : 'outside';
    const depth = setUp.through ? thickness : setUp.depth;
    const isOver = u > 0 && u < width && along > 0 && along < length;
    return isOver ? [{ face, u, v, diameter, depth, through: setUp.through }] : [];
  });
}

const key = ({ face, u, v, diameter, depth, through }: Hole): string =>
  // Micrometres, since sums of millimetres are not exact.
  [face, ...[u, v, diameter, depth].map((length) => Math.round(length * 1000)), through].join(' ');

describe.each([
  ['kitchen.carcass.yaml', SHED],
  ['studio.carcass.yaml', BUILT_IN],
] as const)('setups %s', (file, spindles) => {
  let planned: Planned;
  let panels: Map<string, Panel>;
  beforeAll(() => {
    const { code, out, err } = run('setups', file, '--format', 'json');
    expect({ code, err }).toEqual({ code: 0, err: '' });
    planned = JSON.parse(out) as Planned;
    const { carcasses } = JSON.parse(run('panels', file, '--format', 'json').out) as Panels;
    panels = new Map(
      carcasses.flatMap(({ name, panels: own }) => own.map((panel) => [`${name} ${panel.name}`, panel])),
    );
  });

  const wanted = (): string[] =>
    [...panels].flatMap(([name, { bores }]) => bores.map((bore) => `${name}: ${key(bore)}`)).sort();
  const gathered = (of: (setUp: SetUp, step: Step, panel: Panel) => readonly Hole[]): string[] =>
    planned.setups
      .flatMap((setUp) =>
        setUp.panels.flatMap(({ carcass, panel, steps }) => {
          const name = `${carcass} ${panel}`;
          return steps.flatMap((step) => of(setUp, step, panels.get(name)!).map((hole) => `${name}: ${key(hole)}`));
        }),
      )
      .sort();

  test('the holes that its steps list are the bores of the panels, each once', () => {
    expect(gathered((_, { holes }) => holes)).toEqual(wanted());
    expect(planned.unreachable).toEqual([]);
  });

  test('carried out by its figures alone, it gives the bores of the panels', () => {
    expect(gathered((...of) => holesOf(spindles, ...of))).toEqual(wanted());
    expect(planned.replay).toMatchObject({
      holes: wanted().length,
      panels: panels.size,
      differences: [],
      notReplayed: [],
    });
  });

  test('every panel keeps its references: front edge, and nothing but the outside face down where it matters', () => {
    const steps = planned.setups.flatMap(({ panels: runs }) => runs.flatMap((one) => one.steps));
    expect(new Set(steps.map(({ edge }) => edge))).toEqual(new Set(['front']));
    const ends = planned.setups.filter(({ kind }) => kind === 'horizontal').flatMap(({ panels: runs }) => runs.flatMap((one) => one.steps)); // prettier-ignore
    expect(new Set(ends.map(({ down }) => down))).toEqual(new Set(['outside']));
  });

  test('changeovers add up, and no order that turns the head once takes less', () => {
    const { seconds, least, proven, provenOnce, gap } = planned.changeover;
    expect(planned.setups.reduce((sum, one) => sum + one.changeoverSeconds, 0)).toBe(seconds);
    expect({ proven, provenOnce, gap }).toEqual({ proven: least === seconds, provenOnce: true, gap: seconds - least });
    expect(gap).toBeLessThan(seconds * 0.03);
    expect(new Set(planned.setups.map(({ id }) => id)).size).toBe(planned.setups.length);
    const [first] = planned.setups;
    expect(first!.changes.stops).toEqual(first!.stops.map(({ name }) => name));
  });
});

test('the shape of a set-up, in millimetres', () => {
  const { out } = run('setups', 'kitchen.carcass.yaml', '--format', 'json');
  const { setups } = JSON.parse(out) as Planned;
  const one = setups.find(({ panels }) =>
    panels.some(({ carcass, panel }) => carcass === 'larder' && panel === 'left'),
  );
  const setUp = setups.find(({ stops }) => stops.some(({ position }) => position === 712))!;
  expect(one).toBeDefined();
  expect({ ...setUp, panels: [], changes: null, changeoverSeconds: null }).toEqual({
    id: 'borer-up-C',
    machine: 'borer-up',
    kind: 'vertical',
    fence: [21],
    height: null,
    stops: [
      { name: 'near-left', side: 'left', position: 8 },
      { name: 'long-left', side: 'left', position: 712 },
      { name: 'near-right', side: 'right', position: 8 },
      { name: 'long-right', side: 'right', position: 712 },
    ],
    extension: false,
    depth: 12,
    thickness: 16,
    through: false,
    spindles: [0, 2, 5, 7, 13, 15].map((spindle) => ({ head: 0, spindle, diameter: 8 })),
    changeoverSeconds: null,
    changes: null,
    panels: [],
    refused: [],
  });
  const shelf = setUp.panels
    .find(({ carcass, panel }) => carcass === 'larder' && panel === 'left')!
    .steps.find(({ stop }) => stop === 'long-left')!;
  expect(shelf).toMatchObject({ down: 'outside', edge: 'front', end: 'reference-end', moved: 0 });
  expect(shelf.holes[0]).toEqual({
    face: 'inside',
    u: 21,
    v: 712,
    diameter: 8,
    depth: 12,
    through: false,
    bore: 'left:shelf-1/left:1',
  });
});

describe('as text', () => {
  test('a part a set-up: cautions first, then what stands how, then panel by panel', () => {
    const { code, out, err } = run('setups', 'kitchen.carcass.yaml');
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toMatch(
      /^Kitchen and back workshop\n22 set-ups, \d+ strokes; no fewer set-ups make these strokes\. Changeovers take 2 h 14 min 30 s in all\. No order that goes to each machine once takes less\.\nIn all 3 h 14 min 7 s at the boring machines: changeovers 2 h 14 min 30 s, boring 59 min 37 s \(117 panel runs, 197 strokes, 8 index moves\)\.\nThe changeovers of 2 h 14 min 30 s are made up of: bits 1 h 19 min 30 s, .+\nWhat costs most: jigs: .+\nReplayed/,
    );
    const parts = out.split(/^=+\nSet-up /m).slice(1);
    expect(parts).toHaveLength(22);
    for (const part of parts) {
      expect(part.indexOf('isolate it from power')).toBeGreaterThan(0);
      expect(part.indexOf('isolate it from power')).toBeLessThan(part.indexOf('depth'));
    }
    const shelves = parts.find((part) => part.includes(': borer-up-C '))!;
    expect(shelves).toContain('* long-left   712 mm');
    expect(shelves).toContain('    fence       21 mm to spindle 1');
    expect(shelves).toContain('The outside face lies down in every stroke');
    expect(shelves).toMatch(
      /larder left +2064 × 560 × 16 mm +1 {2}Bottom end at near-left \(.*near-right.* down\), 6 holes/,
    );
    expect(shelves).toMatch(/Bottom end at long-left|bottom end at long-left/);
  });

  test('half turns, index moves and slides are told where they come', () => {
    const { out } = run('setups', 'kitchen.carcass.yaml');
    expect(out).toMatch(
      /1 {2}Left end to the head, front edge at square-left.*\n +2 {2}Turn it through half a turn, flat on the table: right end to the head, front edge at square-right/,
    );
    expect(out).toMatch(/2 {2}Move it along 736 mm to the left, 23 pitches, onto the pins in the row/);
    expect(out).toMatch(/2 {2}Slide it along: top end at near-right/);
  });

  test('the set-ups of one machine keep their numbers in the whole order', () => {
    const whole = run('setups', 'kitchen.carcass.yaml').out;
    const { code, out } = run('setups', 'kitchen.carcass.yaml', '--machine', 'borer-level');
    expect(code).toBe(0);
    const titles = (text: string): string[] => text.split('\n').filter((line) => /^Set-up \d+ of \d+/.test(line));
    expect(titles(out)).toEqual(titles(whole).filter((title) => title.includes('borer-level')));
    expect(titles(out).length).toBeGreaterThan(1);
    expect(titles(out).length).toBeLessThan(titles(whole).length);
    const { setups } = JSON.parse(
      run('setups', 'kitchen.carcass.yaml', '--machine', 'borer-level', '--format', 'json').out,
    ) as Planned;
    expect(setups).toHaveLength(titles(out).length);
    expect(out).toContain(`In this part: ${titles(out).length} set-ups, `);
    // Both heads of one body.
    const both = titles(run('setups', 'kitchen.carcass.yaml', '--machine', 'borer').out);
    expect(both).toEqual(titles(whole).filter((title) => /borer-(up|level)/.test(title)));
    const none = run('setups', 'kitchen.carcass.yaml', '--machine', 'lathe');
    expect(none).toMatchObject({ code: 2, out: '' });
    expect(none.err).toContain('row-drill');
  });

  test('sizes in inches where the job is, machines in millimetres where the shop file is', () => {
    const { out } = run('setups', 'studio.carcass.yaml');
    expect(out).toMatch(/fence +21 mm to spindle 1/);
    expect(out).toMatch(/stop A +9\.5 mm from its face to the line of spindles/);
    expect(out).toContain('28.465 × 22 × 0.748 in');
    expect(out).toMatch(/Bottom end at stop A \(stop C down\)/);
  });
});

describe('exit codes', () => {
  test('1 with broken carcasses: the others are planned, and it is said which are not', () => {
    folder.write(
      'half.carcass.yaml',
      'unit: mm\nshop: shed.shop.yaml\ncarcasses:\n  good: { kind: wall, width: 600 }\n  bad: { kind: base, width: 6oo }\n',
    );
    const { code, out, err } = run('setups', 'half.carcass.yaml', '--format', 'json');
    expect(code).toBe(1);
    const { setups, replay } = JSON.parse(out) as Planned;
    expect(new Set(setups.flatMap(({ panels }) => panels.map(({ carcass }) => carcass)))).toEqual(new Set(['good']));
    expect(replay.differences).toEqual([]);
    expect(err).toMatch(/half\.carcass\.yaml:5:\d+: error length-impossible/);
    expect(err).toContain('no set-ups for bad');
    expect(run('setups', 'half.carcass.yaml').out).toMatch(/^LEFT OUT: bad\. /m);
  });

  test('1 with bores that no machine makes: they are listed, and the rest is planned', () => {
    folder.write(
      'far.carcass.yaml',
      'unit: mm\nshop: faults.shop.yaml\ncarcasses:\n  tall: { kind: tall, width: 600, fixed-shelves: [1032] }\n',
    );
    const { code, out, err } = run('setups', 'far.carcass.yaml', '--format', 'json');
    const { unreachable, setups } = JSON.parse(out) as Planned;
    expect(code).toBe(1);
    expect(unreachable.map(({ panel, bores }) => [panel, bores.length])).toEqual([
      ['left', 5],
      ['right', 5],
    ]);
    expect(setups.length).toBeGreaterThan(0);
    expect(err).toContain('error shelf-past-stop');
    expect(run('setups', 'far.carcass.yaml').out).toContain('NOT BORED: 5 holes of tall left. No stop of ‘upright’');
  });

  test('1 with bores that are wrong in themselves: no set-up says how to bore that panel', () => {
    folder.write(
      'twice.carcass.yaml',
      'unit: mm\nshop: shed.shop.yaml\ncarcasses:\n  a: { kind: base, width: 600, dowels: [37, 181, 485] }\n',
    );
    const { code, out, err } = run('setups', 'twice.carcass.yaml');
    expect(code).toBe(1);
    expect(err).toContain('error bores-collide');
    expect(err).toContain('do not bore left of a, right of a from these set-ups');
    expect(out).toContain('NOT BORED: 51 holes of a left. Its bores have errors; correct these first.');
    expect(out).not.toMatch(/a left +720 × 560 × 16 mm +1 /);
  });

  test('1 where two carcasses have one name: the first is planned', () => {
    folder.write(
      'same.carcass.yaml',
      'unit: mm\nshop: shed.shop.yaml\ncarcasses:\n  a: { kind: base, width: 600 }\n  a: { kind: wall, width: 500 }\n',
    );
    const { code, out, err } = run('setups', 'same.carcass.yaml', '--format', 'json');
    expect(code).toBe(1);
    expect(err).toContain('error name-duplicate');
    expect((JSON.parse(out) as Planned).replay).toMatchObject({ differences: [] });
  });

  test('2 where it could not run', () => {
    expect(run('setups').code).toBe(2);
    expect(run('setups', 'nobody.carcass.yaml')).toMatchObject({ code: 2, out: '' });
    expect(run('setups', 'kitchen.carcass.yaml', '--format', 'csv')).toMatchObject({ code: 2, out: '' });
    expect(run('setups', 'kitchen.carcass.yaml', 'studio.carcass.yaml').code).toBe(2);
    expect(run('setups', 'shed.shop.yaml').err).toContain('this is a shop file');
  });

  test('an empty job says so', () => {
    folder.write('empty.carcass.yaml', 'unit: mm\n');
    const { code, out } = run('setups', 'empty.carcass.yaml', '--format', 'json');
    expect(code).toBe(1);
    expect(JSON.parse(out)).toMatchObject({
      setups: [],
      fewest: { setups: 0, least: 0, gap: 0 },
      changeover: { seconds: 0, least: 0, proven: true, gap: 0 },
    });
  });
});
