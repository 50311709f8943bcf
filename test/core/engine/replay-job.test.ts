import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { Engine, type JobAnalysis } from '../../../shared-core/engine.js';
import { replayJob } from '../../../shared-core/engine/replay-job.js';
import type { SetUp } from '../../../shared-core/machining/set-up.js';

const demo = (file: string): string => readFileSync(join(import.meta.dirname, '..', '..', 'fixtures', file), 'utf8');

function analyse(text: string): JobAnalysis {
  const engine = new Engine({
    readShop: (_, name) => ({ ok: true, uri: `file:///jobs/${name}`, text: demo(name) }),
  });
  return engine.analyse('file:///jobs/a.carcass.yaml', text);
}

const setUpsIn = (analysis: JobAnalysis): readonly SetUp[] => analysis.plan().setUps.map(({ setUp }) => setUp);

test.each(['kitchen.carcass.yaml', 'studio.carcass.yaml'])('all setUps of %s together make its bore maps', (file) => {
  const analysis = analyse(demo(file));
  const bores = analysis.carcasses.flatMap(({ boring }) => boring?.bores ?? []);
  const panels = analysis.carcasses.flatMap(({ carcass }) => carcass?.panels ?? []);
  expect(replayJob(analysis, setUpsIn(analysis))).toEqual({
    panels: panels.length,
    holes: bores.length,
    differences: [],
    notReplayed: [],
  });
});

test('every panel with bores that no machine makes is held to those that one does', () => {
  const analysis = analyse(
    'shop: faults.shop.yaml\ncarcasses:\n  a: { kind: tall, width: 600, fixed-shelves: [1032] }\n',
  );
  const unmade = analysis.carcasses[0]!.operations!.unreachable.flatMap(({ bores }) => bores);
  const all = analysis.carcasses[0]!.boring!.bores;
  const { holes, differences } = replayJob(analysis, setUpsIn(analysis));
  expect(unmade.length).toBe(10);
  expect({ holes, differences }).toEqual({ holes: all.length - unmade.length, differences: [] });
});

test.each<[string, (setUp: SetUp) => SetUp]>([
  ['a stop a tenth of a millimetre off', (setUp) => ({ ...setUp, stops: setUp.stops.map((stop, at) => (at === 0 ? { ...stop, position: stop.position + 100 } : stop)) })],
  ['a depth stop off', (setUp) => ({ ...setUp, depth: setUp.depth + 500 })],
  ['a fence off', (setUp) => ({ ...setUp, fence: setUp.fence.map((place) => place + 1000) })],
  ['a panel left out', (setUp) => ({ ...setUp, runs: setUp.runs.slice(1) })],
  ['the back edge at the fence', (setUp) => ({ ...setUp, runs: setUp.runs.map((run) => ({ ...run, steps: run.steps.map((step) => ({ ...step, edge: 'back' })) })) })],
])('it is seen: %s', (_, change) => {
  const analysis = analyse('shop: shed.shop.yaml\ncarcasses:\n  a: { kind: base, width: 600 }\n');
  const setUps = setUpsIn(analysis);
  const at = setUps.findIndex(({ machine }) => machine.kind === 'vertical');
  const { differences } = replayJob(analysis, setUps.with(at, change(setUps[at]!)));
  expect(differences.length).toBeGreaterThan(0);
  for (const { carcass, message } of differences) {
    expect(carcass).toBe('a');
    expect(message).not.toBe('');
  }
}); // prettier-ignore

test('what the steps claim to bore is not read', () => {
  const analysis = analyse('shop: shed.shop.yaml\ncarcasses:\n  a: { kind: base, width: 600 }\n');
  const silent = setUpsIn(analysis).map((setUp) => ({
    ...setUp,
    runs: setUp.runs.map((run) => ({ ...run, steps: run.steps.map((step) => ({ ...step, holes: [] })) })),
  }));
  expect(replayJob(analysis, silent)).toEqual(replayJob(analysis, setUpsIn(analysis)));
});

test('panels with bores that are wrong in themselves are left out, and named', () => {
  const analysis = analyse(
    'shop: shed.shop.yaml\ncarcasses:\n  a: { kind: base, width: 600, dowels: [37, 181, 485] }\n',
  );
  const { differences, notReplayed } = replayJob(analysis, setUpsIn(analysis));
  expect(differences).toEqual([]);
  expect(notReplayed.map(({ panel }) => panel)).toEqual(['left', 'right']);
});

test('of two carcasses with one name the first is planned, so that no panel is bored twice', () => {
  const analysis = analyse(
    'shop: shed.shop.yaml\ncarcasses:\n  a: { kind: base, width: 600 }\n  a: { kind: wall, width: 500 }\n',
  );
  expect(analysis.planned()).toEqual([analysis.carcasses[0]]);
  expect(analysis.carcasses.map((one) => analysis.isPlanned(one))).toEqual([true, false]);
  expect(replayJob(analysis, setUpsIn(analysis)).differences).toEqual([]);
});

test('a plan with an order that was sought elsewhere is the same plan', async () => {
  const { bestOrder } = await import('../../../shared-core/machining/plan/plan.js');
  const [here, there] = [analyse(demo('studio.carcass.yaml')), analyse(demo('studio.carcass.yaml'))];
  expect(await there.planBy((table) => Promise.resolve(bestOrder(table)))).toEqual(here.plan());
});
