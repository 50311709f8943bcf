import type { LengthFault } from '../../length/parse.js';
import { writtenUnit } from '../../length/reader.js';
import type { Unit } from '../../length/units.js';
import type { NumberBounds } from '../../schema/messages.js';
import type { Show } from '../../words/show.js';
import type { Translations } from '../tables.js';
import { compte, et, nombre, noun, ou, quoted } from './words.js';

/** Ce qu’il y a à dire de la lecture des valeurs. */
export const reading = {
  reading: {
    lengthBelow: ({ value, ...more }, show) => `${show.exact(value)} est sous le minimum. ${lengthBounds(more, show)}`,
    lengthAbove: ({ value, ...more }, show) =>
      `${show.exact(value)} est au-dessus du maximum. ${lengthBounds(more, show)}`,
    numberBelow: ({ text, ...more }) => `${text} est trop petit. ${numberBounds(more)}`,
    numberAbove: ({ text, ...more }) => `${text} est trop grand. ${numberBounds(more)}`,
    notALength: ({ fault, unit }) => notALength(fault, unit),
    decimalComma: ({ written, meant }) =>
      `${quoted(written)} se lit comme deux valeurs, car entre crochets une virgule sépare les valeurs. Écrivez ${meant}.`,
    decimalCommaOrTwo: ({ written, meant }) =>
      `${quoted(written)} se lit comme deux valeurs, car entre crochets une virgule sépare les valeurs. Écrivez ${meant} pour une longueur, ou une espace après la virgule pour deux.`,
    notASpan: ({ text, wanted }, show) => `${quoted(text)} n’est pas une plage. ${toWrite(wanted, show)}`,
    spanWithoutTo: ({ text, meant }) =>
      `${quoted(text)} n’est pas une plage, dont les deux longueurs sont séparées par « to ». Écrivez ${meant}.`,
    spanOfNoLengths: ({ fault, unit, max }, show) =>
      `${notALength(fault, unit)} Une plage a deux longueurs, par exemple ${spanExample({ max }, writtenUnit(show.reader))}.`,
    spanBackwards: ({ from, to }, show) =>
      `La plage descend de ${show.exact(from)} à ${show.exact(to)}. Écrivez d’abord la plus petite longueur.`,
    notAWholeNumber: ({ text, wanted }, show) => `${quoted(text)} n’est pas un nombre entier. ${toWrite(wanted, show)}`,
    notANumber: ({ text, wanted }, show) => `${quoted(text)} n’est pas un nombre. ${toWrite(wanted, show)}`,
    notValid: ({ subject, text, wanted }, show) =>
      `${quoted(text)} ne convient pas à ${named(subject)}. ${toWrite(wanted, show)}`,
    standsAlone: ({ subject, text, wanted }, show) =>
      `${quoted(text)} ne convient pas à ${named(subject)}. Écrivez ${thing(wanted, show)}, ou [${text}] pour une liste d’un seul élément.`,
    noValue: ({ subject, wanted }, show) => `${sentenceOf(subject)} n’a pas de valeur. ${toWrite(wanted, show)}`,
    mapForValue: ({ subject, wanted }, show) =>
      `${sentenceOf(subject)} prend une valeur, non des clés. ${toWrite(wanted, show)}`,
    listForValue: ({ subject, wanted }, show) =>
      `${sentenceOf(subject)} prend une valeur, non une liste. ${toWrite(wanted, show)}`,
    mapNotTaken: ({ subject, wanted }, show) => `${sentenceOf(subject)} ne prend pas de clés. ${toWrite(wanted, show)}`,
    listNotTaken: ({ subject, wanted }, show) =>
      `${sentenceOf(subject)} ne prend pas de liste. ${toWrite(wanted, show)}`,
    valueNotTaken: ({ subject, wanted }, show) =>
      `${sentenceOf(subject)} ne prend pas une valeur seule. ${toWrite(wanted, show)}`,
    notAList: ({ subject, item }, show) =>
      `${sentenceOf(subject)} doit être une liste. Écrivez pour chaque élément ${thing(item, show)}, entre crochets et séparés par des virgules, ou chacun sur une ligne après un tiret.`,
    listTooLong: ({ items, most }) =>
      `La liste a ${items} éléments ; le maximum est ${most}. Retirez les éléments à partir d’ici.`,
    notNamed: ({ noun: of }) =>
      `Ici, ${noun(of).a} demande un nom et un deux-points, avec ses clés en retrait dessous.`,
    nameless: ({ noun: of }) => `Il manque un nom avant le deux-points (${noun(of).bare}).`,
    notKeys: ({ noun: of, keys }) =>
      `Il manque ici les clés ${noun(of).of}. Écrivez chacune sur sa ligne : ${someKeys(keys)}.`,
    howMany: ({ key, count, meant }) =>
      `\`${key}\` dit comment ils sont faits, et non qu’il y en a ${count}. Écrivez \`${meant}\`.`,
    spaceMissing: ({ key, value }) => `Il manque une espace après le deux-points. Écrivez \`${key}: ${value}\`.`,
    keyMissing: ({ noun: of, key, wanted }, show) => `\`${key}\` manque (${noun(of).bare}). ${toWrite(wanted, show)}`,
    keyMisspelt: ({ key, noun: of, near }) =>
      `${quoted(key)} n’est pas une clé ${noun(of).of}. Vouliez-vous dire ${ou(near.map((one) => `\`${one}\``))} ?`,
    keyOfNothing: ({ key, noun: of }) =>
      `${quoted(key)} n’est pas une clé ${noun(of).of}, et ces fichiers n’ont rien pour cela. Retirez la ligne.`,
    keyFurtherIn: ({ key, noun: of, outer, inner }) =>
      `${quoted(key)} n’est pas une clé ${noun(of).of}. Écrivez \`${inner}\` sous \`${outer}\`.`,
    keyUnknown: ({ key, noun: of, keys }) => `${quoted(key)} n’est pas une clé ${noun(of).of}. Prenez ${ou(keys)}.`,
    writtenTwice: ({ key }) => `${quoted(key)} est écrit deux fois ; seul le premier compte. Retirez l’un des deux.`,
    nameWrittenTwice: ({ key }) =>
      `${quoted(key)} est écrit deux fois ; seul le premier compte. Retirez l’un des deux, ou donnez à celui-ci un autre nom.`,
    firstWritten: ({ key }) => `${quoted(key)} est d’abord écrit ici.`,
    write: ({ text }) => `Écrire ${text}`,
    writeTwo: ({ first, second }) => `Écrire ${first}, ${second} : deux valeurs`,
    rename: ({ text }) => `Renommer en ${text}`,
    add: ({ path, text }) => `Ajouter ${[...path, text].join(': ')}`,
    remove: ({ key }) => `Retirer ${quoted(key)}`,
    removeThis: ({ key }) => `Retirer ce ${quoted(key)}`,
    removeFirst: ({ key }) => `Garder ce ${quoted(key)} et retirer le premier`,
    withoutDashes: ({ count }) => `Retirer ${nombre(count, 'le tiret', `les ${count} tirets`)}`,
    nameAsKey: ({ count }) =>
      `Écrire ${nombre(count, 'le nom', `les ${count} noms`)} à la place ${nombre(count, 'du tiret', 'des tirets')}`,
    addSpace: () => 'Mettre une espace après le deux-points',
  },
  'file-unit': {
    missing: ({ reading: what }, show) => `${show.tell(what)} ${UNTIL}`,
    unknown: ({ word }) => `${quoted(word)} n’est pas une unité de ces fichiers. Prenez mm ou in. ${UNTIL}`,
    metric: ({ word, factor }) =>
      `${quoted(word)} n’est pas une unité de ces fichiers. Écrivez \`unit: mm\` et multipliez chaque nombre nu par ${factor}. ${UNTIL}`,
  },
  'word-replaced': {
    replaced: ({ word, now }) => `${quoted(word)} est un ancien mot pour \`${now}\`. Écrivez \`${now}\`.`,
  },
  form: {
    length: ({ min, max }, show) => `une longueur de ${show.exact(min)} à ${show.exact(max)}`,
    span: ({ min, max }, show) =>
      `deux longueurs de ${show.exact(min)} à ${show.exact(max)}, par exemple ${spanExample({ max }, writtenUnit(show.reader))}`,
    count: ({ min, max }) => `un nombre entier de ${min} à ${max}`,
    number: ({ min, max }) => `un nombre de ${min} à ${max}`,
    flag: () => 'yes ou no',
    text: () => 'un texte',
    shopFile: () => 'le nom d’un fichier d’atelier',
    name: ({ of }) => `le nom ${noun(of).of}`,
    choice: ({ options }) => `l’un de ${ou(options)}`,
    list: ({ item, most }, show) => `une liste de ${most} éléments au plus : ${show.tell(item)}`,
    named: ({ noun: of }) => `des noms, chacun avec les clés ${noun(of).of}`,
    record: ({ keys }) => `les clés ${et(keys)}`,
    either: ({ forms }, show) => forms.map((one) => show.tell(one)).join(' ; ou '),
  },
} satisfies Translations;

const UNTIL = 'Aucune taille n’est contrôlée d’ici là.';

interface Subject {
  readonly key: string;
  readonly isItem: boolean;
}
const named = ({ key, isItem }: Subject): string => (isItem ? `un élément de \`${key}\`` : `\`${key}\``);
function sentenceOf({ key, isItem }: Subject): string {
  if (key === '') return 'Le fichier';
  return isItem ? `Chaque élément de \`${key}\`` : `\`${key}\``;
}

interface Bounds {
  readonly min: number;
  readonly max: number;
}
const between = ({ min, max }: Bounds, show: Show): string => `entre ${show.length(min)} et ${show.length(max)}`;
function lengthBounds(
  { subject, meant, ...bounds }: Bounds & { readonly subject: Subject; readonly meant: string | null },
  show: Show,
): string {
  const must = `${sentenceOf(subject)} doit être ${between(bounds, show)}`;
  return meant === null ? `${must}.` : `${must} ; vouliez-vous dire ${meant} ?`;
}
const numberBounds = ({ subject, min, max, of }: NumberBounds): string =>
  `${sentenceOf(subject)} doit être entre ${min} et ${max}${counting(of)}.`;

const FORMS: Readonly<Record<Unit, string>> = {
  mm: 'Écrivez-la comme 600, 600.5 mm, 23 5/8 in ou 1\' 11 5/8".',
  in: 'Écrivez-la comme 23 5/8, 23.625, 1\' 11 5/8" ou 600 mm.',
};
function notALength({ as, text, instead }: LengthFault, unit: Unit): string {
  switch (as) {
    case 'empty':
      return `Il manque une longueur. ${FORMS[unit]}`;
    case 'too-long':
      return `${quoted(text)} est trop long pour une longueur. ${FORMS[unit]}`;
    case 'by-nought':
      return `${quoted(text)} divise par zéro. ${FORMS[unit]}`;
    case 'too-great':
      return `${quoted(text)} dépasse un kilomètre. ${FORMS[unit]}`;
    case 'comma':
      return `${quoted(text)} a une virgule décimale. Écrivez ${instead ?? 'un point'}.`;
    case 'unit':
      return `${quoted(text)} a une unité que ces fichiers ne connaissent pas. Écrivez ${instead ?? 'en mm ou en in'}.`;
    case 'exponent':
      return `${quoted(text)} a un exposant. Écrivez le nombre en entier.`;
    case 'other':
      return `${quoted(text)} n’est pas une longueur. ${FORMS[unit]}`;
  }
}

/** Les mêmes exemples qu’en anglais. */
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
  kilograms: 'kilogrammes',
  'kilograms per cubic metre': 'kilogrammes par mètre cube',
  'newtons per square millimetre': 'newtons par millimètre carré',
  seconds: 'secondes',
  degrees: 'degrés',
};
const counting = (of: keyof typeof NUMBERS | null): string => (of === null ? '' : `, en ${NUMBERS[of]}`);

const toWrite = (wanted: Wanted, show: Show): string =>
  `${wanted.type === 'choice' ? 'Prenez' : 'Écrivez'} ${thing(wanted, show)}.`;

function thing(wanted: Wanted, show: Show): string {
  switch (wanted.type) {
    case 'length':
      return `une longueur ${between(wanted, show)}`;
    case 'span':
      return `deux longueurs ${between(wanted, show)}, par exemple ${spanExample(wanted, writtenUnit(show.reader))}`;
    case 'count':
      return `un nombre entier entre ${wanted.min} et ${wanted.max}`;
    case 'number':
      return `un nombre entre ${wanted.min} et ${wanted.max}${counting(wanted.of)}`;
    case 'flag':
      return 'yes ou no';
    case 'text':
      return 'un texte';
    case 'name':
      return `le nom ${noun(wanted.of === 'shop-file' ? 'shop file' : wanted.of).of}`;
    case 'choice':
      return ou(wanted.words);
    case 'list':
      return `une liste dont chaque élément est ${thing(wanted.item, show)}`;
    case 'named':
      return `sous chaque nom ${noun(wanted.noun).a}`;
    case 'record':
      return `les clés ${noun(wanted.noun).of} (${someKeys(wanted.keys)})`;
    case 'either':
      return wanted.of.map((one) => thing(one, show)).join(', ou ');
  }
}

function someKeys(keys: readonly string[]): string {
  const rest = keys.length - 6;
  return rest > 0 ? `${keys.slice(0, 6).join(', ')} et ${compte(rest, 'autre')}` : et(keys);
}
