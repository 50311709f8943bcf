import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { demo, Folder } from './client.js';
import { borewright, type Ran } from './command-line.js';

let folder: Folder;
beforeAll(() => {
  folder = new Folder();
  for (const file of ['shed.shop.yaml', 'kitchen.carcass.yaml']) folder.write(file, demo(file));
  folder.write('no-saw.shop.yaml', demo('shed.shop.yaml').replace(/panel-saws:\n.*\n/, 'panel-saws: {}\n'));
  folder.write('no-saw.carcass.yaml', 'shop: no-saw.shop.yaml\ncarcasses:\n  box:\n    kind: base\n    width: 600\n');
});
afterAll(() => folder.close());

const run = (...args: string[]): Ran => borewright(folder.path, ...args);

interface Part {
  readonly length: number;
  readonly width: number;
  readonly piece?: string;
  readonly parts?: readonly Part[];
}
interface Layouts {
  readonly boards: readonly {
    readonly board: string;
    readonly pieces: readonly {
      readonly id: string;
      readonly length: number;
      readonly width: number;
      readonly panels: readonly { readonly carcass: string; readonly panel: string }[];
    }[];
    readonly squareMetres: number;
    readonly atLeast: number;
    readonly sheets: readonly (Part & { readonly sheet: string })[];
  }[];
}
interface Panels {
  readonly carcasses: readonly { readonly name: string; readonly panels: readonly { readonly name: string }[] }[];
}

describe('layouts', () => {
  test('cuts every panel of the job once, and its areas add up', () => {
    const { code, out } = run('layouts', 'kitchen.carcass.yaml', '--format', 'json');
    expect(code).toBe(0);
    const { boards } = JSON.parse(out) as Layouts;
    const listed = boards.flatMap(({ pieces }) => pieces.flatMap(({ panels }) => panels));
    const { carcasses } = JSON.parse(run('panels', 'kitchen.carcass.yaml', '--format', 'json').out) as Panels;
    const all = carcasses.flatMap(({ name, panels }) => panels.map((panel) => `${name} ${panel.name}`));
    expect(listed.map(({ carcass, panel }) => `${carcass} ${panel}`).sort()).toEqual(all.sort());
    for (const { pieces, sheets, squareMetres, atLeast } of boards) {
      const leaves = (part: Part): readonly Part[] => part.parts?.flatMap(leaves) ?? [part];
      const cut = sheets.flatMap(leaves).filter(({ piece }) => piece !== undefined);
      for (const { id, length, width, panels } of pieces) {
        const same = cut.filter(({ piece }) => piece === id);
        expect(same).toHaveLength(panels.length);
        for (const each of same) expect([each.length, each.width].sort()).toEqual([length, width].sort());
      }
      // The shop prices no sheets; each size is rounded to a hundredth.
      const area = sheets.reduce((sum, sheet) => sum + (sheet.length / 1000) * (sheet.width / 1000), 0);
      expect(squareMetres).toBeGreaterThanOrEqual(area - 0.01 * sheets.length);
      expect(squareMetres).toBeLessThan(1.05 * area);
      expect(atLeast).toBeLessThanOrEqual(squareMetres);
      expect(sheets.length).toBeGreaterThan(0);
    }
  });

  test('prints the cut list and the cuts of each sheet, the same each time', () => {
    const first = run('layouts', 'kitchen.carcass.yaml');
    expect(first.code).toBe(0);
    expect(first.out).toContain('white-16');
    expect(first.out).toMatch(/Sheet \d+ of \d+: white-16, first cuts (along|across) the sheet/);
    expect(first.out).toContain('no layout takes less');
    expect(run('layouts', 'kitchen.carcass.yaml').out).toBe(first.out);
  });

  test('tells a shop that has no saw', () => {
    const { code, err, out } = run('layouts', 'no-saw.carcass.yaml');
    expect(code).toBe(2);
    expect(err).toContain('The shop has no panel saw');
    // The cut list needs no saw.
    expect(out).toMatch(/\bleft\b.*\bright\b/);
    const data = JSON.parse(run('layouts', 'no-saw.carcass.yaml', '--format', 'json').out) as Layouts;
    const named = data.boards.flatMap(({ pieces }) => pieces.flatMap(({ panels }) => panels.map(({ panel }) => panel)));
    expect(named).toContain('left');
    expect(data.boards.every(({ sheets }) => sheets === undefined)).toBe(true);
  });
});
