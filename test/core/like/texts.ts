import fc from 'fast-check';

type Value = string | number | readonly Value[] | { readonly [key: string]: Value };
/** What a carcass says, key by key. */
export type Said = Readonly<Record<string, Value>>;

/** What may be said under a key; not all of it counts in every carcass. */
const VALUES: Said = {
  height: [720, 1104],
  depth: [560, 400],
  board: ['board-18', 'board-19'],
  band: ['band-2', 'none'],
  joint: ['screw-7x50', 'cam-15'],
  top: ['between', 'over', 'rails'],
  bottom: ['under'],
  plinth: [100],
  back: ['none', 'applied', { how: 'rebated', board: 'back-8' }, { inset: 20 }, { 'open-from': 200, 'open-to': 400 }],
  rows: ['front', 'none', 'both'],
  'row-offset': [20],
  dividers: [1, 2, [350], [{ at: 300, board: 'board-18' }, 620]],
  'fixed-shelves': [1, [360], [{ at: 360, bay: 1 }]],
  'loose-shelves': [
    1,
    [
      { at: 200, bay: 2 },
      { at: 264, bay: 1 },
    ],
  ],
  doors: ['left', 'pair', { bays: ['left', 'none'] }, { hung: 'right', how: 'inset' }, { gap: 4 }],
  fronts: [
    ['drawer', 'left'],
    [
      { front: 'drawer', bay: 1, height: 140 },
      { front: 'right', bay: 1 },
      { front: 'fixed', bay: 2 },
    ],
    [
      { front: 'pair', bay: 2 },
      { front: 'left', bay: 1 },
    ],
  ],
  diagonal: [{ left: 800 }, { right: 900 }],
  blind: [{ right: 300 }, { left: 250, strip: 40 }],
  fillers: [{ right: 40 }, { left: 30, right: 25 }],
  'front-heights': ['on-pitch', { how: 'stepped', step: 2 }],
  drawers: [{ bottom: 'applied' }, { height: 90 }],
  'wardrobe-rails': [[500], [{ at: 420, bay: 1 }]],
  load: [12, { 'on-shelf': 5, lipping: 30 }],
};

const PANELS: Said = {
  left: { rows: 'none' },
  right: { board: 'board-19' },
  bottom: { bands: { front: 'band-2', 'far-end': 'band-04' }, 'far-end': { joint: 'dowel-8x40', dowels: 3 } },
  back: { bands: { back: 'band-04', 'far-end': 'band-2' } },
  'back-left': { bands: { front: 'band-04' } },
  'divider-1': { board: 'board-19' },
  'shelf-1': { bands: { 'reference-end': 'band-2' }, 'reference-end': { dowels: [60, 200] }, 'far-end': { dowels: 2 } },
  'door-1': { bands: { front: 'none' } },
  'drawer-1-left': { board: 'board-18' },
};

/** A few keys with a value each. */
export const some: fc.Arbitrary<Said> = fc
  .tuple(
    fc.subarray(Object.keys(VALUES), { maxLength: 6 }),
    fc.array(fc.nat(100), { minLength: 20, maxLength: 20 }),
    fc.subarray(Object.keys(PANELS), { maxLength: 3 }),
  )
  .map(([keys, picks, panels]) => {
    const said = keys.map((key, i) => {
      const values = VALUES[key] as readonly Value[];
      return [key, values[picks[i]! % values.length]!] as const;
    });
    const chosen = Object.fromEntries(panels.map((key) => [key, PANELS[key]!]));
    return { ...Object.fromEntries(said), ...(panels.length > 0 && { panels: chosen }) };
  });

/** With what every carcass must have. */
export const whole: fc.Arbitrary<Said> = fc
  .tuple(fc.constantFrom('base', 'wall', 'tall', 'open', 'for-drawers'), fc.integer({ min: 700, max: 1100 }), some)
  .map(([kind, width, more]) => ({ kind, width, ...more }));

/** The keys that a single value stands for. */
const SHORT: Readonly<Record<string, string>> = { doors: 'hung', back: 'how', load: 'on-shelf' };

type Map = { readonly [key: string]: Value };
const isMap = (value: Value): value is Map => typeof value === 'object' && !Array.isArray(value);

/** By hand what a variant is: each key of its own takes the place of the other's, maps key by key, lists as a whole. */
export function together(own: Said, base: Said): Said {
  const long = (key: string, value: Value): Value => (key in SHORT && !isMap(value) ? { [SHORT[key]!]: value } : value);
  const merged = (upper: Value, lower: Value): Value =>
    isMap(upper) && isMap(lower)
      ? {
          ...lower,
          ...Object.fromEntries(
            Object.entries(upper).map(([key, value]) => [key, key in lower ? merged(value, lower[key]!) : value]),
          ),
        }
      : upper;
  const keys = [...new Set([...Object.keys(base), ...Object.keys(own)])];
  return Object.fromEntries(
    keys.map((key) => [
      key,
      key in own && key in base ? merged(long(key, own[key]!), long(key, base[key]!)) : (own[key] ?? base[key])!,
    ]),
  );
}

/** A carcass in the text of a job: JSON is YAML. */
export function written(name: string, said: Said): string {
  const lines = Object.entries(said).map(([key, value]) => `    ${key}: ${JSON.stringify(value)}\n`);
  return `  ${name}:\n${lines.join('')}`;
}

/** A job of some carcasses. */
export const job = (...carcasses: readonly string[]): string => `carcasses:\n${carcasses.join('')}`;
