import type { Located } from '../document/place.js';
import { nearestName } from '../schema/nearest.js';
import { say, type Sort } from '../shop/messages.js';
import type { MachineKind } from '../shop/model.js';
import { replaceName } from './changes.js';
import { grouped } from './lookups.js';
import type { Found } from './rule.js';

/**
 * A finding for every place where a name is written that the shop has not. `known` are the names that would do there,
 * `otherKind` tells of which kind a machine of that name is.
 */
export function unknownNames(
  names: readonly (Located<string> | null | undefined)[],
  known: readonly string[],
  sort: Sort,
  otherKind: (name: string) => MachineKind | undefined = () => undefined,
): readonly Found[] {
  const wrong = names
    .filter((name) => name !== null && name !== undefined)
    .filter((name) => !known.includes(name.value));
  return grouped(wrong, (name) => `${name.place.part} ${name.place.start} ${name.value}`).map((same) => {
    const name = same[0]!;
    const nearest = nearestName(name.value, known);
    const change = nearest === null ? null : replaceName(name, nearest);
    const kind = otherKind(name.value);
    const figures = { name: name.value, sort, known };
    return {
      place: name.place,
      message:
        kind !== undefined
          ? say.otherKind({ ...figures, kind })
          : name.written
            ? say.unknown(figures)
            : say.usualUnknown(figures),
      repairs: change === null ? [] : [{ title: say.use({ name: nearest! }), changes: [change], preferred: true }],
    };
  });
}
