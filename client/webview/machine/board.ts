import type { MachineScene } from '../../../shared-core/drawing/machine-view/scene.js';
import type { Point } from '../../../shared-core/drawing/scene.js';
import { sceneNodes } from '../../../shared-core/drawing/svg-tree.js';
import { h, say } from '../dom.js';
import { patch } from '../patch.js';
import { Viewport, type Place } from '../viewport.js';

export interface MachineBoardActions {
  /** The reader wants the text that makes the panel. */
  readonly reveal: () => void;
  /** Zoom or place have changed. */
  readonly moved: () => void;
}

/** Something on the table that tells about itself. */
interface Told {
  readonly key: string;
  readonly about: string;
  readonly x: number;
  readonly y: number;
  readonly r: number;
}

const NEAR = 9;
const STRAY = 4;

/** The drawing of one stroke: patched in place, moved and zoomed; what the pointer means tells about itself. */
export class MachineBoard {
  readonly element: HTMLElement;
  readonly viewport: Viewport;
  private readonly svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
  private readonly drawing = document.createElementNS('http://www.w3.org/2000/svg', 'g');
  private readonly rings = document.createElementNS('http://www.w3.org/2000/svg', 'g');
  private readonly card = h('div', { class: 'card', 'aria-hidden': 'true', hidden: true });
  private readonly percent = h('button', { type: 'button', class: 'percent', title: 'Show the whole drawing (0)' });
  private readonly words = h('p', { class: 'unseen', id: 'described' });
  private told: readonly Told[] = [];
  private hovered: Told | null = null;

  constructor(private readonly actions: MachineBoardActions) {
    this.svg.setAttribute('class', 'drawing');
    this.svg.setAttribute('role', 'img');
    this.svg.setAttribute('tabindex', '0');
    this.svg.setAttribute('aria-describedby', 'described');
    this.drawing.setAttribute('class', 'shapes');
    this.rings.setAttribute('class', 'rings');
    this.svg.append(this.drawing, this.rings);
    const zoom = (words: string, title: string, steps: number): HTMLButtonElement => {
      const button = h('button', { type: 'button', title, 'aria-label': title }, words);
      button.addEventListener('click', () => this.viewport.zoomBy(steps));
      return button;
    };
    this.percent.addEventListener('click', () => this.viewport.go(null));
    const zooms = h('div', { class: 'zoom' }, zoom('−', 'Zoom out (−)', -1), this.percent, zoom('+', 'Zoom in (+)', 1));
    this.element = h('div', { class: 'board machine' }, this.svg, zooms, this.card, this.words);
    this.viewport = new Viewport(this.svg, () => {
      this.drawRing();
      this.showCard();
      this.showPercent();
      actions.moved();
    });
    this.listen();
  }

  /** @param fitted whether the scene is lettered for the whole drawing, so that its frame is what fits the pane */
  show(scene: MachineScene, place: Place | null, fitted: boolean): void {
    this.svg.style.setProperty('--paper-mm', String(scene.scale));
    this.svg.setAttribute('aria-label', `${scene.title}. ${scene.words.lie}`);
    say(this.words, scene.words.described);
    patch(this.drawing, sceneNodes(scene));
    this.told = toldOf(scene);
    this.hovered = this.told.find(({ key }) => key === this.hovered?.key) ?? null;
    this.viewport.place = place;
    this.viewport.show(fitted ? scene.frame : null);
  }

  clear(): void {
    this.told = [];
    this.hovered = null;
    say(this.words, '');
    patch(this.drawing, []);
    this.drawRing();
    this.showCard();
  }

  private showPercent(): void {
    const percent = Math.round(this.viewport.magnification * 100);
    say(this.percent, `${percent} %`);
    this.percent.setAttribute('aria-label', `${percent} percent of the whole drawing; show the whole (0)`);
  }

  private listen(): void {
    const { svg } = this;
    let grip: { x: number; y: number; moved: boolean } | null = null;
    svg.addEventListener('pointerdown', (event) => {
      if (event.button !== 0) return;
      grip = { x: event.clientX, y: event.clientY, moved: false };
      svg.setPointerCapture(event.pointerId);
    });
    svg.addEventListener('pointermove', (event) => {
      if (grip === null) {
        this.hover(this.nearest(this.inPane(event)));
        return;
      }
      const [dx, dy] = [event.clientX - grip.x, event.clientY - grip.y];
      if (!grip.moved && Math.hypot(dx, dy) < STRAY) return;
      grip = { x: event.clientX, y: event.clientY, moved: true };
      svg.classList.add('gripped');
      this.viewport.panBy(dx, dy);
    });
    const release = (): void => {
      grip = null;
      svg.classList.remove('gripped');
    };
    svg.addEventListener('pointerup', (event) => {
      const clicked = grip !== null && !grip.moved;
      release();
      if (clicked && isOnPanel(event)) this.actions.reveal();
    });
    svg.addEventListener('pointercancel', release);
    svg.addEventListener('pointerleave', () => this.hover(null));
    svg.addEventListener(
      'wheel',
      (event) => {
        event.preventDefault();
        const lines = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 20 : 1;
        if (event.ctrlKey || event.metaKey) this.viewport.zoomBy((-event.deltaY * lines) / 100, this.inPane(event));
        else if (event.shiftKey) this.viewport.panBy(-(event.deltaX + event.deltaY) * lines, 0);
        else this.viewport.panBy(-event.deltaX * lines, -event.deltaY * lines);
      },
      { passive: false },
    );
  }

  private inPane(event: MouseEvent): Point {
    const { left, top } = this.svg.getBoundingClientRect();
    return { x: event.clientX - left, y: event.clientY - top };
  }

  private nearest(pane: Point): Told | null {
    const { x, y } = this.viewport.toScene(pane);
    const reach = NEAR / this.viewport.current.zoom;
    let best: Told | null = null;
    let least = Infinity;
    for (const one of this.told) {
      const distance = Math.hypot(one.x - x, one.y - y);
      if (distance > Math.max(one.r, reach) || distance >= least) continue;
      best = one;
      least = distance;
    }
    return best;
  }

  private hover(one: Told | null): void {
    if (one === this.hovered) return;
    this.hovered = one;
    this.drawRing();
    this.showCard();
  }

  private drawRing(): void {
    const { zoom } = this.viewport.current;
    const one = this.hovered;
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
    patch(this.rings, nodes);
  }

  /** What is known of the thing that the pointer means, beside it. */
  private showCard(): void {
    const one = this.hovered;
    this.card.hidden = one === null;
    if (one === null) return;
    const colon = one.about.indexOf(': ');
    this.card.replaceChildren(
      h('strong', {}, one.about.slice(0, colon)),
      h('span', {}, sentence(one.about.slice(colon + 2))),
    );
    const at = this.viewport.toPane(one);
    const off = one.r * this.viewport.current.zoom + 12;
    const { width, height } = this.card.getBoundingClientRect();
    const { clientWidth, clientHeight } = this.element;
    const left = at.x + off + width < clientWidth ? at.x + off : at.x - off - width;
    const top = at.y + off + height < clientHeight ? at.y + off : at.y - off - height;
    this.card.style.left = `${Math.round(Math.min(Math.max(left, 4), Math.max(clientWidth - width - 4, 4)))}px`;
    this.card.style.top = `${Math.round(Math.min(Math.max(top, 4), Math.max(clientHeight - height - 4, 4)))}px`;
  }
}

const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

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
