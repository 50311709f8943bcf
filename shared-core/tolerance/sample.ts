import { boundOf, type Stray, type StrayKind } from '../machining/replay/stray.js';
import { FIGURE_NAMES, figureIn, measure, type FigureName } from './assemble.js';
import { variablesOf, type Variable } from './spread.js';
import { flushOf, jointCases, limitsOf, type ToleranceCase, type UnknownJoint } from './tolerance.js';

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
  /** Part of the boxes in which its offset, step and gap are within the shop's limits too, 0 to 1. */
  readonly fits: number;
}

export interface SampledTolerance {
  readonly joints: readonly SampledJoint[];
  readonly unknown: readonly UnknownJoint[];
  /** Part of the boxes of which every joint goes together. */
  readonly boxesClose: number;
  /** Part of the boxes of which every joint is within the shop's limits too. */
  readonly boxesFit: number;
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
  const limits = cases.map((one) => limitsOf(flushOf(one), tolerances));
  const goods = cases.map(() => 0);
  let closed = 0;
  let fitting = 0;
  for (let n = 0; n < samples; n += 1) {
    const stray = drawAll(variables, by, distribution, (kind) => boundOf(tolerances, kind));
    let closes = true;
    let fits = true;
    cases.forEach((joint, i) => {
      const readings = measure(joint, stray);
      for (const name of FIGURE_NAMES) taken[i]![name].push(figureIn(readings, name));
      const isClosed = taken[i]!.play[n]! <= tolerances.dowelPlay;
      const isGood = isClosed && limits[i]!.every(({ figure, limit }) => taken[i]![figure][n]! <= limit);
      closes &&= isClosed;
      fits &&= isGood;
      if (isGood) goods[i]! += 1;
    });
    if (closes) closed += 1;
    if (fits) fitting += 1;
  }
  const part = (count: number): number => (samples === 0 ? 1 : count / samples);
  const joints = cases.map(({ joint }, i): SampledJoint => {
    const { front, step, gap, play } = taken[i]!;
    return {
      joint: joint.id,
      front: summary(front),
      step: summary(step),
      gap: summary(gap),
      play: summary(play),
      closes: mean(play.map((needed) => (needed <= tolerances.dowelPlay ? 1 : 0))),
      fits: part(goods[i]!),
    };
  });
  return { joints, unknown, boxesClose: part(closed), boxesFit: part(fitting) };
}

const summary = (values: readonly number[]): SampledFigure => ({
  mean: mean(values),
  deviation: deviation(values),
  p95: quantile(values, 0.95),
  greatest: Math.max(...values),
});

// Chance

/** A source of chance that gives the same sequence for the same seed on every machine. */
export interface Chance {
  /** A whole number from 0 to 2^32 - 1, each as likely. */
  word(): number;
  /** Even over (0, 1). */
  even(): number;
  /** Standard normal. */
  normal(): number;
}

const rotate = (x: number, k: number): number => ((x << k) | (x >>> (32 - k))) >>> 0;

/** xoshiro128** (D. Blackman, S. Vigna, "Scrambled linear pseudorandom number generators", 2018), by its four words of state. */
export function xoshiro128(state: readonly [number, number, number, number]): () => number {
  let [a, b, c, d] = state;
  return () => {
    const result = Math.imul(rotate(Math.imul(b, 5), 7), 9) >>> 0;
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = rotate(d, 11);
    return result;
  };
}

/** Spreads one seed over the four words of state (the mixing of MurmurHash3, A. Appleby, public domain). */
function stateOf(seed: number): [number, number, number, number] {
  let x = seed | 0;
  const next = (): number => {
    x = (x + 0x9e3779b9) | 0;
    let z = Math.imul(x ^ (x >>> 16), 0x85ebca6b);
    z = Math.imul(z ^ (z >>> 13), 0xc2b2ae35);
    return z ^ (z >>> 16);
  };
  return [next(), next(), next(), next()];
}

/** A stream of chance; the same seed gives the same stream. */
export function chance(seed: number): Chance {
  const word = xoshiro128(stateOf(seed));
  const even = (): number => (word() + 0.5) / 2 ** 32;
  let spare: number | null = null;
  /** The polar method: G. Marsaglia, T. A. Bray, "A convenient method for generating normal variables", SIAM Review 6 (1964). */
  const normal = (): number => {
    if (spare !== null) {
      const kept = spare;
      spare = null;
      return kept;
    }
    for (;;) {
      const [x, y] = [2 * even() - 1, 2 * even() - 1];
      const square = x * x + y * y;
      if (square >= 1 || square === 0) continue;
      const factor = Math.sqrt((-2 * Math.log(square)) / square);
      spare = y * factor;
      return x * factor;
    }
  };
  return { word, even, normal };
}

// Statistics

/** Of a list with at least one value. */
export function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** Standard deviation of the values themselves: the mean square is taken over all of them. */
export function deviation(values: readonly number[]): number {
  const middle = mean(values);
  return Math.sqrt(mean(values.map((value) => (value - middle) ** 2)));
}

/**
 * The value that the part p of all values do not pass, between two neighbours in proportion (type 7 of R. J. Hyndman and
 * Y. Fan, "Sample quantiles in statistical packages", The American Statistician 50 (1996)).
 * @param p From 0 to 1.
 */
export function quantile(values: readonly number[], p: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  const place = (sorted.length - 1) * p;
  const below = sorted[Math.floor(place)]!;
  const above = sorted[Math.ceil(place)]!;
  return below + (place - Math.floor(place)) * (above - below);
}
