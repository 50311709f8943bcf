import type { CarcassSpec } from '../carcass/spec.js';
import type { Carcass } from '../carcass/model.js';
import type { Derived } from '../derived/derived.js';
import { inOneGo, type Steps } from '../derived/steps.js';
import { blankOf } from '../machining/blank.js';
import type { CarcassOperations } from '../machining/plan/operations.js';
import { setUpsInSteps, type BatchedSetUp } from '../machining/plan/set-ups.js';
import { strokesOf, type Strokes } from '../machining/replay/replay.js';

/** A carcass that is bored by itself, with no other in its set-ups: each thing is made for the first rule that asks. */
export class Alone {
  #setUps: readonly BatchedSetUp[] | null = null;
  #strokes: ReadonlyMap<string, Strokes> | null = null;

  constructor(
    readonly spec: CarcassSpec,
    readonly carcass: Carcass,
    readonly operations: CarcassOperations,
    readonly derived: Derived,
  ) {}

  /** Lets go of what was made: no rule asks again for a while. */
  rest(): void {
    [this.#setUps, this.#strokes] = [null, null];
  }

  /** Makes what slow rules ask for, a little at a time. */
  *making(): Steps<void> {
    if (this.#setUps === null) this.#setUps = yield* setUpsInSteps([this.operations], this.derived);
    if (this.#strokes === null) {
      const name = this.spec.name.value;
      const setUps = this.#setUps.map(({ setUp }) => setUp);
      const strokes = new Map<string, Strokes>();
      for (const panel of this.carcass.panels) {
        yield;
        strokes.set(panel.key, strokesOf(setUps, name, panel.key, blankOf(panel)));
      }
      this.#strokes = strokes;
    }
  }

  get setUps(): readonly BatchedSetUp[] {
    inOneGo(this.making());
    return this.#setUps!;
  }

  /** The strokes of each of its panels in these set-ups, by the panel's key. */
  get strokes(): ReadonlyMap<string, Strokes> {
    inOneGo(this.making());
    return this.#strokes!;
  }
}
