import type { CarcassPart } from '../document/cut.js';
import type { CarcassOperations } from '../machining/plan/operations.js';
import type { Operation } from '../machining/plan/operation.js';
import type { CarcassAnalysis } from './carcass-analysis.js';
import type { StandIn } from './stand-in.js';

/** A plain name, as nearly all are: nothing about it can mean anything to YAML. */
const NAMED = /^( *)(\p{L}[\p{L}\p{N}_-]*)(?=:)/u;
const NO_NAME = /^(?:true|false|null)$/i;
/** What stands for a name where texts are compared. */
const STAND_IN = 'x';

/** A carcass's text with something else in the place of its name. */
export interface Unnamed {
  readonly name: string;
  /** Its text is equal for carcasses that differ in their names alone. */
  readonly part: CarcassPart;
  readonly standIn: StandIn;
}

/** Null where the name cannot be taken out. */
export function unnamed(part: CarcassPart): Unnamed | null {
  const { text, whole } = part;
  const [head, indent, name] = (whole === null && NAMED.exec(text)) || [];
  if (head === undefined || indent === undefined || name === undefined || NO_NAME.test(name)) return null;
  return {
    name,
    part: { ...part, text: `${indent}${STAND_IN}${text.slice(head.length)}` },
    standIn: { at: indent.length, by: name.length - STAND_IN.length },
  };
}

/**
 * What is known of a carcass without its name, as that of one that has a name. Only operations go by the name, and no message
 * has it.
 * @returns null where the text is not sound enough for the name to be no more than that
 */
export function named(of: CarcassAnalysis, { name, standIn }: Unnamed): CarcassAnalysis | null {
  const { nameAt: before, spec, operations } = of;
  // Faults of the text are told in words of the text.
  if (before === null || (spec === null && of.known.some(({ rule }) => rule === 'yaml-syntax'))) return null;
  const nameAt = { ...before, value: name };
  return of.like({
    name,
    nameAt,
    standIn,
    spec: spec && { ...spec, name: nameAt },
    operations: operations && operationsFor(operations, name),
  });
}

function operationsFor(of: CarcassOperations, carcass: string): CarcassOperations {
  const made = new Map<Operation, Operation>();
  const madeOf = (one: Operation): Operation => {
    const known = made.get(one);
    if (known !== undefined) return known;
    const own = { ...one, carcass, pinsIn: one.pinsIn && madeOf(one.pinsIn) };
    made.set(one, own);
    return own;
  };
  return { ...of, operations: of.operations.map(madeOf) };
}
