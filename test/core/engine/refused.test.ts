import { expect, test } from 'vitest';
import type { JobAnalysis } from '../../../shared-core/engine.js';
import { asText } from '../../../shared-core/papers/render/text.js';
import { replayedPlan } from '../../../shared-core/service/set-up-plan.js';
import { unboredHoles } from '../../../shared-core/service/set-ups.js';
import { analyse } from '../findings/jobs.js';

const machinesOf = (analysis: JobAnalysis): readonly string[] => analysis.plan().setUps.map(({ setUp }) => setUp.id);

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

test('a set-up that also has a panel to bore is run, and its list refuses the others', () => {
  const mixed = analyse(`carcasses:\n  a: { ${FAULTY} }\n  b: { kind: base, width: 600 }\n`);
  const sound = analyse('carcasses:\n  b: { kind: base, width: 600 }\n');
  expect(machinesOf(mixed)).toEqual(machinesOf(sound));
  expect(mixed.plan().seconds).toBe(sound.plan().seconds);
  expect(asText(replayedPlan(mixed).on(null)!.paper)).toContain('DO NOT BORE: its bores have errors');
});

test('a job of which nothing may be bored has no set-up', () => {
  const panels = 'panels: { bottom: { end-depth: 14 }, top: { end-depth: 14 } }';
  const none = analyse(`carcasses:\n  a: { kind: wall, width: 600, ${panels} }\n`);
  expect(none.plan()).toMatchObject({ setUps: [], leastSetUps: 0, seconds: 0, proven: true });
  expect(unboredHoles(none).map(({ panel }) => panel)).toEqual(['left', 'right', 'bottom', 'top']);
});
