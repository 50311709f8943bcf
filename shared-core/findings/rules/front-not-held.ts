import { standsStill } from '../../carcass/fronts/still.js';
import { headTooWideFor } from '../../boring/angles.js';
import { angleNamed } from '../../hung/angles.js';
import { NO_ANGLE } from '../../shop/habits.js';
import { listed, quoted, verb } from '../../words/english.js';
import type { Micrometres } from '../../length/units.js';
import { messages } from '../../words/message.js';
import { ownText, replaceName, setWord } from '../changes.js';
import { grouped } from '../lookups.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';

interface ByHand {
  readonly fronts: readonly string[];
  readonly angle: string;
  readonly width: Micrometres;
  readonly machine: string;
  readonly least: Micrometres;
}

export const say = messages('front-not-held', {
  loose: ({ fronts, angle }: { readonly fronts: readonly string[]; readonly angle: string }) =>
    `No ${quoted(angle)} finds a place behind ${listed(fronts)}, so nothing holds ${verb(fronts.length, 'it', 'them')}. Make ${verb(fronts.length, 'it', 'them')} larger, clear the corner behind, or use another angle.`,
  slants: ({ fronts, angle }: { readonly fronts: readonly string[]; readonly angle: string }) =>
    `${listed(fronts)} ${verb(fronts.length, 'slants', 'slant')} across the corner, and ${quoted(angle)} is made for a square one, so nothing holds ${verb(fronts.length, 'it', 'them')}. Write \`angles: none\`, and screw ${verb(fronts.length, 'it', 'them')} on from inside, to bottom and top.`,
  byHand: ({ fronts, angle, width, machine, least }: ByHand, show) =>
    `Bores for ${quoted(angle)} are made in what stands behind ${listed(fronts)}, but not in ${verb(fronts.length, 'it', 'them')}: ${show.length(width)} wide, and ${quoted(machine)} takes ${show.length(least)} and more (\`panel\`). Drive the screws by hand through the angles, once ${verb(fronts.length, 'it is', 'they are')} fitted to the wall.`,
  none: () => 'Write `angles: none` and fix them in another way',
});

export const frontNotHeld: CarcassRule = {
  name: 'front-not-held',
  severity: 'warning',
  about: {
    what: 'Behind a fixed front, a blind panel or a filler no angle finds a place, none fits as the front stands across a corner, or its screws in a narrow filler are not bored.',
    why: 'Such a front hangs on no hinge and on no slide: it is screwed on from inside, in the corner behind it. Where that is too narrow, or a shelf or a slide stands in it, this is noticed on site, where a front is then glued on, or screwed on from outside. An angle that reaches further than a filler is wide would stand in the wall.',
    remedy: 'Make the front larger, move what stands behind it, or use a smaller angle.',
    example: 'kind: base\nwidth: 600\ndoors: left\nfillers: { right: 18 }',
  },
  check: (context) => [...loose(context), ...byHand(context)],
};

function loose({ spec, carcass, boring, shop }: CarcassContext): readonly Found[] {
  const angle = angleNamed(shop, spec.angles.value);
  const free = carcass.panels.filter(
    (panel) => standsStill(panel) && boring.angles.every(({ front }) => front !== panel),
  );
  const [first] = free;
  if (angle === null || first === undefined) return [];
  const change = ownText(spec.angles) ? replaceName(spec.angles, NO_ANGLE) : setWord(['angles'], NO_ANGLE);
  const told = { fronts: free.map(({ key }) => key), angle: angle.name };
  return [
    {
      place: first.place,
      panel: first.key,
      // A carcass across a corner has no other front than those that slant.
      message: first.turn === undefined ? say.loose(told) : say.slants(told),
      repairs: change === null ? [] : [{ title: say.none(), changes: [change], preferred: false }],
    },
  ];
}

/** Fillers that angles hold, though the head bores none of such a width. */
function byHand({ carcass, boring, shop }: CarcassContext): readonly Found[] {
  const held = carcass.panels.flatMap((panel) => {
    const angle = boring.angles.find(({ front }) => front === panel)?.angle.name;
    const head = headTooWideFor(panel, shop);
    return angle === undefined || head === null ? [] : [{ panel, angle, ...head }];
  });
  return grouped(held, ({ panel }) => `${panel.place.start} ${panel.width}`).map((same): Found => {
    const { panel, angle, machine, least } = same[0]!;
    const fronts = same.map((one) => one.panel.key);
    return {
      place: panel.place,
      panel: panel.key,
      severity: 'info',
      message: say.byHand({ fronts, angle, width: panel.width, machine, least }),
    };
  });
}
