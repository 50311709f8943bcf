import { optional, orEmpty, required, usually } from '../schema/fields.js';
import { choice, count, length, named, number, record } from '../schema/schema.js';
import { TRIED_OF_BOARD } from './tried-words.js';

const sheet = record('sheet', 'A size of sheet, bought or left over from another job.', {
  length: required(length('Length, along the grain where there is one.', 100, 10_000)),
  width: required(length('Width.', 100, 10_000)),
  price: optional(number('Price of one sheet, in the shop’s own money; by its area when left out.', 0.01, 1_000_000)),
  count: optional(count('How many there are; any number when left out.', 0, 10_000)),
});

export const board = record(
  'board',
  'A sheet material.',
  {
    thickness: required(length('Nominal thickness.', 2, 100)),
    measured: optional(
      length(
        'Thickness as measured on the present batch. Panels and their joints are set out by it, rows and heights by the nominal thickness.',
        2,
        100,
      ),
    ),
    'sheet-length': optional(length('Length of a sheet.', 100, 10_000)),
    'sheet-width': optional(length('Width of a sheet.', 100, 10_000)),
    price: optional(number('Price of one sheet, in the shop’s own money.', 0.01, 1_000_000)),
    sheets: orEmpty(named('sheet', 'Further sizes of sheet, and offcuts in stock, each under its name.', sheet)),
    material: usually(
      choice('What it is made of; says how heavy and how stiff it is where `density` and `modulus` do not.', {
        particleboard: 'Particleboard: 680 kg/m³; modulus by thickness as EN 312 P2 has it.',
        mdf: 'Medium-density fibreboard: 750 kg/m³; modulus by thickness as EN 622-5 has it.',
        plywood: 'Plywood: 600 kg/m³; 6960 N/mm², the least of the Wood Handbook.',
        'solid-wood': 'Solid wood: 600 kg/m³; 8500 N/mm², that of a soft pine.',
      }),
      'particleboard',
    ),
    density: optional(
      number(
        'Density in kilograms per cubic metre; by its material when left out.',
        50,
        3000,
        'kilograms per cubic metre',
      ),
    ),
    modulus: optional(
      number(
        'Modulus of elasticity in bending, in newtons per square millimetre; by its material when left out.',
        100,
        100_000,
        'newtons per square millimetre',
      ),
    ),
    grain: usually(
      choice('Direction of the grain.', { none: 'No grain: panels may be turned.', length: 'Along the sheet.' }),
      'none',
    ),
  },
  {},
  TRIED_OF_BOARD,
);

export const band = record('band', 'An edge band.', {
  thickness: required(length('Thickness.', 0.1, 10)),
  height: optional(length('Width of the tape as bought.', 5, 110)),
  price: optional(number('Price of one metre, in the shop’s own money.', 0.001, 100_000)),
});
