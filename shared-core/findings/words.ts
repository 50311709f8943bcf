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
