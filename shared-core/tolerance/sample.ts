import { boundOf, type Stray, type StrayKind } from '../machining/replay/stray.js';
import { FIGURE_NAMES, FIGURES, measure, type FigureName, type Readings } from './assemble.js';
import { chance, type Chance } from './random.js';
import { variablesOf, type Variable } from './spread.js';
import { deviation, mean, quantile } from './statistics.js';
import { jointCases, type ToleranceCase, type UnknownJoint } from './tolerance.js';

/** How things stray within their bounds: evenly, or normally with the bound at three standard deviations (cut off there). */
export type Distribution = 'normal' | 'even';

export interface Sampling {
  readonly samples: number;
  readonly seed: number;
  readonly distribution: Distribution;
}

/** One figure over all boxes drawn, in micrometres. */
export interface SampledFigure {
  readonly mean: number;
  readonly deviation: number;
  /** 19 boxes of 20 do not pass this. */
  readonly p95: number;
  readonly greatest: number;
}

export interface SampledJoint extends Readonly<Record<FigureName, SampledFigure>> {
  readonly joint: string;
  /** Part of the boxes whose joint goes together with the play that its dowels have, 0 to 1. */
  readonly closes: number;
}

export interface SampledTolerance {
  readonly joints: readonly SampledJoint[];
  readonly unknown: readonly UnknownJoint[];
  /** Part of the boxes of which every joint goes together. */
  readonly boxesClose: number;
}

/** One value within the bound. */
export function draw(by: Chance, distribution: Distribution, bound: number): number {
  if (distribution === 'even') return bound * (2 * by.even() - 1);
  for (;;) {
    const value = by.normal() / 3;
    if (Math.abs(value) <= 1) return bound * value;
  }
}

/** One real shop on one day: everything has strayed, and stays so. */
export function drawAll(
  variables: readonly Variable[],
  by: Chance,
  distribution: Distribution,
  bound: (kind: StrayKind) => number,
): Stray {
  const drawn = new Map<StrayKind, Map<string, number>>();
  for (const { kind, of } of variables) {
    const values = drawn.get(kind) ?? new Map<string, number>();
    values.set(of, draw(by, distribution, bound(kind)));
    drawn.set(kind, values);
  }
  return (kind, of) => drawn.get(kind)?.get(of) ?? 0;
}

/** The figure that readings give. */
export function figureOf(readings: Readings, name: FigureName): number {
  const sizes = FIGURES[name] === 'either-way' ? readings[name].map(Math.abs) : readings[name];
  return Math.max(0, ...sizes);
}

/**
 * Makes so many real boxes of a carcass, with the same model as the worst case but nothing made linear, and measures each.
 * Joints of one box share what they have in common: a stop, a panel.
 */
export function sampleTolerance(of: ToleranceCase, { samples, seed, distribution }: Sampling): SampledTolerance {
  const { cases, unknown } = jointCases(of);
  const { tolerances } = of.shop;
  const by = chance(seed);
  const variables = variablesOf((stray) => cases.map((joint) => measure(joint, stray)));
  const taken = cases.map((): Record<FigureName, number[]> => ({ front: [], step: [], gap: [], play: [] }));
  let closed = 0;
  for (let n = 0; n < samples; n += 1) {
    const stray = drawAll(variables, by, distribution, (kind) => boundOf(tolerances, kind));
    let closes = true;
    cases.forEach((joint, i) => {
      const readings = measure(joint, stray);
      for (const name of FIGURE_NAMES) taken[i]![name].push(figureOf(readings, name));
      closes &&= taken[i]!.play[n]! <= tolerances.dowelPlay;
    });
    if (closes) closed += 1;
  }
  const joints = cases.map(({ joint }, i): SampledJoint => {
    const { front, step, gap, play } = taken[i]!;
    return {
      joint: joint.id,
      front: summary(front),
      step: summary(step),
      gap: summary(gap),
      play: summary(play),
      closes: mean(play.map((needed) => (needed <= tolerances.dowelPlay ? 1 : 0))),
    };
  });
  return { joints, unknown, boxesClose: samples === 0 ? 1 : closed / samples };
}

const summary = (values: readonly number[]): SampledFigure => ({
  mean: mean(values),
  deviation: deviation(values),
  p95: quantile(values, 0.95),
  greatest: Math.max(...values),
});
