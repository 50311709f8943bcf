import { otherwise, type Finding, type Severity } from './finding.js';

/** How loudly a reader wants the findings of a rule told, by its name; null for not at all. A rule that is not here is as it is. */
export type WantedFindings = ReadonlyMap<string, Severity | null>;

/** How loudly a finding is told to that reader; null where he does not want it told. */
export function loudness(
  { rule, severity }: Pick<Finding, 'rule' | 'severity'>,
  wanted: WantedFindings,
): Severity | null {
  const chosen = wanted.get(rule);
  return chosen === undefined ? severity : chosen;
}

/** Those that the reader wants told, as loudly as he wants them; all as they are where he wants nothing of his own. */
export function wantedOf(findings: readonly Finding[], wanted: WantedFindings): readonly Finding[] {
  if (wanted.size === 0) return findings;
  return findings.flatMap((finding) => {
    const severity = loudness(finding, wanted);
    return severity === null ? [] : [severity === finding.severity ? finding : otherwise(finding, { severity })];
  });
}
