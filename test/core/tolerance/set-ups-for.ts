import type { Bore, BoreMap, Surface } from '../../../shared-core/boring/model.js';
import type { Carcass, Panel } from '../../../shared-core/carcass/model.js';
import { blankOf } from '../../../shared-core/machining/blank.js';
import { replayPanel } from '../../../shared-core/machining/replay/replay.js';
import type { SetUp, Step } from '../../../shared-core/machining/set-up.js';
import type { HorizontalHead, Stop, VerticalHead } from '../../../shared-core/shop/model.js';
import { HORIZONTAL, mm, VERTICAL } from '../machining/replay/set-ups.js';

/**
 * Set-ups for the construction bores of a carcass, a set-up for each line of them, on machines that reach everything. They
 * make the right holes in nominal panels whatever they are referenced by; only a real panel tells the references apart.
 */

/** How a line of bores is referenced; what is left out is done right. */
export interface Reference {
  readonly edge?: Step['edge'];
  /** For bores in ends. */
  readonly down?: Step['down'];
  /** For bores in faces; by default the end that they are nearer to. */
  readonly end?: Step['end'];
}

const PITCH = mm(1);
const SPINDLES = 2000;
const EVERYWHERE = { min: 0, max: mm(5000) };
const stop = (name: string, side: 'left' | 'right'): Stop => ({ ...VERTICAL.stops[0]!, name, side, range: EVERYWHERE });
const STOPS = [stop('left', 'left'), stop('right', 'right')];
const upright: VerticalHead = { ...VERTICAL, pitch: PITCH, spindles: SPINDLES, fenceOffset: EVERYWHERE, stops: STOPS };
const level: HorizontalHead = { ...HORIZONTAL, pitch: PITCH, spindles: SPINDLES, height: EVERYWHERE, stops: STOPS };

function setUpOf(id: string, panel: Panel, bores: readonly Bore[], reference: Reference): SetUp {
  const { face, v, depth, through } = bores[0]!;
  const { edge = 'front' } = reference;
  const fromEdge = bores.map(({ u }) => (edge === 'front' ? u : panel.width - u));
  const first = Math.min(...fromEdge);
  const inEnd = face === 'reference-end' || face === 'far-end';
  const down = inEnd ? (reference.down ?? 'outside') : face === 'inside' ? 'outside' : 'inside';
  const end = inEnd ? face : (reference.end ?? (2 * v < panel.length ? 'reference-end' : 'far-end'));
  const fromEnd = end === 'reference-end' ? v : panel.length - v;
  const candidates = (['left', 'right'] as const).map((side): SetUp => {
    const step: Step = {
      ...{ down, edge, end, stop: side, moved: 0, holes: [] },
      spindles: bores.map(({ diameter }, i) => {
        const k = (fromEdge[i]! - first) / PITCH;
        return { head: 0, spindle: inEnd && side === 'right' ? SPINDLES - 1 - k : k, diameter };
      }),
    };
    return {
      ...{ id, machine: inEnd ? level : upright, extension: false, depth, thickness: null, through },
      fence: inEnd ? [] : [first],
      height: inEnd ? (down === 'outside' ? v : panel.thickness - v) : null,
      stops: [{ name: side, side, position: inEnd ? first : fromEnd }],
      runs: [{ carcass: 'box', panel: panel.key, pieces: 1, steps: [step] }],
    };
  });
  return candidates.find((one) => replayPanel([one], 'box', panel.key, blankOf(panel)).ok)!;
}

export function setUpsFor(
  carcass: Carcass,
  boring: BoreMap,
  reference: (panel: string, face: Surface, joint: string) => Reference = () => ({}),
): SetUp[] {
  return carcass.panels.flatMap((panel) => {
    const lines = new Map<string, Bore[]>();
    for (const bore of boring.bores) {
      if (bore.panel !== panel.key || bore.purpose === 'row' || bore.purpose === 'cam') continue;
      const key = `${panel.key} ${bore.group} ${bore.face} ${bore.purpose}`;
      lines.set(key, [...(lines.get(key) ?? []), bore]);
    }
    return [...lines].map(([id, bores]) =>
      setUpOf(id, panel, bores, reference(panel.key, bores[0]!.face, bores[0]!.group)),
    );
  });
}
