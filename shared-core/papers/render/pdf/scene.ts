import type { Severity } from '../../../findings/finding.js';
import { PURPOSES } from '../../../fittings/purposes.js';
import { markOf } from '../../../drawing/marks.js';
import {
  PRINTED,
  PRINTED_FINDINGS,
  PRINTED_INK,
  printedLines,
  WIDE_LINE,
  type PrintedLine,
} from '../../../drawing/render/print-look.js';
import { codePath } from '../../../drawing/render/code-path.js';
import { CAP_HEIGHT } from '../../../drawing/scene/lettering.js';
import type {
  BoreShape,
  BracketShape,
  CodeShape,
  LineType,
  MarkShape,
  Point,
  Scene,
  Shape,
} from '../../../drawing/scene/scene.js';
import { hex, type Look, type Pen, type Stroke } from './pen.js';

/** Half the size of a flag, in millimetres of paper. */
const FLAG = 1.1;

const FILLS = { paper: '#ffffff', board: '#fbf7ef', ink: PRINTED_INK } as const;

/**
 * Draws a scene with the top left corner of its frame at (x, y) of the page.
 * @param shrink 1 for the scale that the scene is lettered for; smaller where it would not go on the page
 */
export function drawScene(
  pen: Pen,
  scene: Pick<Scene, 'shapes' | 'frame' | 'scale' | 'view'>,
  x: number,
  y: number,
  shrink: number,
): void {
  const { frame, scale } = scene;
  const drawer = new Drawer(
    pen,
    { x: x - (frame.x / scale) * shrink, y: y - (frame.y / scale) * shrink },
    scale,
    shrink,
    printedLines(WIDE_LINE[scene.view]),
  );
  for (const shape of scene.shapes) drawer.draw(shape);
}

class Drawer {
  readonly #pen: Pen;
  readonly #origin: Point;
  readonly #scale: number;
  readonly #shrink: number;
  readonly #lines: Readonly<Record<LineType, PrintedLine>>;

  constructor(pen: Pen, origin: Point, scale: number, shrink: number, lines: Readonly<Record<LineType, PrintedLine>>) {
    this.#pen = pen;
    this.#origin = origin;
    this.#scale = scale;
    this.#shrink = shrink;
    this.#lines = lines;
  }

  draw(shape: Shape): void {
    switch (shape.kind) {
      case 'line':
        this.#pen.line(
          this.#x(shape.x1),
          this.#y(shape.y1),
          this.#x(shape.x2),
          this.#y(shape.y2),
          this.#stroke(shape.line),
        );
        return;
      case 'path':
        this.#pen.path(this.#path(shape.points, shape.closed), {
          stroke: this.#stroke(shape.line),
          ...(shape.fill !== 'none' && { fill: hex(FILLS[shape.fill]) }),
        });
        return;
      case 'circle':
        this.#pen.circle(this.#x(shape.cx), this.#y(shape.cy), this.#size(shape.r), {
          stroke: this.#stroke(shape.line),
          ...(shape.class === 'number' && { fill: hex('#ffffff') }),
        });
        return;
      case 'text':
        this.#pen.text(shape.text, this.#x(shape.x), this.#y(shape.y), {
          size: (shape.height / CAP_HEIGHT) * this.#shrink,
          strong: shape.strong,
          anchor: shape.anchor,
          turn: shape.turn,
        });
        return;
      case 'bore':
        this.#bore(shape);
        return;
      case 'mark':
        this.#mark(shape);
        return;
      case 'bracket':
        this.#bracket(shape);
        return;
      case 'code':
        this.#code(shape);
    }
  }

  #bore({ cx, cy, r, hidden, purpose }: BoreShape): void {
    const colour = hex(PRINTED[PURPOSES[purpose].ink]);
    const stroke: Stroke = { width: 0.25 * this.#shrink, colour };
    const rim: Look = {
      stroke: { ...stroke, width: 0.3 * this.#shrink, ...(hidden && { dash: this.#eighths(r) }) },
      ...(!hidden && { fill: hex('#ffffff') }),
    };
    this.#pen.circle(this.#x(cx), this.#y(cy), this.#size(r), rim);
    for (const part of markOf(purpose, r)) {
      const look: Look = part.filled ? { fill: colour } : { stroke };
      if (part.kind === 'circle') this.#pen.circle(this.#x(cx), this.#y(cy), this.#size(part.r), look);
      else {
        const points = part.points.map((point) => ({ x: cx + point.x, y: cy + point.y }));
        this.#pen.path(this.#path(points, part.closed), look);
      }
    }
  }

  #mark({ cx, cy, r, severity, flagged }: MarkShape): void {
    const stroke = { width: 0.5 * this.#shrink, colour: hex(PRINTED_FINDINGS[severity]) };
    this.#pen.circle(this.#x(cx), this.#y(cy), this.#size(r), { stroke });
    const flag = FLAG * this.#shrink;
    const off = this.#size(r) * Math.SQRT1_2 + flag * 0.8;
    if (flagged) this.#flag(severity, this.#x(cx) + off, this.#y(cy) - off);
  }

  #bracket({ severity, points, flag }: BracketShape): void {
    const stroke = { width: 0.5 * this.#shrink, colour: hex(PRINTED_FINDINGS[severity]) };
    this.#pen.path(this.#path(points, false), { stroke });
    this.#flag(severity, this.#x(flag.x), this.#y(flag.y));
  }

  #code({ x, y, size, dark }: CodeShape): void {
    const place = { x: this.#x(x), y: this.#y(y), size: this.#size(size), dark };
    this.#pen.path(codePath(place), { fill: hex('#000000') });
  }

  /** The form tells the gravity as well as the colour. */
  #flag(severity: Severity, x: number, y: number): void {
    const size = FLAG * this.#shrink;
    const fill = hex(PRINTED_FINDINGS[severity]);
    if (severity === 'error')
      this.#pen.path(`M${x} ${y - size}L${x + size} ${y + size * 0.8}L${x - size} ${y + size * 0.8}Z`, { fill });
    else if (severity === 'warning')
      this.#pen.rectangle(x - size * 0.8, y - size * 0.8, size * 1.6, size * 1.6, { fill });
    else this.#pen.circle(x, y, size * 0.7, { fill });
  }

  #stroke(line: LineType): Stroke {
    const { width, colour, dash } = this.#lines[line];
    return {
      width: width * this.#shrink,
      colour: hex(colour),
      ...(dash.length > 0 && { dash: dash.map((step) => step * width * this.#shrink) }),
    };
  }

  /** Eight dashes about a circle, however small. */
  #eighths(r: number): readonly number[] {
    const around = (2 * Math.PI * this.#size(r)) / 8;
    return [around * 0.6, around * 0.4];
  }

  #path(points: readonly Point[], closed: boolean): string {
    const steps = points.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${rounded(this.#x(x))} ${rounded(this.#y(y))}`);
    return `${steps.join('')}${closed ? 'Z' : ''}`;
  }

  #x(x: number): number {
    return this.#origin.x + this.#size(x);
  }
  #y(y: number): number {
    return this.#origin.y + this.#size(y);
  }
  #size(length: number): number {
    return (length / this.#scale) * this.#shrink;
  }
}

/** To a micrometre of paper; the reader of paths takes no exponents. */
function rounded(value: number): number {
  return Math.round(value * 1000) / 1000 + 0;
}
