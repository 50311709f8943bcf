import fc from 'fast-check';
import type { Micrometres, Unit } from '../../../shared-core/length/units.js';
import { writeLength } from '../../../shared-core/length/write.js';

/** A job as values, so that it can be written in either unit. */
export type Writable =
  | Micrometres
  | string
  | boolean
  | { readonly count: number }
  | readonly Writable[]
  | { readonly map: Readonly<Record<string, Writable>> };

const mm = (min: number, max: number): fc.Arbitrary<Micrometres> =>
  fc.integer({ min: min * 10, max: max * 10 }).map((tenths) => tenths * 100);
const count = (max: number): fc.Arbitrary<Writable> => fc.nat(max).map((n) => ({ count: n }));
const map = (
  fields: Record<string, fc.Arbitrary<Writable>>,
  required: readonly string[] = [],
): fc.Arbitrary<{ map: Record<string, Writable> }> =>
  fc.record(fields, { requiredKeys: [...required] }).map((some) => ({ map: some }));

const board = fc.constantFrom('board-16', 'board-18', 'board-19');
const rows = fc.constantFrom('none', 'front', 'both');
const shared: Record<string, fc.Arbitrary<Writable>> = {
  height: mm(500, 2400),
  depth: mm(200, 700),
  board,
  band: fc.constantFrom('band-1', 'none'),
  joint: fc.constantFrom('dowel-8x30', 'cam-15', 'screw-7x50'),
  top: fc.constantFrom('between', 'over', 'rails'),
  bottom: fc.constantFrom('between', 'under'),
  plinth: mm(0, 150),
  back: fc.oneof(
    fc.constantFrom('grooved', 'applied', 'none'),
    map({ how: fc.constantFrom('grooved', 'rebated'), groove: mm(4, 10), board: fc.constant('back-8') }, ['how']),
  ),
  rows,
  'row-offset': mm(5, 60),
};
const shelves = (limit: number): fc.Arbitrary<Writable> =>
  fc.oneof(
    count(limit),
    fc.array(
      fc.oneof<[fc.Arbitrary<Writable>, fc.Arbitrary<Writable>]>(
        mm(50, 450),
        map({ at: mm(50, 450), board, setback: mm(0, 50) }, ['at']),
      ),
      { maxLength: 3 },
    ),
  );

const carcass = map(
  {
    kind: fc.constantFrom('base', 'wall', 'tall', 'for-drawers', 'open'),
    width: mm(200, 1500),
    ...shared,
    dividers: fc.oneof(count(2), fc.array(mm(80, 180), { maxLength: 1 })),
    'fixed-shelves': shelves(2),
    'loose-shelves': shelves(4),
    panels: map({
      left: map({ rows, board, dowels: fc.array(mm(30, 200), { minLength: 1, maxLength: 3 }) }),
      bottom: map({ board }),
    }),
    note: fc.constantFrom('a remark', 'mind the pipes # and the tap'),
  },
  ['kind', 'width'],
);

export const job = fc.record({
  defaults: fc.option(map(shared), { nil: undefined }),
  carcasses: fc.uniqueArray(fc.tuple(fc.constantFrom('sink', 'pans', 'oven tower', 'Spüle', '12'), carcass), {
    selector: ([name]) => name,
    minLength: 1,
    maxLength: 4,
  }),
});
export type Job = typeof job extends fc.Arbitrary<infer J> ? J : never;

/** Writes a job in a unit; every length is exact. `flow` writes each carcass on one line. */
export function writeJob({ defaults, carcasses }: Job, unit: Unit, flow = false): string {
  const one = (value: Writable): string => {
    if (typeof value === 'number') return writeLength(value, unit);
    if (typeof value === 'boolean') return value ? 'yes' : 'no';
    if (typeof value === 'string') return /[#:]/.test(value) ? `'${value}'` : value;
    if (Array.isArray(value)) return `[${value.map(one).join(', ')}]`;
    const object = value as { count: number } | { map: Record<string, Writable> };
    if ('count' in object) return String(object.count);
    return `{ ${Object.entries(object.map)
      .map(([key, item]) => `${key}: ${one(item)}`)
      .join(', ')} }`;
  };
  const block = (fields: Record<string, Writable>, indent: string): string =>
    Object.entries(fields)
      .map(([key, value]) => `${indent}${key}: ${one(value)}\n`)
      .join('');
  const head = `unit: ${unit}\n${defaults === undefined ? '' : `defaults:\n${block(defaults.map, '  ')}`}carcasses:\n`;
  return (
    head +
    carcasses
      .map(([name, { map: fields }]) =>
        flow ? `  ${name}: ${one({ map: fields })}\n` : `  ${name}:\n${block(fields, '    ')}`,
      )
      .join('')
  );
}
