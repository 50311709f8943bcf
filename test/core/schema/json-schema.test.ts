import { Ajv } from 'ajv';
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { jobSchema } from '../../../shared-core/job/schema.js';
import { readTree } from '../../../shared-core/document/read.js';
import { jsonSchema } from '../../../shared-core/schema/json-schema.js';
import { readBySchema } from '../../../shared-core/schema/read.js';
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

describe('what the reading accepts, the schema accepts', () => {
  const inCarcass = (key: string): string => `carcasses:\n  a:\n    kind: base\n    width: 600\n    ${key}\n`;
  const inHead = (key: string): string =>
    `vertical-heads: { a: { spindles: 5, pitch: 32, depth: 0 to 20, fence: far, from: above, fence-offset: 10, ${key} } }\n`;
  const stops = (more: string): string => inHead(`stops: { s: { side: left, ${more} } }`);
  const places: readonly (readonly ['job' | 'shop', string])[] = [
    ['job', inCarcass('height: @')],
    ['job', inCarcass('plinth: @')],
    ['job', inCarcass('fixed-shelves: @')],
    ['job', inCarcass('fixed-shelves: [@]')],
    ['job', inCarcass('fixed-shelves: [{ at: 300, bay: @ }]')],
    ['job', inCarcass('back: @')],
    ['job', inCarcass('board: @')],
    ['job', inCarcass('dowels: @')],
    ['job', `title: @\n${inCarcass('rows: both')}`],
    ['shop', 'boards: { a: { thickness: @ } }\n'],
    ['shop', 'bits: [@]\n'],
    ['shop', 'changeover: { stop: @ }\n'],
    ['shop', stops('range: @')],
    ['shop', stops('range: 5, lowers: @')],
    ['shop', stops('range: 5').replace('spindles: 5', 'spindles: @')],
  ];
  const values =
    `50|"50"|'50'|50.0|+50|50.|5|.5|5.5|"5.5"|yes|Yes|YES|"yes"|true|off|OFF|[50]|[]|50 mm|50MM|50 Mm|4 in|4 IN|4"|4 5/8|50 to 80|50 TO 80|50 to 80 mm|"1' 2"|base|none|x y|{ how: none }|[300, { at: 400 }]|300|2|"2"|[4 IN, 300 MM]|applied|rebated`.split(
      '|',
    );

  test.each(places)('%s: %j', (kind, text) => {
    const [schema, judge] = kind === 'job' ? [jobSchema, job] : [shopSchema, shop];
    let accepted = 0;
    for (const value of values) {
      const written = text.replace('@', value);
      const { root, problems } = readTree(written, 'shop');
      const at = { part: 'shop', start: 0, end: 0 } as const;
      const read = readBySchema(schema, root, { unit: 'mm', part: 'shop', path: [], place: at });
      if (problems.length + read.findings.length > 0) continue;
      accepted += 1;
      expect(judge(parse(written)) ? [] : judge.errors, value).toEqual([]);
    }
    expect(accepted).toBeGreaterThan(1);
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
  expect(JSON.stringify(jsonSchema(jobSchema, 'Cabinet job'))).toContain('Overall width of the carcass.');
});

test('a carcass needs its kind and its width, or another one that it is like', () => {
  const takes = (one: string): boolean => job(parse(`carcasses: { a: { kind: base, width: 600 }, b: ${one} }`));
  for (const one of ['{ like: a }', '{ like: a, mirrored: yes }', '{ kind: wall, width: 800 }'])
    expect(takes(one), one).toBe(true);
  for (const one of ['{ kind: base }', '{ width: 800 }', '{ height: 720 }']) expect(takes(one), one).toBe(false);
});
