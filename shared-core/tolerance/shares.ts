import type { Stray } from '../machining/replay/stray.js';

/** How much of something counts. */
export type Share = {
  /** A panel; of `stand` the id of a joint. */
  readonly of: string;
  readonly share: number;
} & (
  | { readonly kind: 'length' | 'thickness' }
  /** How far the end panel of a joint stands from its place as drawn, at a place on the front-to-back axis of the carcass. */
  | { readonly kind: 'stand'; readonly along: number }
);

/** What all of these come to together. */
export type Sum = readonly Share[];

/** How far the outside face of an end panel really stands from its place as drawn, along the axis of its thickness. */
export type Stand = (along: number) => number;

/** A joint that is not known leaves its panel where it is drawn. */
const AS_DRAWN: Stand = () => 0;

/** What a sum comes to, in micrometres. */
export function amountOf(sum: Sum, stray: Stray, stands: ReadonlyMap<string, Stand>): number {
  let amount = 0;
  for (const one of sum) {
    const size = one.kind === 'stand' ? (stands.get(one.of) ?? AS_DRAWN)(one.along) : stray(one.kind, one.of);
    amount += one.share * size;
  }
  return amount;
}

/** Shares below this are what is left of others that cancel. */
const LEAST_SHARE = 1e-9;

/** Adds up sums, each taken so many times. */
export function total(...sums: readonly (readonly [sum: Sum, times: number])[]): Sum {
  const shares = new Map<string, Share>();
  for (const [sum, times] of sums) {
    for (const one of sum) {
      const key = one.kind === 'stand' ? `${one.kind} ${one.of} ${one.along}` : `${one.kind} ${one.of}`;
      shares.set(key, { ...one, share: (shares.get(key)?.share ?? 0) + times * one.share });
    }
  }
  return [...shares.values()].filter(({ share }) => Math.abs(share) > LEAST_SHARE);
}
