import { placeCard } from '../page/card.js';
import { listenToPointer, nearestTo, type Round } from '../page/pointer.js';
import { ZoomBar } from '../page/zoom-bar.js';
import { sentence } from '../../../shared-core/words/english.js';
import type { MachineScene } from '../../../shared-core/drawing/machine-view/scene.js';
import type { Point } from '../../../shared-core/drawing/scene/scene.js';
import { sceneNodes } from '../../../shared-core/drawing/render/svg-tree.js';
import { h, say, svg } from '../page/dom.js';
import { patch } from '../page/patch.js';
import { Viewport, type Place } from '../page/viewport.js';
import { LABELS } from './messages.js';

export interface MachineBoardActions {
  /** The reader wants the text that makes the panel. */
  readonly reveal: () => void;
  /** Zoom or place have changed. */
  readonly moved: () => void;
}

/** Something on the table that tells about itself. */
interface Told extends Round {
  readonly key: string;
  readonly about: string;
}

/** The drawing of one stroke: patched in place, moved and zoomed; what the pointer means tells about itself. */
export class MachineBoard {
  readonly #actions: MachineBoardActions;

  readonly element: HTMLElement;
  readonly viewport: Viewport;
  readonly #drawing = svg('g', { class: 'shapes' });
  readonly #rings = svg('g', { class: 'rings' });
  readonly #svg = svg(
    'svg',
    { class: 'drawing', role: 'img', tabindex: '0', 'aria-describedby': 'described' },
    this.#drawing,
    this.#rings,
  );
  readonly #card = h('div', { class: 'card', 'aria-hidden': 'true', hidden: true });
  readonly #zooms = new ZoomBar(() => this.viewport);
  readonly #words = h('p', { class: 'unseen', id: 'described' });
  #told: readonly Told[] = [];
  #hovered: Told | null = null;

  constructor(actions: MachineBoardActions) {
    this.#actions = actions;

    this.element = h('div', { class: 'board machine' }, this.#svg, this.#zooms.element, this.#card, this.#words);
    this.viewport = new Viewport(this.#svg, () => {
      this.#drawRing();
      this.#showCard();
      this.#zooms.show();
      actions.moved();
    });
    this.#listen();
  }

  /** @param fitted whether the scene is lettered for the whole drawing, so that its frame is what fits the pane */
  show(scene: MachineScene, place: Place | null, fitted: boolean): void {
    this.#svg.style.setProperty('--paper-mm', String(scene.scale));
    this.#svg.setAttribute('aria-label', `${scene.title}. ${scene.words.lie}`);
    say(this.#words, `${scene.words.described} ${LABELS.keys}`);
    patch(this.#drawing, sceneNodes(scene));
    this.#told = toldOf(scene);
    this.#hovered = this.#told.find(({ key }) => key === this.#hovered?.key) ?? null;
    this.viewport.place = place;
    this.viewport.show(fitted ? scene.frame : null);
  }

  clear(): void {
    this.#told = [];
    this.#hovered = null;
    say(this.#words, '');
    patch(this.#drawing, []);
    this.#drawRing();
    this.#showCard();
  }

  #listen(): void {
    listenToPointer(this.#svg, this.viewport, {
      hover: (pane) => this.#hover(pane && this.#nearest(pane)),
      click: (event) => {
        if (isOnPanel(event)) this.#actions.reveal();
      },
    });
  }

  #nearest(pane: Point): Told | null {
    return nearestTo(pane, this.viewport, this.#told, (one) => one);
  }

  #hover(one: Told | null): void {
    if (one === this.#hovered) return;
    this.#hovered = one;
    this.#drawRing();
    this.#showCard();
  }

  #drawRing(): void {
    const { zoom } = this.viewport.current;
    const one = this.#hovered;
    const nodes =
      one === null
        ? []
        : [
            {
              tag: 'circle',
              key: 'ring',
              attributes: {
                class: 'ring hovered',
                cx: String(one.x),
                cy: String(one.y),
                r: String(one.r + 4 / zoom),
              },
              children: [],
            },
          ];
    patch(this.#rings, nodes);
  }

  /** What is known of the thing that the pointer means, beside it. */
  #showCard(): void {
    const one = this.#hovered;
    this.#card.hidden = one === null;
    if (one === null) return;
    const colon = one.about.indexOf(': ');
    this.#card.replaceChildren(
      h('strong', {}, one.about.slice(0, colon)),
      h('span', {}, sentence(one.about.slice(colon + 2))),
    );
    placeCard(this.#card, this.element, this.viewport, one);
  }
}

/** Spindles and holes that are drawn, by where they are; a loaded spindle speaks for the hole under it. */
function toldOf(scene: MachineScene): Told[] {
  const shapes = new Map(scene.shapes.map((shape) => [shape.key, shape]));
  return [...scene.spindles, ...scene.holes].flatMap(({ key, about }): Told[] => {
    const shape = shapes.get(key);
    if (shape?.kind === 'circle') return [{ key, about, x: shape.cx, y: shape.cy, r: shape.r }];
    if (shape?.kind !== 'path') return [];
    const xs = shape.points.map(({ x }) => x);
    const ys = shape.points.map(({ y }) => y);
    const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
    return [{ key, about, x: (left + right) / 2, y: (top + bottom) / 2, r: Math.min(right - left, bottom - top) / 2 }];
  });
}

/** The event's own target is the drawing, which has captured it. */
function isOnPanel(event: MouseEvent): boolean {
  const under = document.elementFromPoint(event.clientX, event.clientY);
  return under !== null && under.closest('.panel, [class^="hole"], .band') !== null;
}
