import type { FittingKind } from '../fittings/names.js';
import { kindOf } from '../fittings/kinds.js';
import type { NameOf } from '../schema/schema.js';
import { aNoun, listed, quoted, sortNoun } from '../words/english.js';
import { messages } from '../words/message.js';
import { KIND_WORDS } from './kind-words.js';
import type { MachineKind } from './model.js';

/** What a name of the shop is the name of. */
export type NamedSort = Exclude<NameOf, 'shop-file' | 'stop' | 'panel' | 'carcass'>;
export type Sort =
  Exclude<NamedSort, 'machine'> | { readonly fitting: FittingKind } | { readonly machine: MachineKind };

interface Unknown {
  readonly name: string;
  readonly sort: Sort;
  readonly known: readonly string[];
}

/** Keys under `habits` that name a thing of the shop. */
const HABITS = {
  board: 'board',
  'back-board': 'board for backs',
  band: 'band',
  joint: 'fitting',
  hinge: 'hinge',
  slide: 'slide',
  pull: 'pull',
  foot: 'foot',
  angle: 'angle',
  'wardrobe-rail': 'wardrobe rail',
  bracket: 'bracket',
} as const;

export type NamingHabit = keyof typeof HABITS;

/** What the shop file as a whole has to be told: names that name nothing, or two things. */
export const say = messages('shop', {
  unknown: (one: Unknown) => `${quoted(one.name)} is not ${aNoun(nounOf(one.sort))} of the shop. ${known(one)}`,
  usualUnknown: (one: Unknown) =>
    `The shop’s usual ${nounOf(one.sort)}, ${quoted(one.name)}, is not in the shop file. ${known(one)}`,
  otherKind: ({ kind, ...one }: Unknown & { readonly kind: MachineKind }) =>
    `${quoted(one.name)} is ${aNoun(KIND_WORDS[kind])}, not ${aNoun(nounOf(one.sort))}. ${known(one)}`,
  usualMissing: ({ habit, taken }: { readonly habit: NamingHabit; readonly taken: string }) =>
    `The shop file does not name the usual ${HABITS[habit]}, so ${quoted(taken)} is used. Write \`${habit}\` under \`habits\`.`,
  twice: ({ name, sort }: { readonly name: string; readonly sort: NamedSort }) =>
    `Another ${sortNoun(sort)} is already called ${quoted(name)}. Give this one another name.`,
  sheetLikeBoard: ({ name }: { readonly name: string }) =>
    `The usual sheet of ${quoted(name)} is called so already, and this one is left out. Give it another name.`,
  first: ({ name }: { readonly name: string }) => `${quoted(name)} is first used here.`,
  use: ({ name }: { readonly name: string }) => `Use ${quoted(name)}`,
  addHabit: ({ habit, name }: { readonly habit: string; readonly name: string }) =>
    `Add ${habit}: ${name} to the habits`,
});

function known({ sort, known: names }: Unknown): string {
  const noun = aNoun(nounOf(sort));
  return names.length === 0 ? `Add ${noun} to the shop file.` : `Use ${listed(names.map(quoted), 'or')}.`;
}

function nounOf(sort: Sort): string {
  if (typeof sort === 'string') return sortNoun(sort);
  return 'machine' in sort ? KIND_WORDS[sort.machine] : kindOf({ kind: sort.fitting }).item.noun;
}
