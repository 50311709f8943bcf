/** A name in the text of one file: where its thing is described, or where it is asked for. */
export interface Mention {
  /** What it names: the sort of the schema's map that gives it ('board', 'machine'), or the noun of its entries ('carcass'). */
  readonly of: string;
  readonly name: string;
  /** Names of the things that it stands inside, from the outermost: the machine of a stop, the carcass of a panel. */
  readonly within: readonly string[];
  /** True where the thing is described under this name. */
  readonly gives: boolean;
  /** Half-open run of UTF-16 code units [start, end), quotes included. */
  readonly start: number;
  readonly end: number;
  /** Inside brackets, where more characters need quotes. */
  readonly inFlow: boolean;
}

/** Things whose names hold for one file only, and mean nothing in another. */
export function isLocal({ of }: Pick<Mention, 'of'>): boolean {
  return of === 'carcass' || of === 'panel';
}

/** Names of parts that the job's own language gives; see `job/panel-key.ts`. */
export function isFixed({ of }: Pick<Mention, 'of'>): boolean {
  return of === 'panel';
}

/** True where both mean the same thing, of files that belong together. */
export function sameThing(a: Mention, b: Mention): boolean {
  if (a.of !== b.of || a.name !== b.name) return false;
  return a.within.length === b.within.length && a.within.every((name, i) => name === b.within[i]);
}
