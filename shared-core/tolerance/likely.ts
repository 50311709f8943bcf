import type { Derived } from '../derived/derived.js';
import type { Tolerances } from '../shop/model.js';
import { likenessOf } from './likeness.js';
import type { JointCase } from './rivals.js';
import { casesFrom, limitsOf, overLimits, spreading } from './tolerance.js';
import type { JointTolerance, OverLimit, StrokesCase } from './tolerance.js';

/** What is nearer to a limit than this, in micrometres, may be on the other side of it at a joint that is like this one. */
const LAST_BITS = 0.001;

/** A joint to be judged, and how its figures are had. */
interface Question {
  readonly joint: JointCase;
  readonly tolerances: Tolerances;
  readonly figuresOf: (joint: JointCase) => JointTolerance;
}

/**
 * The figures of a carcass that pass the shop's limits as a rule. A job has few joints that are not like many others, and most
 * are sound: one of each likeness is worked out, and of the others only those whose figures are to be told.
 * @param derived keeps for one shop which joints are sound
 */
export function likelyOverLimits(of: StrokesCase, derived: Derived): readonly OverLimit[] {
  const { tolerances } = of.shop;
  const spreadOf = spreading(tolerances);
  const known = new Map<JointCase, JointTolerance>();
  const figuresOf = (joint: JointCase): JointTolerance => {
    const figures = known.get(joint) ?? spreadOf(joint);
    known.set(joint, figures);
    return figures;
  };
  return casesFrom(of).cases.flatMap((joint) => {
    if (derived.answer(isSound, { joint, tolerances, figuresOf }, likenessOf(joint))) return [];
    return overLimits(figuresOf(joint), tolerances).filter((one) => one.asARule);
  });
}

/** Whether no figure of a joint, nor of any that is like it, passes its limit as a rule. */
function isSound({ joint, tolerances, figuresOf }: Question): boolean {
  const figures = figuresOf(joint);
  return limitsOf(figures, tolerances).every(
    ({ figure, limit }) =>
      figures[figure].rootSumSquare <= limit - LAST_BITS || figures[figure].worst <= limit - LAST_BITS,
  );
}
