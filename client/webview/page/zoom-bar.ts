import { h, say } from './dom.js';
import type { Viewport } from './viewport.js';

/** The buttons that zoom a drawing, and between them how far it is zoomed. */
export class ZoomBar {
  readonly #viewport: () => Viewport;

  readonly element: HTMLElement;
  readonly #percent: HTMLButtonElement;

  /** @param viewport asked for at each press, since the bar is part of the page before the drawing is. */
  constructor(viewport: () => Viewport) {
    this.#viewport = viewport;

    this.#percent = h('button', { type: 'button', class: 'percent', title: 'Show the whole drawing (0)' });
    this.#percent.addEventListener('click', () => viewport().go(null));
    const zoom = (words: string, title: string, steps: number): HTMLButtonElement => {
      const button = h('button', { type: 'button', title, 'aria-label': title }, words);
      button.addEventListener('click', () => viewport().zoomBy(steps));
      return button;
    };
    this.element = h(
      'div',
      { class: 'zoom' },
      zoom('−', 'Zoom out (−)', -1),
      this.#percent,
      zoom('+', 'Zoom in (+)', 1),
    );
  }

  show(): void {
    const percent = Math.round(this.#viewport().magnification * 100);
    say(this.#percent, `${percent} %`);
    this.#percent.setAttribute('aria-label', `${percent} percent of the whole drawing; show the whole (0)`);
  }
}
