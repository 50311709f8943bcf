import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { Engine, type JobAnalysis } from '../../../../shared-core/engine.js';
import { costOf, secondsOf, workOf } from '../../../../shared-core/machining/plan/cost.js';
import type { Run, Step } from '../../../../shared-core/machining/set-up.js';
import { costSentences } from '../../../../shared-core/papers/set-up/cost.js';

const folder = join(import.meta.dirname, '..', '..', '..', 'fixtures');
const shop = readFileSync(join(folder, 'shed.shop.yaml'), 'utf8');

function analysed(carcasses: string): JobAnalysis {
  const engine = new Engine({ readShop: (_, name) => ({ ok: true, uri: `file:///${name}`, text: shop }) });
  return engine.analyse('file:///a.carcass.yaml', carcasses);
}

const step = (stop: string, moved: number, end: Step['end'] = 'reference-end'): Step => ({
  down: 'outside',
  edge: 'front',
  end,
  stop,
  moved,
  spindles: [],
  holes: [],
});
const run = (carcass: string, pieces: number, ...steps: Step[]): Run => ({ carcass, panel: 'left', pieces, steps });
const HANDLING = { panel: 15, lay: 8, stroke: 6, indexMove: 10 };

test('the work of a run, by hand', () => {
  // Against A, along by 672, on to 1344; then turned to B, and there already moved along.
  const tall = run('tall', 2, step('A', 0), step('A', 672), step('A', 1344), step('B', 672, 'far-end'));
  expect(workOf({ runs: [tall] })).toEqual({ panels: 2, lays: 2, strokes: 8, indexMoves: 6 });
  // 2 * 15 + 2 * 8 + 8 * 6 + 6 * 10
  expect(secondsOf(workOf({ runs: [tall] }), HANDLING)).toBe(154);
});

test('the demo kitchen: parts add up to the whole, and what costs most is told first', () => {
  const analysis = analysed(readFileSync(join(folder, 'kitchen.carcass.yaml'), 'utf8'));
  const plan = analysis.plan();
  const cost = costOf(plan, analysis.shop);
  expect(cost.changeover).toBe(plan.seconds);
  expect(cost.changes.reduce((sum, { seconds }) => sum + seconds, 0)).toBe(plan.seconds);
  expect(cost.carcasses.reduce((sum, { boring }) => sum + boring, 0)).toBe(cost.boring);
  expect(cost.work.strokes).toBe(plan.setUps.reduce((sum, { strokes }) => sum + strokes, 0));
  for (const { carcass, ownSetUps } of cost.carcasses)
    for (const { setUp } of plan.setUps)
      expect(ownSetUps.includes(setUp.id)).toBe(setUp.runs.every((one) => one.carcass === carcass));
  const whole = cost.carcasses.map(({ boring, ownChangeover }) => boring + ownChangeover);
  expect(whole).toEqual(whole.toSorted((a, b) => b - a));
  const [first, second, third] = costSentences(cost);
  expect(first).toMatch(/^In all .+ at the boring machines: changeovers .+, boring .+ \(\d+ panel runs, \d+ strokes, /);
  expect(second).toMatch(/^The changeovers of .+ are made up of: bits /);
  expect(third).toContain(`What costs most: ${cost.carcasses[0]!.carcass}: boring `);
});

test('where nothing is bored nothing is told', () => {
  expect(costSentences(costOf({ setUps: [], seconds: 0 }, analysed('carcasses: {}').shop))).toEqual([]);
});
