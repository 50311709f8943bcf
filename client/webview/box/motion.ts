import { Quaternion, Vector3 } from 'three';
import type { StandingBox } from '../../../shared-core/drawing/messages/box-view.js';
import type { BoxTurn } from '../../../shared-core/drawing/box-view/scene.js';
import type { PartSolid } from './solids.js';

const UPWARD = new Vector3(0, 0, 1);

/**
 * Puts a panel where it stands with doors and drawers so far open and the parts so far apart, each from 0 to 1: turned as it stands
 * and then about its line, and moved away.
 */
export function place(solid: PartSolid, { at, scene }: StandingBox, open: number, apart: number): void {
  const { part, group } = solid;
  const move = scene.moves.find(({ parts }) => parts.includes(part.key));
  group.position.set(0, 0, 0);
  group.quaternion.identity();
  if (part.turned !== null) turn(group, part.turned.at, part.turned.degrees);
  if (move?.kind === 'turn') turn(group, move.axis, (move.way === 'clockwise' ? -1 : 1) * move.degrees * open);
  if (move?.kind === 'pull') group.position.y -= (move.travel * open) / 1000;
  const { x, y, z } = at[solid.copy]!;
  group.position.x += (x + part.apart.x * apart) / 1000;
  group.position.y += (y + part.apart.y * apart) / 1000;
  group.position.z += (z + part.apart.z * apart) / 1000;
  group.updateMatrixWorld(true);
}

/** Turns a group, as it stands, about an upright line; against the clock is positive for who looks down. */
function turn({ position, quaternion }: PartSolid['group'], { x, y }: BoxTurn['axis'], degrees: number): void {
  const line = new Vector3(x / 1000, y / 1000, 0);
  const by = new Quaternion().setFromAxisAngle(UPWARD, (degrees * Math.PI) / 180);
  quaternion.premultiply(by);
  // The line stays where it is.
  position.sub(line).applyQuaternion(by).add(line);
}
