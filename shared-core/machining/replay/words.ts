import type { Micrometres } from '../../length/units.js';
import type { Span } from '../../schema/schema.js';

/** A sheet that cannot be carried out is a fault of the program, so its figures stand in one unit for all. */
export const mm = (value: Micrometres): string => `${value / 1000} mm`;

/** '20 mm to 80 mm' */
export const spanWords = (span: Span): string => `${mm(span.min)} to ${mm(span.max)}`;

/** Whether a value lies outside a span; its ends belong to it. */
export const outOfSpan = (value: Micrometres, span: Span): boolean => value < span.min || value > span.max;

const SIDE_WORDS = {
  front: 'front edge',
  back: 'back edge',
  'reference-end': 'reference end',
  'far-end': 'far end',
  inside: 'inside face',
  outside: 'outside face',
} as const;

/** What a side of a panel is called. */
export const sideWords = (side: keyof typeof SIDE_WORDS): string => SIDE_WORDS[side];
