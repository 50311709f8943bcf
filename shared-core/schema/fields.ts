import type { Model } from './model.js';
import type { Field, LeftOut, Schema } from './schema.js';

// Whether a key of a record must be there, and what the model holds where it is not.

const field =
  <const R extends boolean, const L extends LeftOut>(required: R, leftOut: L) =>
  <S extends Schema>(schema: S): Field<S, R, L> => ({ schema, required, leftOut });

export const required = field(true, { as: 'nothing' });
/** Left out it is null in the model. */
export const optional = field(false, { as: 'nothing' });
/** Left out it counts as written with nothing in it. */
export const orEmpty = field(false, { as: 'empty' });
/** Left out it is the name of the thing that it is a key of. */
export const orOwnName = field(false, { as: 'own-name' });
/** Left out it is what the model says that is read over. */
export const orBefore = field(false, { as: 'before' });
/** Left out it is this value of the model. */
export const usually = <S extends Schema, const V extends Model<S>>(
  schema: S,
  value: V,
): Field<S, false, { readonly as: 'value'; readonly value: V }> => ({
  schema,
  required: false,
  leftOut: { as: 'value', value },
});
