import { sharedBook, type Book } from '../book/book.js';
import type { BookLoad } from '../book/loads.js';
import { usualClearDepth } from '../book/usual.js';
import { patternPlaces } from '../boring/pattern.js';
import { wishIn } from '../boring/wish.js';
import { fittingNamed } from '../carcass/choices.js';
import type { SpindleLine } from '../carcass/spindle-line.js';
import { Derived } from '../derived/derived.js';
import type { Micrometres } from '../length/units.js';
import type { HorizontalHead, Shop, VerticalHead } from '../shop/model.js';
import { readShop } from '../shop/read.js';
import { listed, quoted } from '../words/english.js';
import { messages, tell, type Message } from '../words/message.js';
import { timeWords } from '../words/time.js';

interface Heads {
  readonly faces: VerticalHead;
  readonly ends: HorizontalHead;
}

interface Extent {
  readonly size: Micrometres;
  readonly places: readonly Micrometres[];
}

const spindles = (load: readonly number[]): string => `spindles ${listed(load.map((k) => String(k + 1)))}`;

type Loads = readonly (readonly number[])[];
const allOf = (loads: Loads): string => (loads.length === 0 ? 'none' : listed(loads.map(spindles)));

export const say = messages('shared-load', {
  none: () => 'This shop shares no load of bits (`share-places: no`): each joint takes its own places.',
  impossible: () =>
    'This shop shares places, but no load of bits serves its usual joints on its usual heads: each joint takes its own places.',
  load: ({ faces, ends, load }: { readonly faces: string; readonly ends: string; readonly load: readonly number[] }) =>
    `The load of bits that usual joints share, on ${quoted(faces)} and ${quoted(ends)}, counted from a front edge: ${spindles(load)}.`,
  beside: ({ load }: { readonly load: readonly number[] }) =>
    `For joints that stand back to back with others: ${spindles(load)}.`,
  loadFor: ({ sizes, load }: { readonly sizes: readonly Micrometres[]; readonly load: readonly number[] }, show) =>
    `For carcasses ${listed(sizes.map((size) => show.exact(size)))} deep: ${spindles(load)}.`,
  own: ({ seconds, fewestSetUps }: { readonly seconds: number; readonly fewestSetUps: number }) =>
    `Each joint takes its own places, as that takes a batch the least time: about ${timeWords(seconds)} for its dowels and for bits that are changed, where the load with the fewest set-ups takes about ${timeWords(fewestSetUps)}.`,
  several: ({ faces, ends, count }: { readonly faces: string; readonly ends: string; readonly count: number }) =>
    `The ${count} loads of bits that usual joints share, on ${quoted(faces)} and ${quoted(ends)}, counted from a front edge.`,
  weighed: ({ seconds, fewestSetUps }: { readonly seconds: number; readonly fewestSetUps: number }) =>
    `Chosen by the time of a batch: about ${timeWords(seconds)} for its dowels and for bits that are changed, where the load with the fewest set-ups takes about ${timeWords(fewestSetUps)}.`,
  fewest: ({ seconds }: { readonly seconds: number }) =>
    `The load with the fewest set-ups takes the least time for a batch, too: about ${timeWords(seconds)} for its dowels and for bits that are changed.`,
  deep: ({ size, places }: Extent, show) =>
    `  ${show.exact(size)} deep with the usual back: at ${listed(places.map((place) => show.exact(place)))}.`,
  rail: ({ size, places }: Extent, show) =>
    `  rails ${show.exact(size)} wide: at ${listed(places.map((place) => show.exact(place)))}.`,
  same: () => 'The earlier file has the same load: what was bored by it is remade by this one.',
  changed: ({ before, now }: { readonly before: Loads; readonly now: Loads }) =>
    `The earlier file has another load: ${allOf(before)} before, ${allOf(now)} now. A panel that is remade by this file does not fit one that was bored by the earlier one: keep the earlier file for remakes.`,
  placed: ({ before, now }: { readonly before: Placing; readonly now: Placing }, show) =>
    `The earlier file has the same spindles at other places: first bore at ${show.exact(before.first)} and pitch ${show.exact(before.pitch)} before, ${show.exact(now.first)} and ${show.exact(now.pitch)} now. Keep the earlier file for remakes.`,
});

interface Placing {
  readonly first: Micrometres;
  readonly pitch: Micrometres;
}

/**
 * The load of bits that a shop file shares among its usual joints, place by place, and how it differs from that of an earlier
 * version of the file. Plain text.
 */
export function sharedLoadOf(text: string, earlier: string | null): string {
  const { shop } = readShop(text);
  const lines = told(shop);
  const change = earlier === null ? [] : [changeSince(readShop(earlier).shop, shop)];
  return [...lines, ...change].map((line) => `${tell(line, shop.unit)}\n`).join('');
}

function headsOf({ machines, habits }: Shop): Heads | null {
  const faces = machines.get(habits.machines.faces ?? '');
  const ends = machines.get(habits.machines.ends ?? '');
  return faces?.kind === 'vertical' && ends?.kind === 'horizontal' ? { faces, ends } : null;
}

function bookOf(shop: Shop): Book | null {
  const heads = headsOf(shop);
  const fitting = fittingNamed(shop, shop.habits.joint);
  return shop.habits.sharePlaces && heads ? sharedBook(heads.faces, heads.ends, shop, fitting, new Derived()) : null;
}

function told(shop: Shop): readonly Message[] {
  if (!shop.habits.sharePlaces) return [say.none()];
  const [heads, book] = [headsOf(shop), bookOf(shop)];
  if (heads === null || book === null) return [say.impossible()];
  if (book.loads.length === 0) return book.weighed ? [say.own(book.weighed)] : [];
  const [names, { loads, weighed }] = [{ faces: heads.faces.name, ends: heads.ends.name }, book];
  const [only] = loads;
  const lines =
    loads.length === 1 && only
      ? [say.load({ ...names, load: only.load }), ...toldOf(only, heads, shop)]
      : [
          say.several({ ...names, count: loads.length }),
          ...loads.flatMap((one) => [say.loadFor({ sizes: one.depths, load: one.load }), ...toldOf(one, heads, shop)]),
        ];
  if (weighed === null) return lines;
  const isFewest = weighed.seconds === weighed.fewestSetUps;
  return [...lines, isFewest ? say.fewest(weighed) : say.weighed(weighed)];
}

/** The places of one load, in the depths that it is for, in rails and back to back. */
function toldOf(shared: BookLoad, { faces }: Heads, shop: Shop): readonly Message[] {
  const { railWidth, firstDowel, joint } = shop.habits;
  const count = faces.spindles;
  const line: SpindleLine = { first: firstDowel, pitch: faces.pitch, count, reached: count, nearest: 0, shared };
  const within = (to: Micrometres): readonly Micrometres[] =>
    patternPlaces(line, wishIn(shop, { from: 0, to }, fittingNamed(shop, joint), false));
  return [
    ...shared.depths
      .toSorted((a, b) => a - b)
      .map((size) => say.deep({ size, places: within(usualClearDepth(size, shop)) })),
    ...(shared.hasRails ? [say.rail({ size: railWidth, places: within(railWidth) })] : []),
    say.beside({ load: shared.beside }),
  ];
}

const loadsOf = (loads: readonly BookLoad[]): Loads => loads.map(({ load }) => load);

function changeSince(earlier: Shop, shop: Shop): Message {
  const [before, now] = [bookOf(earlier)?.loads ?? [], bookOf(shop)?.loads ?? []];
  if (JSON.stringify(before) !== JSON.stringify(now))
    return say.changed({ before: loadsOf(before), now: loadsOf(now) });
  const placing = (one: Shop): Placing => ({
    first: one.habits.firstDowel,
    pitch: headsOf(one)?.faces.pitch ?? one.habits.pitch,
  });
  const [was, is] = [placing(earlier), placing(shop)];
  const isMoved = now.length > 0 && (was.first !== is.first || was.pitch !== is.pitch);
  return isMoved ? say.placed({ before: was, now: is }) : say.same();
}
