import type { MachineScene, Sign } from '../../../shared-core/drawing/machine-view/scene.js';
import type { SvgNode } from '../../../shared-core/drawing/render/svg-tree.js';
import { h, icon } from '../page/dom.js';
import { patch } from '../page/patch.js';
import { unitFor } from '../../../shared-core/length/reader.js';
import { LABELS, PHRASES } from './messages.js';

const circle = (name: string, r: number, line = ''): SvgNode => ({
  tag: 'circle',
  key: name,
  attributes: { class: `${name} ${line}`, cx: '8', cy: '8', r: String(r) },
  children: [],
});
const path = (name: string, d: string, line = ''): SvgNode => ({
  tag: 'path',
  key: `${name}${d}`,
  attributes: { class: `${name} ${line}`, d },
  children: [],
});

/** Each sign as the drawing has it, in a box of 16. */
const SIGNS: Readonly<Record<Sign, readonly SvgNode[]>> = {
  'spindle-loaded': [circle('spindle-loaded', 6, 'line-outline'), circle('bit', 3)],
  'spindle-empty': [path('spindle-empty fill-paper', 'M5 5H11V11H5Z')],
  'hole-made': [circle('hole-made', 4, 'line-fine')],
  'hole-now': [circle('hole-now', 4, 'line-fine')],
  'hole-to-come': [circle('hole-to-come', 4, 'line-fine')],
  'stop-used': [path('stop-used line-outline', 'M5.5 2H10.5V14H5.5Z')],
  'stop-standing': [path('stop-standing line-outline', 'M5.5 2H10.5V14H5.5Z')],
  'stop-lowered': [path('stop-lowered line-hidden', 'M5.5 2H10.5V14H5.5Z')],
  clamp: [path('clamp', 'M3 3H13V13H3ZM3 3L13 13M13 3L3 13', 'line-fine')],
  'hands-clear': [path('zone', 'M1 3H15V13H1Z', 'line-phantom')],
  band: [path('band', 'M1 8H15', 'line-band')],
};

/** What the signs of a scene mean. Rebuilt only where it differs. */
export class Legend {
  readonly #list = h('ul', { class: 'legend' });
  /** Open from the start where it takes no room from the drawing. */
  readonly element = h(
    'details',
    { class: 'signs', open: window.matchMedia('(min-width: 34rem) and (min-height: 56rem)').matches },
    h('summary', {}, LABELS.signsAndKeys),
    this.#list,
    h('p', { class: 'key-words' }, LABELS.keys),
  );
  #shown = '';

  show(scene: MachineScene): void {
    const unit = unitFor(scene.reader);
    const content = JSON.stringify([scene.signs, unit]);
    if (content === this.#shown) return;
    this.#shown = content;
    this.#list.replaceChildren(
      ...scene.signs.map(({ sign, words }) => h('li', {}, iconOf(sign), words)),
      h('li', { class: 'unit' }, PHRASES.figuresIn(unit)),
    );
  }
}

function iconOf(sign: Sign): SVGSVGElement {
  const picture = icon({ from: 0, size: 16 });
  picture.setAttribute('class', 'machine');
  patch(picture, [{ tag: 'g', key: 'sign', attributes: { class: 'shapes' }, children: SIGNS[sign] }]);
  return picture;
}
