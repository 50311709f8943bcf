import type { SetUp } from './set-up.js';
import { labels, type Told } from '../words/told.js';
import { described } from './described.js';

/** A shop caution, in words for a paper or a view. Common practice, no source; the machine's manual and local rules decide. */
export interface Caution {
  /** Stable identity, in plain kebab-case. */
  readonly name: string;
  /** When it counts. */
  readonly when: 'setting' | 'boring' | 'always';
  readonly text: Told;
}

export const TEXTS = labels('cautions', {
  isolate: 'Before changing bits or reaching into the machine, isolate it from power and air and lock it off.',
  handsClear: 'Keep hands clear of spindles and clamps while the head moves; they can trap as well as bore.',
  smallParts: 'Hold small parts with a fixture, never by hand.',
  eyesEarsDust: 'Protect eyes and ears, and draw off the dust.',
  manual: 'The machine’s manual, local rules and trained, licensed practice decide; nothing here replaces them.',
  inShort:
    'Boring can injure: isolate the machine before you change bits, keep hands clear of spindles and clamps, hold small parts in a fixture, guard eyes, ears and lungs. The machine’s manual and local rules decide.',
  through: 'The bits come out on the other side: have a spoil board under the panel, and nothing else.',
  throughUpward:
    'The bits come up and out of the face that lies up: hold the panel beside them, never over them, and keep hands and face away.',
  moving: 'Move the panel along only with the bits clear of it and the spindles at rest.',
});

/** Its words are looked up as they are read, in the language that is spoken then. */
const caution = (name: string, when: Caution['when'], words: keyof typeof TEXTS): Caution => ({
  name,
  when,
  get text() {
    return TEXTS[words];
  },
});

/** In the order in which an operator meets them. All of them stand on every machine view and every list of set-ups. */
export const CAUTIONS: readonly Caution[] = [
  caution('isolate-and-lock', 'setting', 'isolate'),
  caution('hands-clear', 'boring', 'handsClear'),
  caution('small-parts', 'boring', 'smallParts'),
  caution('eyes-ears-dust', 'boring', 'eyesEarsDust'),
  caution('manual-decides', 'always', 'manual'),
];

/** The same on one line, for papers that no machine is set by: a bore map, a page of them. */
export const inShort = (): Told => TEXTS.inShort;

/** Cautions that only some set-ups need, after the ones that always stand. */
const THROUGH = caution('through-bits', 'boring', 'through');
const THROUGH_UPWARD = caution('through-bits', 'boring', 'throughUpward');
const MOVING = caution('index-move', 'boring', 'moving');

/** What a set-up has to say, in order. */
export function cautionsFor(setUp: Pick<SetUp, 'machine' | 'through' | 'runs'>): readonly Caution[] {
  const { machine } = setUp;
  const moves = setUp.runs.some((run) => run.steps.some((step) => step.moved !== 0));
  const manual = CAUTIONS.filter(({ when }) => when === 'always');
  return [
    ...CAUTIONS.filter(({ when }) => when !== 'always'),
    ...(setUp.through ? [described(machine).bitsCome === 'up' ? THROUGH_UPWARD : THROUGH] : []),
    ...(moves ? [MOVING] : []),
    ...manual,
  ];
}
