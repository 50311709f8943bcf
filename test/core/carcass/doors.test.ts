import { describe, expect, test } from 'vitest';
import { buildCarcass } from '../../../shared-core/carcass/build.js';
import type { Carcass } from '../../../shared-core/carcass/model.js';
import { outerSize } from '../../../shared-core/carcass/outer-size.js';
import { extentsOf } from '../../../shared-core/carcass/pose.js';
import { tell } from '../../../shared-core/words/message.js';
import { analyse } from '../findings/jobs.js';
import { board, mm, shopOf, specOf, type CarcassWish } from '../specs.js';

const shop = shopOf({
  boards: [board('board-16', mm(16)), board('board-19', mm(19)), board('back-3', mm(3)), board('slab', mm(60))],
});

function built(wish: Partial<CarcassWish>): Carcass {
  const { carcass, problems } = buildCarcass(specOf(shop, wish), shop);
  expect(problems).toEqual([]);
  return carcass!;
}

/** Of each door where it stands and its size, in millimetres. */
function doorsOf(carcass: Carcass) {
  return carcass.doors.map(({ key, hung, upright }) => {
    const panel = carcass.panels.find((one) => one.key === key)!;
    const { x, y, z } = extentsOf(panel);
    const runs = [x, y, z].map(({ from, to }) => [from / 1000, to / 1000]);
    return { key, hung, upright, x: runs[0], y: runs[1], z: runs[2], size: [panel.width / 1000, panel.length / 1000] };
  });
}
const told = (wish: Partial<CarcassWish>): readonly string[] =>
  buildCarcass(specOf(shop, wish), shop).problems.map(({ message }) => tell(message, 'mm'));

// Worked by hand: a carcass 600 wide, 720 high, of 16 mm board; gap 3, reveal 1.5 at the sides, 3 at the top, 0 below, buffers 2.
describe('overlay doors', () => {
  test('one door covers the front but for its reveals, its inner face 2 mm off the front edges', () => {
    expect(doorsOf(built({ doors: { hung: 'left' } }))).toEqual([
      { key: 'door-1', hung: 'left', upright: 'left', x: [1.5, 598.5], y: [-18, -2], z: [0, 717], size: [597, 717] },
    ]);
  });

  test('two doors share what is left beside the gap: (600 - 2 x 1.5 - 3) / 2 = 297', () => {
    const [left, right] = doorsOf(built({ doors: { hung: 'pair', board: 'board-19' } }));
    expect(left).toMatchObject({ hung: 'left', upright: 'left', x: [1.5, 298.5], y: [-21, -2], size: [297, 717] });
    expect(right).toMatchObject({ hung: 'right', upright: 'right', x: [301.5, 598.5], size: [297, 717] });
  });

  test('an odd micrometre goes to the gap, and the doors are of one size', () => {
    const [left, right] = doorsOf(built({ width: 600_001, doors: { hung: 'pair' } }));
    expect([left!.size, right!.size]).toEqual([
      [297, 717],
      [297, 717],
    ]);
    expect(right!.x![0]! - left!.x![1]!).toBeCloseTo(3.001, 9);
  });

  test('before bays they share the divider half and half, with the gap between: 400 - 1.5 and 400 + 1.5', () => {
    const doors = doorsOf(built({ width: mm(900), dividers: [{ at: mm(400) }], doors: { bays: ['left', 'pair'] } }));
    expect(doors).toMatchObject([
      { hung: 'left', upright: 'left', x: [1.5, 398.5] },
      { hung: 'left', upright: 'divider-1', x: [401.5, 648.5] },
      { hung: 'right', upright: 'right', x: [651.5, 898.5] },
    ]);
  });

  test('a bay may be left open', () => {
    const wish = { width: mm(900), dividers: [{ at: mm(400) }] };
    expect(doorsOf(built({ ...wish, doors: { bays: ['none', 'left'] } }))).toMatchObject([
      { key: 'door-1', upright: 'divider-1', x: [401.5, 898.5] },
    ]);
    expect(doorsOf(built({ ...wish, doors: { bays: ['right'] } }))).toMatchObject([
      { key: 'door-1', upright: 'divider-1', x: [1.5, 398.5] },
    ]);
  });

  test('reveals, gap and buffers are those of the carcass where it says them', () => {
    const doors = { hung: 'left', reveal: mm(4), topReveal: mm(20), bottomReveal: mm(5), buffer: 0 } as const;
    expect(doorsOf(built({ doors }))).toMatchObject([{ x: [4, 596], y: [-16, 0], z: [5, 700] }]);
  });
});

describe('inset doors', () => {
  test('stand between the panels with a gap all round: 600 - 32 - 6 by 720 - 32 - 6', () => {
    expect(doorsOf(built({ doors: { hung: 'right', how: 'inset' } }))).toMatchObject([
      { upright: 'right', x: [19, 581], y: [0, 16], z: [19, 701], size: [562, 682] },
    ]);
  });

  test('under the front rail where rails close the box, not under the thicker rear one', () => {
    const wish = { top: 'rails', panels: { 'rail-back': { board: 'board-19' } } } as const;
    expect(doorsOf(built({ ...wish, doors: { hung: 'left', how: 'inset' } }))).toMatchObject([{ z: [19, 701] }]);
  });

  test('shelves of which only the number or the height is given stand back behind them', () => {
    const text = 'kind: wall\nwidth: 600\nloose-shelves: 2\nfixed-shelves: [360]\n';
    const setbacks = (more: string): unknown =>
      analyse(`carcasses:\n  box:\n${(text + more).replace(/^(?=.)/gm, '    ')}`)
        .carcasses[0]!.carcass!.panels.filter(({ role }) => role.endsWith('shelf'))
        .map(({ pose }) => pose.origin.y / 1000);
    expect(setbacks('')).toEqual([0, 5, 5]);
    expect(setbacks('doors: left\n')).toEqual([0, 5, 5]);
    expect(setbacks('doors: { hung: left, how: inset, board: board-19 }\n')).toEqual([19, 24, 24]);
    expect(setbacks('doors: { hung: none, how: inset, board: board-19 }\n')).toEqual([0, 5, 5]);
    // One door is enough to stand in the way, whatever else of the front stays open.
    const inset = 'doors: { how: inset, board: board-19 }\n';
    expect(setbacks(`${inset}fronts: [open, left]\n`)).toEqual([19, 24, 24]);
    expect(setbacks(`${inset}fronts: [open, open]\n`)).toEqual([0, 5, 5]);
  });
});

test('a door is cut to its size less the bands of its four edges', () => {
  const door = built({ doors: { hung: 'left', band: 'band-2' }, panels: { 'door-1': { bands: { back: 'none' } } } });
  const { length, width, cutLength, cutWidth } = door.panels.find(({ role }) => role === 'door')!;
  expect([width - cutWidth, length - cutLength]).toEqual([mm(2), mm(4)]);
});

test('a door takes no part in joints, rows, or the outside of the box', () => {
  const [without, hung] = [built({}), built({ doors: { hung: 'pair' } })];
  expect(hung.joints).toEqual(without.joints);
  expect(outerSize(hung)).toEqual(outerSize(without));
  expect(hung.panels.filter(({ role }) => role !== 'door')).toEqual(without.panels);
});

describe('what cannot hang is told', () => {
  test('an inset door before dividers', () => {
    expect(told({ dividers: [{ at: mm(300) }], doors: { hung: 'pair', how: 'inset' } })).toEqual([
      'An inset door cannot hang before the dividers between 2 bays, because they reach to the front. Say with `bays` what hangs before each bay, or make the doors overlay ones.',
    ]);
  });

  test('doors for more bays than there are', () => {
    expect(told({ doors: { bays: ['left', 'left'] } })).toEqual([
      'The doors of 2 bays are listed, but the carcass has 1. List no more than it has, or add a divider.',
    ]);
  });

  test('a shelf that runs into an inset door, to the micrometre', () => {
    const shelf = (setback: number) => ({ looseShelves: [{ at: mm(300), setback }] });
    const doors = { hung: 'left', how: 'inset' } as const;
    expect(told({ ...shelf(mm(16)), doors })).toEqual([]);
    expect(told({ ...shelf(mm(16) - 1), doors })).toEqual([
      'loose-1 stands 16 mm back from the front and runs into an inset door, which reaches 16 mm back. Make its setback at least 16 mm.',
    ]);
  });

  test('a door of which nothing is left, and one thicker than the room', () => {
    expect(told({ width: mm(50), doors: { hung: 'pair', reveal: mm(24) } })).toEqual([
      'door-1 would be -0.5 mm wide and 717 mm high. Make its reveals and gaps smaller, or the carcass larger.',
      'door-2 would be -0.5 mm wide and 717 mm high. Make its reveals and gaps smaller, or the carcass larger.',
    ]);
    expect(told({ depth: mm(60), back: 'none', doors: { hung: 'left', how: 'inset', board: 'slab' } })).toEqual([
      'door-1 is 60 mm thick and finds no room in a clear depth of 60 mm. Give it a thinner board, or make it an overlay door.',
    ]);
  });
});
