/** Something of which up to `most` may be taken. Sizes over 0, whole; values not negative. */
export interface Item {
  readonly size: number;
  readonly value: number;
  readonly most: number;
}

export interface Filling {
  readonly value: number;
  /** No filling is worth more. Equal to `value` unless the effort ran out. */
  readonly bound: number;
  /** How many of each item, in the order given. */
  readonly counts: readonly number[];
}

/** Steps after which a filling is good enough: beyond, the best so far stands beside its bound. */
const EFFORT = 4000;
/** What rounding of quotients may hide. */
const EPSILON = 1e-9;

/**
 * The most valuable filling of a length. Depth first over the items by value per size, as Horowitz and Sahni (1974) do,
 * each branch cut off by what the rest could be worth if it could be poured in.
 */
export function fill(items: readonly Item[], capacity: number, effort = EFFORT): Filling {
  const order = items
    .map((_, i) => i)
    .filter((i) => items[i]!.value > 0 && items[i]!.most > 0 && items[i]!.size <= capacity)
    .sort((a, b) => items[b]!.value * items[a]!.size - items[a]!.value * items[b]!.size || a - b);
  const size = order.map((i) => items[i]!.size);
  const value = order.map((i) => items[i]!.value);
  const most = order.map((i) => items[i]!.most);
  const smallest = suffixMinima(size);
  const taken: number[] = order.map(() => 0);
  let best = 0;
  let bestTaken = taken.slice();
  let missed = 0;
  let steps = 0;

  const poured = (from: number, room: number): number => {
    let worth = 0;
    for (let i = from; i < size.length; i += 1) {
      const whole = Math.min(most[i]!, Math.floor(room / size[i]!));
      worth += whole * value[i]!;
      room -= whole * size[i]!;
      if (whole < most[i]!) return worth + (room * value[i]!) / size[i]!;
    }
    return worth;
  };
  const walk = (at: number, room: number, worth: number): void => {
    if (worth > best + EPSILON) {
      best = worth;
      bestTaken = taken.slice();
    }
    // Items that are left out are passed in a loop: there can be more of them than calls may be nested.
    for (; at < size.length && room >= smallest[at]!; at += 1) {
      const promise = worth + poured(at, room);
      if (promise <= best + EPSILON) return;
      steps += 1;
      if (steps > effort) {
        missed = Math.max(missed, promise);
        return;
      }
      for (let count = Math.min(most[at]!, Math.floor(room / size[at]!)); count > 0; count -= 1) {
        taken[at] = count;
        walk(at + 1, room - count * size[at]!, worth + count * value[at]!);
      }
      taken[at] = 0;
    }
  };
  walk(0, capacity, 0);

  const counts = items.map(() => 0);
  order.forEach((i, at) => (counts[i] = bestTaken[at]!));
  return { value: best, bound: Math.max(best, missed), counts };
}

function suffixMinima(sizes: readonly number[]): readonly number[] {
  const minima = sizes.slice();
  for (let i = minima.length - 2; i >= 0; i -= 1) minima[i] = Math.min(minima[i]!, minima[i + 1]!);
  return minima;
}
