import type { ListedSetUp, SetUpSetting } from '../../../shared-core/drawing/messages/set-ups.js';
import { stopCalled } from '../../../shared-core/drawing/words.js';
import { PHRASES } from './messages.js';
import type { OrderedStep } from './order.js';

/** A setting of the machine as it matters to one stroke. */
export interface StepFigure extends SetUpSetting {
  /** The stop that the panel is laid against. */
  readonly used: boolean;
  /** Set, but nothing lies against it in this stroke. */
  readonly aside: boolean;
}

/** What stands on the machine, for one stroke: the stop that it uses first, stops that it does not use last. */
export function figuresOf({ settings, stops }: Pick<ListedSetUp, 'settings' | 'stops'>, used: string): StepFigure[] {
  const stopNames = new Set<string>(stops.map(({ name }) => stopCalled(name)));
  const rank = ({ name }: SetUpSetting): number => (name === stopCalled(used) ? 0 : stopNames.has(name) ? 2 : 1);
  return settings
    .map((one) => ({ ...one, used: rank(one) === 0, aside: rank(one) === 2 }))
    .sort((a, b) => rank(a) - rank(b));
}

/** From where to where every stop of a set-up is measured, to be said once; null where there is one stop, or they differ. */
export function measuredAlike({ settings, stops }: Pick<ListedSetUp, 'settings' | 'stops'>): string | null {
  const stopNames = new Set<string>(stops.map(({ name }) => stopCalled(name)));
  const abouts = settings.filter(({ name }) => stopNames.has(name)).map(({ about }) => about);
  const [first] = abouts;
  return first !== undefined && first !== '' && abouts.length > 1 && abouts.every((one) => one === first)
    ? first
    : null;
}

/** What comes after a stroke: the same panel again, the next panel, or another set-up; null after the last. */
export function nextWords(steps: readonly OrderedStep[], index: number): string | null {
  const [step, next] = [steps[index], steps[index + 1]];
  if (step === undefined || next === undefined) return null;
  const words = next.run.steps[next.step]?.words ?? '';
  if (next.setUp !== step.setUp) return PHRASES.nextSetUp(next.place + 1, next.listed.machine, next);
  return next.run === step.run ? PHRASES.nextStroke(words) : PHRASES.nextPanel(next, words);
}
