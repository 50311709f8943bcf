import type { LengthFault } from '../../length/parse.js';
import { writtenUnit } from '../../length/reader.js';
import type { Unit } from '../../length/units.js';
import type { NumberBounds } from '../../schema/messages.js';
import type { Show } from '../../words/show.js';
import type { Translations } from '../tables.js';
import { anzahl, noun, oder, quoted, und, zahl } from './words.js';

/** Was beim Lesen der Werte zu sagen ist. */
export const reading = {
  reading: {
    lengthBelow: ({ value, ...more }, show) =>
      `${show.exact(value)} ist unter dem Mindestmaß. ${lengthBounds(more, show)}`,
    lengthAbove: ({ value, ...more }, show) =>
      `${show.exact(value)} ist über dem Höchstmaß. ${lengthBounds(more, show)}`,
    numberBelow: ({ text, ...more }) => `${text} ist zu klein. ${numberBounds(more)}`,
    numberAbove: ({ text, ...more }) => `${text} ist zu groß. ${numberBounds(more)}`,
    notALength: ({ fault, unit }) => notALength(fault, unit),
    decimalComma: ({ written, meant }) =>
      `${quoted(written)} liest sich als zwei Werte, weil in Klammern ein Komma Werte trennt. Schreiben Sie ${meant}.`,
    decimalCommaOrTwo: ({ written, meant }) =>
      `${quoted(written)} liest sich als zwei Werte, weil in Klammern ein Komma Werte trennt. Schreiben Sie ${meant} für eine Länge, oder ein Leerzeichen nach dem Komma für zwei.`,
    notASpan: ({ text, wanted }, show) => `${quoted(text)} ist kein Bereich. ${toWrite(wanted, show)}`,
    spanWithoutTo: ({ text, meant }) =>
      `${quoted(text)} ist keine Spanne; zwischen deren beiden Längen steht „to“. Schreiben Sie ${meant}.`,
    spanOfNoLengths: ({ fault, unit, max }, show) =>
      `${notALength(fault, unit)} Ein Bereich hat zwei Längen, etwa ${spanExample({ max }, writtenUnit(show.reader))}.`,
    spanBackwards: ({ from, to }, show) =>
      `Der Bereich läuft von ${show.exact(from)} abwärts auf ${show.exact(to)}. Schreiben Sie die kleinere Länge zuerst.`,
    notAWholeNumber: ({ text, wanted }, show) => `${quoted(text)} ist keine ganze Zahl. ${toWrite(wanted, show)}`,
    notANumber: ({ text, wanted }, show) => `${quoted(text)} ist keine Zahl. ${toWrite(wanted, show)}`,
    notValid: ({ subject, text, wanted }, show) =>
      `${quoted(text)} gilt nicht für ${named(subject)}. ${toWrite(wanted, show)}`,
    standsAlone: ({ subject, text, wanted }, show) =>
      `${quoted(text)} gilt nicht für ${named(subject)}. Schreiben Sie ${thing(wanted, show)}, oder [${text}] für eine Liste mit einem Eintrag.`,
    noValue: ({ subject, wanted }, show) => `${sentenceOf(subject)} hat keinen Wert. ${toWrite(wanted, show)}`,
    mapForValue: ({ subject, wanted }, show) =>
      `${sentenceOf(subject)} nimmt einen Wert, keine eigenen Schlüssel. ${toWrite(wanted, show)}`,
    listForValue: ({ subject, wanted }, show) =>
      `${sentenceOf(subject)} nimmt einen Wert, keine Liste. ${toWrite(wanted, show)}`,
    mapNotTaken: ({ subject, wanted }, show) =>
      `${sentenceOf(subject)} nimmt keine eigenen Schlüssel. ${toWrite(wanted, show)}`,
    listNotTaken: ({ subject, wanted }, show) => `${sentenceOf(subject)} nimmt keine Liste. ${toWrite(wanted, show)}`,
    valueNotTaken: ({ subject, wanted }, show) =>
      `${sentenceOf(subject)} nimmt keinen einzelnen Wert. ${toWrite(wanted, show)}`,
    notAList: ({ subject, item }, show) =>
      `${sentenceOf(subject)} muss eine Liste sein. Schreiben Sie als jeden Eintrag ${thing(item, show)}, in Klammern mit Kommas dazwischen, oder jeden auf einer Zeile nach einem Strich.`,
    listTooLong: ({ items, most }) =>
      `Die Liste hat ${items} Einträge; höchstens ${most} sind möglich. Entfernen Sie die Einträge ab hier.`,
    notNamed: ({ noun: of }) =>
      `Hier braucht alles einen Namen und einen Doppelpunkt, mit den Schlüsseln eingerückt darunter (${noun(of).bare}).`,
    nameless: ({ noun: of }) => `Vor dem Doppelpunkt fehlt ein Name (${noun(of).bare}).`,
    notKeys: ({ noun: of, keys }) =>
      `Hier fehlen die Schlüssel ${noun(of).of}. Schreiben Sie jeden auf eine eigene Zeile: ${someKeys(keys)}.`,
    howMany: ({ key, count, meant }) =>
      `\`${key}\` sagt, wie sie gemacht sind, und nicht, dass es ${count} sind. Schreiben Sie \`${meant}\`.`,
    spaceMissing: ({ key, value }) => `Nach dem Doppelpunkt fehlt ein Leerzeichen. Schreiben Sie \`${key}: ${value}\`.`,
    keyMissing: ({ noun: of, key, wanted }, show) => `\`${key}\` fehlt (${noun(of).bare}). ${toWrite(wanted, show)}`,
    keyMisspelt: ({ key, noun: of, near }) =>
      `${quoted(key)} ist kein Schlüssel ${noun(of).of}. Meinen Sie ${oder(near.map((one) => `\`${one}\``))}?`,
    keyOfNothing: ({ key, noun: of }) =>
      `${quoted(key)} ist kein Schlüssel ${noun(of).of}, und diese Dateien haben nichts dafür. Entfernen Sie die Zeile.`,
    keyFurtherIn: ({ key, noun: of, outer, inner }) =>
      `${quoted(key)} ist kein Schlüssel ${noun(of).of}. Schreiben Sie \`${inner}\` unter \`${outer}\`.`,
    keyUnknown: ({ key, noun: of, keys }) =>
      `${quoted(key)} ist kein Schlüssel ${noun(of).of}. Nehmen Sie ${oder(keys)}.`,
    writtenTwice: ({ key }) => `${quoted(key)} steht zweimal da; nur das erste zählt. Entfernen Sie eines davon.`,
    nameWrittenTwice: ({ key }) =>
      `${quoted(key)} steht zweimal da; nur das erste zählt. Entfernen Sie eines davon, oder geben Sie diesem einen anderen Namen.`,
    firstWritten: ({ key }) => `${quoted(key)} steht zuerst hier.`,
    write: ({ text }) => `${text} schreiben`,
    writeTwo: ({ first, second }) => `${first}, ${second} schreiben: zwei Werte`,
    rename: ({ text }) => `In ${text} umbenennen`,
    add: ({ path, text }) => `${[...path, text].join(': ')} hinzufügen`,
    remove: ({ key }) => `${quoted(key)} entfernen`,
    removeThis: ({ key }) => `Dieses ${quoted(key)} entfernen`,
    removeFirst: ({ key }) => `Dieses ${quoted(key)} behalten und das erste entfernen`,
    withoutDashes: ({ count }) => `${zahl(count, 'Den Strich', `Die ${count} Striche`)} entfernen`,
    nameAsKey: ({ count }) =>
      `${zahl(count, 'Den Namen', `Die ${count} Namen`)} statt ${zahl(count, 'des Strichs', 'der Striche')} schreiben`,
    addSpace: () => 'Ein Leerzeichen nach dem Doppelpunkt setzen',
  },
  'file-unit': {
    missing: ({ reading: what }, show) => `${show.tell(what)} ${UNTIL}`,
    unknown: ({ word }) => `${quoted(word)} ist keine Einheit dieser Dateien. Nehmen Sie mm oder in. ${UNTIL}`,
    metric: ({ word, factor }) =>
      `${quoted(word)} ist keine Einheit dieser Dateien. Schreiben Sie \`unit: mm\`, und nehmen Sie jede bloße Zahl mal ${factor}. ${UNTIL}`,
  },
  'word-replaced': {
    replaced: ({ word, now }) => `${quoted(word)} ist ein altes Wort für \`${now}\`. Schreiben Sie \`${now}\`.`,
  },
  form: {
    length: ({ min, max }, show) => `eine Länge von ${show.exact(min)} bis ${show.exact(max)}`,
    span: ({ min, max }, show) =>
      `zwei Längen von ${show.exact(min)} bis ${show.exact(max)}, etwa ${spanExample({ max }, writtenUnit(show.reader))}`,
    count: ({ min, max }) => `eine ganze Zahl von ${min} bis ${max}`,
    number: ({ min, max }) => `eine Zahl von ${min} bis ${max}`,
    flag: () => 'yes oder no',
    text: () => 'ein Text',
    shopFile: () => 'der Name einer Werkstattdatei',
    name: ({ of }) => `der Name ${noun(of).of}`,
    choice: ({ options }) => `eines von ${oder(options)}`,
    list: ({ item, most }, show) => `eine Liste mit höchstens ${most} Einträgen: ${show.tell(item)}`,
    named: ({ noun: of }) => `Namen, jeder mit den Schlüsseln ${noun(of).of}`,
    record: ({ keys }) => `die Schlüssel ${und(keys)}`,
    either: ({ forms }, show) => forms.map((one) => show.tell(one)).join('; oder '),
  },
} satisfies Translations;

const UNTIL = 'Bis dahin wird keine Größe geprüft.';

interface Subject {
  readonly key: string;
  readonly isItem: boolean;
}
const named = ({ key, isItem }: Subject): string => (isItem ? `einen Eintrag von \`${key}\`` : `\`${key}\``);
function sentenceOf({ key, isItem }: Subject): string {
  if (key === '') return 'Die Datei';
  return isItem ? `Jeder Eintrag von \`${key}\`` : `\`${key}\``;
}

interface Bounds {
  readonly min: number;
  readonly max: number;
}
const between = ({ min, max }: Bounds, show: Show): string => `zwischen ${show.length(min)} und ${show.length(max)}`;
function lengthBounds(
  { subject, meant, ...bounds }: Bounds & { readonly subject: Subject; readonly meant: string | null },
  show: Show,
): string {
  const must = `${sentenceOf(subject)} muss ${between(bounds, show)} liegen`;
  return meant === null ? `${must}.` : `${must}; meinen Sie ${meant}?`;
}
const numberBounds = ({ subject, min, max, of }: NumberBounds): string =>
  `${sentenceOf(subject)} muss zwischen ${min} und ${max} liegen${counting(of)}.`;

const FORMS: Readonly<Record<Unit, string>> = {
  mm: 'Schreiben Sie sie wie 600, 600.5 mm, 23 5/8 in oder 1\' 11 5/8".',
  in: 'Schreiben Sie sie wie 23 5/8, 23.625, 1\' 11 5/8" oder 600 mm.',
};
function notALength({ as, text, instead }: LengthFault, unit: Unit): string {
  switch (as) {
    case 'empty':
      return `Eine Länge fehlt. ${FORMS[unit]}`;
    case 'too-long':
      return `${quoted(text)} ist zu lang für eine Länge. ${FORMS[unit]}`;
    case 'by-nought':
      return `${quoted(text)} teilt durch null. ${FORMS[unit]}`;
    case 'too-great':
      return `${quoted(text)} ist mehr als ein Kilometer. ${FORMS[unit]}`;
    case 'comma':
      return `${quoted(text)} hat ein Dezimalkomma. Schreiben Sie ${instead ?? 'einen Punkt'}.`;
    case 'unit':
      return `${quoted(text)} hat eine Einheit, die diese Dateien nicht kennen. Schreiben Sie ${instead ?? 'es in mm oder in'}.`;
    case 'exponent':
      return `${quoted(text)} hat einen Exponenten. Schreiben Sie die Zahl aus.`;
    case 'other':
      return `${quoted(text)} ist keine Länge. ${FORMS[unit]}`;
  }
}

/** Dieselben Beispiele wie im Englischen. */
function spanExample({ max }: { readonly max: number }, unit: Unit): string {
  if (max < 26_000) return unit === 'in' ? '1/64 to 1/16' : '0.4 to 2';
  if (max < 80_000) return unit === 'in' ? '1/4 to 3/4' : '5 to 20';
  return unit === 'in' ? '1 to 3 1/8' : '20 to 80';
}

type Wanted =
  | { readonly type: 'length' | 'span' | 'count'; readonly min: number; readonly max: number }
  | { readonly type: 'number'; readonly min: number; readonly max: number; readonly of: keyof typeof NUMBERS | null }
  | { readonly type: 'flag' | 'text' }
  | { readonly type: 'name'; readonly of: string }
  | { readonly type: 'choice'; readonly words: readonly string[] }
  | { readonly type: 'list'; readonly item: Wanted }
  | { readonly type: 'named'; readonly noun: string }
  | { readonly type: 'record'; readonly noun: string; readonly keys: readonly string[] }
  | { readonly type: 'either'; readonly of: readonly Wanted[] };

const NUMBERS = {
  kilograms: 'Kilogramm',
  'kilograms per cubic metre': 'Kilogramm je Kubikmeter',
  'newtons per square millimetre': 'Newton je Quadratmillimeter',
  seconds: 'Sekunden',
  degrees: 'Grad',
};
const counting = (of: keyof typeof NUMBERS | null): string => (of === null ? '' : `, in ${NUMBERS[of]}`);

const toWrite = (wanted: Wanted, show: Show): string =>
  `${wanted.type === 'choice' ? 'Nehmen Sie' : 'Schreiben Sie'} ${thing(wanted, show)}.`;

function thing(wanted: Wanted, show: Show): string {
  switch (wanted.type) {
    case 'length':
      return `eine Länge ${between(wanted, show)}`;
    case 'span':
      return `zwei Längen ${between(wanted, show)}, etwa ${spanExample(wanted, writtenUnit(show.reader))}`;
    case 'count':
      return `eine ganze Zahl zwischen ${wanted.min} und ${wanted.max}`;
    case 'number':
      return `eine Zahl zwischen ${wanted.min} und ${wanted.max}${counting(wanted.of)}`;
    case 'flag':
      return 'yes oder no';
    case 'text':
      return 'einen Text';
    case 'name':
      return `den Namen ${noun(wanted.of === 'shop-file' ? 'shop file' : wanted.of).of}`;
    case 'choice':
      return oder(wanted.words);
    case 'list':
      return `eine Liste, deren Einträge so aussehen: ${thing(wanted.item, show)}`;
    case 'named':
      return `unter jedem Namen: ${noun(wanted.noun).bare}`;
    case 'record':
      return `die Schlüssel ${noun(wanted.noun).of} (${someKeys(wanted.keys)})`;
    case 'either':
      return wanted.of.map((one) => thing(one, show)).join(', oder ');
  }
}

function someKeys(keys: readonly string[]): string {
  const rest = keys.length - 6;
  return rest > 0 ? `${keys.slice(0, 6).join(', ')} und ${anzahl(rest, 'weiterer', 'weitere')}` : und(keys);
}
