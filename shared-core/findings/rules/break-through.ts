import { wallsAround } from '../../boring/walls.js';
import { boresNamed, depthOf } from '../bores.js';
import { ownText, remove } from '../changes.js';
import { distinct, grouped, onFace, panelOf } from '../lookups.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';
import { listed, show, verb } from '../words.js';

export const breakThrough: CarcassRule = {
  name: 'break-through',
  severity: 'error',
  about: {
    what: 'A bore or a groove that should stop in the panel leaves too little under it, or a bore comes out on the other side.',
    why: 'The bit’s point and a board thinner than its name do the rest: the outside face bulges or opens. The shop’s `least-wall` is what must stay (3 mm unless the shop says otherwise; common practice, no source). A bit that comes out of the far face can hurt the hand that holds the panel.',
    remedy: 'Bore less deep in this panel and deeper in its mate, take a shorter fitting, or a thicker board.',
    example: 'kind: base\nwidth: 600\npanels:\n  left: { face-depth: 15 }',
  },
  check(context) {
    const least = context.shop.habits.leastWall;
    const thin = context.boring.bores.flatMap((bore) => {
      const panel = panelOf(context, bore.panel);
      const under = panel === undefined ? null : wallsAround(panel, bore).under;
      return panel === undefined || under === null || under >= least ? [] : [{ bore, panel, under }];
    });
    const cause = ({ bore, under }: (typeof thin)[number]): string => {
      const place = depthOf(context, bore)?.place ?? bore.place;
      return `${place.part} ${place.start} ${bore.purpose} ${bore.depth} ${under}`;
    };
    const bores = grouped(thin, cause).map((same): Found => {
      const { bore, panel, under } = same[0]!;
      const panels = distinct(same.map((one) => one.panel.key));
      const own = depthOf(context, bore);
      const size = onFace(bore) ? `${show(context, panel.thickness)} thick` : `${show(context, panel.length)} long`;
      return {
        place: own?.place ?? bore.place,
        panel: panel.key,
        severity: under <= 0 ? 'error' : 'warning',
        message:
          `${boresNamed(same.map((one) => one.bore))} in ${listed(panels)} ${verb(same.length, 'is', 'are')} ${show(context, bore.depth)} deep and the panel is ${size}: ` +
          (under <= 0
            ? 'the bit comes out on the other side. '
            : `${show(context, under)} of wood stays under the bore, less than ${show(context, least)}. `) +
          (bore.purpose === 'row'
            ? 'Give the shop a smaller `row-depth`, or take a thicker board.'
            : 'Bore less deep, or take a thicker board.'),
        bores: same.map((one) => one.bore.id),
        repairs:
          own !== undefined && ownText(own)
            ? [
                {
                  title: `Leave the depth in ${panel.key} to the fitting`,
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
      message:
        `The groove for the back is ${show(context, groove.value)} deep in ${listed(same.map(({ key }) => key))}, ${show(context, thickness)} thick: ` +
        `${show(context, thickness - groove.value)} of wood stays under it, less than ${show(context, least)}. Make it shallower.`,
      repairs: ownText(groove)
        ? [{ title: 'Leave the depth of the groove to the shop', changes: [remove(groove.path)], preferred: true }]
        : [],
    };
  });
}
