import { boresConcerned } from '../findings/finding.js';
import type { CarcassAnalysis } from './carcass-analysis.js';

/**
 * The panels of a carcass with bores that a finding calls wrong, though a machine could make them: they must not be bored. The
 * rules that take time mark no bores as errors, so that those which are known at once say all of it.
 */
export function refusedPanels({ operations, boring, known }: CarcassAnalysis): ReadonlySet<string> {
  const wrong = new Set(known.filter(({ severity }) => severity === 'error').flatMap(boresConcerned));
  if (wrong.size === 0) return new Set();
  for (const { bores } of operations?.unreachable ?? []) for (const { id } of bores) wrong.delete(id);
  return new Set(boring?.bores.filter(({ id }) => wrong.has(id)).map(({ panel }) => panel));
}
