import { neutralShop } from './neutral.js';
import type { ReadShop } from './resolve.js';
import { readOver } from './resolve.js';

export type { ReadShop };

/**
 * Reads a shop file. Habits that it does not mention come from the built-in shop; boards, bands, fittings and machines come
 * from the built-in shop only where the file has none of that sort. Never throws.
 */
export function readShop(text: string): ReadShop {
  return readOver(text, neutralShop);
}
