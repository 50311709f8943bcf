import { blankOf } from '../machining/blank.js';
import { compareHoles } from '../machining/replay/compare.js';
import { replayPanel } from '../machining/replay/replay.js';
import type { SetUp } from '../machining/set-up.js';
import type { Message } from '../words/message.js';
import type { JobAnalysis } from './analysis.js';
import { refusedPanels } from './refused.js';

/** Name of the finding that a difference is. It is a fault of ours. */
export const PLAN_REPLAY_DIFFERS = 'plan-replay-differs';

export interface PanelName {
  readonly carcass: string;
  readonly panel: string;
}

/** What carrying out all set-ups of a job gives, against its bore maps. */
export interface JobReplay {
  /** Panels and holes that came out as their bore map says. */
  readonly panels: number;
  readonly holes: number;
  readonly differences: readonly (PanelName & { readonly message: Message })[];
  /** Panels with bores that are wrong in themselves, by the findings: no set-up of them could be right. */
  readonly notReplayed: readonly PanelName[];
}

/** Replays the set-ups, in this order, on every planned panel of a job. */
export function replayJob(analysis: JobAnalysis, setUps: readonly SetUp[]): JobReplay {
  const differences: JobReplay['differences'][number][] = [];
  const notReplayed: PanelName[] = [];
  let [panels, holes] = [0, 0];
  for (const one of analysis.planned()) {
    const refused = refusedPanels(one);
    const unreachable = new Set(one.operations?.unreachable.flatMap(({ bores }) => bores.map(({ id }) => id)));
    for (const panel of one.carcass?.panels ?? []) {
      const name = { carcass: one.name, panel: panel.key };
      if (refused.has(panel.key)) {
        notReplayed.push(name);
        continue;
      }
      const bores = one.boring?.bores.filter((bore) => bore.panel === panel.key) ?? [];
      const wanted = bores.filter(({ id }) => !unreachable.has(id));
      const replay = replayPanel(setUps, one.name, panel.key, blankOf(panel));
      const message = replay.ok ? compareHoles(replay.holes, wanted)?.message : replay.problems[0]?.message;
      if (message !== undefined) differences.push({ ...name, message });
      else {
        panels += 1;
        holes += wanted.length;
      }
    }
  }
  return { panels, holes, differences, notReplayed };
}
