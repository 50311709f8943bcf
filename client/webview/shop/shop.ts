import '../page/speak.js';
import type { ShopMachineView, ShopViewReply } from '../../../shared-core/drawing/messages/shop-view.js';
import { sceneNodes } from '../../../shared-core/drawing/render/svg-tree.js';
import { isShopSubject, isToShopPage, type FromShopPage } from '../messages/shop.js';
import { h, say, set, show, svg } from '../page/dom.js';
import { editorSide } from '../page/editor.js';
import { LABELS as OF_PAGE, PHRASES } from '../page/messages.js';
import { patch } from '../page/patch.js';
import { LABELS } from './messages.js';

/** CSS pixels for a millimetre of lettering: capitals of 2.5 mm are 9 pixels high. */
const PIXELS_PER_MM = 3.6;
/** A page's own margin on both sides, in CSS pixels. */
const MARGIN = 24;

const editor = editorSide<FromShopPage>();
const head = h('h1', {});
const empty = h('p', { class: 'empty', role: 'status' }, OF_PAGE.waiting);
const trouble = h('p', { class: 'trouble', role: 'alert', hidden: true });
const list = h('main', { class: 'machines machine' });
document.body.append(h('header', { class: 'shop-head' }, head), trouble, empty, list);

const reveal = (source: string): void => editor.postMessage({ type: 'reveal', source });

/** One machine: its name, what it takes, and the drawing; the last good one while its text has a fault. */
class MachineCard {
  readonly element: HTMLElement;
  readonly #name: HTMLButtonElement;
  readonly #kind = h('p', { class: 'kind' });
  readonly #facts = h('dl', {});
  readonly #fault = h('p', { class: 'fault', hidden: true });
  readonly #shapes = svg('g', { class: 'shapes' });
  readonly #svg = svg('svg', { class: 'drawing', role: 'img' }, this.#shapes);
  #source = '';

  constructor(name: string) {
    this.#name = h('button', { type: 'button', title: LABELS.showInText }, name);
    this.#name.addEventListener('click', () => reveal(this.#source));
    this.#svg.addEventListener('click', ({ target }) => {
      const source =
        target instanceof Element ? target.closest<SVGElement>('[data-source]')?.dataset.source : undefined;
      if (source !== undefined) reveal(source);
    });
    this.element = h(
      'section',
      { class: 'card-of-machine', 'aria-label': name },
      h('div', { class: 'name' }, h('h2', {}, this.#name), this.#kind),
      this.#fault,
      this.#svg,
      this.#facts,
    );
  }

  show({ kindWords, facts, scene, trouble: fault, source }: ShopMachineView): void {
    this.#source = source;
    this.element.dataset.source = source;
    say(this.#kind, kindWords);
    show(this.#fault, fault === null ? '' : PHRASES.stale(fault));
    this.element.classList.toggle('out-of-date', fault !== null);
    if (fault !== null) return;
    this.#facts.replaceChildren(...facts.map(({ word, value }) => h('div', {}, h('dt', {}, word), h('dd', {}, value))));
    this.#svg.toggleAttribute('hidden', scene === null);
    if (scene === null) return;
    const { x, y, width, height } = scene.frame;
    set(this.#svg, 'viewBox', [x, y, width, height].map((value) => value.toFixed(2)).join(' '));
    this.#svg.style.width = `${Math.round((width / scene.scale) * PIXELS_PER_MM)}px`;
    this.#svg.style.setProperty('--paper-mm', String(scene.scale));
    this.#svg.setAttribute('aria-label', scene.described);
    patch(this.#shapes, sceneNodes(scene));
  }

  /** Marks what the text of the cursor makes, and says whether the machine is this one. */
  mark(sources: ReadonlySet<string>): boolean {
    for (const one of this.#shapes.children)
      one.classList.toggle('at-cursor', isPart(one) && sources.has(one.dataset.source ?? ''));
    const isHere = sources.has(this.#source);
    this.element.classList.toggle('current', isHere);
    return isHere;
  }
}

/** A stop, a clamp or a key of the machine; not the machine as a whole. */
const isPart = (one: Element): one is SVGElement =>
  one instanceof SVGElement &&
  one.dataset.source !== undefined &&
  one.getAttribute('class')?.startsWith('table') !== true;

const cards = new Map<string, MachineCard>();
let version = -1;
let uri = '';
/** The machine of the cursor, brought into view when the cursor comes to another one. */
let current = '';
let sources: ReadonlySet<string> = new Set();

function receive(reply: ShopViewReply): void {
  if (reply.uri === uri && reply.version < version) return;
  if (reply.uri !== uri) cards.clear();
  [uri, version] = [reply.uri, reply.version];
  document.body.dataset.version = String(version);
  editor.setState({ subject: { uri } });
  show(trouble, '');
  const machines = reply.kind === 'shop' ? reply.machines : [];
  show(empty, reply.kind === 'nothing' ? reply.reason : '');
  say(head, reply.kind === 'shop' && reply.title !== '' ? reply.title : LABELS.machines);
  const elements = machines.map((machine) => {
    const card = cards.get(machine.name) ?? new MachineCard(machine.name);
    cards.set(machine.name, card);
    card.show(machine);
    return card.element;
  });
  for (const name of [...cards.keys()]) if (!machines.some((one) => one.name === name)) cards.delete(name);
  const shown = [...list.children];
  if (shown.length !== elements.length || shown.some((one, index) => one !== elements[index]))
    list.replaceChildren(...elements);
  mark();
}

function mark(): void {
  for (const [name, card] of cards) {
    if (!card.mark(sources) || name === current) continue;
    current = name;
    card.element.scrollIntoView({ block: 'nearest' });
  }
}

window.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
  if (!isToShopPage(data)) return;
  switch (data.type) {
    case 'reply':
      receive(data.reply);
      return;
    case 'cursor':
      sources = new Set(data.sources);
      mark();
      return;
    case 'trouble':
      show(trouble, data.message);
      return;
  }
});

const kept: unknown = editor.getState();
if (typeof kept === 'object' && kept !== null && 'subject' in kept && isShopSubject(kept.subject))
  uri = kept.subject.uri;

const room = (): number => Math.round((document.documentElement.clientWidth - MARGIN) / PIXELS_PER_MM);
let width = room();
editor.postMessage({ type: 'ready', width });
let resting: ReturnType<typeof setTimeout> | undefined;
new ResizeObserver(() => {
  clearTimeout(resting);
  resting = setTimeout(() => {
    if (room() === width) return;
    width = room();
    editor.postMessage({ type: 'width', width });
  }, 80);
}).observe(document.documentElement);
