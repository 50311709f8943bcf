import type { Joint, Panel } from '../../carcass/model.js';
import { within } from '../../carcass/interval.js';
import { extentsOf } from '../../carcass/pose.js';
import { boreAxis } from '../../boring/axis.js';
import { purposeOf } from '../../fittings/purposes.js';
import type { Micrometres } from '../../length/units.js';
import { counted, listed } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { distinct, grouped, panelOf } from '../lookups.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';

interface Hidden {
  readonly count: number;
  /** What is driven in: 'screw'. */
  readonly driven: string;
  readonly shelves: readonly string[];
  readonly dividers: readonly string[];
  readonly pitch: Micrometres;
  /** The one to be held with something else. */
  readonly panel: string;
}

export const say = messages('screws-hidden', {
  hidden: ({ count, driven, shelves, dividers, pitch, panel }: Hidden, show) =>
    `The ${counted(count, driven)} of ${listed(shelves)} go through ${listed(dividers)} from both faces at the same height, so each shelf covers the ${driven}s of the one behind it. Move one of the two by a pitch of ${show.length(pitch)}, or hold it with another fitting (\`joint\` of ${panel}).`,
  otherFace: ({ shelf, divider }: { readonly shelf: string; readonly divider: string }) =>
    `${shelf} stands on the other face of ${divider}.`,
});

export const screwsHidden: CarcassRule = {
  name: 'screws-hidden',
  severity: 'warning',
  about: {
    what: 'Two shelves back to back on a divider are screwed through it, and each hides the screws of the other.',
    why: 'A connector screw is driven from the other face of the divider, in the bay beside. Where a fixed shelf stands there at the same height, whichever is screwed first covers the holes for the second.',
    remedy: 'Move one of the two up or down by a pitch, or hold one with dowels or cams.',
    example: 'kind: wall\nwidth: 900\njoint: screw-7x50\ndividers: 1\nfixed-shelves: 1',
  },
  check(context) {
    const alike = context.carcass.joints.filter(({ fitting, faceFitting }) => fitting.kind === faceFitting.kind);
    const hidden = alike.flatMap((one, index) =>
      alike
        .slice(index + 1)
        .filter((other) => covers(context, other, one) && covers(context, one, other))
        .map((other) => [one, other] as const),
    );
    return grouped(hidden, ([, { place }]) => `${place.part} ${place.start}`).map((same) => found(context, same));
  },
};

/** True where the end panel of one joint stands over a hole that a screw of the other is driven into. */
function covers(context: CarcassContext, { facePanel, face, endPanel }: Joint, other: Joint): boolean {
  if (facePanel !== other.facePanel || face === other.face) return false;
  const [through, over] = [panelOf(context, facePanel), panelOf(context, endPanel)];
  return through !== undefined && over !== undefined && standsOver(context, over, through, other);
}

function standsOver(context: CarcassContext, over: Panel, through: Panel, { id }: Joint): boolean {
  const { x, y, z } = extentsOf(over);
  return context.boring.bores
    .filter((bore) => bore.group === id && bore.panel === through.key && purposeOf(bore).driven !== null)
    .map((bore) => boreAxis(through, bore).entry)
    .some((at) =>
      [[at.x, x] as const, [at.y, y] as const, [at.z, z] as const].every(([p, run]) => within({ from: p, to: p }, run)),
    );
}

type Pair = readonly [one: Joint, other: Joint];

function found(context: CarcassContext, same: readonly Pair[]): Found {
  const [one, other] = same[0]!;
  const groups = new Set(same.flat().map(({ id }) => id));
  const holes = context.boring.bores.filter((bore) => groups.has(bore.group) && purposeOf(bore).driven !== null);
  const shelves = distinct(same.flat().map(({ endPanel }) => endPanel));
  const dividers = distinct(same.map(([{ facePanel }]) => facePanel));
  return {
    place: other.place,
    panel: other.endPanel,
    message: say.hidden({
      count: holes.length,
      driven: purposeOf(holes[0]!).driven!,
      shelves,
      dividers,
      pitch: context.shop.habits.pitch,
      panel: other.endPanel,
    }),
    related:
      one.place.start === other.place.start
        ? []
        : [{ place: one.place, message: say.otherFace({ shelf: one.endPanel, divider: one.facePanel }) }],
    bores: holes.map(({ id }) => id),
  };
}
