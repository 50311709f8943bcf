import type { BoxReply } from '../../../shared-core/drawing/messages/box-view.js';
import { h } from '../page/dom.js';
import { findingButton } from '../preview/finding-button.js';
import { LABELS as OF_MAP, PHRASES as PHRASES_OF_MAP } from '../preview/messages.js';
import { LABELS, PHRASES } from './messages.js';
import type { Thing } from './solids.js';

type Boxes = Extract<BoxReply, { kind: 'box' }>;

export interface ListActions {
  /** The reader wants to see the text that a thing comes from. */
  readonly reveal: (carcass: string, source: string) => void;
  /** The reader is at a line of the lists: what it is about is to be seen. */
  readonly choose: (thing: Thing) => void;
}

/** All that the view shows, as text: findings, panels, and the bores of the panel that is chosen. */
export class Lists {
  readonly element: HTMLElement;
  readonly #actions: ListActions;
  readonly #findings = h('section', { 'aria-label': OF_MAP.findings });
  readonly #parts = h('section', { 'aria-label': LABELS.panels });
  readonly #bores = h('section', { 'aria-label': OF_MAP.holes });
  #shown = '';
  #boresOf = '';

  constructor(actions: ListActions) {
    this.#actions = actions;
    this.element = h('div', { class: 'lists' }, this.#findings, this.#parts, this.#bores);
  }

  show({ boxes }: Boxes): void {
    const found = boxes.flatMap(({ scene }) => scene.findings.map((finding) => ({ scene, finding })));
    const text = JSON.stringify([found.map(({ finding }) => finding), boxes.map(({ scene }) => scene.described)]);
    if (this.#shown === text) return;
    this.#shown = text;
    this.#boresOf = '';
    this.#findings.replaceChildren(
      ...(found.length === 0
        ? [h('p', { class: 'clean' }, OF_MAP.noFindings)]
        : [
            h('h2', {}, PHRASES_OF_MAP.findings(found.length)),
            h('ul', {}, ...found.map(({ scene, finding }) => this.#findingLine(scene.carcass, finding))),
          ]),
    );
    this.#parts.replaceChildren(
      h('h2', {}, LABELS.panels),
      h(
        'ul',
        {},
        ...boxes.flatMap(({ scene }) =>
          scene.parts.map((part) => this.#line({ carcass: scene.carcass, part, bore: null }, boxes.length > 1)),
        ),
      ),
    );
    this.#bores.replaceChildren();
  }

  /** Lists the bores of the panel that is chosen, and marks both. */
  mark(chosen: Thing | null): void {
    for (const line of this.#parts.querySelectorAll<HTMLElement>('[data-part]')) {
      const isChosen = chosen !== null && line.dataset.part === keyOf(chosen);
      line.toggleAttribute('aria-current', isChosen);
      if (isChosen) {
        line.setAttribute('aria-current', 'true');
        line.scrollIntoView({ block: 'nearest' });
      }
    }
    const key = chosen === null ? '' : keyOf(chosen);
    if (this.#boresOf !== key) {
      this.#boresOf = key;
      const bores = chosen?.part.bores ?? [];
      this.#bores.replaceChildren(
        ...(chosen === null || bores.length === 0
          ? []
          : [
              h('h2', {}, PHRASES.boresOf(chosen.part.called)),
              h('ul', {}, ...bores.map((bore) => this.#line({ ...chosen, bore }, false))),
            ]),
      );
    }
    for (const line of this.#bores.querySelectorAll<HTMLElement>('[data-bore]')) {
      const isChosen = line.dataset.bore === chosen?.bore?.id;
      if (isChosen) line.setAttribute('aria-current', 'true');
      else line.removeAttribute('aria-current');
    }
  }

  #findingLine(carcass: string, finding: Boxes['boxes'][number]['scene']['findings'][number]): HTMLElement {
    const button = findingButton(finding);
    button.addEventListener('click', () => this.#actions.reveal(carcass, finding.source));
    return h('li', {}, button);
  }

  #line(thing: Thing, isNamed: boolean): HTMLElement {
    const { carcass, part, bore } = thing;
    const words = (bore ?? part).described;
    const button = h(
      'button',
      {
        type: 'button',
        class: 'finding-line',
        [bore === null ? 'data-part' : 'data-bore']: bore?.id ?? keyOf(thing),
      },
      ...(isNamed ? [h('span', { class: 'rule' }, carcass)] : []),
      h('span', { class: 'message' }, words),
    );
    button.addEventListener('focus', () => this.#actions.choose(thing));
    button.addEventListener('click', () => this.#actions.reveal(carcass, (bore ?? part).source));
    return h('li', {}, button);
  }
}

/** Names a panel among all that are shown. */
const keyOf = ({ carcass, part }: Thing): string => `${carcass}/${part.key}`;
