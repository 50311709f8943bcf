import type { Finding, Severity } from '../findings/finding.js';

/** How loudly a reader wants the findings of a rule told, by its name; null for not at all. A rule that is not here is as it is. */
export type WantedFindings = ReadonlyMap<string, Severity | null>;

/** Those that the reader wants told, as loudly as he wants them; all as they are where he wants nothing of his own. */
export function wantedOf(findings: readonly Finding[], wanted: WantedFindings | null): readonly Finding[] {
  if (wanted === null || wanted.size === 0) return findings;
  return findings.flatMap((finding) => {
    const severity = wanted.get(finding.rule);
    if (severity === null) return [];
    return [severity === undefined ? finding : { ...finding, severity }];
  });
}
