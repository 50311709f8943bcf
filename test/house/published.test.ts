import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { Ajv } from 'ajv';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { coverSolver } from '../../server/cover-solver.js';
import { asText } from '../../shared-core/papers/render/text.js';
import { PAPER_NAMES, papersOf, writePaper } from '../../shared-core/service.js';
import { analyse } from '../core/findings/jobs.js';

// What ships beside the bundles. The schema is tried by a validator of JSON Schema draft-07 that knows nothing of ours.
const root = resolve(import.meta.dirname, '..', '..');
const shipped = (name: string): string => readFileSync(join(root, 'dist', name), 'utf8');
const nothing = (): never => {
  throw new Error('nothing is printed');
};
const noLettering = { print: nothing, face: nothing };
const demo = (name: string): unknown => parse(readFileSync(join(root, 'test', 'demo', name), 'utf8'));

test.each([
  ['carcass', 'kitchen.carcass.yaml', { carcasses: { a: { kind: 'bse', width: 600 } } }],
  ['carcass', 'studio.carcass.yaml', { carcasses: { a: { kind: 'base' } } }],
  ['shop', 'yard.shop.yaml', { boards: { a: { thickness: 'thick' } } }],
])('the published schema of a %s file takes %s and refuses a faulty one', (name, file, faulty) => {
  const schema = JSON.parse(shipped(`schema/${name}.schema.json`)) as object;
  const valid = new Ajv({ allowUnionTypes: true }).compile(schema);
  expect(valid(demo(file)), JSON.stringify(valid.errors)).toBe(true);
  expect(valid(faulty)).toBe(false);
});

test('papers as JSON are what the published schema of papers says', async () => {
  const valid = new Ajv({ allowUnionTypes: true }).compile(JSON.parse(shipped('schema/paper.schema.json')) as object);
  const shops = { 'yard.shop.yaml': readFileSync(join(root, 'test', 'demo', 'yard.shop.yaml'), 'utf8') };
  for (const file of ['kitchen', 'studio']) {
    const text = readFileSync(join(root, 'test', 'demo', `${file}.carcass.yaml`), 'utf8');
    const job = analyse(text, shops);
    const paperOf = papersOf(job, coverSolver);
    for (const name of PAPER_NAMES) {
      const paper = await paperOf(name);
      const written = JSON.parse((await writePaper(paper!, name, 'json', noLettering)) as string) as object;
      expect(valid(written), `${name}: ${JSON.stringify(valid.errors)}`).toBe(true);
      expect(valid({ ...written, more: 1 })).toBe(false);
      expect(valid({ ...written, blocks: [{ kind: 'paragraph' }] })).toBe(false);
      // Nothing that the text says of tables is missing.
      const said = asText(paper!);
      for (const block of (written as { blocks: { kind: string; rows?: (string | null)[][] }[] }).blocks)
        for (const cell of block.rows?.flat() ?? []) if (cell !== null) expect(said).toContain(cell);
    }
  }
}, 120_000);

test('the reference page and the licences of bundled packages ship', () => {
  expect(shipped('reference/findings.md')).toContain('row-past-reach');
  expect(shipped('LICENCES.txt')).toMatch(/^vscode-languageserver \d/m);
});

test('the published schema says where a key counts, in carcasses and in defaults', () => {
  const { properties } = JSON.parse(shipped('schema/carcass.schema.json')) as {
    properties: {
      defaults: { properties: Record<string, { description: string }> };
      carcasses: { additionalProperties: { properties: Record<string, { description: string }> } };
    };
  };
  for (const keys of [properties.defaults.properties, properties.carcasses.additionalProperties.properties]) {
    expect(keys['rail-width']!.description).toContain('It counts only with `top: rails`.');
    expect(keys.width?.description ?? '').not.toContain('It counts only');
  }
});
