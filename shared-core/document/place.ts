/**
 * Which text a place is counted in. A job file is cut into a head (all that stands before the carcasses), one text per
 * carcass ('self'), and a tail; a carcass is analysed against its own text only, so its result stays valid when an edit
 * elsewhere moves it. A carcass that is like another is analysed against the text of that one too ('like-1'), and of what that
 * one is like ('like-2'). 'shop' is the shop file.
 */
export type Part = 'self' | LikePart | 'head' | 'tail' | 'shop';

/** The text of a carcass that this one is like, counted from 1 for the one that it names itself. */
export type LikePart = `like-${number}`;

/** How far away the carcass is whose text the part is; null where it is none that another is like. */
export function depthOf(part: Part): number | null {
  return part.startsWith('like-') ? Number(part.slice('like-'.length)) : null;
}

/** A half-open run of UTF-16 code units [start, end) in one part. */
export interface Place {
  readonly part: Part;
  readonly start: number;
  readonly end: number;
}

/** Steps from the root of a part to a node: keys and list indexes. In 'self' the root is the carcass's own map. */
export type Path = readonly (string | number)[];

/**
 * A value of a model with the place that it came from. `written` is false for a default; its place is then the nearest
 * text that a reader would blame (the carcass's name). `path` leads to the node, or to where it would be written.
 */
export interface Located<T> {
  readonly value: T;
  readonly place: Place;
  readonly path: Path;
  readonly written: boolean;
}
