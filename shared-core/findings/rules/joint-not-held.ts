import { boreAxis } from '../../boring/axis.js';
import type { Mating } from '../../boring/matings.js';
import { shared } from '../../carcass/interval.js';
import { extentsOf } from '../../carcass/pose.js';
import type { Micrometres } from '../../length/units.js';
import { jointsTold, type JointPanels } from '../../words/names.js';
import { verb } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { grouped, panelOf } from '../lookups.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';

interface NotHeld {
  readonly joints: readonly JointPanels[];
  readonly open: Micrometres;
  readonly from: Micrometres;
  readonly limit: Micrometres;
  /** Whether the carcass lists its places, which then rule all its joints. */
  readonly isListed: boolean;
}

export const say = messages('joint-not-held', {
  none: ({ joints, open, isListed }: NotHeld, show) =>
    `${jointsTold(joints)}, ${show.length(open)} deep, ${verb(joints.length, 'has', 'have')} no bore. Add places ${withKey(isListed)}, or make the panel wider.`,
  one: ({ joints, open, from, isListed }: NotHeld, show) =>
    `${jointsTold(joints)}, ${show.length(open)} deep, ${verb(joints.length, 'has', 'have')} one bore only, at ${show.length(from)}, and the panel can turn about it. Give two places ${withKey(isListed)}, or make the panel wider.`,
  gap: ({ joints, open, from, limit, isListed }: NotHeld, show) =>
    `${jointsTold(joints)} ${verb(joints.length, 'has', 'have')} no bore for ${show.length(open)} behind the one at ${show.length(from)} (limit ${show.length(limit)}, \`dowel-spacing\`). Add places ${withKey(isListed)}, or choose a head with more spindles.`,
});

/** Places of the carcass would rule its narrow panels too, so those of one panel are named unless there are such. */
function withKey(isListed: boolean): string {
  return isListed ? 'with `dowels`' : 'with `end-dowels` of the panel (under `panels`)';
}

export const jointNotHeld: CarcassRule = {
  name: 'joint-not-held',
  severity: 'warning',
  about: {
    what: 'A joint has no bore at all, one only, or none over a long stretch of its depth.',
    why: 'Bores of a joint stand under the spindles of the vertical head: one diameter of wood beside each, neighbours no farther apart than the shop’s `dowel-spacing`. A panel that is too narrow gets none, or a single one that it can turn about. Behind the last spindle of a short line nothing holds the joint, which opens there in the clamp.',
    remedy:
      'Give the places (`end-dowels` of a panel, `dowels` of the carcass), take another fitting or a head with more spindles, or make the panel wider.',
    example: 'kind: base\nwidth: 600\ndowels: [53, 85]',
  },
  check(context) {
    const loose = context.matings.flatMap((mating) => {
      const fault = unheld(context, mating);
      return fault === null ? [] : [{ mating, ...fault }];
    });
    return grouped(loose, ({ mating, fault, open }) => {
      const { place } = mating.joint;
      return `${place.part} ${place.start} ${fault} ${open}`;
    }).map((same): Found => {
      const { mating, fault, open, from } = same[0]!;
      return {
        place: mating.joint.place,
        panel: mating.joint.endPanel,
        severity: fault === 'none' ? 'error' : 'warning',
        message: say[fault]({
          joints: same.map(({ mating: { joint } }) => [joint.endPanel, joint.facePanel]),
          open,
          from,
          limit: context.shop.habits.dowelSpacing,
          isListed: context.spec.dowels !== null,
        }),
        bores: same.flatMap((one) => one.mating.mates.flatMap(({ face, end }) => [face.id, end.id])),
      };
    });
  },
};

interface Unheld {
  readonly fault: 'none' | 'one' | 'gap';
  readonly open: Micrometres;
  readonly from: Micrometres;
}

/**
 * No bore, one bore only, or the widest stretch of the joint's depth behind its first bore with nothing in it, where it is
 * wider than the shop allows between neighbours; null where the joint is held, or where its bores have no mates (another
 * rule says so).
 */
function unheld(context: CarcassContext, { joint, mates, unmatchedInFace, unmatchedInEnd }: Mating): Unheld | null {
  const [face, end] = [panelOf(context, joint.facePanel), panelOf(context, joint.endPanel)];
  const overlap = face && end && shared(extentsOf(face).y, extentsOf(end).y);
  if (!overlap || unmatchedInFace.length + unmatchedInEnd.length > 0) return null;
  const depth = overlap.to - overlap.from;
  const places = mates.map((mate) => boreAxis(end, mate.end).entry.y).toSorted((a, b) => a - b);
  if (places.length === 0) return { fault: 'none', open: depth, from: overlap.from };
  if (places.length === 1) return { fault: 'one', open: depth, from: places[0]! };
  const gaps = [...places, overlap.to]
    .slice(1)
    .map((place, index) => ({ from: places[index]!, open: place - places[index]! }));
  const widest = gaps.reduce((a, b) => (b.open > a.open ? b : a));
  // The last bore may stand one spacing from the rear, as from a neighbour.
  return widest.open > context.shop.habits.dowelSpacing ? { fault: 'gap', ...widest } : null;
}
