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

const keyOf = ({ kind, of }: Variable): string => `${kind} ${of}`;

/** Nothing strays, and what is asked for is noted, by key and in the order of asking. */
const listening =
  (asked: Map<string, Variable>): Stray =>
  (kind, of) => {
    const variable = { kind, of };
    asked.set(keyOf(variable), variable);
    return 0;
  };

/** Finds out what a model depends on, by letting it run and listening to what it asks for. In the order of asking. */
export function variablesOf(model: (stray: Stray) => unknown): readonly Variable[] {
  const asked = new Map<string, Variable>();
  model(listening(asked));
  return [...asked.values()];
}

/** A variable at both of its bounds, with all else as drawn. */
export interface Bounded extends Variable {
  readonly up: Stray;
  readonly down: Stray;
}

/** Something that is worked out with one variable at a bound, and only for variables that it depends on. */
export interface Probe<Value> {
  readonly asDrawn: Value;
  /** What it depends on, in the order of asking. */
  readonly variables: ReadonlySet<Bounded>;
  /** Worked out once, whoever asks. */
  readonly at: (variable: Bounded, bound: 'up' | 'down') => Value;
}

/** Makes a probe of something that is made out of others. */
export type Probing = <Parts extends readonly unknown[], Value>(
  parts: { readonly [I in keyof Parts]: Probe<Parts[I]> },
  make: (stray: Stray, ...parts: Parts) => Value,
) => Probe<Value>;

/** Probes that know their common variables by their identity; those that cannot stray are left out. */
export function probing(boundOf: (kind: StrayKind) => number): Probing {
  const all = new Map<string, Bounded>();
  const bounded = ({ kind, of }: Variable): Bounded => {
    const key = keyOf({ kind, of });
    const known = all.get(key);
    if (known !== undefined) return known;
    const at =
      (by: number): Stray =>
      (askedKind, askedOf) =>
        askedOf === of && askedKind === kind ? by : 0;
    const made = { kind, of, up: at(boundOf(kind)), down: at(-boundOf(kind)) };
    all.set(key, made);
    return made;
  };
  return <Parts extends readonly unknown[], Value>(
    parts: { readonly [I in keyof Parts]: Probe<Parts[I]> },
    make: (stray: Stray, ...parts: Parts) => Value,
  ): Probe<Value> => {
    const gather = (valueOf: (part: Probe<unknown>) => unknown): Parts => parts.map(valueOf) as unknown as Parts;
    const asked = new Map<string, Variable>();
    const asDrawn = make(listening(asked), ...gather((part) => part.asDrawn));
    const variables = new Set(parts.flatMap((part) => [...part.variables]));
    for (const variable of asked.values()) if (boundOf(variable.kind) !== 0) variables.add(bounded(variable));
    const known = new Map<Stray, Value>();
    return {
      asDrawn,
      variables,
      at: (variable, bound) => {
        if (!variables.has(variable)) return asDrawn;
        const stray = variable[bound];
        const before = known.get(stray);
        if (before !== undefined) return before;
        const value = make(stray, ...gather((part) => part.at(variable, bound)));
        known.set(stray, value);
        return value;
      },
    };
  };
}

/**
 * How figures spread when every variable strays within its bound. The model is run with one variable after the other at
 * both of its bounds, all else nominal: nobody writes a sensitivity by hand. What two variables do only together (a product
 * of two strays) is left out; in a box that is under a micrometre. A figure is the greatest of its readings: by their size
 * where they count `either-way`.
 * @param model The same number of readings whatever strays.
 */
export function spread<Name extends string>(
  figures: Readonly<Record<Name, 'one-way' | 'either-way'>>,
  model: Probe<Readonly<Record<Name, readonly number[]>>>,
): Readonly<Record<Name, Figure>> {
  const all = [...model.variables].map((variable) => ({
    variable,
    up: model.at(variable, 'up'),
    down: model.at(variable, 'down'),
  }));

  const figureOf = (name: Name): Figure => {
    const nominal = model.asDrawn[name];
    // What a variable has no part in is the very same as with nothing straying.
    const runs = all
      .map(({ variable, up, down }) => ({ variable, up: up[name], down: down[name] }))
      .filter(({ up, down }) => up !== nominal || down !== nominal);
    /** How far one variable can push a reading up, seen in one way. */
    const rise = ({ up, down }: (typeof runs)[number], i: number, way: number): number =>
      Math.max(0, way * (up[i]! - nominal[i]!), way * (down[i]! - nominal[i]!));
    let greatest = { worst: 0, i: 0, way: 0 };
    let rootSumSquare = 0;
    for (const way of figures[name] === 'either-way' ? [1, -1] : [1]) {
      for (let i = 0; i < nominal.length; i += 1) {
        let [sum, squares] = [0, 0];
        for (const run of runs) {
          const own = rise(run, i, way);
          sum += own;
          squares += own * own;
        }
        const drawn = way * nominal[i]!;
        rootSumSquare = Math.max(rootSumSquare, drawn + Math.sqrt(squares));
        if (drawn + sum > greatest.worst) greatest = { worst: drawn + sum, i, way };
      }
    }
    const causes = runs.flatMap((run): Cause[] => {
      const own = rise(run, greatest.i, greatest.way);
      return own > 0 ? [{ kind: run.variable.kind, of: run.variable.of, rise: own }] : [];
    });
    return { worst: greatest.worst, rootSumSquare, causes: causes.sort((a, b) => b.rise - a.rise) };
  };
  const names = Object.keys(figures) as Name[];
  return Object.fromEntries(names.map((name) => [name, figureOf(name)])) as Record<Name, Figure>;
}
