import type { Message } from '../words/message.js';
import { say } from './messages.js';
import type { BoreMap } from '../boring/model.js';
import { matings, type Mating } from '../boring/matings.js';
import type { Carcass, Panel } from '../carcass/model.js';
import { kindOf } from '../fittings/kinds.js';
import { blankOf } from '../machining/blank.js';
import type { HoleMap } from '../machining/replay/hole-map.js';
import { strokesOf, type ReplayProblem, type Strokes } from '../machining/replay/replay.js';
import type { SetUp } from '../machining/set-up.js';
import type { Shop, Tolerances } from '../shop/model.js';
import type { Micrometres } from '../length/units.js';
import type { FigureName } from './assemble.js';
import { boredBy, loneJoint, type BoredBy } from './joint.js';
import type { LoneJoint } from './lone-joint.js';
import { JointProbes } from './joint-probes.js';
import { amongOthers, rivalsOf, type JointCase } from './rivals.js';
import type { Cause, Figure } from './spread.js';

/** One carcass with the set-ups that it is to be bored by. */
export interface ToleranceCase {
  /** The carcass's name in the set-ups. */
  readonly name: string;
  readonly carcass: Carcass;
  readonly boring: BoreMap;
  /** Whoever made them: all that counts is what they do. */
  readonly setUps: readonly SetUp[];
  readonly shop: Shop;
}

/** Whether a joint goes together with the play that its dowels have. */
export type Closing = 'always' | 'as-a-rule' | 'not-always';

/**
 * What can come out at one joint, in micrometres, never below 0.
 * - front: between the front edges of the two panels (or from the drawn distance, where they are not flush);
 * - step: between the end panel's outside face and the end of the face panel (likewise), at the worse of front and back;
 * - gap: the widest opening between end and face;
 * - play: what the dowels must give for the joint to go together.
 */
export interface JointTolerance extends Readonly<Record<FigureName, Figure>> {
  readonly joint: string;
  readonly frontFlush: boolean;
  readonly stepFlush: boolean;
  readonly closes: Closing;
}

/** A joint that no figures can be had for. */
export interface UnknownJoint {
  readonly joint: string;
  readonly reason: Message;
  /** Where a set-up cannot be carried out. */
  readonly problems: readonly ReplayProblem[];
}

export interface CarcassTolerance {
  readonly joints: readonly JointTolerance[];
  readonly unknown: readonly UnknownJoint[];
}

/** The same, read out of the set-ups. */
export interface StrokesCase {
  readonly carcass: Carcass;
  readonly matings: readonly Mating[];
  /** By the panel's key. */
  readonly strokes: ReadonlyMap<string, Strokes>;
  readonly shop: Shop;
}

/** Reads the strokes of every panel out of the set-ups. */
function strokesIn({ name, carcass, boring, setUps, shop }: ToleranceCase): StrokesCase {
  const strokes = carcass.panels.map((panel): [string, Strokes] => [
    panel.key,
    strokesOf(setUps, name, panel.key, blankOf(panel)),
  ]);
  return { carcass, matings: matings(carcass, boring), strokes: new Map(strokes), shop };
}

/** The joints of a carcass ready to be put together, in the order of the carcass. */
export function jointCases(of: ToleranceCase): JointCases {
  return casesFrom(strokesIn(of));
}

export interface JointCases {
  readonly cases: readonly JointCase[];
  readonly unknown: readonly UnknownJoint[];
}

/** The same where the strokes are known. */
export function casesFrom({ carcass, matings, strokes, shop }: StrokesCase): JointCases {
  const panels = new Map(carcass.panels.map((panel) => [panel.key, panel]));
  const bits = new Map<string, HoleMap<BoredBy>>();
  const broken = new Map<string, readonly ReplayProblem[]>();
  const bitsFor = ({ key }: Panel): HoleMap<BoredBy> | null => {
    if (broken.has(key)) return null;
    const known = bits.get(key);
    if (known !== undefined) return known;
    const read = strokes.get(key)!;
    if (!read.ok) {
      broken.set(key, read.problems);
      return null;
    }
    const found = boredBy(read.strokes);
    bits.set(key, found);
    return found;
  };
  const lengthInBoth = (wanted: string | null): Micrometres | null => {
    const fitting = wanted === null ? undefined : shop.fittings.get(wanted);
    return fitting === undefined ? null : kindOf(fitting).joint.lengthInBoth(fitting);
  };

  const known = new Map<string, LoneJoint>();
  const unknown: UnknownJoint[] = [];
  for (const { joint, mates } of matings) {
    const [face, end] = [panels.get(joint.facePanel)!, panels.get(joint.endPanel)!];
    const [faceBits, endBits] = [bitsFor(face), bitsFor(end)];
    if (faceBits === null || endBits === null) {
      const culprit = faceBits === null ? face.key : end.key;
      unknown.push({ joint: joint.id, reason: say.notCarriedOut({ panel: culprit }), problems: broken.get(culprit)! });
      continue;
    }
    const made = loneJoint(joint, { face, end }, mates, { face: faceBits, end: endBits }, lengthInBoth);
    if (made === null) unknown.push({ joint: joint.id, reason: say.halfBored(), problems: [] });
    else known.set(joint.id, made);
  }
  const rivals = rivalsOf(carcass);
  const cases = [...known].map(([id, joint]) => amongOthers(joint, rivals.get(id) ?? [], known));
  return { cases, unknown };
}

/** Worst case and root-sum-square of every joint of a carcass. */
export function toleranceOf(of: ToleranceCase): CarcassTolerance {
  const { cases, unknown } = jointCases(of);
  return { joints: cases.map(spreading(of.shop.tolerances)), unknown };
}

/**
 * Gives worst case and root-sum-square of joints.
 * @param probes under the same tolerances; what it knows of other joints is not worked out again
 */
export function spreading(
  tolerances: Tolerances,
  probes: JointProbes = new JointProbes(tolerances),
): (joint: JointCase) => JointTolerance {
  return (joint) => {
    const figures = probes.figuresOf(joint);
    return {
      joint: joint.joint.id,
      ...figures,
      ...flushOf(joint),
      closes: closingOf(figures.play, tolerances),
    };
  };
}

function closingOf(play: Figure, { dowelPlay }: Tolerances): Closing {
  if (play.worst <= dowelPlay) return 'always';
  return play.rootSumSquare <= dowelPlay ? 'as-a-rule' : 'not-always';
}

/** A figure that can pass what the shop allows. */
export interface OverLimit {
  readonly joint: string;
  readonly figure: FigureName;
  readonly limit: Micrometres;
  /** Whole micrometres. */
  readonly worst: Micrometres;
  readonly rootSumSquare: Micrometres;
  /** True where it is passed even by independent errors as they combine; else only where all fall the same way at once. */
  readonly asARule: boolean;
  /** What it comes from, the greatest first. */
  readonly causes: readonly Cause[];
}

/**
 * Which figures of a joint can pass the shop's limits. Offsets and steps count only where the panels are flush as drawn: a
 * shelf has no outside face that anything must be level with.
 */
export function overLimits(tolerance: JointTolerance, tolerances: Tolerances): readonly OverLimit[] {
  return limitsOf(tolerance, tolerances).flatMap(({ figure, limit }): OverLimit[] => {
    const { worst, rootSumSquare, causes } = tolerance[figure];
    if (worst <= limit) return [];
    const figures = { worst: Math.round(worst), rootSumSquare: Math.round(rootSumSquare) };
    return [{ joint: tolerance.joint, figure, limit, ...figures, asARule: rootSumSquare > limit, causes }];
  });
}

/** Where the panels of a joint are flush as drawn. */
export function flushOf({ front, outside }: JointCase): Pick<JointTolerance, 'frontFlush' | 'stepFlush'> {
  return { frontFlush: front.drawn === 0, stepFlush: outside.drawn === 0 };
}

/** The limits that count for a joint; see `overLimits`. */
export function limitsOf(
  { frontFlush, stepFlush }: Pick<JointTolerance, 'frontFlush' | 'stepFlush'>,
  { frontLimit, stepLimit, gapLimit, dowelPlay }: Tolerances,
): readonly { readonly figure: FigureName; readonly limit: Micrometres }[] {
  return [
    ...(frontFlush ? [{ figure: 'front', limit: frontLimit } as const] : []),
    ...(stepFlush ? [{ figure: 'step', limit: stepLimit } as const] : []),
    { figure: 'gap', limit: gapLimit },
    { figure: 'play', limit: dowelPlay },
  ];
}
