import { byPlace } from '../findings/by-place.js';
import { boreCarcass } from '../boring/bores.js';
import { matings, type Mating } from '../boring/matings.js';
import { buildCarcass } from '../carcass/build.js';
import { withText } from '../document/cut.js';
import { nameIn } from '../document/parts.js';
import type { Path } from '../document/place.js';
import type { TreeNode } from '../document/tree.js';
import { applyEdits } from '../document/pieces.js';
import type { Derived } from '../derived/derived.js';
import { inOneGo, known, type Steps } from '../derived/steps.js';
import { Alone } from '../findings/alone.js';
import type { Change, Finding } from '../findings/finding.js';
import { checkCarcass } from '../findings/registry.js';
import type { CarcassContext, Trial } from '../findings/rule.js';
import type { ReadCarcass } from '../carcass/read.js';
import { readCarcass } from '../carcass/read.js';
import { conditionalValues } from '../job/reach.js';
import { inchesOf } from '../job/notation.js';
import { carcassEdits } from '../job/edits.js';
import { operationsOf } from '../machining/plan/operations.js';
import type { Shop } from '../shop/model.js';
import { ShopReads, watched } from '../shop/watched.js';
import type { CarcassWork } from './carcass-analysis.js';
import { CarcassAnalysis } from './carcass-analysis.js';
import type { Basis } from './basis.js';
import type { Lined } from './lined.js';
import { jobMessages } from './messages.js';
import type { Message } from '../words/message.js';

/** One carcass from its text, and those of what it is like, to its findings. Depends on nothing but what is given; never throws. */
export function analyseCarcass(lined: Lined, basis: Basis, shop: Shop, derived: Derived): CarcassAnalysis {
  const { part, bases } = lined;
  const reads = new ShopReads();
  const seen = watched(shop, reads);
  const read = readCarcass(part, basis.head, basis.defaults, seen, bases);
  const built = build(read, seen, derived);
  return judged({ lined, basis, derived, read, built, reads }, shop);
}

/** A carcass that was built, and what of the shop that depends on. */
interface Standing {
  readonly lined: Lined;
  readonly basis: Basis;
  readonly derived: Derived;
  readonly read: ReadCarcass;
  readonly built: Built;
  readonly reads: ShopReads;
}

/** What the rules say of it in a shop. */
function judged(standing: Standing, shop: Shop): CarcassAnalysis {
  const { lined, basis, derived, read, built } = standing;
  const reads = new ShopReads();
  const seenIn = (other: Shop, noting: ShopReads): Seen => {
    const seen = watched(other, noting);
    return { shop: seen, retry: (changes) => tryChanges(lined, read, changes, basis, seen, derived) };
  };
  const said = rulesSay(read, built, basis, seenIn(shop, reads), derived);
  return told(standing, reads, said.quick, (other, noting) => said.all(seenIn(other, noting)), shop);
}

/** The shop as rules see it, and what they would say after changes. */
type Seen = Pick<CarcassContext, 'shop' | 'retry'>;

/**
 * A carcass with what the rules say.
 * @param quickReads what of the shop the quick rules asked
 * @param all what all rules say where the slow ones get a shop
 */
function told(
  standing: Standing,
  quickReads: ShopReads,
  quick: readonly Finding[],
  all: (shop: Shop, noting: ShopReads) => Steps<readonly Finding[]>,
  shop: Shop,
): CarcassAnalysis {
  const { lined, read, built, reads } = standing;
  const withOthers = (found: readonly Finding[]): readonly Finding[] =>
    [...read.findings, ...built.problems, ...found].sort(byPlace);
  const { carcass, boring, operations } = built;
  const name = read.name?.value ?? (lined.part.whole === null ? nameIn(lined.part.text) : '');
  const slowReads = new ShopReads();
  let isAsked = false;
  return new CarcassAnalysis(
    { name, nameAt: read.name, standIn: null, spec: read.spec, carcass, boring, operations },
    withOthers(quick),
    function* () {
      const found = withOthers(yield* all(shop, slowReads));
      isAsked = true;
      return found;
    },
    (changes, mayTake) => {
      if (changes.touch(reads)) return null;
      if (changes.touch(quickReads)) return mayTake ? judged(standing, changes.now) : null;
      return !isAsked || changes.touch(slowReads) ? told(standing, quickReads, quick, all, changes.now) : 'same';
    },
  );
}

type Built = Pick<CarcassWork, 'carcass' | 'boring' | 'operations'> & {
  readonly matings: readonly Mating[];
  /** Sizes that make no box, and faults of ours. */
  readonly problems: readonly Finding[];
};

const NOTHING: Built = { carcass: null, boring: null, operations: null, matings: [], problems: [] };

/** From the spec to the bores and what the machines have to do. */
function build({ spec, name }: ReadCarcass, shop: Shop, derived: Derived): Built {
  if (spec === null) return NOTHING;
  try {
    const { carcass, problems: found } = buildCarcass(spec, shop, derived);
    const problems = found.map(({ place, message }) => error('size-impossible', place, message));
    if (carcass === null) return { ...NOTHING, problems };
    const boring = boreCarcass(spec, carcass, shop);
    const operations = operationsOf(spec.name.value, spec, carcass, boring, shop, derived);
    return { carcass, boring, operations, matings: matings(carcass, boring), problems };
  } catch (fault) {
    return { ...NOTHING, problems: [faultOfOurs(name!.place, fault)] };
  }
}

function rulesSay(
  { spec, name, entry }: ReadCarcass,
  { carcass, boring, operations, matings }: Built,
  { head: { unit } }: Basis,
  seen: Seen,
  derived: Derived,
): { readonly quick: readonly Finding[]; readonly all: (late?: Seen) => Steps<readonly Finding[]> } {
  if (spec === null || carcass === null || boring === null || operations === null) return NOTHING_FOUND;
  const failed = (fault: unknown): readonly Finding[] => [faultOfOurs(name!.place, fault)];
  try {
    const text = entry?.value ?? null;
    const inches = inchesOf(text);
    const written = conditionalValues(text);
    const alone = new Alone(spec, carcass, operations, derived);
    const context = { spec, carcass, boring, matings, operations, alone, unit, inches, derived, written };
    const { quick, all } = checkCarcass({ ...context, ...seen });
    const allOrFault = function* (late: Seen = seen): Steps<readonly Finding[]> {
      try {
        return yield* all({ ...context, ...late });
      } catch (fault) {
        return failed(fault);
      } finally {
        alone.rest();
      }
    };
    return { quick, all: allOrFault };
  } catch (fault) {
    const found = failed(fault);
    return { quick: found, all: () => known(found) };
  }
}

const NOTHING_FOUND = { quick: [], all: () => known<readonly Finding[]>([]) };

/** A fault of ours in one carcass must not take the others' findings away, nor pass in silence. */
function faultOfOurs(place: Finding['place'], fault: unknown): Finding {
  const words = fault instanceof Error ? fault.message : String(fault);
  return error('internal-fault', place, jobMessages.internalFault({ words }));
}

/** What building and the rules say after some changes of the carcass's own text; null where it reads less cleanly then. */
function tryChanges(
  { part, bases }: Lined,
  read: ReadCarcass,
  changes: readonly Change[],
  basis: Basis,
  shop: Shop,
  derived: Derived,
): Trial | null {
  if (changes.length === 0) return trialOf(read, basis, shop, derived);
  if (read.entry === null || changes.some((change) => change.part !== 'self')) return null;
  const own = read.entry.value;
  if (bases?.length !== 0 && changes.some(({ path }) => isInListElsewhere(path, own))) return null;
  const edits = carcassEdits(part.text, read.entry, changes);
  if (edits.length === 0) return null;
  const text = applyEdits(part.text, edits);
  const after = readCarcass(withText(part, text), basis.head, basis.defaults, shop, bases);
  if (after.spec === null || after.findings.length > read.findings.length) return null;
  return trialOf(after, basis, shop, derived);
}

/** An item of a list that is written in another carcass: here it would take the place of the whole list. */
function isInListElsewhere(path: Path, own: TreeNode | null): boolean {
  let node = own;
  for (const step of path) {
    if (typeof step === 'number') return node === null;
    node = node?.kind === 'map' ? (node.entries.find(({ key }) => key === step)?.value ?? null) : null;
  }
  return false;
}

function trialOf(read: ReadCarcass, basis: Basis, shop: Shop, derived: Derived): Trial {
  const built = build(read, shop, derived);
  const { quick, all } = rulesSay(read, built, basis, { shop }, derived);
  return { quick: [...built.problems, ...quick], all: () => [...built.problems, ...inOneGo(all())] };
}

function error(rule: string, place: Finding['place'], message: Message): Finding {
  return { rule, severity: 'error', place, message, related: [], repairs: [] };
}
