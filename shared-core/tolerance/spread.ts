import type { Stray, StrayKind } from '../machining/replay/stray.js';

/** One thing that can stray. */
export interface Variable {
  readonly kind: StrayKind;
  /** What it is: a panel, an end of a panel, a stop in its set-up, a bit in its stroke, a joint. */
  readonly of: string;
}

/** Steps to the micrometre in which figures are given, so that joints that are alike have the same wherever they stand. */
const STEPS = 10_000;
const inSteps = (micrometres: number): number => Math.round(micrometres * STEPS) / STEPS;

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

/** One of several readings that are taken of a measured value. */
export interface Reading<Value> {
  /** What of the value it depends on: see `Gauge.changed`. */
  readonly parts: readonly number[];
  readonly read: (value: Value) => number;
}

/** How a figure is read off a measured value: it is the greatest of several readings. */
export interface Gauge<Value> {
  /** Readings count whichever sign they have; else those below 0 do not. */
  readonly isEitherWay: boolean;
  /** The figure of one value by itself, never below 0. */
  readonly greatest: (value: Value) => number;
  readonly readings: (value: Value) => Iterable<Reading<Value>>;
  /** The parts, numbered from 0, in which two values differ. */
  readonly changed: (a: Value, b: Value) => readonly number[];
}

/** The gauge of a value that is a list of readings, each a part of its own. */
export function listGauge(isEitherWay: boolean): Gauge<readonly number[]> {
  return {
    isEitherWay,
    greatest: (list) => list.reduce((most, one) => Math.max(most, isEitherWay ? Math.abs(one) : one), 0),
    readings: (list) => list.map((_, i) => ({ parts: [i], read: (of) => of[i]! })),
    changed: (a, b) => indicesWhere(a.length, (i) => a[i] !== b[i]),
  };
}

/** Numbers below `count` for which something holds; this is asked so often that no list is made of the others. */
export function indicesWhere(count: number, holds: (index: number) => boolean): readonly number[] {
  const found: number[] = [];
  for (let i = 0; i < count; i += 1) if (holds(i)) found.push(i);
  return found;
}

/** The model run with one variable at its bounds. */
interface Run<Value> {
  readonly variable: Variable;
  readonly up: Value;
  readonly down: Value;
}

/**
 * How figures spread when every variable strays within its bound. The model is run with one variable after the other at
 * both of its bounds, all else nominal: nobody writes a sensitivity by hand. What two variables do only together (a product
 * of two strays) is left out; in a box that is under a micrometre.
 * @param model The same number of readings whatever strays.
 */
export function spread<Values extends object>(
  gauges: { readonly [Name in keyof Values]: Gauge<Values[Name]> },
  model: Probe<Readonly<Values>>,
): { readonly [Name in keyof Values]: Figure } {
  const all = [...model.variables].map((variable) => ({
    variable,
    up: model.at(variable, 'up'),
    down: model.at(variable, 'down'),
  }));
  const figure = (name: keyof Values): Figure =>
    figureOf(
      gauges[name],
      model.asDrawn[name],
      all.map(({ variable, up, down }) => ({ variable, up: up[name], down: down[name] })),
    );
  const names = Object.keys(gauges) as (keyof Values)[];
  return Object.fromEntries(names.map((name) => [name, figure(name)])) as Record<keyof Values, Figure>;
}

/**
 * Most variables (the wander of a bit) change one part of a value only, so that a reading has to be tried with those of its
 * own parts and the few that change several: to try all of them at every reading would take a minute for 50 dowels.
 */
function figureOf<Value>(gauge: Gauge<Value>, nominal: Value, all: readonly Run<Value>[]): Figure {
  const common: Run<Value>[] = [];
  const own = new Map<number, Run<Value>[]>();
  for (const run of all) {
    const [up, down] = [gauge.changed(nominal, run.up), gauge.changed(nominal, run.down)];
    const part = up[0] ?? down[0];
    if (part === undefined) continue;
    if (up.length > 1 || down.length > 1 || (down[0] ?? part) !== part) common.push(run);
    else {
      const others = own.get(part);
      if (others === undefined) own.set(part, [run]);
      else others.push(run);
    }
  }
  const ways = (gauge.isEitherWay ? [1, -1] : [1]).map((way) => new Greatest<Value>(way));
  for (const reading of gauge.readings(nominal)) {
    const asDrawn = reading.read(nominal);
    for (const one of ways) one.begin(asDrawn);
    const add = ({ up, down }: Run<Value>): void => {
      const [raised, lowered] = [reading.read(up) - asDrawn, reading.read(down) - asDrawn];
      for (const one of ways) one.add(raised, lowered);
    };
    common.forEach(add);
    for (const part of reading.parts) own.get(part)?.forEach(add);
    for (const one of ways) one.end(reading);
  }
  const greatest = ways.reduce((a, b) => (b.worst > a.worst ? b : a));
  const causes = all.flatMap((run): Cause[] => {
    const rise = greatest.riseOf(run, nominal);
    return rise > 0 ? [{ kind: run.variable.kind, of: run.variable.of, rise }] : [];
  });
  return {
    worst: greatest.worst,
    rootSumSquare: Math.max(...ways.map((one) => one.rootSumSquare)),
    causes: causes.sort((a, b) => b.rise - a.rise),
  };
}

/** The greatest of the readings that is met, seen in one way: how far all variables together can push it up. */
class Greatest<Value> {
  worst = 0;
  rootSumSquare = 0;
  readonly #way: number;
  #reading: Reading<Value> | null = null;
  #drawn = 0;
  #sum = 0;
  #squares = 0;

  constructor(way: number) {
    this.#way = way;
  }

  begin(asDrawn: number): void {
    this.#drawn = this.#way * asDrawn;
    this.#sum = 0;
    this.#squares = 0;
  }

  /** By how much one variable changes the reading at its bounds. */
  add(raised: number, lowered: number): void {
    const rise = Math.max(0, this.#way * raised, this.#way * lowered);
    this.#sum += rise;
    this.#squares += rise * rise;
  }

  end(reading: Reading<Value>): void {
    this.rootSumSquare = Math.max(this.rootSumSquare, inSteps(this.#drawn + Math.sqrt(this.#squares)));
    const worst = inSteps(this.#drawn + this.#sum);
    if (worst <= this.worst) return;
    this.worst = worst;
    this.#reading = reading;
  }

  /** How far one variable can push the greatest reading up. */
  riseOf({ up, down }: Run<Value>, nominal: Value): number {
    if (this.#reading === null) return 0;
    const { read } = this.#reading;
    return inSteps(Math.max(0, this.#way * (read(up) - read(nominal)), this.#way * (read(down) - read(nominal))));
  }
}
