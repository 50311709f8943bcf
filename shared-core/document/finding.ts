import type { Message } from '../words/message.js';
import type { Part, Path, Place } from './place.js';

export type Severity = 'error' | 'warning' | 'info';

/** Another place that explains a finding, such as the line that says the same. */
export interface RelatedPlace {
  readonly place: Place;
  readonly message: Message;
  /** The carcass whose text `place` is counted in, where it is not the finding's own. */
  readonly carcass?: number;
}

/** One thing wrong or worth knowing, with its figures in the message. */
export interface Finding {
  /** Name of the rule, in plain kebab-case: the finding's stable identity. */
  readonly rule: string;
  readonly severity: Severity;
  readonly message: Message;
  readonly place: Place;
  readonly related: readonly RelatedPlace[];
  /** Offers that make the finding go away; computed with it, since they need the same figures. */
  readonly repairs: readonly Repair[];
}

/**
 * A change of the text, by path and not by offset: the document layer turns it into the fewest bytes, keeping comments
 * and style. `set` writes a scalar (adding the keys of the path that are missing; an index one past the end adds a list
 * item); a text that starts with `[` or `{` is taken as YAML in flow style. `remove` takes an entry or a list item out, and
 * what it leaves empty. Every path is that of the text before any of the changes; `path` counts from the root of `part`.
 * Where the last key of the path is written more than once, `nth` tells which is meant, the first being 0 and usual.
 */
export type Change =
  | { readonly kind: 'set'; readonly part: Part; readonly path: Path; readonly text: string }
  | {
      readonly kind: 'rename-key';
      readonly part: Part;
      readonly path: Path;
      readonly text: string;
      readonly nth?: number;
    }
  | { readonly kind: 'remove'; readonly part: Part; readonly path: Path; readonly nth?: number };

/** Replaces [start, end) of the text of a part, for what no path leads to: a text that does not read as it was meant. */
export interface Rewrite {
  readonly part: Part;
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

export interface Repair {
  /** What it does, with figures: 'Move shelf-1 down to 328 mm (hole 10)'. */
  readonly title: Message;
  readonly changes: readonly Change[];
  /** Made beside the changes; in the same offsets as the place of the finding. */
  readonly rewrites?: readonly Rewrite[];
  /** The one an editor may take without asking. At most one a finding. */
  readonly preferred: boolean;
  /** Repairs with the same key in other findings can be taken together: 'all in this carcass', 'all in the file'. */
  readonly batch?: { readonly key: string; readonly title: Message };
}
