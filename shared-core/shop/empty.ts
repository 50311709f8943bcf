import type { Finding, Repair } from '../document/finding.js';
import type { Place } from '../document/place.js';
import { filledIn } from '../schema/skeleton.js';
import { messages, type Message } from '../words/message.js';
import { NEUTRAL_SHOP_TEXT } from './neutral-text.js';
import { newShop } from './skeletons.js';

export const say = messages('shop-empty', {
  nothing: () =>
    'Nothing is written here yet, so a job gets everything from the built-in shop. Describe your boards, bands, fittings and machines. A quick fix writes a shop to begin with.',
  beginMm: () => 'Begin with a small shop in millimetres',
  beginIn: () => 'Begin with a small shop in inches',
  beginNeutral: () => 'Begin with the built-in shop, written out',
});

/** Greets a shop file in which nothing is written but remarks. */
export function emptyShop(text: string, place: Place): Finding {
  const eol = text.includes('\r\n') ? '\r\n' : '\n';
  const gap = /(?:^\uFEFF?|\n)$/.test(text) ? '' : eol;
  const begin = (title: Message, lines: string): Repair => {
    const at = { part: 'shop', start: text.length, end: text.length } as const;
    return { title, changes: [], rewrites: [{ ...at, text: gap + lines.replaceAll('\n', eol) }], preferred: false };
  };
  const repairs = [
    begin(say.beginMm(), filledIn(newShop('mm').text)),
    begin(say.beginIn(), filledIn(newShop('in').text)),
    begin(say.beginNeutral(), NEUTRAL_SHOP_TEXT),
  ];
  return { rule: 'nothing-yet', severity: 'info', message: say.nothing(), place, related: [], repairs };
}
