import { expect, test } from 'vitest';
import { coverSolver } from '../../../server/cover-solver.js';
import type { JobAnalysis } from '../../../shared-core/engine.js';
import { asText } from '../../../shared-core/papers/render/text.js';
import { papersOf, type PaperName } from '../../../shared-core/service.js';
import { analyse } from '../findings/jobs.js';

const SHOP = `feet:
  stub: { range: 90 to 150, from-front: 110, from-back: 70, from-side: 60, apart: 700, spacing: 32, diameter: 8, depth: 11, base: 70, rating: 100, clip: { from-top: 40, spacing: 20, diameter: 3, depth: 10 } }
  peg: { range: 90 to 150, from-front: 110, from-back: 70, from-side: 60, apart: 300, diameter: 10, depth: 12 }
`;

const job = (carcass: string): JobAnalysis =>
  analyse(`shop: s.shop.yaml\ncarcasses:\n  a: { ${carcass} }\n`, { 's.shop.yaml': SHOP });

async function paper(name: PaperName, carcass: string): Promise<string> {
  return asText((await papersOf(job(carcass), coverSolver)(name))!).replace(/\s+/g, ' ');
}

test('a plinth is put on once: a clipped one after all that is screwed on', async () => {
  const clipped = await paper('assembly', 'kind: base, width: 600, plinth: 100, feet: stub, doors: pair');
  expect(clipped.match(/plinth (?:onto|when)|Put on the plinth/g)).toEqual(['plinth onto']);
  expect(clipped.indexOf('Clip the plinth')).toBeGreaterThan(clipped.indexOf('Hang the 2 doors'));
  const plain = await paper('assembly', 'kind: base, width: 600, plinth: 100, feet: peg, doors: pair');
  expect(plain).toContain('Put on the plinth when the box stands.');
  expect(plain).not.toContain('Clip');
});

test('diagonals to check are rounded to what can be measured', async () => {
  // The root of 600² + 720² is 937.23…
  expect(await paper('checking', 'kind: base, width: 600, height: 720')).toMatch(/\b937\.2 /);
});

test('loose shelves are put where their pins have been planned', async () => {
  const said = await paper('assembly', 'kind: base, width: 600, loose-shelves: 2');
  const [, first, hole, second, other] =
    /loose-1 ([\d.]+) mm \(hole (\d+)\); loose-2 ([\d.]+) mm \(hole (\d+)\)\./.exec(said)!;
  const { offset, pitch } = job('kind: base, width: 600, loose-shelves: 2').carcasses[0]!.boring!.rows[0]!;
  const heightOf = (number: string | undefined): number => (offset + pitch * (Number(number) - 1)) / 1000;
  expect([first, second].map(Number)).toEqual([heightOf(hole), heightOf(other)]);
  expect(Number(other)).toBeGreaterThan(Number(hole));
});
