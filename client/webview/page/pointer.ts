import type { Point } from '../../../shared-core/drawing/scene/scene.js';
import { STEP, type Viewport } from './viewport.js';

/** Where the arrow keys lead. */
export const ARROWS: Readonly<Record<string, Point>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

/** How near to a thing, in CSS pixels, the pointer still means it. */
const NEAR = 9;
/** How far the pointer may stray in a click. */
const STRAY = 4;

export interface PointerActions {
  /** The pointer rests here, in the pane; null where it has left. */
  readonly hover: (pane: Point | null) => void;
  readonly click: (event: MouseEvent) => void;
  /** The wheel is turned over a drawing that is seen whole, by CSS pixels; left out where the page itself scrolls. */
  readonly scroll?: (by: number) => void;
}

/** Where a pointer is, in CSS pixels from the corner of the drawing. */
export function inPane(svg: SVGElement, event: MouseEvent): Point {
  const { left, top } = svg.getBoundingClientRect();
  return { x: event.clientX - left, y: event.clientY - top };
}

/** Drags, scrolls, pinches and zooms a drawing; what is none of these is a click. */
export function listenToPointer(svg: SVGElement, viewport: Viewport, { hover, click, scroll }: PointerActions): void {
  let grip: { x: number; y: number; moved: boolean } | null = null;
  /** Fingers that rest on the drawing, by pointer. */
  const fingers = new Map<number, Point>();
  svg.addEventListener('pointerdown', (event) => {
    if (event.button !== 0) return;
    svg.setPointerCapture(event.pointerId);
    fingers.set(event.pointerId, inPane(svg, event));
    // A second finger makes it a pinch, whatever the first was about to do.
    grip = { x: event.clientX, y: event.clientY, moved: fingers.size > 1 };
  });
  svg.addEventListener('pointermove', (event) => {
    const others = [...fingers].filter(([id]) => id !== event.pointerId).map(([, at]) => at);
    const before = fingers.get(event.pointerId);
    if (before !== undefined) fingers.set(event.pointerId, inPane(svg, event));
    if (before !== undefined && others.length > 0) {
      pinch(viewport, others[0]!, before, inPane(svg, event));
      return;
    }
    if (grip === null) {
      hover(inPane(svg, event));
      return;
    }
    const [dx, dy] = [event.clientX - grip.x, event.clientY - grip.y];
    if (!grip.moved && Math.hypot(dx, dy) < STRAY) return;
    grip = { x: event.clientX, y: event.clientY, moved: true };
    svg.classList.add('gripped');
    viewport.panBy(dx, dy);
  });
  const release = (event: PointerEvent): void => {
    fingers.delete(event.pointerId);
    const [left] = fingers.values();
    const { left: paneX, top: paneY } = svg.getBoundingClientRect();
    // The finger that is left goes on dragging from where it is.
    grip = left === undefined ? null : { x: left.x + paneX, y: left.y + paneY, moved: true };
    if (grip === null) svg.classList.remove('gripped');
  };
  svg.addEventListener('pointerup', (event) => {
    const clicked = grip !== null && !grip.moved;
    release(event);
    if (clicked) click(event);
  });
  svg.addEventListener('pointercancel', release);
  svg.addEventListener('pointerleave', () => hover(null));
  svg.addEventListener(
    'wheel',
    (event) => {
      const zooms = event.ctrlKey || event.metaKey;
      const lines = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 20 : 1;
      if (viewport.isWhole && !zooms) {
        scroll?.(event.deltaY * lines);
        return;
      }
      event.preventDefault();
      if (zooms) viewport.zoomBy((-event.deltaY * lines) / 100, inPane(svg, event));
      else if (event.shiftKey) viewport.panBy(-(event.deltaX + event.deltaY) * lines, 0);
      else viewport.panBy(-event.deltaX * lines, -event.deltaY * lines);
    },
    { passive: false },
  );
}

/** One of two fingers moves: what lies between them stays between them, and grows as they part. */
function pinch(viewport: Viewport, still: Point, from: Point, to: Point): void {
  const [was, is] = [from, to].map(({ x, y }) => Math.max(Math.hypot(x - still.x, y - still.y), 1));
  viewport.zoomBy(Math.log(is! / was!) / Math.log(STEP), { x: (still.x + from.x) / 2, y: (still.y + from.y) / 2 });
  viewport.panBy((to.x - from.x) / 2, (to.y - from.y) / 2);
}

/** Something round that is drawn, in the scene. */
export interface Round extends Point {
  readonly r: number;
}

/** The thing that a point of the pane lies on or next to. */
export function nearestTo<T>(
  pane: Point,
  viewport: Viewport,
  things: readonly T[],
  roundOf: (thing: T) => Round,
): T | null {
  const at = viewport.toScene(pane);
  const reach = NEAR / viewport.current.zoom;
  let best: T | null = null;
  let least = Infinity;
  for (const thing of things) {
    const { x, y, r } = roundOf(thing);
    const distance = Math.hypot(x - at.x, y - at.y);
    if (distance > Math.max(r, reach) || distance >= least) continue;
    best = thing;
    least = distance;
  }
  return best;
}
