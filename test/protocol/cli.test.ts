import { spawn } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv } from 'ajv';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { Client, demo, Folder, root } from './client.js';
import { borewright, CLI, type Ran } from './command-line.js';

let folder: Folder;
beforeAll(() => {
  folder = new Folder();
  for (const file of ['shed.shop.yaml', 'faults.shop.yaml', 'kitchen.carcass.yaml', 'every-finding.carcass.yaml'])
    folder.write(file, demo(file));
});
afterAll(() => folder.close());

const run = (...args: string[]): Ran => borewright(folder.path, ...args);

interface Checked {
  readonly files: readonly {
    readonly file: string;
    readonly findings: readonly {
      readonly rule: string;
      readonly severity: string;
      readonly message: string;
      readonly range: { readonly start: { readonly line: number; readonly character: number } };
      readonly carcass?: string;
      readonly panel?: string;
    }[];
  }[];
}

describe('check', () => {
  test('exit 0 and no errors for a good job', () => {
    const { code, out, err } = run('check', 'kitchen.carcass.yaml');
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toMatch(/1 file, 0 errors/);
  });

  test('what is there is checked where something else is missing', () => {
    const { code, out, err } = run('check', 'every-finding.carcass.yaml', 'gone.carcass.yaml');
    expect(code).toBe(2);
    expect(out).toContain('every-finding.carcass.yaml:');
    expect(err).toMatch(/^borewright: gone\.carcass\.yaml: .*\n$/);
  });

  test('exit 1 and one line a finding where there are errors', () => {
    const { code, out } = run('check', 'every-finding.carcass.yaml');
    expect(code).toBe(1);
    expect(out).toMatch(/^every-finding\.carcass\.yaml:\d+:\d+: error board-unknown: .*bord-16.* \(board-unknown\)$/m);
  });

  test('JSON is one object, with what the language server finds, zero-based', async () => {
    const { code, out, err } = run('check', '--format', 'json', 'every-finding.carcass.yaml', 'kitchen.carcass.yaml');
    expect({ code, err }).toEqual({ code: 1, err: '' });
    const { files } = JSON.parse(out) as Checked;
    expect(files.map(({ file }) => file)).toEqual(['every-finding.carcass.yaml', 'kitchen.carcass.yaml']);
    const client = await Client.start();
    const published = await client.open(folder.uri('every-finding.carcass.yaml'), demo('every-finding.carcass.yaml'));
    await client.stop();
    const shown = (rule: unknown, message: unknown, range: unknown): string => JSON.stringify([rule, message, range]);
    expect(files[0]!.findings.map(({ rule, message, range }) => shown(rule, message, range)).sort()).toEqual(
      published.map(({ code: rule, message, range }) => shown(rule, message, range)).sort(),
    );
    const lines = files[0]!.findings.map(({ range }) => range.start.line);
    expect(lines).toEqual(lines.toSorted((a, b) => a - b));
    expect(files[0]!.findings.find(({ rule }) => rule === 'row-past-reach')).toMatchObject({
      severity: 'error',
      carcass: 'row-past-reach',
      panel: 'left',
    });
  });

  test('a folder: every job below it, not what is in node_modules or hidden', () => {
    for (const path of ['tree/b/deep', 'tree/node_modules/x', 'tree/.kept', 'tree/a'])
      mkdirSync(join(folder.path, path), { recursive: true });
    const job = 'carcasses:\r\n  a: { kind: base, width: 600 }\r\n';
    for (const path of [
      'tree/b/deep/two.carcass.yaml',
      'tree/a/one.carcass.yml',
      'tree/node_modules/x/no.carcass.yaml',
      'tree/.kept/no.carcass.yaml',
      'tree/a/no.yaml',
    ]) {
      writeFileSync(join(folder.path, path), job);
    }
    symlinkSync(join(folder.path, 'tree'), join(folder.path, 'tree', 'a', 'ring'));
    const { code, out } = run('check', 'tree', '--format=json');
    expect(code).toBe(0);
    expect((JSON.parse(out) as Checked).files.map(({ file }) => file.replaceAll('\\', '/'))).toEqual([
      'tree/a/one.carcass.yml',
      'tree/b/deep/two.carcass.yaml',
    ]);
  });

  test('a shop file by its name', () => {
    folder.write('bad.shop.yaml', 'boards:\n  oak: { thickness: -1 }\n');
    const { code, out } = run('check', 'bad.shop.yaml');
    expect(code).toBe(1);
    expect(out).toMatch(/^bad\.shop\.yaml:2:\d+: error length-impossible/);
  });

  test('a file with a byte order mark is read as one without', () => {
    folder.write('mark.carcass.yaml', `\uFEFF${demo('kitchen.carcass.yaml')}`);
    expect(run('check', 'mark.carcass.yaml').code).toBe(run('check', 'kitchen.carcass.yaml').code);
  });

  test.each([
    ['no path', ['check'], /Name a job file/],
    ['a path that is not there', ['check', 'gone.carcass.yaml'], /gone\.carcass\.yaml: there is no such file/],
    ['a folder without jobs', ['check', 'nothing'], /no job file/],
    ['an unknown format', ['check', 'kitchen.carcass.yaml', '--format', 'xml'], /text or json/],
    ['an unknown option', ['check', '--loud', 'kitchen.carcass.yaml'], /--loud/],
    ['an unknown command', ['chek'], /no command ‘chek’/],
    ['no command', [], /No command/],
    ['panels of nothing', ['panels'], /Name one job file/],
    ['panels of a shop', ['panels', 'shed.shop.yaml'], /shop file/],
    ['panels of a folder', ['panels', '.'], /folder/],
    ['a drawing without a folder', ['draw', 'kitchen.carcass.yaml'], /--out/],
    ['a drawing into a file', ['draw', 'kitchen.carcass.yaml', '--out', 'shed.shop.yaml'], /shed\.shop\.yaml/],
    ['a schema of nothing', ['schema'], /job/],
    ['joints of nothing', ['joints'], /Name one job file/],
  ])('exit 2, a word on stderr and nothing on stdout for %s', (_, args, words) => {
    mkdirSync(join(folder.path, 'nothing'), { recursive: true });
    const { code, out, err } = run(...args);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(words);
    expect(err).not.toMatch(/\n\s+at /);
  });
});

interface Bored {
  readonly carcasses: readonly {
    readonly name: string;
    readonly panels: readonly {
      readonly name: string;
      readonly role: string;
      readonly length: number;
      readonly width: number;
      readonly thickness: number;
      readonly bores: readonly {
        readonly face: string;
        readonly u: number;
        readonly v: number;
        readonly diameter: number;
        readonly depth: number;
        readonly through: boolean;
        readonly purpose: string;
        readonly group: string;
      }[];
    }[];
  }[];
}

describe('panels', () => {
  test('sizes and bores in millimetres', () => {
    const { code, out, err } = run('panels', 'kitchen.carcass.yaml', '--format', 'json');
    expect({ code, err }).toEqual({ code: 0, err: '' });
    const { carcasses } = JSON.parse(out) as Bored;
    expect(carcasses).toHaveLength(14);
    const box = carcasses.find(({ name }) => name === 'corner-base')!;
    // T = 16 and 22 pitches of 32 give 720; half of 16 is 8: common practice, no source.
    const left = box.panels.find(({ name }) => name === 'left')!;
    expect(left).toMatchObject({ role: 'left-side', length: 720, width: 560, thickness: 16 });
    const rows = left.bores.filter(({ purpose }) => purpose === 'row');
    expect(rows).toHaveLength(46);
    expect(rows[0]).toMatchObject({ face: 'inside', v: 8, diameter: 5, through: false });
    const bottom = box.panels.find(({ name }) => name === 'bottom')!;
    const ends = bottom.bores.filter(({ face }) => face === 'reference-end');
    // On an end v counts across the thickness, from the outside face.
    expect(new Set(ends.map(({ v }) => v))).toEqual(new Set([8]));
    // A dowel of 30 stands 12 in the face; 18 and the glue gap of 1 are left for the end.
    expect(new Set(ends.map(({ depth }) => depth))).toEqual(new Set([19]));
    const mates = left.bores.filter(({ group, purpose }) => group === ends[0]!.group && purpose === 'dowel');
    expect(mates.map(({ u }) => u)).toEqual(ends.map(({ u }) => u));
  });

  test('the same box written in inches has the same bores', () => {
    const job = (unit: string, width: string): string =>
      `unit: ${unit}\ncarcasses:\n  a:\n    kind: base\n    width: ${width}\n`;
    folder.write('mm.carcass.yaml', job('mm', '609.6'));
    folder.write('in.carcass.yaml', job('in', "2'"));
    expect(JSON.parse(run('panels', 'in.carcass.yaml', '--format', 'json').out)).toEqual(
      JSON.parse(run('panels', 'mm.carcass.yaml', '--format', 'json').out),
    );
  });

  test('text for people', () => {
    const { out } = run('panels', 'kitchen.carcass.yaml');
    expect(out).toMatch(/^sink: base, 600 × 720 × 560 mm$/m);
    expect(out).toMatch(/front row/);
    expect(out).toMatch(/Groove on the inside face, 541 to 544\.2 mm from the front edge, 8 mm deep\./);
  });

  test('a note stands on every paper of its carcass', () => {
    folder.write('noted.carcass.yaml', 'carcasses:\n  a: { kind: base, width: 600, note: Mind the pipe. }\n');
    expect(run('panels', 'noted.carcass.yaml').out).toMatch(/^Note: Mind the pipe\.$/m);
    const json = JSON.parse(run('panels', 'noted.carcass.yaml', '--format', 'json').out) as { carcasses: object[] };
    expect(json.carcasses[0]).toMatchObject({ note: 'Mind the pipe.' });
    expect(run('setups', 'noted.carcass.yaml').out).toMatch(/^Note on a: Mind the pipe\.$/m);
    run('draw', 'noted.carcass.yaml', '--out', 'noted');
    expect(readFileSync(join(folder.path, 'noted', 'a-left.svg'), 'utf8')).toContain('Note: Mind the pipe.');
  });

  test('a carcass that cannot be worked out is left out and told of', () => {
    folder.write('half.carcass.yaml', 'carcasses:\n  a: { kind: base, width: 600 }\n  b: { kind: base, width: -1 }\n');
    const { code, out, err } = run('panels', 'half.carcass.yaml', '--format', 'json');
    expect(code).toBe(1);
    expect((JSON.parse(out) as Bored).carcasses.map(({ name }) => name)).toEqual(['a']);
    expect(err).toMatch(/half\.carcass\.yaml:3:\d+: error length-impossible/);
  });
});

interface Spread {
  readonly worst: number;
  readonly rootSumSquare: number;
  readonly p95: number;
}
interface Jointed {
  readonly carcasses: readonly {
    readonly name: string;
    readonly boxesClose: number;
    readonly joints: readonly ({ readonly joint: string; readonly closed: number } & Readonly<
      Record<'front' | 'step' | 'gap' | 'play', Spread>
    >)[];
  }[];
}

test('joints gives what can come out at each, never past the worst case, the same each time', () => {
  const args = ['joints', 'kitchen.carcass.yaml', '--format', 'json'] as const;
  const { code, out, err } = run(...args);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  const { carcasses } = JSON.parse(out) as Jointed;
  expect(carcasses).toHaveLength(14);
  const all = carcasses.flatMap(({ joints }) => joints);
  expect(all.length).toBeGreaterThan(60);
  for (const one of all) {
    for (const { worst, rootSumSquare, p95 } of [one.front, one.step, one.gap, one.play]) {
      // To the micrometre that the figures are rounded to, and what bending adds to a model made linear.
      expect(p95).toBeLessThanOrEqual(worst + 0.002);
      expect(rootSumSquare).toBeLessThanOrEqual(worst + 0.001);
    }
    expect(one.closed).toBeGreaterThan(0.95);
  }
  expect(run(...args).out).toBe(out);
  const text = run('joints', 'kitchen.carcass.yaml').out;
  expect(text).toMatch(/^larder: \d+ joints; of 1000 boxes \d+\.\d % go together, \d+\.\d % within the limits$/m);
  expect(text).toMatch(/^ {2}shelf-1\/left +0\.\d\d \/ 0\.\d\d \/ 0\.\d\d /m);
});

test('draw gives every panel a file of its own, also on a disk that does not tell `a` from `A`', () => {
  folder.write('twins.carcass.yaml', 'carcasses:\n  a: { kind: wall, width: 600 }\n  A: { kind: wall, width: 700 }\n');
  run('draw', 'twins.carcass.yaml', '--out', 'twins');
  const files = readdirSync(join(folder.path, 'twins')).filter((file) => file.endsWith('.svg'));
  expect(files).toHaveLength(10);
  expect(new Set(files.map((file) => file.toLowerCase())).size).toBe(10);
});

test('draw writes an SVG for every panel and a page that shows them all', () => {
  const { code, out } = run('draw', 'kitchen.carcass.yaml', '--out', 'drawn/deep');
  expect(code).toBe(0);
  const { carcasses } = JSON.parse(run('panels', 'kitchen.carcass.yaml', '--format', 'json').out) as Bored;
  const wanted = carcasses.flatMap(({ name, panels }) => panels.map((panel) => `${name}-${panel.name}.svg`));
  // Beside them stands the list of what is ours.
  const files = readdirSync(join(folder.path, 'drawn', 'deep')).filter((name) => name !== '.borewright-written.json');
  expect(files.toSorted()).toEqual([...wanted, 'index.html'].toSorted());
  expect(out).toContain(`${wanted.length} bore maps`);
  const page = readFileSync(join(folder.path, 'drawn', 'deep', 'index.html'), 'utf8');
  for (const file of wanted) expect(page).toContain(`src="${file}"`);
  expect(page).not.toMatch(/<script/);
  for (const file of files)
    if (file.endsWith('.svg'))
      expect(readFileSync(join(folder.path, 'drawn', 'deep', file), 'utf8')).toMatch(/^(<\?xml[^>]*>\s*)?<svg /);
});

test('schema gives JSON Schema that the demo files obey and bad ones do not', () => {
  for (const which of ['job', 'shop']) {
    const { code, out } = run('schema', which);
    expect(code).toBe(0);
    const validate = new Ajv({ strict: false }).compile(JSON.parse(out) as object);
    expect(validate({ carcasses: { a: { kind: 'base', width: 600 } } })).toBe(which === 'job');
    expect(validate({ boards: { oak: { thickness: 19 } } })).toBe(which === 'shop');
    expect(validate({ nonsense: 1 })).toBe(false);
  }
});

test('the shop file to begin with is clean, and makes the same bores as no shop file at all', () => {
  folder.write('begin.shop.yaml', run('shop').out);
  const job = 'carcasses:\n  larder: { kind: tall, width: 600, fixed-shelves: [712], loose-shelves: 3 }\n';
  folder.write('without.carcass.yaml', job);
  folder.write('with.carcass.yaml', `shop: begin.shop.yaml\n${job}`);
  const checked = JSON.parse(run('check', 'with.carcass.yaml', '--format', 'json').out) as Checked;
  expect(checked.files.map((file) => file.findings)).toEqual([[]]);
  const panelsOf = (file: string): string => run('panels', file, '--format', 'json').out;
  expect(panelsOf('with.carcass.yaml')).toBe(panelsOf('without.carcass.yaml'));
});

test('shop prints the load that a shop file shares, and what an earlier one had', () => {
  folder.write('now.shop.yaml', 'habits: { shared-load: [1, 4, 8, 12] }\n');
  folder.write('then.shop.yaml', 'habits: { share-places: no }\n');
  const { code, out } = run('shop', 'now.shop.yaml', 'then.shop.yaml');
  expect(code).toBe(0);
  expect(out).toContain('spindles 1, 4, 8 and 12.');
  expect(out).toContain('none before, spindles 1, 4, 8 and 12 now');
  expect(run('shop', 'with.carcass.yaml').code).toBe(2);
});

test('shop tells what is wrong in a shop file, and no load then', () => {
  folder.write('odd.shop.yaml', 'line-drils: {}\n');
  expect(run('shop', 'odd.shop.yaml')).toMatchObject({ code: 1, out: '' });
  expect(run('shop', 'odd.shop.yaml').err).toMatch(/^odd\.shop\.yaml:1:1: error .*line-drils/);
});

test('a folder of shop files alone is checked too', () => {
  mkdirSync(join(folder.path, 'shops'));
  folder.write('shops/odd.shop.yaml', 'line-drils: {}\n');
  expect(run('check', 'shops')).toMatchObject({ code: 1, out: expect.stringContaining('line-drils') as string });
});

test('reference explains every rule that the fault job shows', () => {
  const { code, out } = run('reference');
  expect(code).toBe(0);
  const { files } = JSON.parse(run('check', 'every-finding.carcass.yaml', '--format', 'json').out) as Checked;
  for (const { rule } of files[0]!.findings) expect(out).toContain(`### ${rule}\n`);
});

test('reference tells every key of a file, and writes all of it as pages for a browser', () => {
  expect(run('reference', 'shop-files').out).toContain('### Stop: `range`\n');
  const { code, out } = run('reference', '--out', 'pages');
  expect(code).toBe(0);
  expect(out).toContain(`look at ${join('pages', 'index.html')}`);
  const page = (name: string): string => readFileSync(join(folder.path, 'pages', name), 'utf8');
  expect(page('index.html')).toContain('<a href="job-files.html">Job files</a>');
  expect(page('job-files.html')).toContain('<h3 id="carcass-rail-width">');
  expect(page('job-files.md')).toBe(run('reference', 'job-files').out);
  expect(run('reference', 'all').code).toBe(2);
});

test('help and version', () => {
  for (const args of [['--help'], ['check', '--help'], ['help']])
    expect(run(...args)).toMatchObject({ code: 0, err: '' });
  expect(run('--help').out).toContain('borewright check PATH...');
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string };
  expect(run('--version').out).toBe(`${version}\n`);
});

test('a reader that stops early is no fault', async () => {
  const child = spawn(process.execPath, [CLI, 'panels', 'kitchen.carcass.yaml', '--format', 'json'], {
    cwd: folder.path,
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let err = '';
  child.stderr.on('data', (data: Buffer) => (err += data.toString()));
  child.stdout.once('data', () => child.stdout.destroy());
  const code = await new Promise<number | null>((done) => child.once('exit', done));
  expect(err).toBe('');
  expect(code).toBe(0);
});

test('server --stdio is the language server', async () => {
  const client = await Client.start(undefined, undefined, [CLI, 'server', '--stdio']);
  const found = await client.open(folder.uri('x.carcass.yaml'), 'carcasses:\n  a: { kind: base, width: -1 }\n');
  expect(found.map(({ code }) => code)).toContain('length-impossible');
  expect(await client.stop()).toBe(0);
});
