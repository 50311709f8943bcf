import { expect, test } from 'vitest';
import { Engine, type JobAnalysis } from '../../../shared-core/engine.js';
import { readShop } from '../../../shared-core/shop/read.js';
import { wholeShop } from '../shop/whole-shop.js';
import { inWords } from '../../in-words.js';

const SHOP = `
boards: { board-16: { thickness: 16 }, back-3: { thickness: 3 } }
screws:
  sunk: { clearance: 7, pilot: 5, length: 50, head: 10, recess: 4 }
habits: { board: board-16, back-board: back-3, joint: sunk }
`;

function analysed(shop: string): JobAnalysis {
  const engine = new Engine({ readShop: (_, name) => ({ ok: true, uri: `file:///${name}`, text: wholeShop(shop) }) });
  return engine.analyse(
    'file:///any.carcass.yaml',
    'shop: any.shop.yaml\ncarcasses:\n  a: { kind: wall, width: 600, rows: none }\n',
  );
}

const told = (analysis: JobAnalysis): readonly string[] =>
  analysis.findings().map(({ finding }) => inWords(finding.message));

test('a sunk head is bored as a step: two bits one after the other at the same places, as the replay finds them', () => {
  const analysis = analysed(SHOP);
  expect(told(analysis)).toEqual([]);
  const steps = analysis
    .setUps()
    .flatMap(({ setUp }) => setUp.runs.map((run) => ({ setUp, run })))
    .filter(({ run }) => run.panel === 'left');
  const bored = (diameter: number): readonly (readonly [number, number, number])[] =>
    steps.flatMap(({ setUp, run }) =>
      run.steps
        .flatMap(({ holes }) => holes)
        .filter((hole) => hole.diameter === diameter)
        .map(({ u, v }) => [u, v, setUp.depth] as const),
    );
  const [recesses, clearances] = [bored(10_000), bored(7_000)];
  expect(recesses.length).toBeGreaterThan(2);
  expect(recesses.map(([u, v]) => `${u} ${v}`).toSorted()).toEqual(clearances.map(([u, v]) => `${u} ${v}`).toSorted());
  expect(new Set(recesses.map(([, , depth]) => depth))).toEqual(new Set([4_000]));
});

test('without a bit for the head, the shop is told which one it lacks', () => {
  const analysis = analysed(`${SHOP}bits: [5, 7]\n`);
  expect(analysis.findings().map(({ finding }) => finding.rule)).toContain('bit-missing');
  expect(told(analysis).join(' ')).toContain('10 mm');
});

test('a recess that leaves too little under the head is told', () => {
  const analysis = analysed(SHOP.replace('recess: 4', 'recess: 12'));
  expect(analysis.findings().map(({ finding }) => finding.rule)).toContain('bore-too-short');
  expect(told(analysis).join(' ')).toContain('its recess is 12 mm deep in a board of 16 mm, and 6 mm must stay');
});

test.each([
  ['head: 10, ', '', 'A recess needs its diameter. Write `head` too.'],
  [', recess: 4', '', 'A head that goes into a recess needs its depth. Write `recess` too.'],
  ['head: 10', 'head: 6', 'A head of 6 mm finds no hold over a clearance hole of 7 mm.'],
])('what a screw cannot be: %s as %s', (from, to, words) => {
  const { findings, shop } = readShop(SHOP.replace(from, to));
  expect(findings.map(({ message }) => inWords(message)).join(' ')).toContain(words);
  expect(shop.fittings.get('sunk')).toMatchObject({ head: null, recess: null });
});
