import { panelKeys } from '../../../shared-core/carcass/roles.js';
import { Engine, type CarcassAnalysis, type JobAnalysis } from '../../../shared-core/engine.js';
import { carcassSchema } from '../../../shared-core/job/schema.js';
import type { Fields, Schema } from '../../../shared-core/schema/schema.js';

// Every key of a carcass and of its panels, from the schema, to be written beside many others.

/** Carcasses in which keys are tried, as lines under the name. */
export const BASES: readonly (readonly string[])[] = [
  ['kind: base', 'width: 600', 'loose-shelves: 1'],
  ['kind: base', 'width: 800', 'top: over', 'back: none', 'rows: none', 'doors: { hung: pair }'],
  [
    'kind: wall',
    'width: 900',
    'back: rebated',
    'rows: front',
    'dividers: 1',
    'fixed-shelves: 1',
    'doors: { bays: [left, none] }',
  ],
  [
    'kind: tall',
    'width: 600',
    'back: applied',
    'joint: cam-15',
    'plinth: 100',
    'loose-shelves: 2',
    'doors: { hung: right, how: inset }',
    'blind: { left: 90 }',
  ],
  [
    'kind: open',
    'width: 900',
    'bottom: under',
    'top: over',
    'dividers: 2',
    'joint: screw-7x50',
    'fixed-shelves: [360]',
  ],
  ['kind: base', 'width: 600', 'rows: front', 'fronts: [drawer, { front: left, height: 400 }]'],
  [
    'kind: base',
    'width: 700',
    'fronts: [left, { front: drawer, height: 230 }, fixed]',
    'front-heights: { how: stepped }',
    'pulls: { pull: bar-160 }',
    'plinth: 80',
    'end-panels: { on: both }',
    'fillers: { left: 60 }',
  ],
];

const NAMES: Readonly<Record<string, readonly string[]>> = {
  board: ['board-19', 'back-8'],
  band: ['band-2', 'none'],
  fitting: ['dowel-10x40', 'cam-15'],
  hinge: ['none'],
  slide: ['other-slide'],
  pull: ['knob', 'none'],
  bracket: ['hook-130', 'none'],
  foot: ['level-foot', 'none'],
  angle: ['angle-32', 'none'],
  'wardrobe-rail': ['tube-25'],
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
      if (schema.item.type === 'either') return samples(schema.item, key).map((value) => `[${value}]`);
      return schema.item.type === 'choice'
        ? Object.keys(schema.item.options).map((word) => `[${word}]`)
        : schema.item.type === 'count'
          ? ['[1]', '[2]']
          : ['[61, 180]'];
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
slides:
  slide-45: { side-clearance: 12.7, height-offset: 30, under: 6, over: 15, behind: 10, body-height: 46, diameter: 5, depth: 13, rating: 30, lengths: [{ length: 400, holes: [37, 293] }] }
  other-slide: { side-clearance: 13, height-offset: 30, under: 6, over: 15, behind: 10, body-height: 46, diameter: 5, depth: 13, rating: 30, lengths: [{ length: 400, holes: [37, 293] }] }
case-clamps:
  case-clamp: { width: 200 to 1500 }
  other-clamp: { width: 200 to 300 }
habits: { slide: slide-45, machines: { faces: face-head, ends: end-head, rows: row-drill, clamp: case-clamp } }
`;
const engine = new Engine({ readShop: () => ({ ok: true, uri: 'file:///s.shop.yaml', text: SHOP }) });

/** A job of one carcass with these lines under its name. */
export function jobOf(lines: readonly string[]): string {
  return `shop: s.shop.yaml\ncarcasses:\n  box:\n${lines.map((line) => `    ${line}\n`).join('')}`;
}

export function analysedJob(text: string): JobAnalysis {
  return engine.analyse('file:///j.carcass.yaml', text);
}

export function analysed(lines: readonly string[]): CarcassAnalysis {
  return analysedJob(jobOf(lines)).carcasses[0]!;
}

export interface Tried {
  readonly path: readonly string[];
  readonly lines: readonly (readonly string[])[];
}

/** Every key of a carcass and of each of its panels, with lines that write it. */
export function keysOf(made: CarcassAnalysis): readonly Tried[] {
  const own = (fields: Fields, path: readonly string[], wrap: (line: string) => readonly string[]): readonly Tried[] =>
    Object.entries(fields).map(([key, { schema }]) => ({
      path: [...path, key],
      lines: samples(schema, key).map((value) => wrap(`${key}: ${value}`)),
    }));
  // What `like` does is tried with two carcasses, in `test/core/like`.
  const {
    like: _,
    panels,
    back,
    doors,
    drawers,
    'front-heights': frontHeights,
    pulls,
    'row-holes': rowHoles,
    'end-panels': endPanels,
    fillers,
    blind,
    machines,
    ...rest
  } = carcassSchema.fields;
  const recordOf = (schema: Schema): Fields => (schema.type === 'record' ? schema.fields : {});
  const long = back.schema.of.find((one) => one.type === 'record')!;
  return [
    ...own(rest, [], (line) => [line]),
    ...own(long.fields, ['back'], (line) => [`back: { how: HOW, ${line} }`]),
    ...own(recordOf(doors.schema.of.find((one) => one.type === 'record')!), ['doors'], (line) => [
      `doors: { DOORS, ${line} }`,
    ]),
    ...own(recordOf(frontHeights.schema.of.find((one) => one.type === 'record')!), ['front-heights'], (line) => [
      `front-heights: { HEIGHTS, ${line} }`,
    ]),
    ...own(drawers.schema.fields, ['drawers'], (line) => [`drawers: { ${line} }`]),
    ...own(recordOf(pulls.schema.of.find((one) => one.type === 'record')!), ['pulls'], (line) => [
      `pulls: { PULLS, ${line} }`,
    ]),
    ...own(blind.schema.fields, ['blind'], (line) => [`blind: { BLIND, ${line} }`]),
    ...own(fillers.schema.fields, ['fillers'], (line) => [`fillers: { FILLERS, ${line} }`]),
    ...own(recordOf(endPanels.schema.of.find((one) => one.type === 'record')!), ['end-panels'], (line) => [
      `end-panels: { ENDS, ${line} }`,
    ]),
    ...own(recordOf(rowHoles.schema.of.find((one) => one.type === 'record')!), ['row-holes'], (line) => [
      `row-holes: { ${line} }`,
    ]),
    ...own(machines.schema.fields, ['machines'], (line) => [`machines: { ${line} }`]),
    ...panelKeys(made.spec!)
      .filter((key) => made.carcass!.panels.some((panel) => panel.key === key))
      // Of a drawer one panel of each sort is enough.
      .filter((key) => !/^drawer-\d+-(?:right|back|bottom)$/.test(key))
      .flatMap((key) =>
        own(recordOf(panels.schema.item), ['panels', key], (line) => ['panels:', `  ${key}:`, `    ${line}`]),
      ),
  ];
}

/** What is written in a map of a base stays beside a key that is tried in it. */
const MAPS = {
  DOORS: 'doors',
  PULLS: 'pulls',
  FILLERS: 'fillers',
  BLIND: 'blind',
  ENDS: 'end-panels',
  HEIGHTS: 'front-heights',
} as const;
const inMap = (map: string): RegExp => new RegExp(`^${map}: \\{ (.*) \\}$`);
const DOORS = inMap('doors');

/** A base with its back and its doors as maps throughout, so that a key more in one is all that differs. */
export function plainLines(base: readonly string[], how: string): readonly string[] {
  const none = base.some((line) => line.startsWith('fronts:')) ? 'gap: 3' : 'hung: none';
  const doors = base.some((line) => DOORS.test(line)) ? [] : [`doors: { ${none} }`];
  return [...base.filter((line) => !line.startsWith('back:')), `back: { how: ${how} }`, ...doors];
}

/** What is written in a map, but for some keys. */
function writtenWithout(map: RegExp, keys: string, lines: readonly string[]): string {
  const written = lines.map((line) => map.exec(line)?.[1]).find((inner) => inner !== undefined) ?? '';
  return written.replace(new RegExp(`(, )?\\b(?:${keys}): (\\[[^\\]]*\\]|[^,]*)`), '').replace(/^, /, '');
}

/** The base without a key, nor what of the doors counts only without it. */
export function withoutKey(plain: readonly string[], key: string): readonly string[] {
  return plain.filter(
    (line) => !line.startsWith(`${key}:`) && !(key === 'fronts' && /^(?:doors|front-heights):/.test(line)),
  );
}

/** The base with a key written in it, or written otherwise. */
export function withKey(
  plain: readonly string[],
  { path }: Tried,
  written: readonly string[],
  how: string,
): readonly string[] {
  const without = withoutKey(plain, path[0]!);
  const filled = (line: string): string =>
    Object.entries(MAPS).reduce(
      (text, [mark, map]) => {
        const kept = writtenWithout(inMap(map), path[1] === 'bays' ? 'hung|bays' : (path[1] ?? 'none'), plain);
        return text.replace(new RegExp(`${mark}(, )?`), kept === '' ? '' : `${kept}$1`);
      },
      line.replace('HOW', how),
    );
  return [...without, ...written.map(filled)];
}
