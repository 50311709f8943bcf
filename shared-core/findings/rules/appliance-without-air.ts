import { overlaps } from '../../carcass/interval.js';
import { extentsOf } from '../../carcass/pose.js';
import type { Micrometres } from '../../length/units.js';
import { writeLength } from '../../length/write.js';
import { messages } from '../../words/message.js';
import { ownText, setLength, setWord } from '../changes.js';
import type { Change } from '../finding.js';
import { panelOf } from '../lookups.js';
import type { CarcassContext, CarcassRule } from '../rule.js';

interface Heights {
  readonly from: Micrometres;
  readonly to: Micrometres;
}

export const say = messages('appliance-without-air', {
  closed: ({ from, to }: Heights, show) =>
    `The back is closed behind the appliance, and its heat and its pipes have no way out. Leave the back open from ${show.length(from)} to ${show.length(to)}, or as the maker’s instructions of the appliance say.`,
  open: ({ from, to }: Heights, show) => `Leave the back open from ${show.exact(from)} to ${show.exact(to)}`,
});

export const applianceWithoutAir: CarcassRule = {
  name: 'appliance-without-air',
  severity: 'warning',
  about: {
    what: 'The back is closed behind an appliance.',
    why: 'An oven or a cooler gives off heat at its back, and cables and pipes go through there. Behind a closed back it runs hot: it fails early, boards swell, and at worst it is a danger of fire. How much must stay open is in the maker’s instructions, which decide.',
    remedy:
      'Leave the back open behind the appliance (`back: { open-from, open-to }`), and see to a way for the air below and above as its instructions say.',
    example: 'kind: tall\nwidth: 600\nfronts: [left, { front: appliance, height: 595 }, drawer]',
  },
  check(context) {
    const { carcass } = context;
    const backs = carcass.panels.filter(({ role }) => role === 'back').map(extentsOf);
    const base = extentsOf(panelOf(context, 'left')!).z.from;
    const [closed] = carcass.appliances.filter(({ z }) => {
      const covered = backs.filter((back) => overlaps(back.z, z));
      const left = covered.reduce((sum, { z: own }) => sum + Math.min(own.to, z.to) - Math.max(own.from, z.from), 0);
      // Half of it open is a way for the air (common practice, no source).
      return 2 * left > z.to - z.from;
    });
    if (closed === undefined) return [];
    const open = { from: Math.max(0, closed.z.from - base), to: closed.z.to - base };
    const repairs = [{ title: say.open(open), changes: leftOpen(context, open), preferred: true }];
    return [{ place: closed.place, message: say.closed(open), repairs }];
  },
};

/** The back left open between two heights, however it is written. */
function leftOpen(context: CarcassContext, { from, to }: Heights): readonly Change[] {
  const { back } = context.spec;
  const heights = [from, to].map((height) => writeLength(height, context.unit, context.inches));
  const isWord = ownText(back.how) && back.how.path.length === 1;
  const hasMap = Object.values(back).some((value) => value !== null && ownText(value) && value.path.length > 1);
  if (hasMap) return [setLength(context, ['back', 'open-from'], from), setLength(context, ['back', 'open-to'], to)];
  const how = isWord ? `how: ${back.how.value}, ` : '';
  return [setWord(['back'], `{ ${how}open-from: ${heights[0]!}, open-to: ${heights[1]!} }`)];
}
