import type { Located } from '../document/place.js';

/** What a carcass across a corner cannot have. */
export type Lacking =
  | 'other-hand'
  | 'dividers'
  | 'fixed-shelves'
  | 'drawer'
  | 'appliance'
  | 'blind'
  | 'wardrobe-rails'
  | 'plinth'
  | 'end-panels'
  | 'fillers'
  | 'top'
  | 'bottom'
  | 'back'
  | 'back-open'
  | 'inset';

/** Something that the job asks for and the carcass cannot have, so that it is made without it, or with what is usual. */
export interface Without {
  readonly what: Lacking;
  readonly at: Pick<Located<unknown>, 'place' | 'path'>;
}
