import type { Micrometres } from '../../length/units.js';
import type { Span } from '../../schema/schema.js';

/** Whether a value lies outside a span; its ends belong to it. */
export const outOfSpan = (value: Micrometres, span: Span): boolean => value < span.min || value > span.max;
