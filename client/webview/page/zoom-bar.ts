import { h, say, set } from './dom.js';
import { LABELS, PHRASES } from './messages.js';
import type { Viewport } from './viewport.js';

/** The buttons that zoom a drawing, and between them how far it is zoomed. */
export class ZoomBar {
  readonly #viewport: () => Viewport;

  readonly element: HTMLElement;
  readonly #percent: HTMLButtonElement;

  /** @param viewport asked for at each press, since the bar is part of the page before the drawing is. */
  constructor(viewport: () => Viewport) {
    this.#viewport = viewport;

    this.#percent = h('button', { type: 'button', class: 'percent', title: LABELS.showWhole });
    this.#percent.addEventListener('click', () => viewport().go(null));
    const zoom = (words: string, title: string, steps: number): HTMLButtonElement => {
      const button = h('button', { type: 'button', title, 'aria-label': title }, words);
      button.addEventListener('click', () => viewport().zoomBy(steps));
      return button;
    };
    this.element = h(
      'div',
      { class: 'zoom' },
      zoom('−', LABELS.zoomOut, -1),
      this.#percent,
      zoom('+', LABELS.zoomIn, 1),
    );
  }

  show(): void {
    const percent = Math.round(this.#viewport().magnification * 100);
    say(this.#percent, PHRASES.zoom(percent));
    set(this.#percent, 'aria-label', PHRASES.zoomed(percent));
  }
}
