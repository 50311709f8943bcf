import {
  bestOrder,
  orderTask,
  planInOrder,
  type OrderTask,
  type Plan,
  type SetUpOrder,
} from '../machining/plan/plan.js';
import { refusing, setUpsInSteps, type BatchedSetUp } from '../machining/plan/set-ups.js';
import type { Run } from '../machining/set-up.js';
import type { Derived } from '../derived/derived.js';
import type { Steps } from '../derived/steps.js';
import type { Shop } from '../shop/model.js';
import type { CarcassAnalysis, FileFinding } from './carcass-analysis.js';
import { refusedPanels } from './refused.js';
import { findAlongWalls } from './along-walls.js';
import { areToldOf, findSetUpsForOne } from './set-ups-for-one.js';

/**
 * What the carcasses of a job ask of the machines together. It goes with them from one text to the next while none of them
 * changes, so that an edit of the title plans nothing anew. Each thing is made at the first asking.
 */
export class Planning {
  #namesMade: ReadonlyMap<string, CarcassAnalysis> | null = null;
  /** The set-ups before they were ordered, and with those whose panels must not be bored. */
  #sorted: readonly BatchedSetUp[] | null;
  #sorting: Steps<readonly BatchedSetUp[]> | null = null;
  #setUpsMade: readonly BatchedSetUp[] | null = null;
  #planMade: Plan | null = null;
  #forOneMade: readonly FileFinding[] | null = null;
  #alongWallsMade: readonly FileFinding[] | null = null;

  /** @param sorted their set-ups, where they are known */
  constructor(
    readonly carcasses: readonly CarcassAnalysis[],
    readonly shop: Shop,
    readonly derived: Derived,
    sorted: readonly BatchedSetUp[] | null = null,
  ) {
    this.#sorted = sorted;
  }

  /**
   * The same for another text of the job, or another text of its shop: all of it where these very carcasses are there, in this
   * order, and the set-ups where what they ask of the machines has not changed; null where nothing holds there.
   */
  for(carcasses: readonly CarcassAnalysis[], shop: Shop): Planning | null {
    const isAll = (same: (one: CarcassAnalysis, other: CarcassAnalysis) => boolean): boolean =>
      carcasses.length === this.carcasses.length && carcasses.every((one, index) => same(one, this.carcasses[index]!));
    if (shop === this.shop && isAll((one, other) => one === other)) return this;
    return isAll((one, other) => one.name === other.name && one.operations === other.operations)
      ? new Planning(carcasses, shop, this.derived, this.#sorted)
      : null;
  }

  planned(): readonly CarcassAnalysis[] {
    return [...this.byName().values()];
  }

  byName(): ReadonlyMap<string, CarcassAnalysis> {
    if (this.#namesMade === null) {
      const byName = new Map<string, CarcassAnalysis>();
      for (const one of this.carcasses) if (one.operations && !byName.has(one.name)) byName.set(one.name, one);
      this.#namesMade = byName;
    }
    return this.#namesMade;
  }

  /** All that are run, with the panels that may be bored: without those whose panels must all not be. */
  setUps(): readonly BatchedSetUp[] {
    this.sort();
    return this.#setUpsMade!;
  }

  /** Works on the set-ups until they are known (true) or `enough` says so. At least one step is done. */
  sort(enough: () => boolean = () => false): boolean {
    while (this.#sorted === null) {
      this.#sorting ??= setUpsInSteps(
        this.planned().flatMap((one) => (one.operations ? [one.operations] : [])),
        this.derived,
      );
      const step = this.#sorting.next();
      if (step.done === true) this.#sorted = step.value;
      else if (enough()) return false;
    }
    this.#sorting = null;
    if (this.#setUpsMade === null) {
      const run = this.#sorted
        .map((one) => refusing(one, (run) => this.#isRefused(run)))
        .filter(({ setUp }) => setUp.runs.length > 0);
      // What hangs on the set-ups is kept by their list.
      const isSame = run.length === this.#sorted.length && run.every((one, index) => one === this.#sorted![index]);
      this.#setUpsMade = isSame ? this.#sorted : run;
    }
    return true;
  }

  /** The set-ups of panels that must not be bored: to change over to one would be for nothing. */
  notRun(): readonly BatchedSetUp[] {
    this.sort();
    return this.#sorted!.filter(({ setUp }) => setUp.runs.every((run) => this.#isRefused(run)));
  }

  #isRefused({ carcass, panel }: Run): boolean {
    const own = this.byName().get(carcass);
    return own !== undefined && this.derived.get(refusedPanels, own).has(panel);
  }

  plan(): Plan {
    return this.#planMade ?? this.#keep(bestOrder(this.#task()));
  }

  async planBy(order: (task: OrderTask) => Promise<SetUpOrder>): Promise<Plan> {
    if (this.#planMade !== null) return this.#planMade;
    const found = await order(this.#task());
    return this.#planMade ?? this.#keep(found);
  }

  /** Whether set-ups are lettered as they are run. */
  get isOrdered(): boolean {
    return this.#planMade !== null;
  }

  #task(): OrderTask {
    return orderTask(this.setUps(), this.shop.changeover);
  }

  /** From now on set-ups have the letters of the plan, wherever they are shown. */
  #keep(found: SetUpOrder): Plan {
    const batched = this.setUps();
    const plan = planInOrder(batched, this.shop.changeover, found, this.notRun());
    const named = [...batched];
    found.order.forEach((index, run) => {
      named[index] = { ...batched[index]!, setUp: plan.setUps[run]!.setUp };
    });
    this.#setUpsMade = named;
    this.#planMade = plan;
    return plan;
  }

  /** Works on what `forOne` needs until it is known (true) or `enough` says so. */
  prepareForOne(enough: () => boolean): boolean {
    return this.#forOneMade !== null || !areToldOf(this.carcasses) || (!enough() && this.sort(enough));
  }

  /** Findings of set-ups that serve a single panel. */
  forOne(): readonly FileFinding[] {
    this.#forOneMade ??= findSetUpsForOne(this);
    return this.#forOneMade;
  }

  /** Findings of carcasses that do not stand along their walls as they should. */
  alongWalls(): readonly FileFinding[] {
    this.#alongWallsMade ??= findAlongWalls(this.carcasses, this.shop.habits, this.derived);
    return this.#alongWallsMade;
  }

  /** Those of set-ups where they are known already; null where not. */
  get forOneKnown(): readonly FileFinding[] | null {
    return this.#forOneMade;
  }
}
