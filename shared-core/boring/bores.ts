import type { Carcass } from '../carcass/model.js';
import type { CarcassSpec } from '../carcass/spec.js';
import type { Shop } from '../shop/model.js';
import { placeAngles } from '../hung/angles.js';
import { hangOnBrackets } from '../hung/brackets.js';
import { standOnFeet } from '../hung/feet.js';
import { hangDoors } from '../hung/hang.js';
import { placePulls } from '../hung/pulls.js';
import { placeWardrobeRails } from '../hung/wardrobe-rails.js';
import { runDrawers } from '../hung/slides.js';
import { boreAngles, keepClearOf } from './angles.js';
import { boreBrackets } from './brackets.js';
import { boreJoints } from './construction.js';
import { boreFeet } from './feet.js';
import { boreFrontScrews } from './front-screws.js';
import { boreHinges } from './hinges.js';
import { borePulls } from './pulls.js';
import { boreSlides } from './slides.js';
import type { Bore, BoreMap, Surface } from './model.js';
import { boreWardrobeRails } from './wardrobe-rails.js';
import { layRows, rowBores } from './rows.js';

const SURFACES: readonly Surface[] = ['inside', 'outside', 'reference-end', 'far-end'];

/**
 * Every bore of every panel, in panel frames (see `Bore`), in whole micrometres. The only place where bores are made.
 * The order is that of the panels, then of surface and place, so it does not depend on the order of items in the job.
 */
export function boreCarcass(spec: CarcassSpec, carcass: Carcass, shop: Shop): BoreMap {
  const rows = layRows(spec, carcass, shop);
  const joints = boreJoints(spec, carcass, shop);
  const holes = rows.flatMap(rowBores);
  const running = runDrawers(carcass);
  const hung = hangDoors(spec, carcass, shop, running);
  const pulls = placePulls(spec, carcass, shop, running);
  const brackets = hangOnBrackets(spec, carcass, shop);
  const wardrobeRails = placeWardrobeRails(spec, carcass, shop);
  const feet = standOnFeet(spec, carcass, shop);
  const hanging = [
    ...boreFeet(feet),
    ...boreWardrobeRails(wardrobeRails, holes),
    ...boreBrackets(brackets, holes),
    ...boreHinges(hung, holes),
    ...boreSlides(running, holes),
    ...boreFrontScrews(running, shop),
    ...borePulls(pulls),
  ];
  const angles = placeAngles(spec, carcass, shop, {
    taken: [
      ...running.flatMap(({ slides }) => slides.map(({ body }) => body)),
      ...hung.flatMap(({ hinges }) => hinges.map(({ body }) => body)),
      ...wardrobeRails.map(({ body }) => body),
    ],
    isFree: keepClearOf([...joints.bores, ...holes, ...hanging], shop.habits.leastWall),
  });
  const order = new Map(carcass.panels.map((panel, index) => [panel.key, index]));
  const byPlace = (a: Bore, b: Bore): number =>
    order.get(a.panel)! - order.get(b.panel)! ||
    SURFACES.indexOf(a.face) - SURFACES.indexOf(b.face) ||
    a.v - b.v ||
    a.u - b.u ||
    (a.id < b.id ? -1 : 1);
  const bores = [...joints.bores, ...holes, ...hanging, ...boreAngles(angles, holes, shop)].sort(byPlace);
  return {
    rows,
    bores,
    hung,
    running,
    pulls,
    brackets,
    wardrobeRails,
    feet,
    angles,
    unused: joints.unused,
    crowded: joints.crowded,
  };
}
