import fc from 'fast-check';
import { carcassSchema } from '../../../shared-core/job/schema.js';
import { writeLength } from '../../../shared-core/length/write.js';
import type { Fields, Schema } from '../../../shared-core/schema/schema.js';
import type { Shop } from '../../../shared-core/shop/model.js';

// Random jobs that are written from the schema alone, so that a new key is tried on the day on which it gets there.

/** No workshop's cabinet has a length beyond it, whatever the schema allows. */
const LONGEST = 1_200_000;
/** Most of what can be written is left out, as in any job: so many times as often as it is written. */
const SELDOM = 5;

type Written = { readonly flow: string };

/** A carcass in brackets, as a value of `carcasses`. */
export function carcassText(shop: Shop): fc.Arbitrary<string> {
  return valueOf(carcassSchema, shop, []).map(({ flow }) => flow);
}

/** A job of so many such carcasses. */
export function jobText(shop: Shop, most: number): fc.Arbitrary<string> {
  return fc
    .array(carcassText(shop), { minLength: 1, maxLength: most })
    .map((all) => `carcasses:\n${all.map((one, i) => `  box-${i}: ${one}\n`).join('')}`);
}

function valueOf(schema: Schema, shop: Shop, path: readonly string[]): fc.Arbitrary<Written> {
  const word = (flow: fc.Arbitrary<string>): fc.Arbitrary<Written> => flow.map((text) => ({ flow: text }));
  switch (schema.type) {
    case 'length': {
      const top = Math.min(schema.max, LONGEST);
      // As many short lengths as long ones: each power of ten is as likely as the next.
      const low = Math.max(schema.min, 500);
      return word(
        fc
          .double({ min: Math.log(low), max: Math.log(Math.max(low, top)), noNaN: true })
          .map((log) => writeLength(Math.min(top, Math.max(schema.min, Math.round(Math.exp(log) / 100) * 100)), 'mm')),
      );
    }
    case 'span':
      return word(fc.constant(writeLength(schema.min, 'mm')));
    case 'count':
      return word(fc.integer({ min: schema.min, max: Math.min(schema.max, schema.min + 3) }).map(String));
    case 'number':
      return word(fc.integer({ min: Math.ceil(schema.min), max: Math.floor(Math.min(schema.max, 100)) }).map(String));
    case 'flag':
      return word(fc.constantFrom('yes', 'no'));
    case 'text':
      return word(fc.constantFrom('plain', '"with: colon"', "'it''s'"));
    case 'choice':
      return word(fc.constantFrom(...Object.keys(schema.options)));
    case 'name':
      return word(fc.constantFrom(...namesFor(schema.of, shop, path)));
    case 'list':
      return fc
        .array(valueOf(schema.item, shop, path), { minLength: 1, maxLength: 3 })
        .map((items) => ({ flow: `[${items.map(({ flow }) => flow).join(', ')}]` }));
    case 'named':
      return fc
        .uniqueArray(
          fc.constantFrom('left', 'right', 'bottom', 'top', 'back', 'shelf-1', 'divider-1', 'door-1', 'drawer-1'),
          {
            minLength: 1,
            maxLength: 2,
          },
        )
        .chain((keys) =>
          fc.tuple(
            ...keys.map((key) => valueOf(schema.item, shop, [...path, key]).map(({ flow }) => `${key}: ${flow}`)),
          ),
        )
        .map((entries) => ({ flow: `{ ${entries.join(', ')} }` }));
    case 'record':
      return recordOf(schema.fields, shop, path);
    case 'either':
      return fc.oneof(...schema.of.map((one) => valueOf(one, shop, path)));
  }
}

function recordOf(fields: Fields, shop: Shop, path: readonly string[]): fc.Arbitrary<Written> {
  const entries = Object.entries(fields).map(([key, { schema, required }]) => {
    const value = valueOf(schema, shop, [...path, key]).map(({ flow }): string | null => `${key}: ${flow}`);
    return required
      ? value
      : fc.oneof({ weight: SELDOM, arbitrary: fc.constant(null) }, { weight: 1, arbitrary: value });
  });
  return fc.tuple(...entries).map((some) => {
    const kept = some.filter((one) => one !== null);
    return { flow: kept.length === 0 ? '{}' : `{ ${kept.join(', ')} }` };
  });
}

/** The names of the shop that the key may have; of machines those of the kind that the key is for. */
function namesFor(of: string, shop: Shop, path: readonly string[]): readonly string[] {
  switch (of) {
    case 'board':
      return [...shop.boards.keys()];
    case 'band':
      return [...shop.bands.keys(), 'none'];
    case 'hinge':
      return [...shop.hinges.keys(), 'none'];
    case 'pull':
      return [...shop.pulls.keys(), 'none'];
    case 'bracket':
      return [...shop.brackets.keys(), 'none'];
    case 'wardrobe-rail':
      return [...shop.wardrobeRails.keys()];
    case 'angle':
      return [...shop.angles.keys(), 'none'];
    case 'foot':
      return [...shop.feet.keys(), 'none'];
    case 'slide':
      return [...shop.slides.keys()];
    case 'fitting':
      return [...shop.fittings.keys()];
    case 'machine': {
      const usual = (shop.habits.machines as Readonly<Record<string, string | null>>)[path.at(-1) ?? ''];
      return usual === null || usual === undefined ? [...shop.machines.keys()] : [usual];
    }
    case 'carcass':
      return ['box-0', 'box-1'];
    default:
      throw new Error(`the schema asks for a name of a kind that this does not know: ${of}`);
  }
}
