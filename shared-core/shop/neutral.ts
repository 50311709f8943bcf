import type { Shop } from './model.js';
import { NEUTRAL_SHOP_TEXT } from './neutral-text.js';
import { readOver } from './resolve.js';

export { NEUTRAL_SHOP_TEXT };

/** The built-in shop. Its places are empty, since no file of the owner's writes it. */
export const neutralShop: Shop = readOver(NEUTRAL_SHOP_TEXT, null).shop;
