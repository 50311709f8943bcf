import type { BoxReply, BoxWhat } from '../../../shared-core/drawing/messages/box-view.js';
import { h, say } from '../page/dom.js';
import { PHRASES as OF_PAGE } from '../page/messages.js';
import { fill } from '../preview/header.js';
import { LABELS as OF_MAP } from '../preview/messages.js';
import { LABELS } from './messages.js';
import type { Sight } from './stage.js';

const SIGHTS: readonly Sight[] = ['corner', 'front', 'side', 'above'];

export interface ToolActions {
  readonly choose: (what: BoxWhat, carcass: string | null) => void;
  readonly look: (sight: Sight) => void;
  /** Doors so far open and parts so far apart, from 0 to 1. */
  readonly move: (open: number, apart: number) => void;
  readonly copy: () => void;
  readonly save: () => void;
}

/** What is shown, from where, how far open and how far apart. */
export class Tools {
  readonly element: HTMLElement;
  readonly #whats: Readonly<Record<BoxWhat, HTMLButtonElement>>;
  readonly #carcass = h('select', { 'aria-label': OF_MAP.carcass, class: 'carcass' });
  readonly #open = slider('open', LABELS.open);
  readonly #apart = slider('apart', LABELS.apart);
  readonly #title = h('h1', {});
  readonly #actions: ToolActions;
  #what: BoxWhat = 'carcass';

  constructor(actions: ToolActions) {
    this.#actions = actions;
    const button = (words: string, title: string, act: () => void): HTMLButtonElement => {
      const one = h('button', { type: 'button', title }, words);
      one.addEventListener('click', act);
      return one;
    };
    const what = (name: BoxWhat, words: string, title: string) =>
      button(words, title, () => actions.choose(name, this.#carcass.value || null));
    this.#whats = {
      carcass: what('carcass', LABELS.cabinet, LABELS.cabinetMeaning),
      wall: what('wall', LABELS.wall, LABELS.wallMeaning),
    };
    this.#carcass.addEventListener('change', () => actions.choose(this.#what, this.#carcass.value));
    for (const { input } of [this.#open, this.#apart]) input.addEventListener('input', () => this.#moved());
    const sights = SIGHTS.map((sight) => {
      const one = button(LABELS[sight], `${LABELS.from}: ${LABELS[sight]}`, () => actions.look(sight));
      one.dataset.sight = sight;
      return one;
    });
    this.element = h(
      'header',
      {},
      h(
        'div',
        { class: 'tools', role: 'toolbar', 'aria-label': LABELS.view },
        h('div', { class: 'switch' }, this.#whats.carcass, this.#whats.wall),
        h('div', { class: 'pick' }, this.#carcass),
        h('div', { class: 'sights', role: 'group', 'aria-label': LABELS.from }, ...sights),
        this.#open.element,
        this.#apart.element,
        h(
          'div',
          { class: 'out' },
          button(LABELS.copy, LABELS.copyMeaning, () => actions.copy()),
          button(LABELS.save, LABELS.saveMeaning, () => actions.save()),
        ),
      ),
      h('div', { class: 'box-title' }, this.#title),
    );
  }

  show(reply: Extract<BoxReply, { kind: 'box' }>): void {
    this.#what = reply.what;
    for (const what of ['carcass', 'wall'] as const)
      this.#whats[what].setAttribute('aria-pressed', String(reply.what === what));
    fill(
      this.#carcass,
      reply.carcasses.map(({ name }) => name),
      reply.carcass,
    );
    say(this.#title, reply.title);
    const opens = reply.boxes.some(({ scene }) => scene.moves.length > 0);
    this.#open.input.disabled = !opens;
  }

  /** Wholly there, or back, whichever is further. */
  flip(which: 'open' | 'apart'): void {
    const { input } = which === 'open' ? this.#open : this.#apart;
    if (input.disabled) return;
    input.value = Number(input.value) < 50 ? '100' : '0';
    this.#moved();
  }

  #moved(): void {
    for (const { input, figure } of [this.#open, this.#apart]) say(figure, OF_PAGE.zoom(Number(input.value)));
    this.#actions.move(Number(this.#open.input.value) / 100, Number(this.#apart.input.value) / 100);
  }
}

interface Slider {
  readonly element: HTMLElement;
  readonly input: HTMLInputElement;
  readonly figure: HTMLElement;
}

function slider(name: string, words: string): Slider {
  const input = h('input', { type: 'range', min: '0', max: '100', step: '5', value: '0', id: name });
  const figure = h('output', { for: name }, OF_PAGE.zoom(0));
  return { element: h('div', { class: 'slide' }, h('label', { for: name }, words), input, figure), input, figure };
}
