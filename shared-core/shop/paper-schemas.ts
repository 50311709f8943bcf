import { optional, orBefore } from '../schema/fields.js';
import { choice, count, length, number, record } from '../schema/schema.js';

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

export const rates = record(
  'rates',
  'What work takes and costs beside boring, for the paper of cost and time. Prices are in the shop’s own money.',
  {
    hour: optional(number('Price of an hour of work.', 0.01, 100_000)),
    pin: optional(number('Price of one shelf pin.', 0.001, 1000)),
    'front-screw': optional(number('Price of one screw that holds the front of a drawer.', 0.001, 1000)),
    sheet: orBefore(
      number('Seconds to lay a sheet on the panel saw and to clear away what is left of it.', 0, 36_000, 'seconds'),
    ),
    cut: orBefore(number('Seconds for one cut on the panel saw.', 0, 3600, 'seconds')),
    edge: orBefore(number('Seconds to bring one edge to the edge bander and to look it over.', 0, 3600, 'seconds')),
    'band-metre': orBefore(number('Seconds that one metre of edge takes on the edge bander.', 0, 3600, 'seconds')),
    carcass: orBefore(
      number('Seconds to lay out one carcass, to close it in the clamp and to take it out.', 0, 36_000, 'seconds'),
    ),
    fitting: orBefore(number('Seconds to put in one fitting while a carcass is put together.', 0, 3600, 'seconds')),
  },
);
