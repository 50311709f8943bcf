import { describe, expect, test } from 'vitest';
import { coverSolver } from '../../../server/cover-solver.js';
import type { Block, Paper, Table } from '../../../shared-core/papers/paper.js';
import { asText } from '../../../shared-core/papers/render/text.js';
import { panelsOf, papersOf, type PaperName } from '../../../shared-core/service.js';
import { analyse } from '../findings/jobs.js';

const SHOP = `boards: { white-16: { thickness: 16, sheet-length: 1000, sheet-width: 1000, price: 20 } }
bands: { tape: { thickness: 1 }, thick: { thickness: 2 } }
dowels: { d8: { diameter: 8, length: 30, in-face: 12 } }
panel-saws: { saw: { kerf: 4, trim: 0 } }
edge-banders:
  small: { band: 0.4 to 1, pre-milling: 0.5 }
  large: { band: 1 to 3, pre-milling: 0.8 }
habits: { board: white-16, back-board: white-16, band: tape, joint: d8, band-allowance: 50 }
`;
const BOX =
  'shop: s.shop.yaml\ncarcasses:\n  box: { kind: open, width: 500, height: 300, depth: 250, back: none, rows: none, panels: { left: { bands: { back: thick, far-end: thick } } } }\n';
const paper = async (name: PaperName, shop = SHOP): Promise<Paper> =>
  (await papersOf(analyse(BOX, { 's.shop.yaml': shop }), coverSolver)(name))!;
const isTable = (block: Block): block is Table => block.kind === 'table';

describe('what is milled off an edge before it is banded', () => {
  test('is put on the cut size of each banded edge, by the bander that takes its band', async () => {
    const list = await paper('cut-list');
    const sizes = Object.fromEntries(
      list.blocks.filter(isTable).flatMap(({ rows }) => rows.map((row) => [row.at(-1)!, row.slice(2, 6)])),
    );
    // Front edge: 1 of tape, 0.5 milled by the small bander. Back edge and top end: 2 of the thick band, 0.8 milled by the large one.
    expect(sizes['box left']).toEqual(['298.8', '248.3', '300', '250']);
    expect(sizes['box right']).toEqual(['300', '249.5', '300', '250']);
    expect(asText(list)).toContain('small mills 0.5 mm off each edge before it bands it');
    expect(asText(list)).toContain('large mills 0.8 mm off each edge before it bands it');
  });

  test('is left on the slanting edge of a corner that is sawn off', () => {
    const corner = analyse(
      'shop: s.shop.yaml\ncarcasses:\n  box: { kind: wall, width: 700, depth: 300, diagonal: { right: 600 }, back: none }\n',
      { 's.shop.yaml': SHOP },
    );
    const { carcasses } = panelsOf(corner).asData() as {
      carcasses: { panels: { name: string; corner?: { u: number; v: number; sawn: { u: number; v: number } } }[] }[];
    };
    const cut = carcasses[0]!.panels.find(({ name }) => name === 'bottom')!.corner!;
    // Legs of 300 and 400, so 500 along the slant; 1 of band less 0.5 milled is 0.5 × 500 / 400 along the one, 0.5 × 500 / 300 along the other.
    expect(cut).toEqual({ end: 'reference-end', u: 300, v: 400, sawn: { u: 300.6, v: 400.8 }, band: 'tape' });
  });

  test('reaches the pieces on the sheets, and the areas of the list', async () => {
    const layouts = asText(await paper('sheet-layouts'));
    expect(layouts).toContain('298.8 × 248.3');
    expect(layouts).toContain('300 × 249.5');
    expect(layouts).toContain('large mills 0.8 mm');
    const bare = SHOP.replaceAll(/, pre-milling: [\d.]+/g, '');
    const plain = await paper('cut-list', bare);
    expect(asText(plain)).toContain('298 ');
    expect(asText(plain)).not.toContain('mills');
    const square = (of: Paper): number =>
      of.blocks
        .filter(isTable)
        .flatMap(({ rows }) => rows)
        .reduce((sum, row) => sum + Number(row[1]) * Number(row[2]) * Number(row[3]), 0);
    // Two sides 300 high, one of them banded on three edges, and two horizontals of 468.
    const worked = 298 * 247 + 300 * 249 + 2 * 468 * 249;
    expect(square(plain)).toBeCloseTo(worked, 6);
    expect(square(await paper('cut-list'))).toBeCloseTo(298.8 * 248.3 + 300 * 249.5 + 2 * 468 * 249.5, 6);
  });
});
