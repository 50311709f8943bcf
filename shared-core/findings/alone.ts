import { setUpsOf, type BatchedSetUp } from '../machining/plan/set-ups.js';
import { blankOf } from '../machining/blank.js';
import { strokesOf, type Strokes } from '../machining/replay/replay.js';
import type { CarcassContext } from './rule.js';

/** A carcass that is bored by itself, with no other in its set-ups. */
export interface Alone {
  readonly setUps: readonly BatchedSetUp[];
  /** The strokes of each of its panels in these set-ups, by the panel's key. */
  readonly strokes: ReadonlyMap<string, Strokes>;
}

/** The same for all rules that ask. */
export function boredAlone(context: CarcassContext): Alone {
  return context.derived.get(bored, context);
}

function bored({ operations, carcass, spec, derived }: CarcassContext): Alone {
  const batched = setUpsOf([operations], derived);
  const setUps = batched.map(({ setUp }) => setUp);
  let made: ReadonlyMap<string, Strokes> | null = null;
  return {
    setUps: batched,
    // Those who only count set-ups do not wait for them.
    get strokes() {
      made ??= new Map(
        carcass.panels.map((panel) => [panel.key, strokesOf(setUps, spec.name.value, panel.key, blankOf(panel))]),
      );
      return made;
    },
  };
}
