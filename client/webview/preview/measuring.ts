import { measure, measuredWords } from '../../../shared-core/drawing/bore-map/measure.js';
import type { BoreShape, Scene } from '../../../shared-core/drawing/scene/scene.js';
import type { SvgNode } from '../../../shared-core/drawing/render/svg-tree.js';
import { h, say, set } from '../page/dom.js';
import { LABELS, PHRASES } from './messages.js';

/** How far one bore lies from another: the reader chooses two, the figures stay until he chooses again or leaves off. */
export class Measuring {
  /** Begins and ends it. */
  readonly button = h(
    'button',
    { type: 'button', class: 'measure', 'aria-pressed': 'false', title: LABELS.measureMeaning },
    LABELS.measure,
  );
  readonly element = h('p', { class: 'between-bores', role: 'status', hidden: true });
  readonly #changed: () => void;
  #isOn = false;
  #from: BoreShape | null = null;
  #to: BoreShape | null = null;
  #scene: Scene | null = null;

  /** @param changed the drawing has to show other bores */
  constructor(changed: () => void) {
    this.#changed = changed;
    this.button.addEventListener('click', () => this.turn(!this.#isOn));
  }

  get isOn(): boolean {
    return this.#isOn;
  }

  turn(isOn: boolean): void {
    this.#isOn = isOn;
    [this.#from, this.#to] = [null, null];
    this.#show();
  }

  /** Takes a bore as the first, or as the second where there is a first. */
  pick(bore: BoreShape): void {
    this.#isOn = true;
    if (this.#from === null || this.#to !== null) [this.#from, this.#to] = [bore, null];
    else this.#to = bore;
    this.#show();
  }

  /** Goes on between the same bores of a drawing made anew. */
  renew(scene: Scene | null, bores: readonly BoreShape[]): void {
    const again = (bore: BoreShape | null): BoreShape | null => bores.find((one) => one.bore === bore?.bore) ?? null;
    this.#scene = scene;
    this.#from = again(this.#from);
    this.#to = this.#from === null ? null : again(this.#to);
    this.#show();
  }

  #show(): void {
    set(this.button, 'aria-pressed', String(this.#isOn));
    say(this.element, this.#words());
    this.element.hidden = !this.#isOn;
    this.#changed();
  }

  #words(): string {
    const [from, to, scene] = [this.#from, this.#to, this.#scene];
    if (!this.#isOn || scene === null) return '';
    if (from === null) return LABELS.chooseFirst;
    if (to === null) return PHRASES.measuredFrom(nameOf(from));
    const measured = measure(from, to);
    if (measured === null) return LABELS.twoPanels;
    const figures = measuredWords(measured, scene.reader).map(({ word, value }) => `${word} ${value}`);
    return PHRASES.measured(nameOf(from), nameOf(to), figures);
  }

  /** The two bores and the line between them, over the drawing. */
  nodes(zoom: number): readonly SvgNode[] {
    const chosen = [this.#from, this.#to].filter((bore) => bore !== null);
    const [from, to] = chosen;
    const marks = chosen.map(({ cx, cy, r }, index): SvgNode => ({
      tag: 'circle',
      key: `measured-${index}`,
      attributes: { class: 'ring measured-end', cx: String(cx), cy: String(cy), r: String(r + 4 / zoom) },
      children: [],
    }));
    if (from === undefined || to === undefined || from.panel !== to.panel) return marks;
    const d = `M${from.cx} ${from.cy}L${to.cx} ${to.cy}`;
    return [{ tag: 'path', key: 'measured', attributes: { class: 'ring measured-line', d }, children: [] }, ...marks];
  }
}

/** 'Front row, hole 4 of 23': what is known of a bore begins with what it is. */
const nameOf = ({ about }: BoreShape): string => about.slice(0, about.indexOf(': '));
