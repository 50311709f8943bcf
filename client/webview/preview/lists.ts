import { tableCells } from '../../../shared-core/drawing/bore-map/hole-table.js';
import type { HoleLine, Scene, SceneFinding, SourceKey } from '../../../shared-core/drawing/scene/scene.js';
import { boreClass, patternNodes } from '../../../shared-core/drawing/render/svg-tree.js';
import { h, icon } from '../page/dom.js';
import { patch } from '../page/patch.js';
import { unparted } from '../page/unparted.js';
import { findingButton } from './finding-button.js';
import { LABELS, PHRASES } from './messages.js';

export interface ListActions {
  /** The reader wants to see the text that a line comes from. */
  readonly reveal: (source: SourceKey) => void;
  /** The reader points at a line: its bores are to be shown; none where he points away. */
  readonly point: (bores: readonly string[]) => void;
}

/** After the number: count, face, u, v, diameter, depth, use. Lists of places may be broken into lines. */
const COLUMNS = [[], ['whole'], ['places', 'across'], ['places'], ['whole'], ['whole'], ['use']];

/** Findings, hole table and notes under the drawing: all that it shows, as text. Rebuilt only where its content differs. */
export class Lists {
  readonly #actions: ListActions;

  readonly element: HTMLElement;
  readonly #findings = h('section', { class: 'findings', 'aria-label': LABELS.findings });
  readonly #holes = h('section', { class: 'holes', 'aria-label': LABELS.holeTable });
  readonly #notes = h('section', { class: 'notes', 'aria-label': LABELS.notes });
  #shown = ['', '', ''];

  constructor(actions: ListActions) {
    this.#actions = actions;

    this.element = h('div', { class: 'lists' }, this.#findings, this.#holes, this.#notes);
  }

  show(scene: Scene): void {
    const parts = [
      { host: this.#findings, content: scene.findings, make: () => this.#findingList(scene.findings) },
      { host: this.#holes, content: [scene.heads, scene.table], make: () => this.#holeTable(scene) },
      {
        host: this.#notes,
        content: scene.notes,
        make: () => [h('ul', {}, ...scene.notes.map((note) => h('li', {}, note)))],
      },
    ];
    parts.forEach(({ host, content, make }, index) => {
      const text = JSON.stringify(content);
      if (this.#shown[index] === text) return;
      this.#shown[index] = text;
      const focused =
        document.activeElement instanceof HTMLElement && host.contains(document.activeElement)
          ? document.activeElement.dataset.key
          : undefined;
      host.replaceChildren(...make());
      if (focused !== undefined) host.querySelector<HTMLElement>(`[data-key="${CSS.escape(focused)}"]`)?.focus();
    });
  }

  #findingList(findings: readonly SceneFinding[]): Node[] {
    if (findings.length === 0) return [h('p', { class: 'clean' }, LABELS.noFindings)];
    const items = findings.map((finding) => {
      const button = findingButton(finding);
      this.#wire(button, finding.bores, finding.source);
      return h('li', {}, button);
    });
    return [h('h2', {}, PHRASES.findings(findings.length)), h('ul', {}, ...items)];
  }

  #holeTable(scene: Scene): Node[] {
    if (scene.table.length === 0) return [h('p', { class: 'clean' }, LABELS.noBores)];
    const ofAll = scene.view === 'all-panels';
    const heads = ofAll ? [LABELS.panel, ...scene.heads] : scene.heads;
    const rows = scene.table.map((line) => {
      const [number, ...cells] = tableCells(line);
      const button = h(
        'button',
        { type: 'button', 'data-key': `line-${line.number}`, 'aria-label': PHRASES.line(number!) },
        signOf(line),
        h('span', {}, number!),
      );
      const row = h(
        'tr',
        { 'data-line': number! },
        ...(ofAll ? [h('td', { class: 'whole' }, line.panel)] : []),
        h('th', { scope: 'row' }, button),
        ...cells.map((cell, index) => h('td', { class: COLUMNS[index]?.join(' ') || null }, unparted(cell))),
      );
      this.#wire(row, line.bores, line.source);
      return row;
    });
    return [
      h('h2', {}, LABELS.holes),
      h(
        'table',
        { class: ofAll ? 'of-all-panels' : null },
        h('caption', { class: 'unseen' }, PHRASES.holesOf(scene.title)),
        h('thead', {}, h('tr', {}, ...heads.map((head) => h('th', { scope: 'col' }, head)))),
        h('tbody', {}, ...rows),
      ),
    ];
  }

  #wire(element: HTMLElement, bores: readonly string[], source: SourceKey): void {
    element.addEventListener('click', () => this.#actions.reveal(source));
    for (const event of ['mouseenter', 'focusin']) element.addEventListener(event, () => this.#actions.point(bores));
    for (const event of ['mouseleave', 'focusout']) element.addEventListener(event, () => this.#actions.point([]));
  }
}

/** The sign by which a bore of this kind is known on the drawing. */
function signOf(line: HoleLine): SVGSVGElement {
  const sign = icon({ from: -7, size: 14 });
  sign.setAttribute('class', 'sign');
  patch(sign, [
    {
      tag: 'g',
      key: 'sign',
      attributes: { class: boreClass(line.purpose) },
      children: [
        { tag: 'circle', key: 'rim', attributes: { class: 'rim', r: '6' }, children: [] },
        ...patternNodes(line.purpose, 6),
      ],
    },
  ]);
  return sign;
}
