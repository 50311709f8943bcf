import type { CarcassPart } from '../document/cut.js';
import type { CarcassOperations } from '../machining/plan/operations.js';
import type { Operation } from '../machining/plan/operation.js';
import type { CarcassAnalysis } from './carcass-analysis.js';

/** A plain name, as nearly all are: nothing about it can mean anything to YAML. */
const NAMED = /^( *)(\p{L}[\p{L}\p{N}_-]*)(?=:)/u;
const NO_NAME = /^(?:true|false|null)$/i;

/** A carcass's text with the name taken out of it. */
export interface Unnamed {
  readonly name: string;
  /** Equal for texts that differ in a name of the same length alone, so that every place in them is the same. */
  readonly likeness: string;
}

/** Null where the name cannot be taken out. */
export function unnamed({ text, whole }: CarcassPart): Unnamed | null {
  const [head, indent, name] = (whole === null && NAMED.exec(text)) || [];
  if (head === undefined || name === undefined || NO_NAME.test(name)) return null;
  return { name, likeness: `${indent}${name.length}${text.slice(head.length)}` };
}

/**
 * What is known of a carcass, as that of another whose text differs in its name alone. Only operations go by the name, and no
 * message has it.
 * @returns null where the carcass is not sound enough for its name to be no more than that
 */
export function renamed(of: CarcassAnalysis, name: string): CarcassAnalysis | null {
  const { nameAt: before, spec, operations } = of;
  if (before === null || spec === null || operations === null) return null;
  const nameAt = { ...before, value: name };
  return of.like({ name, nameAt, spec: { ...spec, name: nameAt }, operations: operationsFor(operations, name) });
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
