import type { Located } from '../document/place.js';
import { replaceName } from './changes.js';
import { grouped } from './lookups.js';
import { nearestName } from '../schema/nearest.js';
import type { Found } from './rule.js';
import { listed } from './words.js';

/**
 * A finding for every place where a name is written that the shop has not. `known` are the names that would do there;
 * `noun` is what they name: 'board'.
 */
export function unknownNames(
  names: readonly (Located<string> | null | undefined)[],
  known: readonly string[],
  noun: string,
  also: (name: string) => string = () => '',
): readonly Found[] {
  const wrong = names
    .filter((name) => name !== null && name !== undefined)
    .filter((name) => !known.includes(name.value));
  return grouped(wrong, (name) => `${name.place.part} ${name.place.start} ${name.value}`).map((same) => {
    const name = same[0]!;
    const nearest = nearestName(name.value, known);
    const change = nearest === null ? null : replaceName(name, nearest);
    const whose = name.written ? '' : ', which is its usual one';
    return {
      place: name.place,
      message:
        `The shop has no ${noun} ‘${name.value}’${whose}${also(name.value)}. ` +
        (known.length === 0 ? `It has no ${noun} at all; add one to the shop file.` : `It has ${listed(known)}.`),
      repairs: change === null ? [] : [{ title: `Use ${nearest!}`, changes: [change], preferred: true }],
    };
  });
}
