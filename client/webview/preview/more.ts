import type { PictureUse } from '../../../shared-core/drawing/messages/picture.js';
import { h } from '../page/dom.js';
import { LABELS } from './messages.js';

export interface MoreActions {
  readonly another: () => void;
  readonly papers: () => void;
  readonly picture: (use: PictureUse) => void;
}

/** What is done with a drawing now and then, behind one button, so that narrow panes keep their room. */
export function moreButton({ another, papers, picture }: MoreActions): HTMLElement {
  const entries: readonly (readonly [name: string, words: string, act: () => void])[] = [
    ['another', LABELS.another, another],
    ['copy', LABELS.copy, () => picture('copy')],
    ['svg', LABELS.svg, () => picture('svg')],
    ['png', LABELS.png, () => picture('png')],
    ['print', LABELS.print, () => picture('print')],
    ['papers', LABELS.papers, papers],
  ];
  const button = h(
    'button',
    {
      type: 'button',
      'aria-expanded': 'false',
      'aria-controls': 'more',
      'aria-label': LABELS.more,
      title: LABELS.moreMeaning,
    },
    '⋯',
  );
  const list = h('ul', { id: 'more', hidden: true });
  const open = (isOpen: boolean): void => {
    list.hidden = !isOpen;
    button.setAttribute('aria-expanded', String(isOpen));
  };
  list.append(
    ...entries.map(([name, words, act]) => {
      const entry = h('button', { type: 'button', 'data-more': name }, words);
      entry.addEventListener('click', () => {
        button.focus();
        open(false);
        act();
      });
      return h('li', {}, entry);
    }),
  );
  const element = h('div', { class: 'more' }, button, list);
  button.addEventListener('click', () => open(list.hidden === true));
  element.addEventListener('focusout', ({ relatedTarget }) => {
    if (!(relatedTarget instanceof Node && element.contains(relatedTarget))) open(false);
  });
  element.addEventListener('keydown', (event) => {
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (event.key === 'Escape') {
      button.focus();
      open(false);
    } else if (step !== undefined) {
      open(true);
      const all = [...list.querySelectorAll('button')];
      const at = all.findIndex((one) => one === document.activeElement);
      all[(at + step + all.length) % all.length]?.focus();
    } else return;
    event.preventDefault();
  });
  return element;
}
