import type { CarcassSpec } from './spec.js';
import type { EdgeName, EndName, JointChoice, PanelChoice } from '../job/model.js';
import type { Located } from '../document/place.js';
import { wholeOf } from '../job/panel-key.js';
import { NO_BAND } from '../shop/habits.js';
import type { Fitting } from '../fittings/kinds.js';
import type { Band, Board, Shop, Slide } from '../shop/model.js';

/** 'shelf-1-bay-2' chooses under its own key, and else under 'shelf-1'. */
function choicesFor(spec: CarcassSpec, key: string): readonly PanelChoice[] {
  if (spec.panels.size === 0) return [];
  const own = spec.panels.get(key);
  const shelf = spec.panels.get(wholeOf(key));
  return [own, shelf].filter((choice) => choice !== undefined);
}

/** What the job chooses for one panel; undefined where it says nothing. */
export function chosen<F extends Exclude<keyof PanelChoice, 'key' | 'bands' | 'referenceEnd' | 'farEnd'>>(
  spec: CarcassSpec,
  key: string,
  field: F,
): PanelChoice[F] | undefined {
  return choicesFor(spec, key).find((choice) => choice[field] !== undefined)?.[field];
}

/** The band that the job chooses for one edge of one panel; undefined where it says nothing. */
export function chosenBand(spec: CarcassSpec, key: string, edge: EdgeName): Located<string> | undefined {
  return choicesFor(spec, key).find(({ bands }) => bands?.value[edge] !== undefined)?.bands?.value[edge];
}

const END_FIELD = { 'reference-end': 'referenceEnd', 'far-end': 'farEnd' } as const;

/** What the job chooses for the joint at one end of one panel; undefined where it says nothing of that joint alone. */
export function chosenAtEnd<F extends keyof JointChoice>(
  spec: CarcassSpec,
  key: string,
  end: EndName,
  field: F,
): JointChoice[F] | undefined {
  return choicesFor(spec, key).find((choice) => choice[END_FIELD[end]]?.value[field] !== undefined)?.[END_FIELD[end]]
    ?.value[field];
}

/** The joints at single ends of panels of which a panel's choices speak. */
export const jointsChosen = ({ referenceEnd, farEnd }: PanelChoice): readonly JointChoice[] =>
  [referenceEnd, farEnd].flatMap((one) => one?.value ?? []);

/** An unknown name stands for the shop's usual thing, so that one wrong word does not hide the rest; a rule reports it. */
function known<T>(things: ReadonlyMap<string, T>, name: string, usual: string): T | undefined {
  return things.get(name) ?? things.get(usual) ?? things.values().next().value;
}

/** The board of a name. `buildCarcass` has seen to it that the shop has one. */
export function boardNamed(shop: Shop, name: string): Board {
  return known(shop.boards, name, shop.habits.board)!;
}

/** The board of a panel. `buildCarcass` has seen to it that the shop has one. */
export function boardFor(spec: CarcassSpec, shop: Shop, key: string, written: Located<string>): Board {
  return boardNamed(shop, (chosen(spec, key, 'board') ?? written).value);
}

/** The board of the back. `buildCarcass` has seen to it that the shop has one. */
export function backBoardFor(spec: CarcassSpec, shop: Shop): Board {
  return known(shop.boards, (chosen(spec, 'back', 'board') ?? spec.back.board).value, shop.habits.backBoard)!;
}

/** The fitting of a name. `buildCarcass` has seen to it that the shop has one. */
export function fittingNamed(shop: Shop, name: string): Fitting {
  return known(shop.fittings, name, shop.habits.joint)!;
}

/** The band of a name; null for `none` and where the shop has no such band and no usual one. */
export function bandNamed(shop: Shop, name: string): Band | null {
  if (name === NO_BAND) return null;
  return shop.bands.get(name) ?? shop.bands.get(shop.habits.band) ?? null;
}

/** The slide of a name, the usual one where the shop has none of it; null where it has no slides. */
export function slideNamed(shop: Shop, name: string): Slide | null {
  return known(shop.slides, name, shop.habits.slide) ?? null;
}
