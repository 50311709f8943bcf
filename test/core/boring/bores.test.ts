import { describe, expect, test } from 'vitest';
import { boreAxis, mouths } from '../../../shared-core/boring/axis.js';
import { boreCarcass } from '../../../shared-core/boring/bores.js';
import type { Bore, BoreMap } from '../../../shared-core/boring/model.js';
import { patternPlaces } from '../../../shared-core/boring/pattern.js';
import { wallsBeside, wallUnder } from '../../../shared-core/boring/walls.js';
import { buildCarcass } from '../../../shared-core/carcass/build.js';
import type { Carcass } from '../../../shared-core/carcass/model.js';
import type { Surroundings } from '../../../shared-core/fittings/fitting.js';
import { cam as cams } from '../../../shared-core/fittings/kinds/cam.js';
import { cam, dowel, mm, shopOf, specOf, type CarcassWish, type ShopWish } from '../specs.js';

function bored(wish: Partial<CarcassWish> = {}, shopWish: Partial<ShopWish> = {}): BoreMap & { carcass: Carcass } {
  const shop = shopOf(shopWish);
  const spec = specOf(shop, wish);
  const { carcass, problems } = buildCarcass(spec, shop);
  expect(problems).toEqual([]);
  return { carcass: carcass!, ...boreCarcass(spec, carcass!, shop) };
}

/** [u, v] in millimetres. */
const places = (bores: readonly Bore[]): number[][] => bores.map(({ u, v }) => [u / 1000, v / 1000]);
const inGroup = (map: BoreMap, panel: string, group: string): readonly Bore[] =>
  map.bores.filter((bore) => bore.panel === panel && bore.group === group);

describe('rows', () => {
  /*
   * Balanced height: a side that is a whole number of pitches and one thickness high carries a row that is symmetric about
   * its middle, the first hole half a thickness from either end (common practice, no source).
   * 22 pitches of 32 and a board of 16 give 720; of 19, 723.
   */
  test.each([
    { board: 'board-16', thickness: 16, height: 720 },
    { board: 'board-19', thickness: 19, height: 723 },
  ])('$height high in $board is balanced', ({ board, thickness, height }) => {
    expect(22 * 32 + thickness).toBe(height);
    const { rows, bores } = bored({ board, height: mm(height) });
    expect(rows.map(({ id, offset, count }) => [id, offset, count])).toEqual([
      ['left:row-front', mm(thickness / 2), 23],
      ['left:row-rear', mm(thickness / 2), 23],
      ['right:row-front', mm(thickness / 2), 23],
      ['right:row-rear', mm(thickness / 2), 23],
    ]);
    const front = bores.filter(({ group }) => group === 'left:row-front');
    const seenFromAbove = front.map(({ v }) => mm(height) - v).reverse();
    expect(seenFromAbove).toEqual(front.map(({ v }) => v));
  });

  test('another height ends short above, and is not balanced', () => {
    const [row] = bored({ height: mm(730) }).rows;
    const last = row!.offset + (row!.count - 1) * row!.pitch;
    expect([row!.offset, mm(730) - last]).toEqual([mm(8), mm(18)]);
  });

  test('there is a rear row from the depth on at which it stands one pitch behind the front row', () => {
    // 37 to the front row, a pitch of 32, and a margin of 37 behind.
    const lines = (depth: number): readonly number[] =>
      bored({ depth: mm(depth), back: 'none', joint: 'screw-7x50' })
        .rows.filter(({ panel }) => panel === 'left')
        .map(({ u }) => u);
    expect(lines(106)).toEqual([mm(37), mm(69)]);
    expect(lines(105.999)).toEqual([mm(37)]);
    expect([lines(137.999), lines(138)]).toEqual([
      [mm(37), mm(69)],
      [mm(37), mm(101)],
    ]);
  });

  test('the last hole of a divider keeps half its own thickness from its end, not that of the sides', () => {
    // It stands on the bottom, so hole 1 is 54 - 16 = 38 up it; 718.5 - 2 x 16 = 686.5 long, less 38 + 20 x 32 leaves 8.5.
    const wish = { height: mm(718.5), rowOffset: mm(54), dividers: [{ at: mm(300) }], looseShelves: [{ at: mm(300) }] };
    for (const [board, count] of [
      ['board-16', 21],
      ['board-19', 20],
    ] as const) {
      const { rows } = bored({ ...wish, panels: { 'divider-1': { board } } });
      expect(rows.filter(({ panel }) => panel === 'divider-1').map((row) => row.count)).toEqual([count, count]);
    }
  });

  test('sides of unlike boards carry the same holes, also where only one has room for the last by itself', () => {
    // 54 + 21 x 32 = 726, which is 8.5 short of the top end: half of 16 is less, half of 19 more.
    for (const side of ['left', 'right']) {
      const { rows } = bored({ height: mm(734.5), rowOffset: mm(54), panels: { [side]: { board: 'board-19' } } });
      expect(rows.map(({ id, count }) => [id, count])).toEqual([
        ['left:row-front', 22],
        ['left:row-rear', 22],
        ['right:row-front', 22],
        ['right:row-rear', 22],
      ]);
    }
  });

  /* Setback 37, pitch 32, holes of 5 (common practice, no source). */
  test('front row 37 behind the front edge, the rear one whole pitches of 32 behind it', () => {
    const [front, rear] = bored().rows;
    expect([front!.u, front!.pitch, front!.diameter]).toEqual([mm(37), mm(32), mm(5)]);
    // 541 clear less a rear margin of 37 is 504: 37 + 14 x 32 = 485 fits, 517 does not.
    expect(rear!.u).toBe(mm(37 + 14 * 32));
    // 560 less 37 is 523, where no groove takes of the depth: 517 fits.
    expect(bored({ back: 'none' }).rows[1]!.u).toBe(mm(37 + 15 * 32));
  });

  test('on a divider only where a shelf needs them, toward it, at the heights of the sides', () => {
    const divider = (wish: Partial<CarcassWish>) =>
      bored({ dividers: [{ at: mm(300) }], ...wish }).rows.filter(({ panel }) => panel === 'divider-1');
    expect(divider({})).toEqual([]);
    const at = mm(8 + 10 * 32);
    const one = (bay: number) => divider({ looseShelves: [{ at, bay }] })[0]!;
    expect([one(1).face, one(1).through, one(1).depth]).toEqual(['outside', false, mm(13)]);
    expect([one(2).face, one(2).through]).toEqual(['inside', false]);
    const both = divider({ looseShelves: [{ at }] })[0]!;
    expect([both.through, both.depth]).toEqual([true, mm(16)]);
    // The divider stands on the bottom, 16 up: its holes are at 24, 56 ... which are 40, 72 ... of the sides: 8 + k x 32.
    expect([both.offset, both.count]).toEqual([mm(24), 21]);
  });

  test('by choice', () => {
    expect(bored({ rows: 'none' }).rows).toEqual([]);
    expect(bored({ rows: 'front', panels: { right: { rows: 'none' } } }).rows.map(({ id }) => id)).toEqual([
      'left:row-front',
    ]);
    expect(bored({ panels: { left: { rowOffset: mm(40) } } }).rows[0]!.count).toBe(22);
    expect(bored({ rearRow: mm(400) }).rows[1]!.u).toBe(mm(400));
  });
});

describe('dowels', () => {
  /*
   * Half-thickness rule: the bores in the face stand half a thickness from the end of the side; those in the end half a
   * thickness from the outside face (common practice, no source). Then top and bottom close flush.
   */
  test.each(['board-16', 'board-18', 'board-19'])('mate at half the thickness of %s', (board) => {
    const map = bored({ board, rows: 'none' });
    const thickness = map.carcass.panels[0]!.thickness;
    for (const bore of inGroup(map, 'left', 'bottom/left')) expect(bore.v).toBe(thickness / 2);
    for (const bore of inGroup(map, 'left', 'top/left')) expect(bore.v).toBe(mm(720) - thickness / 2);
    for (const bore of inGroup(map, 'bottom', 'bottom/left')) expect(bore.v).toBe(thickness / 2);
    for (const bore of inGroup(map, 'top', 'top/left')) expect(bore.v).toBe(thickness / 2);
  });

  /*
   * DIN 68150-1 (wooden dowels) has 8 x 30 among its sizes, from memory. 12 in the face and 19 in the end hold it with
   * 1 of room for glue; 16 less 12 leave 4 under the bore in the face, more than the 3 of common practice (no source).
   */
  test('8 x 30: 12 deep in the face, 19 in the end', () => {
    const map = bored({ rows: 'none' });
    const [face] = inGroup(map, 'left', 'bottom/left');
    const [end] = inGroup(map, 'bottom', 'bottom/left');
    expect([face!.diameter, face!.depth, end!.diameter, end!.depth]).toEqual([mm(8), mm(12), mm(8), mm(19)]);
    const [left] = map.carcass.panels;
    expect(wallUnder(left!, face!)).toBe(mm(4));
  });

  test('stand on the spindle line, first and last that find room, and the fewest between', () => {
    const map = bored({ rows: 'none' });
    // 53 + k x 32 up to 541 - 12: 53 ... 501; neighbours at most 160 apart.
    expect(places(inGroup(map, 'left', 'bottom/left')).map(([u]) => u)).toEqual([53, 213, 341, 501]);
  });

  test('both rails are bored alike, counted from their own front edges', () => {
    const map = bored({ top: 'rails', rows: 'none' });
    const [front, back] = ['rail-front', 'rail-back'].map((rail) => places(inGroup(map, rail, `${rail}/left`)));
    expect(front).toEqual([
      [53, 8],
      [85, 8],
    ]);
    expect(back).toEqual(front);
    expect(places(inGroup(map, 'left', 'rail-back/left')).map(([u]) => u)).toEqual([416 + 53, 416 + 85]);
  });

  test('shelves back to back on a divider take different spindles', () => {
    const map = bored({ dividers: [{ at: mm(300) }], fixedShelves: [{ at: mm(296) }], rows: 'none' });
    const at = (bay: number) => places(inGroup(map, 'divider-1', `shelf-1-bay-${bay}/divider-1`)).map(([u]) => u!);
    expect(at(1)).toEqual([53, 213, 341, 501]);
    expect(at(2)).toEqual([85, 245, 373, 469]);
    // Both ends of one shelf are bored alike.
    expect(places(inGroup(map, 'right', 'shelf-1-bay-2/right')).map(([u]) => u)).toEqual(at(2));
  });

  test('listed places count from the front edge of the panel; one that no joint reaches is given back', () => {
    const wish = {
      rows: 'none',
      panels: { bottom: { dowels: [mm(60), mm(300), mm(570)], endDepth: mm(20) } },
    } as const;
    const map = bored(wish);
    expect(places(inGroup(map, 'bottom', 'bottom/right'))).toEqual([
      [60, 8],
      [300, 8],
    ]);
    expect(inGroup(map, 'bottom', 'bottom/right')[0]!.depth).toBe(mm(20));
    // The side is bored by its own pattern: the two no longer meet.
    expect(places(inGroup(map, 'right', 'bottom/right')).map(([u]) => u)).toEqual([53, 213, 341, 501]);
    expect(map.unused.map(({ panel, at }) => [panel, at.value])).toEqual([['bottom', mm(570)]]);
  });

  test('`end-dowels` count from the front edge of the panel, and rule both panels of its end joints alone', () => {
    const wish = {
      rows: 'none',
      fixedShelves: [{ at: mm(360), setback: mm(20) }],
      panels: { 'shelf-1': { endDowels: [mm(40), mm(200), mm(570)] } },
    } as const;
    const [map, plain] = [bored(wish), bored({ ...wish, panels: {} })];
    for (const side of ['left', 'right']) {
      expect(places(inGroup(map, 'shelf-1', `shelf-1/${side}`)).map(([u]) => u)).toEqual([40, 200]);
      expect(places(inGroup(map, side, `shelf-1/${side}`)).map(([u]) => u)).toEqual([60, 220]);
      expect(inGroup(map, side, `bottom/${side}`)).toEqual(inGroup(plain, side, `bottom/${side}`));
    }
    expect(map.unused.map(({ panel, at }) => [panel, at.value])).toEqual([['shelf-1', mm(570)]]);
  });

  test('what is said of one joint rules both its panels, and no other joint of theirs', () => {
    const wish = {
      rows: 'none',
      fixedShelves: [{ at: mm(360) }],
      panels: {
        left: { dowels: [mm(60), mm(300)] },
        bottom: { endDowels: [mm(40), mm(480)], referenceEnd: { joint: 'dowel-10x40', dowels: 3 } },
      },
    } as const;
    const map = bored(wish);
    // Spindles stand at 53 + k x 32; the first and the last with room are 53 and 501, and 277 lies in the middle.
    for (const panel of ['left', 'bottom']) {
      const own = inGroup(map, panel, 'bottom/left');
      expect(places(own).map(([u]) => u)).toEqual([53, 277, 501]);
      expect(new Set(own.map(({ diameter, fitting }) => `${diameter} ${fitting}`))).toEqual(
        new Set(['10000 dowel-10x40']),
      );
    }
    for (const panel of ['right', 'bottom'])
      expect(places(inGroup(map, panel, 'bottom/right')).map(([u]) => u)).toEqual([40, 480]);
    expect(places(inGroup(map, 'left', 'shelf-1/left')).map(([u]) => u)).toEqual([60, 300]);
    expect([map.crowded, map.unused]).toEqual([[], []]);
  });

  test('a number of places is bored as far as there are spindles, and what finds no room is given back', () => {
    const rail = (dowels: number) =>
      bored({ top: 'rails', rows: 'none', panels: { 'rail-front': { farEnd: { dowels } } } });
    const most = places(inGroup(rail(9), 'right', 'rail-front/right')).map(([u]) => u!);
    expect(most.length).toBeGreaterThan(1);
    for (const [i, u] of most.entries()) expect(u).toBe(most[0]! + 32 * i);
    expect(rail(9).crowded).toMatchObject([{ joint: 'rail-front/right', count: { value: 9 }, room: most.length }]);
    expect(rail(most.length).crowded).toEqual([]);
    expect(places(inGroup(rail(1), 'rail-front', 'rail-front/right'))).toHaveLength(1);
  });

  test('a list may be in any order: cams stand at the two ends all the same', () => {
    const listed = (...dowels: number[]) => bored({ joint: 'cam-15', dowels: dowels.map(mm), rows: 'none' }).bores;
    expect(listed(300, 480, 60)).toEqual(listed(60, 300, 480));
    const cams = listed(300, 480, 60).filter(({ panel, purpose }) => panel === 'bottom' && purpose === 'cam');
    expect(new Set(cams.map(({ u }) => u))).toEqual(new Set([mm(60), mm(480)]));
  });

  test('a list for the whole carcass is used by both sides of every joint', () => {
    const map = bored({ dowels: [mm(60), mm(300)], rows: 'none', top: 'rails' });
    for (const [panel, group] of [
      ['bottom', 'bottom/left'],
      ['left', 'bottom/left'],
    ] as const)
      expect(places(inGroup(map, panel, group)).map(([u]) => u)).toEqual([60, 300]);
    expect(places(inGroup(map, 'rail-back', 'rail-back/left')).map(([u]) => u)).toEqual([60]);
    expect(map.unused).toEqual([]);
  });
});

describe('the pattern', () => {
  const line = { first: mm(53), pitch: mm(32), count: 21, nearest: 0, shared: null };
  const wish = { edge: mm(12), spacing: mm(160), stagger: false };
  const run = (
    from: number,
    to: number,
    other: Partial<typeof wish & typeof line & { reached: number }> = {},
  ): number[] =>
    patternPlaces(
      { ...line, reached: other.count ?? line.count, ...other },
      { ...wish, ...other, overlap: { from: mm(from), to: mm(to) } },
    ).map((y) => y / 1000);

  test.each([
    { what: 'keeps its distance from the ends', from: 0, to: 160, gives: [53, 117] },
    { what: 'stops at the last spindle', from: 0, to: 560, count: 4, gives: [53, 149] },
    // The rear of 541 is open by 296 behind 245; of twice seven places the last is 53 + 13 x 32 = 469.
    { what: 'goes on as far as heads reach', from: 0, to: 541, count: 7, reached: 15, gives: [53, 181, 341, 469] },
    {
      what: 'stops at the last spindle where the rear is held',
      from: 0,
      to: 340,
      count: 7,
      reached: 15,
      gives: [53, 149, 245],
    },
    { what: 'goes on past the last spindle where none reaches', from: 320, to: 420, count: 4, gives: [373, 405] },
    { what: 'takes two within reach where the usual ones are past the last', from: 640, to: 740, gives: [661, 693] },
    { what: 'starts behind a setback off the pitch, on the spindles', from: 20, to: 200, gives: [53, 181] },
    { what: 'starts behind a setback on the pitch, from there', from: 32, to: 200, gives: [85, 181] },
    { what: 'reaches in front of the first spindle where it is narrow', from: 0, to: 66, gives: [21, 53] },
    { what: 'finds one place where there is room for one', from: 0, to: 40, gives: [21] },
    { what: 'finds none where there is no room', from: 0, to: 20, gives: [] },
    // 53 would be 17 behind the front edge of a panel set back 36, where no stop of the head for ends can be set.
    { what: 'keeps to what the head for ends reaches', from: 36, to: 200, nearest: 20, gives: [85, 181] },
    { what: 'does not where it leaves one place only', from: 36, to: 112, nearest: 20, gives: [53, 85] },
  ])('$what', ({ from, to, gives, count = 21, reached = count, nearest = 0 }) => {
    expect(run(from, to, { count, reached, nearest: mm(nearest) })).toEqual(gives);
  });

  test('keeps neighbours within the spacing with as few as that takes', () => {
    for (let spacing = 32; spacing <= 400; spacing += 16) {
      const places = run(0, 720, { spacing: mm(spacing) });
      const gaps = places.slice(1).map((place, index) => place - places[index]!);
      expect(Math.max(...gaps)).toBeLessThanOrEqual(spacing);
      const [first, last] = [places[0]!, places.at(-1)!];
      const longest = Math.floor(spacing / 32) * 32;
      expect(gaps).toHaveLength(Math.ceil((last - first) / longest));
      // As even as whole pitches allow.
      expect(Math.max(...gaps) - Math.min(...gaps)).toBeLessThanOrEqual(32);
    }
  });

  test('staggered, stands beside the usual places and never on them', () => {
    for (let to = 120; to <= 720; to += 10) {
      const usual = run(0, to);
      const beside = run(0, to, { stagger: true });
      expect(beside.length).toBeGreaterThan(0);
      if (usual.length > 2 || usual[1]! - usual[0]! > 32) expect(beside.filter((y) => usual.includes(y))).toEqual([]);
    }
  });
});

describe('screws and cams', () => {
  test('a screw: clearance from outside, pilot in the end', () => {
    const map = bored({ joint: 'screw-7x50', rows: 'none' });
    const [clearance] = inGroup(map, 'left', 'bottom/left');
    expect(clearance).toMatchObject({
      face: 'outside',
      diameter: mm(7),
      depth: mm(16),
      through: true,
      purpose: 'clearance',
    });
    const [pilot] = inGroup(map, 'bottom', 'bottom/left');
    // 50 less 16 of the side, and 2 more.
    expect(pilot).toMatchObject({ face: 'reference-end', diameter: mm(5), depth: mm(36), purpose: 'pilot' });
  });

  test('a screw with a sunk head: the recess over the clearance hole, and the pilot as much deeper', () => {
    const map = bored({ joint: 'screw-sunk', rows: 'none' });
    const left = inGroup(map, 'left', 'bottom/left');
    const clearance = left.find(({ purpose }) => purpose === 'clearance');
    const recess = left.find(({ meets }) => meets === clearance!.id);
    expect(recess).toMatchObject({
      face: 'outside',
      u: clearance!.u,
      v: clearance!.v,
      diameter: mm(10),
      depth: mm(4),
      through: false,
      purpose: 'recess',
      meets: clearance!.id,
    });
    // 50 less the 12 under the head, and 2 more.
    expect(inGroup(map, 'bottom', 'bottom/left')[0]).toMatchObject({ purpose: 'pilot', depth: mm(40) });
  });

  test('a cam: stud, bolt and cam on one axis, a dowel between', () => {
    const map = bored({ joint: 'cam-15', rows: 'none' });
    const bottom = inGroup(map, 'bottom', 'bottom/right');
    expect(bottom.filter(({ purpose }) => purpose === 'cam').map(({ face, u, v }) => [face, u, v])).toEqual([
      ['outside', mm(53), mm(568 - 34)],
      ['outside', mm(501), mm(568 - 34)],
    ]);
    expect(bottom.filter(({ face }) => face === 'far-end').map(({ purpose, diameter }) => [purpose, diameter])).toEqual(
      [
        ['cam-bolt', mm(8)],
        ['dowel', mm(8)],
        ['dowel', mm(8)],
        ['cam-bolt', mm(8)],
      ],
    );
    expect(inGroup(map, 'right', 'bottom/right').map(({ purpose, depth }) => [purpose, depth])).toEqual([
      ['cam-stud', mm(11)],
      ['dowel', mm(12)],
      ['dowel', mm(12)],
      ['cam-stud', mm(11)],
    ]);
  });

  test('a joint of cams begins where both the cam and the thickest of dowel and bolt have room to the edge', () => {
    // Half a cam and a wall of 3; one and a half times the thickness of a bolt or dowel (12 for 8, 15 for 10).
    const sizes = {
      camDepth: mm(12.5),
      distance: mm(34),
      studDiameter: mm(5),
      studDepth: mm(11),
      boltDiameter: mm(8),
    };
    const around = (guide: number): Surroundings => ({
      glueGap: mm(1),
      leastWall: mm(3),
      named: (name) => dowel(name, guide, mm(30), mm(12)),
    });
    const edge = (camDiameter: number, guide: number | null): number =>
      cams.joint.edgeDistance(
        cam('cam', { ...sizes, camDiameter, guide: guide === null ? null : 'guide' }),
        around(guide ?? 0),
      );
    expect([edge(mm(15), null), edge(mm(18), null), edge(mm(20), null)]).toEqual([mm(12), mm(12), mm(13)]);
    // What is half a micrometre goes up: the wall must not be less.
    expect(edge(mm(20) + 1, null)).toBe(mm(13) + 1);
    expect([edge(mm(15), mm(10)), edge(mm(15), mm(6)), edge(mm(28), mm(10))]).toEqual([mm(15), mm(12), mm(17)]);
  });

  test('the cam of a side that stands on the bottom opens inside', () => {
    const map = bored({ joint: 'cam-15', bottom: 'under', rows: 'none' });
    const cams = inGroup(map, 'left', 'left/bottom').filter(({ purpose }) => purpose === 'cam');
    expect(cams.map(({ face, v }) => [face, v])).toEqual([
      ['inside', mm(34)],
      ['inside', mm(34)],
    ]);
  });
});

describe('where bores stand', () => {
  test('axes of the right side run to the right, into the wood', () => {
    const map = bored({ rows: 'none' });
    const right = map.carcass.panels.find(({ key }) => key === 'right')!;
    const [bore] = inGroup(map, 'right', 'bottom/right');
    expect(boreAxis(right, bore!)).toEqual({
      entry: { x: mm(584), y: mm(53), z: mm(8) },
      direction: '+x',
      length: mm(12),
    });
  });

  test('a through bore opens on both faces', () => {
    const map = bored({ joint: 'screw-7x50', rows: 'none' });
    const [left] = map.carcass.panels;
    const [bore] = inGroup(map, 'left', 'bottom/left');
    expect(mouths(left!, bore!).map(({ x }) => x)).toEqual([0, mm(16)]);
  });

  test('walls, negative where the bore runs out', () => {
    const map = bored({ rows: 'none', rowSetback: mm(2) });
    const bottom = map.carcass.panels.find(({ key }) => key === 'bottom')!;
    const [bore] = inGroup(map, 'bottom', 'bottom/left');
    expect(wallsBeside(bottom, bore!)).toEqual([
      { border: 'front', wall: mm(49) },
      { border: 'back', wall: mm(560 - 53 - 4) },
      { border: 'outside', wall: mm(4) },
      { border: 'inside', wall: mm(4) },
    ]);
    expect(wallUnder(bottom, bore!)).toBe(mm(568 - 19));
    const [left] = map.carcass.panels;
    const off: Bore = { ...bore!, face: 'inside', u: mm(2), diameter: 5001, depth: mm(17) };
    // Half of an odd diameter counts up.
    expect(wallsBeside(left!, off)[0]).toEqual({ border: 'front', wall: 2000 - 2501 });
    expect(wallUnder(left!, off)).toBe(mm(-1));
  });
});

describe('a list of places', () => {
  const ends = (map: ReturnType<typeof bored>, panel: string, face: string): readonly number[] =>
    map.bores.filter((one) => one.panel === face && one.group.startsWith(`${panel}/`)).map(({ u }) => u);

  test('has nothing on the very edges of what meets', () => {
    const rails = { top: 'rails', rows: 'none' } as const;
    const wide = { ...rails, railWidth: mm(60) };
    const { y } = bored(wide).carcass.panels.find(({ key }) => key === 'rail-back')!.pose.origin;
    const at = (u: number): readonly number[] =>
      ends(bored({ ...wide, panels: { left: { dowels: [u] } } }), 'rail-back', 'left');
    expect([at(y), at(y + mm(60))]).toEqual([[], []]);
    expect([at(y + 1), at(y + mm(60) - 1)]).toEqual([[y + 1], [y + mm(60) - 1]]);
  });
});
