import { companionsOf } from '../fittings/read.js';
import { NO_BAND } from '../shop/habits.js';
import type { Shop } from '../shop/model.js';
import type { CarcassSpec } from './model.js';

/**
 * True where the shop has all that a carcass names, with figures. False where something is known by its name alone, since then
 * every size that follows would be a guess. A name that the shop truly has not is no such thing: a usual one stands in for it.
 */
export function hasFigures(spec: CarcassSpec, shop: Shop): boolean {
  const { habits, unread } = shop;
  const panels = [...spec.panels.values()];
  const parts = [...spec.dividers, ...spec.fixedShelves, ...spec.looseShelves, ...panels];
  const boards = [spec.board, ...parts.map(({ board }) => board)].map((one) => one?.value ?? spec.board.value);
  const backs = spec.back.how.value === 'none' ? [] : [spec.back.board.value];
  const bands = [spec.band, ...panels.flatMap((panel) => Object.values(panel.bands))].map(({ value }) => value);
  const fittings = [spec.joint, ...panels.map(({ joint }) => joint)].map((one) => one?.value ?? spec.joint.value);
  const companions = fittings.flatMap((name) => {
    const fitting = shop.fittings.get(name);
    return fitting === undefined ? [] : companionsOf(fitting);
  });
  const have =
    (known: ReadonlyMap<string, unknown>, waiting: { has(name: string): boolean } | undefined, usual: string) =>
    (name: string): boolean =>
      known.has(name) || (waiting?.has(name) !== true && shop.standsIn !== true && waiting?.has(usual) !== true);
  const machines = Object.values(spec.machines).flatMap((name) => (name === null ? [] : [name.value]));
  if (shop.standsIn === true && !machines.every((name) => shop.machines.has(name))) return false;
  return (
    boards.every(have(shop.boards, unread?.boards, habits.board)) &&
    backs.every(have(shop.boards, unread?.boards, habits.backBoard)) &&
    bands.filter((name) => name !== NO_BAND).every(have(shop.bands, unread?.bands, habits.band)) &&
    [...fittings, ...companions].every(have(shop.fittings, unread?.fittings, habits.joint))
  );
}
