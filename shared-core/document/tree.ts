import type { Message } from '../words/message.js';
import type { Repair } from './finding.js';
import type { Place } from './place.js';

/** The YAML text as a tree that remembers where everything stands. Aliases are already followed (bounded, no loops). */
export type TreeNode = ScalarNode | MapNode | ListNode;
// `alias` is where `*name` stands, on a node that was reached through an alias; `place` is then that of what it names.

export interface ScalarNode {
  readonly kind: 'scalar';
  readonly place: Place;
  readonly alias?: Place;
  /** The text of the value as written, without quotes; '' for nothing. */
  readonly text: string;
  /** False for a quoted scalar. */
  readonly plain: boolean;
}

export interface MapNode {
  readonly kind: 'map';
  readonly place: Place;
  readonly alias?: Place;
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
  readonly alias?: Place;
  readonly items: readonly TreeNode[];
  readonly flow: boolean;
  /** Where the dash of each item stands in the text; null where one does not stand on the line of its item. */
  readonly dashes: readonly number[] | null;
}

/** A fault of the text itself (syntax, a tab, a loop of aliases, too large): what is wrong and what to do. */
export interface TextProblem {
  readonly message: Message;
  readonly place: Place;
  readonly repairs?: readonly Repair[];
}
