import { optional } from '../schema/fields.js';
import { number } from '../schema/schema.js';

/** What every kind of fitting may say of its price. */
export const price = optional(number('Price of one, in the shop’s own money.', 0.001, 100_000));
