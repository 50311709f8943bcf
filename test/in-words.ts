import type { Unit } from '../shared-core/length/units.js';
import { tell, type Words } from '../shared-core/words/message.js';

/** A message as a reader with millimetres sees it. */
export function inWords(words: Words, unit: Unit = 'mm'): string {
  return tell(words, unit);
}
