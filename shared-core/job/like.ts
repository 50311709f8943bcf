import type { CarcassPart } from '../document/cut.js';
import { entryAs, readCarcassTree } from '../document/parts.js';
import type { LikePart } from '../document/place.js';
import type { Unit } from '../length/units.js';
import { readBySchema } from '../schema/read.js';
import { laidOver, unfold, type UnfoldedFields } from '../schema/unfold.js';
import type { Hand } from '../shop/model.js';
import { astrayKeys } from './astray.js';
import { carcassSchema } from './schema.js';

/** What a text says of a carcass, in its long form. One that is like another may leave anything out. */
export type CarcassSaid = Partial<UnfoldedFields<typeof carcassSchema.fields>>;

/** Whether it is to stand across a corner. */
export const standsAcross = ({ diagonal }: Pick<CarcassSaid, 'diagonal'>): boolean =>
  diagonal?.value.left !== undefined || diagonal?.value.right !== undefined;

/** What is said, with left and right changed over. */
export type Mirror = (said: CarcassSaid) => CarcassSaid;

/** What a carcass is like: the one that it names, then what that one is like, and so on. */
export interface Likeness {
  readonly bases: readonly CarcassPart[];
  readonly mirror: Mirror;
}

/** What a carcass and those that it is like say together. */
export interface Together {
  readonly said: CarcassSaid;
  /** See `JobCarcass`. */
  readonly leading: Hand;
}

/** Which carcass it is, where it stands and how many are made is of one carcass alone, and so is what is noted of it. */
const OF_ITS_OWN = ['like', 'mirrored', 'place', 'count', 'note'] as const;

/**
 * What a carcass says together with those that it is like: a key of its own takes the place of the other's, maps key by key,
 * lists as a whole. Values that come from another have its part of the text. null where the text of one cannot be read.
 * @param given what the job's defaults say; they count in the other carcass before it is mirrored
 */
export function withBases(
  own: CarcassSaid,
  given: CarcassSaid,
  unit: Unit,
  { bases, mirror }: Likeness,
): Together | null {
  let together: Together = { said: {}, leading: 'left' };
  const add = (said: CarcassSaid): void => {
    const below = inherited(together.said);
    together =
      said.mirrored?.value === true
        ? { said: over(said, mirror(over(below, given))), leading: together.leading === 'left' ? 'right' : 'left' }
        : { said: over(said, below), leading: together.leading };
  };
  for (let depth = bases.length; depth > 0; depth -= 1) {
    const said = readBase(bases[depth - 1]!, `like-${depth}`, unit);
    if (said === null) return null;
    add(said);
  }
  add(own);
  return together;
}

export const isOfItsOwn = (key: string): boolean => (OF_ITS_OWN as readonly string[]).includes(key);

/** What of a carcass another one takes over that is like it. */
export function inherited(said: CarcassSaid): CarcassSaid {
  return Object.fromEntries(Object.entries(said).filter(([key]) => !isOfItsOwn(key)));
}

/** What one says, and what the other says where it says nothing. */
export function over(upper: CarcassSaid, lower: CarcassSaid): CarcassSaid {
  return laidOver(carcassSchema, upper, lower);
}

function readBase(part: CarcassPart, as: LikePart, unit: Unit): CarcassSaid | null {
  const { entry: own, problems, astray } = readCarcassTree(part);
  if (own === null || problems.length > 0 || astrayKeys(part.text, own, astray) !== null) return null;
  const entry = entryAs(own, as);
  const read = readBySchema(carcassSchema, entry.value, { unit, part: as, path: [], place: entry.keyPlace });
  return read.value === null || !read.sound ? null : unfold(carcassSchema, read.value.value);
}
