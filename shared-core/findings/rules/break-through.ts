import { wallUnder } from '../../boring/walls.js';
import type { BoresTold } from '../../fittings/fitting.js';
import { isRow, theBores } from '../../fittings/purposes.js';
import type { Micrometres } from '../../length/units.js';
import { listed, verb } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { boresTold, depthOf } from '../bores.js';
import { ownText, remove } from '../changes.js';
import { grouped, onFace, panelOf } from '../lookups.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';

interface Thin extends BoresTold {
  readonly depth: Micrometres;
  /** What the panel measures in the direction of the bores. */
  readonly size: Micrometres;
  readonly into: 'face' | 'end';
  readonly under: Micrometres;
  readonly least: Micrometres;
}
interface ThinUnderGroove {
  readonly depth: Micrometres;
  readonly panels: readonly string[];
  readonly thickness: Micrometres;
  readonly least: Micrometres;
}

const shallower = (bores: BoresTold): string =>
  isRow(bores) ? 'Choose a smaller `row-depth` in the shop file' : 'Bore less deep';

export const say = messages('break-through', {
  through: ({ depth, size, into, ...bores }: Thin, show) =>
    `${theBores(bores)}, ${show.length(depth)} deep in a panel ${show.length(size)} ${into === 'face' ? 'thick' : 'long'}, ${verb(bores.count, 'comes', 'come')} out on the other side. ${shallower(bores)}, or use a thicker board.`,
  thin: ({ depth, size, into, under, least, ...bores }: Thin, show) =>
    `${theBores(bores)}, ${show.length(depth)} deep in a panel ${show.length(size)} ${into === 'face' ? 'thick' : 'long'}, ${verb(bores.count, 'leaves', 'leave')} ${show.length(under)} of wood; the minimum is ${show.length(least)} (\`least-wall\`). ${shallower(bores)}, or use a thicker board.`,
  groove: ({ depth, panels, thickness, least }: ThinUnderGroove, show) =>
    `The groove of the back, ${show.length(depth)} deep, leaves ${show.length(thickness - depth)} of wood in ${listed(panels)}, ${show.length(thickness)} thick; the minimum is ${show.length(least)} (\`least-wall\`). Make the groove shallower.`,
  leaveDepth: ({ panel }: { readonly panel: string }) => `Leave the depth in ${panel} to the fitting`,
  leaveGroove: () => 'Leave the depth of the groove to the shop',
});

export const breakThrough: CarcassRule = {
  name: 'break-through',
  severity: 'error',
  about: {
    what: 'A bore or a groove that should stop in the panel leaves too little under it, or a bore comes out on the other side.',
    why: 'The point of the bit, or a board thinner than its name says, then makes the outside face bulge or break open. The shop’s `least-wall` is what must remain (3 mm unless the shop says otherwise; common practice, no source). A bit that comes out of the far face can hurt the hand that holds the panel.',
    remedy: 'Bore less deep in this panel and deeper in its mate, take a shorter fitting, or a thicker board.',
    example: 'kind: base\nwidth: 600\npanels:\n  left: { face-depth: 15 }',
  },
  check(context) {
    const least = context.shop.habits.leastWall;
    const thin = context.boring.bores.flatMap((bore) => {
      const panel = panelOf(context, bore.panel);
      const under = panel === undefined ? null : wallUnder(panel, bore);
      return panel === undefined || under === null || under >= least ? [] : [{ bore, panel, under }];
    });
    const cause = ({ bore, under }: (typeof thin)[number]): string => {
      const place = depthOf(context, bore)?.place ?? bore.place;
      return `${place.part} ${place.start} ${bore.purpose} ${bore.depth} ${under}`;
    };
    const bores = grouped(thin, cause).map((same): Found => {
      const { bore, panel, under } = same[0]!;
      const own = depthOf(context, bore);
      return {
        place: own?.place ?? bore.place,
        panel: panel.key,
        severity: under <= 0 ? 'error' : 'warning',
        message: (under <= 0 ? say.through : say.thin)({
          ...boresTold(same.map((one) => one.bore)),
          depth: bore.depth,
          size: onFace(bore) ? panel.thickness : panel.length,
          into: onFace(bore) ? 'face' : 'end',
          under,
          least,
        }),
        bores: same.map((one) => one.bore.id),
        repairs:
          own !== undefined && ownText(own)
            ? [
                {
                  title: say.leaveDepth({ panel: panel.key }),
                  changes: [remove(own.path)],
                  preferred: true,
                },
              ]
            : [],
      };
    });
    return [...bores, ...thinUnderGrooves(context)];
  },
};

/** Panels that the groove or rebate of the back leaves too thin; one that goes through them is left out when the box is built. */
function thinUnderGrooves(context: CarcassContext): readonly Found[] {
  const { carcass, shop, spec } = context;
  const least = shop.habits.leastWall;
  const thin = carcass.panels.filter(({ grooves, thickness }) =>
    grooves.some(({ depth }) => thickness - depth < least),
  );
  return grouped(thin, ({ thickness }) => `${thickness}`).map((same): Found => {
    const { thickness } = same[0]!;
    const { groove } = spec.back;
    return {
      place: groove.place,
      panel: same[0]!.key,
      severity: 'warning',
      message: say.groove({ depth: groove.value, panels: same.map(({ key }) => key), thickness, least }),
      repairs: ownText(groove) ? [{ title: say.leaveGroove(), changes: [remove(groove.path)], preferred: true }] : [],
    };
  });
}
