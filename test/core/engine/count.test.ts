import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { Engine, type JobAnalysis } from '../../../shared-core/engine.js';
import { asText } from '../../../shared-core/papers/render/text.js';
import { setUpBlocks } from '../../../shared-core/papers/set-up/paper.js';
import { cutList } from '../../../shared-core/sheets/cut-list.js';

const shop = readFileSync(join(import.meta.dirname, '..', '..', 'fixtures', 'shed.shop.yaml'), 'utf8');

function analysed(carcasses: string): JobAnalysis {
  const engine = new Engine({ readShop: (_, name) => ({ ok: true, uri: `file:///${name}`, text: shop }) });
  return engine.analyse('file:///a.carcass.yaml', `shop: shed.shop.yaml\ncarcasses:\n${carcasses}`);
}

const base = (name: string, more = ''): string => `  ${name}: { kind: base, width: 600${more} }\n`;
const four = analysed(base('a', ', count: 4'));
const single = analysed(base('a'));
const written = analysed(['a', 'b', 'c', 'd'].map((name) => base(name)).join(''));

function cut(analysis: JobAnalysis): readonly (readonly [number, number, number])[] {
  const built = analysis.carcasses.map(({ name, carcass }) => ({ name, carcass: carcass! }));
  return [...cutList(built).values()].flat().map(({ length, width, pieces }) => [length, width, pieces] as const);
}

test('four equal carcasses are set up, bored and cut as four that are written out', () => {
  const [counted, all] = [four.plan(), written.plan()];
  expect(counted.setUps.map(({ strokes }) => strokes)).toEqual(all.setUps.map(({ strokes }) => strokes));
  expect(counted.seconds).toBe(all.seconds);
  expect(cut(four)).toEqual(cut(written));
  expect(cut(four).map(([, , pieces]) => pieces)).toEqual(cut(single).map(([, , pieces]) => 4 * pieces));
});

test('they are drawn, and told of, once', () => {
  expect(four.carcasses).toHaveLength(1);
  expect(four.findings()).toEqual(single.findings());
  expect(four.carcasses[0]!.boring).toEqual(single.carcasses[0]!.boring);
});

test('equal panels are one line of a set-up, whichever way they are written', () => {
  const setUps = (analysis: JobAnalysis): string => {
    const panel = (carcass: string, key: string) =>
      analysis.carcasses.find(({ name }) => name === carcass)?.carcass?.panels.find((one) => one.key === key);
    const words = { reader: 'mm', machineReader: 'mm', handling: analysis.shop.handling, panel } as const;
    const blocks = setUpBlocks(analysis.plan(), words);
    return asText({ title: '', blocks });
  };
  expect(setUps(four)).toMatch(/^ *4 of {2}a left \(4\) +720 × 560 × 16 mm /m);
  expect(setUps(written)).toMatch(/^ *4 of {2}a left, b left, c left, d left +720 × 560 × 16 mm /m);
});
