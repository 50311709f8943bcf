import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { expect, test, vi } from 'vitest';
import { spoken as de } from '../../../server/spoken/de.js';
import { spoken as fr } from '../../../server/spoken/fr.js';
import { jobSchema } from '../../../shared-core/job/schema.js';
import { shopSchema } from '../../../shared-core/shop/schema.js';
import type * as RuleTests from '../findings/rules/rule-tests.js';
import type { Gathered } from './gather.js';

const ROOT = resolve(import.meta.dirname, '../../..');

const gathered = vi.hoisted((): Gathered => ({ templates: new Set(), words: new Map(), wordings: new Map() }));
vi.mock('../../../shared-core/words/message.js', async (original) => {
  const { watched } = await import('./gather.js');
  return watched(gathered, await original());
});

// Of the rules' own tests only their texts are taken.
const told = vi.hoisted(
  (): { readonly name: string; readonly carcass: string; readonly unit?: 'mm' | 'in'; readonly shop?: string }[] => [],
);
vi.mock('../findings/rules/rule-tests.js', async (original) => ({
  ...(await original<typeof RuleTests>()),
  rule: (name: string, { tells }: { readonly tells: readonly { readonly carcass: string }[] }) => {
    told.push(...tells.map((one) => ({ name, ...one })));
  },
}));
const RULE_TESTS = join(import.meta.dirname, '../findings/rules');
for (const file of readdirSync(RULE_TESTS).filter((name) => name.endsWith('.test.ts')))
  await import(join(RULE_TESTS, file));

const { sayAll } = await import('./corpus.js');
const said = await sayAll(told);

/** Templates that no text here brings up, each with the reason. One that gets an example leaves this list. */
const NEVER_BROUGHT_UP: Readonly<Record<string, string>> = {
  'command-line.notPrinted': 'it takes a full disk; test/protocol/cli-abuse.test.ts has it',
  'text.beyondMeasure': 'a safety net behind the faults of layout, which are told first',
  'text.commaBetween': 'a safety net behind the faults of layout, which are told first',
  'text.colonUnspaced': 'a safety net behind the faults of layout, which are told first',
  'text.dashMissing': 'a safety net behind the faults of layout, which are told first',
  'text.markUnspaced': 'a safety net behind the faults of layout, which are told first',
  'text.valueBetween': 'a safety net behind the faults of layout, which are told first',
  'text.blockInBrackets': 'a safety net behind the faults of layout, which are told first',
  'text.signMissing': 'a safety net behind the faults of layout, which are told first',
  'text.tabForSpaces': 'a safety net behind the faults of layout, which are told first',
  'shop.usualUnknown': 'a safety net: the built-in shop has every usual thing',
  'size.plinthTooThick': 'a safety net behind other faults of size',
  'dowel-depths.removeFitting': 'not brought up by the texts yet',
  'dowel-depths.holdWhole': 'not brought up by the texts yet',
  'dowels-unmatched.fittings': 'not brought up by the texts yet',
  'loose-shelf-without-row.moveToLast': 'not brought up by the texts yet',
  'reading.notASpan': 'a safety net behind the reading of each form',
  'reading.valueNotTaken': 'a safety net behind the reading of each form',
  'job-text.outsideOwner': 'a safety net of edits',
  'joint-off-load.wide': 'not brought up by the texts yet',
  'shared-load.impossible': 'not brought up by the texts yet',
  'shared-load.placed': 'not brought up by the texts yet',
  'set-up.nothingToChange': 'not brought up by the texts yet',
  'set-up.extensionOff': 'an order that takes it off again before the end costs more in all texts here',
  'set-up.withheld': 'not brought up by the texts yet',
  'size.noSlides': 'a safety net: a shop that names none has those of the built-in shop',
  'tolerance.notCarriedOut': 'the planner’s own set-ups can always be carried out',
  'file.nothingBored': 'not brought up by the texts yet',
  'file.placeBroken': 'not brought up by the texts yet',
  'shop-view.hasFault': 'a safety net: what cannot be read has a finding',
  'shop-view.noMachines': 'a safety net: a shop that names none has those of the built-in shop',
  'assembly.workIn': 'every box of these kinds goes together by straight moves',
};

test('every template of every table has an example', () => {
  const without = [...gathered.templates].filter((id) => !gathered.words.has(id));
  expect(without.filter((id) => !(id in NEVER_BROUGHT_UP))).toEqual([]);
});

test('no template is said to have none that has one, or is no more', () => {
  expect(Object.keys(NEVER_BROUGHT_UP).filter((id) => gathered.words.has(id) || !gathered.templates.has(id))).toEqual(
    [],
  );
});

test('every table of the source is among them', () => {
  const groups = new Set([...gathered.templates].map((id) => id.slice(0, id.indexOf('.'))));
  const inSource = filesIn(['shared-core', 'server', 'client']).flatMap((path) =>
    [...readFileSync(path, 'utf8').matchAll(/\bmessages\(\s*'([a-z-]+)'/g)].map(([, group]) => group!),
  );
  expect(inSource.filter((group) => !groups.has(group))).toEqual([]);
});

test('the examples of the reference page are what is said', async () => {
  const sorted = (words: ReadonlyMap<string, string>): Readonly<Record<string, string>> =>
    Object.fromEntries([...words].toSorted(([a], [b]) => (a < b ? -1 : 1)));
  const examples = {
    rules: Object.fromEntries(
      [...said]
        .toSorted(([a], [b]) => (a < b ? -1 : 1))
        .map(([rule, { findings, repairs }]) => [rule, { findings: sorted(findings), repairs: sorted(repairs) }]),
    ),
    words: Object.fromEntries(
      [...gathered.templates]
        .filter((id) => gathered.words.has(id))
        .map((id) => [id, gathered.words.get(id)!] as const)
        .toSorted(([a], [b]) => (a < b ? -1 : 1)),
    ),
  };
  // `vitest -u` writes them anew; then the reference page.
  await expect(`${JSON.stringify(examples, null, 2)}\n`).toMatchFileSnapshot(
    '../../../shared-core/findings/examples.json',
  );
});

test.each([...gathered.words].filter(([id]) => !id.startsWith('test.')))('%s is a plain sentence', (_, words) => {
  expect(words.trimStart()).not.toMatch(/undefined|NaN|\[object|Here belongs|\d\.\d{3,} mm|  /);
  expect(words.trimStart()).toMatch(/^\S.*\S$/s);
});

/**
 * Tables, and single templates, that are told in English whatever the language: the command line, whose words others read by
 * pattern. Who adds a template writes it in each language.
 */
const ENGLISH_ALONE: readonly string[] = ['command-line'];
/** Nothing but figures and names. */
const SAME =
  /^(?:cut-list\.bands|cost\.time|file\.titled|hint\.carcass|hover\.(?:stop|layAt|depth)|(?:bore-map|box-view)\.title|shop-view\.(?:stopRange|reaches))$/;

test('what is told in English alone is listed, and nothing else', () => {
  const english = [...gathered.templates].flatMap((id) => {
    const [group, key] = id.split('.') as [string, string];
    const tables = [de, fr].map(({ messages }) => messages[group]);
    if (tables.includes(undefined)) return [group];
    return tables.every((table) => key in table!) ? [] : [id];
  });
  expect([...new Set(english)].filter((group) => group !== 'test').toSorted()).toEqual(ENGLISH_ALONE.toSorted());
});

/** It quotes words of ours, which are others in other languages. */
const QUOTES_OURS = 'set-up.unheld';

/** What a sentence says that no language changes: keys and texts to write, names, and figures. */
function kept(words: string, id: string): object {
  const all = (pattern: RegExp): readonly string[] =>
    [...new Set([...words.matchAll(pattern)].map(([, found]) => found!.trim().replace(',', '.')))].toSorted();
  return {
    code: all(/`([^`]+)`/g),
    names: id === QUOTES_OURS ? [] : all(/[‘„«]([^’“»]+?)[’“»]/g),
    figures: all(/(\d+(?:[.,]\d+)?(?:\/\d+)?)/g),
  };
}

const translated = [...gathered.wordings].filter(
  ([id]) => !ENGLISH_ALONE.includes(id.slice(0, id.indexOf('.'))) && !ENGLISH_ALONE.includes(id),
);
test.each(translated.filter(([id]) => !id.startsWith('test.')))(
  '%s says the same in every language',
  (id, wordings) => {
    for (const { english, ...others } of wordings) {
      for (const [language, words] of Object.entries(others)) {
        expect(kept(words, id), `${language}: ${words}`).toEqual(kept(english, id));
        expect(words.trimStart()).not.toMatch(/undefined|NaN|\[object|  \S/);
        expect(/[.:?]$/.test(words), words).toBe(/[.:?]$/.test(english));
        if (!SAME.test(id)) expect(words).not.toBe(english);
      }
    }
  },
);

/** What a schema says of itself and of all within it. */
function saidBy(schema: object): readonly string[] {
  const { about, options, fields, item, of } = schema as {
    readonly about?: string;
    readonly options?: Readonly<Record<string, string>>;
    readonly fields?: Readonly<Record<string, { readonly schema: object }>>;
    readonly item?: object;
    readonly of?: readonly object[] | string;
  };
  return [
    ...(about === undefined ? [] : [about]),
    ...Object.values(options ?? {}),
    ...Object.values(fields ?? {}).flatMap((field) => saidBy(field.schema)),
    ...(item === undefined ? [] : saidBy(item)),
    ...(Array.isArray(of) ? of.flatMap((one: object) => saidBy(one)) : []),
  ];
}
const OF_KEYS = [...new Set([...saidBy(jobSchema), ...saidBy(shopSchema)])];

test('what is said of keys is said in every language', () => {
  expect(OF_KEYS.length).toBeGreaterThan(300);
  const lines = [de, fr].flatMap(({ language, labels }) => {
    const keys = labels['keys']!;
    return [
      ...OF_KEYS.filter((words) => !(words in keys)).map((words) => `${language} lacks: ${words}`),
      ...Object.keys(keys)
        .filter((words) => !OF_KEYS.includes(words))
        .map((words) => `${language} has, and nothing says: ${words}`),
    ];
  });
  expect(lines).toEqual([]);
});

test.each([
  ['de', de],
  ['fr', fr],
])('what is said of keys keeps its figures and texts to write in %s', (_, { labels }) => {
  for (const [english, words] of Object.entries(labels['keys']!)) {
    const texts = (text: string): readonly string[] => [...text.matchAll(/`[^`]+`|\d+/g)].map(([one]) => one);
    expect(texts(words)).toEqual(texts(english));
    expect(words).not.toBe(english);
    expect(words.at(-1)).toBe(english.at(-1));
  }
});

function filesIn(folders: readonly string[]): readonly string[] {
  return folders.flatMap((folder) =>
    readdirSync(join(ROOT, folder), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
      .map((entry) => join(entry.parentPath, entry.name)),
  );
}
