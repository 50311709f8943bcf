import type { ListedSetUp } from '../../../shared-core/drawing/messages/set-ups.js';
import { fill } from '../preview/header.js';
import { h } from '../page/dom.js';
import { LABELS } from './messages.js';
import type { MachineSide, MachineSubject } from '../messages/machine.js';

export interface ScopeActions {
  readonly side: (side: MachineSide) => void;
  readonly choose: (carcass: string | null, panel: string | null) => void;
  /** The reader goes to the machine. */
  readonly toMachine: () => void;
}

/** Which side of the panel is seen where there is no room for both, and what is stepped through. */
export class ScopePicker {
  readonly element: HTMLElement;
  readonly #sides: Readonly<Record<MachineSide, HTMLButtonElement>>;
  readonly #carcass = h('select', { 'aria-label': LABELS.stepsOfCarcass, class: 'carcass' });
  readonly #panel = h('select', { 'aria-label': LABELS.stepsOfPanel, class: 'panel' });

  constructor(actions: ScopeActions) {
    const side = (name: MachineSide, words: string, title: string): HTMLButtonElement => {
      const button = h('button', { type: 'button', class: `side-${name}`, title }, words);
      button.addEventListener('click', () => actions.side(name));
      return button;
    };
    this.#sides = {
      machine: side('machine', LABELS.machineView, LABELS.machineViewMeaning),
      list: side('list', LABELS.setUpList, LABELS.setUpListMeaning),
    };
    const valueOf = ({ value }: HTMLSelectElement): string | null => (value === '' ? null : value);
    this.#carcass.addEventListener('change', () => actions.choose(valueOf(this.#carcass), null));
    this.#panel.addEventListener('change', () => actions.choose(valueOf(this.#carcass), valueOf(this.#panel)));
    const floor = h(
      'button',
      { type: 'button', class: 'floor-open', title: LABELS.atMachineMeaning },
      LABELS.atMachine,
    );
    floor.addEventListener('click', () => actions.toMachine());
    this.element = h(
      'header',
      {},
      h(
        'div',
        { class: 'tools', role: 'toolbar', 'aria-label': LABELS.machines },
        h('div', { class: 'switch' }, this.#sides.machine, this.#sides.list),
        h(
          'div',
          { class: 'pick' },
          h('span', { class: 'steps-of', 'aria-hidden': 'true' }, LABELS.stepsOf),
          this.#carcass,
          this.#panel,
        ),
        floor,
      ),
    );
  }

  show({ side, carcass, panel }: MachineSubject, setUps: readonly ListedSetUp[]): void {
    for (const name of ['machine', 'list'] as const)
      this.#sides[name].setAttribute('aria-pressed', String(side === name));
    const runs = setUps.flatMap((one) => one.runs);
    const carcasses = [...new Set(runs.map((run) => run.carcass))].sort();
    const panels = [...new Set(runs.filter((run) => run.carcass === carcass).map((run) => run.panel))].sort();
    fill(this.#carcass, carcasses, carcass, LABELS.wholeJob);
    fill(this.#panel, panels, panel, LABELS.allPanels);
    this.#panel.hidden = carcass === null;
  }
}
