import type { Bore } from '../boring/model.js';
import { handsSaid } from '../carcass/hands.js';
import { sawnAt } from '../carcass/footprint.js';
import type { CornerCut, Panel, Point3 } from '../carcass/model.js';
import type { CarcassAnalysis, JobAnalysis } from '../engine.js';
import { panelList } from '../papers/panel-list/paper.js';
import { asText } from '../papers/render/text.js';
import type { Answer } from './answer.js';
import { mm } from './mm.js';

/** The panels of a job with their sizes and bores. As data, carcasses that cannot be worked out are left out. */
export function panelsOf({ carcasses, reader }: JobAnalysis): Answer {
  return {
    inWords: () => asText(panelList(carcasses, reader)),
    asData: () => ({ carcasses: carcasses.flatMap(carcassData) }),
  };
}

/** The names of the carcasses that cannot be worked out. */
export function unbuiltOf({ carcasses }: JobAnalysis): readonly string[] {
  return carcasses.filter(({ carcass }) => carcass === null).map(({ name }) => name);
}

function carcassData({ name, spec, carcass, boring }: CarcassAnalysis): readonly object[] {
  if (spec === null || carcass === null || boring === null) return [];
  const [hand] = handsSaid(spec.diagonal);
  return [
    {
      name,
      kind: spec.kind.value,
      width: mm(spec.width.value),
      height: mm(spec.height.value),
      depth: mm(spec.depth.value),
      // How far it reaches along the other wall of a corner, by the hand at whose back that is.
      ...(hand === undefined ? {} : { diagonal: { [hand]: mm(spec.diagonal[hand]!.value) } }),
      ...(spec.note === '' ? {} : { note: spec.note }),
      panels: carcass.panels.map((panel) => panelData(panel, boring.bores)),
    },
  ];
}

function panelData(panel: Panel, bores: readonly Bore[]): object {
  const { origin, u, v, t } = panel.pose;
  const bands = Object.entries(panel.bands).flatMap(([edge, band]) => (band === null ? [] : [[edge, band.name]]));
  return {
    name: panel.key,
    role: panel.role,
    length: mm(panel.length),
    width: mm(panel.width),
    thickness: mm(panel.thickness),
    cutLength: mm(panel.cutLength),
    cutWidth: mm(panel.cutWidth),
    board: panel.board.name,
    bands: Object.fromEntries(bands) as Record<string, string>,
    ...(panel.corner === undefined ? {} : { corner: cornerData(panel.corner) }),
    grooves: panel.grooves.map(({ from, to, depth }) => ({ from: mm(from), to: mm(to), depth: mm(depth) })),
    // Where u = v = t = 0 stands in the carcass, and which way each runs; t from the outside face to the inside one.
    pose: { origin: pointData(origin), u, v, t },
    bores: bores.filter((bore) => bore.panel === panel.key).map(boreData),
  };
}

/** The corner that is sawn off once the panel is bored: the legs of the finished edge, and of the saw cut. */
function cornerData(corner: CornerCut): object {
  const { end, u, v, band } = corner;
  const sawn = sawnAt(corner);
  return { end, u: mm(u), v: mm(v), sawn: { u: mm(sawn.u), v: mm(sawn.v) }, ...(band && { band: band.name }) };
}

function pointData({ x, y, z }: Point3): object {
  return { x: mm(x), y: mm(y), z: mm(z) };
}

function boreData({ id, face, u, v, diameter, depth, through, purpose, group, fitting }: Bore): object {
  return { id, face, u: mm(u), v: mm(v), diameter: mm(diameter), depth: mm(depth), through, purpose, group, fitting };
}
