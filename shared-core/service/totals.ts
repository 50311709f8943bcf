import type { Span } from '../document/structure.js';
import type { JobAnalysis } from '../engine.js';
import type { Plan } from '../machining/plan/plan.js';
import { boundOf } from '../papers/set-up/totals.js';
import { tell } from '../words/message.js';
import type { Told } from '../words/told.js';
import { say } from './messages.js';
import { stepsOf } from './machine-words.js';

/** What a carcass takes, in a line over its name. */
export interface CarcassTotals {
  readonly carcass: string;
  readonly at: Span;
  readonly words: Told;
}

/** '8 panels · 132 bores · 20 strokes · 5 set-ups' of each carcass that set-ups are made for. */
export function carcassTotals(analysis: JobAnalysis): readonly CarcassTotals[] {
  const planned = new Set(analysis.planned());
  return analysis.carcasses.flatMap((one, index): CarcassTotals[] => {
    if (one.carcass === null || one.boring === null || one.nameAt === null) return [];
    if (!planned.delete(one)) return [];
    const { start, end } = analysis.locate(one.nameAt.place, index);
    const steps = stepsOf(analysis, one);
    const words = say.carcassTotals({
      panels: one.carcass.panels.length,
      bores: one.boring.bores.length,
      strokes: steps.length,
      setUps: new Set(steps.map(({ setUp }) => setUp)).size,
    });
    return [{ carcass: one.name, at: { start, end }, words: tell(words, 'mm') }];
  });
}

/** Where the first line that says something begins. */
export function firstWords(text: string): number {
  return /^[^\S\r\n]*[^\s#]/m.exec(text)?.index ?? 0;
}

/** What the whole job takes: '37 set-ups · changeovers 2 h 50 min 30 s', and how near that is to the least. */
export function planTotals(plan: Plan): { readonly words: Told; readonly about: Told } {
  return {
    words: tell(say.planTotals({ setUps: plan.setUps.length, seconds: plan.seconds }), 'mm'),
    about: tell(boundOf(plan), 'mm'),
  };
}
