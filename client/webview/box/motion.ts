import { Vector3 } from 'three';
import type { StandingBox } from '../../../shared-core/drawing/messages/box-view.js';
import type { BoxTurn } from '../../../shared-core/drawing/box-view/scene.js';
import type { PartSolid } from './solids.js';

const UPWARD = new Vector3(0, 0, 1);

/**
 * Puts a panel where it stands with doors and drawers so far open and the parts so far apart, each from 0 to 1: turned about its
 * line first, then moved away.
 */
export function place(solid: PartSolid, { at, scene }: StandingBox, open: number, apart: number): void {
  const { part, group } = solid;
  const move = scene.moves.find(({ parts }) => parts.includes(part.key));
  group.position.set(0, 0, 0);
  group.quaternion.identity();
  if (move?.kind === 'turn') turn(group, move, open);
  if (move?.kind === 'pull') group.position.y -= (move.travel * open) / 1000;
  const { x, y, z } = at[solid.copy]!;
  group.position.x += (x + part.apart.x * apart) / 1000;
  group.position.y += (y + part.apart.y * apart) / 1000;
  group.position.z += (z + part.apart.z * apart) / 1000;
  group.updateMatrixWorld(true);
}

function turn(group: PartSolid['group'], { axis, way, degrees }: BoxTurn, open: number): void {
  const line = new Vector3(axis.x / 1000, axis.y / 1000, 0);
  // Against the clock is the positive way about a line that points up at who looks down.
  const angle = ((way === 'clockwise' ? -1 : 1) * degrees * open * Math.PI) / 180;
  group.quaternion.setFromAxisAngle(UPWARD, angle);
  // The line stays where it is.
  group.position.copy(line).sub(line.clone().applyQuaternion(group.quaternion));
}
