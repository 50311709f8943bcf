import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { expect, test, vi } from 'vitest';
import type * as RuleTests from '../findings/rules/rule-tests.js';
import type { Gathered } from './gather.js';

const ROOT = resolve(import.meta.dirname, '../../..');

const gathered = vi.hoisted((): Gathered => ({ templates: new Set(), words: new Map() }));
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

/**
 * Said of what no text is known to bring up: safety nets behind other faults that are told first. A template that gets an
 * example leaves this list.
 */
const NEVER_BROUGHT_UP: readonly string[] = [
  'text.beyondMeasure',
  'text.commaBetween',
  'text.colonUnspaced',
  'text.dashMissing',
  'text.markUnspaced',
  'text.valueBetween',
  'text.blockInBrackets',
  'text.signMissing',
  'text.tabForSpaces',
  'shop.usualUnknown',
  'size.plinthTooThick',
  'no-set-up.firstStrokeStops',
  'dowel-depths.removeFitting',
  'dowel-depths.holdWhole',
  'dowels-unmatched.fittings',
  'loose-shelf-without-row.moveToLast',
  'reading.notASpan',
  'reading.valueNotTaken',
  'job-text.outsideOwner',
  'left-out.boardOfCarcass',
  'joint-off-load.wide',
  'shared-load.impossible',
  'shared-load.placed',
  'machine-view.pushThenMove',
  'machine-view.turnOver',
  'machine-view.turnHalf',
  'machine-view.slideToHead',
  'machine-view.leave',
  'machine-view.unheld',
  'set-up.extensionOff',
  'set-up.nothingToChange',
  'set-up.turnOver',
  'set-up.withheld',
  'tolerance.notCarriedOut',
  'set-up.thenAlong',
  'set-up.measuredOnFaceFrom',
  'set-up.diameterOnFace',
  'set-up.depthOnFace',
  'set-up.allThrough',
  'set-up.someThrough',
  'machine-view.shortOfStop',
  'machine-view.movedBy',
  'machine-view.head',
  'machine-view.clamps',
  'file.nothingBored',
  'file.placeBroken',
  'assembly.workIn',
  'sheet-layouts.noSize',
];

test('every template of every table has an example', () => {
  const without = [...gathered.templates].filter((id) => !gathered.words.has(id));
  expect(without.filter((id) => !NEVER_BROUGHT_UP.includes(id))).toEqual([]);
});

test('no template is said to have none that has one, or is no more', () => {
  expect(NEVER_BROUGHT_UP.filter((id) => gathered.words.has(id) || !gathered.templates.has(id))).toEqual([]);
});

test('every table of the source is among them', () => {
  const groups = new Set([...gathered.templates].map((id) => id.slice(0, id.indexOf('.'))));
  const inSource = filesIn(['shared-core', 'server', 'client']).flatMap((path) =>
    [...readFileSync(path, 'utf8').matchAll(/\bmessages\(\s*'([a-z-]+)'/g)].map(([, group]) => group!),
  );
  expect(inSource.filter((group) => !groups.has(group))).toEqual([]);
});

test('the examples of the reference page are what is said', async () => {
  const sorted = (ids: ReadonlySet<string>): readonly string[] => [...ids].toSorted();
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

function filesIn(folders: readonly string[]): readonly string[] {
  return folders.flatMap((folder) =>
    readdirSync(join(ROOT, folder), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
      .map((entry) => join(entry.parentPath, entry.name)),
  );
}
