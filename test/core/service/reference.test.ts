import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { Engine } from '../../../shared-core/engine.js';
import { jobSchema } from '../../../shared-core/job/schema.js';
import { parseLength } from '../../../shared-core/length/parse.js';
import type { Schema, SpanSchema } from '../../../shared-core/schema/schema.js';
import { spanExample } from '../../../shared-core/schema/wanted-words.js';
import { tell } from '../../../shared-core/words/message.js';
import { NEUTRAL_SHOP_TEXT } from '../../../shared-core/shop/neutral-text.js';
import { shopSchema } from '../../../shared-core/shop/schema.js';
import { EXAMPLES, JOB_EXAMPLE, SHOP_EXAMPLE } from '../../../shared-core/service/reference/examples.js';
import { anchorAt } from '../../../shared-core/service/reference/keys.js';
import { REFERENCE_PAGES, referenceSite, referenceText } from '../../../shared-core/service/reference/site.js';

const FILES = [
  ['job', 'job-files', jobSchema],
  ['shop', 'shop-files', shopSchema],
] as const;

/** Every key under a schema, by the way to it: names of the owner's as '*', places in a list as 0. */
function keysUnder(schema: Schema, path: readonly (string | number)[] = []): readonly (readonly (string | number)[])[] {
  switch (schema.type) {
    case 'record':
      return Object.entries(schema.fields).flatMap(([key, field]) => [
        [...path, key],
        ...keysUnder(field.schema, [...path, key]),
      ]);
    case 'named':
      return keysUnder(schema.item, [...path, 'any name']);
    case 'list':
      return keysUnder(schema.item, [...path, 3]);
    case 'either':
      return schema.of.flatMap((one) => keysUnder(one, path));
    default:
      return [];
  }
}

describe.each(FILES)('the page of %s files', (kind, page, schema) => {
  const text = referenceText(page);
  const headings = text.split('\n').filter((line) => /^##? ?#? /.test(line));

  test('in the package is what the schema says', async () => {
    // `vitest -u` writes it anew.
    await expect(text).toMatchFileSnapshot(`../../../server/reference/${page}.md`);
  });

  test('says of every key what it is by itself, as a hover shows no other key beside it', () => {
    for (const line of text.split('\n').filter((one) => one.startsWith('The same')))
      expect(line).toMatch(/^The same [^:]+: ./);
  });

  test('has every key under a heading of its own, with an example or the keys of the map', () => {
    for (const path of keysUnder(schema)) {
      const anchor = anchorAt(schema, path);
      expect(anchor, path.join(' ')).not.toBeNull();
      const own = text.split('\n### ').filter((part) => slug(part.split('\n')[0]!) === anchor);
      expect(own, path.join(' ')).toHaveLength(1);
      expect(own[0]!.startsWith(`${own[0]!.split(':')[0]!}: \`${path.at(-1)!}\``)).toBe(true);
      expect(own[0]!.includes('```yaml') || own[0]!.includes('Its keys: '), path.join(' ')).toBe(true);
    }
  });

  test('links only to places that are there', () => {
    const places = new Set(headings.map((line) => slug(line.replace(/^#+ /, ''))));
    expect(places.size).toBe(headings.length);
    const links = [...text.matchAll(/\]\(#([^)]+)\)/g)].map(([, to]) => to!);
    expect(links.length).toBeGreaterThan(10);
    expect(links.filter((to) => !places.has(to))).toEqual([]);
  });

  test('has examples that are YAML as another reader has it', () => {
    const examples = [...text.matchAll(/```yaml\n(.*?)\n```/gs)].map(([, example]) => example!);
    for (const example of examples) expect(typeof parse(example), example).toBe('object');
    expect(EXAMPLES[kind].every((example) => text.includes(example.trimEnd()) || kind === 'shop')).toBe(true);
  });
});

test('the whole files of the pages have no fault, and nothing in them is unknown or without use', () => {
  const engine = new Engine({
    readShop: () => ({ ok: true, uri: 'file:///boathouse.shop.yaml', text: SHOP_EXAMPLE }),
  });
  const found = engine.analyse('file:///boathouse.carcass.yaml', JOB_EXAMPLE).findings();
  const told = found.map(({ finding }) => `${finding.severity} ${finding.rule}: ${tell(finding.message, 'mm')}`);
  expect(told.filter((line) => /^error|unknown|unused/.test(line))).toEqual([]);
  const shop = engine.analyseShop('file:///boathouse.shop.yaml', SHOP_EXAMPLE).findings;
  expect(shop.filter(({ severity }) => severity === 'error').map(({ message }) => tell(message, 'mm'))).toEqual([]);
});

test('a list that stands where a key is left out is told as a shop file has it', () => {
  const { habits } = parse(NEUTRAL_SHOP_TEXT) as { readonly habits: Readonly<Record<string, unknown>> };
  const text = referenceText('shop-files');
  for (const key of ['hinges-by-height', 'hinges-by-weight']) {
    const told = new RegExp(`### Habits: \`${key}\`[^#]*When left out: \`(.*)\``).exec(text)?.[1];
    expect(parse(told ?? ''), key).toEqual(habits[key]);
  }
});

test('the example of a range lies within its bounds, in either unit', () => {
  const spans = (schema: Schema): readonly SpanSchema[] => {
    switch (schema.type) {
      case 'span':
        return [schema];
      case 'record':
        return Object.values(schema.fields).flatMap((field) => spans(field.schema));
      case 'named':
      case 'list':
        return spans(schema.item);
      default:
        return [];
    }
  };
  for (const unit of ['mm', 'in'] as const)
    for (const span of spans(shopSchema)) {
      const lengths = spanExample(span, unit)
        .split(' to ')
        .map((one) => parseLength(one, unit));
      for (const one of lengths) {
        expect(one.ok && one.value >= span.min && one.value <= span.max, `${span.about} ${unit}`).toBe(true);
      }
    }
});

test('the folder has every page for a browser, with links that lead somewhere', () => {
  const files = new Map(referenceSite().map(({ name, content }) => [name, content]));
  expect([...files.keys()].toSorted()).toEqual(
    ['index.html', ...REFERENCE_PAGES.flatMap((page) => [`${page}.html`, `${page}.md`])].toSorted(),
  );
  const ids = new Map(
    [...files].map(([name, html]) => [name, new Set([...html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id!))]),
  );
  for (const [name, html] of files) {
    if (!name.endsWith('.html')) continue;
    const marks = html.replace(/<pre>.*?<\/pre>/gs, '').match(/```|\*\*|^#.*/m);
    expect(marks, name).toBeNull();
    for (const [, to] of html.matchAll(/href="([^"]+)"/g)) {
      const [page, anchor] = to!.split('#');
      const target = page === '' ? name : page!;
      expect(files.has(target), `${name}: ${to}`).toBe(true);
      if (anchor !== undefined) expect(ids.get(target)!.has(anchor), `${name}: ${to}`).toBe(true);
    }
  }
  expect(files.get('shop-files.html')).toContain('<li>Write: a length from 2 mm to 100 mm.</li>');
});

/** As readers of Markdown make the name of a heading's place, written anew from what they do. */
function slug(heading: string): string {
  return heading
    .trim()
    .toLowerCase()
    .replace(/[^a-z0-9_ -]/g, '')
    .replaceAll(' ', '-');
}
