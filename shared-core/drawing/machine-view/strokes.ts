import type { Bore, BoreMap } from '../../boring/model.js';
import type { Panel } from '../../carcass/model.js';
import { blankOf } from '../../machining/blank.js';
import { lieOf, type Hole, type NominalStroke, type Stroke } from '../../machining/replay/bore.js';
import { isBeside } from '../../machining/replay/check-step.js';
import { HoleMap } from '../../machining/replay/hole-map.js';
import { layOut, type TableLayout } from '../../machining/replay/layout.js';
import { toTable } from '../../machining/replay/lie.js';
import { strokesOf } from '../../machining/replay/replay.js';
import { realSolid, solidNames, type Solid } from '../../machining/replay/solid.js';
import { NOTHING } from '../../machining/replay/stray.js';
import type { Vector } from '../../machining/replay/vector.js';
import type { LoadedSpindle, SetUp } from '../../machining/set-up.js';
import type { HoleState } from './scene.js';

/** A bore of the panel, and whether it is there when the head comes down. */
export interface StrokeHole {
  readonly bore: Bore;
  readonly state: HoleState;
}

/** A spindle that comes down in a stroke: the bore that it makes, or null where it comes down beside the panel. */
export interface Working extends LoadedSpindle {
  readonly makes: Bore | null;
}

/** One stroke as the replay carries it out. Nothing here is taken from what the set-up claims to bore. */
export interface Acted {
  readonly stroke: Stroke;
  readonly layout: TableLayout;
  /** The stroke before it in the same set-up; null for the first. */
  readonly before: { readonly stroke: Stroke; readonly layout: TableLayout } | null;
  readonly holes: readonly StrokeHole[];
  readonly working: readonly Working[];
  /** Steps of the panel in this set-up. */
  readonly steps: number;
  /** Corner of the panel's frame to the table, micrometres: see `Solid`. */
  readonly place: (u: number, v: number, t: number) => Vector;
}

/**
 * Carries out the set-ups of a job on one panel as far as one step.
 * @param setUps all of the job, in the order to run
 * @returns null where the panel has no such step, or the replay cannot make it
 */
export function act(
  setUps: readonly SetUp[],
  setUp: string,
  carcass: string,
  panel: Panel,
  boring: BoreMap,
  step: number,
): Acted | null {
  const blank = blankOf(panel);
  const read = strokesOf(setUps, carcass, panel.key, blank);
  if (!read.ok) return null;
  const at = read.strokes.findIndex((one) => one.setUp.id === setUp && one.index === step);
  const stroke = read.strokes[at];
  if (stroke === undefined) return null;
  const solid = realSolid(blank, solidNames(panel.key), NOTHING);
  const bores = boring.bores.filter((one) => one.panel === panel.key);
  const wanted = new HoleMap(bores.map((one) => [one, one]));
  const states = new HoleMap<HoleState>([
    ...read.strokes.slice(0, at).flatMap((one) => madeBy(one, solid).map((hole) => [hole, 'made'] as const)),
    ...madeBy(stroke, solid).map((hole) => [hole, 'now'] as const),
  ]);
  const previous = step > 0 ? read.strokes[at - 1] : undefined;
  const lie = lieOf(stroke, solid, NOTHING);
  return {
    stroke,
    layout: layOut(stroke),
    before: previous === undefined ? null : { stroke: previous, layout: layOut(previous) },
    holes: bores.map((one) => ({ bore: one, state: states.get(one) ?? 'to-come' })),
    working: stroke.holes.map((hole, index) => ({
      ...stroke.step.spindles[index]!,
      makes: isBeside(solid, hole) ? null : (wanted.get(hole) ?? null),
    })),
    steps: read.strokes.filter((one) => one.setUp.id === setUp).length,
    place: (u, v, t) => toTable(blank.hand, lie, [u, v, t]),
  };
}

const madeBy = ({ holes }: NominalStroke, solid: Solid): readonly Hole[] =>
  holes.filter((hole) => !isBeside(solid, hole));
