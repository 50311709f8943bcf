import type { Carcass, Joint } from '../carcass/model.js';
import type { SpindleLine } from '../carcass/spindle-line.js';
import type { Micrometres } from '../length/units.js';
import type { Bore } from './model.js';
import { isFace } from './surface.js';

/**
 * Bores that nothing enters, in sides that two rails meet: with them the line of the rails is the line of a full panel, so that
 * one load of bits serves both. None where the line is not part of the full one, or not bored alike throughout.
 * @param fullPlaces what a panel as deep as the side would get in its joint with it, from the carcass front
 */
export function spareHoles(
  { shared }: SpindleLine,
  carcass: Carcass,
  bores: readonly Bore[],
  fullPlaces: (joint: Joint) => readonly Micrometres[],
): readonly Bore[] {
  if (shared === null) return [];
  const panels = new Map(carcass.panels.map((panel) => [panel.key, panel]));
  const ofRails = carcass.joints.filter(({ endPanel, stagger }) => panels.get(endPanel)?.role === 'rail' && !stagger);
  return [...new Set(ofRails.map(({ facePanel }) => facePanel))].flatMap((key) => {
    const joints = ofRails.filter(({ facePanel }) => facePanel === key);
    const [joint] = joints;
    const groups = new Set(joints.map(({ id }) => id));
    const own = bores.filter(({ panel, group }) => panel === key && groups.has(group));
    const [like] = own;
    if (joint === undefined || like === undefined || joints.length < 2 || !areAlike(own)) return [];
    const front = panels.get(key)!.pose.origin.y;
    const full = new Set(fullPlaces(joint).map((y) => y - front));
    if (own.some(({ u }) => !full.delete(u))) return [];
    return [...full].map((u, index): Bore => ({
      ...like,
      id: `${key}:${joint.id}:spare-${index + 1}`,
      u,
      purpose: 'spare',
      group: joint.id,
      fitting: null,
      place: joint.place,
    }));
  });
}

/** Whether bores are one line of blind bores of one kind. */
function areAlike(bores: readonly Bore[]): boolean {
  const likeness = ({ face, v, purpose, diameter, depth }: Bore): string =>
    `${face} ${v} ${purpose} ${diameter} ${depth}`;
  return (
    bores.every((bore) => isFace(bore.face) && !bore.through) && new Set(bores.map((bore) => likeness(bore))).size === 1
  );
}
