import type { Point } from '../../shared-core/drawing/scene.js';
import type { Viewport } from './viewport.js';

/** How near to a thing, in CSS pixels, the pointer still means it. */
const NEAR = 9;
/** How far the pointer may stray in a click. */
const STRAY = 4;

export interface PointerActions {
  /** The pointer rests here, in the pane; null where it has left. */
  readonly hover: (pane: Point | null) => void;
  readonly click: (event: MouseEvent) => void;
}

export function inPane(svg: SVGElement, event: MouseEvent): Point {
  const { left, top } = svg.getBoundingClientRect();
  return { x: event.clientX - left, y: event.clientY - top };
}

/** Drags, scrolls and zooms a drawing; what is no drag is a click. */
export function listenToPointer(svg: SVGElement, viewport: Viewport, { hover, click }: PointerActions): void {
  let grip: { x: number; y: number; moved: boolean } | null = null;
  svg.addEventListener('pointerdown', (event) => {
    if (event.button !== 0) return;
    grip = { x: event.clientX, y: event.clientY, moved: false };
    svg.setPointerCapture(event.pointerId);
  });
  svg.addEventListener('pointermove', (event) => {
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
  const release = (): void => {
    grip = null;
    svg.classList.remove('gripped');
  };
  svg.addEventListener('pointerup', (event) => {
    const clicked = grip !== null && !grip.moved;
    release();
    if (clicked) click(event);
  });
  svg.addEventListener('pointercancel', release);
  svg.addEventListener('pointerleave', () => hover(null));
  svg.addEventListener(
    'wheel',
    (event) => {
      event.preventDefault();
      const lines = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 20 : 1;
      if (event.ctrlKey || event.metaKey) viewport.zoomBy((-event.deltaY * lines) / 100, inPane(svg, event));
      else if (event.shiftKey) viewport.panBy(-(event.deltaX + event.deltaY) * lines, 0);
      else viewport.panBy(-event.deltaX * lines, -event.deltaY * lines);
    },
    { passive: false },
  );
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
