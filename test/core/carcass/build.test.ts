import { describe, expect, test } from 'vitest';
import { buildCarcass } from '../../../shared-core/carcass/build.js';
import type { Carcass, Panel } from '../../../shared-core/carcass/model.js';
import { extentsOf } from '../../../shared-core/carcass/pose.js';
import { mm, shopOf, specOf, type CarcassWish } from '../specs.js';
import { inWords } from '../../in-words.js';

const shop = shopOf();

function built(wish: Partial<CarcassWish>): Carcass {
  const { carcass, problems } = buildCarcass(specOf(shop, wish), shop);
  expect(problems).toEqual([]);
  return carcass!;
}
function panel(carcass: Carcass, key: string): Panel {
  const found = carcass.panels.find((one) => one.key === key);
  if (found === undefined) throw new Error(`no ${key} among ${carcass.panels.map((one) => one.key).join(', ')}`);
  return found;
}
const size = ({ length, width, thickness }: Panel): number[] => [length / 1000, width / 1000, thickness / 1000];

describe('panels', () => {
  test('stand between the sides, to the size ordered', () => {
    const carcass = built({ back: 'none' });
    expect(carcass.panels.map(({ key }) => key)).toEqual(['left', 'right', 'bottom', 'top']);
    expect(size(panel(carcass, 'left'))).toEqual([720, 560, 16]);
    // 600 less two sides of 16.
    expect(size(panel(carcass, 'bottom'))).toEqual([568, 560, 16]);
    expect(panel(carcass, 'left').cutWidth).toBe(mm(559));
  });

  /*
   * EN 1116 (kitchen furniture, co-ordinating sizes): widths on a module of 100 mm, from memory. A unit keeps its
   * co-ordinating width whatever board it is made of; the inside gives way.
   */
  test.each([300, 400, 500, 600, 800, 900, 1000, 1200])('a unit %i wide keeps its co-ordinating width', (width) => {
    for (const board of ['board-16', 'board-18', 'board-19']) {
      const carcass = built({ width: mm(width), board });
      expect(extentsOf(panel(carcass, 'right')).x.to - extentsOf(panel(carcass, 'left')).x.from).toBe(mm(width));
    }
  });

  test('over and under: the sides stand between them', () => {
    const carcass = built({ top: 'over', bottom: 'under', back: 'none' });
    expect(size(panel(carcass, 'left'))).toEqual([688, 560, 16]);
    expect(size(panel(carcass, 'top'))).toEqual([600, 560, 16]);
    expect(carcass.joints.map(({ id, end }) => [id, end])).toEqual([
      ['left/bottom', 'reference-end'],
      ['right/bottom', 'reference-end'],
      ['left/top', 'far-end'],
      ['right/top', 'far-end'],
    ]);
  });

  test('rails: the rear one on the pitch, in front of the back', () => {
    const carcass = built({ top: 'rails' });
    expect(size(panel(carcass, 'rail-front'))).toEqual([568, 100, 16]);
    // In front of the back at 560 - 16 - 3 = 541: 541 - 100 = 441, down to whole pitches 13 x 32 = 416.
    expect(panel(carcass, 'rail-back').pose.origin.y).toBe(mm(416));
    expect(panel(carcass, 'rail-front').bands.front?.name).toBe('band-1');
    expect(panel(carcass, 'rail-back').bands.front).toBeNull();
  });

  test('backs', () => {
    const grooved = built({});
    expect(panel(grooved, 'left').grooves).toEqual([{ kind: 'groove', from: mm(541), to: mm(544.2), depth: mm(8) }]);
    // Clear 568 x 688, 8 into each groove, 1 of play.
    expect(size(panel(grooved, 'back'))).toEqual([703, 583, 3]);
    const rebated = built({ back: 'rebated' });
    expect(panel(rebated, 'left').grooves).toEqual([{ kind: 'rebate', from: mm(557), to: mm(560), depth: mm(8) }]);
    expect(size(panel(rebated, 'bottom'))).toEqual([568, 557, 16]);
    expect(size(panel(rebated, 'back'))).toEqual([720, 583, 3]);
    const applied = built({ back: 'applied', backBoard: 'back-8' });
    expect(size(panel(applied, 'left'))).toEqual([720, 552, 16]);
    expect(size(panel(applied, 'back'))).toEqual([720, 600, 8]);
    const rails = built({ top: 'rails' });
    expect(extentsOf(panel(rails, 'back')).z).toEqual({ from: mm(8), to: mm(720) });
  });

  test('a groove across the sides stops where theirs do', () => {
    const carcass = built({ top: 'over' });
    expect(panel(carcass, 'top').grooves[0]!.along).toEqual({ from: mm(8), to: mm(592) });
    expect(panel(carcass, 'bottom').grooves[0]!.along).toBeUndefined();
  });

  test('shelves, one in every bay or in one of them', () => {
    const carcass = built({
      dividers: [{ at: mm(300) }],
      fixedShelves: [{ at: mm(296), setback: mm(20) }],
      looseShelves: [{ at: mm(488), bay: 2 }],
    });
    expect(carcass.bays).toEqual([
      { from: mm(16), to: mm(292), left: 'left', right: 'divider-1' },
      { from: mm(308), to: mm(584), left: 'divider-1', right: 'right' },
    ]);
    expect(size(panel(carcass, 'shelf-1-bay-1'))).toEqual([276, 521, 16]);
    // The centre line at the height asked for.
    expect(extentsOf(panel(carcass, 'shelf-1-bay-2')).z).toEqual({ from: mm(288), to: mm(304) });
    // One of play at each end and behind, 5 behind the front; on pins of 5 in holes at 488.
    expect(size(panel(carcass, 'loose-1-bay-2'))).toEqual([274, 535, 16]);
    expect(panel(carcass, 'loose-1-bay-2').pose.origin).toEqual({ x: mm(309), y: mm(5), z: mm(490.5) });
    expect(carcass.joints.map(({ id, face }) => `${id} ${face}`)).toContain('shelf-1-bay-1/divider-1 outside');
    expect(carcass.joints.map(({ id, face }) => `${id} ${face}`)).toContain('shelf-1-bay-2/divider-1 inside');
  });

  test('a divider under rails is joined to both', () => {
    const carcass = built({ top: 'rails', dividers: [{ at: mm(300) }] });
    expect(carcass.joints.filter(({ endPanel }) => endPanel === 'divider-1').map(({ id, end }) => [id, end])).toEqual([
      ['divider-1/bottom', 'reference-end'],
      ['divider-1/rail-front', 'far-end'],
      ['divider-1/rail-back', 'far-end'],
    ]);
  });

  test('a plinth hangs below the box', () => {
    const plinth = panel(built({ plinth: mm(100) }), 'plinth');
    expect(extentsOf(plinth).z).toEqual({ from: mm(-100), to: 0 });
    expect(size(plinth)).toEqual([600, 100, 16]);
  });

  test('choices for single panels', () => {
    const carcass = built({
      dividers: [{ at: mm(300) }],
      fixedShelves: [{ at: mm(296) }],
      panels: {
        left: { board: 'board-19', bands: { front: 'none', back: 'band-2' } },
        'shelf-1': { joint: 'screw-7x50', bands: { front: 'band-2' } },
        'shelf-1-bay-2': { bands: { front: 'none' } },
      },
    });
    expect(size(panel(carcass, 'left'))).toEqual([720, 560, 19]);
    expect(panel(carcass, 'left').cutWidth).toBe(mm(558));
    expect(size(panel(carcass, 'bottom'))).toEqual([565, 560, 16]);
    // What is said of a shelf holds in every bay but where a bay has its own.
    expect(panel(carcass, 'shelf-1-bay-1').bands.front?.name).toBe('band-2');
    expect(panel(carcass, 'shelf-1-bay-2').bands.front).toBeNull();
    const joint = carcass.joints.find(({ id }) => id === 'shelf-1-bay-1/left')!;
    expect([joint.fitting.name, joint.faceFitting.name]).toEqual(['screw-7x50', 'screw-7x50']);
  });

  test('two panels that choose for themselves are bored for what each chose', () => {
    const carcass = built({ panels: { bottom: { joint: 'dowel-10x40' }, left: { joint: 'screw-7x50' } } });
    const joint = carcass.joints.find(({ id }) => id === 'bottom/left')!;
    expect([joint.fitting.name, joint.faceFitting.name]).toEqual(['dowel-10x40', 'screw-7x50']);
  });

  test('unknown names stand for the usual thing', () => {
    const carcass = built({ panels: { left: { board: 'nothing', joint: 'nothing', bands: { front: 'nothing' } } } });
    expect(panel(carcass, 'left').board.name).toBe('board-16');
    expect(panel(carcass, 'left').bands.front?.name).toBe('band-04');
    expect(carcass.joints[0]!.fitting.name).toBe('dowel-8x30');
  });
});

describe('sizes that cannot be', () => {
  const cases: {
    readonly what: string;
    readonly wish: Partial<CarcassWish>;
    readonly path: readonly (string | number)[];
    readonly says: readonly string[];
    /** Keys that must be left out; null: no carcass at all. */
    readonly without: readonly string[] | null;
  }[] = [
    {
      what: 'sides that meet',
      wish: { width: mm(32) },
      path: ['width'],
      says: ['16 mm', '32 mm wide', 'wider'],
      without: null,
    },
    {
      what: 'bottom and top that meet',
      wish: { height: mm(30) },
      path: ['height'],
      says: ['30 mm high'],
      without: null,
    },
    {
      what: 'a back deeper than the box',
      wish: { depth: mm(19) },
      path: ['depth'],
      says: ['19 mm deep'],
      without: null,
    },
    {
      what: 'a groove through a side',
      wish: { groove: mm(16) },
      path: ['back', 'groove'],
      says: ['16 mm deep', 'left'],
      without: ['back'],
    },
    {
      what: 'rails that do not find room',
      wish: { top: 'rails', depth: mm(200), railWidth: mm(90) },
      path: ['rail-width'],
      says: ['90 mm', '181 mm'],
      without: ['rail-front', 'rail-back'],
    },
    {
      what: 'a divider outside',
      wish: { dividers: [{ at: mm(590) }] },
      path: ['dividers', 0],
      says: ['582 mm', '598 mm', '584 mm'],
      without: ['divider-1'],
    },
    {
      what: 'dividers in one another',
      wish: { dividers: [{ at: mm(300) }, { at: mm(310) }] },
      path: ['dividers', 1],
      says: ['divider-2', 'divider-1'],
      without: ['divider-2'],
    },
    {
      what: 'a fixed shelf in the top',
      wish: { fixedShelves: [{ at: mm(700) }] },
      path: ['shelf', 0, 'at'],
      says: ['700 mm', '24 mm', '696 mm'],
      without: ['shelf-1'],
    },
    {
      what: 'a loose shelf in the bottom',
      wish: { looseShelves: [{ at: mm(8) }] },
      path: ['loose', 0, 'at'],
      says: ['18.5 mm', '685.5 mm'],
      without: ['loose-1'],
    },
    {
      what: 'shelves in one another',
      wish: { fixedShelves: [{ at: mm(300) }], looseShelves: [{ at: mm(300) }] },
      path: ['loose', 0, 'at'],
      says: ['loose-1', 'shelf-1', '310.5 mm', '273.5 mm'],
      without: ['loose-1'],
    },
    {
      what: 'a bay that is not there',
      wish: { fixedShelves: [{ at: mm(300), bay: 2 }] },
      path: ['shelf', 0, 'bay'],
      says: ['bay 2', 'bay 1'],
      without: ['shelf-1'],
    },
    {
      what: 'a setback past the back',
      wish: { fixedShelves: [{ at: mm(300), setback: mm(541) }] },
      path: ['shelf', 0, 'setback'],
      says: ['541 mm'],
      without: ['shelf-1'],
    },
    {
      what: 'a divider under rails of two thicknesses',
      wish: { top: 'rails', dividers: [{ at: mm(300) }], panels: { 'rail-back': { board: 'board-19' } } },
      path: ['dividers', 0],
      says: ['16 mm', '19 mm'],
      without: [],
    },
  ];

  test.each(cases)('$what', ({ wish, path, says, without }) => {
    const { carcass, problems } = buildCarcass(specOf(shop, wish), shop);
    expect(problems).toHaveLength(1);
    expect(problems[0]!.path).toEqual(path);
    for (const words of says) expect(inWords(problems[0]!.message)).toContain(words);
    if (without === null) expect(carcass).toBeNull();
    else for (const key of without) expect(carcass!.panels.map((one) => one.key)).not.toContain(key);
  });

  test('a shelf that cannot stand in any bay is told of once', () => {
    const { problems } = buildCarcass(
      specOf(shop, { dividers: [{ at: mm(200) }, { at: mm(400) }], fixedShelves: [{ at: mm(5) }] }),
      shop,
    );
    expect(problems).toHaveLength(1);
  });

  test('figures come in the unit of the file', () => {
    const { problems } = buildCarcass(specOf(shop, { width: mm(25.4) }), shop);
    expect(inWords(problems[0]!.message, 'in')).toContain('1 in wide');
  });

  test('bands that leave nothing to cut', () => {
    const thick = shopOf({
      boards: [...shop.boards.values()],
      bands: [{ ...shop.bands.get('band-1')!, thickness: mm(10) }],
    });
    const wish = {
      fixedShelves: [{ at: mm(300), setback: mm(525) }],
      panels: { 'shelf-1': { bands: { back: 'band-1' } } },
    };
    const { problems } = buildCarcass(specOf(thick, wish), thick);
    expect(problems.map(({ message }) => inWords(message)).join()).toContain('shelf-1');
  });

  test('a shop with nothing in it', () => {
    const empty = { ...shop, boards: new Map(), fittings: new Map() };
    const { carcass, problems } = buildCarcass(specOf(shop), empty);
    expect(carcass).toBeNull();
    expect(problems).toHaveLength(2);
  });
});
