import { showLength } from '../length/show.js';
import type { Micrometres } from '../length/units.js';
import type { Span } from '../schema/schema.js';
import type { CarcassContext } from './rule.js';

/** A length with its unit, in the job file's unit. */
export function show(context: CarcassContext, length: Micrometres): string {
  return showLength(length, context.unit);
}

/** '20 mm to 80 mm'. */
export function showSpan(context: CarcassContext, span: Span): string {
  return `${show(context, span.min)} to ${show(context, span.max)}`;
}

/** 'a', 'a and b', 'a, b and c'. */
export function listed(words: readonly string[], last: 'and' | 'or' = 'and'): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1)!}`;
}

/** '1 hole', '3 holes'. */
export function counted(count: number, noun: string, several = `${noun}s`): string {
  return `${count} ${count === 1 ? noun : several}`;
}

/** 'stands' for one, 'stand' for several. */
export function verb(count: number, one: string, several: string): string {
  return count === 1 ? one : several;
}
