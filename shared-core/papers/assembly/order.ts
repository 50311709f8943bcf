import type { Axis, Carcass, Joint, Panel } from '../../carcass/model.js';
import { opposite } from '../../carcass/pose.js';
import { isBack, isOfBox } from '../../carcass/roles.js';

/** Panels that go on together in one move, and the joints that it closes. */
export interface AssemblyStep {
  readonly panels: readonly Panel[];
  readonly joints: readonly Joint[];
  /** False where no straight move puts them on, so that they have to be worked in together. */
  readonly straight: boolean;
}

/**
 * An order in which a box goes together by straight moves, each panel along the axis of the joints that it closes. Found
 * backwards: a panel comes off where all its joints with what is left open the same way, and taking one off never holds
 * another, so that no choice is wrong. Loose shelves and what is not in the box are no part of
 * it, nor a back that is put on last.
 */
export function assemblyOrder({ panels, joints, back }: Carcass): readonly AssemblyStep[] {
  const inGrooves = back === 'grooved';
  const parts = panels.filter(
    (panel) => isOfBox(panel) && panel.role !== 'loose-shelf' && (!isBack(panel) || inGrooves),
  );
  const left = new Map(parts.map((panel) => [panel.key, panel]));
  const steps: AssemblyStep[] = [];
  while (left.size > 0) {
    const next = [...left.values()].sort(lastOnFirst).find((panel) => comesOff(panel, left, joints));
    const off = next === undefined ? [...left.values()] : [next];
    const names = new Set(off.map(({ key }) => key));
    const closed = joints.filter(
      ({ facePanel, endPanel }) =>
        left.has(facePanel) && left.has(endPanel) && (names.has(facePanel) || names.has(endPanel)),
    );
    for (const name of names) left.delete(name);
    steps.unshift({ panels: off, joints: closed, straight: next !== undefined });
  }
  return steps;
}

/** The right side is pressed on last and the left one lies on the bench first; what stands between goes on from the bottom. */
function lastOnFirst(a: Panel, b: Panel): number {
  return rank(a) - rank(b);
}
function rank({ role, pose }: Panel): number {
  if (role === 'right-side') return 0;
  if (role === 'back') return 1;
  if (role === 'left-side') return 3;
  // Below 1 whatever the height of the box.
  return 2 - pose.origin.z / 1e9;
}

function comesOff(panel: Panel, left: ReadonlyMap<string, Panel>, joints: readonly Joint[]): boolean {
  if (panel.role === 'back') return ['left', 'right', 'bottom', 'top'].some((key) => !left.has(key));
  const ways = new Set(
    joints.flatMap((joint) => {
      if (!left.has(joint.facePanel) || !left.has(joint.endPanel)) return [];
      const way = outOf(joint, left.get(joint.endPanel)!);
      if (joint.endPanel === panel.key) return [way];
      return joint.facePanel === panel.key ? [opposite(way)] : [];
    }),
  );
  return ways.size <= 1;
}

/** The way in which the end panel is drawn out of the face panel. */
function outOf({ end }: Joint, { pose }: Panel): Axis {
  return end === 'reference-end' ? pose.v : opposite(pose.v);
}
