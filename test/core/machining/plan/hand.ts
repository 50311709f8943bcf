import { blankOf } from '../../../../shared-core/machining/blank.js';
import { replayPanel } from '../../../../shared-core/machining/replay/replay.js';
import type { Blank, SetStop, SetUp } from '../../../../shared-core/machining/set-up.js';
import type { Changeover } from '../../../../shared-core/shop/model.js';
import type { Bored } from './jobs.js';

/** How a hand has left one machine: the set-up that was run last on it, and what stands there. */
interface Left {
  readonly setUp: SetUp;
  readonly stops: ReadonlyMap<string, SetStop>;
  readonly fence: readonly number[];
}

/** How all machines stand, and at which the hand is. */
export interface Shopfloor {
  readonly at: string | null;
  readonly left: ReadonlyMap<string, Left>;
}

/** What is done to come to one set-up. */
export interface Done {
  readonly stops: readonly string[];
  readonly fences: readonly number[];
  readonly seconds: number;
}

/** Nothing is run yet, and the hand is at no machine. */
export const MORNING: Shopfloor = { at: null, left: new Map() };

/**
 * What a hand does on the machines of a job, simulated stop by stop; what may stay is asked of the replay, and of nothing else.
 * A machine that is gone away from stands, as one comes back, as it was left.
 */
export class Hand {
  readonly #blanks = new Map<string, Blank>();
  /** By the runs of a set-up, which keep their identity when a plan letters it anew. */
  readonly #asked = new WeakMap<SetUp['runs'], Map<string, boolean>>();
  readonly #times: Changeover;

  constructor(carcasses: readonly Bored[], times: Changeover) {
    this.#times = times;
    for (const { spec, carcass } of carcasses) {
      for (const panel of carcass.panels) this.#blanks.set(`${spec.name.value}\n${panel.key}`, blankOf(panel));
    }
  }

  /** For each set-up of an order the stops and heads that have to be set, and the seconds in all. */
  run(order: readonly SetUp[]): { readonly set: readonly Done[]; readonly seconds: number } {
    let floor = MORNING;
    const set = order.map((setUp) => {
      const next = this.comesTo(floor, setUp);
      floor = next.floor;
      return next.done;
    });
    return { set, seconds: set.reduce((sum, one) => sum + one.seconds, 0) };
  }

  /** What is done to come to a set-up, and how the machines stand once it is run. */
  comesTo({ at, left }: Shopfloor, setUp: SetUp): { readonly floor: Shopfloor; readonly done: Done } {
    const { machine } = setUp;
    const before = left.get(machine.body) ?? null;
    const turned = before !== null && before.setUp.machine.name !== machine.name;
    // What the shop file says of the machine holds as the operator comes to it first.
    const stands = { fence: null, height: null, thickness: null, depth: null, ...machine.stands };
    const had = before === null ? bitsIn(machine) : bitsOf(before.setUp);
    const stood = turned ? null : before;
    const stops = new Map(stood?.stops ?? (before === null ? stopsIn(machine) : []));
    const fence = stood?.fence ?? (before === null ? (stands.fence ?? []) : []);
    const moved = setUp.stops.filter(({ name, position }) => stops.get(name)?.position !== position);
    const heads = setUp.fence.flatMap((place, head) => (fence[head] === place ? [] : [head]));
    const wanted = bitsOf(setUp);
    const bits = [...new Set([...had.keys(), ...wanted.keys()])]
      // Spindles that only the head turned away from has are left alone.
      .filter((place) => had.get(place) !== wanted.get(place) && hasSpindle(machine, place))
      .reduce((sum, place) => sum + Number(had.has(place)) + Number(wanted.has(place)), 0);
    const standing = { depth: stands.depth ?? NaN, through: false, thickness: stands.thickness };
    const deep = before === null ? standing : stood?.setUp;
    const height = before === null ? stands.height : stood?.setUp.height;
    const times = this.#times;
    const seconds =
      (at === machine.body ? 0 : times.machine) +
      (turned ? times.turnHead : 0) +
      moved.length * times.stop +
      (heads.length + Number(setUp.height !== null && setUp.height !== height)) * times.fence +
      bits * times.bit +
      (deep !== undefined && deepness(deep) === deepness(setUp) ? 0 : times.depth) +
      (setUp.extension === (stood?.setUp.extension ?? false) ? 0 : times.extension);
    // What is not named stays where the set-up could be run with it standing there too.
    for (const [name, stop] of stops) {
      if (setUp.stops.some((one) => one.name === name)) continue;
      if (!this.#runsAsWell(setUp, { ...setUp, stops: [...setUp.stops, stop] })) stops.delete(name);
    }
    for (const stop of setUp.stops) stops.set(stop.name, stop);
    let standingHeads = [...setUp.fence];
    for (const place of fence.slice(standingHeads.length)) {
      const more = [...standingHeads, place];
      if (!this.#runsAsWell(setUp, { ...setUp, fence: more })) break;
      standingHeads = more;
    }
    return {
      floor: { at: machine.body, left: new Map(left).set(machine.body, { setUp, stops, fence: standingHeads }) },
      done: { stops: moved.map(({ name }) => name), fences: heads, seconds },
    };
  }

  /** Whether the replay has nothing against the other that it has not against the one. */
  #runsAsWell(one: SetUp, other: SetUp): boolean {
    const asked = this.#asked.get(one.runs) ?? new Map<string, boolean>();
    this.#asked.set(one.runs, asked);
    const key = JSON.stringify([other.stops, other.fence]);
    const known = asked.get(key);
    if (known !== undefined) return known;
    const says = (setUp: SetUp): string =>
      JSON.stringify(
        setUp.runs.map(({ carcass, panel }) => {
          const replay = replayPanel([setUp], carcass, panel, this.#blanks.get(`${carcass}\n${panel}`)!);
          return replay.ok ? [] : replay.problems;
        }),
      );
    const answer = says(one) === says(other);
    asked.set(key, answer);
    return answer;
  }
}

const deepness = (one: Pick<SetUp, 'depth' | 'through' | 'thickness'>): string =>
  `${one.depth} ${one.through} ${one.thickness}`;

const spindlesOf = (machine: SetUp['machine']): number => (machine.kind === 'cup' ? 1 : machine.spindles);

const headsOf = (machine: SetUp['machine']): number => (machine.kind === 'line' ? machine.heads : 1);

function hasSpindle(machine: SetUp['machine'], place: string): boolean {
  const [head, spindle] = place.split('/').map(Number);
  return head! < headsOf(machine) && spindle! < spindlesOf(machine);
}

function bitsOf(setUp: SetUp): Map<string, number> {
  const [step] = setUp.runs[0]!.steps;
  return new Map(step!.spindles.map(({ head, spindle, diameter }) => [`${head}/${spindle}`, diameter]));
}

/** The stops that stand at a machine between jobs. */
const stopsIn = (machine: SetUp['machine']): [string, SetStop][] =>
  machine.stops.flatMap(({ name, side, stands }) =>
    stands === null ? [] : [[name, { name, side, position: stands }]],
  );

/** The bits that stay in a machine between jobs. */
function bitsIn(machine: SetUp['machine']): Map<string, number> {
  const { bit, spindles } = machine.stands ?? { bit: null, spindles: null };
  const all = Array.from({ length: headsOf(machine) }, (_, head) =>
    Array.from({ length: spindlesOf(machine) }, (_one, spindle) => [head, spindle] as const),
  );
  const loaded = all
    .flat()
    .filter(([, spindle]) => spindles === null || spindles.length === 0 || spindles.includes(spindle + 1));
  return new Map(bit === null ? [] : loaded.map(([head, spindle]) => [`${head}/${spindle}`, bit]));
}
