import { areaCutOff } from '../carcass/footprint.js';
import type { Carcass, Panel } from '../carcass/model.js';
import type { CarcassSpec } from '../carcass/spec.js';
import { MICROMETRES_PER_MM, type Micrometres } from '../length/units.js';
import type { Board, Habits } from '../shop/model.js';
import { densityOf, modulusOf, usualModulus } from './boards.js';
import { evenLoadSag, middleLoadSag, stiffnessOf } from './beam.js';
import { heldAtBackSag } from './plate.js';

/** Standard acceleration of gravity, m/s² (ISO 80000-3). */
const GRAVITY = 9.80665;
/** ANSI/KCMA A161.1: 15 lb/sq ft, in kg/m². */
const PER_SQUARE_METRE = 73.2;
/** 40 lb a running foot, in kg/m (common practice). */
const BOOKS_PER_METRE = 59.5;

/** What a shelf has to carry, in kilograms. */
export interface ShelfLoad {
  /** Its own weight. */
  readonly own: number;
  /** Spread evenly, without its own weight. */
  readonly spread: number;
  readonly middle: number;
}

/** How far a shelf sags at the middle of its front edge. */
export interface Sag {
  readonly panel: Panel;
  readonly load: ShelfLoad;
  /** In years: the first sag times the creep factor. */
  readonly sag: Micrometres;
  readonly limit: Micrometres;
}

/** Whether the job says of a carcass what stands in it. */
export function isLoaded({ load }: CarcassSpec): boolean {
  return (load.onShelf?.value ?? 0) > 0 || (load.atMiddle?.value ?? 0) > 0 || load.standard.value !== 'none';
}

/** The panels that things stand on. */
export function shelvesOf({ panels }: Carcass): readonly Panel[] {
  return panels.filter(({ role }) => role === 'bottom' || role === 'fixed-shelf' || role === 'loose-shelf');
}

/** The shelves of a carcass and its bottom with what they sag. */
export function sagsOf(spec: CarcassSpec, carcass: Carcass, habits: Habits): readonly Sag[] {
  return shelvesOf(carcass).map((panel) => sagOf(spec, carcass, panel, panel.board, habits));
}

/**
 * What a shelf would sag of another board. It is reckoned as long as it is between its ends, which the supports shorten a little; of
 * a bottom that dividers tie to the top, its longest part between two of them, which carries its share of the load. One across a
 * corner is reckoned as a strip from end to end of its longer wall and no deeper than a wing, though what lies in the corner and at the
 * other side carries it too: it sags less.
 */
export function sagOf(spec: CarcassSpec, carcass: Carcass, panel: Panel, board: Board, habits: Habits): Sag {
  const { ends, back, lipping } = spec.load;
  const length = spanOf(carcass, panel);
  const [span, depth, thickness] = [length, depthOf(panel), board.thickness].map((one) => one / MICROMETRES_PER_MM);
  const load = loadOn(spec, panel, board);
  const spread = ((load.own + load.spread) * GRAVITY * length) / longSideOf(panel);
  const layers = [{ width: depth!, height: thickness!, down: 0, modulus: modulusOf(board) }];
  if (lipping !== null) {
    const height = lipping.value / MICROMETRES_PER_MM;
    layers.push({ width: thickness!, height, down: 0, modulus: usualModulus('solid-wood', height) });
  }
  const stiffness = stiffnessOf(layers);
  const asBeam = evenLoadSag(spread / span!, span!, stiffness, ends.value);
  const held = heldAtBackSag(spread / (span! * depth!), span!, depth!, thickness!, modulusOf(board));
  const even = back.value === 'held' ? Math.min(asBeam, held) : asBeam;
  const first = even + middleLoadSag(load.middle * GRAVITY, span!, stiffness, ends.value);
  return {
    panel,
    load,
    sag: Math.round(first * habits.creepFactor * MICROMETRES_PER_MM),
    limit: Math.round((habits.sagLimit * span!) / 1000),
  };
}

/** Between the ends of a shelf, or between dividers on a bottom. */
function spanOf({ bays }: Carcass, panel: Panel): Micrometres {
  if (panel.role !== 'bottom' || bays.length < 2) return longSideOf(panel);
  return Math.max(...bays.map(({ from, to }) => to - from));
}

/** How long the strip is that a shelf is reckoned as, and how deep. */
const longSideOf = ({ length, width, corner }: Panel): Micrometres =>
  corner === undefined ? length : Math.max(length, width);
const depthOf = ({ length, width, corner }: Panel): Micrometres =>
  corner === undefined ? width : Math.min(width - corner.u, length - corner.v);

function loadOn({ load }: CarcassSpec, panel: Panel, board: Board): ShelfLoad {
  const { length, width } = panel;
  const area = (length * width - areaCutOff(panel)) / 1e12;
  const long = longSideOf(panel) / 1e6;
  const named = { none: 0, books: BOOKS_PER_METRE * long, 'a161-1': PER_SQUARE_METRE * area };
  return {
    own: area * (board.thickness / 1e6) * densityOf(board),
    spread: (load.onShelf?.value ?? 0) + named[load.standard.value],
    middle: load.atMiddle?.value ?? 0,
  };
}

/** What stands in a carcass altogether, in kilograms, without its own weight. */
export function loadIn(spec: CarcassSpec, carcass: Carcass): number {
  return shelvesOf(carcass).reduce((sum, panel) => {
    const { spread, middle } = loadOn(spec, panel, panel.board);
    return sum + spread + middle;
  }, 0);
}
