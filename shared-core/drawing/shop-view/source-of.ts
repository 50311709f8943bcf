import type { Machine } from '../../shop/model.js';
import { SECTION_OF } from '../../shop/sections.js';

/** Names the place of the shop file that a machine, or a part of it, is written in: the keys that lead there, as JSON. */
export function sourceOf(
  { kind, name }: Pick<Machine, 'kind' | 'name'>,
  ...keys: readonly (string | number)[]
): string {
  return sourceAt([SECTION_OF[kind], name, ...keys]);
}

export const sourceAt = (path: readonly (string | number)[]): string => JSON.stringify(path);
