import { companionsOf } from '../fittings/read.js';
import { NO_ANGLE, NO_BAND, NO_BRACKET, NO_FOOT, NO_HINGE, NO_PULL } from '../shop/habits.js';
import type { Shop } from '../shop/model.js';
import type { JobCarcass } from './model.js';

/**
 * True where the shop has all that a carcass names, with figures. False where something is known by its name alone, since then
 * every size that follows would be a guess. A name that the shop truly has not is no such thing: a usual one stands in for it.
 */
export function hasFigures(carcass: JobCarcass, shop: Shop): boolean {
  const { habits, unread } = shop;
  const panels = [...carcass.panels.values()];
  const listed = [carcass.dividers, carcass.fixedShelves, carcass.looseShelves].flatMap((some) =>
    some?.as === 'list' ? some.items.map(({ value }) => value) : [],
  );
  const parts = [...listed, ...panels];
  const boards = [
    carcass.board,
    carcass.doors.board,
    carcass.drawers.board,
    carcass.endPanels.board,
    carcass.fillers.board,
    carcass.blind.board,
    ...parts.map(({ board }) => board),
  ].map((one) => one?.value ?? carcass.board.value);
  const backs = [carcass.drawers.bottomBoard, ...(carcass.back.how.value === 'none' ? [] : [carcass.back.board])].map(
    ({ value }) => value,
  );
  const bands = [
    carcass.band,
    carcass.doors.band ?? carcass.band,
    carcass.drawers.band ?? carcass.band,
    carcass.endPanels.band ?? carcass.band,
    carcass.fillers.band ?? carcass.band,
    carcass.blind.band ?? carcass.band,
    ...panels.flatMap((panel) => Object.values(panel.bands?.value ?? {})),
  ].map(({ value }) => value);
  const fittings = fittingsOf(carcass);
  const companions = fittings.flatMap((name) => {
    const fitting = shop.fittings.get(name);
    return fitting === undefined ? [] : companionsOf(fitting);
  });
  const have =
    (known: ReadonlyMap<string, unknown>, waiting: { has(name: string): boolean } | undefined, usual: string) =>
    (name: string): boolean =>
      known.has(name) || (waiting?.has(name) !== true && shop.standsIn !== true && waiting?.has(usual) !== true);
  const single = [
    [carcass.doors.hinge.value, NO_HINGE, shop.hinges, unread?.hinges, habits.hinge],
    [carcass.feet.value, NO_FOOT, shop.feet, unread?.feet, habits.foot],
    [carcass.angles.value, NO_ANGLE, shop.angles, unread?.angles, habits.angle],
    [carcass.brackets.value, NO_BRACKET, shop.brackets, unread?.brackets, habits.bracket],
  ] as const;
  const machines = Object.values(carcass.machines).flatMap((name) => (name === null ? [] : [name.value]));
  if (shop.standsIn === true && !machines.every((name) => shop.machines.has(name))) return false;
  return (
    boards.every(have(shop.boards, unread?.boards, habits.board)) &&
    backs.every(have(shop.boards, unread?.boards, habits.backBoard)) &&
    bands.filter((name) => name !== NO_BAND).every(have(shop.bands, unread?.bands, habits.band)) &&
    have(shop.slides, unread?.slides, habits.slide)(carcass.drawers.slide.value) &&
    pullsOf(carcass)
      .filter((name) => name !== NO_PULL)
      .every(have(shop.pulls, unread?.pulls, habits.pull)) &&
    single.every(([name, none, known, waiting, usual]) => name === none || have(known, waiting, usual)(name)) &&
    (carcass.wardrobeRails?.value ?? [])
      .map(({ value: { rail } }) => rail?.value ?? habits.wardrobeRail)
      .every(have(shop.wardrobeRails, unread?.wardrobeRails, habits.wardrobeRail)) &&
    [...fittings, ...companions].every(have(shop.fittings, unread?.fittings, habits.joint))
  );
}

function pullsOf({ pulls, panels, fronts }: JobCarcass): readonly string[] {
  return [
    pulls.pull,
    pulls.onDrawers,
    ...[...panels.values()].map(({ pull }) => pull),
    ...(fronts?.value ?? []).map(({ value }) => value.pull),
  ].flatMap((one) => one?.value ?? []);
}

function fittingsOf({ joint: usual, drawers, panels }: JobCarcass): readonly string[] {
  return [
    usual,
    drawers.joint,
    ...[...panels.values()].flatMap(({ joint, referenceEnd, farEnd }) => [
      joint,
      referenceEnd?.value.joint,
      farEnd?.value.joint,
    ]),
  ].map((one) => one?.value ?? usual.value);
}
