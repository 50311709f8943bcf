// The keys of panels, as the owner writes them under `panels`: 'left', 'divider-1', 'door-1', 'end-left', 'back-right', 'shelf-2', 'shelf-2-bay-3' where a
// shelf stands in several bays, and 'drawer-1-left' of the parts of a drawer. Nowhere else is one put together or taken apart.

/** The parts of a drawer: its front, and the pieces of its box. */
export type DrawerPart = 'front' | 'left' | 'right' | 'box-front' | 'back' | 'bottom';

/** Key of a divider, a shelf, a door, a drawer or a fixed front, counted from 1 among its like. */
export function keyOf(thing: 'divider' | 'shelf' | 'loose' | 'door' | 'drawer' | 'fixed', number: number): string {
  return `${thing}-${number}`;
}

/** Key of the panel that a shelf makes in one of several bays, counted from 1. */
export function keyInBay(shelf: string, bay: number): string {
  return `${shelf}-bay-${bay}`;
}

/** Key of a panel of a drawer. */
export function keyInDrawer(drawer: string, part: DrawerPart): string {
  return `${drawer}-${part}`;
}

/** Key of an end panel, of a filler, of a blind panel, or of the back along the other wall of a corner. */
export function keyBeside(thing: 'end' | 'filler' | 'blind' | 'back', hand: 'left' | 'right'): string {
  return `${thing}-${hand}`;
}

/** Key of what of a back stands over the place that is left open, where some of it stands under that too. */
export const UPPER_BACK = 'back-upper';

/** The key of all that one thing of the job makes: 'shelf-1' of 'shelf-1-bay-2', 'drawer-1' of 'drawer-1-left'. Any other key is its own. */
export function wholeOf(key: string): string {
  if (key === UPPER_BACK || key === keyBeside('back', 'left') || key === keyBeside('back', 'right')) return 'back';
  return key.replace(/-bay-\d+$/, '').replace(/^(drawer-\d+)-.*$/, '$1');
}

/** True where a written key means the panel: that panel alone, or all of the thing that it is one panel of. */
export function means(written: string, panel: string): boolean {
  return written === panel || written === wholeOf(panel);
}

/** What decides how the keys of panels change where left and right change over. */
export interface Renaming {
  /** How many bays there are. */
  readonly bays: number;
  /** Dividers are spread and counted from the left; those of a list keep their names. */
  readonly areSpread: boolean;
  /** The keys of doors, drawers and fixed fronts, by what they were. */
  readonly fronts: ReadonlyMap<string, string>;
}

/** The key under `panels` of the panel that stands where this one does, seen in a mirror. */
export function mirroredKey(key: string, { bays, areSpread, fronts }: Renaming): string {
  if (key === 'left') return 'right';
  if (key === 'right') return 'left';
  for (const thing of ['end', 'filler', 'blind', 'back'] as const) {
    if (key === keyBeside(thing, 'left')) return keyBeside(thing, 'right');
    if (key === keyBeside(thing, 'right')) return keyBeside(thing, 'left');
  }
  const divider = /^divider-(\d+)$/.exec(key)?.[1];
  if (divider !== undefined)
    return areSpread && Number(divider) < bays ? keyOf('divider', bays - Number(divider)) : key;
  const bay = /-bay-(\d+)$/.exec(key)?.[1];
  if (bay !== undefined) return Number(bay) > bays ? key : keyInBay(wholeOf(key), bays + 1 - Number(bay));
  const whole = wholeOf(key);
  const front = fronts.get(whole);
  if (front === undefined) return key;
  const part = key.slice(whole.length + 1);
  return part === '' ? front : keyInDrawer(front, OTHER_PART[part as DrawerPart] ?? (part as DrawerPart));
}

const OTHER_PART: Partial<Record<DrawerPart, DrawerPart>> = { left: 'right', right: 'left' };

/** Panels whose edges keep their names in a mirror, as they change over with the panel: uprights, and what hangs on a hand. */
const HANDED =
  /^(?:left|right|(?:end|filler|blind)-(?:left|right)|divider-\d+|door-\d+|drawer-\d+|drawer-\d+-(?:left|right))$/;

/**
 * What the edges of a panel that change over where left and right do become; the others stay. A back has its front edge on the left;
 * of a carcass across a corner, where that is.
 */
export function mirroredEdges(key: string, isDiagonal: boolean): ReadonlyMap<string, string> {
  const isBack = wholeOf(key) === 'back';
  const [a, b] = isBack ? (['front', 'back'] as const) : (['reference-end', 'far-end'] as const);
  return new Map(
    HANDED.test(key) || (isBack && isDiagonal)
      ? []
      : [
          [a, b],
          [b, a],
        ],
  );
}
