import type { Stray, StrayKind } from '../machining/replay/stray.js';

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

const NO_STRAY = 0;

/** Finds out what a model depends on, by letting it run and listening to what it asks for. In the order of asking. */
export function variablesOf(model: (stray: Stray) => unknown): readonly Variable[] {
  const asked = new Map<string, Variable>();
  model((kind, of) => {
    asked.set(`${kind} ${of}`, { kind, of });
    return NO_STRAY;
  });
  return [...asked.values()];
}

/** Only one thing strays. */
const alone =
  (variable: Variable, by: number): Stray =>
  (kind, of) =>
    kind === variable.kind && of === variable.of ? by : NO_STRAY;

/**
 * How figures spread when every variable strays within its bound. Each figure is the greatest of its readings. The model is
 * run with one variable after the other at both of its bounds, all else nominal: nobody writes a sensitivity by hand.
 * @param model Readings by figure; the same number of them each time.
 */
export function spread<Name extends string>(
  names: readonly Name[],
  model: (stray: Stray) => Readonly<Record<Name, readonly number[]>>,
  boundOf: (kind: StrayKind) => number,
): Readonly<Record<Name, Figure>> {
  const nominal = model(() => NO_STRAY);
  const runs = variablesOf(model).map((variable) => {
    const bound = boundOf(variable.kind);
    return { variable, up: model(alone(variable, bound)), down: model(alone(variable, -bound)) };
  });
  const figureOf = (name: Name): Figure => {
    let greatest: Figure = { worst: 0, rootSumSquare: 0, causes: [] };
    let rootSumSquare = 0;
    nominal[name].forEach((drawn, i) => {
      const causes = runs.flatMap(({ variable, up, down }): Cause[] => {
        const rise = Math.max(up[name][i]! - drawn, down[name][i]! - drawn);
        return rise > 0 ? [{ ...variable, rise }] : [];
      });
      const worst = drawn + causes.reduce((sum, { rise }) => sum + rise, 0);
      rootSumSquare = Math.max(rootSumSquare, drawn + Math.sqrt(causes.reduce((sum, { rise }) => sum + rise ** 2, 0)));
      if (worst > greatest.worst) greatest = { worst, rootSumSquare, causes };
    });
    const causes = [...greatest.causes].sort((a, b) => b.rise - a.rise);
    return { worst: greatest.worst, rootSumSquare, causes };
  };
  return Object.fromEntries(names.map((name) => [name, figureOf(name)])) as Record<Name, Figure>;
}
