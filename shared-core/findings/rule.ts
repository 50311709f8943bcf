import type { Mating } from '../boring/matings.js';
import type { BoreMap } from '../boring/model.js';
import type { Carcass } from '../carcass/model.js';
import type { CarcassSpec } from '../carcass/spec.js';
import type { Steps } from '../derived/steps.js';
import type { Derived } from '../derived/derived.js';
import type { ConditionalValue } from '../job/reach.js';
import type { Unit } from '../length/units.js';
import type { Inches } from '../length/write.js';
import type { CarcassOperations } from '../machining/plan/operations.js';
import type { Shop } from '../shop/model.js';
import type { Alone } from './alone.js';
import type { Change, Finding, Severity } from './finding.js';

/** What a rule says of itself; the reference page is made from it. */
export interface About {
  /** One line: what is wrong. */
  readonly what: string;
  /** Why it matters in the shop; sources of figures. */
  readonly why: string;
  /** What to do. */
  readonly remedy: string;
  /** A few lines of a carcass, or of a whole job file, that show it. */
  readonly example: string;
  /** Lines of a shop file that the example needs, where the built-in shop does not do. */
  readonly shop?: string;
}

/** All that a rule may look at for one carcass. `unit` is the job file's: figures in messages are printed in it. */
export interface CarcassContext {
  readonly spec: CarcassSpec;
  readonly carcass: Carcass;
  readonly boring: BoreMap;
  /** Which of its bores meet. */
  readonly matings: readonly Mating[];
  /** What the machines have to do for it, and the bores that they cannot make. */
  readonly operations: CarcassOperations;
  readonly alone: Alone;
  readonly shop: Shop;
  readonly unit: Unit;
  /** How its text writes inches. */
  readonly inches: Inches;
  readonly derived: Derived;
  /** What its text says that counts only in some circumstance. */
  readonly written: readonly ConditionalValue[];
  /**
   * What the rules would say of this carcass after these changes of its text (repairs left out); null where the text would
   * no longer read as cleanly as it does. With it only repairs that work are offered; without it every candidate is.
   */
  readonly retry?: (changes: readonly Change[]) => Trial | null;
}

/** A carcass after some changes, built once: what the quick rules say of it, and what all say when that is asked for. */
export interface Trial {
  readonly quick: readonly Finding[];
  readonly all: () => readonly Finding[];
}

/** What a rule's check gives; the registry adds the rule's name and its severity where the check does not say otherwise. */
export type Found = Omit<Finding, 'rule' | 'severity' | 'related' | 'bores' | 'repairs'> &
  Partial<Pick<Finding, 'severity' | 'related' | 'bores' | 'repairs'>>;

/**
 * A rule over one carcass. Pure: same context, same findings, in a fixed order. Never throws. `said` holds the bores that
 * earlier rules of the list have given errors for, so that a general rule need not repeat a precise one.
 */
export type CarcassRule = QuickRule | SlowRule;

interface AnyCarcassRule {
  readonly name: string;
  readonly severity: Severity;
  /** True where its fault hides others (a name taken for the usual one, rows that are not there): a repair may bring them to light. */
  readonly hides?: boolean;
  readonly about: About;
}

export interface QuickRule extends AnyCarcassRule {
  readonly slow?: false;
  check(context: CarcassContext, said: ReadonlySet<string>): readonly Found[];
}

/** One that takes more than a few milliseconds: an editor shows what the others say first, and works on it in slices. */
export interface SlowRule extends AnyCarcassRule {
  readonly slow: true;
  check(context: CarcassContext, said: ReadonlySet<string>): Steps<readonly Found[]>;
}

/** A rule whose findings come from reading the text (syntax, schema, names); it only describes itself. */
export interface ReadingRule {
  readonly name: string;
  readonly severity: Severity;
  readonly about: About;
}
