import { boredHoles } from '../../boring/rows.js';
import { isFace } from '../../boring/surface.js';
import { isRow } from '../../fittings/purposes.js';
import type { Bore } from '../../boring/model.js';
import type { Panel } from '../../carcass/model.js';
import { inOneNotation, nominalFigure } from '../../length/show.js';
import type { Reader } from '../../length/reader.js';
import type { Micrometres } from '../../length/units.js';
import { runningDimension, spanDimension, type Feature, type Lane } from '../scene/dimensions.js';
import type { Drawn } from '../drawn.js';
import { ascending } from './hole-table.js';
import { shownEnds } from './panel-shapes.js';
import type { Pen } from '../scene/pen.js';
import { mm } from '../scene/scale.js';
import type { PanelView } from './panel-view.js';

/** What is dimensioned, and with what. */
interface Work {
  readonly pen: Pen;
  readonly view: PanelView;
  readonly bores: readonly Bore[];
  readonly reader: Reader;
  readonly write: (length: Micrometres) => string;
  /** The axes of the page along which u and v run. */
  readonly uAxis: Lane['axis'];
  readonly vAxis: Lane['axis'];
}

/**
 * Running dimensions: u from the front edge beyond the reference end, v from the reference end beyond the back edge, the
 * places across the thickness beside the end views. Rows by their pitch; overall sizes outermost.
 */
export function drawDimensions(pen: Pen, view: PanelView, drawn: Drawn, bores: readonly Bore[]): void {
  const { reader } = drawn;
  const { corner } = view.panel;
  const cut = corner === undefined ? [] : [corner.u, corner.v];
  const sizes = [view.panel.length, view.panel.width, ...cut, ...bores.flatMap(({ u, v }) => [u, v])];
  const write = inOneNotation(sizes, reader);
  const [uAxis, vAxis] = view.standing ? (['x', 'y'] as const) : (['y', 'x'] as const);
  const work: Work = { pen, view, bores, reader, write, uAxis, vAxis };
  alongPanel(work, distinctRows(drawn, view.panel));
  acrossPanel(work);
  acrossThickness(work);
}

const whole = (at: number, from: number, text: string): Feature => ({ at, from, text });

/** Beyond the back edge. */
function alongPanel({ pen, view, bores, reader, write, vAxis }: Work, rows: readonly RowRun[]): void {
  const { panel } = view;
  const name = panel.key;
  const back = -view.frontward as 1 | -1;
  const backEdge = view.alongU(view.width) + back * pen.paper(1);
  const onFaces = bores.filter(({ face }) => isFace(face));
  const rowEnds = rows.flatMap(({ offset, pitch, count }) => [offset, offset + (count - 1) * pitch]);
  const { corner } = panel;
  const cut = corner === undefined ? [] : [corner.end === 'reference-end' ? corner.v : panel.length - corner.v];
  const vs = ascending([...onFaces.filter((bore) => !isRow(bore)).map(({ v }) => v), ...rowEnds, ...cut]);
  const feature = (v: Micrometres): Feature => ({ at: view.alongV(mm(v)), text: write(v), from: backEdge });
  let line = backEdge + back * pen.paper(6);
  rows.forEach(({ offset, pitch, count }) => {
    if (count < 2) return;
    const last = offset + (count - 1) * pitch;
    const lane: Lane = { axis: vAxis, line, out: back };
    const text = `${count - 1} × ${nominalFigure(pitch, reader)} = ${write((count - 1) * pitch)}`;
    spanDimension(
      pen,
      `${name}:row-${offset}-${pitch}-${count}`,
      lane,
      feature(offset),
      feature(last),
      text,
      vs.map((v) => view.alongV(mm(v))),
    );
    line += back * pen.paper(6);
  });
  if (vs.length > 0) {
    const lane: Lane = { axis: vAxis, line, out: back };
    const origin: Feature = { at: view.alongV(0), text: '0', from: backEdge };
    line += back * runningDimension(pen, `${name}:v`, lane, origin, vs.map(feature), view.alongV(view.length));
    line += back * pen.paper(4.5);
  }
  spanDimension(
    pen,
    `${name}:length`,
    { axis: vAxis, line, out: back },
    whole(view.alongV(0), backEdge, 'from'),
    whole(view.alongV(view.length), backEdge, 'to'),
    write(panel.length),
  );
}

/** Figures beyond the reference end, the overall width beyond the far end. */
function acrossPanel({ pen, view, bores, write, uAxis }: Work): void {
  const { panel } = view;
  const name = panel.key;
  const ends = shownEnds(bores);
  const beyond = (end: 'reference-end' | 'far-end'): { edge: number; out: 1 | -1 } => {
    const out = (end === 'reference-end' ? view.referenceward : -view.referenceward) as 1 | -1;
    const face = view.alongV(end === 'reference-end' ? 0 : view.length);
    const fold = ends.includes(end) ? view.alongEnd(end, view.seen === 'inside' ? 0 : view.thickness) : face;
    return { edge: fold + out * pen.paper(1), out };
  };
  const cut = panel.corner === undefined ? [] : [panel.corner.u];
  const grooves = panel.grooves.flatMap(({ from, to }) => [from, to]);
  const us = ascending([...bores.map(({ u }) => u), ...grooves, ...cut]).filter((u) => u > 0 && u < panel.width);
  const reference = beyond('reference-end');
  const at = (u: Micrometres): Feature => ({ at: view.alongU(mm(u)), text: write(u), from: reference.edge });
  if (us.length > 0) {
    const lane: Lane = { axis: uAxis, line: reference.edge + reference.out * pen.paper(5), out: reference.out };
    runningDimension(pen, `${name}:u`, lane, { at: view.alongU(0), text: '0', from: reference.edge }, us.map(at));
  }
  const far = beyond('far-end');
  spanDimension(
    pen,
    `${name}:width`,
    { axis: uAxis, line: far.edge + far.out * pen.paper(far.out > 0 ? 8 : 5.5), out: far.out },
    whole(view.alongU(0), far.edge, 'from'),
    whole(view.alongU(view.width), far.edge, 'to'),
    write(panel.width),
  );
}

/** Beside the end views, before the front edge. */
function acrossThickness({ pen, view, bores, write, vAxis }: Work): void {
  const { panel } = view;
  const name = panel.key;
  for (const end of shownEnds(bores)) {
    const across = ascending([...bores.filter(({ face }) => face === end).map(({ v }) => v), panel.thickness]);
    const from = view.alongU(0) + view.frontward * pen.paper(1);
    const lane: Lane = { axis: vAxis, line: from + view.frontward * pen.paper(4), out: view.frontward };
    const place = (v: Micrometres): Feature => ({ at: view.alongEnd(end, mm(v)), text: write(v), from });
    runningDimension(pen, `${name}:${end}`, lane, { ...place(0), text: '0' }, across.map(place));
  }
}

/** Holes along a panel: from the reference end to the first, and how they go on. */
interface RowRun {
  readonly offset: Micrometres;
  readonly pitch: Micrometres;
  readonly count: number;
}

/** The rows of a panel, those with the same places along it once. */
function distinctRows(drawn: Drawn, panel: Panel): readonly RowRun[] {
  const rows = new Map<string, RowRun>();
  for (const row of drawn.boring.rows) {
    if (row.panel !== panel.key) continue;
    const holes = boredHoles(row);
    const [first, last] = [holes[0]!, holes.at(-1)!];
    const [offset, count] = [row.offset + first * row.pitch, last - first + 1];
    rows.set(`${offset}|${row.pitch}|${count}`, { offset, pitch: row.pitch, count });
  }
  return [...rows.values()].sort((a, b) => a.offset - b.offset || a.pitch - b.pitch || a.count - b.count);
}
