import type { Micrometres } from '../../length/units.js';
import { listed, quoted } from '../../words/english.js';
import { messages } from '../../words/message.js';

/** What is moved, spread or stretched: 'dividers', 'fixed shelves', 'loose shelves'. */
export type Spread = 'dividers' | 'fixed-shelves' | 'loose-shelves';

const THINGS: Readonly<Record<Spread, string>> = {
  dividers: 'dividers',
  'fixed-shelves': 'fixed shelves',
  'loose-shelves': 'loose shelves',
};

export const say = messages('moves', {
  variant: ({ name, hand }: { readonly name: string; readonly hand: 'same' | 'other' }) =>
    hand === 'same'
      ? `Write it as a variant of ${quoted(name)} (\`like\`)`
      : `Write it as a mirrored variant of ${quoted(name)} (\`like\`, \`mirrored\`)`,
  writtenOut: ({ name }: { readonly name: string }) => `Write it out in full, without ${quoted(name)}`,
  mirrored: () => 'Change left and right over',
  evenly: ({ key, at }: { readonly key: Spread; readonly at: readonly Micrometres[] }, show) =>
    `Give the ${THINGS[key]} equal openings: ${listed(at.map(show.exact))}`,
  pitches: ({ size, pitches }: { readonly size: Micrometres; readonly pitches: number }, show) =>
    `Stretch to ${show.exact(size)}, a pitch ${pitches > 0 ? 'more' : 'less'}, with what is inside`,
  asOther: ({ size, name }: { readonly size: Micrometres; readonly name: string }, show) =>
    `Stretch to ${show.exact(size)}, as ${quoted(name)}, with what is inside`,
});
