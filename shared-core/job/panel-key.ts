// The keys of panels, as the owner writes them under `panels`: 'left', 'divider-1', 'door-1', 'shelf-2', 'shelf-2-bay-3' where a
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

/** The key of all that one thing of the job makes: 'shelf-1' of 'shelf-1-bay-2', 'drawer-1' of 'drawer-1-left'. Any other key is its own. */
export function wholeOf(key: string): string {
  return key.replace(/-bay-\d+$/, '').replace(/^(drawer-\d+)-.*$/, '$1');
}

/** True where a written key means the panel: that panel alone, or all of the thing that it is one panel of. */
export function means(written: string, panel: string): boolean {
  return written === panel || written === wholeOf(panel);
}
