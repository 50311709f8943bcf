import { sharedLoad, usualClearDepth, type SharedLoad } from '../book/book.js';
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

interface Heads {
  readonly faces: VerticalHead;
  readonly ends: HorizontalHead;
}

interface Extent {
  readonly size: Micrometres;
  readonly places: readonly Micrometres[];
}

const spindles = (load: readonly number[]): string => `spindles ${listed(load.map((k) => String(k + 1)))}`;

const say = messages('shared-load', {
  none: () => 'This shop shares no load of bits (`share-places: no`): each joint takes its own places.',
  impossible: () =>
    'This shop shares places, but no load of bits serves its usual joints on its usual heads: each joint takes its own places.',
  load: ({ faces, ends, load }: { readonly faces: string; readonly ends: string; readonly load: readonly number[] }) =>
    `The load of bits that usual joints share, on ${quoted(faces)} and ${quoted(ends)}, counted from a front edge: ${spindles(load)}.`,
  beside: ({ load }: { readonly load: readonly number[] }) =>
    `For joints that stand back to back with others: ${spindles(load)}.`,
  deep: ({ size, places }: Extent, show) =>
    `  ${show.exact(size)} deep with the usual back: at ${listed(places.map((place) => show.exact(place)))}.`,
  rail: ({ size, places }: Extent, show) =>
    `  rails ${show.exact(size)} wide: at ${listed(places.map((place) => show.exact(place)))}.`,
  same: () => 'The earlier file has the same load: what was bored by it is remade by this one.',
  changed: ({ before, now }: { readonly before: readonly number[] | null; readonly now: readonly number[] | null }) =>
    `The earlier file has another load: ${before === null ? 'none' : spindles(before)} before, ${now === null ? 'none' : spindles(now)} now. A panel that is remade by this file does not fit one that was bored by the earlier one: keep the earlier file for remakes.`,
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

function loadOf(shop: Shop): SharedLoad | null {
  const heads = headsOf(shop);
  return shop.habits.sharePlaces && heads ? sharedLoad(heads.faces, heads.ends, shop, new Derived()) : null;
}

function told(shop: Shop): readonly Message[] {
  const { sharePlaces, sizes, railWidth, firstDowel, joint } = shop.habits;
  const [heads, shared] = [headsOf(shop), loadOf(shop)];
  if (!sharePlaces) return [say.none()];
  if (heads === null || shared === null) return [say.impossible()];
  const { faces, ends } = heads;
  const line: SpindleLine = { first: firstDowel, pitch: faces.pitch, count: faces.spindles, nearest: 0, shared };
  const within = (to: Micrometres): readonly Micrometres[] =>
    patternPlaces(line, wishIn(shop, { from: 0, to }, fittingNamed(shop, joint), false));
  const depths = [...new Set(Object.values(sizes).map(({ depth }) => depth))].sort((a, b) => a - b);
  return [
    say.load({ faces: faces.name, ends: ends.name, load: shared.load }),
    ...depths.map((size) => say.deep({ size, places: within(usualClearDepth(size, shop)) })),
    say.rail({ size: railWidth, places: within(railWidth) }),
    say.beside({ load: shared.beside }),
  ];
}

function changeSince(earlier: Shop, shop: Shop): Message {
  const [before, now] = [loadOf(earlier), loadOf(shop)];
  const words = (shared: SharedLoad | null): string => JSON.stringify(shared);
  if (words(before) !== words(now)) return say.changed({ before: before?.load ?? null, now: now?.load ?? null });
  const placing = (one: Shop): Placing => ({
    first: one.habits.firstDowel,
    pitch: headsOf(one)?.faces.pitch ?? one.habits.pitch,
  });
  const [was, is] = [placing(earlier), placing(shop)];
  const isMoved = now !== null && (was.first !== is.first || was.pitch !== is.pitch);
  return isMoved ? say.placed({ before: was, now: is }) : say.same();
}
