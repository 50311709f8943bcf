import { degrees, LineCapStyle, rgb, type Color, type PDFPage } from '@cantoo/pdf-lib';
import { type Fonts, POINTS_PER_MM } from './fonts.js';

export interface Stroke {
  /** Millimetres. */
  readonly width: number;
  readonly colour: Color;
  /** Lengths of dashes and gaps, in millimetres. */
  readonly dash?: readonly number[];
}

export interface Lettering {
  /** Font size, in millimetres. */
  readonly size: number;
  readonly strong?: boolean;
  readonly colour?: Color;
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly turn?: 0 | -90;
}

export const INK = hex('#1f1f1f');
/** Side of a box to tick. */
export const TICK_SIDE = 4.2;
const pt = POINTS_PER_MM;

/** Draws on one page in millimetres, x to the right and y down from the top left corner. */
export class Pen {
  readonly #page: PDFPage;
  readonly #fonts: Fonts;

  constructor(page: PDFPage, fonts: Fonts) {
    this.#page = page;
    this.#fonts = fonts;
  }

  /** `x`, `y` is the anchor on the base line. */
  text(words: string, x: number, y: number, lettering: Lettering): void {
    const { size, strong = false, colour = INK, anchor = 'start', turn = 0 } = lettering;
    const shown = this.#fonts.shown(words);
    if (shown === '') return;
    const before = { start: 0, middle: 0.5, end: 1 }[anchor] * this.#fonts.width(shown, size, strong);
    const [left, base] = turn === 0 ? [x - before, y] : [x, y + before];
    this.#page.drawText(shown, {
      x: left * pt,
      y: this.#up(base),
      size: size * pt,
      font: this.#fonts.of(strong),
      color: colour,
      rotate: degrees(-turn),
    });
  }

  line(x1: number, y1: number, x2: number, y2: number, stroke: Stroke): void {
    this.path(`M${x1} ${y1}L${x2} ${y2}`, { stroke });
  }

  rectangle(x: number, y: number, width: number, height: number, look: Look): void {
    this.path(`M${x} ${y}H${x + width}V${y + height}H${x}Z`, look);
  }

  /** A box to tick, by its upper left corner. */
  tick(x: number, y: number): void {
    this.rectangle(x, y, TICK_SIDE, TICK_SIDE, { stroke: { width: 0.3, colour: INK } });
  }

  circle(x: number, y: number, r: number, { stroke, fill }: Look): void {
    this.#page.drawCircle({
      x: x * pt,
      y: this.#up(y),
      size: r * pt,
      ...(fill !== undefined && { color: fill }),
      ...(stroke !== undefined && { borderColor: stroke.colour, borderWidth: stroke.width * pt, ...dashed(stroke) }),
    });
  }

  /** A path in the words of SVG, in millimetres of the page. */
  path(d: string, { stroke, fill }: Look): void {
    this.#page.drawSvgPath(d, {
      x: 0,
      y: this.#page.getHeight(),
      scale: pt,
      ...(fill !== undefined && { color: fill }),
      // The scale goes for the width of the line too.
      ...(stroke !== undefined && {
        borderColor: stroke.colour,
        borderWidth: stroke.width,
        ...(stroke.dash !== undefined && { borderDashArray: [...stroke.dash] }),
        borderLineCap: LineCapStyle.Butt,
      }),
    });
  }

  #up(y: number): number {
    return this.#page.getHeight() - y * pt;
  }
}

export interface Look {
  readonly stroke?: Stroke;
  readonly fill?: Color;
}

function dashed({ dash }: Stroke): { borderDashArray?: number[] } {
  return dash === undefined ? {} : { borderDashArray: dash.map((length) => length * pt) };
}

/** '#rrggbb' */
export function hex(colour: string): Color {
  const part = (from: number): number => Number.parseInt(colour.slice(from, from + 2), 16) / 255;
  return rgb(part(1), part(3), part(5));
}
