import { mirror } from '../../carcass/mirror.js';
import { readCarcassTree } from '../../document/parts.js';
import type { MapEntry } from '../../document/tree.js';
import { readHead } from '../../job/head.js';
import { inherited, withBases, type CarcassSaid } from '../../job/like.js';
import { carcassSchema, jobSchema } from '../../job/schema.js';
import type { Hand } from '../../shop/model.js';
import { readBySchema } from '../../schema/read.js';
import { unfold } from '../../schema/unfold.js';
import type { JobAnalysis } from '../analysis.js';

/** What a carcass says, and where. */
export interface OwnSaid {
  readonly entry: MapEntry;
  readonly own: CarcassSaid;
}

/** What a carcass's own text says; null where it cannot be read without fault. */
export function ownSaid({ parts, unit }: JobAnalysis, index: number): OwnSaid | null {
  const { entry, problems, astray } = readCarcassTree(parts.carcasses[index]!);
  if (entry === null || problems.length > 0 || astray.length > 0) return null;
  const read = readBySchema(carcassSchema, entry.value, { unit, part: 'self', path: [], place: entry.keyPlace });
  if (read.value === null || !read.sound) return null;
  return { entry, own: unfold(carcassSchema, read.value.value) };
}

/** What the job's defaults say. */
export function defaultsOf({ parts }: JobAnalysis): CarcassSaid {
  return unfold(jobSchema.fields.defaults.schema, readHead(parts).defaults ?? {});
}

/** What all that a carcass is like says to it, and which of its sides leads then; null where one of them cannot be read. */
export function saidByBases(
  { parts, unit }: JobAnalysis,
  bases: readonly number[],
  hand: Pick<CarcassSaid, 'mirrored'>,
  given: CarcassSaid,
): { readonly said: CarcassSaid; readonly leading: Hand } | null {
  const texts = bases.map((base) => parts.carcasses[base]!);
  const together = withBases(hand, given, unit, { bases: texts, mirror });
  if (together === null) return null;
  return { said: inherited(together.said), leading: together.leading };
}

/** The values alone, to be compared: nothing of where they stand, names in any order. */
export function bare(said: unknown): string {
  return JSON.stringify(withoutPlaces(said));
}

function withoutPlaces(said: unknown): unknown {
  if (typeof said !== 'object' || said === null) return said;
  if (Array.isArray(said)) return said.every(isEntry) ? withoutPlaces(byName(said)) : said.map(withoutPlaces);
  if ('place' in said && 'value' in said) return withoutPlaces(said.value);
  const entries = Object.entries(said).toSorted(([a], [b]) => (a < b ? -1 : 1));
  return Object.fromEntries(entries.map(([key, value]) => [key, withoutPlaces(value)]));
}

interface Named {
  readonly name: { readonly value: string };
  readonly value: unknown;
}

const isEntry = (one: unknown): one is Named => typeof one === 'object' && one !== null && 'name' in one;

const byName = (entries: readonly Named[]): unknown =>
  Object.fromEntries(entries.map(({ name, value }) => [name.value, value]));

/** Whether the board or the rows of a side are chosen for it alone, so that it matters which of the two leads. */
export function hasUnlikeSides(said: CarcassSaid): boolean {
  return sidesChosen(said).some(
    ({ value }) => value.value.board !== undefined || value.value['row-offset'] !== undefined,
  );
}

/** What is chosen for the sides alone. */
export function sidesChosen({ panels }: CarcassSaid): NonNullable<CarcassSaid['panels']>['value'] {
  return (panels?.value ?? []).filter(({ name }) => name.value === 'left' || name.value === 'right');
}
