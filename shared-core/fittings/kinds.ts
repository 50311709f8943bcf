import { listed } from '../words/english.js';
import type { Fields } from '../schema/schema.js';
import { cam } from './kinds/cam.js';
import { dowel } from './kinds/dowel.js';
import type { FittingDefinition, FittingOf, Purpose } from './fitting.js';
import type { BorePurpose, FittingKind } from './names.js';
import { screw } from './kinds/screw.js';

/** Every kind of fitting, the usual one first. A new kind is its file, its names in `names.ts` and its place in this list. */
const LIST = [dowel, screw, cam] as const satisfies readonly { readonly kind: FittingKind }[];

export type ListedFittings = (typeof LIST)[number];

/** A fitting of the shop; `kind` tells which. */
export type Fitting = { [D in ListedFittings as D['kind']]: FittingOf<D['kind'], D['item']['fields']> }[FittingKind];
/** What is known of any kind. */
export type Definition = FittingDefinition<Fitting, Fields, string, never> & {
  readonly purposes: Readonly<Partial<Record<BorePurpose, Purpose>>>;
};

export const fittingKinds: readonly Definition[] = LIST;

const BY_KIND = Object.fromEntries<Definition>(fittingKinds.map((one) => [one.kind, one])) as Readonly<
  Record<FittingKind, Definition>
>;

/** What is known of the kind of a fitting. */
export function kindOf({ kind }: Pick<Fitting, 'kind'>): Definition {
  return BY_KIND[kind];
}

const nouns = fittingKinds.map(({ item }) => item.noun);
/** What a fitting can be: 'dowel, connector screw or cam fitting'. */
export const SORTS_OF_FITTING = listed(nouns, 'or');
