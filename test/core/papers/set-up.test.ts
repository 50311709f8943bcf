import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Engine, type JobAnalysis } from '../../../shared-core/engine.js';
import { orderSetUps } from '../../../shared-core/machining/plan/plan.js';
import { setUpsOf } from '../../../shared-core/machining/plan/set-ups.js';
import { standingSpindles, stopFace } from '../../../shared-core/machining/replay/table.js';
import type { LoadedSpindle, SetUp } from '../../../shared-core/machining/set-up.js';
import { contentOf } from '../../../shared-core/papers/set-up/content.js';
import { handledWords, laidRuns, layRules } from '../../../shared-core/papers/set-up/lay.js';
import { rowStrokes } from '../../../shared-core/papers/set-up/row-strokes.js';
import { bitChanges, changeSentences, inOrder, settingsOf } from '../../../shared-core/papers/set-up/settings.js';
import { setUpBlocks } from '../../../shared-core/papers/set-up/paper.js';
import { bitWords } from '../../../shared-core/papers/set-up/spindles.js';
import { totalsWords } from '../../../shared-core/papers/set-up/totals.js';
import { timeWords, type JobWords } from '../../../shared-core/papers/set-up/words.js';
import { jobArbitrary } from '../arbitraries.js';
import { bored } from '../machining/plan/jobs.js';
import { machinesArbitrary, withMachines } from '../machining/plan/machines.js';

const demo = (file: string): string => readFileSync(join(import.meta.dirname, '..', '..', 'fixtures', file), 'utf8');

function analyse(text: string): JobAnalysis {
  const engine = new Engine({
    readShop: (_, name) => ({ ok: true, uri: `file:///jobs/${name}`, text: demo(name) }),
  });
  return engine.analyse('file:///jobs/a.carcass.yaml', text);
}

const wordsOf = (analysis: JobAnalysis): JobWords => ({
  reader: analysis.unit,
  machineReader: 'mm',
  handling: analysis.shop.handling,
  panel: (carcass, key) =>
    analysis.carcasses.find(({ name }) => name === carcass)?.carcass?.panels.find((panel) => panel.key === key),
});

const DEMOS = ['kitchen.carcass.yaml', 'studio.carcass.yaml'] as const;

test.each([
  [0, 'no time'],
  [45, '45 s'],
  [450, '7 min 30 s'],
  [3600, '1 h'],
  [10_230, '2 h 50 min 30 s'],
])('%i seconds: %s', (seconds, words) => expect(timeWords(seconds)).toBe(words));

describe('bits in words, spindles counted from 1', () => {
  const plan = analyse(demo('kitchen.carcass.yaml')).plan();
  const machineOf = (kind: SetUp['machine']['kind']): Pick<SetUp, 'machine' | 'fence'> =>
    plan.setUps.map(({ setUp }) => setUp).find(({ machine }) => machine.kind === kind)!;
  const load = (head: number, spindles: readonly number[], diameter = 8000): LoadedSpindle[] =>
    spindles.map((spindle) => ({ head, spindle, diameter }));
  const all = Array.from({ length: 23 }, (_, spindle) => spindle);

  test.each<[string, SetUp['machine']['kind'], LoadedSpindle[]]>([
    ['Ø 8 mm in spindles 1, 6, 10 and 15', 'vertical', load(0, [0, 5, 9, 14])],
    ['Ø 8 mm in spindle 5', 'vertical', load(0, [4])],
    ['Ø 5 mm in spindles 1 and 9 and Ø 8 mm in spindle 5', 'vertical', [...load(0, [4]), ...load(0, [8, 0], 5000)]],
    ['Ø 8 mm in all 23 spindles of both heads', 'line', [...load(0, all), ...load(1, all)]],
    ['Ø 8 mm in all 23 spindles of the rear head', 'line', load(1, all)],
    ['Ø 8 mm in spindles 1 to 3 of the front head and Ø 8 mm in spindle 1 of the rear head', 'line', [...load(0, [0, 1, 2]), ...load(1, [0])]],
  ])('%s', (words, kind, spindles) => expect(bitWords(spindles, machineOf(kind), 'mm')).toBe(words)); // prettier-ignore
});

describe.each(DEMOS)('the plan of %s in words', (file) => {
  const analysis = analyse(demo(file));
  const plan = analysis.plan();
  const words = wordsOf(analysis);

  test('says of every stop from which spindle its figure counts, as the replay places them', () => {
    let stops = 0;
    for (const one of inOrder(plan)) {
      const { setUp } = one.planned;
      const named = new Map(
        settingsOf(one, analysis.unit).map(({ name, about }) => [name.replace(/^stop /, ''), about]),
      );
      for (const stop of setUp.stops) {
        const about = named.get(stop.name)!;
        const number = /^from its face to spindle (\d+)$/.exec(about)?.[1];
        expect(number !== undefined || about === 'from its face to the line of spindles', about).toBe(true);
        const [x] = standingSpindles(setUp).find(({ spindle }) => spindle === Number(number ?? 1) - 1)!.at;
        const face = stop.side === 'left' ? -stopFace(setUp, stop) : stopFace(setUp, stop);
        expect(Math.abs(face - x), setUp.id).toBe(stop.position);
        stops += 1;
      }
    }
    expect(stops).toBeGreaterThan(10);
  });

  test('says of every change what the planner counts', () => {
    for (const one of inOrder(plan)) {
      const { changes, setUp } = one.planned;
      const { out, into } = bitChanges(one);
      expect(out.length + into.length, setUp.id).toBe(changes.bits);
      const changed = settingsOf(one, analysis.unit).filter((setting) => setting.changed);
      const names = changed.map(({ name }) => name.replace(/^stop /, ''));
      expect(names.filter((name) => setUp.stops.some((stop) => stop.name === name))).toEqual(changes.stops);
      const places = names.filter((name) => /^(fence|height|head( \d+)?|(front|rear) head)$/.test(name));
      expect(places, setUp.id).toHaveLength(changes.fences.length + Number(changes.height));
      expect(names.includes('depth')).toBe(changes.depth);
      expect(names.includes('bits')).toBe(changes.bits > 0);
      const sentences = changeSentences(one, analysis.unit);
      expect(sentences.some((sentence) => sentence.startsWith('Go to'))).toBe(changes.machine);
      expect(sentences.some((sentence) => sentence.startsWith('Turn the head'))).toBe(changes.turnHead);
    }
  });

  test('lays every panel of every run, and says which stops it covers', () => {
    for (const { setUp } of plan.setUps) {
      const laid = laidRuns(setUp, words);
      expect(laid.map(({ steps }) => steps.length)).toEqual(setUp.runs.map(({ steps }) => steps.length));
      for (const [index, { steps }] of laid.entries()) {
        const run = setUp.runs[index]!;
        steps.forEach((step, at) => {
          if (step.handled.kind === 'laid') expect(step.handled.lay.stop).toContain(run.steps[at]!.stop);
          expect(step.holes).toBe(run.steps[at]!.holes.length);
          // The stop that it lies against stands up, unless it was moved over it.
          if (run.steps[at]!.moved === 0) expect(step.lowered).not.toContain(run.steps[at]!.stop);
          for (const name of step.lowered) {
            expect(setUp.machine.stops.find((stop) => stop.name === name)?.lowers, name).toBe(true);
          }
        });
      }
      expect(layRules(setUp, words).join(' ')).toContain('only the front edge touches the');
    }
  });

  test('gives the same paper again', () => {
    const again = analyse(demo(file));
    expect(setUpBlocks(again.plan(), wordsOf(again))).toEqual(setUpBlocks(plan, words));
  });

  test('every set-up has a content of its own, which keeps while nothing in it changes', () => {
    const contents = plan.setUps.map(({ setUp }) => contentOf(setUp));
    expect(new Set(contents).size).toBe(contents.length);
    const again = analyse(`# a remark\n${demo(file)}`).plan();
    expect(again.setUps.map(({ setUp }) => contentOf(setUp))).toEqual(contents);
    const [first] = plan.setUps;
    expect(contentOf({ ...first!.setUp, depth: first!.setUp.depth + 1 })).not.toBe(contents[0]);
  });
});

test('where not all panels of a set-up have the same face down, every stroke says which', () => {
  const analysis = analyse(demo('kitchen.carcass.yaml'));
  const mixed = analysis
    .plan()
    .setUps.map(({ setUp }) => setUp)
    .filter(({ runs }) => new Set(runs.flatMap(({ steps }) => steps.map(({ down }) => down))).size > 1);
  expect(mixed.length).toBeGreaterThan(0);
  for (const setUp of mixed) {
    expect(layRules(setUp, wordsOf(analysis))[0]).toContain('The list says which');
    const laid = laidRuns(setUp, wordsOf(analysis));
    setUp.runs.forEach(({ steps }, run) =>
      steps.forEach(({ down }, at) =>
        expect(handledWords(laid[run]!.steps[at]!.handled, 'mm')).toMatch(
          new RegExp(`(^|: )${down}( \\(\\w+\\))? face down, |^move it along`, 'i'),
        ),
      ),
    );
  }
});

test('a divider with shelves on both hands is turned over, and the list says so', () => {
  const shelves = 'fixed-shelves: [{ at: 296, bay: 1 }, { at: 424, bay: 2 }]';
  const analysis = analyse(
    `shop: shed.shop.yaml\ncarcasses:\n  any: { kind: open, width: 1000, dividers: 1, ${shelves} }\n`,
  );
  const turns = analysis
    .plan()
    .setUps.flatMap(({ setUp }) =>
      laidRuns(setUp, wordsOf(analysis)).flatMap(({ panel, steps }) =>
        steps.map(({ handled }) => [panel, handledWords(handled, 'mm')] as const),
      ),
    );
  expect(
    turns.filter(([, turn]) => turn.startsWith('turn it over')).map(([panel, turn]) => [panel, turn.split(':')[0]]),
  ).toEqual([['divider-1', 'turn it over, front edge to the same side again']]);
});

test('a panel that is moved on has its end told only once the stop is left behind', () => {
  const analysis = analyse('shop: shed.shop.yaml\ncarcasses:\n  a: { kind: tall, width: 600 }\n');
  const told = analysis
    .setUps()
    .filter(({ setUp: { machine } }) => machine.kind === 'line')
    .flatMap(({ setUp }) => laidRuns(setUp, wordsOf(analysis)))
    .flatMap(({ panel, steps }) => (panel === 'left' ? steps.map(({ handled }) => handledWords(handled, 'mm')) : []));
  // 23 spindles 32 mm apart: 736 mm each time.
  expect(told).toEqual([
    'bottom end at row-left',
    'move it along 736 mm to the left, 23 pitches, onto the pins in the row',
    'move it along 736 mm to the left, 23 pitches, onto the pins in the row; its end is then 1472 mm past row-left',
  ]);
});

describe('random carcasses in random shops', () => {
  test('as many bits come out and go in as the planner counts, where the heads of one body differ too', () => {
    const counted = { changes: 0, turned: 0 };
    fc.assert(
      fc.property(
        jobArbitrary.chain((job) => machinesArbitrary(job.shop.habits.pitch).map((machines) => ({ job, machines }))),
        ({ job, machines: [faces, ends, rows] }) => {
          const body = 'one';
          const shop = withMachines(job.shop, [
            { ...faces, body },
            { ...ends, body },
            { ...rows, body },
          ]);
          const { operations } = bored(job.spec, shop);
          for (const planned of orderSetUps(setUpsOf([operations]), shop.changeover).setUps) {
            const { out, into } = bitChanges({ planned });
            expect(out.length + into.length).toBe(planned.changes.bits);
            counted.changes += planned.changes.bits;
            counted.turned += Number(planned.changes.turnHead);
          }
        },
      ),
      { numRuns: 60 },
    );
    expect(counted.changes).toBeGreaterThan(200);
    expect(counted.turned).toBeGreaterThan(40);
  });

  test('every stroke is told: turned over, turned half a turn, slid or moved on, as the set-up has it', () => {
    const told = { strokes: 0, half: 0, slid: 0, along: 0 };
    fc.assert(
      fc.property(
        jobArbitrary.chain((job) => machinesArbitrary(job.shop.habits.pitch).map((machines) => ({ job, machines }))),
        ({ job, machines }) => {
          const { spec, carcass, operations } = bored(job.spec, withMachines(job.shop, machines));
          const words: JobWords = {
            reader: 'mm',
            machineReader: 'mm',
            handling: job.shop.handling,
            panel: (name, key) =>
              name === spec.name.value ? carcass.panels.find((panel) => panel.key === key) : undefined,
          };
          for (const { setUp } of setUpsOf([operations])) {
            const laid = laidRuns(setUp, words);
            const mixed = new Set(setUp.runs.flatMap(({ steps }) => steps.map(({ down }) => down))).size > 1;
            setUp.runs.forEach(({ steps }, run) =>
              steps.forEach((step, at) => {
                const { handled, lowered } = laid[run]!.steps[at]!;
                const turn = handled.kind === 'laid' ? handled.turn : null;
                const before = steps[at - 1];
                told.strokes += 1;
                if (handled.kind === 'laid') {
                  expect(handled.lay.stop).toContain(step.stop);
                  expect(handled.lay.face !== null).toBe(mixed);
                }
                const level = setUp.machine.kind === 'horizontal';
                const isOver = before !== undefined && before.down !== step.down;
                const isHalf = level && before !== undefined && !isOver && before.end !== step.end;
                const isSlid = !level && before !== undefined && !isOver && before.stop !== step.stop;
                const isAlong = step.moved !== (before !== undefined && !isOver && !isSlid ? before.moved : 0);
                expect(turn === 'over').toBe(isOver);
                expect(turn === 'half').toBe(isHalf);
                expect(turn === 'slide').toBe(isSlid);
                expect(handled.move !== null).toBe(isAlong);
                told.half += Number(isHalf);
                told.slid += Number(isSlid);
                told.along += Number(isAlong);
                for (const name of lowered)
                  expect(setUp.machine.stops.find((stop) => stop.name === name)?.lowers).toBe(true);
              }),
            );
          }
        },
      ),
      { numRuns: 300 },
    );
    expect(Math.min(...Object.values(told)), JSON.stringify(told)).toBeGreaterThan(0);
  });
});

test('a gap is told where the order is not proven', () => {
  const plan = { setUps: [], leastSetUps: 0, seconds: 1000, leastSeconds: 950, proven: false, provenOnce: false };
  expect(totalsWords(plan)).toBe('There is nothing to bore.');
  const [one] = analyse(demo('studio.carcass.yaml')).plan().setUps;
  expect(totalsWords({ ...plan, setUps: [one!, one!], leastSetUps: 1 })).toContain(
    '2 set-ups, 8 strokes; these strokes need at least 1 set-up. Changeovers take',
  );
  expect(totalsWords({ ...plan, setUps: [one!], leastSetUps: 1 })).toBe(
    '1 set-up, 4 strokes; no fewer set-ups make these strokes. Changeovers take 16 min 40 s in all. No order that goes to each machine once takes less than 15 min 50 s, so at most 5.0 % could be saved.',
  );
});

test('the proof is told where each head is gone to once', () => {
  const plan = analyse(demo('kitchen.carcass.yaml')).plan();
  expect(totalsWords({ ...plan, seconds: 1000, leastSeconds: 950, proven: false, provenOnce: true })).toContain(
    'No order that goes to each machine and each of its heads once takes less; with more turns of the heads, none takes less than 15 min 50 s.',
  );
});

describe('the strokes of a row, seen through the replay', () => {
  function frontRow(carcass: string, side: 0 | 1 = 0) {
    const analysis = analyse(
      `unit: mm\nshop: shed.shop.yaml\ncarcasses:\n  a: { ${carcass}, width: 600, rows: both }\n`,
    );
    const [one] = analysis.carcasses;
    const panel = one!.carcass!.panels[side]!;
    const row = one!.boring!.rows.find((each) => each.panel === panel.key && each.line === 'front')!;
    const bores = new Set(one!.boring!.bores.filter(({ group }) => group === row.id).map(({ id }) => id));
    const setUps = analysis.setUps().map(({ setUp }) => setUp);
    return { row, made: rowStrokes(setUps, 'a', panel, row, bores)! };
  }

  test('23 holes: one stroke, its middle spindle on the middle hole', () => {
    const { row, made } = frontRow('kind: base');
    expect(row.count).toBe(23);
    expect({ ...made, strokes: made.strokes.length }).toEqual({ strokes: 1, moves: [], setUps: 1, centred: true });
  });

  test('22 holes have no middle one', () => {
    const { row, made } = frontRow('kind: base, height: 688');
    expect(row.count).toBe(22);
    expect(made.centred).toBe(false);
  });

  test('65 holes: three strokes of a full head, the last of it past the end, two index moves and no change of bits', () => {
    const { row, made } = frontRow('kind: tall');
    expect(row.count).toBe(65);
    expect(made.strokes).toHaveLength(3);
    expect(made.moves).toEqual([736_000, 736_000]);
    expect(made.setUps).toBe(1);
  });

  // The stroke planner's own worked example: 63 holes, 23 spindles, strokes at -1, 20 and 41 pitches.
  test.each([0, 1] as const)(
    '63 holes, with room for the stop one pitch before the first: three strokes of 21, centred; side %i',
    (side) => {
      const { row, made } = frontRow('kind: tall, height: 2048, row-offset: 40', side);
      expect(row.count).toBe(63);
      expect(made.strokes).toHaveLength(3);
      expect(made.moves).toEqual([672_000, 672_000]);
      expect(made.setUps).toBe(1);
      expect(made.centred).toBe(true);
    },
  );
});
