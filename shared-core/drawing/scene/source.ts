import type { Place } from '../../document/place.js';
import type { SourceKey } from './scene.js';

/** Names a place; the same place has the same name in every scene of its carcass. */
export function sourceKey({ part, start, end }: Place): SourceKey {
  return `${part}:${start}-${end}`;
}
