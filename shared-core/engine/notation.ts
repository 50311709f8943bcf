import { readCarcassTree } from '../document/parts.js';
import { inchesOf } from '../job/notation.js';
import type { Notation } from '../length/write.js';
import type { JobAnalysis } from './analysis.js';

/** How lengths are written in the text of a carcass. */
export function notationIn({ parts, unit }: JobAnalysis, carcass: number): Notation {
  const part = parts.carcasses[carcass];
  return { unit, inches: inchesOf(part === undefined ? null : (readCarcassTree(part).entry?.value ?? null)) };
}
