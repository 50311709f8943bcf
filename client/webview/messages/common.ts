import type { TextRange } from '../../../shared-core/drawing/messages/drawing.js';
import { number, object, oneOf, type Of, type Shape } from '../shape.js';

/** The steps in which lettering gets smaller. */
export const NEARER = [1, 2, 4, 8, 16] as const;
export const isNearer = oneOf(...NEARER);
export type Nearer = Of<typeof isNearer>;

const isPosition: Shape<TextRange['start']> = object({ line: number, character: number });
export const isRange: Shape<TextRange> = object({ start: isPosition, end: isPosition });
