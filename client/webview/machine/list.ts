import type {
  ListedRun,
  ListedSetUp,
  ListedStep,
  RefusedRun,
  SetUpsReply,
} from '../../../shared-core/drawing/messages/set-ups.js';
import { stopCalled } from '../../../shared-core/drawing/words.js';
import { h, say } from '../page/dom.js';
import { LABELS as OF_PAGE } from '../page/messages.js';
import { measuredAlike } from './figures.js';
import { unparted } from '../page/unparted.js';
import { LABELS, PHRASES } from './messages.js';

export interface ListActions {
  readonly tick: (contents: readonly string[], on: boolean) => void;
  /** The reader wants to see the steps of a panel in a set-up. */
  readonly choose: (setUp: ListedSetUp, run: ListedRun) => void;
  readonly reveal: (carcass: string, panel: string) => void;
  /** The papers of the job are wanted. */
  readonly papers: () => void;
}

type Reply = Extract<SetUpsReply, { kind: 'set-ups' }>;

/** What keeps up to date in one set-up of the list without building it anew. */
interface Card {
  readonly setUp: ListedSetUp;
  readonly element: HTMLDetailsElement;
  readonly set: HTMLInputElement;
  readonly progress: HTMLElement;
  readonly runs: readonly { readonly run: ListedRun; readonly row: HTMLElement; readonly box: HTMLInputElement }[];
}

/** The whole job in the order to run, machine by machine, with what is ticked off. Rebuilt only where the plan differs. */
export class SetUpList {
  readonly #actions: ListActions;

  readonly element = h('section', { class: 'set-ups', 'aria-label': LABELS.setUpList });
  readonly #totals = h('p', { class: 'totals' });
  readonly #done = h('p', { class: 'done', role: 'status' });
  readonly #meter = h('progress', { 'aria-label': LABELS.panelsBored });
  readonly #left = h('ul', { class: 'left-out' });
  readonly #host = h('div', { class: 'machines' });
  #cards: readonly Card[] = [];
  #shown = '';
  #current: { readonly element: HTMLDetailsElement; readonly row: HTMLElement } | null = null;

  constructor(actions: ListActions) {
    this.#actions = actions;

    let wide = 0;
    // While it is not shown it cannot be scrolled.
    new ResizeObserver(() => {
      const before = wide;
      wide = this.element.clientWidth;
      if (before === 0 && wide > 0) this.#bringIntoSight();
    }).observe(this.element);
    this.element.append(
      h('p', { class: 'unseen', role: 'heading', 'aria-level': '1' }, LABELS.setUpList),
      h(
        'div',
        { class: 'overview' },
        this.#totals,
        h('div', { class: 'meter' }, this.#meter, this.#done, papersButton(actions.papers)),
        this.#left,
      ),
      this.#host,
    );
  }

  show(reply: Reply): void {
    say(this.#totals, reply.totals.words);
    this.#left.replaceChildren(...leftOut(reply).map((words) => h('li', {}, words)));
    this.#left.hidden = this.#left.children.length === 0;
    const content = JSON.stringify(
      reply.setUps.map(({ runs, ...rest }) => [rest, runs.map(({ range: _, ...run }) => run)]),
    );
    if (content === this.#shown) return;
    this.#shown = content;
    const focused = document.activeElement instanceof HTMLElement ? document.activeElement.dataset.key : undefined;
    const { scrollTop } = this.element;
    const cards: Card[] = [];
    const machines = runsOfMachine(reply.setUps).map(({ machine, kindWords, setUps }) =>
      h(
        'section',
        { class: 'machine-group' },
        h('h2', {}, machine, h('span', { class: 'kind' }, PHRASES.kindAndSetUps(kindWords, setUps.length))),
        ...setUps.map(({ setUp, place }) => {
          const card = this.#card(setUp, place);
          cards.push(card);
          return card.element;
        }),
      ),
    );
    this.#cards = cards;
    this.#host.replaceChildren(...machines);
    this.element.scrollTop = scrollTop;
    if (focused !== undefined) this.#host.querySelector<HTMLElement>(`[data-key="${CSS.escape(focused)}"]`)?.focus();
  }

  clear(): void {
    this.#shown = '';
    this.#cards = [];
    this.#current = null;
    this.#host.replaceChildren();
    say(this.#totals, '');
    say(this.#done, '');
    this.#left.hidden = true;
  }

  #card(setUp: ListedSetUp, place: number): Card {
    const set = h('input', { type: 'checkbox', id: `set-${setUp.id}`, 'data-key': `set-${setUp.id}` });
    set.addEventListener('change', () => this.#actions.tick([setUp.content], set.checked));
    const progress = h('span', { class: 'progress' });
    const runs = setUp.runs.map((run, index) => this.#runRow(setUp, run, index));
    const body = h(
      'div',
      { class: 'card-body' },
      toSet(setUp, set),
      h('ul', { class: 'lay' }, ...setUp.lay.map((words) => h('li', {}, words))),
      this.#runsHead(setUp),
      h('ul', { class: 'runs' }, ...runs.map(({ row }) => row), ...setUp.refused.map((run) => this.#refusedRow(run))),
    );
    const element = h(
      'details',
      { class: 'card-set-up', open: true, 'data-set-up': setUp.id },
      h(
        'summary',
        { 'data-key': `summary-${setUp.id}` },
        h('span', { class: 'number' }, String(place + 1)),
        h('span', { class: 'id' }, setUp.id),
        progress,
      ),
      body,
    );
    return { setUp, element, set, progress, runs };
  }

  /** One panel of a set-up: its tick, how it is laid for each stroke, and the way to the text. */
  #runRow(setUp: ListedSetUp, run: ListedRun, index: number): Card['runs'][number] {
    const id = `run-${setUp.id}-${index}`;
    const box = h('input', {
      type: 'checkbox',
      id,
      'data-key': id,
      'aria-label': PHRASES.runBored(run),
    });
    box.addEventListener('change', () => this.#actions.tick([run.content], box.checked));
    const open = h(
      'button',
      { type: 'button', class: 'run-open', 'data-key': `open-${id}`, title: LABELS.showSteps },
      h(
        'span',
        { class: 'run-head' },
        h('span', { class: 'run-name' }, PHRASES.runName(run, run.pieces)),
        h('span', { class: 'run-size' }, run.size),
      ),
      ...run.steps.map((step, at) =>
        h('span', { class: 'run-lay' }, `${run.steps.length > 1 ? `${at + 1}. ` : ''}${layWords(step)}`),
      ),
    );
    open.addEventListener('click', () => this.#actions.choose(setUp, run));
    const text = this.#toText(run);
    return { run, box, row: h('li', { 'data-run': `${setUp.id}/${run.carcass}/${run.panel}` }, box, open, text) };
  }

  /** One that must not be bored: nothing to tick, and no step to show. */
  #refusedRow(run: RefusedRun): HTMLElement {
    const head = h(
      'span',
      { class: 'run-head' },
      h('span', { class: 'run-name' }, PHRASES.runName(run, run.pieces)),
      h('span', { class: 'run-size' }, run.size),
    );
    const why = h('span', { class: 'run-lay' }, run.words);
    return h('li', { class: 'refused' }, h('span', { class: 'run-refused' }, head, why), this.#toText(run));
  }

  #toText(run: RefusedRun | ListedRun): HTMLElement {
    const text = h(
      'button',
      {
        type: 'button',
        class: 'run-text',
        'aria-label': PHRASES.runText(run),
        title: LABELS.goToPanelText,
      },
      LABELS.text,
    );
    text.addEventListener('click', () => this.#actions.reveal(run.carcass, run.panel));
    return text;
  }

  /** How much there is to bore in a set-up, and one button to tick it all off. */
  #runsHead({ runs, strokes, holes }: ListedSetUp): HTMLElement {
    const all = h('button', { type: 'button', class: 'tick-all', title: LABELS.allBoredMeaning }, LABELS.allBored);
    all.addEventListener('click', () =>
      this.#actions.tick(
        runs.map(({ content }) => content),
        true,
      ),
    );
    const panels = runs.reduce((all, { pieces }) => all + pieces, 0);
    return h('div', { class: 'runs-head' }, h('span', {}, PHRASES.toBore(panels, strokes, holes)), all);
  }

  /** @param fold whether set-ups that are done are folded away: when the list comes, not under the reader's hands */
  showTicks(ticks: ReadonlySet<string>, fold: boolean): void {
    let [bored, all] = [0, 0];
    for (const { setUp, element, set, progress, runs } of this.#cards) {
      set.checked = ticks.has(setUp.content);
      let own = 0;
      for (const { run, box, row } of runs) {
        box.checked = ticks.has(run.content);
        row.classList.toggle('bored', box.checked);
        own += Number(box.checked);
      }
      const isDone = own === runs.length;
      element.classList.toggle('is-done', isDone);
      if (fold) element.open = !isDone;
      say(progress, isDone ? LABELS.setUpDone : PHRASES.bored(own, runs.length));
      bored += own;
      all += runs.length;
    }
    say(this.#done, PHRASES.ticked(bored, all));
    this.#meter.max = Math.max(all, 1);
    this.#meter.value = bored;
  }

  /** Marks the panel whose step is shown, and brings it into sight when that is wanted. */
  showCurrent(setUp: string, carcass: string, panel: string, scroll: boolean): void {
    const name = `${setUp}/${carcass}/${panel}`;
    this.#current = null;
    for (const { element, setUp: own, runs } of this.#cards) {
      element.classList.toggle('current', own.id === setUp);
      for (const { row } of runs) {
        const is = row.dataset.run === name;
        row.classList.toggle('current', is);
        if (is) row.setAttribute('aria-current', 'step');
        else row.removeAttribute('aria-current');
        if (!is) continue;
        this.#current = { element, row };
        if (scroll) this.#bringIntoSight();
      }
    }
  }

  /** The panel that is spoken of, with as much of its set-up above it as there is room for. */
  #bringIntoSight(): void {
    if (this.#current === null) return;
    const { element, row } = this.#current;
    element.open = true;
    // Whoever begins reads the list from its head, however little of it there is room for.
    if (row === this.#cards[0]?.runs[0]?.row) {
      this.element.scrollTop = 0;
      return;
    }
    element.scrollIntoView({ block: 'nearest' });
    row.scrollIntoView({ block: 'nearest' });
  }
}

/** What is changed for a set-up, and all that then stands on the machine. */
function toSet(setUp: ListedSetUp, set: HTMLInputElement): HTMLElement {
  const measured = measuredAlike(setUp);
  return h(
    'div',
    { class: 'to-set' },
    h(
      'label',
      { for: set.id, class: 'set' },
      set,
      h('span', {}, setUp.changes.length === 0 ? LABELS.nothingToChange : LABELS.machineSet),
      h('span', { class: 'time' }, setUp.time),
    ),
    h('ol', { class: 'changes' }, ...setUp.changes.map((words) => h('li', {}, words))),
    h(
      'dl',
      { class: 'settings' },
      ...setUp.settings.map(({ name, value, about, changed }) =>
        h(
          'div',
          { class: changed ? 'changed' : null },
          h('dt', {}, name),
          h(
            'dd',
            {},
            h('span', { class: 'value' }, value),
            ' ',
            ...(about === measured ? [] : [h('span', { class: 'about' }, unparted(about))]),
            ...(changed ? [' ', h('span', { class: 'unseen' }, OF_PAGE.change)] : []),
          ),
        ),
      ),
    ),
    ...(measured === null ? [] : [h('p', { class: 'measured about' }, PHRASES.eachStop(measured))]),
  );
}

/** How the panel is laid for a stroke, and what has to be out of its way. */
function layWords({ words, lowered, held }: ListedStep): string {
  return PHRASES.lay({ words, lowered: lowered.map(stopCalled), held });
}

/** Neighbours in the order that stand on one machine. */
function runsOfMachine(
  setUps: readonly ListedSetUp[],
): { machine: string; kindWords: string; setUps: { setUp: ListedSetUp; place: number }[] }[] {
  const groups: ReturnType<typeof runsOfMachine> = [];
  setUps.forEach((setUp, place) => {
    const last = groups.at(-1);
    if (last?.machine === setUp.machine) last.setUps.push({ setUp, place });
    else groups.push({ machine: setUp.machine, kindWords: setUp.kindWords, setUps: [{ setUp, place }] });
  });
  return groups;
}

/** Panels that one thing stands in the way of, together. */
function byReason(unbored: Reply['unbored']): ReadonlyMap<string, Reply['unbored']> {
  const groups = new Map<string, Reply['unbored'][number][]>();
  for (const one of unbored) groups.set(one.reason, [...(groups.get(one.reason) ?? []), one]);
  return groups;
}

function leftOut({ broken, unbored }: Reply): string[] {
  return [
    ...(broken.length === 0 ? [] : [PHRASES.broken(broken)]),
    ...[...byReason(unbored)].map(([reason, panels]) => {
      const holes = panels.reduce((sum, { count }) => sum + count, 0);
      return PHRASES.unbored(holes, panels, reason);
    }),
  ];
}

function papersButton(wanted: () => void): HTMLButtonElement {
  const button = h('button', { type: 'button', class: 'papers', title: LABELS.papersMeaning }, LABELS.papers);
  button.addEventListener('click', wanted);
  return button;
}
