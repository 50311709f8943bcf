import { boundOf } from '../machining/replay/stray.js';
import type { Tolerances } from '../shop/model.js';
import { besideOthers, putTogether, standOf, type Assembled, type Readings } from './assemble.js';
import type { Stand } from './faces.js';
import { makeReal, type LoneJoint, type RealHalf } from './joint.js';
import { namedLikeness } from './likeness.js';
import type { JointCase } from './rivals.js';
import { probing, type Probe, type Probing } from './spread.js';

/** Of so many joints that are not alike the probes are kept; with more, all begins anew. */
const MOST_JOINTS = 256;

/** A joint by itself: what is measured on it, and how it holds its end panel for others. */
interface LoneProbes {
  readonly assembled: Probe<Assembled>;
  readonly stand: Probe<Stand>;
}

/** Probes of joints under the tolerances of one shop. What several joints have in common is bored and put together once. */
export class JointProbes {
  readonly #tolerances: Tolerances;
  #probe: Probing;
  readonly #lone = new Map<string, LoneProbes>();

  constructor(tolerances: Tolerances) {
    this.#tolerances = tolerances;
    this.#probe = this.#anew();
  }

  /** What is measured on a joint among others. */
  of(joint: JointCase): Probe<Readings> {
    // Probes know their variables by identity, so those of one joint must all be of one time.
    if (this.#lone.size > MOST_JOINTS) {
      this.#lone.clear();
      this.#probe = this.#anew();
    }
    const ids = [...joint.standing.keys()];
    const others = this.#probe<Stand[], ReadonlyMap<string, Stand>>(
      [...joint.standing.values()].map((other) => this.#of(other).stand),
      (_, ...made) => new Map(ids.map((id, i) => [id, made[i]!])),
    );
    return this.#probe([this.#of(joint).assembled, others], (stray, own, beside) =>
      besideOthers(joint, own, beside, stray),
    );
  }

  #of(joint: LoneJoint): LoneProbes {
    const key = namedLikeness(joint);
    const known = this.#lone.get(key);
    if (known !== undefined) return known;
    const face = this.#probe([], (stray) => makeReal(joint.face, stray));
    const end = this.#probe([], (stray) => makeReal(joint.end, stray));
    const made: LoneProbes = {
      assembled: this.#probe([face, end], (stray, ...real: [RealHalf, RealHalf]) =>
        putTogether(joint, ...real, stray),
      ),
      stand: this.#probe([face, end], (stray, ...real: [RealHalf, RealHalf]) => standOf(joint, ...real, stray)),
    };
    this.#lone.set(key, made);
    return made;
  }

  #anew(): Probing {
    return probing((kind) => boundOf(this.#tolerances, kind));
  }
}
