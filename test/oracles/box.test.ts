import fc from 'fast-check';
import { afterEach, describe, expect, test } from 'vitest';
import { boreCarcass } from '../../shared-core/boring/bores.js';
import type { Bore } from '../../shared-core/boring/model.js';
import { buildCarcass } from '../../shared-core/carcass/build.js';
import type { Carcass } from '../../shared-core/carcass/model.js';
import { jobArbitrary, type Job } from '../core/arbitraries.js';
import { bracketOf, footOf, mm, shopOf, specOf, type CarcassWish } from '../core/specs.js';
import {
  assemble,
  boundsOf,
  clear,
  interferences,
  openingsAlongX,
  panelsHolding,
  pegFrom,
  pegInto,
  pinsIn,
  pinsUnder,
  standsClearOf,
  volumeInTheOpen,
} from './solids.js';

afterEach(clear);

function made({ spec, shop }: Pick<Job, 'spec' | 'shop'>): { carcass: Carcass; bores: readonly Bore[] } {
  const { carcass, problems } = buildCarcass(spec, shop);
  expect(problems).toEqual([]);
  return { carcass: carcass!, bores: boreCarcass(spec, carcass!, shop).bores };
}

/** Throws where the solids do not make a closed box of the size ordered. */
function expectClosedBox({ spec, shop }: Pick<Job, 'spec' | 'shop'>, carcass: Carcass, bores: readonly Bore[]): void {
  const assembly = assemble(carcass, bores, shop);
  expect(interferences(assembly)).toEqual([]);

  const box = boundsOf(assembly.panels.filter(({ name }) => name !== 'plinth' && !/^(?:end|filler)-/.test(name)));
  expect(box).toEqual({ min: [0, 0, 0], max: [spec.width.value, spec.depth.value, spec.height.value] });

  for (const connector of assembly.connectors)
    expect({ connector: connector.name, holes: panelsHolding(connector, assembly).length }).toEqual({
      connector: connector.name,
      holes: connector.kind === 'cam' || connector.kind === 'head' ? 1 : 2,
    });
  expect(volumeInTheOpen(assembly)).toBe(0);

  // No hole is left without its connector: one a pair of bores, one a cam, and one a head.
  const alone = new Set([
    'row',
    'cam',
    'recess',
    'spare',
    'bracket',
    'rail-socket',
    'foot',
    'plinth-clip',
    'angle',
    'angle-in-front',
  ]);
  const wanted = bores.filter(({ purpose }) => !alone.has(purpose)).length / 2;
  expect(assembly.connectors.filter(({ kind }) => kind !== 'cam' && kind !== 'head')).toHaveLength(wanted);
}

const isBored =
  (bores: readonly Bore[]) =>
  ({ upright }: { readonly upright: { readonly key: string } }): boolean =>
    bores.some(({ panel, purpose }) => panel === upright.key && purpose === 'rail-socket');

describe('the box as solids', () => {
  // In four tests, so that a slow machine does not meet the time limit of one.
  test.each([1, 2, 3, 4])('closes without interference, every dowel in two holes (%i of 4)', () => {
    fc.assert(
      fc.property(jobArbitrary, (job) => {
        const { carcass, bores } = made(job);
        expectClosedBox(job, carcass, bores);
        clear();
      }),
      { numRuns: 50 },
    );
  });

  test('carries every loose shelf on four pins in the holes of its rows', () => {
    let shelves = 0;
    fc.assert(
      fc.property(jobArbitrary, ({ shop, wish }) => {
        const job = { shop, spec: specOf(shop, { ...wish, rows: 'both', rowHoles: {}, fixedShelves: [] }) };
        const { carcass, bores } = made(job);
        const loose = carcass.panels.filter(({ role }) => role === 'loose-shelf');
        if (loose.length === 0) return;
        const assembly = assemble(carcass, [], shop);
        const pins = pinsIn(carcass, bores);
        for (const { key } of loose)
          expect([key, pinsUnder(key, assembly, pins)]).toEqual([key, expect.objectContaining({ length: 4 })]);
        shelves += loose.length;
        clear();
      }),
      { numRuns: 60 },
    );
    expect(shelves).toBeGreaterThan(20);
  });

  test('closes with a back that is left open in places, which nothing of it stands in', () => {
    let parts = 0;
    fc.assert(
      fc.property(
        jobArbitrary,
        fc.option(fc.integer({ min: 0, max: 100 }), { freq: 3 }),
        fc.option(fc.integer({ min: 0, max: 100 }), { freq: 3 }),
        ({ shop, wish }, from, to) => {
          if (from === null && to === null) return;
          const at = (percent: number) => Math.round((wish.height! * percent) / 100);
          const backOpen = { ...(from !== null && { from: at(from) }), ...(to !== null && { to: at(to) }) };
          const spec = specOf(shop, { ...wish, backOpen });
          const { carcass, problems } = buildCarcass(spec, shop);
          const whole = buildCarcass(specOf(shop, wish), shop).carcass!;
          const [backs, plain] = [carcass!, whole].map(({ panels }) => panels.filter(({ role }) => role === 'back'));
          if (plain!.length === 0) return;
          expect(problems).toHaveLength(backs!.length === 0 ? 1 : 0);
          if (backs!.length === 0) return;
          const { bores } = boreCarcass(spec, carcass!, shop);
          const assembly = assemble(carcass!, bores, shop);
          expect(interferences(assembly)).toEqual([]);
          const base = assembly.panels.find(({ name }) => name === 'left')!.box.min[2];
          const open = { from: base + (backOpen.from ?? -base), to: base + (backOpen.to ?? wish.height! * 2) };
          const here = assembly.panels.filter(({ name }) => name.startsWith('back'));
          if (open.from < open.to) {
            for (const { box } of here) expect(box.max[2] <= open.from || box.min[2] >= open.to).toBe(true);
            // What is not left open is closed as it would be.
            const full = assemble(whole, [], shop).panels.find(({ name }) => name === 'back')!.box;
            const closed = here.reduce((sum, { box }) => sum + box.max[2] - box.min[2], 0);
            const left = Math.max(0, Math.min(open.to, full.max[2]) - Math.max(open.from, full.min[2]));
            expect(closed).toBe(full.max[2] - full.min[2] - left);
          }
          parts += here.length;
          clear();
        },
      ),
      { numRuns: 40 },
    );
    expect(parts).toBeGreaterThan(20);
  });

  const constructions: Partial<CarcassWish>[] = (['dowel-8x30', 'screw-7x50', 'screw-sunk', 'cam-15'] as const).flatMap(
    (joint) =>
      (['grooved', 'rebated', 'applied', 'none'] as const).map((back, index) => ({
        joint,
        back,
        top: (['between', 'over', 'rails', 'over'] as const)[index]!,
        bottom: index % 2 === 0 ? ('under' as const) : ('between' as const),
        dividers: [{ at: mm(300) }],
        fixedShelves: [{ at: mm(296) }],
        looseShelves: [{ at: mm(488) }],
      })),
  );
  test.each(constructions)('closes with $joint, back $back, top $top, bottom $bottom', (wish) => {
    const shop = shopOf();
    const job = { shop, spec: specOf(shop, wish) };
    const { carcass, bores } = made(job);
    expectClosedBox(job, carcass, bores);
  });

  test.each([
    { referenceEnd: { joint: 'screw-7x50', dowels: 3 }, farEnd: { joint: 'cam-15' } },
    { referenceEnd: { dowels: [mm(60), mm(300)] }, farEnd: { joint: 'dowel-10x40', dowels: 1 } },
  ])('closes where single joints are held otherwise than the rest (%#)', (own) => {
    const shop = shopOf();
    const panels = {
      left: { dowels: [mm(53), mm(309)] },
      right: { dowels: [mm(53), mm(309)] },
      bottom: own,
      'shelf-1': own,
    };
    const wish = { panels, top: 'over', dividers: [{ at: mm(300) }], fixedShelves: [{ at: mm(296), bay: 1 }] } as const;
    const spec = specOf(shop, { ...wish, dowels: [mm(53), mm(309)] });
    const { carcass, bores } = made({ shop, spec });
    expectClosedBox({ shop, spec }, carcass, bores);
  });

  test('takes hanging brackets where they are set out from the finished box, clear of all else in it', () => {
    const hook = bracketOf('hook', [
      { fromTop: mm(40), fromBack: mm(70) },
      { fromTop: mm(90), fromBack: mm(54) },
    ]);
    let hung = 0;
    fc.assert(
      fc.property(jobArbitrary, ({ shop: plain, wish }) => {
        const shop = { ...plain, brackets: new Map([['hook', hook]]) };
        const spec = specOf(shop, { ...wish, brackets: 'hook', aboveFloor: mm(1400), rows: 'none' });
        const { carcass, bores } = made({ shop, spec });
        const assembly = assemble(carcass, bores, shop);
        const sides = assembly.panels.filter(({ name }) => name === 'left' || name === 'right');
        const top = sides[0]!.box.max[2];
        if (bores.every(({ purpose }) => purpose !== 'bracket')) return;
        for (const [side, inwards] of [
          [sides[0]!, 1],
          [sides[1]!, -1],
        ] as const)
          for (const { fromTop, fromBack } of hook.holes) {
            const face = inwards === 1 ? side.box.max[0] : side.box.min[0];
            const at = [face, side.box.max[1] - fromBack, top - fromTop] as const;
            const peg = (longer: number) => pegFrom(at, -inwards, hook.diameter, hook.depth + longer);
            expect(standsClearOf(peg(0), [side]), `${side.name} ${fromTop}`).toBe(true);
            expect(standsClearOf(peg(mm(1)), [side])).toBe(false);
          }
        hung += 1;
        clear();
      }),
      { numRuns: 25 },
    );
    expect(hung).toBeGreaterThan(5);
  });

  test('takes wardrobe rails of the length that is listed, and their screws go into holes of both uprights', () => {
    let rails = 0;
    fc.assert(
      fc.property(jobArbitrary, ({ shop: plain, wish }) => {
        const tube = shopOf().wardrobeRails.get('tube')!;
        const shop = {
          ...plain,
          wardrobeRails: new Map([['tube', tube]]),
          habits: { ...plain.habits, wardrobeRail: 'tube' },
        };
        const at = Math.round((wish.height ?? mm(720)) / 2) + 137;
        const spec = specOf(shop, { ...wish, wardrobeRails: [at], rows: 'none', fixedShelves: [], looseShelves: [] });
        const { carcass, problems } = buildCarcass(spec, shop);
        expect(problems).toEqual([]);
        const { bores, wardrobeRails } = boreCarcass(spec, carcass!, shop);
        const { panels } = assemble(carcass!, bores, shop);
        for (const { length, y, z } of wardrobeRails.filter(({ sockets }) => sockets.every(isBored(bores)))) {
          const named = (start: string) => panels.filter(({ name }) => name.startsWith(start));
          const walls = [...named('left'), ...named('right'), ...named('divider')];
          const opening = openingsAlongX(walls, y, z).find((one) => one.to - one.from === length + 2 * tube.play);
          expect(opening).toBeDefined();
          for (const [x, along] of [
            [opening!.from, -1],
            [opening!.to, 1],
          ] as const)
            for (const off of [-tube.spacing / 2, tube.spacing / 2]) {
              const screw = (longer: number) => pegFrom([x, y, z + off], along, tube.diameter, tube.depth + longer);
              expect(standsClearOf(screw(0), walls)).toBe(true);
              // Two that meet in a divider have one hole through it.
              if (x === walls[0]!.box.max[0] || x === walls[1]!.box.min[0])
                expect(standsClearOf(screw(mm(1)), walls)).toBe(false);
            }
          rails += 1;
        }
        clear();
      }),
      { numRuns: 25 },
    );
    expect(rails).toBeGreaterThan(5);
  });

  test('stands on feet that are set out from its outside, each clip before its foot', () => {
    const foot = footOf('stub');
    let stood = 0;
    fc.assert(
      fc.property(jobArbitrary, ({ shop: plain, wish }) => {
        const shop = { ...plain, feet: new Map([['stub', foot]]) };
        const spec = specOf(shop, { ...wish, plinth: mm(110), feet: 'stub', rows: 'none' });
        const { carcass, problems } = buildCarcass(spec, shop);
        if (problems.length > 0) return;
        const { bores, feet } = boreCarcass(spec, carcass!, shop);
        if (feet.some(({ isOn }) => !isOn)) return;
        const { panels } = assemble(carcass!, bores, shop);
        const [bottom, plinth] = ['bottom', 'plinth'].map((name) => panels.find((one) => one.name === name)!);
        const inner = feet.length / 2;
        for (const row of [0, 1])
          for (let i = 0; i < inner; i += 1) {
            const x = foot.fromSide + Math.round(((spec.width.value - 2 * foot.fromSide) * i) / (inner - 1));
            const y = row === 0 ? foot.fromFront : spec.depth.value - foot.fromBack;
            const peg = (longer: number) =>
              pegInto([x, y, bottom!.box.min[2]], '+z', foot.diameter, foot.depth + longer);
            expect(standsClearOf(peg(0), [bottom!])).toBe(true);
            expect(standsClearOf(peg(mm(1)), [bottom!])).toBe(false);
            const at = [x, plinth!.box.max[1], plinth!.box.max[2] - foot.clip!.fromTop] as const;
            const screw = (longer: number) => pegInto(at, '-y', foot.clip!.diameter, foot.clip!.depth + longer);
            expect(standsClearOf(screw(0), [plinth!])).toBe(true);
            expect(standsClearOf(screw(mm(0.5)), [plinth!])).toBe(
              plinth!.box.max[1] - plinth!.box.min[1] <= foot.clip!.depth,
            );
          }
        stood += 1;
        clear();
      }),
      { numRuns: 25 },
    );
    expect(stood).toBeGreaterThan(5);
  });
});

describe('the check itself', () => {
  const shop = shopOf();
  const job = { shop, spec: specOf(shop, { fixedShelves: [{ at: mm(296) }], top: 'rails', rows: 'none' }) };

  test.each([
    ['u', mm(1)],
    ['v', mm(-0.1)],
  ] as const)('fails where any one construction bore stands off along %s by %i micrometres', (along, by) => {
    const { carcass, bores } = made(job);
    expect(bores.length).toBeGreaterThan(40);
    for (const moved of bores) {
      const wrong = bores.map((bore) => (bore === moved ? { ...bore, [along]: bore[along] + by } : bore));
      expect(() => expectClosedBox(job, carcass, wrong)).toThrow();
      clear();
    }
  });

  test('fails where a bore is too shallow for its dowel, or one is missing', () => {
    const { carcass, bores } = made(job);
    const first = bores.find(({ purpose, face }) => purpose === 'dowel' && face === 'inside')!;
    const shallow = bores.map((bore) => (bore === first ? { ...bore, depth: bore.depth - mm(1) } : bore));
    expect(() => expectClosedBox(job, carcass, shallow)).toThrow();
    expect(() =>
      expectClosedBox(
        job,
        carcass,
        bores.filter((bore) => bore !== first),
      ),
    ).toThrow();
  });

  test('fails where a panel is too long, too short, or off its place', () => {
    const { carcass, bores } = made(job);
    const change = (key: string, how: (panel: Carcass['panels'][number]) => Carcass['panels'][number]): Carcass => ({
      ...carcass,
      panels: carcass.panels.map((panel) => (panel.key === key ? how(panel) : panel)),
    });
    for (const by of [-100, 100]) {
      expect(() =>
        expectClosedBox(
          job,
          change('bottom', (panel) => ({ ...panel, length: panel.length + by })),
          bores,
        ),
      ).toThrow();
      expect(() =>
        expectClosedBox(
          job,
          change('shelf-1', (panel) => ({
            ...panel,
            pose: { ...panel.pose, origin: { ...panel.pose.origin, z: panel.pose.origin.z + by } },
          })),
          bores,
        ),
      ).toThrow();
    }
  });
});
