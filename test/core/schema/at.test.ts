import { expect, test } from 'vitest';
import { carcassSchema, jobSchema } from '../../../shared-core/job/schema.js';
import { schemaAt, shorthandAt, shorthandOf } from '../../../shared-core/schema/at.js';
import type { EitherSchema, Schema } from '../../../shared-core/schema/schema.js';
import { shopSchema } from '../../../shared-core/shop/schema.js';

test.each([
  [['carcasses', 'sink', 'kind'], 'choice', true],
  [['carcasses', 'sink', 'loose-shelves'], 'either', false],
  [['carcasses', 'sink', 'loose-shelves', 3], 'either', false],
  [['carcasses', 'sink', 'loose-shelves', 3, 'at'], 'length', true],
  [['carcasses', 'sink', 'panels', 'left', 'bands', 'far-end'], 'name', false],
  [['defaults', 'back', 'groove'], 'length', false],
] as const)('%j is a %s', (path, type, required) => {
  const spot = schemaAt(jobSchema, path);
  expect(spot?.schema.type).toBe(type);
  expect(spot?.required).toBe(required);
  expect(spot?.about).toMatch(/\.$/);
});

test.each([
  [['colour']],
  [['carcasses', 0]],
  [['carcasses', 'sink', 'kind', 'base']],
  [['carcasses', 'sink', 'loose-shelves', 'at']],
  [['toString']],
  [['__proto__']],
])('%j leads nowhere', (path) => {
  expect(schemaAt(jobSchema, path)).toBeNull();
});

test('stops of a machine are found under names of the owner’s choosing', () => {
  expect(schemaAt(shopSchema, ['line-drills', 'my drill', 'stops', 'G', 'range'])?.schema.type).toBe('span');
});

test('the key that a single value stands for', () => {
  expect(shorthandAt(carcassSchema, ['loose-shelves', 0])).toBe('at');
  expect(shorthandAt(carcassSchema, ['fixed-shelves', 2])).toBe('at');
  expect(shorthandAt(carcassSchema, ['dividers', 0])).toBe('at');
  expect(shorthandAt(carcassSchema, ['back'])).toBe('how');
  expect(shorthandAt(carcassSchema, ['loose-shelves'])).toBeNull();
  expect(shorthandAt(carcassSchema, ['width'])).toBeNull();
  expect(shorthandAt(jobSchema, ['defaults', 'back'])).toBe('how');
  // Not the first key of its map.
  expect(shorthandAt(carcassSchema, ['row-holes'])).toBe('round-shelves');
});

/** Every choice of forms of a schema that has a map among them, under the path that leads to it. */
function choicesWithMap(schema: Schema, path = ''): readonly (readonly [string, EitherSchema<readonly Schema[]>])[] {
  switch (schema.type) {
    case 'record':
      return Object.entries(schema.fields).flatMap(([key, field]) => choicesWithMap(field.schema, `${path}/${key}`));
    case 'list':
    case 'named':
      return choicesWithMap(schema.item, `${path}/*`);
    case 'either':
      return [
        ...(schema.of.some(({ type }) => type === 'record') ? [[path, schema] as const] : []),
        ...schema.of.flatMap((one) => choicesWithMap(one, path)),
      ];
    default:
      return [];
  }
}

const CHOICES = [...choicesWithMap(jobSchema), ...choicesWithMap(shopSchema)];

test.each(CHOICES)(
  'a single value at %s stands for a key of the map there, which takes that very value',
  (_, schema) => {
    const record = schema.of.find((one) => one.type === 'record')!;
    const single = schema.of.find((one) => one !== record)!;
    expect({ ...record.fields[shorthandOf(schema)!]?.schema, about: '' }).toEqual({ ...single, about: '' });
  },
);
