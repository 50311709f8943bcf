// The keys of panels, as the owner writes them under `panels`: 'left', 'divider-1', 'door-1', 'shelf-2', and 'shelf-2-bay-3' where a
// shelf stands in several bays. Nowhere else is one put together or taken apart.

/** Key of a divider, a fixed shelf, a loose one or a door, counted from 1 through the list that it stands in. */
export function keyOf(thing: 'divider' | 'shelf' | 'loose' | 'door', number: number): string {
  return `${thing}-${number}`;
}

/** Key of the panel that a shelf makes in one of several bays, counted from 1. */
export function keyInBay(shelf: string, bay: number): string {
  return `${shelf}-bay-${bay}`;
}

/** The key of all that one thing of the job makes: 'shelf-1' of 'shelf-1-bay-2'. Any other key is its own. */
export function wholeOf(key: string): string {
  return key.replace(/-bay-\d+$/, '');
}

/** True where a written key means the panel: that panel alone, or all of the thing that it is one panel of. */
export function means(written: string, panel: string): boolean {
  return written === panel || written === wholeOf(panel);
}
