import type { Axis, Joint, Panel } from '../carcass/model.js';
import { alongAxis, signOf } from '../carcass/pose.js';
import type { Stray } from '../machining/replay/stray.js';
import { contactOf } from './joint.js';

// Where two faces that look at each other are held by the panels between them, as sums of what strays.

/** How much of something counts. */
export type Share = {
  /** A panel; of `stand` the id of a joint. */
  readonly of: string;
  readonly share: number;
} & (
  | { readonly kind: 'length' | 'thickness' }
  /** How far the end panel of a joint stands from its place as drawn, at a place on the front-to-back axis of the carcass. */
  | { readonly kind: 'stand'; readonly along: number }
);

/** What all of these come to together. */
export type Sum = readonly Share[];

/** How far the outside face of an end panel really stands from its place as drawn, along the axis of its thickness. */
export type Stand = (along: number) => number;

/** A joint that is not known leaves its panel where it is drawn. */
export const AS_DRAWN: Stand = () => 0;

/** What a sum comes to, in micrometres. */
export function amountOf(sum: Sum, stray: Stray, standOf: (joint: string) => Stand): number {
  let amount = 0;
  for (const one of sum) {
    const size = one.kind === 'stand' ? standOf(one.of)(one.along) : stray(one.kind, one.of);
    amount += one.share * size;
  }
  return amount;
}

/** Shares below this are what is left of others that cancel. */
const LEAST_SHARE = 1e-9;

/** Adds up sums, each taken so many times. */
export function total(...sums: readonly (readonly [sum: Sum, times: number])[]): Sum {
  const shares = new Map<string, Share>();
  for (const [sum, times] of sums) {
    for (const one of sum) {
      const key = one.kind === 'stand' ? `${one.kind} ${one.of} ${one.along}` : `${one.kind} ${one.of}`;
      shares.set(key, { ...one, share: (shares.get(key)?.share ?? 0) + times * one.share });
    }
  }
  return [...shares.values()].filter(({ share }) => Math.abs(share) > LEAST_SHARE);
}

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

/**
 * By how much one of the panels that two faces meet holds them further apart, at a place on the front-to-back axis, than the
 * outermost ones leave them there; null where what they meet leaves them free to lean.
 * @param way from the near face to the far one
 */
export function excessBetween(met: readonly Met[], way: 1 | -1): ((one: Met, along: number) => Sum) | null {
  const [low, high] = [Math.min(...met.map(({ at }) => at)), Math.max(...met.map(({ at }) => at))];
  if (low >= high) return null;
  const [lowest, highest] = [met.filter(({ at }) => at === low), met.filter(({ at }) => at === high)];
  const width = (near: Sum, far: Sum): Sum => total([far, way], [near, -way]);
  const widthOf = (ones: readonly Met[], along: number): Sum =>
    width(placeAt(ones, 'near', along), placeAt(ones, 'far', along));
  return (one, along) => {
    const level = [lowest, highest].find((ones) => ones.includes(one));
    if (level !== undefined) {
      return width(atOdds(one, level, 'near', along), atOdds(one, level, 'far', along));
    }
    const part = (one.at - low) / (high - low);
    return total([widthOf([one], along), 1], [widthOf(lowest, along), part - 1], [widthOf(highest, along), -part]);
  };
}

type SideName = 'near' | 'far';

/** An outermost panel is at odds only with others at its height, and only about where its own ends are. */
function atOdds(one: Met, level: readonly Met[], side: SideName, along: number): Sum {
  const own = one[side];
  return own.how === 'by-bores' ? [] : total([own.at, 1], [placeAt(level, side, along), -1]);
}

/**
 * Where a face stands at one height. Against several ends it is square to them, at their mean. The bores of several joints
 * put it on the straight line that fits best through the middles of them.
 */
function placeAt(met: readonly Met[], side: SideName, along: number): Sum {
  const meetings = met.map((one) => one[side]);
  const bored = meetings.flatMap((one) => (one.how === 'by-bores' ? [one] : []));
  const ends = meetings.flatMap((one) => (one.how === 'against-end' ? [one.at] : []));
  if (ends.length > 0) return total(...ends.map((at): [Sum, number] => [at, 1 / ends.length]));
  if (bored.length === 1) return [{ kind: 'stand', of: bored[0]!.id, along, share: 1 }, ...bored[0]!.beyond];
  const mean = bored.reduce((sum, { middle }) => sum + middle, 0) / bored.length;
  const spread = bored.reduce((sum, { middle }) => sum + (middle - mean) ** 2, 0);
  return total(
    ...bored.map(({ id, middle, beyond }): [Sum, number] => {
      const turn = spread < 1 ? 0 : ((along - mean) * (middle - mean)) / spread;
      return [[{ kind: 'stand', of: id, along: middle, share: 1 }, ...beyond], 1 / bored.length + turn];
    }),
  );
}
