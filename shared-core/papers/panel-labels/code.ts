import { encode } from 'uqr';
import type { CodeShape } from '../../drawing/scene/scene.js';

/** The blank border that a reader needs about a code, in squares (ISO/IEC 18004: 4). */
export const QUIET = 4;

/**
 * A text as QR code (ISO/IEC 18004) that can be read with up to 15 % of it dirty or scratched; null where the text is too long
 * for one.
 */
export function codeSquares(text: string): CodeShape['dark'] | null {
  // The most that a code takes at this level.
  if (new TextEncoder().encode(text).length > 2331) return null;
  return encode(text, { ecc: 'M', border: 0 }).data;
}
