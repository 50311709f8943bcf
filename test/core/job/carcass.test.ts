import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { applyEdits } from '../../../shared-core/document/pieces.js';
import type { Located } from '../../../shared-core/document/place.js';
import type { TreeNode } from '../../../shared-core/document/tree.js';
import { carcassEdits } from '../../../shared-core/job/edits.js';
import type { CarcassSpec } from '../../../shared-core/carcass/spec.js';
import { half } from '../../../shared-core/length/units.js';
import { writeLength } from '../../../shared-core/length/write.js';
import { readShop } from '../../../shared-core/shop/read.js';
import { analyse } from '../findings/jobs.js';
import { job, writeJob } from './job-texts.js';
import { readAll, values } from './read-all.js';
import { inWords } from '../../in-words.js';

function specOf(text: string, shopText?: string): CarcassSpec {
  const { carcasses, findings } = readAll(text, shopText === undefined ? undefined : readShop(shopText).shop);
  expect(findings).toEqual([]);
  return carcasses[0]!.spec!;
}
const carcass = (body: string, head = ''): string =>
  `${head}carcasses:\n  sink:\n    kind: base\n    width: 600\n${body}`;
const heights = (shelves: CarcassSpec['looseShelves']): readonly number[] => shelves.map(({ at }) => at.value / 1000);

describe('a plain base unit', () => {
  const spec = specOf(carcass('    loose-shelves: 1\n'));

  test('gets the balanced height: 22 pitches of 32 mm and the board (common practice, no source)', () => {
    expect(spec.height.value).toBe(720_000);
    expect(specOf(carcass('    board: board-19\n')).height.value).toBe(723_000);
    expect(specOf(carcass('    board: board-19\n')).rowOffset.value).toBe(9_500);
  });

  test('keeps its height and its rows where the batch of boards is measured otherwise than it is called', () => {
    const shop = 'unit: mm\nboards: { white: { thickness: 16, measured: 15.7 } }\nhabits: { board: white }\n';
    const measured = specOf(carcass('    loose-shelves: [360]\n', 'shop: bench.shop.yaml\n'), shop);
    expect(measured.height.value).toBe(720_000);
    expect(measured.rowOffset.value).toBe(8_000);
  });

  test('gets the habits of the shop', () => {
    expect(values(spec)).toMatchObject({
      depth: { value: 560_000 },
      board: { value: 'board-16' },
      joint: { value: 'dowel-8x30' },
      top: { value: 'rails' },
      bottom: { value: 'between' },
      plinth: { value: 0 },
      back: {
        how: { value: 'grooved' },
        board: { value: 'back-3' },
        groove: { value: 8_000 },
        inset: { value: 16_000 },
      },
      rows: { value: 'both' },
      rowOffset: { value: 8_000 },
      rowSetback: { value: 37_000 },
      machines: { faces: { value: 'face-head' }, clamp: { value: 'case-clamp' } },
      looseShelves: [
        { key: 'loose-1', at: { value: 360_000, path: ['loose-shelves', 0] }, bay: null, setback: { value: 5_000 } },
      ],
    });
  });

  test('blames its name for what is not written', () => {
    const text = carcass('');
    const { parts, carcasses } = readAll(text);
    const { height, name } = carcasses[0]!.spec!;
    expect(height.written).toBe(false);
    expect(height.place).toEqual(name.place);
    expect(parts.carcasses[0]!.text.slice(name.place.start, name.place.end)).toBe('sink');
  });
});

test('the carcass’s own text goes before the job’s defaults, and these before the shop’s habits', () => {
  const head =
    'defaults:\n  depth: 500\n  board: board-18\n  back: { how: rebated, groove: 9 }\n  machines: { clamp: case-clamp }\n';
  const text = carcass('    depth: 400\n    back: grooved\n', head);
  const spec = specOf(text, 'habits:\n  rail-width: 90\n  sizes: { base: { pitches: 20 } }\n');
  expect(spec.depth).toMatchObject({ value: 400_000, written: true, path: ['depth'], place: { part: 'self' } });
  expect(spec.board).toMatchObject({
    value: 'board-18',
    written: true,
    path: ['defaults', 'board'],
    place: { part: 'head' },
  });
  expect(text.slice(spec.board.place.start, spec.board.place.end)).toBe('board-18');
  expect(spec.railWidth).toMatchObject({
    value: 90_000,
    written: false,
    path: ['rail-width'],
    place: { part: 'self' },
  });
  expect(spec.height.value).toBe(20 * 32_000 + 18_000);
  expect(spec.back).toMatchObject({ how: { value: 'grooved' }, groove: { value: 9_000, place: { part: 'head' } } });
});

test('what kind it is chooses top and rows', () => {
  const of = (kind: string, more = '') => specOf(`carcasses: \n  a:\n    kind: ${kind}\n    width: 500\n${more}`);
  expect(['base', 'for-drawers', 'wall', 'tall', 'open'].map((kind) => of(kind).top.value)).toEqual([
    'rails',
    'rails',
    'between',
    'between',
    'between',
  ]);
  expect(['base', 'for-drawers', 'wall', 'tall', 'open'].map((kind) => of(kind).rows.value)).toEqual([
    'both',
    'both',
    'both',
    'both',
    'none',
  ]);
  expect(of('open', '    loose-shelves: 1\n').rows.value).toBe('both');
  expect(of('tall').height.value).toBe(64 * 32_000 + 16_000);
});

test('an unknown board stands for the usual one, so that the rest is there', () => {
  const { carcasses } = readAll(carcass('    board: bord\n'));
  expect(carcasses[0]!.spec).toMatchObject({ board: { value: 'bord' }, height: { value: 720_000 } });
});

test.each([
  ['between', 'between', 22 * 32 + 19],
  ['over', 'between', 22 * 32 + 2 * 19],
  ['rails', 'under', 22 * 32 + 2 * 19],
  ['over', 'under', 22 * 32 + 3 * 19],
])('with the top %s and the bottom %s the sides stay balanced', (top, bottom, wanted) => {
  const spec = specOf(carcass(`    board: board-19\n    top: ${top}\n    bottom: ${bottom}\n`));
  expect(spec.height.value).toBe(wanted * 1000);
});

describe('counted shelves', () => {
  test('part the clear height evenly, on the grid', () => {
    // Sides 720 high, clear from 16 to 704; holes at 8 + k * 32.
    expect(heights(specOf(carcass('    fixed-shelves: 1\n')).fixedShelves)).toEqual([360]);
    expect(heights(specOf(carcass('    loose-shelves: 2\n')).looseShelves)).toEqual([232, 456]);
    expect(heights(specOf(carcass('    loose-shelves: 3\n')).looseShelves)).toEqual([168, 360, 520]);
  });

  test('share out the openings between fixed shelves, the taller first', () => {
    const spec = specOf(carcass('    fixed-shelves: [488]\n    loose-shelves: 3\n'));
    expect(heights(spec.looseShelves)).toEqual([168, 328, 584]);
  });

  test('that do not fit are told with figures', () => {
    const { carcasses } = readAll(carcass('    height: 150\n    loose-shelves: 9\n'));
    expect(carcasses[0]!.spec).toBeNull();
    expect(carcasses[0]!.findings.map(({ rule, message }) => [rule, inWords(message)])).toEqual([
      [
        'value-wrong',
        '9 loose shelves do not fit on the pitch of 32 mm; the maximum is 3. Use fewer shelves, or make the carcass higher.',
      ],
    ]);
  });

  test('stand on the grid, clear of all else, as evenly as the grid allows', () => {
    const thickness = fc.constantFrom(16, 18, 19);
    fc.assert(
      fc.property(
        fc.integer({ min: 400, max: 2400 }),
        thickness,
        fc.nat(3),
        fc.nat(4),
        fc.integer({ min: 5, max: 60 }),
        (height, board, fixed, loose, offset) => {
          const text = carcass(
            `    height: ${height}\n    top: between\n    board: board-${board}\n    fixed-shelves: ${fixed}\n    loose-shelves: ${loose}\n    row-offset: ${offset}\n`,
          );
          const spec = readAll(text).carcasses[0]!.spec;
          if (spec === null) return;
          expect([spec.fixedShelves.length, spec.looseShelves.length]).toEqual([fixed, loose]);
          const all = [
            ...spec.fixedShelves.map(({ at }) => [at.value - board * 500, at.value + board * 500] as const),
            ...spec.looseShelves.map(({ at }) => [at.value + 2500, at.value + 2500 + board * 1000] as const),
          ].sort((a, b) => a[0] - b[0]);
          const edges = [board * 1000, ...all.flat(), (height - board) * 1000];
          for (let i = 1; i < edges.length; i += 1) expect(edges[i]!).toBeGreaterThanOrEqual(edges[i - 1]!);
          for (const { at } of [...spec.fixedShelves, ...spec.looseShelves])
            expect(Math.abs(at.value - offset * 1000) % 32_000).toBe(0);
          if (fixed > 0 && loose === 0) {
            // Even: no shelf is further than half a pitch from where it would stand without the grid.
            const clear = (height - 2 * board - fixed * board) * 1000;
            spec.fixedShelves.forEach(({ at }, i) => {
              const ideal = board * 1000 + ((i + 1) * clear) / (fixed + 1) + i * board * 1000 + board * 500;
              expect(Math.abs(at.value - ideal)).toBeLessThanOrEqual(16_001);
            });
          }
        },
      ),
      { numRuns: 500 },
    );
  });
});

describe('dividers', () => {
  test('part the clear width evenly', () => {
    const spec = specOf(carcass('    dividers: 2\n'));
    // Clear 568, two of 16: bays of 178 2/3, set out to a tenth of a millimetre.
    expect(spec.dividers.map(({ at }) => at.value)).toEqual([
      16_000 + 178_700 + 8_000,
      16_000 + 357_300 + 16_000 + 8_000,
    ]);
    expect(specOf(carcass('    dividers: 1\n')).dividers[0]).toMatchObject({
      key: 'divider-1',
      at: { value: 300_000, written: false, path: ['dividers', 0] },
    });
  });

  test('that leave no bay are told', () => {
    const { carcasses } = readAll('carcasses:\n  a:\n    kind: wall\n    width: 150\n    dividers: 12\n');
    expect(inWords(carcasses[0]!.findings[0]!.message)).toBe(
      '12 dividers of 16 mm leave no clear bay in a clear width of 118 mm. Use fewer dividers, or make the carcass wider.',
    );
  });
});

test('panels that the carcass does not have are told, with the nearest', () => {
  const { carcasses } = readAll(
    carcass(
      '    dividers: 1\n    loose-shelves: 1\n    panels:\n      lefft: { rows: none }\n      top: {}\n      loose-1-bay-2: {}\n      rail-front: {}\n',
    ),
  );
  expect(carcasses[0]!.spec).not.toBeNull();
  expect(carcasses[0]!.findings.map(({ rule, repairs }) => [rule, repairs[0] && inWords(repairs[0].title)])).toEqual([
    ['panel-unknown', 'Rename to left'],
    ['panel-unknown', undefined],
  ]);
});

test('a place that is written twice is one bore', () => {
  const text = carcass('    dowels: [37, 133, 37 mm]\n    panels:\n      left: { dowels: [1/2 in, 12.7] }\n');
  const { parts, carcasses } = readAll(text);
  const { spec, findings, entry } = carcasses[0]!;
  expect(spec!.dowels!.value.map(({ value }) => value)).toEqual([37_000, 133_000]);
  expect(spec!.panels.get('left')!.dowels!.value).toHaveLength(1);
  const part = parts.carcasses[0]!;
  expect(findings.map(({ place }) => part.text.slice(place.start, place.end))).toEqual(['37 mm', '12.7']);
  const changes = findings.flatMap(({ repairs }) => repairs[0]!.changes);
  expect(applyEdits(part.text, carcassEdits(part.text, entry!, changes))).toBe(
    part.text.replace(', 37 mm', '').replace(', 12.7', ''),
  );
});

/** Every located value of a spec. */
function locatedIn(model: unknown): readonly Located<unknown>[] {
  if (model instanceof Map) return [...model.values()].flatMap(locatedIn);
  if (Array.isArray(model)) return model.flatMap(locatedIn);
  if (typeof model !== 'object' || model === null) return [];
  const own = 'written' in model ? [model as Located<unknown>] : [];
  return [...own, ...Object.values(model).flatMap(locatedIn)];
}

function nodeAt(root: TreeNode | null, path: Located<unknown>['path']): TreeNode | null {
  let node = root;
  for (const step of path) {
    if (node?.kind === 'map') node = node.entries.find(({ key }) => key === step)?.value ?? null;
    else if (node?.kind === 'list') node = node.items[step as number] ?? null;
    else return null;
  }
  return node;
}

test('places and paths agree: the path of a written value leads to the text that its place covers', () => {
  fc.assert(
    fc.property(job, fc.boolean(), (some, flow) => {
      const { carcasses } = readAll(writeJob(some, 'mm', flow));
      for (const { spec, entry } of carcasses) {
        for (const value of locatedIn(spec)) {
          if (
            !value.written ||
            value.place.part !== 'self' ||
            value === spec!.name ||
            [...spec!.panels.values()].some(({ key }) => key === value)
          )
            continue;
          expect(nodeAt(entry!.value, value.path)?.place).toEqual(value.place);
        }
      }
    }),
    { numRuns: 200 },
  );
});

test('a default that is written where its path says stays as it is', () => {
  const lengths = ['height', 'depth', 'railWidth', 'plinth', 'rowOffset', 'rowSetback'] as const;
  const words = ['board', 'band', 'joint', 'top', 'bottom', 'rows'] as const;
  fc.assert(
    fc.property(job, fc.boolean(), (some, flow) => {
      const text = writeJob(some, 'mm', flow);
      const { parts, carcasses } = readAll(text);
      carcasses.forEach(({ spec, entry }, i) => {
        if (spec === null) return;
        const part = parts.carcasses[i]!;
        const unwritten = [
          ...lengths.map((key) => [spec[key].path, spec[key], writeLength(spec[key].value, 'mm')] as const),
          ...words.map((key) => [spec[key].path, spec[key], spec[key].value] as const),
          [spec.back.inset.path, spec.back.inset, writeLength(spec.back.inset.value, 'mm')] as const,
          [spec.back.how.path, spec.back.how, spec.back.how.value] as const,
        ].filter(([, value]) => !value.written);
        const changes = unwritten.map(
          ([path, , written]) => ({ kind: 'set', part: 'self', path, text: written }) as const,
        );
        const edits = carcassEdits(part.text, entry!, changes);
        if (changes.length > 0) expect(edits.length).toBeGreaterThan(0);
        const after = applyEdits(part.text, edits);
        const reread = readAll(text.slice(0, part.origin) + after + text.slice(part.origin + part.text.length))
          .carcasses[i]!.spec;
        expect(bare(reread)).toEqual(bare(spec));
      });
    }),
    { numRuns: 200 },
  );
});

/** Values alone: neither where they stand nor whether they are written. */
function bare(model: unknown): unknown {
  if (model instanceof Map) return [...model].map(bare);
  if (Array.isArray(model)) return model.map(bare);
  if (typeof model !== 'object' || model === null) return model;
  if ('written' in model) return bare((model as Located<unknown>).value);
  return Object.fromEntries(Object.entries(model).map(([key, value]) => [key, bare(value)]));
}

test('the unit of the file changes nothing but the text', () => {
  fc.assert(
    fc.property(job, (some) => {
      const inMm = readAll(writeJob(some, 'mm')).carcasses.map(({ spec }) => values(spec));
      const inInches = readAll(writeJob(some, 'in')).carcasses.map(({ spec }) => values(spec));
      expect(inInches).toEqual(inMm);
    }),
    { numRuns: 200 },
  );
});

test('odd halves are rounded alike everywhere', () => {
  const spec = specOf(
    carcass('    board: odd\n'),
    'boards: { odd: { thickness: 15.873 } }\nhabits: { board: odd, back-board: odd }\n',
  );
  expect(spec.rowOffset.value).toBe(half(15_873));
});

describe('a plinth from the defaults', () => {
  const made = (body: string, like = '') => {
    const defaults = 'defaults: { plinth: 100, feet: level-foot }\n';
    const { spec, boring } = analyse(`${defaults}carcasses:\n  one: { width: 600, ${body} }\n${like}`).carcasses[0]!;
    return [spec!.plinth.value / 1000, boring!.feet.length];
  };

  test.each([
    ['what stands has it', 'kind: base', [100, 4]],
    ['a wall carcass has none', 'kind: wall', [0, 0]],
    ['nor has one of another kind that hangs', 'kind: open, place: { above-floor: 1200 }', [0, 0]],
    ['one of the same kind that stands has it', 'kind: open', [100, 4]],
    ['one across a corner that hangs has none', 'kind: wall, diagonal: { right: 600 }', [0, 0]],
    ['a wall carcass has its own, with the feet that the defaults name', 'kind: wall, plinth: 90', [90, 4]],
  ])('%s', (_title, body, found) => {
    expect(made(body)).toEqual(found);
  });

  test('a wall carcass has none by way of one that it mirrors, but has what that one says itself', () => {
    const base = (own: string): string => `  two: { kind: base, width: 600${own} }\n`;
    expect(made('kind: wall, like: two, mirrored: yes', base(''))).toEqual([0, 0]);
    expect(made('kind: wall, like: two, mirrored: yes', base(', plinth: 120'))).toEqual([120, 4]);
  });
});
