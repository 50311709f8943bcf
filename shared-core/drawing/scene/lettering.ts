import { EM, WIDTHS } from './letter-widths.js';
import type { Box, TextShape } from './scene.js';

/** For a letter that the face lacks: as wide as the widest common letters, so that an estimate never falls short. */
const OTHER = 0.834 * EM;

const widthsOf = (face: 0 | 1): ReadonlyMap<string, number> =>
  new Map(WIDTHS.flatMap((row) => Array.from(row[2], (letter) => [letter, row[face]] as const)));
const REGULAR = widthsOf(0);
const BOLD = widthsOf(1);

/** The face that the widths above belong to. */
export const LETTERING = "Arial, Helvetica, 'Liberation Sans', sans-serif";
/** Height of Helvetica's capitals over its font size (Adobe Core 14 font metrics: CapHeight 718). */
export const CAP_HEIGHT = 0.718;
/** How far the lowest letters reach below the base line, over the font size (Descender -207, bold as well). */
export const DESCENT = 0.207;

/** In units of the face; letters with accents that it lacks are as wide as without them. */
function advance(letter: string, strong: boolean): number {
  const widths = strong ? BOLD : REGULAR;
  return widths.get(letter) ?? widths.get(letter.normalize('NFD').charAt(0)) ?? OTHER;
}

/** Width of a line of lettering whose capitals are `height` high, in the unit of `height`. */
export function textWidth(text: string, height: number, strong: boolean): number {
  let sum = 0;
  for (const letter of text) sum += advance(letter, strong);
  return (sum / EM) * (height / CAP_HEIGHT);
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
