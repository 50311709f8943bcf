import { ownHeight } from '../../carcass/fronts/heights.js';
import { stacksAsked, staysOpen, type AskedFront } from '../../carcass/fronts/asked.js';
import { stackHeight } from '../../carcass/fronts/places.js';
import { extent } from '../../carcass/interval.js';
import { extentsOf } from '../../carcass/pose.js';
import type { Micrometres } from '../../length/units.js';
import { messages } from '../../words/message.js';
import { ownText, remove, setLength } from '../changes.js';
import { panelOf } from '../lookups.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';

export const say = messages('fronts-leave-open', {
  open: ({ bay, open }: { readonly bay: number | null; readonly open: Micrometres }, show) =>
    `The fronts${bay === null ? '' : ` before bay ${bay}`} leave ${show.length(open)} open at the bottom, because each has a height of its own. Leave out the height of one, or make one higher by as much.`,
  share: () => 'Let the lowest front take what is left',
  higher: ({ to }: { readonly to: Micrometres }, show) => `Make the lowest front ${show.exact(to)} high`,
});

export const frontsLeaveOpen: CarcassRule = {
  name: 'fronts-leave-open',
  severity: 'warning',
  about: {
    what: 'The heights of fronts and the gaps between them do not come to the height that is to be closed.',
    why: 'The remainder stays open under the lowest front, where dust gets in and nobody asked for a gap. A few millimetres too little are easily lost in adding up.',
    remedy: 'Leave out the height of one front, which then takes what is left.',
    example: 'kind: base\nwidth: 600\nfronts: [{ front: drawer, height: 140 }, { front: pair, height: 571 }]',
  },
  check(context) {
    const { spec } = context;
    if (spec.fronts === null) return [];
    return stacksAsked(spec).flatMap(({ bay, fronts }): readonly Found[] => {
      const lowest = fronts.at(-1);
      const own = fronts.map((one) => ownHeight(spec, context.shop, one));
      const height = lowest?.height ?? lowest?.pitches ?? null;
      if (height === null || own.includes(null)) return [];
      const given = own.reduce<Micrometres>((sum, one) => sum + one!, 0);
      const open = heightToClose(context, fronts) - given - (fronts.length - 1) * spec.doors.gap.value;
      // A place that is said to stay open may as well stand at the bottom.
      if (open <= 0 || staysOpen(lowest!.kind)) return [];
      const share = { title: say.share(), changes: [remove(height.path)], preferred: true };
      const to = own.at(-1)! + open;
      const repairs = !ownText(height)
        ? []
        : lowest!.height === null
          ? [share]
          : [share, { title: say.higher({ to }), changes: [setLength(context, height.path, to)], preferred: false }];
      const number = spec.dividers.length === 0 || bay === null ? null : bay + 1;
      return [{ place: height.place, message: say.open({ bay: number, open }), repairs }];
    });
  },
};

/** What fronts of one stack have to close, gaps between them included. */
export function heightToClose(context: CarcassContext, fronts: readonly AskedFront[]): Micrometres {
  const { spec, carcass } = context;
  const over = carcass.panels.filter(({ role }) => role === 'top' || role === 'rail');
  const clear = {
    from: extentsOf(panelOf(context, 'bottom')!).z.to,
    // Rails that there is no room for are told of elsewhere; the fronts go up to where they would be flush.
    to: Math.min(spec.height.value, ...over.map((panel) => extentsOf(panel).z.from)),
  };
  const above = (panelOf(context, 'top') ?? panelOf(context, 'rail-front'))?.thickness ?? 0;
  return extent(stackHeight(spec, clear, above, fronts));
}
