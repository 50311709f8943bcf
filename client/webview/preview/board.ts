import { placeCard } from '../page/card.js';
import { ARROWS, inPane, listenToPointer, nearestTo, type Round } from '../page/pointer.js';
import { ZoomBar } from '../page/zoom-bar.js';
import { describe } from '../../../shared-core/drawing/bore-map/hole-table.js';
import type { BoreShape, Point, Scene, SourceKey } from '../../../shared-core/drawing/scene/scene.js';
import { isRow } from '../../../shared-core/fittings/purposes.js';
import { sceneNodes, type SvgNode } from '../../../shared-core/drawing/render/svg-tree.js';
import { h, say, set, svg } from '../page/dom.js';
import { LABELS, PHRASES } from './messages.js';
import { Measuring } from './measuring.js';
import { Shelves } from './shelves.js';
import { patch } from '../page/patch.js';
import { Viewport, type Place } from '../page/viewport.js';

export interface BoardActions {
  readonly reveal: (source: SourceKey) => void;
  /** The reader wants the bore map of one of all panels. */
  readonly openPanel: (panel: string) => void;
  /** A loose shelf is wanted so many holes further up. */
  readonly moveShelf: (shelf: string, holes: number) => void;
  /** Zoom or place have changed. */
  readonly moved: () => void;
  /** The wheel is turned over the whole drawing. */
  readonly scroll: (by: number) => void;
}

/** The drawing itself: patched in place, moved and zoomed, its bores pointed at, walked through and followed to the text. */
export class Board {
  readonly #actions: BoardActions;

  readonly element: HTMLElement;
  readonly viewport: Viewport;
  readonly #drawing = svg('g', { class: 'shapes' });
  readonly #rings = svg('g', { class: 'rings' });
  readonly #svg = svg(
    'svg',
    { class: 'drawing', role: 'group', tabindex: '0', 'aria-describedby': 'described' },
    this.#drawing,
    this.#rings,
  );
  readonly #card = h('div', { class: 'card', 'aria-hidden': 'true', hidden: true });
  readonly #zooms = new ZoomBar(() => this.viewport);
  readonly measuring = new Measuring(() => {
    this.#drawRings();
    this.#showCard();
  });
  readonly #keys = h(
    'p',
    { class: 'keys', 'aria-hidden': 'true' },
    [LABELS.keysForBores, LABELS.keyForText, LABELS.keyForMeasuring, LABELS.keysForZoom].join(' · '),
  );
  readonly #words = h('p', { class: 'unseen', id: 'described' });
  readonly #shelves: Shelves;
  readonly #shelfWords = h('p', { class: 'shelf-words', role: 'status', hidden: true });
  #nodes: readonly SvgNode[] = [];
  #scene: Scene | null = null;
  #bores: readonly BoreShape[] = [];
  #hovered: BoreShape | null = null;
  #focused: BoreShape | null = null;
  #pointed: ReadonlySet<string> = new Set();
  #atCursor: ReadonlySet<SourceKey> = new Set();

  constructor(actions: BoardActions) {
    this.#actions = actions;

    this.element = h(
      'section',
      { class: 'board', 'aria-label': LABELS.drawing },
      this.#svg,
      this.#keys,
      this.#shelfWords,
      this.measuring.button,
      this.#zooms.element,
      this.#card,
      this.#words,
    );
    this.viewport = new Viewport(this.#svg, () => {
      this.#drawRings();
      this.#showCard();
      this.#zooms.show();
      actions.moved();
    });
    this.#shelves = new Shelves(this.#svg, this.viewport, {
      move: actions.moveShelf,
      changed: () => {
        say(this.#shelfWords, this.#shelves.words);
        this.#shelfWords.hidden = this.#shelves.words === '';
        this.#drawRings();
      },
      clicked: (event) => this.#click(event),
    });
    this.#listen();
  }

  /**
   * @param place what part of it to show; null for the whole
   * @param fitted whether the scene is lettered for the whole drawing, so that its frame is what fits the pane
   * @param current the panel that is spoken of where all are shown
   */
  show(scene: Scene, place: Place | null, fitted: boolean, current: string | null): void {
    this.#scene = scene;
    this.#bores = scene.shapes.filter((shape): shape is BoreShape => shape.kind === 'bore');
    const scale = String(scene.scale);
    if (this.#svg.style.getPropertyValue('--paper-mm') !== scale) this.#svg.style.setProperty('--paper-mm', scale);
    set(this.#svg, 'aria-label', `${scene.title}. ${scene.caption}`);
    this.#svg.dataset.view = scene.view;
    say(this.#words, `${describe(scene)} ${LABELS.keys}`);
    const firsts = new Set<number>();
    const abouts = new Map(this.#bores.map((bore) => [bore.key, bore]));
    const names = new Set(scene.shapes.flatMap(({ key, class: kind }) => (kind === 'panel-name' ? [key] : [])));
    this.#shelves.show(scene);
    const nodes = sceneNodes(scene).map((node): SvgNode => {
      const bore = abouts.get(node.key);
      if (bore === undefined) {
        if (names.has(node.key)) return opening(node);
        return node.key === `${current ?? ''}:face` ? marked(node) : this.#shelves.reachable(node);
      }
      // Tab goes from one line of the hole table to the next, the arrows from bore to bore.
      const stop = firsts.has(bore.number) ? '-1' : '0';
      firsts.add(bore.number);
      return { ...node, attributes: { ...node.attributes, role: 'button', 'aria-label': bore.about, tabindex: stop } };
    });
    this.#nodes = nodes;
    const changes = patch(this.#drawing, nodes);
    this.#svg.dataset.changes = String(changes);
    const again = (bore: BoreShape | null): BoreShape | null =>
      this.#bores.find(({ bore: id }) => id === bore?.bore) ?? null;
    this.#hovered = again(this.#hovered);
    this.#focused = again(this.#focused);
    this.measuring.renew(scene, this.#bores);
    this.viewport.place = place;
    this.viewport.show(fitted ? scene.frame : null);
  }

  clear(): void {
    this.#scene = null;
    this.#bores = [];
    this.#hovered = null;
    this.#focused = null;
    say(this.#words, '');
    this.measuring.renew(null, []);
    this.#shelves.show(null);
    patch(this.#drawing, []);
    this.#drawRings();
    this.#showCard();
  }

  /** Shows these bores, for a reader who points at their line in a list. */
  point(bores: readonly string[]): void {
    this.#pointed = new Set(bores);
    this.#drawRings();
  }

  /** Shows what comes from the text that the cursor stands in. */
  showCursor(sources: readonly SourceKey[]): void {
    this.#atCursor = new Set(sources);
    this.#drawRings();
  }

  #listen(): void {
    const svg = this.#svg;
    listenToPointer(svg, this.viewport, {
      hover: (pane) => this.#hover(pane && this.#nearest(pane)),
      click: (event) => this.#click(event),
      scroll: (by) => this.#actions.scroll(by),
    });
    svg.addEventListener('keydown', (event) => this.#key(event));
    svg.addEventListener('focusin', (event) => this.#focus(event.target));
    svg.addEventListener('focusout', () => this.#focus(null));
  }

  /** The bore that a point of the pane lies on or next to. */
  #nearest(pane: Point): BoreShape | null {
    return nearestTo(pane, this.viewport, this.#bores, roundOf);
  }

  #click(event: MouseEvent): void {
    const bore = this.#nearest(inPane(this.#svg, event));
    if (this.measuring.isOn) {
      if (bore !== null) this.measuring.pick(bore);
      return;
    }
    const named = bore === null ? attributeUnder(event, 'data-opens') : null;
    if (named !== null) {
      this.#actions.openPanel(named);
      return;
    }
    const source = bore?.source ?? attributeUnder(event, 'data-source');
    if (source !== null && source !== undefined) this.#actions.reveal(source);
  }

  #hover(bore: BoreShape | null): void {
    if (bore === this.#hovered) return;
    this.#hovered = bore;
    this.#svg.classList.toggle('on-bore', bore !== null);
    this.#drawRings();
    this.#showCard();
  }

  #focus(target: EventTarget | null): void {
    const id = target instanceof SVGElement ? target.dataset.bore : undefined;
    this.#focused = this.#bores.find(({ bore }) => bore === id) ?? null;
    if (this.#focused !== null) this.viewport.reveal({ x: this.#focused.cx, y: this.#focused.cy });
    this.#drawRings();
    this.#showCard();
  }

  #key(event: KeyboardEvent): void {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const arrow = ARROWS[event.key];
    const named = event.target instanceof SVGElement ? event.target.dataset.opens : undefined;
    if (arrow !== undefined && this.#focused !== null) this.#step(this.#focused, arrow);
    else if (arrow !== undefined) this.viewport.panBy(-arrow.x * 40, -arrow.y * 40);
    else if (event.key === '+' || event.key === '=') this.viewport.zoomBy(1, this.#focusPoint());
    else if (event.key === '-') this.viewport.zoomBy(-1, this.#focusPoint());
    else if (event.key === '0') this.viewport.go(null);
    else if (event.key.toLowerCase() === 'm') this.#measure();
    else if (event.key === 'Escape' && this.measuring.isOn) this.measuring.turn(false);
    else if (isPress(event) && named !== undefined) this.#actions.openPanel(named);
    else if (isPress(event) && this.#focused?.source !== undefined) this.#actions.reveal(this.#focused.source);
    else if (event.key === 'Escape') this.#svg.focus();
    else return;
    event.preventDefault();
  }

  /** Takes the bore that the keys are at; without one it begins, or leaves off. */
  #measure(): void {
    if (this.#focused === null) this.measuring.turn(!this.measuring.isOn);
    else this.measuring.pick(this.#focused);
  }

  #focusPoint(): Point | undefined {
    return this.#focused === null ? undefined : this.viewport.toPane({ x: this.#focused.cx, y: this.#focused.cy });
  }

  /** Moves the focus to the nearest bore that lies in the arrow's direction; what lies straight ahead counts as nearer. */
  #step(from: BoreShape, arrow: Point): void {
    let best: BoreShape | null = null;
    let least = Infinity;
    for (const bore of this.#bores) {
      const ahead = (bore.cx - from.cx) * arrow.x + (bore.cy - from.cy) * arrow.y;
      const aside = Math.abs((bore.cx - from.cx) * arrow.y) + Math.abs((bore.cy - from.cy) * arrow.x);
      if (ahead <= 0.001 || aside > ahead * 2) continue;
      const cost = ahead + 3 * aside;
      if (cost >= least) continue;
      best = bore;
      least = cost;
    }
    if (best !== null) this.#drawing.querySelector<SVGElement>(`[data-bore="${CSS.escape(best.bore)}"]`)?.focus();
  }

  /** Rings over the drawing, of a width that does not grow with it: hovered, focused, pointed at, at the cursor. */
  #drawRings(): void {
    const { zoom } = this.viewport.current;
    // Text that concerns the whole drawing marks nothing in it.
    const cursor = this.#bores.filter(({ source }) => source !== undefined && this.#atCursor.has(source));
    // Rings of a row must not run into each other where the whole of a long panel is seen.
    const apart = (bore: BoreShape): boolean => !isRow(bore) || zoom > 0.1;
    const near = Math.min(3.5, Math.max(1, 8 * zoom));
    const rings = [
      ...(cursor.length < this.#bores.length ? cursor : [])
        .filter(apart)
        .map((bore) => ({ bore, kind: 'cursor', more: near })),
      ...this.#bores.filter(({ bore }) => this.#pointed.has(bore)).map((bore) => ({ bore, kind: 'pointed', more: 4 })),
      ...(this.#hovered === null ? [] : [{ bore: this.#hovered, kind: 'hovered', more: 4 }]),
      ...(this.#focused === null ? [] : [{ bore: this.#focused, kind: 'focused', more: 6 }]),
    ];
    patch(this.#rings, [
      ...this.measuring.nodes(zoom),
      ...this.#shelves.nodes(this.#nodes),
      ...rings.map(({ bore, kind, more }) => ({
        tag: 'circle',
        key: `${kind}:${bore.bore}`,
        attributes: {
          class: `ring ${kind}`,
          cx: String(bore.cx),
          cy: String(bore.cy),
          r: String(bore.r + more / zoom),
        },
        children: [],
      })),
    ]);
  }

  /** What is known of the bore that is hovered or focused, beside it. */
  #showCard(): void {
    const bore = this.#hovered ?? this.#focused;
    // Whoever measures sees the bores and the way between them.
    this.#card.hidden = bore === null || this.measuring.isOn;
    if (bore === null || this.#scene === null) return;
    const colon = bore.about.indexOf(': ');
    const found = this.#scene.findings.filter(({ bores }) => bores.includes(bore.bore));
    this.#card.replaceChildren(
      h('strong', {}, bore.about.slice(0, colon)),
      h('span', {}, bore.about.slice(colon + 2)),
      ...found.map(({ severity, message }) => h('span', { class: `found ${severity}` }, message)),
    );
    placeCard(this.#card, this.element, this.viewport, roundOf(bore));
  }
}

const roundOf = ({ cx, cy, r }: BoreShape): Round => ({ x: cx, y: cy, r });

/** What lies under the pointer; the event's own target is the drawing, which has captured it. */
function attributeUnder(event: MouseEvent, name: string): string | null {
  return document.elementFromPoint(event.clientX, event.clientY)?.closest(`[${name}]`)?.getAttribute(name) ?? null;
}

function marked(node: SvgNode): SvgNode {
  return { ...node, attributes: { ...node.attributes, class: `${node.attributes.class ?? ''} current` } };
}

/** The name of a panel, where all are shown, opens its bore map. */
function opening(node: SvgNode): SvgNode {
  const panel = node.attributes['data-panel'] ?? '';
  const more = { 'data-opens': panel, role: 'button', tabindex: '0', 'aria-label': PHRASES.openPanel(panel) };
  return { ...node, attributes: { ...node.attributes, ...more } };
}

const isPress = ({ key }: KeyboardEvent): boolean => key === 'Enter' || key === ' ';
