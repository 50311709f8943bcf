import { CAP_HEIGHT, textWidth } from '../scene/lettering.js';
import { markOf } from '../marks.js';
import type { BorePurpose } from '../../fittings/names.js';
import { PURPOSES } from '../../fittings/purposes.js';
import type { Severity } from '../../findings/finding.js';
import { codePath } from './code-path.js';
import type { BoreShape, BracketShape, MarkShape, Point, Scene, Shape, TextShape } from '../scene/scene.js';

/**
 * An SVG element as data: what is written to a file and what a page keeps up to date are the same tree. Looks are left to
 * style sheets by class, so that no inline style is needed. `key` is unique among siblings.
 */
export interface SvgNode {
  readonly tag: string;
  readonly key: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly SvgNode[];
  readonly text?: string;
}

/** Coordinates to a thousandth of a millimetre, without a minus zero. */
export function coordinate(value: number): string {
  return String(Math.round(value * 1000) / 1000 + 0);
}

/** The shapes of a scene, each as one element, in the order of painting. */
export function sceneNodes(scene: Pick<Scene, 'shapes' | 'scale'>): readonly SvgNode[] {
  return scene.shapes.map((shape) => shapeNode(shape, scene.scale));
}

/** The same for a file, which may be read where the face of its lettering is missing: see `asWideAs`. */
export function fileNodes(scene: Pick<Scene, 'shapes' | 'scale'>): readonly SvgNode[] {
  return scene.shapes.map((shape) => {
    const node = shapeNode(shape, scene.scale);
    if (shape.kind !== 'text') return node;
    const width = asWideAs(shape.text, shape.height, shape.strong, scene.scale);
    return { ...node, attributes: { ...node.attributes, ...width } };
  });
}

/**
 * Has a reader draw a text as wide as it was measured, whatever face it has for it: another face is drawn closer or wider, and
 * never runs into what stands beside it.
 * @param height of the capitals, in millimetres of paper
 */
export function asWideAs(
  text: string,
  height: number,
  strong: boolean,
  scale: number,
): Readonly<Record<string, string>> {
  // A reader draws several blanks as one.
  const width = textWidth(text.trim().replace(/\s+/g, ' '), height, strong) * scale;
  return text.trim() === '' ? {} : { textLength: coordinate(width), lengthAdjust: 'spacingAndGlyphs' };
}

function shapeNode(shape: Shape, scale: number): SvgNode {
  const classes = `${shape.class}${'line' in shape && typeof shape.line === 'string' ? ` line-${shape.line}` : ''}`;
  const data: Record<string, string> = {
    'data-panel': shape.panel,
    ...(shape.source === undefined ? {} : { 'data-source': shape.source }),
  };
  switch (shape.kind) {
    case 'line': {
      const { x1, y1, x2, y2 } = shape;
      return leaf('path', shape.key, {
        class: classes,
        d: pathOf(
          [
            { x: x1, y: y1 },
            { x: x2, y: y2 },
          ],
          false,
        ),
        ...data,
      });
    }
    case 'path':
      return leaf('path', shape.key, {
        class: `${classes} fill-${shape.fill}`,
        d: pathOf(shape.points, shape.closed),
        ...data,
      });
    case 'circle':
      return shape.line === 'hidden'
        ? leaf('path', shape.key, { class: classes, d: dashedRim(shape.cx, shape.cy, shape.r), ...data })
        : leaf('circle', shape.key, { class: classes, ...round(shape.cx, shape.cy, shape.r), ...data });
    case 'text':
      return textNode(shape, scale, data);
    case 'mark':
      return markNode(shape, scale);
    case 'bracket':
      return bracketNode(shape, scale);
    case 'bore':
      return boreNode(shape, data);
    case 'code':
      return leaf('path', shape.key, { class: classes, d: codePath(shape), ...data });
  }
}

function boreNode(shape: BoreShape, data: Record<string, string>): SvgNode {
  const { cx, cy, r, purpose } = shape;
  const hidden = shape.hidden ? ' hidden' : '';
  return {
    tag: 'g',
    key: shape.key,
    attributes: {
      class: `${boreClass(purpose)}${hidden}`,
      transform: `translate(${coordinate(cx)} ${coordinate(cy)})`,
      'data-bore': shape.bore,
      'data-group': shape.group,
      ...data,
    },
    children: [rimNode(r, shape.hidden), ...patternNodes(purpose, r)],
  };
}

function rimNode(r: number, hidden: boolean): SvgNode {
  return hidden
    ? leaf('path', 'rim', { class: 'rim', d: dashedRim(0, 0, r) })
    : leaf('circle', 'rim', { class: 'rim', ...round(0, 0, r) });
}

/** A hidden circle is eight arcs rather than a dashed line, so that it has as many dashes however small it is. */
function dashedRim(cx: number, cy: number, r: number): string {
  const at = (angle: number): string =>
    `${coordinate(cx + r * Math.cos(angle))} ${coordinate(cy + r * Math.sin(angle))}`;
  const arcs = Array.from({ length: 8 }, (_, index) => {
    const from = ((index + 0.2) * Math.PI) / 4;
    const to = ((index + 0.8) * Math.PI) / 4;
    return `M${at(from)}A${coordinate(r)} ${coordinate(r)} 0 0 1 ${at(to)}`;
  });
  return arcs.join('');
}

/** The classes of a bore: what it is for, and the colour that goes with it. */
export function boreClass(purpose: BorePurpose): string {
  return `bore bore-${purpose} ink-${PURPOSES[purpose].ink}`;
}

/** The pattern inside a bore of radius `r` about (0, 0). */
export function patternNodes(purpose: BorePurpose, r: number): SvgNode[] {
  return markOf(purpose, r).map((part, index) => {
    const attributes = { class: part.filled ? 'pattern filled' : 'pattern' };
    return part.kind === 'circle'
      ? leaf('circle', String(index), { ...attributes, ...round(0, 0, part.r) })
      : leaf('path', String(index), { ...attributes, d: pathOf(part.points, part.closed) });
  });
}

/** A ring about the bore, with its flag at the upper right. */
function markNode(shape: MarkShape, scale: number): SvgNode {
  const { cx, cy, r, severity } = shape;
  const size = FLAG * scale;
  const at = { x: r * Math.SQRT1_2 + size * 0.8, y: -(r * Math.SQRT1_2 + size * 0.8) };
  return {
    tag: 'g',
    key: shape.key,
    attributes: {
      class: `finding ${severity}`,
      transform: `translate(${coordinate(cx)} ${coordinate(cy)})`,
      'data-mark': shape.bore,
    },
    children: [
      leaf('circle', 'ring', { class: 'ring', ...round(0, 0, r) }),
      ...(shape.flagged ? [flagNode(severity, at, size)] : []),
    ],
  };
}

function bracketNode(shape: BracketShape, scale: number): SvgNode {
  return {
    tag: 'g',
    key: shape.key,
    attributes: { class: `finding ${shape.severity}` },
    children: [
      leaf('path', 'ring', { class: 'ring', d: pathOf(shape.points, false) }),
      flagNode(shape.severity, shape.flag, FLAG * scale),
    ],
  };
}

/** Half the size of a flag, in millimetres of paper. */
const FLAG = 1.1;

/** The form tells the gravity: triangle, square, dot. */
function flagNode(severity: Severity, at: Point, size: number): SvgNode {
  if (severity === 'info') return leaf('circle', 'flag', { class: 'flag', ...round(at.x, at.y, size * 0.7) });
  const corners: readonly Point[] =
    severity === 'error'
      ? [
          { x: 0, y: -1 },
          { x: 1, y: 0.8 },
          { x: -1, y: 0.8 },
        ]
      : [
          { x: -0.8, y: -0.8 },
          { x: 0.8, y: -0.8 },
          { x: 0.8, y: 0.8 },
          { x: -0.8, y: 0.8 },
        ];
  const points = corners.map(({ x, y }) => ({ x: at.x + x * size, y: at.y + y * size }));
  return leaf('path', 'flag', { class: 'flag', d: pathOf(points, true) });
}

function textNode(shape: TextShape, scale: number, data: Record<string, string>): SvgNode {
  const place = { x: coordinate(shape.x), y: coordinate(shape.y) };
  return {
    tag: 'text',
    key: shape.key,
    attributes: {
      class: `text ${shape.class}${shape.strong ? ' strong' : ''} anchor-${shape.anchor}`,
      'font-size': coordinate((shape.height / CAP_HEIGHT) * scale),
      ...place,
      ...(shape.turn === 0 ? {} : { transform: `rotate(${shape.turn} ${place.x} ${place.y})` }),
      ...data,
    },
    children: [],
    text: shape.text,
  };
}

function leaf(tag: string, key: string, attributes: Record<string, string>): SvgNode {
  return { tag, key, attributes, children: [] };
}

const round = (cx: number, cy: number, r: number): Record<string, string> => ({
  cx: coordinate(cx),
  cy: coordinate(cy),
  r: coordinate(r),
});

function pathOf(points: readonly Point[], closed: boolean): string {
  const steps = points.map(({ x, y }, index) => `${index === 0 ? 'M' : 'L'}${coordinate(x)} ${coordinate(y)}`);
  return `${steps.join('')}${closed ? 'Z' : ''}`;
}
