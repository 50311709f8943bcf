import type { AnalysedFile } from '../../../shared-core/service/file.js';
import {
  explain,
  foldsOf,
  formatEdits,
  hintsIn,
  namesOfText,
  offersAt,
  outlineOf,
  refactorsIn,
  spansAt,
  tokensOf,
  writingHelpAt,
  type Outlined,
} from '../../../shared-core/service.js';
import { digest, edited, flat, lineAndColumn, under } from './flat.js';

/** Longer texts have their hovers as digests alone. */
const READ_IN_FULL = 350;

/** What is said of each word of the text, offered there and made of it, and what is shown beside it. */
export function inText(file: AnalysedFile): readonly string[] {
  const { text } = file.analysis;
  const at = (offset: number): string => lineAndColumn(text, offset);
  const names = namesOfText(file.kind, text, undefined).mentions;
  return [
    ...under(
      'hints',
      hintsIn(file, 0, text.length, 'all').map((one) => `${at(one.at)} ${one.label} | ${flat(one.about)}`),
    ),
    ...under(
      'outline',
      outlineOf(file).flatMap((one) => outlined(one, at)),
    ),
    ...under(
      'names',
      names.map(
        ({ start, end, of, name, within, gives, inFlow }) =>
          `${at(start)}-${at(end)} ${of} ${[...within, name].join('/')}${gives ? ', given' : ''}${inFlow ? ', in flow' : ''}`,
      ),
    ),
    `tokens: ${digest(tokensOf(file, names))}`,
    `folds: ${flat(foldsOf(text))}`,
    `blanks: ${edited(text, formatEdits(text))}`,
    ...atWords(file),
  ];
}

function outlined(
  { name, sort, detail, whole, own, within }: Outlined,
  at: (offset: number) => string,
): readonly string[] {
  const where = `${at(whole.start)}-${at(whole.end)} ${at(own.start)}-${at(own.end)}`;
  return under(
    `${sort} ${name} (${detail ?? ''}) ${where}`,
    within.flatMap((one) => outlined(one, at)),
  );
}

/** Every word of the text, and the places where something may be written. */
const PLACES = /[\w.-]+|(?<=[:,[{] ?)(?=\n|[\]}])|(?<=\n {2,})(?=\n)/g;

/** What is said at each word, as digests, and the words of hovers where the text is short. */
function atWords(file: AnalysedFile): readonly string[] {
  const { text } = file.analysis;
  const hovers = new Set<string>();
  const spans: unknown[] = [];
  const isShort = text.length <= READ_IN_FULL;
  const lines = [...text.matchAll(PLACES)].map(({ index, 0: word }) => {
    const end = index + word.length;
    const hover = explain(file, index, true);
    const offers = offersAt(file, end, () => ['own.shop.yaml']);
    const isFirst = /^ *(?:- )?$/.test(text.slice(text.lastIndexOf('\n', index - 1) + 1, index));
    const found = isFirst || /[\d\]]$/.test(word) ? refactorsIn(file, index) : [];
    const makes = found.map(({ title, edits }) => `${title}: ${digest(edited(text, edits))}`);
    if (isShort) hovers.add(explain(file, index)?.words ?? '-');
    const help = writingHelpAt(file, end);
    spans.push(spansAt(file, index));
    const said = {
      hover: hover === null ? null : digest(hover),
      help: help === null ? null : digest(help),
      offers: offers === null ? null : `${offers.offers.length} ${digest(offers)}`,
      makes: makes.length === 0 ? null : makes.join('; '),
    };
    const told = Object.entries(said).flatMap(([what, words]) => (words === null ? [] : [`${what} ${words}`]));
    return `${lineAndColumn(text, index)} ${word}: ${told.join(', ')}`;
  });
  return [
    ...lines,
    `spans: ${digest(spans)}`,
    ...under(
      'hovers',
      [...hovers].map((words) => words.replaceAll('\n', '⏎')),
    ),
  ];
}

/** What is said and offered at each place of a short text, also between its words. */
export function atEachPlace(file: AnalysedFile): readonly string[] {
  const { text } = file.analysis;
  return Array.from({ length: text.length + 1 }, (_, offset) => {
    const offers = offersAt(file, offset, (folder) => (folder === '' ? ['own.shop.yaml'] : []));
    const said = [explain(file, offset), writingHelpAt(file, offset), spansAt(file, offset), refactorsIn(file, offset)];
    const first = offers?.offers.slice(0, 3).map(({ label }) => label);
    const placed = offers === null ? '-' : flat([offers.start, offers.end, offers.shift, offers.offers.length, first]);
    return `${lineAndColumn(text, offset)} ${placed} ${digest([said, offers])}`;
  });
}
