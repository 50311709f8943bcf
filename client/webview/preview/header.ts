import type { DrawableCarcass, DrawingReply, View } from '../../../shared-core/drawing/messages/drawing.js';
import { h, say, set } from '../page/dom.js';
import { PHRASES } from '../page/messages.js';
import { LABELS } from './messages.js';
import { moreButton, type MoreActions } from './more.js';
import type { Subject } from '../messages/preview.js';

export interface Choice {
  readonly view: View;
  readonly follow: boolean;
  readonly carcass: string | null;
  readonly panel: string | null;
}
export interface HeaderActions extends MoreActions {
  readonly choose: (choice: Choice) => void;
}

/** What is drawn, chosen from lists, and the title block with the panel's sizes. */
export class Header {
  readonly #actions: HeaderActions;

  readonly element: HTMLElement;
  readonly #views: Readonly<Record<View, HTMLButtonElement>>;
  readonly #carcass = h('select', { 'aria-label': LABELS.carcass, class: 'carcass' });
  readonly #panel = h('select', { 'aria-label': LABELS.panel, class: 'panel' });
  readonly #follow = h('input', { type: 'checkbox', id: 'follow' });
  readonly #block = h('div', { class: 'title-block' });
  /** Lies over the drawing, so that nothing moves where it comes and goes. */
  readonly state = h('p', { class: 'stale', role: 'status', hidden: true });
  #shown = '';
  #choice: Choice = { view: 'panel', follow: true, carcass: null, panel: null };

  /** @param measured what is measured, in the place of the title block meanwhile */
  constructor(actions: HeaderActions, measured: HTMLElement) {
    this.#actions = actions;

    const view = (name: View, words: string, title: string): HTMLButtonElement => {
      const button = h('button', { type: 'button', class: `view-${name}`, title }, words);
      button.addEventListener('click', () => this.#pick({ view: name }));
      return button;
    };
    this.#views = {
      panel: view('panel', LABELS.boreMap, LABELS.boreMapMeaning),
      'all-panels': view('all-panels', LABELS.allPanels, LABELS.allPanelsMeaning),
    };
    this.#carcass.addEventListener('change', () => this.#pick({ carcass: this.#carcass.value, panel: null }));
    this.#panel.addEventListener('change', () => this.#pick({ panel: this.#panel.value, view: 'panel' }));
    this.#follow.addEventListener('change', () => this.#pick({ follow: this.#follow.checked }));
    this.element = h(
      'header',
      {},
      h(
        'div',
        { class: 'tools', role: 'toolbar', 'aria-label': LABELS.drawing },
        h('div', { class: 'switch' }, this.#views.panel, this.#views['all-panels']),
        h('div', { class: 'pick' }, this.#carcass, this.#panel),
        h(
          'label',
          {
            class: 'follow',
            for: 'follow',
            title: LABELS.followMeaning,
          },
          this.#follow,
          LABELS.follow,
        ),
        moreButton(actions),
      ),
      h('div', { class: 'title-or-measure' }, this.#block, measured),
    );
  }

  #pick(change: Partial<Choice>): void {
    this.#choice = { ...this.#choice, ...change };
    this.#actions.choose(this.#choice);
  }

  show(subject: Subject, reply: DrawingReply): void {
    const carcass = reply.kind === 'drawing' ? reply.carcass : subject.carcass;
    const panel = reply.kind === 'drawing' ? reply.panel : subject.panel;
    this.#choice = { view: subject.view, follow: subject.follow, carcass, panel };
    for (const view of ['panel', 'all-panels'] as const)
      set(this.#views[view], 'aria-pressed', String(subject.view === view));
    this.#follow.checked = subject.follow;
    fill(
      this.#carcass,
      reply.carcasses.map(({ name }) => name),
      carcass,
    );
    fill(this.#panel, panelsOf(reply.carcasses, carcass), subject.view === 'all-panels' ? null : panel);
    const stale = reply.kind === 'drawing' ? reply.stale : null;
    say(this.state, stale === null ? '' : PHRASES.stale(stale));
    this.state.hidden = stale === null;
    this.#showBlock(reply);
  }

  #showBlock(reply: DrawingReply): void {
    this.#block.hidden = reply.kind === 'nothing';
    if (reply.kind === 'nothing') return;
    const { title, facts, caption } = reply.scene;
    const text = JSON.stringify([title, facts, caption]);
    if (text === this.#shown) return;
    this.#shown = text;
    this.#block.replaceChildren(
      h('div', { class: 'title' }, h('h1', { title }, title), h('p', { title: caption }, caption)),
      h(
        'dl',
        {},
        ...facts.map(({ word, value }) =>
          h('div', { title: `${word}: ${value}` }, h('dt', {}, word), h('dd', {}, value)),
        ),
      ),
    );
  }
}

function panelsOf(carcasses: readonly DrawableCarcass[], name: string | null): readonly string[] {
  return carcasses.find((carcass) => carcass.name === name)?.panels ?? [];
}

/**
 * Keeps the list's options where they are the same, so that an open list stays open while one types.
 * @param all words of a choice that chooses none of them, always there; left out, it is there only while none is chosen
 */
export function fill(select: HTMLSelectElement, names: readonly string[], chosen: string | null, all?: string): void {
  const shown = [...select.options].map(({ value }) => value);
  const wanted = chosen === null || all !== undefined ? ['', ...names] : names;
  if (shown.length !== wanted.length || shown.some((value, index) => value !== wanted[index])) {
    select.replaceChildren(
      ...wanted.map((name) => h('option', { value: name }, name === '' ? (all ?? LABELS.choosePanel) : name)),
    );
  }
  select.value = chosen ?? '';
  select.disabled = names.length === 0;
}
