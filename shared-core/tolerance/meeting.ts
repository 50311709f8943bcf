import type { Axis, Joint, Panel } from '../carcass/model.js';
import { alongAxis, signOf } from '../carcass/pose.js';
import { contactOf } from './contact.js';
import type { Share, Sum } from './shares.js';

/** Two faces that look at each other, with a panel between them. */
export interface Faces {
  readonly near: Side;
  readonly far: Side;
  /** From the near one to the far one. */
  readonly way: 1 | -1;
  /** The axis of the carcass along which panels lie beside each other between them. */
  readonly beside: Axis;
}

interface Side {
  readonly panel: Panel;
  readonly face: Joint['face'];
}

/** Every two faces between which a panel stands, once. */
export function facesOf(joints: readonly Joint[], panels: ReadonlyMap<string, Panel>): Iterable<Faces> {
  const found = new Map<string, Faces>();
  for (const near of joints) {
    if (near.end !== 'reference-end') continue;
    for (const far of joints) {
      if (far.endPanel !== near.endPanel || far.end !== 'far-end') continue;
      const key = `${near.facePanel} ${near.face} ${far.facePanel} ${far.face}`;
      if (found.has(key)) continue;
      const { pose } = panels.get(near.endPanel)!;
      found.set(key, {
        near: { panel: panels.get(near.facePanel)!, face: near.face },
        far: { panel: panels.get(far.facePanel)!, face: far.face },
        way: signOf(pose.v),
        beside: pose.t,
      });
    }
  }
  return found.values();
}

/** Where a face stands in the frame of a panel that it meets. */
export type Meeting = { readonly id: string } & (
  | { readonly how: 'against-end'; readonly at: Sum }
  /** Placed by the bores of its own panel, and by how much its outside face is not the face that counts. */
  | { readonly how: 'by-bores'; readonly middle: number; readonly beyond: Sum }
);

/** A panel that both faces meet. */
export interface Met {
  readonly panel: Panel;
  /** Where it holds them, on the axis along which panels lie beside each other. */
  readonly at: number;
  readonly near: Meeting;
  readonly far: Meeting;
  /** Front and back of what its own ends stand on, on the front-to-back axis; null where none of them does. */
  readonly corners: readonly [number, number] | null;
}

/** How a panel meets two faces; null where it does not meet both. */
export function meet(panel: Panel, { near, far, beside }: Faces, joints: ReadonlyMap<string, Joint>): Met | null {
  const { origin, t } = panel.pose;
  const contacts: (readonly [number, number])[] = [];
  let stoodOn = false;
  const meeting = (side: Side): Meeting | null => {
    const against = joints.get(`${panel.key}/${side.panel.key}`);
    if (against?.face === side.face) {
      contacts.push(runAlong(side.panel, panel));
      const length: Share = { kind: 'length', of: panel.key, share: signOf(panel.pose.v) };
      return { id: against.id, how: 'against-end', at: against.end === 'far-end' ? [length] : [] };
    }
    const standing = joints.get(`${side.panel.key}/${panel.key}`);
    if (standing === undefined) return null;
    stoodOn ||= standing.face === 'inside';
    const [front, back] = runAlong(panel, side.panel);
    const thickness: Share = { kind: 'thickness', of: side.panel.key, share: signOf(side.panel.pose.t) };
    const beyond = side.face === 'inside' ? [thickness] : [];
    return { id: standing.id, how: 'by-bores', middle: (front + back) / 2, beyond };
  };
  const [first, second] = [meeting(near), meeting(far)];
  if (first === null || second === null) return null;
  const corners = [
    Math.max(...contacts.map(([front]) => front)),
    Math.min(...contacts.map(([, back]) => back)),
  ] as const;
  return {
    panel,
    at: origin[alongAxis(beside)] + (stoodOn ? signOf(t) * panel.thickness : 0),
    near: first,
    far: second,
    corners: contacts.length === 0 ? null : corners,
  };
}

/** Front and back of an end on a face, on the front-to-back axis of the carcass. */
function runAlong(face: Panel, end: Panel): readonly [number, number] {
  const { from, to } = contactOf(face, end);
  const { origin, u } = end.pose;
  const alongAt = (at: number): number => origin[alongAxis(u)] + signOf(u) * at;
  return [alongAt(from), alongAt(to ?? end.width)];
}
