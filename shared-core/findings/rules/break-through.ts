import type { Bore } from '../../boring/model.js';
import type { Panel } from '../../carcass/model.js';
import type { Micrometres } from '../../length/units.js';
import { ownText, remove } from '../changes.js';
import { grouped, onFace, panelOf } from '../lookups.js';
import { boresNamed, depthOf } from '../bores.js';
import type { CarcassRule, Found } from '../rule.js';
import { show } from '../words.js';

export const breakThrough: CarcassRule = {
  name: 'break-through',
  severity: 'error',
  about: {
    what: 'A bore that should stop in the panel leaves too little under it, or comes out on the other side.',
    why: 'The bit’s point and a board thinner than its name do the rest: the outside face bulges or opens. The shop’s `least-wall` is what must stay (3 mm unless the shop says otherwise; common practice, no source). A bit that comes out of the far face can hurt the hand that holds the panel.',
    remedy: 'Bore less deep in this panel and deeper in its mate, take a shorter fitting, or a thicker board.',
    example: 'kind: base\nwidth: 600\npanels:\n  left: { face-depth: 15 }',
  },
  check(context) {
    const least = context.shop.habits.leastWall;
    const thin = context.boring.bores.filter((bore) => !bore.through && left(context.carcass.panels, bore) < least);
    return grouped(thin, (bore) => `${bore.panel} ${bore.group} ${bore.purpose} ${bore.depth}`).map((bores): Found => {
      const bore = bores[0]!;
      const panel = panelOf(context, bore.panel)!;
      const rest = left(context.carcass.panels, bore);
      const own = depthOf(context, bore);
      const size = onFace(bore) ? `${show(context, panel.thickness)} thick` : `${show(context, panel.length)} long`;
      return {
        place: own?.place ?? bore.place,
        panel: panel.key,
        severity: rest <= 0 ? 'error' : 'warning',
        message:
          `${boresNamed(bores)} in ${panel.key} ${bores.length === 1 ? 'is' : 'are'} ${show(context, bore.depth)} deep and the panel is ${size}: ` +
          (rest <= 0
            ? 'the bit comes out on the other side. '
            : `${show(context, rest)} are left under the bore, less than ${show(context, least)}. `) +
          'Bore less deep, or take a thicker board.',
        bores: bores.map((one) => one.id),
        repairs:
          own !== undefined && ownText(own)
            ? [{ title: `Leave the depth in ${panel.key} to the fitting`, changes: [remove(own.path)], preferred: true }]
            : [],
      };
    });
  },
};

/** Material between the bottom of a bore and what lies behind it. */
function left(panels: readonly Panel[], bore: Bore): Micrometres {
  const panel = panels.find((one) => one.key === bore.panel);
  if (panel === undefined) return Infinity;
  return (onFace(bore) ? panel.thickness : panel.length) - bore.depth;
}
