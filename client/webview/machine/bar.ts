import type { MachineScene } from '../../../shared-core/drawing/machine-view/scene.js';
import { h, icon, say, svg } from '../page/dom.js';
import { figuresOf } from './figures.js';
import { unparted } from '../page/unparted.js';
import { LABELS, PHRASES } from './messages.js';
import type { OrderedStep } from './order.js';

export type Go = 'first' | 'set-up-before' | 'before' | 'after' | 'set-up-after' | 'last';

export interface BarActions {
  readonly go: (where: Go) => void;
  readonly tick: (content: string, on: boolean) => void;
  readonly reveal: () => void;
}

/** Where the reader stands in the job. */
export interface Standing {
  readonly step: OrderedStep;
  /** Its place among the steps that are stepped through, and how many these are. */
  readonly index: number;
  readonly count: number;
  readonly setUps: number;
  /** What comes after it; null after the last. */
  readonly next: string | null;
}

/** Steps forward and back, ticks, and the words of the step. */
export class Bar {
  readonly element: HTMLElement;
  readonly words: HTMLElement;
  readonly #buttons: Readonly<Record<Go, HTMLButtonElement>>;
  readonly #where = h('p', { class: 'where' });
  readonly #count = h('span', { class: 'count' });
  readonly #set = h('input', { type: 'checkbox', id: 'tick-set' });
  readonly #bored = h('input', { type: 'checkbox', id: 'tick-bored' });
  readonly #title = h('h1', {});
  readonly #size = h('span', { class: 'size' });
  readonly #text = h('button', {
    type: 'button',
    class: 'to-text',
    title: LABELS.goToTextMeaning,
  });
  readonly #move = h('p', { class: 'move' });
  readonly #lie = h('p', { class: 'lie' });
  readonly #figures = h('dl', { class: 'figures', 'aria-label': LABELS.settings });
  readonly #bore = h('p', { class: 'bores' });
  readonly #notes = h('ul', { class: 'step-notes', 'aria-label': LABELS.notes });
  readonly #left = h('p', { class: 'left' });
  readonly #next = h('p', { class: 'next' });
  /** What the figures and notes are of, so that they are rebuilt only where they differ. */
  #shown = '';
  /** Says each new step once to a reader who listens. */
  readonly #live = h('p', { class: 'unseen', 'aria-live': 'polite' });
  #standing: Standing | null = null;

  constructor(actions: BarActions) {
    this.#buttons = goButtons(actions.go);
    this.#set.addEventListener('change', () => {
      if (this.#standing !== null) actions.tick(this.#standing.step.listed.content, this.#set.checked);
    });
    this.#bored.addEventListener('change', () => {
      if (this.#standing !== null) actions.tick(this.#standing.step.run.content, this.#bored.checked);
    });
    this.#text.append(LABELS.goToText);
    this.#text.addEventListener('click', () => actions.reveal());
    this.element = h('div', { class: 'bar' }, this.#toolbar(), this.#where, this.#tickBoxes());
    this.words = h(
      'div',
      { class: 'step-words' },
      h('div', { class: 'title' }, this.#title, this.#size, this.#text),
      this.#move,
      this.#lie,
      this.#figures,
      h('div', { class: 'result' }, this.#bore, this.#left),
      this.#notes,
      this.#next,
      this.#live,
    );
  }

  #toolbar(): HTMLElement {
    const buttons = this.#buttons;
    return h(
      'div',
      { class: 'steps', role: 'toolbar', 'aria-label': LABELS.steps },
      buttons.first,
      buttons['set-up-before'],
      buttons.before,
      this.#count,
      buttons.after,
      buttons['set-up-after'],
      buttons.last,
    );
  }

  #tickBoxes(): HTMLElement {
    return h(
      'div',
      { class: 'tick-boxes' },
      h('label', { for: 'tick-set', title: LABELS.machineSetMeaning }, this.#set, LABELS.machineSet),
      h('label', { for: 'tick-bored', title: LABELS.panelBoredMeaning }, this.#bored, LABELS.panelBored),
    );
  }

  showStanding(standing: Standing | null, ticks: ReadonlySet<string>): void {
    this.#standing = standing;
    this.element.hidden = standing === null;
    if (standing === null) return;
    const { step, index, count, setUps, next } = standing;
    say(this.#count, `${index + 1} / ${count}`);
    this.#count.setAttribute('aria-label', PHRASES.stepOf(index + 1, count));
    say(this.#where, PHRASES.setUpOf(step.place + 1, setUps, step.setUp));
    say(this.#next, next === null ? '' : PHRASES.next(next));
    this.#next.hidden = next === null;
    this.#set.checked = ticks.has(step.listed.content);
    this.#bored.checked = ticks.has(step.run.content);
    const off = (where: Go, is: boolean): void => {
      this.#buttons[where].disabled = is;
    };
    off('first', index === 0);
    off('before', index === 0);
    off('set-up-before', index === 0);
    off('after', index === count - 1);
    off('last', index === count - 1);
    off('set-up-after', index === count - 1);
  }

  showWords(scene: MachineScene | null, step: OrderedStep | null): void {
    this.words.hidden = scene === null || step === null;
    if (scene === null || step === null) return;
    const { words, title } = scene;
    const steps = step.run.steps.length;
    say(this.#title, title);
    say(this.#size, PHRASES.sizeAndStroke(step.run.size, step.step + 1, steps));
    say(this.#move, words.move ?? '');
    this.#move.hidden = words.move === null;
    say(this.#lie, words.lie);
    say(this.#bore, words.bore);
    say(this.#left, words.left);
    const figures = figuresOf(step.listed, scene.stop);
    const content = JSON.stringify([figures, words.notes]);
    if (content !== this.#shown) {
      this.#shown = content;
      this.#figures.replaceChildren(
        ...figures.map(({ name, value, about, used, aside }) =>
          h(
            'div',
            { class: aside ? 'aside' : used ? 'used' : null },
            h('dt', {}, name),
            h('dd', {}, h('span', { class: 'value' }, value), ' ', h('span', { class: 'about' }, unparted(about))),
          ),
        ),
      );
      this.#notes.replaceChildren(...words.notes.map((note) => h('li', {}, note)));
    }
    this.#notes.hidden = words.notes.length === 0;
    const said = [`${title}.`, words.move ?? '', words.lie, words.bore, ...words.notes, words.left];
    say(this.#live, said.filter((sentence) => sentence !== '').join(' '));
  }
}

function goButtons(go: BarActions['go']): Readonly<Record<Go, HTMLButtonElement>> {
  const button = (where: Go, sign: string, title: string): HTMLButtonElement => {
    const one = h(
      'button',
      { type: 'button', class: `go-${where}`, title, 'aria-label': title },
      icon({ from: 0, size: 16 }, svg('path', { d: sign })),
    );
    one.addEventListener('click', () => go(where));
    return one;
  };
  return {
    first: button('first', 'M4 3V13M13 3L6 8L13 13Z', LABELS.first),
    'set-up-before': button('set-up-before', 'M8.5 3L3 8L8.5 13ZM14 3L8.5 8L14 13Z', LABELS.setUpBefore),
    before: button('before', 'M11 3L4.5 8L11 13Z', LABELS.before),
    after: button('after', 'M5 3L11.5 8L5 13Z', LABELS.after),
    'set-up-after': button('set-up-after', 'M7.5 3L13 8L7.5 13ZM2 3L7.5 8L2 13Z', LABELS.setUpAfter),
    last: button('last', 'M12 3V13M3 3L10 8L3 13Z', LABELS.last),
  };
}
