/** Each way to take one of each. */
export function combined<T>(lists: readonly (readonly T[])[]): readonly (readonly T[])[] {
  return lists.reduce<readonly (readonly T[])[]>(
    (ways, list) => ways.flatMap((way) => list.map((one) => [...way, one])),
    [[]],
  );
}
