import type { Surface } from '../../boring/model.js';
import type { Blank, SetStop, SetUp, Step } from '../set-up.js';
import { directionInPanel, push, toPanel, type Lie } from './lie.js';
import { endAt, realSolid, surfaceEntered, type Solid, type SolidNames } from './solid.js';
import type { Stray } from './stray.js';
import { bitDown, contacts, type Bit, type SettingNames, type Spindle } from './table.js';
import type { Rotation } from './vector.js';

/** A hole in a panel, in the panel's frame as bores are written: see `Bore`. Whole micrometres where nothing strays. */
export interface Hole {
  readonly face: Surface;
  readonly u: number;
  readonly v: number;
  readonly diameter: number;
  readonly depth: number;
  readonly through: boolean;
}

/** One stroke that can be carried out, with the turn that its panel makes to lie there. */
export interface Stroke {
  readonly setUp: SetUp;
  readonly step: Step;
  readonly stop: SetStop;
  readonly blank: Blank;
  readonly panel: string;
  /** Which of the panel's steps in this set-up, from 0. */
  readonly index: number;
  readonly rotation: Rotation;
  readonly spindles: readonly Spindle[];
  /** What is called how among the strays. */
  readonly names: { readonly solid: SolidNames; readonly setting: SettingNames };
}

/** A stroke with the holes that it makes in a panel as drawn, one a spindle; some may be beside the panel. */
export interface NominalStroke extends Stroke {
  readonly holes: readonly Hole[];
}

/** A bit's path as it lies in the wood of a real panel. */
function holeOf(solid: Solid, lie: Lie, bit: Bit, diameter: number, through: boolean): Hole {
  const [u, v, t] = toPanel(solid.hand, lie, bit.tip);
  const face = surfaceEntered(directionInPanel(solid.hand, lie, bit.direction));
  switch (face) {
    case 'outside':
      return { face, u, v, diameter, depth: through ? solid.thickness : t, through };
    case 'inside':
      return { face, u, v, diameter, depth: through ? solid.thickness : solid.thickness - t, through };
    case 'reference-end':
      return { face, u, v: t, diameter, depth: v - endAt(solid, face, u), through };
    case 'far-end':
      return { face, u, v: t, diameter, depth: endAt(solid, face, u) - v, through };
  }
}

/** How a panel lies on the table for a stroke, pushed home and moved along. */
export function lieOf({ setUp, step, stop, rotation, names }: Stroke, solid: Solid, stray: Stray): Lie {
  return push(solid, rotation, contacts(setUp, step, stop, names.setting, stray), step.edge, step.moved);
}

/**
 * Lowers the loaded spindles of a stroke into the panel that really came. The nominal replay is this with nothing straying;
 * everything is then a sum of whole numbers, and exact.
 * @returns One hole a spindle, in the order of `spindles`.
 */
export function bore(stroke: Stroke, stray: Stray, spindles: readonly Spindle[] = stroke.spindles): Hole[] {
  const { setUp, blank, names } = stroke;
  const solid = realSolid(blank, names.solid, stray);
  const lie = lieOf(stroke, solid, stray);
  return spindles.map((loaded) =>
    holeOf(solid, lie, bitDown(setUp, blank, loaded, names.setting, stray), loaded.diameter, setUp.through),
  );
}
