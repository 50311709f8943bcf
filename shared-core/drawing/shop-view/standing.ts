import type { Path } from '../../document/place.js';
import type { Micrometres } from '../../length/units.js';
import { mm } from '../scene/scale.js';
import type { CupBorer, Hand, HorizontalHead, LineDrill, Machine, VerticalHead } from '../../shop/model.js';

/** A machine that bores, and so has a table with stops. */
export type BoringMachine = VerticalHead | HorizontalHead | LineDrill | CupBorer;

export const isBoring = (machine: Machine): machine is BoringMachine =>
  machine.kind === 'vertical' || machine.kind === 'horizontal' || machine.kind === 'line' || machine.kind === 'cup';

/** From the least to the greatest. */
export interface Span {
  readonly min: Micrometres;
  readonly max: Micrometres;
}

/** A line of spindles: where each stands along X, and how far the first is from the fence at least and at most. */
export interface StandingHead {
  readonly key: string;
  readonly spindles: readonly { readonly x: number; readonly beyondFirst: number }[];
  readonly fromFence: Span;
  /** Keys of the shop file, from the machine, that say where it stands. */
  readonly path: Path;
}

/** A stop and where its face can be set, in millimetres along X. */
export interface RangedStop {
  readonly name: string;
  readonly side: Hand;
  readonly range: Span;
  readonly from: number;
  readonly to: number;
  /** With the fence extension on; null where that does nothing for it. */
  readonly extended: number | null;
  readonly stands: number | null;
  readonly lowers: boolean;
}

/**
 * What stands on a machine's table by the shop file alone, before anything is set: the frame of X is that of the set-ups
 * (`machining/set-up.ts`), distances from the fence are positive on the table.
 */
export interface Standing {
  readonly machine: BoringMachine;
  /** 1 where the fence is at the far side, so that the table lies under it on the page; -1 where it is at the near side. */
  readonly down: 1 | -1;
  readonly heads: readonly StandingHead[];
  readonly stops: readonly RangedStop[];
  readonly clamps: readonly { readonly name: string; readonly x: number; readonly fromFence: number }[];
  /** The deepest place that a head reaches; null where the shop does not say. */
  readonly throat: number | null;
}

export function standing(machine: BoringMachine): Standing {
  const heads = headsOf(machine);
  return {
    machine,
    down: (machine.kind === 'vertical' || machine.kind === 'line') && machine.fence === 'near' ? -1 : 1,
    heads,
    stops: stopsOf(machine, Math.max(...heads.flatMap(({ spindles }) => spindles.map(({ x }) => x)))),
    clamps:
      machine.kind === 'cup'
        ? []
        : machine.clamps.map(({ name, along, across }) => ({ name, x: mm(along), fromFence: mm(across) })),
    throat: machine.kind === 'line' ? mm(machine.throat) : null,
  };
}

function headsOf(machine: BoringMachine): readonly StandingHead[] {
  const line = (count: number, along: number, away: number): StandingHead['spindles'] =>
    Array.from({ length: count }, (_, index) => ({ x: index * mm(along), beyondFirst: index * mm(away) }));
  switch (machine.kind) {
    case 'vertical': {
      const spindles = line(machine.spindles, 0, machine.pitch);
      return [{ key: 'head-0', spindles, fromFence: machine.fenceOffset, path: ['fence-offset'] }];
    }
    case 'horizontal': {
      const spindles = line(machine.spindles, machine.pitch, 0);
      return [{ key: 'head-0', spindles, fromFence: { min: 0, max: 0 }, path: ['height'] }];
    }
    case 'cup': {
      const spindles = line(1, 0, 0);
      return [{ key: 'head-0', spindles, fromFence: machine.distance, path: ['distance'] }];
    }
    case 'line': {
      const { setback, headDistance } = machine;
      const spindles = line(machine.spindles, machine.pitch, 0);
      return Array.from({ length: machine.heads }, (_, head) => ({
        key: `head-${head}`,
        spindles,
        fromFence: {
          min: setback.min + head * (headDistance?.min ?? 0),
          max: head === 0 || headDistance === null ? setback.max : setback.max + head * headDistance.max,
        },
        path: [head === 0 || headDistance === null ? 'setback' : 'head-distance'],
      }));
    }
  }
}

/** A left stop's face lies before the first spindle, a right one's behind the last. */
function stopsOf(machine: BoringMachine, last: number): readonly RangedStop[] {
  const widened = machine.kind === 'vertical' && machine.extension > 0 ? furthest(machine) : new Set<string>();
  const extension = machine.kind === 'vertical' ? machine.extension : 0;
  return machine.stops.map(({ name, side, range, lowers, stands }) => {
    const face = (position: Micrometres): number => (side === 'left' ? -mm(position) : last + mm(position));
    return {
      name,
      side,
      range,
      from: face(range.min),
      to: face(range.max),
      extended: widened.has(name) ? face(range.max + extension) : null,
      stands: stands === null ? null : face(stands),
      lowers,
    };
  });
}

/** The stop of each hand that reaches furthest. */
function furthest({ stops }: VerticalHead): ReadonlySet<string> {
  return new Set(
    (['left', 'right'] as const).flatMap((side) => {
      const own = stops.filter((stop) => stop.side === side);
      const most = Math.max(...own.map(({ range }) => range.max));
      const last = own.findLast(({ range }) => range.max === most);
      return last === undefined ? [] : [last.name];
    }),
  );
}
