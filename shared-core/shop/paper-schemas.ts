import { optional, orBefore } from '../schema/fields.js';
import { choice, count, length, record } from '../schema/schema.js';

export const labelSheet = record('label sheet', 'The sheets of labels that panel labels are printed on.', {
  page: orBefore(choice('Size of a sheet.', { a4: '210 by 297 mm.', letter: '8 1/2 by 11 in.' })),
  columns: orBefore(count('Labels side by side.', 1, 10)),
  rows: orBefore(count('Labels one under the other.', 1, 30)),
  'label-width': orBefore(length('Width of a label.', 60, 280)),
  'label-height': orBefore(length('Height of a label.', 30, 280)),
  'margin-left': optional(
    length('From the left edge of the sheet to the first label; as much as on the right when left out.', 0, 200),
  ),
  'margin-top': optional(
    length('From the top edge of the sheet to the first label; as much as at the foot when left out.', 0, 200),
  ),
  'gap-across': orBefore(length('Between two labels side by side.', 0, 100)),
  'gap-down': orBefore(length('Between two labels one under the other.', 0, 100)),
});
