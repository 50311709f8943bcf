import { blankOf } from '../../../../shared-core/machining/blank.js';
import { compareHoles } from '../../../../shared-core/machining/replay/compare.js';
import { replayPanel } from '../../../../shared-core/machining/replay/replay.js';
import type { SetUp } from '../../../../shared-core/machining/set-up.js';
import type { Bored } from './jobs.js';

/**
 * Whether set-ups can be run in an order, told by nothing but carrying them out: on every panel the replay meets nothing that
 * it must refuse, and the bores that they are claimed to make come out as the bore map has them, and no others.
 */
export class Trial {
  readonly #panels: {
    readonly isIn: (setUp: SetUp) => boolean;
    readonly isMade: (order: readonly SetUp[]) => boolean;
  }[];
  readonly #known: Map<string, boolean>[];

  constructor(carcasses: readonly Bored[], setUps: readonly SetUp[]) {
    const claimed = new Set<string>();
    for (const { carcass, panel, steps } of setUps.flatMap(({ runs }) => runs))
      for (const { bore } of steps.flatMap(({ holes }) => holes)) claimed.add(`${carcass}\n${panel}\n${bore}`);
    const panels = carcasses.flatMap(({ spec, carcass, boring }) =>
      carcass.panels.map((panel) => {
        const name = spec.name.value;
        const wanted = boring.bores.filter(
          (bore) => bore.panel === panel.key && claimed.has(`${name}\n${panel.key}\n${bore.id}`),
        );
        return {
          isIn: ({ runs }: SetUp) => runs.some((run) => run.carcass === name && run.panel === panel.key),
          isMade: (order: readonly SetUp[]) => {
            const replay = replayPanel(order, name, panel.key, blankOf(panel));
            return replay.ok && compareHoles(replay.holes, wanted) === null;
          },
        };
      }),
    );
    this.#panels = panels.filter(({ isIn }) => setUps.some(isIn));
    this.#known = this.#panels.map(() => new Map<string, boolean>());
  }

  /** @param order of the set-ups given */
  isMade(order: readonly SetUp[]): boolean {
    return this.#panels.every(({ isIn, isMade }, index) => {
      // What never sees a panel does nothing to it.
      const own = order.filter(isIn);
      const key = own.map(({ id }) => id).join();
      const known = this.#known[index]!.get(key);
      if (known !== undefined) return known;
      const answer = isMade(own);
      this.#known[index]!.set(key, answer);
      return answer;
    });
  }
}
