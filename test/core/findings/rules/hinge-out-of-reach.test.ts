import { expect, test } from 'vitest';
import { repairEdits } from '../../../../shared-core/engine/repairs.js';
import { inWords } from '../../../in-words.js';
import { applied } from '../after-repair.js';
import { analyse } from '../jobs.js';
import { rule } from './rule-tests.js';

const FIGURES =
  'cup-diameter: 35, cup-depth: 12, distance: 20.5 to 24.5, usual-distance: 22.5, plates: [0, 3], setback: 37, plate-diameter: 5, plate-depth: 13, body-height: 62, body-depth: 80';
const TWO = `hinges:\n  straight: { ${FIGURES}, arms: [5] }\n  cranked: { ${FIGURES}, arms: [14] }\nhabits: { hinge: straight }\n`;

rule('hinge-out-of-reach', {
  tells: [
    {
      // 16 - 4.5 = 11.5; with the arm of 5 a cup 20.5 to 24.5 from the edge takes plates of 4 to 8.
      carcass: 'kind: wall\nwidth: 600\ndoors: { hung: «left», reveal: 4.5 }',
      says: 'door-1 is to cover 11.5 mm of left; ‘hinge-110’ brings a door between -6.5 mm and 19.5 mm over it, with the arms and plates listed. A plate between 4 mm and 8 mm high would do with the arm of 5 mm; add it to `plates` if the shop has one, or change the reveal or the gap.',
      severity: 'error',
    },
    {
      // 19 + 5 is 24; half a millimetre more than the side covers asks for a cup beyond the range.
      carcass: 'kind: wall\nwidth: 600\nboard: thick\ndoors: { hung: «pair», reveal: 1.5 }',
      shop: 'boards:\n  thick: { thickness: 22 }\n  back-3: { thickness: 3 }\n',
      says: 'door-1 and door-2 are to cover 20.5 mm of left and right; ‘hinge-110’ brings a door between -6.5 mm and 19.5 mm over it, with the arms and plates listed. The cup would have to stand 25.5 mm from the edge of the door, and its `distance` is 20.5 mm to 24.5 mm. Make the reveal or the gap larger, or use another hinge.',
      severity: 'error',
    },
    {
      // The plate of the usual arm is too low, and the shop has a hinge whose arm reaches.
      carcass: 'kind: wall\nwidth: 600\ndoors: { hung: «left», reveal: 12, hinge: straight }',
      shop: TWO,
      says: 'door-1 is to cover 4 mm of left; ‘straight’ brings a door between 12.5 mm and 19.5 mm over it, with the arms and plates listed. A plate between 11.5 mm and 15.5 mm high would do with the arm of 5 mm; add it to `plates` if the shop has one, or change the reveal or the gap.',
      severity: 'error',
    },
  ],
  sound: [
    { carcass: 'kind: wall\nwidth: 600\ndoors: { hung: left, reveal: 3.5 }' },
    { carcass: 'kind: wall\nwidth: 600\nboard: board-19\ndoors: pair' },
  ],
});

test('another hinge of the shop that reaches is offered, and reaches', () => {
  const text =
    'shop: two.shop.yaml\ncarcasses:\n  sink:\n    kind: wall\n    width: 600\n    doors: { hung: left, reveal: 12, hinge: straight }\n';
  const job = analyse(text, { 'two.shop.yaml': TWO });
  const found = job.findings().filter(({ finding }) => finding.rule === 'hinge-out-of-reach');
  const [repair] = found[0]!.finding.repairs;
  expect(inWords(repair!.title)).toBe('Hang the doors on ‘cranked’');
  const after = applied(text, repairEdits(job, { carcass: 0, repair: repair! })!);
  expect(after).toBe(text.replace('hinge: straight', 'hinge: cranked'));
  const mended = analyse(after, { 'two.shop.yaml': TWO });
  expect(mended.findings().map(({ finding }) => finding.rule)).not.toContain('hinge-out-of-reach');
});
