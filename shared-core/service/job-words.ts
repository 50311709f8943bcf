import type { Panel } from '../carcass/model.js';
import type { JobAnalysis } from '../engine.js';
import type { JobWords } from '../papers/set-up/words.js';

/** The panels of a job by the names that its set-ups have for them. */
export function jobWords(analysis: JobAnalysis): JobWords {
  const carcasses = new Map(
    analysis
      .planned()
      .map(({ name, carcass }) => [name, new Map(carcass?.panels.map((panel): [string, Panel] => [panel.key, panel]))]),
  );
  return {
    reader: analysis.reader,
    machineReader: analysis.shopReader,
    handling: analysis.shop.handling,
    panel: (carcass, key) => carcasses.get(carcass)?.get(key),
  };
}
