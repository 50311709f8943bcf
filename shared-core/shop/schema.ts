import { fittingSections } from '../fittings/read.js';
import type { Infer } from '../schema/schema.js';
import { optional, orEmpty, usually } from '../schema/fields.js';
import { choice, length, list, record, text, things } from '../schema/schema.js';
import { changeover, habits, handling, tolerances } from './habit-schemas.js';
import { hinge } from './hinge-schemas.js';
import { bander, caseClamp, cupBorer, horizontalHead, lineDrill, saw, verticalHead } from './machine-schemas.js';
import { band, board } from './material-schemas.js';
import { labelSheet, rates } from './paper-schemas.js';
import { angle } from './angle-schemas.js';
import { bracket } from './bracket-schemas.js';
import { wardrobeRail } from './wardrobe-rail-schemas.js';
import { foot } from './foot-schemas.js';
import { pull } from './pull-schemas.js';
import { slide } from './slide-schemas.js';
import { TRIED_OF_SHOP } from './tried-words.js';

export const shopSchema = record(
  'shop',
  'A workshop: its machines, materials and habits.',
  {
    title: usually(text('What the shop is called on its papers.'), ''),
    unit: usually(
      choice('Unit of every bare number in this file.', {
        mm: 'Millimetres.',
        in: 'Inches, decimal or with fractions such as 23 5/8.',
      }),
      'mm',
    ),
    boards: orEmpty(things('board', null, 'board', 'Sheet materials.', board)),
    bands: orEmpty(things('band', null, 'band', 'Edge bands.', band)),
    ...fittingSections,
    hinges: orEmpty(things('hinge', null, 'hinge', 'Hinges for doors.', hinge)),
    slides: orEmpty(things('slide', null, 'slide', 'Slides for drawers.', slide)),
    pulls: orEmpty(things('pull', null, 'pull', 'Pulls and knobs of doors and drawer fronts.', pull)),
    brackets: orEmpty(things('bracket', null, 'bracket', 'Hanging brackets of wall carcasses.', bracket)),
    'wardrobe-rails': orEmpty(
      things('wardrobe-rail', null, 'wardrobe rail', 'Rails for clothes, with their sockets.', wardrobeRail),
    ),
    feet: orEmpty(things('foot', null, 'foot', 'Feet of carcasses on a plinth, and the clips of the plinth.', foot)),
    angles: orEmpty(
      things('angle', null, 'angle', 'Angles that fixed fronts, blind panels and fillers are screwed on with.', angle),
    ),
    bits: optional(list('Diameters of the bits that the shop has.', length('Diameter.', 1, 60))),
    'vertical-heads': orEmpty(
      things('machine', 'vertical', 'vertical head', 'Heads for bores in faces.', verticalHead),
    ),
    'horizontal-heads': orEmpty(
      things('machine', 'horizontal', 'horizontal head', 'Heads for bores in ends.', horizontalHead),
    ),
    'line-drills': orEmpty(things('machine', 'line', 'line drill', 'Heads for rows.', lineDrill)),
    'cup-borers': orEmpty(things('machine', 'cup', 'cup borer', 'Borers for hinge cups.', cupBorer)),
    'panel-saws': orEmpty(things('machine', 'saw', 'panel saw', 'Panel saws.', saw)),
    'edge-banders': orEmpty(things('machine', 'bander', 'edge bander', 'Edge banders.', bander)),
    'case-clamps': orEmpty(things('machine', 'clamp', 'case clamp', 'Case clamps.', caseClamp)),
    habits: orEmpty(habits),
    changeover: orEmpty(changeover),
    handling: orEmpty(handling),
    tolerances: orEmpty(tolerances),
    'label-sheet': orEmpty(labelSheet),
    rates: orEmpty(rates),
  },
  {},
  TRIED_OF_SHOP,
);

export type ShopInput = Infer<typeof shopSchema>;
