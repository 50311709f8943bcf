import type { JobAnalysis } from '../engine.js';
import { refactorsAt } from '../engine/refactors.js';
import type { RepairEdits } from '../engine/repairs.js';
import { tell } from '../words/message.js';

/** What can be made of what stands at an offset of a job, in words, with edits of its text. */
export function refactorsIn(
  analysis: JobAnalysis,
  offset: number,
): readonly { readonly title: string; readonly edits: RepairEdits['job'] }[] {
  return refactorsAt(analysis, offset).map(({ title, edits }) => ({ title: tell(title, analysis.unit), edits }));
}
