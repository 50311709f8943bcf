import type { BoreMap } from '../boring/model.js';
import { matings } from '../boring/matings.js';
import type { Carcass, Panel } from '../carcass/model.js';
import { blankOf } from '../machining/blank.js';
import { strokesOf, type ReplayProblem } from '../machining/replay/replay.js';
import { boundOf } from '../machining/replay/stray.js';
import type { SetUp } from '../machining/setup-sheet.js';
import type { Dowel, Shop, Tolerances } from '../shop/model.js';
import { FIGURES, putTogether, type FigureName } from './assemble.js';
import { boredBy, jointCase, makeReal, type BoredBy, type JointCase, type RealHalf } from './joint-case.js';
import { rivalsOf } from './rivals.js';
import { spread, type Figure, type Model } from './spread.js';

/** One carcass with the sheet that it is to be bored by. */
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
  readonly reason: string;
  /** Where a sheet cannot be carried out. */
  readonly problems: readonly ReplayProblem[];
}

export interface CarcassTolerance {
  readonly joints: readonly JointTolerance[];
  readonly unknown: readonly UnknownJoint[];
}

/** The joints of a carcass ready to be put together, in the order of the carcass. */
export function jointCases({ name, carcass, boring, setUps, shop }: ToleranceCase): {
  readonly cases: readonly JointCase[];
  readonly unknown: readonly UnknownJoint[];
} {
  const panels = new Map(carcass.panels.map((panel) => [panel.key, panel]));
  const bits = new Map<string, ReadonlyMap<string, BoredBy>>();
  const broken = new Map<string, readonly ReplayProblem[]>();
  const bitsFor = (panel: Panel): ReadonlyMap<string, BoredBy> | null => {
    if (broken.has(panel.key)) return null;
    const known = bits.get(panel.key);
    if (known !== undefined) return known;
    const read = strokesOf(setUps, name, panel.key, blankOf(panel));
    if (!read.ok) {
      broken.set(panel.key, read.problems);
      return null;
    }
    const found = boredBy(read.strokes);
    bits.set(panel.key, found);
    return found;
  };
  const dowelNamed = (wanted: string | null): Dowel | null => {
    const fitting = wanted === null ? undefined : shop.fittings.get(wanted);
    return fitting?.kind === 'dowel' ? fitting : null;
  };

  const rivals = rivalsOf(carcass);
  const cases: JointCase[] = [];
  const unknown: UnknownJoint[] = [];
  for (const { joint, mates } of matings(carcass, boring)) {
    const [face, end] = [panels.get(joint.facePanel)!, panels.get(joint.endPanel)!];
    const [faceBits, endBits] = [bitsFor(face), bitsFor(end)];
    if (faceBits === null || endBits === null) {
      const culprit = faceBits === null ? face.key : end.key;
      const reason = `the sheet for ${culprit} cannot be carried out`;
      unknown.push({ joint: joint.id, reason, problems: broken.get(culprit)! });
      continue;
    }
    const made = jointCase(
      joint,
      { face, end },
      mates,
      { face: faceBits, end: endBits },
      dowelNamed,
      rivals.get(end.key) ?? [],
    );
    if (made === null)
      unknown.push({ joint: joint.id, reason: 'no set-up bores both halves of any of its places', problems: [] });
    else cases.push(made);
  }
  return { cases, unknown };
}

/** Worst case and root-sum-square of every joint of a carcass. */
export function toleranceOf(of: ToleranceCase): CarcassTolerance {
  const { cases, unknown } = jointCases(of);
  const { tolerances } = of.shop;
  const joints = cases.map((joint): JointTolerance => {
    const figures = spread(modelOf(joint), (kind) => boundOf(tolerances, kind));
    return {
      joint: joint.joint.id,
      ...figures,
      frontFlush: joint.front.drawn === 0,
      stepFlush: joint.outside.drawn === 0,
      closes: closingOf(figures.play, tolerances),
    };
  });
  return { joints, unknown };
}

const modelOf = (joint: JointCase): Model<FigureName, RealHalf> => ({
  figures: FIGURES,
  parts: [(stray) => makeReal(joint.face, stray), (stray) => makeReal(joint.end, stray)],
  combine: ([face, end], stray) => putTogether(joint, face!, end!, stray),
});

function closingOf(play: Figure, { dowelPlay }: Tolerances): Closing {
  if (play.worst <= dowelPlay) return 'always';
  return play.rootSumSquare <= dowelPlay ? 'as-a-rule' : 'not-always';
}
