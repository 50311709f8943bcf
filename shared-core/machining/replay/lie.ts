import type { EdgeName } from '../../job/model.js';
import type { Solid } from './solid.js';
import { edgeAt, endAt, faceAt, inWood, outward } from './solid.js';
import type { Contact } from './table.js';
import { along, dot, QUARTER_TURNS, same, turn, turnBack, type Rotation, type Vector } from './vector.js';

/** How a panel lies: turned, then moved. */
export interface Lie {
  readonly rotation: Rotation;
  readonly shift: Vector;
}

/** The turn that makes each side look the way it is pushed; null where only a mirror image of the panel could do it. */
export function findTurn(hand: Solid['hand'], sides: readonly Pick<Contact, 'side' | 'push'>[]): Rotation | null {
  return QUARTER_TURNS.find((r) => sides.every(({ side, push }) => same(turn(r, outward(hand, side)), push))) ?? null;
}

/** The point of a side, in the panel's frame, that comes against the machine first. */
function touching(solid: Solid, contact: Contact, edge: EdgeName): Vector {
  const { side } = contact;
  if (side === 'inside' || side === 'outside') return [0, 0, faceAt(solid, side)];
  if (side === 'front' || side === 'back') return [edgeAt(solid, side), 0, 0];
  const corner = (u: number): Vector => [u, endAt(solid, side, u), 0];
  if (contact.touches === 'at-the-edge' && (edge === 'front' || edge === 'back')) return corner(edgeAt(solid, edge));
  const [front, back] = [corner(0), corner(solid.width)];
  const out = side === 'far-end' ? 1 : -1;
  return out * back[1] > out * front[1] ? back : front;
}

/**
 * Pushes the panel against its three contacts. Each fixes the coordinate along its own push, so whatever the real panel has
 * too much or too little of comes out on the sides that touch nothing.
 * @param moved Index move along X, after the contact with the stop.
 */
export function push(
  solid: Solid,
  rotation: Rotation,
  contacts: readonly Contact[],
  edge: EdgeName,
  moved: number,
): Lie {
  const shift = contacts.reduce<Vector>(
    (sum, contact) => {
      const point = turn(rotation, inWood(solid.hand, touching(solid, contact, edge)));
      return along(sum, contact.at - dot(point, contact.push), contact.push);
    },
    [moved, 0, 0],
  );
  return { rotation, shift };
}

/** From the panel's frame to the table. */
export function toTable(hand: Solid['hand'], lie: Lie, p: Vector): Vector {
  return along(turn(lie.rotation, inWood(hand, p)), 1, lie.shift);
}

/** From the table to the panel's frame. */
export function toPanel(hand: Solid['hand'], lie: Lie, p: Vector): Vector {
  return inWood(hand, turnBack(lie.rotation, along(p, -1, lie.shift)));
}

/** A direction, from the table to the panel's frame. */
export function directionInPanel(hand: Solid['hand'], lie: Lie, direction: Vector): Vector {
  return inWood(hand, turnBack(lie.rotation, direction));
}
