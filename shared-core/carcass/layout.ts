import { layBays, type PlacedDivider } from './bays.js';
import type { Box } from './box.js';
import { placeDrawers, type PlacedDrawer } from './drawers/place.js';
import { placeBlind, type PlacedBlind } from './fronts/blind-panels.js';
import { placeDoors, placeFixed, type PlacedDoor, type PlacedFront } from './fronts/doors.js';
import { frontPlaces } from './fronts/places.js';
import type { Appliance, Bay } from './model.js';
import type { Problems } from './problems.js';
import { placeShelves, type PlacedShelf } from './shelves.js';
import type { SpindleLine } from './spindle-line.js';

/** The box and what stands in it, each thing in its place; the panels are made from it. */
export interface Layout {
  readonly box: Box;
  /** What its construction bores are placed on. */
  readonly line: SpindleLine;
  /** From left to right. */
  readonly dividers: readonly PlacedDivider[];
  readonly bays: readonly Bay[];
  /** From the bottom up. */
  readonly shelves: { readonly fixed: readonly PlacedShelf[]; readonly loose: readonly PlacedShelf[] };
  /** Bay by bay from the left, from the top down. */
  readonly doors: readonly PlacedDoor[];
  readonly drawers: readonly PlacedDrawer[];
  readonly fixedFronts: readonly PlacedFront[];
  readonly appliances: readonly Appliance[];
  readonly blindPanels: readonly PlacedBlind[];
  /** For what does not find its place. */
  readonly problems: Problems;
}

/** Finds a place for everything in the box; what has none is left out and told. */
export function layOut(box: Box, line: SpindleLine, problems: Problems): Layout {
  const { dividers, bays } = layBays(box, problems);
  const shelves = placeShelves(box, bays, problems);
  const places = frontPlaces(box, bays, problems);
  const doors = placeDoors(box, places, problems);
  const drawers = placeDrawers(box, places, shelves.fixed, problems);
  const fixedFronts = placeFixed(box, places, problems);
  const appliances = places.flatMap(({ kind, bay, z, cause }): readonly Appliance[] =>
    kind !== 'appliance' || z === null ? [] : [{ x: bay, z, place: cause.place, path: cause.path }],
  );
  const blindPanels = placeBlind(box, problems);
  return { box, line, dividers, bays, shelves, doors, drawers, fixedFronts, appliances, blindPanels, problems };
}
