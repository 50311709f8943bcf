import type { FittingKind } from '../fittings/names.js';
import { kindOf } from '../fittings/kinds.js';
import { KIND_WORDS } from '../shop/kind-words.js';
import type { MachineKind } from '../shop/model.js';
import type { StockList } from '../shop/stock.js';
import { counted, listed, quoted, sortNoun, verb } from '../words/english.js';
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

/** What of the built-in shop is used because the shop file leaves a whole list out. */
export interface LeftOutList {
  readonly list: StockList;
  readonly names: readonly string[];
  /** The keys of the shop file that they would stand under. */
  readonly sections: readonly string[];
  /** Some of the carcasses that use them, and how many more do. */
  readonly carcasses: readonly string[];
  readonly more: number;
}

const LISTS: Readonly<Record<StockList, string>> = {
  boards: 'boards',
  bands: 'edge bands',
  fittings: 'fittings for joints',
  hinges: 'hinges',
  slides: 'slides',
  pulls: 'pulls',
  brackets: 'hanging brackets',
  wardrobeRails: 'wardrobe rails',
  feet: 'feet',
  angles: 'angles',
  machines: 'machines',
};

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
  incompleteShop: ({ list, names, sections, carcasses, more }: LeftOutList) =>
    `The shop file has no ${LISTS[list]}, so ${listed(names.map(quoted))} of the built-in shop ${verb(names.length, 'is', 'are')} used in ${listed([...carcasses.map(quoted), ...(more > 0 ? [`${more} more`] : [])])}. ${verb(names.length, 'Its', 'Their')} figures are not those of your shop: write your own under ${listed(sections.map((key) => `\`${key}\``))}.`,
  usedHere: ({ names }: { readonly names: readonly string[] }) =>
    `${listed(names.map(quoted))} ${verb(names.length, 'is', 'are')} used here.`,
  writeBuiltIn: ({ list }: { readonly list: StockList }) =>
    `Write the ${LISTS[list]} of the built-in shop into the shop file, to be corrected`,
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
