import type { FittingKind } from '../fittings/names.js';
import { kindOf } from '../fittings/kinds.js';
import { KIND_WORDS } from '../shop/kind-words.js';
import type { MachineKind } from '../shop/model.js';
import { counted, listed, quoted, sortNoun } from '../words/english.js';
import { messages, type Words } from '../words/message.js';

/** Sorts of things in a shop file that have no kinds. */
export type PlainSort = 'board' | 'band' | 'hinge' | 'slide' | 'pull' | 'bracket' | 'wardrobe-rail' | 'foot' | 'angle';

/** Something of a shop file that could not be read. */
export type UnreadName =
  | { readonly sort: PlainSort; readonly name: string }
  | { readonly sort: 'fitting'; readonly kind: FittingKind; readonly name: string }
  | { readonly sort: 'machine'; readonly kind: MachineKind; readonly name: string };

interface BrokenShop {
  readonly errors: number;
  readonly line: number;
  /** The first of them, in the shop file's own words. */
  readonly first: Words;
}

/** What the job as a whole has to be told, and faults of the program. */
export const jobMessages = messages('job', {
  neutralShop: () =>
    'The built-in shop is used because the job names no shop file. Its machines are invented: name your own shop with `shop: NAME.shop.yaml`.',
  brokenShop: ({ errors, line, first }: BrokenShop, show) =>
    `${faulty(errors, line)} ${show.tell(first)} What is said of this job may be wrong until the shop file is corrected.`,
  brokenShopNames: ({ errors, line, first, names }: BrokenShop & { readonly names: readonly UnreadName[] }, show) =>
    `${faulty(errors, line)} ${show.tell(first)} Nothing is worked out or planned with ${listed(names.map(named))} until the shop file is corrected.`,
  unusableShop: ({ errors, line, first }: BrokenShop, show) =>
    `${faulty(errors, line)} ${show.tell(first)} Nothing is worked out for this job until the shop file is corrected.`,
  useShop: ({ file }: { readonly file: string }) => `Use ${quoted(file)}`,
  internalFault: ({ words }: { readonly words: string }) =>
    `Borewright failed while checking this carcass (${words}), so not all of it is checked. The fault is Borewright’s, not yours: report it with the job file and the shop file.`,
  ofLikes: ({ carcasses, message }: { readonly carcasses: readonly string[]; readonly message: Words }, show) =>
    `In ${listed(carcasses.map(quoted))}, which ${carcasses.length === 1 ? 'is' : 'are'} like this one: ${show.tell(message)}`,
  batchInCarcass: ({ title }: { readonly title: Words }, show) => `${show.tell(title)} (this carcass)`,
  batchInFile: ({ title }: { readonly title: Words }, show) => `${show.tell(title)} (whole file)`,
});

function faulty(errors: number, line: number): string {
  return errors === 1
    ? `The shop file has an error in line ${line}.`
    : `The shop file has ${counted(errors, 'error')}, the first in line ${line}.`;
}

function named(unread: UnreadName): string {
  switch (unread.sort) {
    case 'board':
    case 'band':
    case 'hinge':
    case 'slide':
    case 'pull':
    case 'bracket':
    case 'wardrobe-rail':
    case 'foot':
    case 'angle':
      return `the ${sortNoun(unread.sort)} ${quoted(unread.name)}`;
    case 'fitting':
      return `the ${kindOf(unread).item.noun} ${quoted(unread.name)}`;
    case 'machine':
      return `the ${KIND_WORDS[unread.kind]} ${quoted(unread.name)}`;
  }
}
