import { optional, required, usually } from '../schema/fields.js';
import { choice, length, name, record } from '../schema/schema.js';

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

export const dowel = record('dowel', 'A dowel.', {
  diameter: required(length('Diameter of the dowel and of its bores.', 3, 30)),
  length: required(length('Length.', 10, 200)),
  'in-face': required(
    length('Depth of the bore in the face; the end takes the rest of the dowel and the glue gap.', 2, 60),
  ),
});
export const screw = record('connector screw', 'A connector screw.', {
  clearance: required(length('Diameter of the clearance hole through the face.', 3, 20)),
  pilot: required(length('Diameter of the pilot hole in the end.', 2, 15)),
  length: required(length('Length of the screw under its head.', 20, 150)),
});
export const cam = record('cam fitting', 'A cam fitting.', {
  'cam-diameter': required(length('Diameter of the bore for the cam.', 8, 50)),
  'cam-depth': required(length('Depth of the bore for the cam.', 4, 40)),
  distance: required(length('From the end of the panel to the centre of the cam.', 10, 100)),
  'bolt-diameter': required(length('Diameter of the bore in the end for the bolt.', 4, 15)),
  'stud-diameter': required(length('Diameter of the bore in the face that the bolt is turned into.', 3, 15)),
  'stud-depth': required(length('Depth of that bore.', 4, 40)),
  guide: optional(name('fitting', 'Dowel that stands at the places between the cams.')),
});
