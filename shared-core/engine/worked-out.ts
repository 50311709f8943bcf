import type { Shop } from '../shop/model.js';
import { ShopChanges } from '../shop/watched.js';
import { named, unnamed } from './alike.js';
import type { CarcassAnalysis } from './carcass-analysis.js';
import type { Lined } from './lined.js';

/** Of so many carcasses that are in the text no more, what they said is kept: one types, and takes it back. */
const GONE_KEPT = 32;

/** All that a carcass of a job depends on besides its own text and those of what it is like. */
export interface Ground {
  /** Of the basis: unit and defaults of the file. */
  readonly basisKey: string;
  readonly shop: Shop;
  /** The whole text where it could not be cut, and so bears on each of its carcasses; null where it was. */
  readonly uncut: string | null;
}

/** The carcasses of a job that are worked out on one ground, by their texts and those of what they are like. Equal ones are worked out once. */
export class WorkedOut {
  readonly ground: Ground;
  readonly #work: (lined: Lined) => CarcassAnalysis;
  /** What was known in other shops, the last one first. */
  #earlier: readonly { readonly worked: WorkedOut; readonly changes: ShopChanges }[];
  #byText: Map<string, CarcassAnalysis> = new Map();
  /** The same by what they say without their names. */
  #alike: Map<string, CarcassAnalysis> = new Map();

  /** @param earlier what may be known of the same carcasses on other ground */
  constructor(
    ground: Ground,
    work: (lined: Lined) => CarcassAnalysis,
    earlier: readonly (WorkedOut | undefined)[] = [],
  ) {
    this.ground = ground;
    this.#work = work;
    this.#earlier = [...new Set(earlier)].flatMap((worked) =>
      worked?.differsInShop(ground) === true
        ? [{ worked, changes: new ShopChanges(worked.ground.shop, ground.shop) }]
        : [],
    );
    // Those take nothing over any more, or each would hold the one before it.
    for (const worked of earlier) if (worked) worked.#earlier = [];
  }

  /** Whether only the shop is another one there. */
  differsInShop({ basisKey, uncut }: Ground): boolean {
    return this.ground.basisKey === basisKey && this.ground.uncut === uncut;
  }

  isOn({ basisKey, shop, uncut }: Ground): boolean {
    const { ground } = this;
    return ground.basisKey === basisKey && ground.shop === shop && ground.uncut === uncut;
  }

  /** What is known of a carcass without working anything out. */
  known(lined: Lined): CarcassAnalysis | undefined {
    const key = keyOf(lined);
    return this.#byText.get(key) ?? this.#fromEarlier(key, false);
  }

  /** A carcass, worked out where it has to be. */
  of(lined: Lined): CarcassAnalysis {
    const known = this.known(lined) ?? this.#fromEarlier(keyOf(lined), true);
    if (known !== undefined) return known;
    const carcass = this.#likeAnother(lined);
    this.#byText.set(keyOf(lined), carcass);
    return carcass;
  }

  /** A carcass as it was in an earlier shop, where that bears on it so little that it need not be worked out anew. */
  #fromEarlier(key: string, mayTake: boolean): CarcassAnalysis | undefined {
    for (const { worked, changes } of this.#earlier) {
      const carcass = worked.#byText.get(key)?.in(changes, mayTake);
      if (!carcass) continue;
      this.#byText.set(key, carcass);
      return carcass;
    }
    return undefined;
  }

  /** Forgets what is in the text no more, but for the last few. */
  keepOnly(all: readonly Lined[]): void {
    this.#earlier = [];
    const keys = new Set(all.map(keyOf));
    if (this.#byText.size > keys.size) this.#byText = new Map([...this.#byText].filter(([key]) => keys.has(key)));
    const most = keys.size + GONE_KEPT;
    if (this.#alike.size > most) this.#alike = new Map([...this.#alike].slice(-most));
  }

  /** By what it says without its name, which is worked out once for all that say the same; of one that is not sound by its own text. */
  #likeAnother(lined: Lined): CarcassAnalysis {
    const own = unnamed(lined.part);
    if (own === null) return this.#work(lined);
    const likeness = withBases(lined, own.part.text);
    const known = this.#alike.get(likeness);
    const alike = known ?? this.#work({ ...lined, part: own.part });
    if (known === undefined) this.#alike.set(likeness, alike);
    return named(alike, own) ?? this.#work(lined);
  }
}

function keyOf(lined: Lined): string {
  const { text, whole } = lined.part;
  return whole === null ? withBases(lined, text) : String(whole.index);
}

/** Equal where all texts are that bear on a carcass; `own` stands for its own. */
function withBases({ bases }: Lined, own: string): string {
  if (bases === null) return `${own}\0`;
  return bases.length === 0 ? own : [own, ...bases.map(({ text }) => text)].join('\0\0');
}
