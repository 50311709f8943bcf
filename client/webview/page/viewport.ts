import { set } from './dom.js';
import type { Box, Pane, Point } from '../../../shared-core/drawing/scene/scene.js';

/** Where the reader has moved to: centre in scene millimetres, CSS pixels for one of them. */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly zoom: number;
}

/** CSS pixels for a millimetre of lettering: capitals of 2.5 mm are 9 pixels high, as those of the editor's own text are. */
const PIXELS_PER_MM = 3.6;
/** Room of the zoom buttons, in CSS pixels. */
const CORNER = { width: 130, height: 40 };
/** A place that was kept; null where it does not look like one. */
export function readPlace(kept: unknown): Place | null {
  if (typeof kept !== 'object' || kept === null || !('x' in kept) || !('y' in kept) || !('zoom' in kept)) return null;
  const { x, y, zoom } = kept;
  const sound = [x, y, zoom].every((value) => typeof value === 'number' && Number.isFinite(value));
  return sound && typeof x === 'number' && typeof y === 'number' && typeof zoom === 'number' && zoom > 0
    ? { x, y, zoom }
    : null;
}

/** So much of the pane may be empty beside the drawing: else it could not be moved freely while it grows past its pane. */
const SLACK = 0.25;
/** How much larger one step of zoom makes the drawing. */
export const STEP = 1.25;
/** Against the drawing fitted into its pane. */
const LEAST = 0.5;
const MOST = 40;

/** What part of the scene is seen. Until the reader zooms or moves, the whole of it, whatever the size of the pane. */
export class Viewport {
  readonly #svg: SVGSVGElement;
  readonly #changed: () => void;

  /** null: fitted. */
  place: Place | null = null;
  #frame: Box = { x: 0, y: 0, width: 1, height: 1 };
  /** Room in CSS pixels, as it was measured last; null where it may have changed since. */
  #measured: Pane | null = null;

  constructor(svg: SVGSVGElement, changed: () => void) {
    this.#svg = svg;
    this.#changed = changed;

    new ResizeObserver(() => {
      this.#measured = null;
      this.#apply();
    }).observe(svg);
  }

  /** @param frame what the whole is from now on; null where it stays */
  show(frame: Box | null): void {
    if (frame !== null) this.#frame = frame;
    this.#apply();
  }

  /** To ask for it has the whole page laid out at once, so it is asked for only where the pane has changed. */
  get #size(): Pane {
    if (this.#measured !== null) return this.#measured;
    const { clientWidth: width, clientHeight: height } = this.#svg;
    if (width > 0 && height > 0) return (this.#measured = { width, height });
    return { width: 1, height: 1 };
  }

  /** The whole, clear of the zoom buttons in the lower right corner. */
  get #fitted(): Place {
    const { x, y, width, height } = this.#frame;
    const { width: wide, height: high } = this.#size;
    const within = (room: number): number => Math.min(wide / width, Math.max(room, 1) / height);
    let zoom = within(high);
    let lift = 0;
    if ((wide - width * zoom) / 2 < CORNER.width) {
      zoom = within(high - CORNER.height);
      lift = Math.max(0, CORNER.height - (high - height * zoom) / 2);
    }
    return { x: x + width / 2, y: y + height / 2 + lift / zoom, zoom };
  }

  get current(): Place {
    return this.place === null ? this.#fitted : this.#within(this.place);
  }

  /** Room for a drawing, in whole millimetres of lettering. */
  get pane(): Pane {
    const { width, height } = this.#size;
    return { width: Math.round(width / PIXELS_PER_MM), height: Math.round(height / PIXELS_PER_MM) };
  }

  /** Whether all of the drawing is seen, so that there is nowhere to move it to. */
  get isWhole(): boolean {
    return this.place === null || this.place.zoom <= this.#fitted.zoom * 1.001;
  }

  /** The nearest place that does not leave the drawing: a part of it fills the pane, or all of it is in the pane, but for a little. */
  #within({ x, y, zoom }: Place): Place {
    const fitted = this.#fitted;
    const { width, height } = this.#size;
    const { x: left, y: top, width: wide, height: high } = this.#frame;
    const inside = (centre: number, low: number, span: number, room: number, home: number): number => {
      const [a, b] = [low + room / 2, low + span - room / 2];
      // The whole lies a little higher than the middle where the buttons are in its way.
      const slack = room * SLACK;
      return Math.min(Math.max(centre, Math.min(a, b, home) - slack), Math.max(a, b, home) + slack);
    };
    return {
      x: inside(x, left, wide, width / zoom, fitted.x),
      y: inside(y, top, high, height / zoom, fitted.y),
      zoom,
    };
  }

  /** How many times larger than fitted. */
  get magnification(): number {
    return this.current.zoom / this.#fitted.zoom;
  }

  /** Moves to a place: one that was kept, or null for the whole drawing. */
  go(place: Place | null): void {
    this.place = place === null ? null : this.#within(place);
    this.#apply();
  }

  /** Zooms by so many steps, in where positive, holding the given point of the pane (its middle by default) where it is. */
  zoomBy(steps: number, at?: Point): void {
    const { x, y, zoom } = this.current;
    const least = this.#fitted.zoom;
    const wanted = Math.min(Math.max(zoom * STEP ** steps, least * LEAST), least * MOST);
    const { width, height } = this.#size;
    const off = at === undefined ? { x: 0, y: 0 } : { x: at.x - width / 2, y: at.y - height / 2 };
    this.go({ x: x + off.x / zoom - off.x / wanted, y: y + off.y / zoom - off.y / wanted, zoom: wanted });
  }

  /** Moves the drawing by CSS pixels; the whole drawing stays where it is. */
  panBy(dx: number, dy: number): void {
    if (this.isWhole) return;
    const { x, y, zoom } = this.current;
    this.go({ x: x - dx / zoom, y: y - dy / zoom, zoom });
  }

  /** Brings a point into the pane if it is not there. */
  reveal({ x, y }: Point): void {
    const { x: cx, y: cy, zoom } = this.current;
    const { width, height } = this.#size;
    const margin = 24;
    if (Math.abs(x - cx) * zoom > width / 2 - margin || Math.abs(y - cy) * zoom > height / 2 - margin)
      this.go({ x, y, zoom });
  }

  /** A point of the pane in scene millimetres. */
  toScene({ x, y }: Point): Point {
    const { x: cx, y: cy, zoom } = this.current;
    const { width, height } = this.#size;
    return { x: cx + (x - width / 2) / zoom, y: cy + (y - height / 2) / zoom };
  }

  toPane({ x, y }: Point): Point {
    const { x: cx, y: cy, zoom } = this.current;
    const { width, height } = this.#size;
    return { x: (x - cx) * zoom + width / 2, y: (y - cy) * zoom + height / 2 };
  }

  #apply(): void {
    const { x, y, zoom } = this.current;
    const { width, height } = this.#size;
    const [w, h] = [width / zoom, height / zoom];
    set(this.#svg, 'viewBox', [x - w / 2, y - h / 2, w, h].map((value) => value.toFixed(3)).join(' '));
    this.#svg.classList.toggle('is-whole', this.isWhole);
    this.#changed();
  }
}
