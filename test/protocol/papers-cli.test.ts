import { existsSync, mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { PDFDocument, PDFName } from '@cantoo/pdf-lib';
import { parse } from 'csv-parse/sync';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { NEUTRAL_SHOP_TEXT } from '../../shared-core/shop/neutral-text.js';
import { demo, Folder } from './client.js';
import { borewright, type Ran } from './command-line.js';
import { inEnglish } from './no-english.js';

let folder: Folder;
beforeAll(() => {
  folder = new Folder();
  for (const file of ['shed.shop.yaml', 'kitchen.carcass.yaml', 'studio.carcass.yaml']) folder.write(file, demo(file));
});
afterAll(() => folder.close());

const run = (...args: string[]): Ran => borewright(folder.path, ...args);
const inside = (...path: string[]): string => join(folder.path, ...path);
const rowsOf = (file: string): Record<string, string>[] =>
  parse<Record<string, string>>(readFileSync(inside(file), 'utf8'), { columns: true, relax_column_count: false });

interface Panels {
  readonly carcasses: readonly {
    readonly name: string;
    readonly panels: readonly {
      readonly name: string;
      readonly cutLength?: number;
      readonly length: number;
      readonly width: number;
    }[];
  }[];
}

describe('papers', () => {
  test('says why there are no sheet layouts in a shop without a saw', () => {
    folder.write('bench.shop.yaml', NEUTRAL_SHOP_TEXT.replace(/^panel-saws:\n(?: .*\n|\n)+/m, ''));
    folder.write('sawless.carcass.yaml', 'shop: bench.shop.yaml\ncarcasses:\n  a: { kind: base, width: 600 }\n');
    const why = 'The shop has no panel saw, so nothing can be laid out. Add one under `panel-saws`.';
    const alone = run('papers', 'sawless.carcass.yaml', '--out', 'sawless', '--only', 'sheet-layouts', '--as', 'text');
    expect({ code: alone.code, out: alone.out }).toEqual({ code: 2, out: '' });
    expect(alone.err).toContain(why);
    const beside = run(
      'papers',
      'sawless.carcass.yaml',
      '--out',
      'sawless',
      '--only',
      'sheet-layouts,cut-list',
      '--as',
      'text',
    );
    expect(beside.code).toBe(0);
    expect(beside.out).toBe(`1 file in sawless:\n  sawless-cut-list.txt\n${why}\n`);
  });

  test('tells of errors that the job has, in the terminal and on every paper', () => {
    folder.write(
      'faulty.carcass.yaml',
      'shop: shed.shop.yaml\ncarcasses:\n  a: { kind: base, width: 600, loose-shelves: [{ at: 712 }] }\n',
    );
    const found = run('check', 'faulty.carcass.yaml');
    const errors = Number(/(\d+) error/.exec(found.out)?.[1]);
    expect(errors).toBeGreaterThan(0);
    const { code, err, out } = run('papers', 'faulty.carcass.yaml', '--out', 'faulty', '--as', 'text');
    expect(code).toBe(1);
    expect(err).toContain(`These papers are of a job with ${errors} error`);
    expect(out).toContain('faulty-cut-list.txt');
    const files = readdirSync(inside('faulty')).filter((name) => name.endsWith('.txt'));
    expect(files.length).toBe(10);
    for (const name of files)
      expect(readFileSync(inside('faulty', name), 'utf8'), name).toContain(`The job has ${errors} error`);
  });

  test('writes every paper that is asked for in every form, and says which', () => {
    const { code, out, err } = run('papers', 'kitchen.carcass.yaml', '--out', 'all', '--as', 'pdf,html,text');
    expect({ code, err }).toEqual({ code: 0, err: '' });
    const written = readdirSync(inside('all')).filter((name) => !name.startsWith('.'));
    const papers = [
      'assembly',
      'banding-list',
      'bore-maps',
      'checking',
      'cost',
      'cut-list',
      'hardware-list',
      'panel-labels',
      'set-ups',
      'sheet-layouts',
    ];
    expect(written.sort()).toEqual(
      papers.flatMap((name) => ['html', 'pdf', 'txt'].map((end) => `kitchen-${name}.${end}`)),
    );
    for (const name of written) expect(out).toContain(name);
    for (const name of papers) {
      expect(
        readFileSync(inside('all', `kitchen-${name}.pdf`))
          .subarray(0, 5)
          .toString(),
      ).toBe('%PDF-');
      const html = readFileSync(inside('all', `kitchen-${name}.html`), 'utf8');
      expect(html).not.toMatch(/<script|https?:\/\/(?!www\.w3\.org)/);
    }
  });

  const write = (out: string, ...more: string[]): Ran =>
    run('papers', 'studio.carcass.yaml', '--out', out, '--as', 'pdf,html,text,csv,json,dxf', ...more);

  test.each(['de', 'fr'])('are written in %s for people, and in English for programs', async (language) => {
    if (!existsSync(inside('en'))) expect(write('en').code).toBe(0);
    expect(write(language, '--language', language).code).toBe(0);
    const files = readdirSync(inside(language)).filter((name) => !name.startsWith('.'));
    const read = (name: string, out = language): string => readFileSync(inside(out, name), 'utf8');
    const ending = (end: string): readonly string[] => files.filter((name) => name.endsWith(end));
    for (const name of [...ending('.csv'), ...ending('.json'), ...ending('.dxf')])
      expect(read(name) === read(name, 'en'), name).toBe(true);
    expect(ending('.dxf').length).toBeGreaterThan(9);
    expect(inEnglish(ending('.txt').map((name) => read(name)))).toEqual([]);
    expect(read('studio-checking.txt')).toMatch(/\d,\d/);
    expect(read('studio-checking.txt')).not.toMatch(/\d\.\d/);
    for (const name of ending('.html')) expect(read(name)).toContain(`<html lang="${language}">`);
    for (const name of ending('.pdf')) {
      const { catalog } = await PDFDocument.load(readFileSync(inside(language, name)));
      expect(catalog.get(PDFName.of('Lang'))?.toString(), name).toBe(`(${language})`);
    }
  });

  test('the cut list holds every panel once, and its areas add up to those of the panels', () => {
    expect(
      run('papers', 'kitchen.carcass.yaml', '--out', 'csv', '--only', 'cut-list,banding-list', '--as', 'csv').code,
    ).toBe(0);
    const rows = rowsOf('csv/kitchen-cut-list.csv');
    const named = rows.flatMap(({ Panels: panels }) => panels!.split(', '));
    const { carcasses } = JSON.parse(run('panels', 'kitchen.carcass.yaml', '--format', 'json').out) as Panels;
    const all = carcasses.flatMap(({ name, panels }) =>
      panels.map((panel) => ({ ...panel, full: `${name} ${panel.name}` })),
    );
    expect(named.toSorted()).toEqual(all.map(({ full }) => full).sort());
    const listed = rows.reduce(
      (sum, row) => sum + Number(row['Finished length']) * Number(row['Finished width']) * Number(row.Pieces),
      0,
    );
    expect(listed).toBeCloseTo(
      all.reduce((sum, { length, width }) => sum + length * width, 0),
      3,
    );
    for (const { Pieces: pieces, Panels: panels } of rows) expect(panels!.split(', ')).toHaveLength(Number(pieces));
    // A banded edge makes the piece to be cut smaller by its band, and nothing else does.
    for (const row of rows) {
      const bands = [...row.Bands!.matchAll(/\b(front|back|bottom or left end|top or right end)\b/g)].length;
      const lost =
        Number(row['Finished length']) -
        Number(row['Cut length']) +
        Number(row['Finished width']) -
        Number(row['Cut width']);
      expect(lost > 0).toBe(bands > 0);
    }
  });

  test('the banding list has every banded edge of the cut list', () => {
    const cut = rowsOf('csv/kitchen-cut-list.csv').reduce(
      (sum, { Bands: bands, Pieces: pieces }) =>
        sum + [...bands!.matchAll(/\b(?:front|back|bottom or left end|top or right end)\b/g)].length * Number(pieces),
      0,
    );
    const banded = rowsOf('csv/kitchen-banding-list.csv').reduce((sum, { Edges: edges }) => sum + Number(edges), 0);
    expect(banded).toBe(cut);
    expect(banded).toBeGreaterThan(40);
  });

  test('what it wrote itself it writes again; what it did not write, or what was changed since, it leaves', () => {
    const ask = (): ReturnType<typeof run> =>
      run('papers', 'kitchen.carcass.yaml', '--out', 'own', '--only', 'hardware-list', '--as', 'text');
    const file = inside('own', 'kitchen-hardware-list.txt');
    expect(ask().code).toBe(0);
    const first = readFileSync(file, 'utf8');
    expect(ask().code).toBe(0);
    expect(readFileSync(file, 'utf8')).toBe(first);
    writeFileSync(file, `${first}and a remark of mine\n`);
    const { code, err } = ask();
    expect(code).toBe(2);
    expect(err).toContain(
      'was not written by Borewright, or has been changed since. Move it away or name another folder.',
    );
    expect(readFileSync(file, 'utf8')).toContain('a remark of mine');
  });

  test('bore maps have a file for each panel as svg and as dxf', () => {
    expect(
      run('papers', 'kitchen.carcass.yaml', '--out', 'each', '--only', 'bore-maps,cut-list', '--as', 'svg,dxf').code,
    ).toBe(0);
    const written = readdirSync(inside('each')).filter((name) => !name.startsWith('.'));
    const { carcasses } = JSON.parse(run('panels', 'kitchen.carcass.yaml', '--format', 'json').out) as Panels;
    const panels = carcasses.flatMap(({ name, panels: own }) => own.map((panel) => `kitchen-${name}-${panel.name}`));
    expect(written.sort()).toEqual(panels.flatMap((name) => [`${name}.dxf`, `${name}.svg`]).sort());
    expect(readFileSync(inside('each', `${panels[0]!}.dxf`), 'utf8')).toContain('inside dowel bore 8 deep 12');
  });

  test('it does not write through a link', () => {
    mkdirSync(inside('linked'));
    symlinkSync(inside('kitchen.carcass.yaml'), inside('linked', 'kitchen-hardware-list.txt'));
    const { code } = run(
      'papers',
      'kitchen.carcass.yaml',
      '--out',
      'linked',
      '--only',
      'hardware-list',
      'panel-labels',
      '--as',
      'text',
    );
    expect(code).toBe(2);
    expect(readFileSync(inside('kitchen.carcass.yaml'), 'utf8')).toBe(demo('kitchen.carcass.yaml'));
    expect(readdirSync(inside('linked'))).toEqual(['kitchen-hardware-list.txt']);
  });

  test.each([
    [['papers', 'kitchen.carcass.yaml'], 'Name one job file and a folder'],
    [['papers', 'kitchen.carcass.yaml', '--out', 'x', '--only', 'cut-lst'], '‘cut-lst’ is not one of `--only`'],
    [['papers', 'kitchen.carcass.yaml', '--out', 'x', '--as', 'doc'], '‘doc’ is not one of `--as`'],
    [['papers', 'kitchen.carcass.yaml', '--out', 'x', '--page', 'a3'], '‘a3’ is not a `--page`. Use a4 or letter.'],
    [['papers', 'kitchen.carcass.yaml', '--out', 'kitchen.carcass.yaml'], 'kitchen.carcass.yaml: '],
  ])('%s is refused with the reason', (args, words) => {
    const { code, err } = run(...args);
    expect(code).toBe(2);
    expect(err).toContain(words);
    expect(existsSync(inside('x'))).toBe(false);
  });
});
