import type { Operation } from './operation.js';

/** For each operation that begins on index pins, those that bore the holes they stand in. */
export type Precedents = ReadonlyMap<Operation, ReadonlySet<Operation>>;

/**
 * What must come before what, told of one operation for all that are like it.
 * @param like the operation that stands for all that ask the same of the machine
 */
export function precedentsOf(operations: readonly Operation[], like: (operation: Operation) => Operation): Precedents {
  const precedents = new Map<Operation, Set<Operation>>();
  for (const operation of operations) {
    if (operation.pinsIn === null) continue;
    const known = precedents.get(like(operation)) ?? new Set();
    precedents.set(like(operation), known.add(like(operation.pinsIn)));
  }
  return precedents;
}

type Group = { readonly chosen: readonly { readonly operation: Operation }[] };

/**
 * Pairs of groups, by their indexes, in which the first must run before the second. Operations of one group run in the order
 * of the job, in which holes come before the pins that stand in them.
 */
export function groupsBefore(groups: readonly Group[], precedents: Precedents): [number, number][] {
  if (precedents.size === 0) return [];
  const groupOf = new Map(
    groups.flatMap(({ chosen }, index) => chosen.map(({ operation }) => [operation, index] as const)),
  );
  const pairs = new Map<string, [number, number]>();
  for (const [operation, earlier] of precedents) {
    const later = groupOf.get(operation);
    for (const one of earlier) {
      const first = groupOf.get(one);
      if (first !== undefined && later !== undefined && first !== later) pairs.set(`${first}|${later}`, [first, later]);
    }
  }
  return [...pairs.values()];
}

/**
 * The indexes 0 .. count - 1 so that the first of every pair comes before the second, else as they are; fewer than `count`
 * where the pairs run in a circle.
 */
export function orderByPairs(count: number, pairs: readonly (readonly [number, number])[]): number[] {
  const waiting = new Int32Array(count);
  for (const [, later] of pairs) waiting[later]! += 1;
  const order: number[] = [];
  const left = new Set(Array.from({ length: count }, (_, index) => index));
  for (;;) {
    const next = [...left].find((index) => waiting[index] === 0);
    if (next === undefined) return order;
    order.push(next);
    left.delete(next);
    for (const [first, later] of pairs) if (first === next) waiting[later]! -= 1;
  }
}

/** Whether groups can run one after the other, each as a whole. */
export function canRun(groups: readonly Group[], precedents: Precedents): boolean {
  if (precedents.size === 0) return true;
  return orderByPairs(groups.length, groupsBefore(groups, precedents)).length === groups.length;
}
