import { Ajv } from 'ajv';
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { jobSchema } from '../../../shared-core/job/schema.js';
import { jsonSchema } from '../../../shared-core/schema/json-schema.js';
import { NEUTRAL_SHOP_TEXT } from '../../../shared-core/shop/neutral.js';
import { shopSchema } from '../../../shared-core/shop/schema.js';

// Ajv is the outside judge: a validator of JSON Schema draft-07 that knows nothing of this project.
const ajv = new Ajv({ strict: true, strictTypes: false, allErrors: true });
const job = ajv.compile(jsonSchema(jobSchema, 'Cabinet job'));
const shop = ajv.compile(jsonSchema(shopSchema, 'Workshop'));

const demo = new URL('../../demo/', import.meta.url);
const demoFiles = readdirSync(demo).filter((name) => name.endsWith('.yaml') && !name.startsWith('every-finding'));

test.each(demoFiles)('the demo file %s is valid', (name) => {
  const judge = name.endsWith('.shop.yaml') ? shop : job;
  expect(judge(parse(readFileSync(new URL(name, demo), 'utf8'))) ? [] : judge.errors).toEqual([]);
});

test('the neutral shop is valid', () => {
  expect(shop(parse(NEUTRAL_SHOP_TEXT)) ? [] : shop.errors).toEqual([]);
});

const carcass = (more: string): unknown => parse(`carcasses: { sink: { kind: base, width: 600${more} } }`);

describe('what is accepted', () => {
  test.each([
    '',
    ', height: 28 3/8',
    ', height: 28 3/8 in',
    `, height: "2' 4 3/8\\""`,
    ', height: 3000/127 in',
    ', back: none',
    ', back: { how: rebated, groove: 8 }',
    ', loose-shelves: 2',
    ', loose-shelves: [300, 12 in, { at: 328, bay: 2 }]',
    ', panels: { left: { rows: none, dowels: [37, 133], bands: { front: none } } }',
    ', plinth: 0',
  ])('kind, width%s', (more) => {
    expect(job(carcass(more)) ? [] : job.errors).toEqual([]);
  });
});

describe('what is refused', () => {
  test.each([
    [{}, 'carcasses'],
    [parse('carcases: {}'), 'carcases'],
    [parse('carcasses: { sink: { width: 600 } }'), 'kind'],
    [carcass(', widht: 3'), 'widht'],
    [carcass(', height: -5'), 'height'],
    [carcass(', height: tall'), 'height'],
    [carcass(', height: 60 cm'), 'height'],
    [carcass(', height: [1]'), 'height'],
    [carcass(', loose-shelves: 1.5'), 'loose-shelves'],
    [carcass(', loose-shelves: [{ bay: 1 }]'), 'at'],
    [carcass(', top: open'), 'top'],
    [parse('unit: cm\ncarcasses: {}'), 'unit'],
  ])('%j', (value, where) => {
    expect(job(value)).toBe(false);
    expect(JSON.stringify(job.errors)).toContain(where);
  });

  test('a shop with a wrong machine', () => {
    expect(shop(parse('vertical-heads: { a: { spindles: many } }'))).toBe(false);
    expect(shop(parse('bits: [5, 8 mm, x]'))).toBe(false);
    expect(shop(parse('line-drils: {}'))).toBe(false);
  });
});

test('every key has its sentence', () => {
  const walk = (node: unknown): void => {
    if (typeof node !== 'object' || node === null) return;
    const { properties, ...rest } = node as { properties?: Record<string, { description?: string }> };
    for (const value of Object.values(properties ?? {})) {
      expect(value.description).toMatch(/\S/);
      walk(value);
    }
    Object.values(rest).forEach(walk);
  };
  walk(jsonSchema(jobSchema, 'Cabinet job'));
  walk(jsonSchema(shopSchema, 'Workshop'));
  expect(JSON.stringify(jsonSchema(jobSchema, 'Cabinet job'))).toContain('Width of the carcass over all.');
});
