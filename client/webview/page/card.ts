import type { Round } from './pointer.js';
import type { Viewport } from './viewport.js';

/** Puts a card beside a round thing of the drawing, on the side where the pane has room for it. */
export function placeCard(card: HTMLElement, pane: HTMLElement, viewport: Viewport, thing: Round): void {
  const at = viewport.toPane(thing);
  const off = thing.r * viewport.current.zoom + 12;
  const { width, height } = card.getBoundingClientRect();
  const { clientWidth, clientHeight } = pane;
  const left = at.x + off + width < clientWidth ? at.x + off : at.x - off - width;
  const top = at.y + off + height < clientHeight ? at.y + off : at.y - off - height;
  card.style.left = `${Math.round(Math.min(Math.max(left, 4), Math.max(clientWidth - width - 4, 4)))}px`;
  card.style.top = `${Math.round(Math.min(Math.max(top, 4), Math.max(clientHeight - height - 4, 4)))}px`;
}
