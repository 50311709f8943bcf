import { matings, type Mating } from '../../boring/matings.js';
import { kindOf } from '../../fittings/kinds.js';
import type { Reader } from '../../length/reader.js';
import type { Shop } from '../../shop/model.js';
import type { BuiltCarcass } from '../built.js';
import { tell } from '../../words/message.js';
import { asItIs, type Told } from '../../words/told.js';
import { UNNAMED, column, figuresColumn, type Paper } from '../paper.js';
import { HEADS, say, THINGS } from './messages.js';

/** A loose shelf lies on two pins at each end, and across a corner on one more in that; common practice, no source. */
const PINS_OF_A_SHELF = 4;

/** A thing to have ready, and how many of it each carcass takes. */
export interface Needed {
  readonly name: Told;
  readonly about: Told | '';
  readonly each: ReadonlyMap<string, number>;
}

/** What is to be bought or taken from the shelf so that the boxes can be put together. Screws of backs are not counted. */
export function hardwareNeeded(carcasses: readonly BuiltCarcass[], shop: Shop, reader: Reader): readonly Needed[] {
  const counts = new Map<string, Map<string, number>>();
  const add = (thing: string, carcass: string, count: number): void => {
    const each = counts.get(thing) ?? new Map<string, number>();
    counts.set(thing, each.set(carcass, (each.get(carcass) ?? 0) + count));
  };
  for (const one of carcasses) {
    for (const [fitting, count] of fittingsIn(one)) add(fitting, one.name, count * one.carcass.count);
    const shelves = one.carcass.panels.filter(({ role }) => role === 'loose-shelf').length;
    const inCorner = one.carcass.panels.filter(
      ({ key, role }) => role === 'corner-back' && one.boring.rows.some(({ panel }) => panel === key),
    ).length;
    const pins = shelves * (PINS_OF_A_SHELF + inCorner) * one.carcass.count;
    if (pins > 0) add(THINGS.pins, one.name, pins);
    const screws = one.boring.bores.filter(({ purpose }) => purpose === 'front-clearance').length * one.carcass.count;
    if (screws > 0) add(THINGS.frontScrews, one.name, screws);
  }
  const listed = [...counts].map(([name, each]) => ({ name: asItIs(name), about: aboutOf(name, shop, reader), each }));
  return [
    ...listed,
    ...hingesNeeded(carcasses, reader),
    ...slidesNeeded(carcasses, reader),
    ...pullsNeeded(carcasses, reader),
    ...bracketsNeeded(carcasses, reader),
    ...wardrobeRailsNeeded(carcasses, reader),
    ...feetNeeded(carcasses, reader),
    ...anglesNeeded(carcasses, reader),
  ];
}

/** Hinges by name, arm and plate, since they are bought so. */
function hingesNeeded(carcasses: readonly BuiltCarcass[], reader: Reader): readonly Needed[] {
  const sorts = new Map<string, { readonly name: Told; readonly about: Told; readonly each: Map<string, number> }>();
  for (const { name, carcass, boring } of carcasses)
    for (const { hinge, reach, hinges } of boring.hung) {
      if (reach === null || hinges.length === 0) continue;
      const key = `${hinge.name} ${reach.arm} ${reach.plate}`;
      const sort = sorts.get(key) ?? {
        name: asItIs(hinge.name),
        about: tell(say.hinge(reach), reader),
        each: new Map<string, number>(),
      };
      sorts.set(key, sort);
      sort.each.set(name, (sort.each.get(name) ?? 0) + hinges.length * carcass.count);
    }
  return [...sorts.values()];
}

/** Pairs of slides by name and length, since they are bought so. */
function slidesNeeded(carcasses: readonly BuiltCarcass[], reader: Reader): readonly Needed[] {
  const sorts = new Map<string, { readonly name: Told; readonly about: Told; readonly each: Map<string, number> }>();
  for (const { name, carcass } of carcasses)
    for (const { slide, length } of carcass.drawers) {
      const key = `${slide.name} ${length.length}`;
      const sort = sorts.get(key) ?? {
        name: asItIs(slide.name),
        about: tell(say.slides({ long: length.length, rating: slide.rating }), reader),
        each: new Map<string, number>(),
      };
      sorts.set(key, sort);
      sort.each.set(name, (sort.each.get(name) ?? 0) + carcass.count);
    }
  return [...sorts.values()];
}

/** Pulls by name and by how much wood their screws go through, since screws are bought so. */
function pullsNeeded(carcasses: readonly BuiltCarcass[], reader: Reader): readonly Needed[] {
  const sorts = new Map<string, { readonly name: Told; readonly about: Told; readonly each: Map<string, number> }>();
  for (const { name, carcass, boring } of carcasses)
    for (const { pull, front, holes, boxHoles } of boring.pulls) {
      const inBox = (boxHoles?.holes.length ?? 0) > 0 ? boxHoles!.boxFront.thickness : 0;
      const through = front.thickness + inBox;
      const about =
        pull.depth === null
          ? say.pulls({ screws: holes.length, through })
          : say.pullsBlind({ screws: holes.length, depth: pull.depth });
      const key = `${pull.name} ${pull.depth === null ? through : ''}`;
      const sort = sorts.get(key) ?? {
        name: asItIs(pull.name),
        about: tell(about, reader),
        each: new Map<string, number>(),
      };
      sorts.set(key, sort);
      sort.each.set(name, (sort.each.get(name) ?? 0) + carcass.count);
    }
  return [...sorts.values()];
}

/** Brackets one by one, with what a pair of them carries. */
function bracketsNeeded(carcasses: readonly BuiltCarcass[], reader: Reader): readonly Needed[] {
  const sorts = new Map<string, { readonly name: Told; readonly about: Told; readonly each: Map<string, number> }>();
  for (const { name, carcass, boring } of carcasses)
    for (const { bracket } of boring.brackets) {
      const sort = sorts.get(bracket.name) ?? {
        name: asItIs(bracket.name),
        about: tell(say.brackets({ rating: bracket.rating }), reader),
        each: new Map<string, number>(),
      };
      sorts.set(bracket.name, sort);
      sort.each.set(name, (sort.each.get(name) ?? 0) + carcass.count);
    }
  return [...sorts.values()];
}

/** Wardrobe rails by name and length, since they are cut so. */
function wardrobeRailsNeeded(carcasses: readonly BuiltCarcass[], reader: Reader): readonly Needed[] {
  const sorts = new Map<string, { readonly name: Told; readonly about: Told; readonly each: Map<string, number> }>();
  for (const { name, carcass, boring } of carcasses)
    for (const { rail, length } of boring.wardrobeRails) {
      const key = `${rail.name} ${length}`;
      const sort = sorts.get(key) ?? {
        name: asItIs(rail.name),
        about: tell(say.wardrobeRails({ long: length }), reader),
        each: new Map<string, number>(),
      };
      sorts.set(key, sort);
      sort.each.set(name, (sort.each.get(name) ?? 0) + carcass.count);
    }
  return [...sorts.values()];
}

/** Feet by the height that they are set to, and whether they hold a clip. */
function feetNeeded(carcasses: readonly BuiltCarcass[], reader: Reader): readonly Needed[] {
  const sorts = new Map<string, { readonly name: Told; readonly about: Told; readonly each: Map<string, number> }>();
  for (const { name, spec, carcass, boring } of carcasses)
    for (const { foot, clip } of boring.feet) {
      const high = spec.plinth.value;
      const key = `${foot.name} ${high} ${clip === null ? '' : 'clip'}`;
      const sort = sorts.get(key) ?? {
        name: asItIs(foot.name),
        about: tell(say.feet({ high, hasClip: clip !== null }), reader),
        each: new Map<string, number>(),
      };
      sorts.set(key, sort);
      sort.each.set(name, (sort.each.get(name) ?? 0) + carcass.count);
    }
  return [...sorts.values()];
}

/** Angles one by one, with the screws of both legs. */
function anglesNeeded(carcasses: readonly BuiltCarcass[], reader: Reader): readonly Needed[] {
  const sorts = new Map<string, { readonly name: Told; readonly about: Told; readonly each: Map<string, number> }>();
  for (const { name, carcass, boring } of carcasses)
    for (const { angle, holes, frontHoles } of boring.angles) {
      const sort = sorts.get(angle.name) ?? {
        name: asItIs(angle.name),
        about: tell(say.angles({ screws: holes.length + frontHoles.length }), reader),
        each: new Map<string, number>(),
      };
      sorts.set(angle.name, sort);
      sort.each.set(name, (sort.each.get(name) ?? 0) + carcass.count);
    }
  return [...sorts.values()];
}

function aboutOf(name: string, shop: Shop, reader: Reader): Told | '' {
  if (name === THINGS.pins) return tell(say.pins({ diameter: shop.habits.rowDiameter }), reader);
  if (name === THINGS.frontScrews)
    return tell(
      say.frontScrews({ pilot: shop.habits.frontScrews.pilot, depth: shop.habits.frontScrews.depth }),
      reader,
    );
  const fitting = shop.fittings.get(name);
  return fitting === undefined ? '' : tell(kindOf(fitting).described(fitting), reader);
}

/** Fittings by name: one for each two bores that open into each other. */
export function fittingsIn({ carcass, boring }: Pick<BuiltCarcass, 'carcass' | 'boring'>): ReadonlyMap<string, number> {
  return fittingsOf(matings(carcass, boring));
}

/** The same of some joints alone. */
export function fittingsOf(joined: readonly Mating[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const { mates } of joined) {
    for (const { end } of mates) {
      if (end.fitting !== null) counts.set(end.fitting, (counts.get(end.fitting) ?? 0) + 1);
    }
  }
  return counts;
}

export function hardwarePaper(needed: readonly Needed[], title: Told): Paper {
  return {
    title,
    blocks: [
      {
        kind: 'table',
        columns: [figuresColumn(HEADS.count), column(HEADS.what), UNNAMED, column(HEADS.for)],
        rows: needed.map(({ name, about, each }) => [
          asItIs(String([...each.values()].reduce((sum, count) => sum + count, 0))),
          name,
          about,
          asItIs([...each].map(([carcass, count]) => `${carcass} ${count}`).join(', ')),
        ]),
      },
    ],
  };
}
