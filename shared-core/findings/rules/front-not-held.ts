import { standsStill } from '../../carcass/fronts/still.js';
import { angleNamed } from '../../hung/angles.js';
import { NO_ANGLE } from '../../shop/habits.js';
import { listed, quoted, verb } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { ownText, replaceName, setWord } from '../changes.js';
import type { CarcassRule } from '../rule.js';

export const say = messages('front-not-held', {
  loose: ({ fronts, angle }: { readonly fronts: readonly string[]; readonly angle: string }) =>
    `No ${quoted(angle)} finds a place behind ${listed(fronts)}, so nothing holds ${verb(fronts.length, 'it', 'them')}. Make ${verb(fronts.length, 'it', 'them')} larger, clear the corner behind, or use another angle.`,
  slants: ({ fronts, angle }: { readonly fronts: readonly string[]; readonly angle: string }) =>
    `${listed(fronts)} ${verb(fronts.length, 'slants', 'slant')} across the corner, and ${quoted(angle)} is made for a square one, so nothing holds ${verb(fronts.length, 'it', 'them')}. Write \`angles: none\`, and screw ${verb(fronts.length, 'it', 'them')} on from inside, to bottom and top.`,
  none: () => 'Write `angles: none` and fix them in another way',
});

export const frontNotHeld: CarcassRule = {
  name: 'front-not-held',
  severity: 'warning',
  about: {
    what: 'Behind a fixed front, a blind panel or a filler no angle finds a place, or none fits as the front stands across a corner.',
    why: 'Such a front hangs on no hinge and on no slide: it is screwed on from inside, in the corner behind it. Where that is too narrow, or a shelf or a slide stands in it, this is noticed on site, where a front is then glued on, or screwed on from outside.',
    remedy: 'Make the front larger, move what stands behind it, or use a smaller angle.',
    example: 'kind: base\nwidth: 600\ndoors: left\nfillers: { right: 18 }',
  },
  check({ spec, carcass, boring, shop }) {
    const angle = angleNamed(shop, spec.angles.value);
    const loose = carcass.panels.filter(
      (panel) => standsStill(panel) && boring.angles.every(({ front }) => front !== panel),
    );
    const [first] = loose;
    if (angle === null || first === undefined) return [];
    const change = ownText(spec.angles) ? replaceName(spec.angles, NO_ANGLE) : setWord(['angles'], NO_ANGLE);
    const told = { fronts: loose.map(({ key }) => key), angle: angle.name };
    return [
      {
        place: first.place,
        panel: first.key,
        // A carcass across a corner has no other front than those that slant.
        message: first.turn === undefined ? say.loose(told) : say.slants(told),
        repairs: change === null ? [] : [{ title: say.none(), changes: [change], preferred: false }],
      },
    ];
  },
};
