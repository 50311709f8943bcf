import type { Place } from './place.js';

/** The YAML text as a tree that remembers where everything stands. Aliases are already followed (bounded, no loops). */
export type TreeNode = ScalarNode | MapNode | ListNode;

export interface ScalarNode {
  readonly kind: 'scalar';
  readonly place: Place;
  /** The text of the value as written, without quotes; '' for nothing. */
  readonly text: string;
  /** False for a quoted scalar. */
  readonly plain: boolean;
}

export interface MapNode {
  readonly kind: 'map';
  readonly place: Place;
  /** In the order of the text; a key written twice appears twice. */
  readonly entries: readonly MapEntry[];
  readonly flow: boolean;
}

export interface MapEntry {
  readonly key: string;
  readonly keyPlace: Place;
  /** From the key's start to the end of the value (to the end of the key where there is none). */
  readonly place: Place;
  /** null where nothing is written after the colon. */
  readonly value: TreeNode | null;
}

export interface ListNode {
  readonly kind: 'list';
  readonly place: Place;
  readonly items: readonly TreeNode[];
  readonly flow: boolean;
}

/** A fault of the text itself (syntax, a tab, a loop of aliases, too large): what is wrong and what to do. */
export interface TextProblem {
  readonly message: string;
  readonly place: Place;
}
