import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boreCarcass } from '../../../shared-core/boring/bores.js';
import { boreCollisions, grooveCollisions } from '../../../shared-core/boring/collisions.js';
import { matings } from '../../../shared-core/boring/matings.js';
import type { Bore } from '../../../shared-core/boring/model.js';
import { wallsBeside, wallUnder } from '../../../shared-core/boring/walls.js';
import { buildCarcass } from '../../../shared-core/carcass/build.js';
import { jobArbitrary, type Job } from '../arbitraries.js';
import { specOf } from '../specs.js';

const RUNS = 150;

function made({ spec, shop }: Pick<Job, 'spec' | 'shop'>) {
  const { carcass, problems } = buildCarcass(spec, shop);
  expect(problems).toEqual([]);
  return { carcass: carcass!, boreMap: boreCarcass(spec, carcass!, shop) };
}

describe('bores of any carcass that can be built', () => {
  test('every bore of every joint has a mate, and they fit', () => {
    fc.assert(
      fc.property(jobArbitrary, (job) => {
        const { carcass, boreMap } = made(job);
        for (const { joint, mates, unmatchedInFace, unmatchedInEnd } of matings(carcass, boreMap)) {
          expect({ joint: joint.id, unmatchedInFace, unmatchedInEnd }).toEqual({
            joint: joint.id,
            unmatchedInFace: [],
            unmatchedInEnd: [],
          });
          expect(mates.length).toBeGreaterThan(0);
          for (const { face, depthSum, faults } of mates) {
            expect(faults).toEqual([]);
            const fitting = job.shop.fittings.get(face.fitting!)!;
            if (fitting.kind === 'dowel') expect(depthSum).toBe(fitting.length + job.shop.habits.glueGap);
          }
        }
      }),
      { numRuns: RUNS },
    );
  });

  test('no bore meets another or a groove, or leaves its panel; ids are unique, lengths whole', () => {
    fc.assert(
      fc.property(jobArbitrary, (job) => {
        const { carcass, boreMap } = made(job);
        expect(boreCollisions(carcass, boreMap, 1000)).toEqual([]);
        expect(grooveCollisions(carcass, boreMap, 1000)).toEqual([]);
        const panels = new Map(carcass.panels.map((panel) => [panel.key, panel]));
        for (const bore of boreMap.bores) {
          const panel = panels.get(bore.panel)!;
          expect(Math.min(...wallsBeside(panel, bore).map(({ wall }) => wall))).toBeGreaterThan(0);
          const under = wallUnder(panel, bore);
          if (under !== null) expect(under).toBeGreaterThan(0);
          const { u, v, diameter, depth } = bore;
          for (const length of [u, v, diameter, depth]) expect(Number.isSafeInteger(length)).toBe(true);
        }
        expect(new Set(boreMap.bores.map((bore) => bore.id)).size).toBe(boreMap.bores.length);
      }),
      { numRuns: RUNS },
    );
  });
});

/** A bore without the words that only tell where it came from. */
const bare = ({ face, u, v, diameter, depth, through, purpose }: Bore) => ({
  face,
  u,
  v,
  diameter,
  depth,
  through,
  purpose,
});

describe('mirror', () => {
  test('the mirror image of a left side is the right side', () => {
    fc.assert(
      fc.property(jobArbitrary, ({ shop, wish }) => {
        // Only what stands between them, and both of one board, is the same for both.
        const even = { ...wish, dividers: [], fixedShelves: everyBay(wish.fixedShelves), looseShelves: [], panels: {} };
        const { boreMap } = made({ shop, spec: specOf(shop, even) });
        const of = (panel: string) => boreMap.bores.filter((bore) => bore.panel === panel).map(bare);
        expect(of('right')).toEqual(of('left'));
        expect(of('left').length).toBeGreaterThan(0);
      }),
      { numRuns: RUNS },
    );
  });

  test('a carcass seen in a mirror has the bores of the first, left for right', () => {
    fc.assert(
      fc.property(jobArbitrary, ({ shop, wish }) => {
        // Shelves in one bay only: staggering counts bays from the left. Halves are rounded down, so odd ones mirror by one more.
        const plain = {
          ...wish,
          fixedShelves: everyBay(wish.fixedShelves).map((shelf) => ({ ...shelf, bay: 1 })),
          panels: {},
        };
        const width = wish.width!;
        const bays = (wish.dividers ?? []).length + 1;
        const mirrored = {
          ...plain,
          dividers: [...(wish.dividers ?? [])].reverse().map((divider) => {
            const odd = shop.boards.get(divider.board!)!.thickness % 2;
            return { ...divider, at: width - divider.at - odd };
          }),
          fixedShelves: plain.fixedShelves.map((shelf) => ({ ...shelf, bay: bays })),
          rowHoles: {
            ...wish.rowHoles,
            ...(wish.rowHoles?.bays && { bays: wish.rowHoles.bays.map((bay) => bays + 1 - bay) }),
          },
          looseShelves: (wish.looseShelves ?? []).map((shelf) =>
            shelf.bay === undefined ? shelf : { ...shelf, bay: bays + 1 - shelf.bay },
          ),
        };
        const of = (spec: Job['spec'], panel: string) =>
          made({ shop, spec })
            .boreMap.bores.filter((bore) => bore.panel === panel)
            .map(bare);
        const [seen, real] = [specOf(shop, mirrored), specOf(shop, plain)];
        expect(of(seen, 'right')).toEqual(of(real, 'left'));
        expect(of(seen, 'left')).toEqual(of(real, 'right'));
      }),
      { numRuns: RUNS },
    );
  });
});

function everyBay(shelves: Job['wish']['fixedShelves']) {
  return (shelves ?? []).map(({ at, board, setback }) => ({
    at,
    ...(board !== undefined && { board }),
    ...(setback !== undefined && { setback }),
  }));
}

describe('order', () => {
  test('bores do not depend on the order of shelves and dividers in the list', () => {
    fc.assert(
      fc.property(jobArbitrary, fc.infiniteStream(fc.nat()), ({ shop, wish }, chance) => {
        const shuffled = {
          ...wish,
          dividers: shuffle(wish.dividers ?? [], chance),
          fixedShelves: shuffle(wish.fixedShelves ?? [], chance),
          looseShelves: shuffle(wish.looseShelves ?? [], chance),
        };
        const first = made({ shop, spec: specOf(shop, wish) });
        const second = made({ shop, spec: specOf(shop, shuffled) });
        expect(second.boreMap.bores.map(bare)).toEqual(first.boreMap.bores.map(bare));
        const sizes = ({ carcass }: typeof first) =>
          carcass.panels.map(({ pose, length, width, cutLength, cutWidth }) => ({
            pose,
            length,
            width,
            cutLength,
            cutWidth,
          }));
        expect(sizes(second)).toEqual(sizes(first));
      }),
      { numRuns: RUNS },
    );
  });
});

function shuffle<T>(items: readonly T[], chance: fc.Stream<number>): readonly T[] {
  const keyed = items.map((item) => ({ item, key: chance.next().value as number }));
  return keyed.sort((a, b) => a.key - b.key).map(({ item }) => item);
}
