import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { NEUTRAL_SHOP_TEXT, neutralShop } from '../../../shared-core/shop/neutral.js';
import { readShop } from '../../../shared-core/shop/read.js';
import { inWords } from '../../in-words.js';

const told = (text: string): readonly string[] =>
  readShop(text).findings.map(
    ({ rule, severity, place, message }) =>
      `${rule} ${severity} @${text.slice(place.start, place.end)}@ ${inWords(message)}`,
  );

describe('the built-in shop', () => {
  test('is a shop file without a fault that says everything', () => {
    const { shop, findings } = readShop(NEUTRAL_SHOP_TEXT);
    // Its cup borer is there for the day when jobs have hinges, and says so.
    expect(findings.filter(({ rule }) => rule !== 'value-unused')).toEqual([]);
    expect(shop.neutral).toBe(false);
    expect({ ...withoutPlaces(shop), neutral: true }).toEqual(withoutPlaces(neutralShop));
    expect(neutralShop.neutral).toBe(true);
  });

  test('has the figures of common practice (no source)', () => {
    const { habits, fittings, boards } = neutralShop;
    expect([habits.pitch, habits.setback, habits.rowDiameter, habits.rowDepth]).toEqual([
      32_000, 37_000, 5_000, 13_000,
    ]);
    expect(fittings.get(habits.joint)).toMatchObject({
      kind: 'dowel',
      diameter: 8_000,
      length: 30_000,
      inFace: 12_000,
    });
    expect(boards.get(habits.board)?.thickness).toBe(16_000);
    expect(habits.sizes.base).toEqual({ height: null, pitches: 22, depth: 560_000, batch: null });
    // Half a pitch beside the rows, so that a dowel never meets a row hole.
    expect((habits.setback - habits.firstDowel) * 2).toBe(habits.pitch);
  });

  test('names no place, since no file of the owner’s writes it', () => {
    for (const thing of [...neutralShop.boards.values(), ...neutralShop.machines.values()])
      expect(thing.place).toEqual({ part: 'shop', start: 0, end: 0 });
  });
});

/** A shop without the places of its things. */
function withoutPlaces(model: unknown): Record<string, unknown> {
  const strip = (value: unknown): unknown => {
    if (value instanceof Map) return [...(value as Map<string, unknown>)].map(([key, one]) => [key, strip(one)]);
    if (Array.isArray(value)) return (value as unknown[]).map(strip);
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(
      Object.entries(value).flatMap(([key, one]) => (key === 'place' ? [] : [[key, strip(one)]])),
    );
  };
  return strip(model) as Record<string, unknown>;
}

test('a dowel that leaves nothing for the end is told, and bored half and half', () => {
  const text = 'dowels:\n  deep: { diameter: 8, length: 30, in-face: 35 }\nhabits: { joint: deep }\n';
  const { shop, findings } = readShop(text);
  expect(findings.map(({ rule, place }) => [rule, text.slice(place.start, place.end)])).toEqual([
    ['value-wrong', '35'],
  ]);
  expect(inWords(findings[0]!.message)).toMatch(/35 mm deep in the face leaves nothing of a dowel 30 mm long/);
  expect(shop.fittings.get('deep')).toMatchObject({ inFace: 15_000, length: 30_000 });
});

describe('what a shop file does not say', () => {
  test('is as in the built-in shop', () => {
    expect(withoutPlaces(readShop('').shop)).toEqual({ ...withoutPlaces(neutralShop), title: '', neutral: false });
    expect(readShop('habits:\n  setback: 40\n').shop.habits).toEqual({ ...neutralShop.habits, setback: 40_000 });
  });

  test('but a sort of things that it names is wholly its own', () => {
    const { shop, findings } = readShop(
      'boards:\n  birch: { thickness: 18, measured: 17.8 }\n  ply: { thickness: 4 }\nscrews:\n  s: { clearance: 7, pilot: 5, length: 50 }\nhabits: { board: birch, back-board: ply, joint: s }\n',
    );
    expect(findings).toEqual([]);
    expect([...shop.boards.keys()]).toEqual(['birch', 'ply']);
    expect(shop.boards.get('birch')).toMatchObject({ thickness: 17_800, nominal: 18_000 });
    expect([...shop.fittings.keys()]).toEqual(['s']);
    expect(shop.machines).toBe(neutralShop.machines);
    expect(shop.bands).toBe(neutralShop.bands);
  });

  test('a number of pitches undoes a usual height, a height does not undo the pitches of other kinds', () => {
    const sizes = readShop('habits:\n  sizes:\n    base: { pitches: 24 }\n    wall: { height: 700 }\n').shop.habits
      .sizes;
    expect(sizes.base).toEqual({ height: null, pitches: 24, depth: 560_000, batch: null });
    expect(sizes.wall).toEqual({ height: 700_000, pitches: 22, depth: 330_000, batch: null });
  });
});

describe('habits that name nothing', () => {
  test('are told, and the first of the sort is taken', () => {
    const { shop, findings } = readShop(
      'boards: { birch-18: { thickness: 18 }, ply-4: { thickness: 4 } }\nhabits: { board: brich-18, back-board: ply-4 }\n',
    );
    expect(findings.map(({ rule, message }) => [rule, inWords(message)])).toEqual([
      ['value-wrong', '‘brich-18’ is not a board of the shop. Use ‘birch-18’ or ‘ply-4’.'],
    ]);
    expect(findings[0]!.repairs.map((one) => ({ ...one, title: inWords(one.title) }))).toEqual([
      {
        title: 'Use ‘birch-18’',
        changes: [{ kind: 'set', part: 'shop', path: ['habits', 'board'], text: 'birch-18' }],
        preferred: true,
      },
    ]);
    expect(shop.habits.board).toBe('birch-18');
  });

  test('are told where they are not written, as a warning', () => {
    const text = 'boards: { ply-4: { thickness: 4 }, birch-18: { thickness: 18 } }\n';
    expect(told(text)).toEqual([
      'key-missing warning @boards: { ply-4: { thickness: 4 }, birch-18: { thickness: 18 } }@ The shop file does not name the usual board, so ‘birch-18’ is used. Write `board` under `habits`.',
      'key-missing warning @boards: { ply-4: { thickness: 4 }, birch-18: { thickness: 18 } }@ The shop file does not name the usual board for backs, so ‘ply-4’ is used. Write `back-board` under `habits`.',
    ]);
    expect(readShop(text).shop.habits).toMatchObject({ board: 'birch-18', backBoard: 'ply-4' });
  });

  test('a machine must be of the kind that its work needs', () => {
    const text =
      'line-drills:\n  drill: { spindles: 13, pitch: 32, depth: 0 to 30, fence: near, from: below, heads: 1, setback: 37, throat: 300, stops: { L: { side: left, range: 0 to 100 } }, index-pins: fence }\nhabits:\n  machines: { faces: drill }\n';
    expect(told(text)).toEqual([
      'value-wrong error @drill@ ‘drill’ is not a vertical head of the shop. Add a vertical head to the shop file.',
    ]);
    expect(readShop(text).shop.habits.machines).toEqual({
      faces: null,
      ends: null,
      rows: 'drill',
      cups: null,
      clamp: null,
      saw: null,
    });
    expect(readShop(text).shop.machines.get('drill')).toMatchObject({
      kind: 'line',
      body: 'drill',
      setback: { min: 37_000, max: 37_000 },
      stops: [{ name: 'L', lowers: false }],
      clamps: [],
    });
  });

  test('the guide of a cam fitting is a dowel', () => {
    const text =
      'cams: { c: { cam-diameter: 15, cam-depth: 12, distance: 34, bolt-diameter: 8, stud-diameter: 5, stud-depth: 11, guide: dowel } }\nhabits: { joint: c }\n';
    expect(told(text)).toEqual([
      'value-wrong error @dowel@ ‘dowel’ is not a dowel of the shop. Add a dowel to the shop file.',
    ]);
  });

  test('none is a band', () => {
    expect(told('habits: { band: none }')).toEqual([]);
    expect(readShop('habits: { band: none }').shop.habits.band).toBe('none');
  });
});

test('names are one to a thing over all fittings and over all machines', () => {
  const text =
    'dowels: { a: { diameter: 8, length: 30, in-face: 12 } }\nscrews: { a: { clearance: 7, pilot: 5, length: 50 } }\npanel-saws: { m: { kerf: 3 } }\ncase-clamps: { m: {} }\nhabits: { joint: a }\n';
  const { findings, shop } = readShop(text);
  expect(
    findings.map(({ rule, place, related }) => [rule, text.slice(place.start - 9, place.end), related[0]!.place.start]),
  ).toEqual([
    ['name-duplicate', 'screws: { a'.slice(-10), text.indexOf('a:')],
    ['name-duplicate', 'clamps: { m'.slice(-10), text.indexOf('m:')],
  ]);
  expect(shop.fittings.get('a')?.kind).toBe('dowel');
});

test('the unit of the shop is its own', () => {
  const { shop } = readShop(
    'unit: in\nboards: { ply: { thickness: 23/32, sheet-length: 96 } }\nhabits: { board: ply, back-board: ply, pitch: 32 mm, setback: 1 7/16 }\n',
  );
  expect(shop.unit).toBe('in');
  expect(shop.boards.get('ply')).toMatchObject({ thickness: 18_256, sheetLength: 2_438_400 });
  expect([shop.habits.pitch, shop.habits.setback, shop.habits.railWidth]).toEqual([32_000, 36_513, 100_000]);
});

test('bits are those that the shop names, or any', () => {
  expect(readShop('bits: [5, 8 mm, 1/2 in]').shop.bits).toEqual([5_000, 8_000, 12_700]);
  expect(readShop('').shop.bits).toBeNull();
});

test('a broken file gives a usable shop and one kind of finding', () => {
  const { shop, findings } = readShop('boards:\n\tbirch: { thickness: 18 }\n');
  expect(findings.map(({ rule }) => rule)).toEqual(['yaml-syntax']);
  expect(shop.boards.get(shop.habits.board)).toBeDefined();
  expect(readShop('- 1').findings.map(({ rule }) => rule)).toEqual(['value-wrong']);
});

test('whatever happens to the text, the shop is usable and the findings stand in the text', () => {
  const cut = fc.tuple(
    fc.nat(NEUTRAL_SHOP_TEXT.length),
    fc.nat(60),
    fc.oneof(
      fc.constantFrom('', '\t', '{', '"', '&a ', '*a', ': ', '\n', '- ', '1e9'),
      fc.string({ unit: 'binary', maxLength: 4 }),
    ),
  );
  fc.assert(
    fc.property(fc.array(cut, { minLength: 1, maxLength: 4 }), (cuts) => {
      const text = cuts.reduce(
        (all, [at, length, instead]) => all.slice(0, at) + instead + all.slice(at + length),
        NEUTRAL_SHOP_TEXT,
      );
      const { shop, leftOut, findings } = readShop(text);
      const { habits, unread } = shop;
      for (const board of [habits.board, habits.backBoard])
        expect(shop.boards.has(board) || unread?.boards.has(board)).toBe(true);
      expect(shop.fittings.has(habits.joint) || unread?.fittings.has(habits.joint)).toBe(true);
      for (const { place, message } of findings) {
        expect(inWords(message)).not.toBe('');
        expect(place.part).toBe('shop');
        expect(0 <= place.start && place.start <= place.end && place.end <= text.length).toBe(true);
      }
      expect(readShop(text)).toEqual({ shop, leftOut, findings, root: readShop(text).root });
    }),
    { numRuns: 150 },
  );
});

test('the shop to start from says, at every range of a machine, what to measure', () => {
  const lines = NEUTRAL_SHOP_TEXT.split('\n');
  const machines = lines.slice(lines.indexOf('vertical-heads:'), lines.indexOf('habits:'));
  const measured = ['fence-offset', 'depth', 'height', 'stops', 'setback', 'head-distance', 'throat', 'index-range'];
  for (const key of measured) {
    const at = machines.findIndex((line) => line.startsWith(`    ${key}:`));
    expect(at, key).toBeGreaterThan(0);
    expect(
      machines.slice(Math.max(0, at - 2), at).some((line) => line.trim().startsWith('#')),
      key,
    ).toBe(true);
  }
});

test('one depth alone is the greatest that a machine bores; a span from it to itself is what it says', () => {
  const depthOf = (written: string) => {
    const text = `vertical-heads:\n  head: { spindles: 21, pitch: 32, fence: far, from: above, fence-offset: 50, depth: ${written}, stops: { A: { side: left, range: 0 to 900 } } }\n`;
    const { shop, findings } = readShop(text);
    const head = shop.machines.get('head');
    return {
      findings: findings.length,
      ...(head?.kind === 'vertical' && { depth: head.depth, fence: head.fenceOffset }),
    };
  };
  const fence = { min: 50_000, max: 50_000 };
  expect(depthOf('60')).toEqual({ findings: 0, depth: { min: 0, max: 60_000 }, fence });
  expect(depthOf('60 to 60')).toEqual({ findings: 0, depth: { min: 60_000, max: 60_000 }, fence });
});

test('a further sheet that is called as its board is left out and told, where the usual sheet goes by that name', () => {
  const board = (usual: string): string =>
    `boards: { oak: { thickness: 16, ${usual}sheets: { oak: { length: 900, width: 600, price: 5 }, half: { length: 1400, width: 2070 } } } }\n`;
  const clash = board('sheet-length: 2800, sheet-width: 2070, price: 60, ');
  expect(told(clash).filter((one) => one.startsWith('name-duplicate'))).toEqual([
    'name-duplicate error @oak@ The usual sheet of ‘oak’ is called so already, and this one is left out. Give it another name.',
  ]);
  expect(
    readShop(clash)
      .shop.boards.get('oak')!
      .sheets.map(({ name }) => name),
  ).toEqual(['half']);
  expect(
    readShop(board(''))
      .shop.boards.get('oak')!
      .sheets.map(({ name }) => name),
  ).toEqual(['oak', 'half']);
});
