import type { Panel } from '../../carcass/model.js';
import type { Handling } from '../../shop/model.js';
import { showSizes } from '../../length/show.js';
import type { Reader } from '../../length/reader.js';
import { asItIs, type Told } from '../../words/told.js';

export { timeWords } from '../../words/time.js';

/** The panels that set-ups speak of, and the units that their owner reads. */
export interface JobWords {
  /** Of the job file: sizes of panels. */
  readonly reader: Reader;
  /** Of the shop file, which has the figures as the scales of the machines show them: stops, depths, bits, moves. */
  readonly machineReader: Reader;
  /** Seconds that the boring of a panel takes in this shop. */
  readonly handling: Handling;
  /** A panel by the names in a set-up; undefined where there is none of these names. */
  readonly panel: (carcass: string, key: string) => Panel | undefined;
}

/** '720 × 560 × 16 mm' */
export function sizeWords({ length, width, thickness }: Panel, reader: Reader): Told {
  return asItIs(showSizes([length, width, thickness], reader));
}
