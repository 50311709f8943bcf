import type { Scene, Shape, ShapeClass } from '../scene/scene.js';
import { PURPOSES } from '../../fittings/purposes.js';
import { PRINTED, WIDE_LINE } from './print-look.js';
import { lookClass, printStyle } from './print-style.js';
import { coordinate, fileNodes, type SvgNode } from './svg-tree.js';
import { writeNode } from './write-node.js';

/** Pixels for a millimetre of lettering: its capitals of 2.5 mm are 8 pixels high. */
const PIXELS_PER_MM = 3.2;
/** What a small picture does without. */
const LEFT_OUT: ReadonlySet<ShapeClass> = new Set(['number', 'finding', 'centre-line', 'end-bore-run', 'datum']);

/**
 * The drawing of a panel as a small picture with a light ground, of few bytes: outline, bores as plain circles, grooves, bands
 * and dimensions.
 * @param scene laid out for the pane that the picture is to fill
 */
export function smallSvg(scene: Scene): string {
  const { x, y, width, height } = scene.frame;
  const pixels = (length: number): string => String(Math.round((length / scene.scale) * PIXELS_PER_MM));
  const box = { x: coordinate(x), y: coordinate(y), width: coordinate(width), height: coordinate(height) };
  const shown = scene.shapes.filter((shape) => !LEFT_OUT.has(shape.class));
  const root: SvgNode = {
    tag: 'svg',
    key: 'root',
    attributes: {
      xmlns: 'http://www.w3.org/2000/svg',
      class: `borewright-drawing ${lookClass(scene.scale, WIDE_LINE[scene.view])}`,
      width: pixels(width),
      height: pixels(height),
      viewBox: Object.values(box).join(' '),
    },
    children: [
      { tag: 'style', key: 'style', attributes: {}, children: [], text: styleOf(scene) },
      { tag: 'rect', key: 'paper', attributes: { class: 'paper', ...box }, children: [] },
      ...shown.flatMap((shape) => nodesOf(shape, scene.scale)),
    ],
  };
  return writeNode(root);
}

function nodesOf(shape: Shape, scale: number): readonly SvgNode[] {
  if (shape.kind !== 'bore') return fileNodes({ shapes: [shape], scale }).map(bare);
  const { cx, cy, r, purpose, key } = shape;
  const attributes = {
    class: `hole-${PURPOSES[purpose].ink}`,
    cx: coordinate(cx),
    cy: coordinate(cy),
    r: coordinate(r),
  };
  return [{ tag: 'circle', key, attributes, children: [] }];
}

/** Without what a page would know an element by. */
function bare(node: SvgNode): SvgNode {
  const attributes = Object.entries(node.attributes).filter(([name]) => !name.startsWith('data-'));
  return { ...node, attributes: Object.fromEntries(attributes), children: node.children.map(bare) };
}

function styleOf({ scale, view }: Scene): string {
  const holes = Object.entries(PRINTED).map(
    ([ink, colour]) => `.borewright-drawing circle.hole-${ink}{stroke:${colour};fill:#fff}`,
  );
  return printStyle(scale, WIDE_LINE[view]) + holes.join('');
}
