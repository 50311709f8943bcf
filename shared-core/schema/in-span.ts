import type { Span } from './schema.js';

/** Whether a value lies in a span, ends included. */
export const within = (value: number, { min, max }: Span): boolean => min <= value && value <= max;
