import { boxOf, contains, crosses, grow, overlap } from './boxes.js';
import { textBox } from './lettering.js';
import type { Box, LineType, Point, Shape, ShapeClass, SourceKey, TextShape } from './scene.js';

/** Lower is painted first. */
const LAYERS: readonly ShapeClass[] = [
  'table',
  'fence',
  'panel',
  'end-view',
  'band',
  'groove',
  'cut-off',
  'end-bore-run',
  'zone',
  'stop-standing',
  'stop-lowered',
  'stop-used',
  'break',
  'centre-line',
  'head',
  'hole-to-come',
  'hole-made',
  'hole-now',
  'spindle-empty',
  'spindle-loaded',
  'bit',
  'clamp',
  'move',
  'datum',
  'dimension',
  'finding',
  'bore',
  'loose-shelf',
  'number',
  'label',
  'panel-name',
];

interface What {
  readonly key: string;
  readonly class: ShapeClass;
  readonly source?: SourceKey;
}

/** Collects the shapes of one panel and remembers which room on the page is taken. Coordinates in millimetres of panel. */
export class Pen {
  readonly shapes: Shape[] = [];
  /** Room that lettering must keep clear of. */
  readonly #taken: Box[] = [];
  /** Of that, what a leader line must not run through either: bores and lettering, but no lines. */
  readonly #solid: Box[] = [];

  constructor(
    readonly panel: string,
    /** Millimetres of panel for one of paper. */
    readonly scale: number,
    /** 'plain' leaves out what would only blur at a small scale. */
    readonly detail: 'full' | 'plain' = 'full',
  ) {}

  /** Millimetres of paper, in scene coordinates. */
  paper(length: number): number {
    return length * this.scale;
  }

  add(shape: Shape): void {
    this.shapes.push(shape);
  }

  line(what: What, line: LineType, a: Point, b: Point): void {
    this.add({ ...what, kind: 'line', panel: this.panel, line, x1: a.x, y1: a.y, x2: b.x, y2: b.y });
  }

  path(
    what: What,
    line: LineType,
    points: readonly Point[],
    fill: 'none' | 'paper' | 'board' | 'ink' = 'none',
    closed = true,
  ): void {
    this.add({ ...what, kind: 'path', panel: this.panel, line, points, closed, fill });
  }

  rectangle(what: What, line: LineType, { x, y, width, height }: Box, fill: 'none' | 'paper' | 'board'): void {
    const corners = [
      { x, y },
      { x: x + width, y },
      { x: x + width, y: y + height },
      { x, y: y + height },
    ];
    this.path(what, line, corners, fill);
    corners.forEach((corner, index) => this.take(boxOf([corner, corners[(index + 1) % 4]!], this.paper(0.6))));
  }

  text(
    what: What,
    text: string,
    x: number,
    y: number,
    style: Partial<Pick<TextShape, 'height' | 'anchor' | 'turn' | 'strong'>> = {},
  ): TextShape {
    const shape = this.lettering(what, text, x, y, style);
    this.put(shape);
    return shape;
  }

  /** Puts down a text made by `lettering`. */
  put(shape: TextShape): void {
    this.add(shape);
    this.takeSolid(textBox(shape, this.scale));
  }

  /** A text that is not yet put down. */
  lettering(
    what: What,
    text: string,
    x: number,
    y: number,
    style: Partial<Pick<TextShape, 'height' | 'anchor' | 'turn' | 'strong'>> = {},
  ): TextShape {
    return {
      height: 2.5,
      anchor: 'start',
      turn: 0,
      strong: false,
      ...what,
      ...style,
      kind: 'text',
      panel: this.panel,
      text,
      x,
      y,
    };
  }

  /** Keeps lettering off a line. */
  take(box: Box): void {
    this.#taken.push(box);
  }

  /** Keeps lettering and leader lines off a bore or a text. */
  takeSolid(box: Box): void {
    this.#taken.push(box);
    this.#solid.push(box);
  }

  /** True where nothing stands in the box, nor nearer to it than `clear` millimetres of paper. */
  isFree(box: Box, clear = 0.4): boolean {
    const wide = grow(box, this.paper(clear));
    return !this.#taken.some((other) => overlap(wide, other));
  }

  /** True where the straight line from a to b runs through no bore or text, those that hold a or b left out. */
  isOpen(a: Point, b: Point): boolean {
    const holds = (box: Box, { x, y }: Point): boolean => contains(box, { x, y, width: 0, height: 0 });
    return !this.#solid.some((box) => !holds(box, a) && !holds(box, b) && crosses(a, b, box));
  }

  /** The shapes in the order of painting. */
  painted(): Shape[] {
    return [...this.shapes].sort((a, b) => LAYERS.indexOf(a.class) - LAYERS.indexOf(b.class));
  }
}
