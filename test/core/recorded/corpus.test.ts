import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { carcassSchema } from '../../../shared-core/job/schema.js';
import type { Schema } from '../../../shared-core/schema/schema.js';
import { shopSchema } from '../../../shared-core/shop/schema.js';
import { LONG_JOBS, SHOP_FILES, WHOLE_JOBS } from './corpus.js';

/** The keys, and the words of choices, that a schema knows and that nothing here writes; a name of the owner's is '*'. */
function unwritten(schema: Schema, values: readonly unknown[], path: readonly string[] = []): readonly string[] {
  if (values.length === 0) return [path.join(' ')];
  const below = (of: (value: unknown) => readonly unknown[], inner: Schema, step: string): readonly string[] =>
    unwritten(inner, values.flatMap(of), [...path, step]);
  const isMap = (value: unknown): value is Readonly<Record<string, unknown>> =>
    typeof value === 'object' && value !== null && !Array.isArray(value);
  switch (schema.type) {
    case 'record':
      return Object.entries(schema.fields).flatMap(([key, field]) =>
        below((value) => (isMap(value) && key in value ? [value[key]] : []), field.schema, key),
      );
    case 'named':
      return below((value) => (isMap(value) ? Object.values(value) : []), schema.item, '*');
    case 'list':
      return below((value) => (Array.isArray(value) ? value : []), schema.item, '-');
    case 'either':
      return schema.of.flatMap((one) =>
        unwritten(
          one,
          values.filter((value) => isOf(one, value)),
          path,
        ),
      );
    case 'choice':
      return Object.keys(schema.options)
        .filter((word) => !values.includes(word))
        .map((word) => [...path, word].join(' '));
    default:
      return [];
  }
}

/** Whether a value is written in this form of several. */
function isOf(schema: Schema, value: unknown): boolean {
  const isList = Array.isArray(value);
  if (schema.type === 'list') return isList;
  const isMap = typeof value === 'object' && value !== null && !isList;
  return schema.type === 'record' ? isMap : !isMap && !isList && (schema.type !== 'count' || typeof value === 'number');
}

const jobs = [...WHOLE_JOBS, ...LONG_JOBS.filter(([name]) => name !== 'every-finding')].map(([, text]): unknown =>
  parse(text),
);
const keyed = (value: unknown, key: string): object => (value as Readonly<Record<string, object>>)[key] ?? {};

test('the corpus writes every key of a carcass, and every word that may stand there', () => {
  const carcasses = jobs.flatMap((job) => Object.values(keyed(job, 'carcasses')) as unknown[]);
  const defaults = jobs.map((job) => keyed(job, 'defaults'));
  expect(unwritten(carcassSchema, [...carcasses, ...defaults])).toEqual([]);
});

test('the corpus writes every key of a shop, and every word that may stand there', () => {
  const shops = SHOP_FILES.map(([, text]): unknown => parse(text));
  expect(unwritten(shopSchema, shops)).toEqual([]);
});
