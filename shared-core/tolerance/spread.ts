import { NOTHING, type Stray, type StrayKind } from '../machining/replay/stray.js';

/** One thing that can stray. */
export interface Variable {
  readonly kind: StrayKind;
  /** What it is: a panel, an end of a panel, a stop in its set-up, a bit in its stroke, a joint. */
  readonly of: string;
}

/** How much of a figure one variable can cause by itself, within its bound; micrometres. */
export interface Cause extends Variable {
  readonly rise: number;
}

/** One figure over all that can stray. */
export interface Figure {
  /** With everything at the worse of its bounds at once. */
  readonly worst: number;
  /** With the rises combined as independent ones are: the root of the sum of their squares. */
  readonly rootSumSquare: number;
  /** What the worst case is made of, the greatest first. Things that do not change it are not listed. */
  readonly causes: readonly Cause[];
}

/**
 * A model in parts, of which each is run again only for what it depends on. A figure is the greatest of its readings: by
 * their size where they count `either-way`.
 */
export interface Model<Name extends string, Part> {
  readonly figures: Readonly<Record<Name, 'one-way' | 'either-way'>>;
  readonly parts: readonly ((stray: Stray) => Part)[];
  /** The same number of readings whatever strays. */
  readonly combine: (parts: readonly Part[], stray: Stray) => Readonly<Record<Name, readonly number[]>>;
}

/** Finds out what a model depends on, by letting it run and listening to what it asks for. In the order of asking. */
export function variablesOf(model: (stray: Stray) => unknown): readonly Variable[] {
  const asked = new Map<string, Variable>();
  model((kind, of) => {
    asked.set(`${kind} ${of}`, { kind, of });
    return 0;
  });
  return [...asked.values()];
}

/** Only one thing strays. */
const alone =
  (variable: Variable, by: number): Stray =>
  (kind, of) =>
    of === variable.of && kind === variable.kind ? by : 0;

/**
 * How figures spread when every variable strays within its bound. The model is run with one variable after the other at
 * both of its bounds, all else nominal: nobody writes a sensitivity by hand. What two variables do only together (a product
 * of two strays) is left out; in a box that is under a micrometre.
 */
export function spread<Name extends string, Part>(
  { figures, parts, combine }: Model<Name, Part>,
  boundOf: (kind: StrayKind) => number,
): Readonly<Record<Name, Figure>> {
  const asDrawn = parts.map((part) => part(NOTHING));
  const nominal = combine(asDrawn, NOTHING);
  const touched = new Map<string, { readonly variable: Variable; readonly parts: Set<number> }>();
  const touch = (asked: readonly Variable[], part: number): void => {
    for (const variable of asked) {
      const key = `${variable.kind} ${variable.of}`;
      const known = touched.get(key) ?? { variable, parts: new Set() };
      touched.set(key, known);
      known.parts.add(part);
    }
  };
  parts.forEach((part, i) => touch(variablesOf(part), i));
  touch(
    variablesOf((stray) => combine(asDrawn, stray)),
    parts.length,
  );
  const runs = [...touched.values()].map(({ variable, parts: own }) => {
    const run = (by: number): Readonly<Record<Name, readonly number[]>> => {
      const stray = alone(variable, by);
      return combine(
        asDrawn.map((drawn, i) => (own.has(i) ? parts[i]!(stray) : drawn)),
        stray,
      );
    };
    const bound = boundOf(variable.kind);
    return { variable, up: run(bound), down: run(-bound) };
  });

  const figureOf = (name: Name): Figure => {
    /** How far one variable can push a reading up, seen in one way. */
    const rises = (i: number, way: number): number[] => {
      const drawn = way * nominal[name][i]!;
      return runs.map(({ up, down }) => Math.max(0, way * up[name][i]! - drawn, way * down[name][i]! - drawn));
    };
    const ways = figures[name] === 'either-way' ? [1, -1] : [1];
    let greatest: { worst: number; rises: readonly number[] } = { worst: 0, rises: [] };
    let rootSumSquare = 0;
    nominal[name].forEach((drawn, i) => {
      for (const way of ways) {
        const own = rises(i, way);
        const worst = own.reduce((sum, rise) => sum + rise, way * drawn);
        rootSumSquare = Math.max(
          rootSumSquare,
          way * drawn + Math.sqrt(own.reduce((sum, rise) => sum + rise * rise, 0)),
        );
        if (worst > greatest.worst) greatest = { worst, rises: own };
      }
    });
    const causes = greatest.rises.flatMap((rise, i) => (rise > 0 ? [{ ...runs[i]!.variable, rise }] : []));
    return { worst: greatest.worst, rootSumSquare, causes: causes.sort((a, b) => b.rise - a.rise) };
  };
  const names = Object.keys(figures) as Name[];
  return Object.fromEntries(names.map((name) => [name, figureOf(name)])) as Record<Name, Figure>;
}
