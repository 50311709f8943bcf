import type { Located, Path, Place } from '../document/place.js';
import type { Micrometres, Unit } from '../length/units.js';
import { showLength } from '../length/show.js';
import type { Words } from '../words/message.js';

/** A size that cannot be built: where, and what with its figures and what to do. */
export interface Problem {
  readonly place: Place;
  readonly path: Path;
  readonly message: Words;
}

/** Gathers problems in the order in which the box is built; figures are shown in the file's unit. */
export class Problems {
  readonly found: Problem[] = [];

  constructor(private readonly unit: Unit) {}

  readonly show = (length: Micrometres): string => showLength(length, this.unit);

  add({ place, path }: Pick<Located<unknown>, 'place' | 'path'>, message: Words): void {
    this.found.push({ place, path, message });
  }
}
