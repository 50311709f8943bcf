import type { Finding, Repair } from './finding.js';
import type { CarcassContext } from './rule.js';

/**
 * Leaves out repairs that do not do what they promise: after one, there must be fewer findings of its rule and no more of
 * any other. `hiding` are the rules whose faults hide others: what they bring to light is not of the repair's making.
 * Without a `retry` every candidate stays, and so does a change outside the carcass's own text. A repair is tried when it is
 * first looked at, so that what nobody asks for costs nothing while one types.
 */
export function workingRepairs(
  found: readonly Finding[],
  retry: CarcassContext['retry'],
  hiding: ReadonlySet<string>,
): readonly Finding[] {
  if (retry === undefined) return found;
  let before: Counts | undefined;
  const works = (rule: string, repair: Repair): boolean => {
    if (repair.changes.some((change) => change.part !== 'self')) return true;
    before ??= countByRule(retry([]) ?? found);
    const after = retry(repair.changes);
    return after !== null && improves(before, countByRule(after), rule, hiding.has(rule));
  };
  return found.map((finding) => {
    const { repairs: candidates, ...rest } = finding;
    if (candidates.length === 0) return finding;
    let tried: readonly Repair[] | undefined;
    return {
      ...rest,
      get repairs(): readonly Repair[] {
        return (tried ??= candidates.filter((repair) => works(finding.rule, repair)));
      },
    };
  });
}

type Counts = ReadonlyMap<string, number>;

function countByRule(findings: readonly Finding[]): Counts {
  const counts = new Map<string, number>();
  for (const { rule } of findings) counts.set(rule, (counts.get(rule) ?? 0) + 1);
  return counts;
}

function improves(before: Counts, after: Counts, rule: string, hides: boolean): boolean {
  if ((after.get(rule) ?? 0) >= (before.get(rule) ?? 0)) return false;
  return hides || [...after].every(([name, count]) => count <= (before.get(name) ?? 0));
}
