import type { Located } from '../document/place.js';
import { nearestName } from '../schema/nearest.js';
import { KIND_WORDS } from '../shop/habits.js';
import type { MachineKind } from '../shop/model.js';
import { aNoun, listed, quoted } from '../words/english.js';
import { messages } from '../words/message.js';
import { replaceName } from './changes.js';
import { grouped } from './lookups.js';
import type { Found } from './rule.js';

/** What a name of the shop is the name of. */
export type Sort = 'board' | 'band' | 'fitting' | MachineKind;

interface Unknown {
  readonly name: string;
  readonly sort: Sort;
  readonly known: readonly string[];
}

export const unknownNameMessages = messages('name-unknown', {
  unknown: ({ name, sort, known }: Unknown) =>
    `${quoted(name)} is not ${aNoun(noun(sort))} of the shop. ${use(sort, known)}`,
  usualUnknown: ({ name, sort, known }: Unknown) =>
    `${quoted(name)}, the usual ${noun(sort)}, is not in the shop file. ${use(sort, known)}`,
  otherKind: ({ name, sort, known, kind }: Unknown & { readonly kind: MachineKind }) =>
    `${quoted(name)} is ${aNoun(noun(kind))}, not ${aNoun(noun(sort))}. ${use(sort, known)}`,
  use: ({ name }: { readonly name: string }) => `Use ${quoted(name)}`,
});

const noun = (sort: Sort): string =>
  sort === 'board' || sort === 'band' || sort === 'fitting' ? sort : KIND_WORDS[sort];

function use(sort: Sort, known: readonly string[]): string {
  return known.length === 0 ? `Add ${aNoun(noun(sort))} to the shop file.` : `Use ${listed(known.map(quoted), 'or')}.`;
}

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
          ? unknownNameMessages.otherKind({ ...figures, kind })
          : name.written
            ? unknownNameMessages.unknown(figures)
            : unknownNameMessages.usualUnknown(figures),
      repairs:
        change === null
          ? []
          : [{ title: unknownNameMessages.use({ name: nearest! }), changes: [change], preferred: true }],
    };
  });
}
