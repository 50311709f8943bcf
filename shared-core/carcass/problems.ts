import type { Located, Path, Place } from '../document/place.js';
import type { Message } from '../words/message.js';

/** A size that cannot be built: where, and what with its figures and what to do. */
export interface Problem {
  readonly place: Place;
  readonly path: Path;
  readonly message: Message;
}

/** Gathers problems in the order in which the box is built. */
export class Problems {
  readonly found: Problem[] = [];

  add({ place, path }: Pick<Located<unknown>, 'place' | 'path'>, message: Message): void {
    this.found.push({ place, path, message });
  }
}
