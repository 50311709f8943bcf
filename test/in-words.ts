import type { Unit } from '../shared-core/length/units.js';
import { Message, tell, type Words } from '../shared-core/words/message.js';

/** A message as a reader with millimetres sees it. */
export function inWords(words: Words, unit: Unit = 'mm'): string {
  return tell(words, unit);
}

/** A message with these words, for a test in which it does not matter who says them. */
export function asMessage(words: string): Message {
  return new Message('test.words', { words }, () => words);
}
