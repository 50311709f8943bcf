import { afterAll, beforeAll, expect, test } from 'vitest';
import { Folder } from './client.js';
import { borewright } from './command-line.js';

// So much text is shared out among threads; what is told must not show it.

let folder: Folder;
const PADDING = '# nothing to see here\n'.repeat(800);
const NAMES = ['a', 'b', 'c', 'd', 'e'].map((name) => `${name}.carcass.yaml`);
beforeAll(() => {
  folder = new Folder();
  NAMES.forEach((name, index) => {
    // The first is the largest, so that threads do not end in the order of the names.
    folder.write(name, `${PADDING.repeat(5 - index)}carcasses:\n  box: { kind: base, width: ${5 + index} }\n`);
  });
});
afterAll(() => folder.close());

interface Shown {
  readonly files: readonly { readonly file: string; readonly findings: readonly unknown[] }[];
}
const shown = (...paths: string[]): Shown =>
  JSON.parse(borewright(folder.path, 'check', '--format', 'json', ...paths).out) as Shown;

test('a folder is checked in the order of its names, with what each file has alone', () => {
  const { files } = shown('.');
  expect(files.map(({ file }) => file)).toEqual(NAMES);
  for (const one of files) {
    expect(one.findings.length).toBeGreaterThan(0);
    expect(shown(one.file).files).toEqual([one]);
  }
});

test('what is not there is told of, and the rest is checked', () => {
  const { code, out, err } = borewright(folder.path, 'check', ...NAMES, 'z.carcass.yaml');
  expect(code).toBe(2);
  expect(err).toContain('z.carcass.yaml');
  expect(out).toContain('5 files');
});
