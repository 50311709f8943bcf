import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { parseDocument } from 'yaml';
import { Engine, type JobAnalysis } from '../../../shared-core/engine.js';
import { boxesOf, panelsOf, papersOf, type PaperName } from '../../../shared-core/service.js';
import type { Fields, Schema } from '../../../shared-core/schema/schema.js';
import { shopSchema } from '../../../shared-core/shop/schema.js';
import { toleranceOf } from '../../../shared-core/tolerance/tolerance.js';
import { unusedWords } from '../../../shared-core/shop/unused.js';
import { coverSolver } from '../../../server/cover-solver.js';

// Every key of a shop file, written otherwise, must show somewhere: in the findings, the plan, the joints or the papers. One
// that shows nowhere must be told to do nothing.

const SHOP = readFileSync(join(import.meta.dirname, '../../demo/yard.shop.yaml'), 'utf8');
type Path = readonly string[];

/** What the demo shop leaves out, so that a key of it can be tried. */
const ADDED: readonly (readonly [Path, unknown])[] = [[['boards', 'white-16', 'grain'], 'length']];

interface Case {
  readonly value: unknown;
  /** What must stand beside it for the value to make a difference. */
  readonly beside?: readonly (readonly [Path, unknown])[];
  /** The job that it shows on, where it would take long to find. */
  readonly on?: JobName;
}

const sharedBody = (value: unknown): Case => ({
  value,
  beside: [
    [['vertical-heads', 'pillar', 'body'], 'one'],
    [['horizontal-heads', 'beam', 'body'], 'one'],
  ],
});
const pillarStops = (lowers: boolean, range: string): readonly (readonly [Path, unknown])[] =>
  (['left', 'right'] as const).flatMap((side) => [
    [['vertical-heads', 'pillar', 'stops', `inner-${side}`, 'lowers'], lowers] as const,
    [['vertical-heads', 'pillar', 'stops', `outer-${side}`, 'range'], range] as const,
  ]);

/** Where a value differs from what is usual, but shows only in a case of its own. */
const CASES: Readonly<Record<string, readonly Case[]>> = {
  'bands white-1 height': [{ value: 12 }],
  'edge-banders hot-band shortest-edge': [{ value: 900 }],
  'vertical-heads pillar clamps left-foot along': [{ value: 900 }],
  'vertical-heads pillar clamps left-foot across': [{ value: 650 }],
  'vertical-heads pillar body': [{ value: 'beam', beside: [[['changeover', 'turn-head'], 500]] }],
  'line-drills comb body': [{ value: 'beam', beside: [[['changeover', 'machine'], 500]] }],
  'cup-borers cupper body': [{ value: 'beam', beside: [[['changeover', 'machine'], 500]] }],
  'changeover turn-head': [sharedBody(500)],
  'vertical-heads pillar extension': [{ value: 10, beside: pillarStops(true, '95 to 300') }],
  'changeover extension': [{ value: 999, on: 'screwed', beside: pillarStops(true, '95 to 300') }],
  'vertical-heads pillar stops inner-left lowers': [{ value: true, beside: pillarStops(false, '95 to 1420') }],
  'horizontal-heads beam body': [{ value: 'pillar', beside: [[['changeover', 'turn-head'], 500]] }],
  // A head so short that a panel reaches from the one stop past the other.
  'horizontal-heads beam stops west lowers': [
    { value: 'yes', beside: [[['horizontal-heads', 'beam', 'spindles'], 15]] },
  ],
  'horizontal-heads beam stands depth': [{ value: 34 }],
  'horizontal-heads beam stands height': [{ value: 9.5 }],
  'line-drills comb stops comb-left stands': [{ value: 8 }],
  ...Object.fromEntries(
    ['base', 'wall', 'tall', 'for-drawers', 'open'].map((kind) => [`habits sizes ${kind} batch`, [{ value: 40 }]]),
  ),
  // So near the edge of a door that the heads of its screws come before the side.
  'wardrobe-rails pole over': [{ value: 150, on: 'robe' }],
  'wardrobe-rails pole hanger': [{ value: 500, on: 'robe' }],
  'pulls rod head': [{ value: 30, beside: [[['habits', 'pull-from-edge'], 20]] }],
  'pulls rod head-height': [{ value: 1, beside: [[['habits', 'pull-from-edge'], 15]] }],
  // It counts where the bracket itself says nothing.
  'habits bracket-rating': [{ value: 3, beside: [[['habits', 'bracket'], 'none']] }],
  'boards white-16 modulus': [{ value: 4000 }],
  'screws screw-7x50 price': [{ value: 9, on: 'screwed' }],
  'cams cam-15 price': [{ value: 9, on: 'cams' }],
  'hinges cast-hinge price': [{ value: 9, on: 'doors' }],
  'brackets wall-hook price': [{ value: 9, on: 'doors' }],
  'angles clip-on price': [{ value: 9, on: 'still' }],
  'feet stub price': [{ value: 9, on: 'footed' }],
  'feet stub rating': [{ value: 3, on: 'footed' }],
  'feet stub range': [{ value: '130 to 150', on: 'footed' }],
  'feet stub base': [{ value: 140, on: 'footed' }],
  'wardrobe-rails pole price': [{ value: 9, on: 'robe' }],
  'pulls rod price': [{ value: 9, on: 'doors' }],
  'handling index-move': [{ value: 900, on: 'cams' }],
  'hinges cast-hinge usual-distance': [{ value: 24 }],
  'hinges cast-hinge rating': [{ value: 1 }],
  'slides beech-runner behind': [{ value: 90, on: 'drawers' }],
  'slides beech-runner body-height': [{ value: 300, on: 'drawers' }],
  'panel-saws long-saw crosscut': [{ value: 700, on: 'drawers' }],
  'habits shared-load': [{ value: [1, 4, 8, 12, 16, 19] }],
};

const LOW = 'low: { kind: base, width: 600, loose-shelves: 1 }';
/** Most keys show on the first; the last has something of everything. */
const JOBS = {
  low: [LOW],
  screwed: ['hung: { kind: wall, width: 800, joint: screw-7x50, fixed-shelves: 1 }'],
  cams: ['high: { kind: tall, width: 500, joint: cam-15 }'],
  doors: ['press: { kind: wall, width: 900, doors: pair, pulls: rod }'],
  robe: ['robe: { kind: tall, width: 800, depth: 480, fixed-shelves: [1600], wardrobe-rails: [1500] }'],
  footed: ['bench: { kind: base, width: 900, plinth: 100, feet: stub }'],
  still: [
    'corner: { kind: base, width: 1150, blind: { right: 580 }, fillers: { left: 80 }, fronts: [{ front: fixed, height: 140 }, left] }',
  ],
  drawers: ['desk: { kind: base, width: 500, fronts: [{ front: drawer, height: 140 }, drawer] }'],
  all: [
    LOW,
    'high: { kind: tall, width: 500, joint: cam-15, back: applied, board: birch-19, rows: front }',
    'hung: { kind: wall, width: 800, joint: screw-7x50, back: rebated, dividers: 1, fixed-shelves: 1, count: 2 }',
    'bare: { kind: open, width: 400, rows: none }',
    'chest: { kind: for-drawers, width: 400, rows: none }',
    'press: { kind: wall, width: 900, doors: pair, loose-shelves: 3, pulls: rod }',
    'desk: { kind: base, width: 500, pulls: rod, fronts: [{ front: drawer, height: 140 }, drawer] }',
    'closet: { kind: tall, width: 400, doors: left, pulls: rod }',
    'robe: { kind: tall, width: 800, depth: 480, fixed-shelves: [1600], wardrobe-rails: [1500] }',
    'bench: { kind: base, width: 900, plinth: 100, feet: stub }',
    'corner: { kind: base, width: 1150, blind: { right: 580 }, fillers: { left: 80 }, fronts: [{ front: fixed, height: 140 }, left] }',
    'laden: { kind: wall, width: 900, load: 12, fixed-shelves: 2 }',
  ],
} satisfies Readonly<Record<string, readonly string[]>>;
type JobName = keyof typeof JOBS;

function analysed(shop: string, carcasses: readonly string[]): JobAnalysis {
  const engine = new Engine({ readShop: () => ({ ok: true, uri: 'file:///s.shop.yaml', text: shop }) });
  const lines = carcasses.map((line) => `  ${line}\n`).join('');
  return engine.analyse('file:///j.carcass.yaml', `shop: s.shop.yaml\ncarcasses:\n${lines}`);
}

function written(path: Path, { value, beside = [] }: Case): string {
  const document = parseDocument(SHOP);
  for (const [where, added] of [...ADDED, ...beside, [path, value] as const])
    document.setIn(where, document.createNode(added, { flow: true }));
  return document.toString();
}

/** The same without the value that is tried. */
function without({ beside = [] }: Case): string {
  return written(['title'], { value: 'The yard', beside });
}

const BASE: unknown = parseDocument(without({ value: null })).toJS();
const at = (path: Path): unknown =>
  path.reduce<unknown>((node, step) => (node as Readonly<Record<string, unknown>> | undefined)?.[step], BASE);

/** Keys with nothing below them that has a key of its own; of things with names of the owner's, those of the first. */
function keysUnder(fields: Fields, path: Path): readonly (readonly [Path, Schema])[] {
  return Object.entries(fields).flatMap(([key, { schema }]) => keysOf(schema, [...path, key]));
}

function keysOf(schema: Schema, path: Path): readonly (readonly [Path, Schema])[] {
  if (schema.type === 'record') return keysUnder(schema.fields, path);
  if (schema.type === 'named') {
    const name = Object.keys(at(path) ?? {})[0];
    return name === undefined ? [] : keysOf(schema.item, [...path, name]);
  }
  return [[path, schema]];
}

/** Values that differ from the one that is there; the first that shows is enough. */
function others(schema: Schema, path: Path): readonly unknown[] {
  const now = at(path);
  const inBounds =
    ({ min, max }: { readonly min: number; readonly max: number }, scale: number) =>
    (value: number) =>
      value * scale >= min && value * scale <= max && value !== now;
  const near = typeof now === 'number' ? [now * 2, now / 2, now + 1, now - 1, now + 32] : [];
  switch (schema.type) {
    case 'length':
      return (near.length > 0 ? near : [0.5, 4, 13, 40, 130, 400, 1300]).filter(inBounds(schema, 1000));
    case 'number':
      return (near.length > 0 ? near : [0, 1, 7, 60]).filter(inBounds(schema, 1));
    case 'count':
      return [...near, 1, 2, 3].filter(Number.isInteger).filter(inBounds(schema, 1));
    case 'span':
      return ['1 to 2', '20 to 60', '100 to 500', '700 to 900'];
    case 'flag':
      return ['yes', 'no'].filter((one) => one !== now);
    case 'choice':
      return Object.keys(schema.options).filter((one) => one !== now);
    case 'text':
      return ['another'];
    case 'list':
      return Array.isArray(now) ? [now.slice(1), [9]] : [[9], [40, 90], [0, 3, 7]];
    case 'name':
      return ['birch-19', 'back-8', 'birch-2', 'screw-7x50', 'no-such-thing'].filter((one) => one !== now);
    case 'either':
      return schema.of.flatMap((one) => others(one, path));
    case 'record':
      return Object.entries(schema.fields).flatMap(([key, field]) =>
        others(field.schema, [...path, key]).map((value) => ({ [key]: value })),
      );
    case 'named':
      return [];
  }
}

const textOf = (thing: unknown): string =>
  JSON.stringify(thing, (key, value: unknown) => (['place', 'path'].includes(key) ? undefined : value));

/** The carcasses of a job in three dimensions. */
function boxes(job: JobAnalysis, carcass: string, what: 'carcass' | 'wall'): unknown {
  const range = { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } };
  const shown = { uri: job.uri, version: 1, toRange: () => range };
  return boxesOf({ kind: 'job', analysis: job }, shown, { uri: job.uri, what, position: null, carcass }, null);
}

const told = (job: JobAnalysis, entries = job.findings()): Promise<string> =>
  Promise.resolve(textOf(entries.map(({ finding: { rule, message } }) => [rule, message])));
const printed = async (job: JobAnalysis, ...papers: readonly PaperName[]): Promise<string> =>
  textOf(await Promise.all(papers.map((paper) => papersOf(job, coverSolver)(paper))));

/** What is told and what is printed. */
const STEPS = {
  known: (job) => told(job, job.known()),
  // Before they are put in order.
  setUps: (job) => Promise.resolve(textOf(job.setUps().map(({ setUp }) => setUp))),
  panels: async (job) => textOf([panelsOf(job).asData(), await printed(job, 'banding-list', 'hardware-list')]),
  findings: (job) => told(job),
  boxes: (job) =>
    Promise.resolve(
      textOf((['carcass', 'wall'] as const).flatMap((what) => job.carcasses.map(({ name }) => boxes(job, name, what)))),
    ),
  strays: (job) => {
    const setUps = job.setUps().map(({ setUp }) => setUp);
    const strays = job.carcasses.map(({ name, carcass, boring }) =>
      carcass === null || boring === null ? null : toleranceOf({ name, carcass, boring, setUps, shop: job.shop }),
    );
    return Promise.resolve(textOf(strays));
  },
  layouts: (job) => printed(job, 'sheet-layouts'),
  inOrder: (job) => printed(job, 'set-ups', 'checking', 'cost', 'panel-labels'),
} satisfies Readonly<Record<string, (job: JobAnalysis) => Promise<string>>>;
type Step = keyof typeof STEPS;

const QUICK = ['known', 'setUps', 'panels', 'findings', 'boxes', 'strays'] as const satisfies readonly Step[];
/** What is quick is tried first, and the order to run, which takes the longest, last. */
const TRIALS: readonly (readonly [JobName, readonly Step[]])[] = [
  ['low', [...QUICK, 'layouts']],
  ['all', QUICK],
  ['low', ['inOrder']],
  ['all', ['layouts', 'inOrder']],
];
/** Small jobs that keys of this kind are most likely to show on. */
const LIKELY: readonly (readonly [RegExp, JobName])[] = [
  [/^(?:cup-borers|hinges|pulls) |^habits (?:door|hinge|pull|hand|two-pulls)/, 'doors'],
  [/^slides |^habits (?:drawer|slide)/, 'drawers'],
  [/^screws /, 'screwed'],
  [/^cams /, 'cams'],
  [/^habits (?:hang|bracket)|^brackets /, 'screwed'],
  [/^wardrobe-rails /, 'robe'],
  [/^feet /, 'footed'],
  [/^angles /, 'still'],
];
/** Times, prices and limits show on papers alone. */
const isOnPaper = (path: Path): boolean =>
  ['changeover', 'handling', 'label-sheet', 'tolerances', 'rates'].includes(path[0]!) || path.at(-1) === 'price';
function trialsOf(path: Path): typeof TRIALS {
  const [, likely] = LIKELY.find(([keys]) => keys.test(path.join(' '))) ?? [];
  const first: typeof TRIALS = likely === undefined ? [] : [[likely, QUICK]];
  return [...(isOnPaper(path) ? [TRIALS[2]!] : []), ...first, ...TRIALS];
}

const KEYS = keysUnder(shopSchema.fields, []);

/** What jobs show with a shop, worked out when it is asked for. */
type Shown = (job: JobName, step: Step) => Promise<string>;

function showing(shop: string): Shown {
  const jobs = new Map<JobName, JobAnalysis>();
  const seen = new Map<string, Promise<string>>();
  return (name, step) => {
    const job = jobs.get(name) ?? analysed(shop, JOBS[name]);
    jobs.set(name, job);
    const text = seen.get(`${name} ${step}`) ?? STEPS[step](job);
    seen.set(`${name} ${step}`, text);
    return text;
  };
}

/** Whether some value of the key makes a difference anywhere; `usual` is what comes of each job without it. */
async function shows(path: Path, schema: Schema, usual: Shown): Promise<boolean> {
  const special = CASES[path.join(' ')];
  const cases = special ?? others(schema, path).map((value): Case => ({ value }));
  const tried = cases.map((one) => ({
    on: one.on,
    before: one.beside === undefined ? usual : showing(without(one)),
    after: showing(written(path, one)),
  }));
  const all = Object.keys(STEPS) as readonly Step[];
  for (const [job, steps] of trialsOf(path))
    for (const step of steps)
      for (const { on, before, after } of tried)
        if (on === undefined && (await before(job, step)) !== (await after(job, step))) return true;
  for (const { on, before, after } of tried)
    if (on !== undefined) for (const step of all) if ((await before(on, step)) !== (await after(on, step))) return true;
  return false;
}

test('every key of a shop file shows somewhere, or is told to do nothing', async () => {
  const usual = showing(without({ value: null }));
  const silent: string[] = [];
  for (const [path, schema] of KEYS) {
    if (path.some((_, i) => unusedWords(path.slice(0, i + 1)) !== null)) continue;
    if (!(await shows(path, schema, usual))) silent.push(path.join(' '));
  }
  expect(KEYS.length).toBeGreaterThan(120);
  expect(silent).toEqual([]);
}, 600_000);
