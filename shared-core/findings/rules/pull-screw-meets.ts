import type { Panel } from '../../carcass/model.js';
import { footprintOf, inBand } from '../../carcass/footprint.js';
import { extentsOf, straightExtents, toCarcass } from '../../carcass/pose.js';
import { turned, turnedBack } from '../../carcass/turn.js';
import type { FrontPull, OnFace } from '../../hung/model.js';
import type { Micrometres } from '../../length/units.js';
import { listed, quoted } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { boresOfGroups, distinct } from '../lookups.js';
import { movedPull } from '../pull-places.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';

interface Meets {
  readonly pull: string;
  readonly front: string;
  readonly others: readonly string[];
  readonly high: Micrometres;
  readonly room: Micrometres;
}

export const say = messages('pull-screw-meets', {
  meets: ({ pull, front, others, high, room }: Meets, show) =>
    `The head of a screw of ${quoted(pull)} in ${front} comes to lie before ${listed(others)}, where there is ${room === 0 ? 'no room' : `room of ${show.length(room)}`} for its ${show.exact(high)}. Put the pull elsewhere, or take a pull with screws from outside.`,
});

export const pullScrewMeets: CarcassRule = {
  name: 'pull-screw-meets',
  severity: 'error',
  about: {
    what: 'The head of a screw of a pull comes to lie before a panel behind the front.',
    why: 'A pull’s screws are put in from inside. Where the edge of a side, a shelf or a rail stands behind one, the door does not close; where the edge of a drawer’s box crosses it, the screw goes neither beside the box nor through it. It is seen when the front is hung, and the front is then bored already.',
    remedy:
      'Put the pull where nothing stands behind its screws: further from the edge, or higher or lower on a drawer.',
    example: 'kind: tall\nwidth: 600\nfixed-shelves: [1032]\ndoors: left\npulls: { pull: knob, end: middle }',
  },
  check(context) {
    return context.boring.pulls.flatMap((one): readonly Found[] => {
      const { front, pull, place, isOn } = one;
      if (!isOn || pull.depth !== null) return [];
      const met = one.holes.flatMap((hole) => behind(context, one, hole));
      if (met.length === 0) return [];
      const message = say.meets({
        pull: pull.name,
        front: front.key,
        others: distinct(met.map(({ panel }) => panel.key)),
        high: pull.headHeight,
        room: Math.min(...met.map(({ room }) => room)),
      });
      const bores = boresOfGroups(context, new Set([one.id]));
      return [{ place, panel: front.key, message, bores, repairs: movedPull(context, one) }];
    });
  },
};

interface Behind {
  readonly panel: Panel;
  /** Between what the head lies on and the panel. */
  readonly room: Micrometres;
}

/**
 * The panels that the head of a screw has no room before; it lies behind the front, or behind that of the box where it is bored. All
 * is seen as it would stand were the front not turned.
 */
function behind({ carcass }: CarcassContext, { front, pull, boxHoles }: FrontPull, hole: OnFace): readonly Behind[] {
  const { x, z } = toCarcass(front.pose, { ...hole, t: 0 });
  const isAt = (panel: Panel, { u, v }: OnFace): boolean => {
    const at = toCarcass(panel.pose, { u, v, t: 0 });
    return at.x === x && at.z === z;
  };
  const through = boxHoles?.holes.some((at) => isAt(boxHoles.boxFront, at)) === true ? boxHoles.boxFront : front;
  const from = straightExtents(through).y.to;
  const { turn } = front;
  const deep = { from, to: from + pull.headHeight };
  return carcass.panels.flatMap((panel): readonly Behind[] => {
    if (panel === front || panel === through) return [];
    const run = extentsOf(panel).z;
    const plan = footprintOf(panel);
    const near = inBand(turn === undefined ? plan : plan.map((spot) => turned(turnedBack(turn), spot)), deep);
    const xs = near.map((spot) => spot.x);
    const [dx, dz] = [Math.max(Math.min(...xs) - x, x - Math.max(...xs), 0), Math.max(run.from - z, z - run.to, 0)];
    const isBeside = 4 * (dx * dx + dz * dz) >= pull.head * pull.head;
    if (near.length === 0 || isBeside) return [];
    return [{ panel, room: Math.round(Math.min(...near.map((spot) => spot.y)) - from) }];
  });
}
