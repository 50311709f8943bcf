import { isFace } from '../../boring/surface.js';
import { isRow } from '../../fittings/purposes.js';
import type { Bore } from '../../boring/model.js';
import { outlineOf } from '../../carcass/footprint.js';
import type { CornerCut, Panel } from '../../carcass/model.js';
import type { EdgeName } from '../../job/model.js';
import { boxOf, grow } from '../scene/boxes.js';
import { boresOf, type Drawn, type Sources } from '../drawn.js';
import { aboutBore } from '../about-bore.js';
import { ascending, type HoleGroup } from './hole-table.js';
import { drawMarks } from './finding-marks.js';
import type { Pen } from '../scene/pen.js';
import type { Mouth, Point, SceneFinding } from '../scene/scene.js';
import { mm } from '../scene/scale.js';
import type { PanelView } from './panel-view.js';

const ENDS = ['reference-end', 'far-end'] as const;

/** Outline, grooves, end views, band marks, bores with their centre lines, and finding marks: all but lettering. */
export function drawPanel(
  pen: Pen,
  view: PanelView,
  drawn: Drawn,
  groups: readonly HoleGroup[],
  findings: readonly SceneFinding[],
  sources: Sources,
): void {
  const { panel } = view;
  const source = sources.key(panel.place);
  const bores = boresOf(drawn, panel);
  const name = panel.key;
  const face = { key: `${name}:face`, class: 'panel', source } as const;
  if (panel.corner === undefined) pen.rectangle(face, 'outline', view.face, 'board');
  else drawCutFace(pen, view, panel.corner, face);
  for (const end of shownEnds(bores)) {
    pen.rectangle({ key: `${name}:${end}`, class: 'end-view', source }, 'outline', view.endBox(end), 'board');
  }
  drawGrooves(pen, view, bores);
  drawBands(pen, view);
  for (const group of groups) drawGroup(pen, view, drawn, group, sources);
  drawMarks(pen, view, bores, findings);
}

/** The face as it is in the end, and its corner as it is bored: by the line that ISO 128-2 has for outlines before forming (05.1). */
function drawCutFace(pen: Pen, view: PanelView, { end, u, v }: CornerCut, what: Parameters<Pen['path']>[0]): void {
  const points = outlineOf(view.panel).map((one) => view.at(mm(one.u), mm(one.v)));
  pen.path(what, 'outline', points, 'board');
  points.forEach((point, i) => pen.take(boxOf([point, points[(i + 1) % points.length]!], pen.paper(0.6))));
  const [at, along] = end === 'reference-end' ? [0, mm(v)] : [view.length, view.length - mm(v)];
  const off = [view.at(0, along), view.at(0, at), view.at(mm(u), at)];
  pen.path({ key: `${view.panel.key}:cut-off`, class: 'cut-off' }, 'phantom', off, 'none', false);
  for (const part of [off.slice(0, 2), off.slice(1)]) pen.take(boxOf(part, pen.paper(0.6)));
}

/** Ends are folded out where they have bores. */
export function shownEnds(bores: readonly Bore[]): readonly (typeof ENDS)[number][] {
  return ENDS.filter((end) => bores.some(({ face }) => face === end));
}

function drawGrooves(pen: Pen, view: PanelView, bores: readonly Bore[]): void {
  const { panel, seen } = view;
  panel.grooves.forEach((groove, index) => {
    const narrow = mm(groove.to - groove.from) < pen.paper(1.5);
    const line = seen === 'outside' ? 'hidden' : narrow ? 'thin' : 'fine';
    const [low, high] = [mm(groove.along?.from ?? 0), mm(groove.along?.to ?? panel.length)];
    const stopped = (['low', 'high'] as const).filter((end) => (end === 'low' ? low > 0 : high < view.length));
    for (const end of stopped) {
      const v = end === 'low' ? low : high;
      const key = `${panel.key}:groove-${index}:${end}`;
      pen.line({ key, class: 'groove' }, line, view.at(mm(groove.from), v), view.at(mm(groove.to), v));
    }
    for (const u of [groove.from, groove.to]) {
      // A rebate runs out of the edge: its far side is the outline itself.
      if (u <= 0 || u >= panel.width) continue;
      const key = `${panel.key}:groove-${index}:${u}`;
      const [a, b] = [view.at(mm(u), low), view.at(mm(u), high)];
      pen.line({ key, class: 'groove' }, line, a, b);
      pen.take(boxOf([a, b], pen.paper(0.4)));
    }
    for (const end of shownEnds(bores)) {
      if (stopped.includes(end === 'reference-end' ? 'low' : 'high')) continue;
      const at = (u: number, across: number): Point => view.onEnd(end, mm(u), mm(across));
      const floor = panel.thickness - groove.depth;
      const profile = [
        at(groove.from, panel.thickness),
        at(groove.from, floor),
        at(groove.to, floor),
        at(groove.to, panel.thickness),
      ];
      pen.path({ key: `${panel.key}:groove-${index}:${end}`, class: 'groove' }, 'fine', profile, 'paper', false);
    }
  });
}

/** A wide chain line beside each banded edge (ISO 128-2, line type 04.2: edge that is treated). */
function drawBands(pen: Pen, view: PanelView): void {
  const { panel } = view;
  const off = pen.paper(BAND_OFFSET);
  const [w, l] = [view.width, view.length];
  const edges: Readonly<Record<EdgeName, readonly [Point, Point]>> = {
    front: [view.at(-off, 0), view.at(-off, l)],
    back: [view.at(w + off, 0), view.at(w + off, l)],
    'reference-end': [view.at(0, -off), view.at(w, -off)],
    'far-end': [view.at(0, l + off), view.at(w, l + off)],
  };
  for (const edge of ['front', 'back', 'reference-end', 'far-end'] as const) {
    if (panel.bands[edge] === null) continue;
    const [a, b] = edges[edge];
    pen.line({ key: `${panel.key}:band-${edge}`, class: 'band' }, 'band', a, b);
    pen.take(boxOf([a, b], pen.paper(0.8)));
  }
  const { corner } = panel;
  if (corner === undefined || corner.band === null) return;
  // Outside of the slanting edge, in what is sawn off.
  const [cu, cv] = [mm(corner.u), mm(corner.v)];
  const [du, dv] = [(off * cv) / Math.hypot(cu, cv), (off * cu) / Math.hypot(cu, cv)];
  const along = (v: number): number => (corner.end === 'reference-end' ? v : l - v);
  pen.line(
    { key: `${panel.key}:band-cut`, class: 'band' },
    'band',
    view.at(-du, along(cv - dv)),
    view.at(cu - du, along(-dv)),
  );
}
/** Millimetres of paper from an edge to its band mark. */
const BAND_OFFSET = 1;

function drawGroup(pen: Pen, view: PanelView, drawn: Drawn, { bores, line }: HoleGroup, sources: Sources): void {
  const { panel } = view;
  const key = `${panel.key}:${line.number}`;
  drawCentreLines(pen, view, key, bores);
  for (const bore of bores) {
    const { x, y } = view.entry(bore);
    const r = mm(bore.diameter) / 2;
    const onFace = isFace(bore.face);
    pen.add({
      key: `bore:${bore.id}`,
      class: 'bore',
      kind: 'bore',
      panel: panel.key,
      source: sources.key(bore.place),
      bore: bore.id,
      group: bore.group,
      purpose: bore.purpose,
      face: bore.face,
      cx: x,
      cy: y,
      r,
      hidden: onFace && !bore.through && bore.face !== view.seen,
      mouth: mouthOf(bore, panel),
      number: line.number,
      about: aboutBore(drawn.carcass, drawn.boring, panel, bore, drawn.reader),
    });
    pen.takeSolid(grow({ x: x - r, y: y - r, width: 2 * r, height: 2 * r }, pen.paper(0.3)));
    if (!onFace) drawEndRun(pen, view, bore);
  }
}

/** Bores of ends have their v counted from the outside face. */
function mouthOf({ face, u, v }: Bore, { length, thickness }: Panel): Mouth {
  switch (face) {
    case 'inside':
      return { u, v, t: thickness };
    case 'outside':
      return { u, v, t: 0 };
    case 'reference-end':
      return { u, v: 0, t: v };
    case 'far-end':
      return { u, v: length, t: v };
  }
}

/** A bore of an end as the face shows it: hidden lines along its sides and at its bottom. */
function drawEndRun(pen: Pen, view: PanelView, bore: Bore): void {
  if (bore.face !== 'reference-end' && bore.face !== 'far-end') return;
  const r = mm(bore.diameter) / 2;
  const u = mm(bore.u);
  const mouth = bore.face === 'reference-end' ? 0 : view.length;
  const floor = bore.face === 'reference-end' ? mm(bore.depth) : view.length - mm(bore.depth);
  const points = [view.at(u - r, mouth), view.at(u - r, floor), view.at(u + r, floor), view.at(u + r, mouth)];
  pen.path({ key: `run:${bore.id}`, class: 'end-bore-run' }, 'hidden', points, 'none', false);
  pen.take(boxOf(points, pen.paper(0.3)));
}

/** One chain line through the bores that share a line, and a short one across each. */
function drawCentreLines(pen: Pen, view: PanelView, key: string, bores: readonly Bore[]): void {
  const first = bores[0]!;
  const over = (bore: Bore): number => mm(bore.diameter) / 2 + pen.paper(0.9);
  const alongU = !isFace(first.face) || !isRow(first);
  // Through all bores at one v (or, for a row, at one u).
  const shared = ascending(bores.map(({ u, v }) => (alongU ? v : u)));
  shared.forEach((common, index) => {
    const line = bores.filter(({ u, v }) => (alongU ? v : u) === common);
    const places = line.map(({ u, v }) => (alongU ? u : v));
    const reach = Math.round(over(first) * 1000);
    const [from, to] = [Math.min(...places) - reach, Math.max(...places) + reach];
    const entry = (along: number): Point =>
      view.entry(alongU ? { face: first.face, u: along, v: common } : { face: first.face, u: common, v: along });
    pen.line({ key: `${key}:centre-${index}`, class: 'centre-line' }, 'centre', entry(from), entry(to));
    if (pen.detail === 'plain' && isRow(first)) return;
    for (const bore of line) {
      const short = Math.round(over(bore) * 1000);
      const across = (by: number): Point =>
        view.entry(alongU ? { ...bore, v: bore.v + by } : { ...bore, u: bore.u + by });
      pen.line({ key: `cross:${bore.id}`, class: 'centre-line' }, 'thin', across(-short), across(short));
    }
  });
}
