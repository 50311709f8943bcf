import { isFace } from '../boring/surface.js';
import type { Panel } from '../carcass/model.js';
import { blankOf } from '../machining/blank.js';
import { bore, type Hole } from '../machining/replay/bore.js';
import { isBeside } from '../machining/replay/check-step.js';
import { strokesOf } from '../machining/replay/replay.js';
import { endAt, realSolid, solidNames } from '../machining/replay/solid.js';
import { boundOf, NOTHING, type Stray } from '../machining/replay/stray.js';
import type { SetUp } from '../machining/set-up.js';
import type { Tolerances } from '../shop/model.js';
import { probing } from './spread.js';

/** How a hole is measured on a panel: as bores are written, but from the end that the panel really has. Micrometres. */
type Measure = 'u' | 'v' | 'depth';

/** A hole as drawn, and how far each of its measures may be off when everything strays at once as far as the shop allows. */
export interface BoredWithin {
  readonly hole: Hole;
  readonly within: Readonly<Record<Measure, number>>;
}

/**
 * The holes that one set-up makes in a panel, each with the worst that the replay makes of it with a panel, stops and bits that
 * stray. Depth stops are taken to hold, as the shop gives no bound for them. Null where the set-up cannot be carried out.
 */
export function boredWithin(
  setUp: SetUp,
  carcass: string,
  panel: Panel,
  tolerances: Tolerances,
): readonly BoredWithin[] | null {
  const blank = blankOf(panel);
  const read = strokesOf([setUp], carcass, panel.key, blank);
  if (!read.ok) return null;
  const names = solidNames(panel.key);
  const probe = probing((kind) => boundOf(tolerances, kind));
  return read.strokes.flatMap((stroke) => {
    const made = probe([], (stray: Stray) => {
      const solid = realSolid(blank, names, stray);
      return bore(stroke, stray).map(({ face, u, v, depth }): Record<Measure, number> => ({
        u,
        v: isFace(face) ? v - endAt(solid, 'reference-end', u) : v,
        depth,
      }));
    });
    const drawnSolid = realSolid(blank, names, NOTHING);
    return stroke.holes.flatMap((hole, index): readonly BoredWithin[] => {
      if (isBeside(drawnSolid, hole)) return [];
      const worst = (measure: Measure): number => {
        const drawn = made.asDrawn[index]![measure];
        let sum = 0;
        for (const variable of made.variables) {
          const off = (bound: 'up' | 'down'): number => Math.abs(made.at(variable, bound)[index]![measure] - drawn);
          sum += Math.max(off('up'), off('down'));
        }
        return sum;
      };
      return [{ hole, within: { u: worst('u'), v: worst('v'), depth: worst('depth') } }];
    });
  });
}
