import type { MachineScene } from '../../../shared-core/drawing/machine-view/scene.js';
import { inShort } from '../../../shared-core/machining/caution.js';
import { Awake } from '../page/awake.js';
import { h, say } from '../page/dom.js';
import { LABELS as OF_PAGE } from '../page/messages.js';
import { figuresOf } from './figures.js';
import type { FloorStep } from './floor-steps.js';
import { LABELS, PHRASES } from './messages.js';
import type { OrderedStep } from './order.js';

export interface FloorActions {
  readonly back: () => void;
  readonly next: () => void;
  /** It is done: to be ticked off, and on to the next. */
  readonly done: () => void;
  readonly leave: () => void;
}

/** What is to be done now. */
export interface FloorTask {
  readonly floor: FloorStep;
  readonly step: OrderedStep;
  readonly index: number;
  readonly count: number;
  readonly setUps: number;
  readonly isDone: boolean;
}

interface Figure {
  readonly name: string;
  readonly value: string;
  readonly about: string;
  readonly look: 'new' | 'used' | 'stands';
}

/** The page for whoever stands at the machine: one thing to do at a time, to be read from afar and worked with gloves on. */
export class Floor {
  readonly element: HTMLElement;
  /** The drawing's place. */
  readonly slot = h('div', { class: 'floor-drawing' });
  readonly #where = h('p', { class: 'floor-where' });
  readonly #count = h('span', { class: 'floor-count' });
  readonly #screen = h('span', { class: 'floor-screen' });
  readonly #task = h('h1', { class: 'floor-task', tabindex: '-1' });
  readonly #words = h('div', { class: 'floor-words', 'aria-live': 'polite' });
  readonly #figures = h('dl', { class: 'floor-figures' });
  readonly #caution = h('aside', { class: 'floor-caution', 'aria-label': LABELS.cautions });
  readonly #body: HTMLElement;
  readonly #back: HTMLButtonElement;
  readonly #next: HTMLButtonElement;
  readonly #done: HTMLButtonElement;
  readonly #awake = new Awake((isKept) => say(this.#screen, isKept ? LABELS.screenStaysOn : LABELS.screenMayGoOff));
  #scene: MachineScene | null = null;

  constructor(actions: FloorActions) {
    const button = (name: string, words: string, title: string, act: () => void): HTMLButtonElement => {
      const one = h('button', { type: 'button', class: `floor-${name}`, title }, words);
      one.addEventListener('click', act);
      return one;
    };
    this.#back = button('back', LABELS.back, LABELS.backMeaning, actions.back);
    this.#done = button('done', LABELS.done, LABELS.doneMeaning, actions.done);
    this.#next = button('next', LABELS.next, LABELS.nextMeaning, actions.next);
    const leave = button('leave', LABELS.leave, LABELS.leaveMeaning, actions.leave);
    const text = h('div', { class: 'floor-text' }, this.#task, this.#words, this.#figures, this.#caution);
    this.#body = h('div', { class: 'floor-body' }, text, this.slot);
    this.element = h(
      'main',
      { class: 'floor', 'aria-label': LABELS.atMachine, hidden: true },
      h('header', { class: 'floor-head' }, this.#where, this.#count, this.#screen, leave),
      this.#body,
      h(
        'div',
        { class: 'floor-foot', role: 'toolbar', 'aria-label': LABELS.steps },
        this.#back,
        this.#done,
        this.#next,
      ),
    );
  }

  open(): void {
    this.element.hidden = false;
    this.#awake.keep();
    this.#task.focus();
  }

  close(): void {
    this.element.hidden = true;
    this.#awake.release();
  }

  show(task: FloorTask): void {
    const { floor, step, index, count, setUps, isDone } = task;
    this.#scene = null;
    say(this.#where, PHRASES.setUpAt(step.place + 1, setUps, step.listed.machine));
    say(this.#count, `${index + 1} / ${count}`);
    say(this.#task, taskWords(floor, step));
    this.#back.disabled = index === 0;
    this.#next.disabled = index === count - 1;
    say(this.#done, isDone ? LABELS.isDone : LABELS.done);
    this.#done.setAttribute('aria-pressed', String(isDone));
    this.element.dataset.kind = floor.kind;
    this.#tell(task);
    this.#warn(floor, step);
    this.#body.scrollTop = 0;
  }

  /** The drawing of the stroke has come; its words are read with it. */
  showScene(scene: MachineScene | null, task: FloorTask): void {
    this.#scene = scene;
    this.#tell(task);
  }

  #tell({ floor, step }: FloorTask): void {
    const scene = this.#scene;
    this.#words.replaceChildren(...wordsOf(floor, step, scene).map((words) => h('p', {}, words)));
    const figures = figuresFor(floor, step, scene);
    this.#figures.replaceChildren(
      ...figures.map(({ name, value, about, look }) =>
        h(
          'div',
          { class: look },
          h('dt', {}, name, about === '' ? '' : h('span', { class: 'floor-about' }, ` ${about}`)),
          h('dd', {}, value, ...(look === 'new' ? [' ', h('span', { class: 'unseen' }, OF_PAGE.change)] : [])),
        ),
      ),
    );
  }

  /** In full where a machine is begun, and in short ever after. */
  #warn({ isFirstOfMachine }: FloorStep, { listed }: OrderedStep): void {
    this.#caution.classList.toggle('in-full', isFirstOfMachine);
    this.#caution.replaceChildren(
      isFirstOfMachine ? h('ul', {}, ...listed.cautions.map((words) => h('li', {}, words))) : h('p', {}, inShort()),
    );
  }
}

function taskWords({ kind }: FloorStep, ordered: OrderedStep): string {
  const { listed, run, step } = ordered;
  switch (kind) {
    case 'set':
      return listed.changes.length === 0 ? PHRASES.leaveSet(listed.machine) : PHRASES.set(listed.machine);
    case 'check':
      return PHRASES.check(ordered);
    case 'stroke':
      return PHRASES.bore(ordered, run.pieces, step + 1, run.steps.length);
  }
}

function wordsOf({ kind }: FloorStep, { listed, run }: OrderedStep, scene: MachineScene | null): readonly string[] {
  switch (kind) {
    case 'set':
      return listed.changes;
    case 'check':
      return [LABELS.checkFirst];
    case 'stroke': {
      if (scene === null) return [run.size];
      const { move, lie, bore, notes, left } = scene.words;
      return [run.size, ...(move === null ? [] : [move]), lie, bore, ...notes, left];
    }
  }
}

/** What is changed first where the machine is set, the stop that the panel lies against first where it bores. */
function figuresFor({ kind }: FloorStep, { listed }: OrderedStep, scene: MachineScene | null): readonly Figure[] {
  switch (kind) {
    case 'set':
      return [...listed.settings]
        .sort((a, b) => Number(b.changed) - Number(a.changed))
        .map(({ name, value, about, changed }) => ({ name, value, about, look: changed ? 'new' : 'stands' }));
    case 'check':
      return listed.firstPiece.map(({ name, value }) => ({ name, value, about: '', look: 'used' }));
    case 'stroke':
      return figuresOf(listed, scene?.stop ?? '')
        .filter(({ aside }) => !aside)
        .map(({ name, value, about, used }) => ({ name, value, about, look: used ? 'used' : 'stands' }));
  }
}
