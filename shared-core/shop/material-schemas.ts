import { optional, required, usually } from '../schema/fields.js';
import { choice, length, record } from '../schema/schema.js';

export const board = record('board', 'A sheet material.', {
  thickness: required(length('Nominal thickness.', 2, 100)),
  measured: optional(
    length(
      'Thickness as measured on the present batch; panels and their joints are set out on this, rows and heights on the nominal one.',
      2,
      100,
    ),
  ),
  'sheet-length': optional(length('Length of a sheet.', 100, 10_000)),
  'sheet-width': optional(length('Width of a sheet.', 100, 10_000)),
  grain: usually(
    choice('Direction of the grain.', { none: 'No grain: panels may be turned.', length: 'Along the sheet.' }),
    'none',
  ),
});

export const band = record('band', 'An edge band.', {
  thickness: required(length('Thickness.', 0.1, 10)),
  height: optional(length('Width of the tape as bought.', 5, 110)),
});
