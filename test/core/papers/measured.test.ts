import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { coverSolver } from '../../../server/cover-solver.js';
import { asText } from '../../../shared-core/papers/render/text.js';
import { panelDrawings, papersOf, PAPER_NAMES, type PaperName } from '../../../shared-core/service.js';
import { analyse } from '../findings/jobs.js';

// Boards of 16 mm that measure 15.7: a bottom between two sides is 600 - 2 x 15.7 = 568.6 long, no longer 568, and its bores stand
// 15.7 / 2 = 7.85 from the outside face.
const yard = readFileSync(join(import.meta.dirname, '../../demo/yard.shop.yaml'), 'utf8');
const shop = yard.replace(/(white-16: \{ thickness: 16)/, '$1, measured: 15.7');
const text = `title: Sink
shop: yard.shop.yaml
defaults: { board: white-16 }
carcasses:
  sink: { kind: base, width: 600, height: 720, depth: 560, doors: pair, loose-shelves: 1 }
`;
const job = analyse(text, { 'yard.shop.yaml': shop });
const said = new Map<PaperName, string>();

beforeAll(async () => {
  expect(shop).not.toBe(yard);
  const paperOf = papersOf(job, coverSolver, () => ({ rounds: 0, mayGoOn: () => false }));
  for (const name of PAPER_NAMES) said.set(name, asText((await paperOf(name))!));
});

describe('a measured thickness', () => {
  test.each<[PaperName, readonly RegExp[]]>([
    ['cut-list', [/white-16, 15\.7 mm thick/, /\b568\.6\b/]],
    ['sheet-layouts', [/\b568\.6 × 559\b/]],
    ['banding-list', [/\b568\.6\b.*front edge/]],
    ['set-ups', [/in boards of 15\.7 mm/, /× 15\.7 mm/, /\b7\.85\b/]],
    ['bore-maps', [/× 15\.7 mm/, /\b568\.6 × 560\b/, /\b7\.85\b/]],
    ['checking', [/\b15\.6 .*\b15\.8\b/, /\b568\.5 .*\b568\.7\b/]],
    ['panel-labels', [/568\.6 × 560 × 15\.7 mm/]],
  ])('is what the %s goes by', (name, figures) => {
    for (const figure of figures) expect(said.get(name)).toMatch(figure);
  });

  test('leaves the nominal one in no size of any paper', () => {
    for (const [name, words] of said) {
      expect(words.match(/× 16 mm|\b568\b(?!\.)|\b16 mm thick|boards of 16 mm/g) ?? [], name).toEqual([]);
    }
  });

  test('is in the drawings of the panels', async () => {
    for (const form of ['svg', 'dxf'] as const) {
      const drawings = await panelDrawings(job, form, () => null);
      const bottom = drawings.find(({ panel }) => panel === 'bottom')!;
      expect(bottom.content).toMatch(/568\.6/);
      expect(drawings.find(({ panel }) => panel === 'left')!.content).toMatch(/\b7\.85/);
    }
  });

  test('is what a pair of doors and the diagonals of the box do not change', () => {
    // Outside sizes stay: the diagonal of 600 x 720 is 937.2.
    expect(said.get('assembly')).toContain('937.2 mm');
    expect(said.get('cut-list')).toMatch(/\b717\b.*\b297\b/);
  });
});
