import type { Path } from '../document/place.js';

/** What a message of the reading is about: a key, or an item of the list under it. */
export interface Subject {
  /** Empty for the file as a whole. */
  readonly key: string;
  readonly isItem: boolean;
}

export function subjectAt(path: Path): Subject {
  const key = path.findLast((step) => typeof step === 'string') ?? '';
  return { key, isItem: typeof path.at(-1) === 'number' };
}
