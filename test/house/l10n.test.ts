import { globSync, readFileSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, test } from 'vitest';
import { de } from '../../shared-core/spoken/de.js';
import { fr } from '../../shared-core/spoken/fr.js';
import { LANGUAGES, languageOf, spoken } from '../../shared-core/words/language.js';

const root = resolve(import.meta.dirname, '..', '..');
const read = (file: string): string => readFileSync(join(root, file), 'utf8');
const OTHERS = LANGUAGES.filter((one) => one !== 'en');

/** What is the same in two languages, or is a name. */
const SAME = /^(?:Borewright|Text|Tab.*|Expert|titled|nextStroke|nextPanel|zoom|measured|runName|\d.*)$/;

describe('the bundle of the manifest', () => {
  const bundle = (language: string): Readonly<Record<string, string>> =>
    JSON.parse(read(language === 'en' ? 'package.nls.json' : `package.nls.${language}.json`)) as Record<string, string>;
  const english = bundle('en');
  const manifest = read('package.json');

  test('has what the manifest asks for, and nothing else', () => {
    const asked = [...manifest.matchAll(/"%([\w.-]+)%"/g)].map(([, key]) => key!);
    expect(Object.keys(english).toSorted()).toEqual([...new Set(asked)].toSorted());
    const { contributes } = JSON.parse(manifest) as { contributes: object };
    const plain = [...JSON.stringify(contributes).matchAll(/"(?:title|shortTitle|description|altText)":"([^"]*)"/g)];
    expect(plain.map(([, words]) => words!).filter((words) => !/^%.*%$/.test(words))).toEqual(['Borewright']);
    expect(JSON.parse(manifest)).toMatchObject({ files: expect.arrayContaining(nlsFiles) as unknown });
  });
  const nlsFiles = ['package.nls.json', ...OTHERS.map((one) => `package.nls.${one}.json`)];

  test.each(OTHERS)('is whole in %s, and keeps what is no word', (language) => {
    const other = bundle(language);
    expect(Object.keys(other)).toEqual(Object.keys(english));
    for (const [key, words] of Object.entries(other)) {
      expect(words, key).not.toBe(english[key]);
      expect(words.trim(), key).not.toBe('');
      // Code, addresses of commands, and figures.
      const kept = (text: string): readonly string[] =>
        [...text.matchAll(/`[^`]+`|\(command:[\w.]+\)|NAME\.\w+\.yaml|1\/64/g)].map(([one]) => one);
      expect(kept(words), key).toEqual(kept(english[key]!));
      expect(/\.$/.test(words), key).toBe(/\.$/.test(english[key]!));
    }
  });
});

type Table = Readonly<Record<string, string | ((...figures: unknown[]) => string)>>;
type Tables = Readonly<Record<string, Table>>;

/** Figures for sentences that take other things than numbers and names. */
const SAMPLES: Readonly<Record<string, readonly unknown[]>> = {
  'preview/measured': ['one', 'two', ['3 cm']],
  'machine/nextSetUp': [11, 'drill', { carcass: 'one', panel: 'two' }],
  'machine/nextPanel': [{ carcass: 'one', panel: 'two' }, 'lies'],
  'machine/check': [{ carcass: 'one', panel: 'two' }],
  'machine/bore': [{ carcass: 'one', panel: 'two' }, 11, 12, 13],
  'machine/runBored': [{ carcass: 'one', panel: 'two' }],
  'machine/runName': [{ carcass: 'one', panel: 'two' }, 11],
  'machine/runText': [{ carcass: 'one', panel: 'two' }],
  'machine/lay': [{ words: 'lies', lowered: ['near', 'far'], held: false }],
  'machine/broken': [['one', 'two']],
  'machine/unbored': [11, [{ carcass: 'one', panel: 'two' }], 'Because.'],
  'machine/figuresIn': ['mm'],
  'papers/without': [11, 'desk', ['one', 'two']],
};
const figuresOf = (file: string, name: string, count: number): readonly unknown[] =>
  SAMPLES[`${basename(dirname(file))}/${name}`] ?? Array.from({ length: count }, (_, index) => 11 + index);
/** What of the figures must be seen in the sentence. */
const seen = (figures: readonly unknown[]): readonly string[] =>
  figures.flatMap((one): readonly string[] => {
    if (typeof one === 'boolean' || one === 'mm') return [];
    if (typeof one === 'object' && one !== null) return seen(Object.values(one));
    return [String(one)];
  });

const FILES = globSync('client/**/messages.en.ts', { cwd: root });
const load = async (file: string): Promise<Tables> => (await import(pathToFileURL(join(root, file)).href)) as Tables;

test('every table of the extension and its pages is in every language', () => {
  expect(FILES.length).toBeGreaterThan(5);
  expect(globSync('client/**/messages.ts', { cwd: root }).length).toBe(FILES.length);
});

describe.each(OTHERS)('in %s', (language) => {
  test.each(FILES)('%s is whole, and no sentence loses a figure', async (file) => {
    const english = await load(file);
    const other = await load(file.replace('.en.', `.${language}.`));
    expect(Object.keys(other).toSorted()).toEqual(Object.keys(english).toSorted());
    for (const [name, table] of Object.entries(english)) {
      const translated = other[name]!;
      expect(Object.keys(translated)).toEqual(Object.keys(table));
      for (const [key, words] of Object.entries(table)) {
        const there = translated[key]!;
        if (typeof words === 'string' || typeof there === 'string') {
          if (!SAME.test(String(words))) expect(there, key).not.toBe(words);
          continue;
        }
        const figures = figuresOf(file, key, words.length);
        const [before, now] = [words(...figures), there(...figures)];
        for (const figure of seen(figures)) expect(now.toLowerCase(), key).toContain(figure.toLowerCase());
        if (!SAME.test(key)) expect(now, key).not.toBe(before);
      }
    }
  });
});

test.each([
  ['de', 'de'],
  ['de-AT', 'de'],
  ['FR-ca', 'fr'],
  ['en-GB', 'en'],
  ['pt-br', 'en'],
  ['', 'en'],
  [undefined, 'en'],
] as const)('who has the editor in %s reads %s', (tag, language) => {
  expect(languageOf(tag)).toBe(language);
});

test('French is composed with spaces that hold before double signs and inside quotation marks', () => {
  const table = { asked: '« un » : deux ; trois ?', figure: (one: number) => `« ${one} » !` };
  const french = spoken('fr', table as never, { de: table, fr: table } as never) as unknown as typeof table;
  expect(french.asked).toBe('«\u00a0un\u00a0»\u00a0: deux\u00a0; trois\u00a0?');
  expect(french.figure(1)).toBe('«\u00a01\u00a0»\u00a0!');
  const manifest = JSON.parse(read('package.nls.fr.json')) as Readonly<Record<string, string>>;
  const said = [...Object.values(fr.labels), manifest].flatMap((labels) => Object.values(labels));
  expect(said.filter((words) => / [:;?!»]|« /.test(words))).toEqual([]);
});

test('a table is the one of its language', async () => {
  const [english, german, french] = (await Promise.all(
    LANGUAGES.map((one) => load(`client/webview/shop/messages.${one}.ts`)),
  )) as [Tables, Tables, Tables];
  type Labels = Readonly<Record<string, never>>;
  const [en, de, fr] = [english, german, french].map((one) => one['LABELS'] as Labels) as [Labels, Labels, Labels];
  for (const [language, wanted] of [
    ['en', en],
    ['de', de],
    ['fr', fr],
  ] as const)
    expect(spoken(language, en, { de, fr })).toEqual(wanted);
});

test.each([
  ['de', de],
  ['fr', fr],
])('every table of labels is whole in %s', (_, { labels }) => {
  const tables = globSync('shared-core/**/*.ts', { cwd: root }).flatMap((file) =>
    [...read(file).matchAll(/labels\('([a-z-]+)', \{([^}]*)\}/g)].map(([, group, entries]) => ({
      group: group!,
      keys: [...entries!.matchAll(/^\s*'?([\w-]+)'?:/gm), ...entries!.matchAll(/, '?([\w-]+)'?: '/g)].map(
        ([, key]) => key!,
      ),
    })),
  );
  expect(tables.length).toBeGreaterThan(15);
  for (const { group, keys } of tables)
    expect(Object.keys(labels[group] ?? {}), group).toEqual(expect.arrayContaining(keys));
});
