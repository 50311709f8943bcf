import { boreCarcass } from '../boring/bores.js';
import { buildCarcass } from '../carcass/build.js';
import type { CarcassPart } from '../document/cut.js';
import { applyEdits } from '../document/pieces.js';
import type { Change, Finding } from '../findings/finding.js';
import { checkCarcass } from '../findings/registry.js';
import type { CarcassContext } from '../findings/rule.js';
import type { ReadCarcass } from '../job/carcass.js';
import { readCarcass } from '../job/carcass.js';
import { carcassEdits } from '../job/edits.js';
import type { Shop } from '../shop/model.js';
import type { CarcassAnalysis } from './analysis.js';
import type { Basis } from './basis.js';

/** One carcass from its text to its findings. Depends on nothing but what is given; never throws. */
export function analyseCarcass(part: CarcassPart, basis: Basis, shop: Shop): CarcassAnalysis {
  const read = readCarcass(part, basis.head, basis.defaults, shop);
  const retry = (changes: readonly Change[]): readonly Finding[] | null => tryChanges(part, read, changes, basis, shop);
  const { carcass, boring, findings } = work(read, basis, shop, retry);
  return {
    name: read.name?.value ?? nameIn(part.text),
    nameAt: read.name,
    spec: read.spec,
    carcass,
    boring,
    findings: [...read.findings, ...findings].sort(byPlace),
  };
}

/** From the spec on. The findings are those of building and of the rules. */
function work(
  { spec, name }: ReadCarcass,
  { head: { unit } }: Basis,
  shop: Shop,
  retry: CarcassContext['retry'],
): Pick<CarcassAnalysis, 'carcass' | 'boring' | 'findings'> {
  if (spec === null) return { carcass: null, boring: null, findings: [] };
  try {
    const { carcass, problems } = buildCarcass(spec, shop, unit);
    const sizes = problems.map(({ place, message }) => error('size-impossible', place, message));
    if (carcass === null) return { carcass, boring: null, findings: sizes };
    const boring = boreCarcass(spec, carcass, shop);
    const context: CarcassContext = { spec, carcass, boring, shop, unit, ...(retry && { retry }) };
    return { carcass, boring, findings: [...sizes, ...checkCarcass(context)] };
  } catch (fault) {
    // A fault of ours in one carcass must not take the others' findings away, nor pass in silence.
    const message = `Borewright failed on this carcass: ${fault instanceof Error ? fault.message : String(fault)}. The fault is not yours; nothing else is known of this carcass.`;
    return { carcass: null, boring: null, findings: [error('internal-fault', name!.place, message)] };
  }
}

/** What building and the rules say after some changes of the carcass's own text; null where it reads less cleanly then. */
function tryChanges(
  part: CarcassPart,
  read: ReadCarcass,
  changes: readonly Change[],
  basis: Basis,
  shop: Shop,
): readonly Finding[] | null {
  if (read.entry === null || changes.some((change) => change.part !== 'self')) return null;
  const edits = carcassEdits(part.text, read.entry, changes);
  if (edits.length === 0) return null;
  const text = applyEdits(part.text, edits);
  const grown = text.length - part.text.length;
  const after = readCarcass({ ...part, text, end: part.end + grown }, basis.head, basis.defaults, shop);
  if (after.spec === null || after.findings.length > read.findings.length) return null;
  return work(after, basis, shop, undefined).findings;
}

function error(rule: string, place: Finding['place'], message: string): Finding {
  return { rule, severity: 'error', place, message, related: [], bores: [], repairs: [] };
}

/** The name of a carcass whose text cannot be read as a whole. */
function nameIn(text: string): string {
  const [, double, single, plain] = /^\s*(?:"([^"\n]*)"|'([^'\n]*)'|([^\s:#'"][^:#\n]*?))\s*(?::|\n|$)/.exec(text) ?? [];
  return double ?? single ?? plain ?? '';
}

const PARTS = ['head', 'self', 'tail', 'shop'];

/** Keeps the order of the rules among findings of one place. */
function byPlace(a: Finding, b: Finding): number {
  return (
    PARTS.indexOf(a.place.part) - PARTS.indexOf(b.place.part) ||
    a.place.start - b.place.start ||
    a.place.end - b.place.end
  );
}
