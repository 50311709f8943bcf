import { unitFor, type Reader } from '../length/reader.js';
import { figure, nominal, showLength } from '../length/show.js';
import type { Micrometres, Unit } from '../length/units.js';
import { asRead, rangeWord } from './spoken.js';
import type { Told } from './told.js';

/** What can be put into words: see `Message`. */
export interface Tellable {
  readonly unit: Unit | null;
  inWords(show: Show): string;
}

/** How a template shows what is not a word: lengths, as its reader takes them, and messages inside messages. */
export interface Show {
  readonly reader: Reader;
  /** The unit that lengths are shown in here. */
  readonly unit: Unit;
  /** A length to read, with its unit: hundredths of a millimetre or whole fractions and thousandths of an inch at most. */
  readonly length: (length: Micrometres) => string;
  /** A length to write, or one that a micrometre matters to, with its unit. */
  readonly exact: (length: Micrometres) => string;
  /** The size that a bit or a pitch is sold by: '5 mm' also to a reader of inches. */
  readonly nominal: (length: Micrometres) => string;
  /** '20 mm to 80 mm'. */
  readonly span: (span: { readonly min: Micrometres; readonly max: Micrometres }) => string;
  /** A message that stands as whole sentences inside another one. */
  readonly tell: (words: Tellable | Told) => Told;
}

export function showTo(reader: Reader, tell: (words: Tellable | Told, reader: Reader) => Told): Show {
  const unit = unitFor(reader);
  const length = (value: Micrometres): string => `${asRead(readable(value, reader))} ${unit}`;
  return {
    reader,
    unit,
    length,
    exact: (value) => showLength(value, reader),
    nominal: (value) => asRead(nominal(value, reader)),
    span: ({ min, max }) => `${length(min)} ${rangeWord()} ${length(max)}`,
    tell: (words) => tell(words, reader),
  };
}

/** What hundredths would make nothing of is shown in full. */
function readable(value: Micrometres, reader: Reader): string {
  if (unitFor(reader) === 'in') return figure(value, reader);
  const hundredths = Math.round(value / 10) * 10;
  return figure(hundredths === 0 ? value : hundredths, reader);
}
