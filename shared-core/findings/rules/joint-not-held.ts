import { boreAxis } from '../../boring/axis.js';
import { matings, type Mating } from '../../boring/matings.js';
import { shared } from '../../carcass/interval.js';
import { extentsOf } from '../../carcass/pose.js';
import type { Micrometres } from '../../length/units.js';
import { distinct, grouped, panelOf } from '../lookups.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';
import { listed, show } from '../words.js';

export const jointNotHeld: CarcassRule = {
  name: 'joint-not-held',
  severity: 'warning',
  about: {
    what: 'A joint has no bore at all, or none over a long stretch of its depth.',
    why: 'Bores of a joint stand under the spindles of the vertical head: one diameter of wood beside each, neighbours no farther apart than the shop’s `dowel-spacing`. A panel that is too narrow gets none, and behind the last spindle of a short line nothing holds the joint, which opens there in the clamp.',
    remedy: 'Give the places (`dowels`), take another fitting or a head with more spindles, or make the panel wider.',
    example: 'kind: base\nwidth: 600\ndowels: [53, 85]',
  },
  check(context) {
    const loose = matings(context.carcass, context.boring).flatMap((mating) => {
      const gap = widestGap(context, mating);
      return gap === null ? [] : [{ mating, ...gap }];
    });
    return grouped(loose, ({ mating, none, open }) => {
      const { place } = mating.joint;
      return `${place.part} ${place.start} ${none ? 'none' : open}`;
    }).map((same): Found => {
      const { mating, none, open, from } = same[0]!;
      const joints = distinct(same.map(({ mating: { joint } }) => `${joint.endPanel} and ${joint.facePanel}`));
      const between = `Between ${listed(joints.slice(0, 2))}${joints.length > 2 ? ` and in ${joints.length - 2} more joints` : ''}`;
      return {
        place: mating.joint.place,
        panel: mating.joint.endPanel,
        severity: none ? 'error' : 'warning',
        message: none
          ? `${between} there is no bore: nothing holds the joint, which is ${show(context, open)} deep. Give places with \`dowels\`, or make the panel wider.`
          : `${between} nothing holds the joint for ${show(context, open)} behind ${show(context, from)} from the front; the shop’s \`dowel-spacing\` is ${show(context, context.shop.habits.dowelSpacing)}. Give places with \`dowels\`, or choose a head with more spindles.`,
        bores: same.flatMap((one) => one.mating.mates.flatMap(({ face, end }) => [face.id, end.id])),
      };
    });
  },
};

/**
 * The widest stretch of a joint's depth behind its first bore with nothing in it, where it is wider than the shop allows
 * between neighbours; null where the joint is held, or where its bores have no mates (another rule says so).
 */
function widestGap(
  context: CarcassContext,
  { joint, mates, unmatchedInFace, unmatchedInEnd }: Mating,
): { readonly none: boolean; readonly open: Micrometres; readonly from: Micrometres } | null {
  const [face, end] = [panelOf(context, joint.facePanel), panelOf(context, joint.endPanel)];
  const overlap = face && end && shared(extentsOf(face).y, extentsOf(end).y);
  if (!overlap || unmatchedInFace.length + unmatchedInEnd.length > 0) return null;
  if (mates.length === 0) return { none: true, open: overlap.to - overlap.from, from: overlap.from };
  // Cams draw a joint together from its two ends; what stands between them only guides.
  if (joint.fitting.kind === 'cam') return null;
  const places = mates.map((mate) => boreAxis(end, mate.end).entry.y).toSorted((a, b) => a - b);
  const gaps = [...places, overlap.to]
    .slice(1)
    .map((place, index) => ({ from: places[index]!, open: place - places[index]! }));
  const widest = gaps.reduce((a, b) => (b.open > a.open ? b : a));
  // The last bore may stand one spacing from the rear, as from a neighbour.
  return widest.open > context.shop.habits.dowelSpacing ? { none: false, ...widest } : null;
}
