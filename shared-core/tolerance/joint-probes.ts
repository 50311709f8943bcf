import { boundOf } from '../machining/replay/stray.js';
import type { Tolerances } from '../shop/model.js';
import {
  GAUGES,
  gapBesideOthers,
  putTogether,
  standOf,
  type Assembled,
  type FigureName,
  type Readings,
} from './assemble.js';
import { AS_DRAWN, type Stand } from './faces.js';
import { makeReal, type RealHalf } from './joint.js';
import type { LoneJoint } from './lone-joint.js';
import { namedLikeness } from './likeness.js';
import type { JointCase } from './rivals.js';
import { probing, spread, type Figure, type Probe, type Probing } from './spread.js';

/** Of so many joints that are not alike the probes are kept; with more, all begins anew. */
const MOST_JOINTS = 256;

/** A joint by itself: what is measured on it, how it holds its end panel for others, and what others have no part in. */
interface LoneProbes {
  readonly assembled: Probe<Assembled>;
  readonly stand: Probe<Stand>;
  /** Known once they were asked for. */
  figures: OwnFigures | null;
}

const { gap: GAP, ...OWN } = GAUGES;
type OwnFigures = Readonly<Record<Exclude<FigureName, 'gap'>, Figure>>;

/**
 * How the figures of joints spread under the tolerances of one shop. What several joints have in common is bored and put
 * together once.
 */
export class JointProbes {
  readonly #tolerances: Tolerances;
  #probe: Probing;
  readonly #lone = new Map<string, LoneProbes>();

  constructor(tolerances: Tolerances) {
    this.#tolerances = tolerances;
    this.#probe = this.#anew();
  }

  /** The figures of a joint among others. */
  figuresOf(joint: JointCase): Readonly<Record<FigureName, Figure>> {
    // Probes know their variables by identity, so those of one joint must all be of one time.
    if (this.#lone.size > MOST_JOINTS) {
      this.#lone.clear();
      this.#probe = this.#anew();
    }
    const lone = this.#of(joint);
    const others = [...joint.standing.values()].map((other) => this.#of(other).stand);
    const numbers = new Map([...joint.standing.keys()].map((id, i) => [id, i]));
    const own = this.#probe([lone.assembled], (_, { readings }) => readings);
    lone.figures ??= spread(OWN, own);
    const gap = this.#probe<[Assembled, ...Stand[]], Pick<Readings, 'gap'>>(
      [lone.assembled, ...others],
      (stray, assembled, ...stands) => ({
        gap: gapBesideOthers(joint, assembled, (id) => stands[numbers.get(id) ?? stands.length] ?? AS_DRAWN, stray),
      }),
    );
    return { ...lone.figures, ...spread({ gap: GAP }, gap) };
  }

  #of(joint: LoneJoint): LoneProbes {
    const key = namedLikeness(joint);
    const known = this.#lone.get(key);
    if (known !== undefined) return known;
    const face = this.#probe([], (stray) => makeReal(joint.face, stray));
    const end = this.#probe([], (stray) => makeReal(joint.end, stray));
    const made: LoneProbes = {
      assembled: this.#probe([face, end], (stray, ...real: [RealHalf, RealHalf]) => putTogether(joint, ...real, stray)),
      stand: this.#probe([face, end], (stray, ...real: [RealHalf, RealHalf]) => standOf(joint, ...real, stray)),
      figures: null,
    };
    this.#lone.set(key, made);
    return made;
  }

  #anew(): Probing {
    return probing((kind) => boundOf(this.#tolerances, kind));
  }
}
