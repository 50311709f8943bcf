import { listed } from '../findings/words.js';
import { isFace } from '../boring/surface.js';
import type { Bore } from '../boring/model.js';
import type { Panel } from '../carcass/model.js';
import { figure, showLength } from '../length/show.js';
import type { Micrometres, Unit } from '../length/units.js';
import { around, boxOf, contains, grow } from './boxes.js';
import { runningDimension, spanDimension, widestRoom, type Feature, type Lane } from './dimensions.js';
import { boresOf, faceToShow, findingsFor, Sources, type Drawn } from './drawn.js';
import { ascending, holeGroups, tableHeads } from './hole-table.js';
import { textBox, textWidth } from './lettering.js';
import { placeNumbers } from './numbers.js';
import { drawPanel, shownEnds } from './panel-shapes.js';
import { Pen } from './pen.js';
import type { Box, Fact, Medium, Point, Scene, Shape, TextShape } from './scene.js';
import { mm, PanelView } from './view.js';
import { edgeWord, endWord, sentence, surfaceWord } from './words.js';

/** Reduction scales of ISO 5455. */
export const SCALES = [1, 2, 5, 10, 20, 50] as const;
/** The longest side of a panel on paper, in millimetres; chosen so that a bore map with its dimensions goes on an A4 sheet. */
const LARGEST = 220;
const GAP = 9;

/** The scale of ISO 5455 at which `size` millimetres take no more than `room` of paper. */
export function scaleFor(size: number, room: number): number {
  return SCALES.find((scale) => size / scale <= room) ?? SCALES.at(-1)!;
}

/** Longest side of a panel, in lettering millimetres, where lettering is to be read in a pane of the editor. */
const LARGEST_ON_SCREEN = 90;

/**
 * The bore map of one panel; null where the carcass has no such panel. The panel itself always lies in the same place, its
 * face's top left corner at (0, 0).
 * @param nearer on a screen: lettering and all that is measured in it so many times smaller, for a reader who has zoomed in
 */
export function boreMapScene(drawn: Drawn, panelKey: string, medium: Medium = 'paper', nearer = 1): Scene | null {
  const panel = drawn.carcass.panels.find(({ key }) => key === panelKey);
  if (panel === undefined) return null;
  const bores = boresOf(drawn, panel);
  const seen = faceToShow(bores);
  const longest = Math.max(mm(panel.length), mm(panel.width));
  const scale = medium === 'paper' ? scaleFor(longest, LARGEST) : longest / LARGEST_ON_SCREEN / nearer;
  const pen = new Pen(panel.key, scale);
  const view = new PanelView(panel, seen, pen.paper(GAP));
  const sources = new Sources();
  const groups = holeGroups(drawn.carcass, drawn.boring, panel, drawn.unit);
  const findings = findingsFor(drawn, [panel], sources);
  drawPanel(pen, view, drawn, groups, findings, sources);
  drawEdgeNames(pen, view, bores.length > 0);
  drawDimensions(pen, view, drawn, bores);
  drawEndNames(pen, view, bores);
  placeNumbers(pen, view, groups);
  if (bores.length > 0) drawReferenceEnd(pen, view, shownEnds(bores).includes('reference-end'));
  drawFaceName(pen, view);
  const shapes = pen.painted();
  return {
    view: 'panel',
    carcass: drawn.name,
    panel: panel.key,
    title: `${drawn.name}, ${panel.key}`,
    facts: factsOf(panel, drawn),
    caption: captionOf(view),
    unit: drawn.unit,
    scale,
    frame: grow(frameOf(shapes, scale), pen.paper(4)),
    shapes,
    heads: tableHeads(drawn.unit, endWord(panel, 'reference-end'), shownEnds(bores).length > 0),
    table: groups.map(({ line }) => line),
    findings,
    notes: notesOf(view, drawn, bores),
    sources: sources.record(),
  };
}

/** The smallest box that holds every shape with its lettering. */
export function frameOf(shapes: readonly Shape[], scale: number): Box {
  return around(shapes.map((shape) => shapeBox(shape, scale))) ?? { x: 0, y: 0, width: 1, height: 1 };
}

/** What a shape covers, its lettering included, in millimetres of the drawing. */
export function shapeBox(shape: Shape, scale: number): Box {
  switch (shape.kind) {
    case 'text':
      return textBox(shape, scale);
    case 'line':
      return boxOf(
        [
          { x: shape.x1, y: shape.y1 },
          { x: shape.x2, y: shape.y2 },
        ],
        0,
      );
    case 'path':
      return boxOf(shape.points, 0);
    case 'circle':
    case 'bore':
    case 'mark':
      return { x: shape.cx - shape.r, y: shape.cy - shape.r, width: 2 * shape.r, height: 2 * shape.r };
  }
}

/** '720 × 560 × 16 mm': finished length, width and thickness. */
export function sizeText(panel: Panel, drawn: Drawn): string {
  const { unit } = drawn;
  return `${figure(panel.length, unit)} × ${figure(panel.width, unit)} × ${showLength(panel.thickness, unit)}`;
}

function factsOf(panel: Panel, drawn: Drawn): Fact[] {
  const { unit } = drawn;
  const cut = `${figure(panel.cutLength, unit)} × ${showLength(panel.cutWidth, unit)}`;
  const banded = bandedEdges(panel);
  return [
    { word: 'Finished', value: sizeText(panel, drawn) },
    { word: 'Cut', value: cut },
    { word: 'Board', value: panel.board.name },
    { word: 'Banded', value: banded === '' ? 'no edge' : banded },
  ];
}

/** 'front edge with band-1', edges of one band together. */
export function bandedEdges(panel: Panel): string {
  const byBand = new Map<string, string[]>();
  for (const edge of ['front', 'back', 'reference-end', 'far-end'] as const) {
    const band = panel.bands[edge];
    if (band !== null) byBand.set(band.name, [...(byBand.get(band.name) ?? []), edgeWord(panel, edge)]);
  }
  return [...byBand].map(([band, edges]) => `${listed(edges)} with ${band}`).join('; ');
}

function captionOf(view: PanelView): string {
  const side = (sign: 1 | -1): string => (sign > 0 ? 'on the right' : 'on the left');
  const front = view.upright ? side(view.frontward) : 'toward you';
  const reference = view.upright ? 'down' : side(view.referenceward);
  return `${sentence(surfaceWord(view.panel, view.seen))} up; front edge ${front}, ${endWord(view.panel, 'reference-end')} ${reference}.`;
}

function notesOf(view: PanelView, drawn: Drawn, bores: readonly Bore[]): string[] {
  const { panel, seen } = view;
  const { unit } = drawn;
  const other = seen === 'inside' ? 'outside' : 'inside';
  const notes = [...ownNote(drawn), ...grooveNotes(panel, unit)];
  if (bores.some(({ face, through }) => face === other && !through))
    notes.push(`Dashed circles are bored from the ${other} face.`);
  if (shownEnds(bores).length > 0)
    notes.push(`Ends are folded out; across them, figures count from the ${surfaceWord(panel, 'outside')}.`);
  notes.push(
    `Figures in ${unit === 'mm' ? 'millimetres' : 'inches, decimals to a thousandth'}, from the front edge and the ${endWord(panel, 'reference-end')}.`,
  );
  if (bores.length > 0) notes.push(CAUTION);
  return notes;
}

/** Where each groove or rebate of a panel runs, one sentence each. */
export function grooveNotes(panel: Panel, unit: Unit): readonly string[] {
  return panel.grooves.map(({ from, to, depth }) => {
    const kind = to >= panel.width ? 'Rebate' : 'Groove';
    const run = `${figure(from, unit)} to ${showLength(to, unit)} from the front edge`;
    return `${kind} on the inside face, ${run}, ${showLength(depth, unit)} deep.`;
  });
}

/** The remark that the job has for the carcass. */
export const ownNote = ({ note = '' }: Drawn): readonly string[] => (note === '' ? [] : [`Note: ${note}`]);

/** The usual cautions on one line (common practice, no source). */
export const CAUTION =
  'Boring can injure: isolate the machine before you change bits, keep hands clear of spindles and clamps, hold small parts in a fixture, guard eyes, ears and lungs. The machine’s manual and local rules decide.';

/** 'Bottom end' beside each folded-out end, between the face and the end, clear of the centre lines. */
function drawEndNames(pen: Pen, view: PanelView, bores: readonly Bore[]): void {
  for (const end of shownEnds(bores)) {
    const text = sentence(endWord(view.panel, end));
    const half = pen.paper(1.25);
    const middle = view.alongEnd(end, view.seen === 'inside' ? view.thickness : 0);
    const edge = view.alongV(end === 'reference-end' ? 0 : view.length);
    const along = (middle + edge) / 2;
    const crossing = bores.filter(({ face }) => face === end).map(({ u }) => view.alongU(mm(u)));
    const width = pen.paper(textWidth(text, 2.5, false));
    const places = [
      widestRoom(0, view.width, crossing, width),
      ...[0.5, 0.3, 0.7, 0.1, 0.9].map((part) => part * view.width),
    ];
    const what = { key: `${view.panel.key}:${end}:name`, class: 'label' } as const;
    const shapes = places.map((place) =>
      view.upright
        ? pen.lettering(what, text, place, along + half, { anchor: 'middle' })
        : pen.lettering(what, text, along + half, place, { anchor: 'middle', turn: -90 }),
    );
    // A bore may reach over the end of a panel that is too small for it; then the hole table alone names the end.
    const shape = shapes.find((candidate) => pen.isFree(textBox(candidate, pen.scale), 0.1));
    if (shape !== undefined) pen.put(shape);
  }
}

/** Parts of the reference end, from the middle outward. */
const ALONG_THE_END = [0.5, 0.45, 0.55, 0.4, 0.6, 0.35, 0.65, 0.3, 0.7, 0.25, 0.75, 0.2, 0.8, 0.15, 0.85, 0.1, 0.9];

/**
 * The end from which every other figure counts: marked as a datum by a filled triangle that stands on it (ISO 5459), and named
 * inside the outline where no view of the end names it. Each is left out where it would stand on something else.
 */
function drawReferenceEnd(pen: Pen, view: PanelView, named: boolean): void {
  const { panel, referenceward: out } = view;
  const edge = view.alongV(0);
  const onPage = (along: number, across: number): Point =>
    view.upright ? { x: across, y: along } : { x: along, y: across };
  const places = ALONG_THE_END.map((part) => part * view.width);
  const marks = places.map((across) =>
    [
      [0, 0],
      [2.4, -1.3],
      [2.4, 1.3],
    ].map(([deep, aside]) => onPage(edge + out * pen.paper(deep!), across + pen.paper(aside!))),
  );
  // Not on the edge itself, which it has to touch.
  const clear = (points: readonly Point[]): boolean => pen.isFree(boxOf(points.slice(1), 0), 0.3);
  const mark = marks.find(clear);
  if (mark !== undefined) {
    pen.path({ key: `${panel.key}:datum-end`, class: 'datum' }, 'thin', mark, 'ink');
    pen.takeSolid(boxOf(mark, 0));
  }
  if (named) return;
  const text = sentence(endWord(panel, 'reference-end'));
  const what = { key: `${panel.key}:reference-end:name`, class: 'label' } as const;
  const name = [1.6, 2.6, 3.6, 4.6, 6, 8].flatMap((inward) =>
    places.map((across) => {
      const near = edge - out * pen.paper(inward);
      const base = out > 0 ? near : near + pen.paper(2.5);
      return view.upright
        ? pen.lettering(what, text, across, base, { anchor: 'middle' })
        : pen.lettering(what, text, base, across, { anchor: 'middle', turn: -90 });
    }),
  );
  const free = name.find((shape) => {
    const box = textBox(shape, pen.scale);
    return contains(view.face, box) && pen.isFree(box, 0.5);
  });
  if (free !== undefined) pen.put(free);
}

/** The front edge is the reference of every bore: it is named, with its band, and marked as a datum. */
function drawEdgeNames(pen: Pen, view: PanelView, bored: boolean): void {
  const { panel } = view;
  const band = panel.bands.front;
  if (band === null && !bored) return;
  const text = band === null ? 'Front edge, bare' : `Front edge, ${band.name}`;
  const out = view.frontward;
  const near = view.alongU(0) + out * pen.paper(2.9);
  const middle = view.length / 2;
  const what = { key: `${panel.key}:front:name`, class: 'label' } as const;
  const base = out > 0 ? near + pen.paper(2.5) : near;
  const width = pen.paper(textWidth(text, 2.5, false));
  if (view.upright) pen.text(what, text, base, middle, { anchor: 'middle', turn: -90 });
  else pen.text(what, text, middle, base, { anchor: 'middle' });
  // Filled triangles that stand on the edge, as datum features are marked (ISO 5459).
  for (const at of [middle - width / 2 - pen.paper(3), middle + width / 2 + pen.paper(3)]) {
    const [tip, back, side] = [view.alongU(0), view.alongU(0) + out * pen.paper(2.4), pen.paper(1.3)];
    const corners = [
      { along: at, across: tip },
      { along: at - side, across: back },
      { along: at + side, across: back },
    ].map(({ along, across }) => (view.upright ? { x: across, y: along } : { x: along, y: across }));
    pen.path({ key: `${panel.key}:datum-${at < middle ? 'low' : 'high'}`, class: 'datum' }, 'thin', corners, 'ink');
  }
}

/**
 * Running dimensions: u from the front edge beyond the reference end, v from the reference end beyond the back edge, the
 * places across the thickness beside the end views. Rows by their pitch; overall sizes outermost.
 */
function drawDimensions(pen: Pen, view: PanelView, drawn: Drawn, bores: readonly Bore[]): void {
  const { panel } = view;
  const { unit } = drawn;
  const write = (length: Micrometres): string => figure(length, unit);
  const name = panel.key;
  const ends = shownEnds(bores);
  const [uAxis, vAxis] = view.upright ? (['x', 'y'] as const) : (['y', 'x'] as const);
  const back = -view.frontward as 1 | -1;

  // Along the panel, beyond the back edge.
  const backEdge = view.alongU(view.width) + back * pen.paper(1);
  const onFaces = bores.filter(({ face }) => isFace(face));
  const rows = distinctRows(drawn, panel);
  const rowEnds = rows.flatMap(({ offset, pitch, count }) => [offset, offset + (count - 1) * pitch]);
  const vs = ascending([...onFaces.filter(({ purpose }) => purpose !== 'row').map(({ v }) => v), ...rowEnds]);
  const feature = (v: Micrometres): Feature => ({ at: view.alongV(mm(v)), text: write(v), from: backEdge });
  let line = backEdge + back * pen.paper(6);
  rows.forEach(({ offset, pitch, count }) => {
    if (count < 2) return;
    const last = offset + (count - 1) * pitch;
    const lane: Lane = { axis: vAxis, line, out: back };
    const text = `${count - 1} × ${write(pitch)} = ${write((count - 1) * pitch)}`;
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
    line +=
      back *
      runningDimension(pen, `${name}:v`, lane, { at: view.alongV(0), text: '0', from: backEdge }, vs.map(feature));
    line += back * pen.paper(4.5);
  }
  const whole = (at: number, from: number, text: string): Feature => ({ at, from, text });
  spanDimension(
    pen,
    `${name}:length`,
    { axis: vAxis, line, out: back },
    whole(view.alongV(0), backEdge, 'from'),
    whole(view.alongV(view.length), backEdge, 'to'),
    write(panel.length),
  );

  // Across the panel: figures beyond the reference end, the overall width beyond the far end.
  const beyond = (end: 'reference-end' | 'far-end'): { edge: number; out: 1 | -1 } => {
    const out = (end === 'reference-end' ? view.referenceward : -view.referenceward) as 1 | -1;
    const face = view.alongV(end === 'reference-end' ? 0 : view.length);
    const fold = ends.includes(end) ? view.alongEnd(end, view.seen === 'inside' ? 0 : view.thickness) : face;
    return { edge: fold + out * pen.paper(1), out };
  };
  const us = ascending([...bores.map(({ u }) => u), ...panel.grooves.flatMap(({ from, to }) => [from, to])]).filter(
    (u) => u > 0 && u < panel.width,
  );
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

  // Across the thickness, beside the end views, before the front edge.
  for (const end of ends) {
    const across = ascending([...bores.filter(({ face }) => face === end).map(({ v }) => v), panel.thickness]);
    const from = view.alongU(0) + view.frontward * pen.paper(1);
    const lane: Lane = { axis: vAxis, line: from + view.frontward * pen.paper(4), out: view.frontward };
    const place = (v: Micrometres): Feature => ({ at: view.alongEnd(end, mm(v)), text: write(v), from });
    runningDimension(pen, `${name}:${end}`, lane, { ...place(0), text: '0' }, across.map(place));
  }
}

/** The rows of a panel, those with the same places along it once. */
function distinctRows(
  drawn: Drawn,
  panel: Panel,
): readonly { offset: Micrometres; pitch: Micrometres; count: number }[] {
  const rows = new Map<string, { offset: Micrometres; pitch: Micrometres; count: number }>();
  for (const { panel: owner, offset, pitch, count } of drawn.boring.rows) {
    if (owner === panel.key) rows.set(`${offset}|${pitch}|${count}`, { offset, pitch, count });
  }
  return [...rows.values()].sort((a, b) => a.offset - b.offset || a.pitch - b.pitch || a.count - b.count);
}

/** 'Inside face up' on the face itself, where it finds room. */
function drawFaceName(pen: Pen, view: PanelView): void {
  const text = `${sentence(surfaceWord(view.panel, view.seen))} up`;
  const centre = around([view.face])!;
  const middle = { x: centre.width / 2, y: centre.height / 2 };
  const steps = [0, 1, -1, 2, -2, 3, -3, 4, -4];
  const places = steps.flatMap((down) =>
    steps.map((right) => ({ x: middle.x + (right * centre.width) / 10, y: middle.y + (down * centre.height) / 10 })),
  );
  places.sort((a, b) => Math.hypot(a.x - middle.x, a.y - middle.y) - Math.hypot(b.x - middle.x, b.y - middle.y));
  for (const turn of [0, -90] as const) {
    for (const height of [3.5, 2.5]) {
      for (const { x, y } of places) {
        const half = pen.paper(height / 2);
        const shape: TextShape = pen.lettering(
          { key: `${view.panel.key}:face-name`, class: 'label' },
          text,
          turn === 0 ? x : x + half,
          turn === 0 ? y + half : y,
          { anchor: 'middle', turn, height },
        );
        const box = textBox(shape, pen.scale);
        const inside =
          box.x > 0 && box.y > 0 && box.x + box.width < view.face.width && box.y + box.height < view.face.height;
        if (!inside || !pen.isFree(box, 1)) continue;
        pen.put(shape);
        return;
      }
    }
  }
}
