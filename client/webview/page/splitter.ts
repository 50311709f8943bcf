import { h } from './dom.js';
import { LABELS } from './messages.js';

/** Percent of the page for what is under the line. */
const LEAST = 8;
const MOST = 80;
/** Of one key. */
const STEP = 4;

/** A line between what is above and what is under it, which the reader draws with pointer or keys. */
export class Splitter {
  readonly element: HTMLElement;
  readonly #apply: (share: number) => void;
  readonly #settled: (share: number) => void;
  readonly #usual: number;
  #share: number;

  /**
   * @param words what it parts, for a reader who listens
   * @param apply gives what is under the line this part of the page, in percent
   * @param settled the reader has let go of the line
   */
  constructor(words: string, usual: number, apply: (share: number) => void, settled: (share: number) => void) {
    this.#apply = apply;
    this.#settled = settled;
    this.#usual = usual;
    this.#share = usual;
    this.element = h('div', {
      class: 'splitter',
      role: 'separator',
      tabindex: '0',
      'aria-orientation': 'horizontal',
      'aria-label': words,
      'aria-valuemin': String(LEAST),
      'aria-valuemax': String(MOST),
      title: LABELS.splitter,
    });
    this.#listen();
    this.show(usual);
  }

  show(share: number): void {
    this.#share = Math.min(Math.max(share, LEAST), MOST);
    this.element.setAttribute('aria-valuenow', String(Math.round(this.#share)));
    this.#apply(this.#share);
  }

  #listen(): void {
    const { element } = this;
    let gripped = false;
    element.addEventListener('pointerdown', (event) => {
      if (event.button !== 0) return;
      element.setPointerCapture(event.pointerId);
      gripped = true;
    });
    element.addEventListener('pointermove', (event) => {
      if (!gripped) return;
      const { bottom, height } = document.body.getBoundingClientRect();
      this.show(((bottom - event.clientY) / height) * 100);
    });
    for (const end of ['pointerup', 'pointercancel'] as const) {
      element.addEventListener(end, () => {
        if (gripped) this.#settled(this.#share);
        gripped = false;
      });
    }
    element.addEventListener('dblclick', () => this.#settle(this.#usual));
    element.addEventListener('keydown', ({ key }) => {
      const to = { ArrowUp: this.#share + STEP, ArrowDown: this.#share - STEP, Home: MOST, End: LEAST }[key];
      if (to !== undefined) this.#settle(to);
    });
  }

  #settle(share: number): void {
    this.show(share);
    this.#settled(this.#share);
  }
}
