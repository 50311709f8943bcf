import { describe, expect, test } from 'vitest';
import { panelKeys } from '../../../shared-core/carcass/roles.js';
import { Engine, type CarcassAnalysis } from '../../../shared-core/engine.js';
import { wouldCount } from '../../../shared-core/findings/circumstances.js';
import { reachAt } from '../../../shared-core/job/reach.js';
import { carcassSchema } from '../../../shared-core/job/schema.js';
import type { Fields, Schema } from '../../../shared-core/schema/schema.js';

// Every key of a carcass, written beside many others, must do what the table of its reach says: change something, or nothing.

/** Carcasses in which keys are tried, as lines under the name. */
const BASES: readonly (readonly string[])[] = [
  ['kind: base', 'width: 600', 'loose-shelves: 1'],
  ['kind: base', 'width: 800', 'top: over', 'back: none', 'rows: none'],
  ['kind: wall', 'width: 900', 'back: rebated', 'rows: front', 'dividers: 1', 'fixed-shelves: 1'],
  ['kind: tall', 'width: 600', 'back: applied', 'joint: cam-15', 'plinth: 100', 'loose-shelves: 2'],
  [
    'kind: open',
    'width: 900',
    'bottom: under',
    'top: over',
    'dividers: 2',
    'joint: screw-7x50',
    'fixed-shelves: [360]',
  ],
];

const NAMES: Readonly<Record<string, readonly string[]>> = {
  board: ['board-19', 'back-8'],
  band: ['band-2', 'none'],
  fitting: ['dowel-10x40', 'cam-15'],
  faces: ['other-head'],
  ends: ['other-end'],
  rows: ['other-drill'],
  clamp: ['other-clamp'],
};

/** A few values that differ from what is usual, so that one of them must show. */
function samples(schema: Schema, key: string): readonly string[] {
  switch (schema.type) {
    case 'length':
      return key === 'row-setback' || key === 'setback'
        ? ['41', '50']
        : ['10', '21', '77', '413'].filter(inBounds(schema));
    case 'count':
      return ['1', '2'];
    case 'choice':
      return Object.keys(schema.options);
    case 'name':
      return NAMES[schema.of === 'machine' ? key : schema.of] ?? [];
    case 'list':
      return ['[61, 180]'];
    case 'text':
      return ['x'];
    case 'number':
      return ['1', '2'];
    case 'flag':
      return ['yes', 'no'];
    case 'span':
      return ['20 to 40', '30 to 60'];
    case 'either':
      return schema.of.flatMap((one) => samples(one, key));
    case 'record':
      return Object.entries(schema.fields).flatMap(([inner, field]) =>
        samples(field.schema, inner).map((value) => `{ ${inner}: ${value} }`),
      );
    case 'named':
      throw new Error(`write a sample of ${key}`);
  }
}
const inBounds =
  ({ min, max }: { min: number; max: number }) =>
  (value: string): boolean =>
    Number(value) * 1000 >= min && Number(value) * 1000 <= max;

const STOPS =
  'stops: { a: { side: left, range: 0 to 1300, lowers: yes }, b: { side: right, range: 0 to 1300, lowers: yes } }';
const SHOP = `line-drills:
  row-drill: { spindles: 21, pitch: 32, fence: far, from: above, setback: 20 to 80, heads: 2, head-distance: 96 to 640, throat: 700, depth: 0 to 60, index-pins: row, index-range: 2400, ${STOPS} }
  other-drill: { spindles: 23, pitch: 32, fence: far, from: above, setback: 20 to 80, heads: 2, head-distance: 96 to 640, throat: 700, depth: 0 to 60, index-pins: row, index-range: 2400, ${STOPS} }
vertical-heads:
  face-head: { spindles: 21, pitch: 32, fence: far, from: above, fence-offset: 20 to 80, depth: 0 to 60, ${STOPS} }
  other-head: { spindles: 19, pitch: 32, fence: far, from: above, fence-offset: 20 to 80, depth: 0 to 60, ${STOPS} }
horizontal-heads:
  end-head: { spindles: 21, pitch: 32, height: 4 to 40, depth: 0 to 80, ${STOPS} }
  other-end: { spindles: 19, pitch: 32, height: 4 to 40, depth: 0 to 80, ${STOPS} }
case-clamps:
  case-clamp: { width: 200 to 1500 }
  other-clamp: { width: 200 to 300 }
habits: { machines: { faces: face-head, ends: end-head, rows: row-drill, clamp: case-clamp } }
`;
const engine = new Engine({ readShop: () => ({ ok: true, uri: 'file:///s.shop.yaml', text: SHOP }) });

function analysed(lines: readonly string[]): CarcassAnalysis {
  const body = lines.map((line) => `    ${line}\n`).join('');
  return engine.analyse('file:///j.carcass.yaml', `shop: s.shop.yaml\ncarcasses:\n  box:\n${body}`).carcasses[0]!;
}

/** All that comes of a carcass, without where it stands in the text. */
function outcome({ spec, carcass, boring, operations, findings }: CarcassAnalysis): string {
  const said = findings.filter(({ rule }) => rule !== 'value-unused').map(({ rule, panel }) => [rule, panel]);
  const machines = operations?.operations.map(({ machine }) => machine.name);
  return JSON.stringify(
    [carcass, boring, machines, said, spec?.note, spec?.machines.clamp?.value],
    (key, value: unknown) => (['place', 'path', 'measured'].includes(key) ? undefined : value),
  );
}

interface Tried {
  readonly path: readonly string[];
  readonly lines: readonly (readonly string[])[];
}

/** Every key of a carcass and of each of its panels, with lines that write it. */
function keysOf(made: CarcassAnalysis): readonly Tried[] {
  const own = (fields: Fields, path: readonly string[], wrap: (line: string) => readonly string[]): readonly Tried[] =>
    Object.entries(fields).map(([key, { schema }]) => ({
      path: [...path, key],
      lines: samples(schema, key).map((value) => wrap(`${key}: ${value}`)),
    }));
  const { panels, back, machines, ...rest } = carcassSchema.fields;
  const recordOf = (schema: Schema): Fields => (schema.type === 'record' ? schema.fields : {});
  const long = back.schema.of.find((one) => one.type === 'record')!;
  return [
    ...own(rest, [], (line) => [line]),
    ...own(long.fields, ['back'], (line) => [`back: { how: HOW, ${line} }`]),
    ...own(machines.schema.fields, ['machines'], (line) => [`machines: { ${line} }`]),
    ...panelKeys(made.spec!)
      .filter((key) => made.carcass!.panels.some((panel) => panel.key === key))
      .flatMap((key) =>
        own(recordOf(panels.schema.item), ['panels', key], (line) => ['panels:', `  ${key}:`, `    ${line}`]),
      ),
  ];
}

describe.each(BASES.map((lines) => [lines.join(', '), lines] as const))('%s', (_title, base) => {
  const before = analysed(base);
  const how = before.spec!.back.how.value;
  // The back is written as a map throughout, so that a key more in it is all that differs.
  const plain = [...base.filter((line) => !line.startsWith('back:')), `back: { how: ${how} }`];
  const made = { spec: before.spec!, carcass: before.carcass!, boring: before.boring! };

  test.each(keysOf(before).map((one) => [one.path.join(' '), one] as const))('%s', (_name, { path, lines }) => {
    const key = path[0]!;
    const without = plain.filter((line) => !line.startsWith(`${key}:`));
    const reference = analysed(['kind', 'width', 'back'].includes(key) ? plain : without);
    const outcomes = lines.map((written) => {
      const text = [...without, ...written.map((line) => line.replace('HOW', how))];
      const after = analysed(text);
      return { after, changes: outcome(after) !== outcome(reference) };
    });
    const read = outcomes.filter(({ after }) => after.spec !== null && after.carcass !== null);
    const told = read.filter(({ after }) => after.findings.some(({ rule }) => rule === 'value-unused'));
    if (wouldCount(path, [made])) {
      expect(told.length).toBeLessThan(Math.max(1, read.length));
      // A rails' width and the like: some value must show.
      expect(outcomes.some(({ changes }) => changes)).toBe(true);
    } else {
      expect(reachAt(path)).not.toBe('always');
      expect(read.length).toBeGreaterThan(0);
      expect(told).toHaveLength(read.length);
      expect(read.filter(({ changes }) => changes)).toHaveLength(0);
    }
  });
});
