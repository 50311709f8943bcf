import type { CarcassPart } from '../document/cut.js';
import type { Shop } from '../shop/model.js';
import { renamed, unnamed } from './alike.js';
import type { CarcassAnalysis } from './carcass-analysis.js';

/** Of so many carcasses that are in the text no more, what they said is kept: one types, and takes it back. */
const GONE_KEPT = 32;

/** All that a carcass of a job depends on besides its own text. */
export interface Ground {
  /** Of the basis: unit and defaults of the file. */
  readonly basisKey: string;
  readonly shop: Shop;
  /** The whole text where it could not be cut, and so bears on each of its carcasses; null where it was. */
  readonly uncut: string | null;
}

/** The carcasses of a job that are worked out on one ground, by their texts. Equal ones are worked out once. */
export class WorkedOut {
  readonly ground: Ground;
  readonly #work: (part: CarcassPart) => CarcassAnalysis;
  #byText: Map<string, CarcassAnalysis> = new Map();
  /** The same by what they say without their names. */
  #alike: Map<string, CarcassAnalysis> = new Map();

  constructor(ground: Ground, work: (part: CarcassPart) => CarcassAnalysis) {
    this.ground = ground;
    this.#work = work;
  }

  isOn({ basisKey, shop, uncut }: Ground): boolean {
    const { ground } = this;
    return ground.basisKey === basisKey && ground.shop === shop && ground.uncut === uncut;
  }

  /** What is known of a carcass without working anything out. */
  known(part: CarcassPart): CarcassAnalysis | undefined {
    return this.#byText.get(keyOf(part));
  }

  /** A carcass, worked out where it has to be. */
  of(part: CarcassPart): CarcassAnalysis {
    const known = this.known(part);
    if (known !== undefined) return known;
    const carcass = this.#likeAnother(part);
    this.#byText.set(keyOf(part), carcass);
    return carcass;
  }

  /** Forgets what is in the text no more, but for the last few. */
  keepOnly(parts: readonly CarcassPart[]): void {
    const keys = new Set(parts.map(keyOf));
    if (this.#byText.size > keys.size) this.#byText = new Map([...this.#byText].filter(([key]) => keys.has(key)));
    const most = keys.size + GONE_KEPT;
    if (this.#alike.size > most) this.#alike = new Map([...this.#alike].slice(-most));
  }

  /** As one of those known by what they say without their names; else worked out, and known from then on. */
  #likeAnother(part: CarcassPart): CarcassAnalysis {
    const own = unnamed(part);
    if (own === null) return this.#work(part);
    const other = this.#alike.get(own.likeness);
    const carcass = (other && renamed(other, own.name)) ?? this.#work(part);
    if (other === undefined) this.#alike.set(own.likeness, carcass);
    return carcass;
  }
}

const keyOf = ({ text, whole }: CarcassPart): string => (whole === null ? text : String(whole.index));
