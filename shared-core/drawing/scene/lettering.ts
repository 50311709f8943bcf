import type { Box, TextShape } from './scene.js';

/**
 * Advance widths of Helvetica, in thousandths of the font size, for U+0020 to U+007E. Source: Adobe Core 14 font metrics
 * (Helvetica.afm, Helvetica-Bold.afm); Arial and Liberation Sans are made to the same widths.
 */
const REGULAR = [
  278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556, 556,
  556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833,
  722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500, 556,
  556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334,
  260, 334, 584,
];
const BOLD = [
  278, 333, 474, 556, 556, 889, 722, 238, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556, 556,
  556, 556, 556, 333, 333, 584, 584, 584, 611, 975, 722, 722, 722, 722, 667, 611, 778, 722, 278, 556, 722, 611, 833,
  722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 333, 278, 333, 584, 556, 333, 556, 611, 556, 611,
  556, 333, 611, 611, 278, 278, 556, 278, 889, 611, 611, 611, 611, 389, 556, 333, 611, 556, 778, 556, 556, 500, 389,
  280, 389, 584,
];
/** The same of marks outside the table; letters with accents are as wide as without them. */
const MARKS: Readonly<Record<string, readonly [regular: number, bold: number]>> = {
  '\u00a0': [278, 278],
  '°': [400, 400],
  '·': [278, 278],
  '²': [333, 333],
  '³': [333, 333],
  '«': [556, 556],
  '»': [556, 556],
  '×': [584, 584],
  Ø: [778, 778],
  ß: [611, 611],
  œ: [944, 944],
  î: [278, 278],
  ï: [278, 278],
  '–': [556, 556],
  '‘': [222, 278],
  '’': [222, 278],
  '“': [333, 500],
  '”': [333, 500],
  '„': [333, 500],
  '…': [1000, 1000],
};
/** For a character outside the tables: as wide as the widest common letters, so that an estimate never falls short. */
const OTHER = 834;

/** The face that the widths above belong to. */
export const LETTERING = "Arial, Helvetica, 'Liberation Sans', sans-serif";
/** Height of Helvetica's capitals over its font size (Adobe Core 14 font metrics: CapHeight 718). */
export const CAP_HEIGHT = 0.718;
/** How far the lowest letters reach below the base line, over the font size (Descender -207, bold as well). */
export const DESCENT = 0.207;

/** In thousandths of the font size. */
function advance(letter: string, strong: boolean): number {
  const widths = strong ? BOLD : REGULAR;
  const plain = widths[letter.codePointAt(0)! - 32];
  if (plain !== undefined) return plain;
  return MARKS[letter]?.[strong ? 1 : 0] ?? widths[letter.normalize('NFD').codePointAt(0)! - 32] ?? OTHER;
}

/** Width of a line of lettering whose capitals are `height` high, in the unit of `height`. */
export function textWidth(text: string, height: number, strong: boolean): number {
  let sum = 0;
  for (const letter of text) sum += advance(letter, strong);
  return (sum / 1000) * (height / CAP_HEIGHT);
}

/** The room that a text takes on the page, in scene coordinates. */
export function textBox(shape: TextShape, scale: number): Box {
  const width = textWidth(shape.text, shape.height, shape.strong) * scale;
  const up = shape.height * scale;
  const down = (DESCENT / CAP_HEIGHT) * up;
  const before = shape.anchor === 'start' ? 0 : shape.anchor === 'middle' ? width / 2 : width;
  return shape.turn === 0
    ? { x: shape.x - before, y: shape.y - up, width, height: up + down }
    : { x: shape.x - up, y: shape.y - (width - before), width: up + down, height: width };
}

/** The longest beginning of `text` that fits, with an ellipsis where something was cut off. */
export function fitText(text: string, height: number, strong: boolean, room: number): string {
  if (textWidth(text, height, strong) <= room) return text;
  const letters = Array.from(text);
  while (letters.length > 1 && textWidth(`${letters.join('').trimEnd()}…`, height, strong) > room) letters.pop();
  return `${letters.join('').trimEnd()}…`;
}
