import { describe, expect, test } from 'vitest';
import type { JobAnalysis } from '../../../shared-core/engine.js';
import { workOf } from '../../../shared-core/machining/plan/cost.js';
import type { PlannedSetUp } from '../../../shared-core/machining/plan/plan.js';
import { asText } from '../../../shared-core/papers/render/text.js';
import { replayedPlan } from '../../../shared-core/service/set-up-plan.js';
import { listSetUps, unboredHoles } from '../../../shared-core/service/set-ups.js';
import { analyse } from '../findings/jobs.js';

const machinesOf = (analysis: JobAnalysis): readonly string[] => analysis.plan().setUps.map(({ setUp }) => setUp.id);

const RANGE = { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } };

/** Strokes of the panels whose names begin so. */
const sum = (setUps: readonly PlannedSetUp[], panels: string): number =>
  workOf({ runs: setUps.flatMap(({ setUp }) => setUp.runs.filter(({ panel }) => panel.startsWith(panels))) }).strokes;

const byPanel = (a: { readonly panel: string }, b: { readonly panel: string }): number => (a.panel < b.panel ? -1 : 1);

/** Its bottom cannot be dowelled to its sides, so that none of the three is bored; its rails are. */
const FAULTY = 'kind: base, width: 600, panels: { bottom: { end-depth: 14 } }';

test('a set-up whose panels must all not be bored is none, and what it would bore is told', () => {
  const faulty = analyse(`carcasses:\n  a: { ${FAULTY} }\n`);
  // The rails alone are bored; the sides would need the line drill and the vertical head, the bottom another depth.
  expect(machinesOf(faulty)).toEqual(['end-head-A']);
  expect(
    faulty
      .setUpsNotRun()
      .map(({ setUp }) => setUp.machine.name)
      .toSorted(),
  ).toEqual(['end-head', 'face-head', 'row-drill']);
  expect(faulty.plan().leastSetUps).toBe(1);
  expect(unboredHoles(faulty)).toEqual(
    [
      { panel: 'left', count: 58 },
      { panel: 'right', count: 58 },
      { panel: 'bottom', count: 12 },
    ].map((one) => ({
      carcass: 'a',
      ...one,
      machine: null,
      reason: 'Its bores have errors; correct these first.',
    })),
  );
  const words = asText(replayedPlan(faulty).on(null)!.paper);
  expect(words).toContain('NOT BORED: 12 holes of a bottom. Its bores have errors; correct these first.');
  expect(words).not.toContain('DO NOT BORE');
});

describe('a set-up that also has a panel to bore', () => {
  const mixed = analyse(`carcasses:\n  a: { ${FAULTY} }\n  b: { kind: base, width: 600 }\n`);
  const sound = analyse('carcasses:\n  b: { kind: base, width: 600 }\n');
  // Of the first carcass the rails alone are bored, as they are in the second.
  const four = analyse('carcasses:\n  b: { kind: base, width: 600 }\n  c: { kind: base, width: 600 }\n');

  test('is run, and its list refuses the others', () => {
    expect(machinesOf(mixed)).toEqual(machinesOf(sound));
    expect(mixed.plan().seconds).toBe(sound.plan().seconds);
    expect(asText(replayedPlan(mixed).on(null)!.paper)).toMatch(
      /a left, a right +720 × 560 × 16 mm +DO NOT BORE: its bores have errors$/m,
    );
  });

  test('counts what is bored alone', () => {
    const rails = sum(four.plan().setUps, 'rail') / 2;
    expect(rails).toBeGreaterThan(0);
    expect(sum(mixed.plan().setUps, '')).toBe(sum(sound.plan().setUps, '') + rails);
    const reply = (analysis: JobAnalysis) => {
      const document = { uri: 'file:///a', version: 1, toRange: () => RANGE };
      const found = listSetUps({ kind: 'job', analysis }, document, analysis.plan(), null);
      if (found.kind !== 'set-ups') throw new Error(found.reason);
      return found;
    };
    // The five panels of the second carcass, and the rails of the first.
    expect(reply(sound).totals.panels).toBe(5);
    expect(reply(mixed).totals.panels).toBe(7);
    const ofSides = reply(mixed).setUps.find(({ machine }) => machine === 'row-drill')!;
    expect(ofSides.runs.map(({ carcass, panel }) => `${carcass} ${panel}`)).toEqual(['b left', 'b right']);
    expect(ofSides.refused).toEqual(
      ['left', 'right'].map((panel) => ({
        carcass: 'a',
        panel,
        pieces: 1,
        size: '720 × 560 × 16 mm',
        range: RANGE,
        words: 'DO NOT BORE: its bores have errors',
      })),
    );
    const drill = mixed.plan().setUps.find(({ setUp }) => setUp.machine.name === 'row-drill')!.setUp;
    const alone = sound.plan().setUps.find(({ setUp }) => setUp.machine.name === 'row-drill')!.setUp;
    expect(workOf(drill)).toEqual(workOf(alone));
    expect(asText(replayedPlan(mixed).on('row-drill')!.paper)).toMatch(/^ *Then 2 panels/m);
  });

  test('tells the holes of the others as not bored, each once', () => {
    const alone = analyse(`carcasses:\n  a: { ${FAULTY} }\n`);
    expect(unboredHoles(mixed).toSorted(byPanel)).toEqual(unboredHoles(alone).toSorted(byPanel));
  });

  test('has no stop for the others alone', () => {
    const far = analyse(
      `carcasses:\n  a: { kind: tall, width: 600, fixed-shelves: [1000], panels: { bottom: { end-depth: 14 } } }\n  b: { kind: base, width: 600 }\n`,
    );
    for (const { setUp } of far.plan().setUps) {
      const used = setUp.runs.flatMap(({ steps }) => steps.map(({ stop }) => stop));
      expect(setUp.stops.filter(({ name }) => !used.includes(name))).toEqual([]);
    }
  });
});

test('a job of which nothing may be bored has no set-up', () => {
  const panels = 'panels: { bottom: { end-depth: 14 }, top: { end-depth: 14 } }';
  const none = analyse(`carcasses:\n  a: { kind: wall, width: 600, ${panels} }\n`);
  expect(none.plan()).toMatchObject({ setUps: [], leastSetUps: 0, seconds: 0, proven: true });
  expect(unboredHoles(none).map(({ panel }) => panel)).toEqual(['left', 'right', 'bottom', 'top']);
});
