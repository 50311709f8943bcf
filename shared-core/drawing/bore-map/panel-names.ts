import type { Bore } from '../../boring/model.js';
import { around, boxOf, contains, overlap } from '../scene/boxes.js';
import { widestRoom } from '../scene/dimensions.js';
import { textBox, textWidth } from '../scene/lettering.js';
import { shownEnds } from './panel-shapes.js';
import type { Pen } from '../scene/pen.js';
import type { Box, Point, TextShape } from '../scene/scene.js';
import { mm } from '../scene/scale.js';
import type { PanelView } from './panel-view.js';
import { sentence } from '../../words/english.js';
import { tell } from '../../words/message.js';
import { say as sayOf } from '../messages.js';
import { say } from './messages.js';
import { edgeWord, endWord, surfaceWord } from '../words.js';
import { worded } from '../../words/told.js';
import { wider } from '../scene/wider.js';

/** 'Bottom end' beside each folded-out end, between the face and the end, clear of the centre lines. */
export function drawEndNames(pen: Pen, view: PanelView, bores: readonly Bore[]): void {
  for (const end of shownEnds(bores)) {
    const text = sentence(worded('sides', endWord(view.panel, end)));
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
      view.standing
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
export function drawReferenceEnd(pen: Pen, view: PanelView, named: boolean): void {
  const { panel, referenceward: out } = view;
  const edge = view.alongV(0);
  const onPage = (along: number, across: number): Point =>
    view.standing ? { x: across, y: along } : { x: along, y: across };
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
  const text = sentence(worded('sides', endWord(panel, 'reference-end')));
  const what = { key: `${panel.key}:reference-end:name`, class: 'label' } as const;
  const name = [1.6, 2.6, 3.6, 4.6, 6, 8].flatMap((inward) =>
    places.map((across) => {
      const near = edge - out * pen.paper(inward);
      const base = out > 0 ? near : near + pen.paper(2.5);
      return view.standing
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

/** How far out from the front edge its name may stand, the nearest first. */
const FROM_THE_EDGE = [2.9, 6.5, 10, 14, 20, 28] as const;

/** The front edge is the reference of every bore: it is named, with its band where there is room, and marked as a datum. */
export function drawEdgeNames(pen: Pen, view: PanelView, bored: boolean): void {
  const { panel } = view;
  const band = panel.bands.front;
  if (band === null && !bored) return;
  const middle = view.length / 2;
  const edge = edgeWord(panel, 'front');
  const said =
    band === null ? [say.bareEdge({ edge })] : [say.bandedEdge({ edge, band: band.name }), say.edge({ edge })];
  const texts = said.map((message) => tell(message, 'mm'));
  const shapes = texts.flatMap((text) => FROM_THE_EDGE.map((away) => edgeName(pen, view, text, away)));
  const shape = shapes.find((one) => pen.isFree(textBox(one, pen.scale), 0.1));
  if (shape !== undefined) pen.put(shape);
  const half = pen.paper(textWidth(shape?.text ?? '', 2.5, false) / 2 + 3);
  // On either hand of the name; where that is longer than the edge, between the two.
  const off = half + pen.paper(1.3) < middle ? half : middle / 2;
  for (const at of [middle - off, middle + off]) drawEdgeDatum(pen, view, at);
}

function edgeName(pen: Pen, view: PanelView, text: string, away: number): TextShape {
  const out = view.frontward;
  const near = view.alongU(0) + out * pen.paper(away);
  const base = out > 0 ? near + pen.paper(2.5) : near;
  const what = { key: `${view.panel.key}:front:name`, class: 'label' } as const;
  return view.standing
    ? pen.lettering(what, text, base, view.length / 2, { anchor: 'middle', turn: -90 })
    : pen.lettering(what, text, view.length / 2, base, { anchor: 'middle' });
}

/** A filled triangle that stands on the front edge, as datum features are marked (ISO 5459). */
function drawEdgeDatum(pen: Pen, view: PanelView, at: number): void {
  const [tip, back, side] = [view.alongU(0), view.alongU(0) + view.frontward * pen.paper(2.4), pen.paper(1.3)];
  const corners = [
    { along: at, across: tip },
    { along: at - side, across: back },
    { along: at + side, across: back },
  ].map(({ along, across }) => (view.standing ? { x: across, y: along } : { x: along, y: across }));
  const key = `${view.panel.key}:datum-${at < view.length / 2 ? 'low' : 'high'}`;
  pen.path({ key, class: 'datum' }, 'thin', corners, 'ink');
}

/** 'Inside face up' on the face itself, where it finds room; across a loose shelf only where there is none beside it. */
export function drawFaceName(pen: Pen, view: PanelView): void {
  const text = tell(sayOf.faceUp({ face: surfaceWord(view.panel, view.seen) }), 'mm');
  const centre = around([view.face])!;
  const middle = { x: centre.width / 2, y: centre.height / 2 };
  const steps = [0, 1, -1, 2, -2, 3, -3, 4, -4];
  const places = steps.flatMap((down) =>
    steps.map((right) => ({ x: middle.x + (right * centre.width) / 10, y: middle.y + (down * centre.height) / 10 })),
  );
  places.sort((a, b) => Math.hypot(a.x - middle.x, a.y - middle.y) - Math.hypot(b.x - middle.x, b.y - middle.y));
  const what = { key: `${view.panel.key}:face-name`, class: 'label' } as const;
  const shapes = ([0, -90] as const).flatMap((turn) =>
    [3.5, 2.5].flatMap((height) =>
      places.map(({ x, y }) => {
        const half = pen.paper(height / 2);
        const [across, down] = turn === 0 ? [x, y + half] : [x + half, y];
        return pen.lettering(what, text, across, down, { anchor: 'middle', turn, height });
      }),
    ),
  );
  const stands = (box: Box): boolean => contains(view.face, box) && pen.isFree(box, 1);
  const free = shapes.filter((shape) => stands(textBox(shape, pen.scale)));
  const shelves = pen.shapes.flatMap((shape) =>
    shape.class === 'loose-shelf' && shape.kind === 'path' ? [boxOf(shape.points, pen.paper(1))] : [],
  );
  const offShelves = free.filter((shape) => !shelves.some((shelf) => overlap(shelf, textBox(shape, pen.scale))));
  const inAnyFace = offShelves.find((shape) => shape.turn === 0 && stands(wider(textBox(shape, pen.scale))));
  const clear = inAnyFace ?? offShelves[0] ?? free[0];
  if (clear !== undefined) pen.put(clear);
}
