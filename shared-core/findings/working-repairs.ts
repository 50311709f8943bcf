import type { Finding } from './finding.js';
import type { CarcassContext } from './rule.js';

/**
 * Leaves out repairs that do not do what they promise: after one, there must be fewer findings of its rule and no more of
 * any other. Without a `retry` every candidate stays, and so does a change outside the carcass's own text.
 */
export function workingRepairs(found: readonly Finding[], retry: CarcassContext['retry']): readonly Finding[] {
  if (retry === undefined) return found;
  if (!found.some(({ repairs }) => repairs.length > 0)) return found;
  const before = countByRule(retry([]) ?? found);
  return found.map((finding) => {
    const repairs = finding.repairs.filter((repair) => {
      if (repair.changes.some((change) => change.part !== 'self')) return true;
      const after = retry(repair.changes);
      return after !== null && improves(before, countByRule(after), finding.rule);
    });
    return repairs.length === finding.repairs.length ? finding : { ...finding, repairs };
  });
}

function countByRule(findings: readonly Finding[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const { rule } of findings) counts.set(rule, (counts.get(rule) ?? 0) + 1);
  return counts;
}

function improves(before: ReadonlyMap<string, number>, after: ReadonlyMap<string, number>, rule: string): boolean {
  if ((after.get(rule) ?? 0) >= (before.get(rule) ?? 0)) return false;
  return [...after].every(([name, count]) => count <= (before.get(name) ?? 0));
}
