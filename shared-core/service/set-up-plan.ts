import { say as sayOf, UNNAMED } from './messages.js';
import { asItIs, type Told } from '../words/told.js';
import type { CarcassAnalysis, JobAnalysis } from '../engine.js';
import { PLAN_REPLAY_DIFFERS, replayJob, type JobReplay } from '../engine/replay-job.js';
import { planReplayMessages } from '../findings/rules/plan-replay-differs.js';
import type { Reader } from '../length/reader.js';
import { costOf } from '../machining/plan/cost.js';
import { machineScene } from '../drawing/machine-view/view.js';
import type { Unreachable } from '../machining/plan/operation.js';
import type { Plan, PlannedSetUp } from '../machining/plan/plan.js';
import type { PlannedHole, Run, SetUp, Step } from '../machining/set-up.js';
import { list, type Paper } from '../papers/paper.js';
import { asText } from '../papers/render/text.js';
import { costSentences } from '../papers/set-up/cost.js';
import { setUpBlocks } from '../papers/set-up/paper.js';
import type { OnPaper } from '../papers/set-up/printed.js';
import { loadedIn } from '../papers/set-up/spindles.js';
import { say } from '../papers/set-up/messages.js';
import { strokesIn, totalsWords } from '../papers/set-up/totals.js';
import { boredWithin } from '../tolerance/bores.js';
import { listed } from '../words/english.js';
import { tell } from '../words/message.js';
import type { Answer } from './answer.js';
import { findingWords } from './findings.js';
import { jobWords } from './job-words.js';
import { mm } from './mm.js';
import { unboredHoles } from './set-ups.js';

/** Some or all set-ups of a plan. */
export interface SetUpsAnswer extends Answer {
  readonly paper: Paper;
}

/** The set-ups of a job in the order to run, after all of them were replayed. */
export interface ReplayedPlan {
  /** What is not to be bored from these set-ups and why, a line each; empty where all may be. */
  readonly refusals: readonly Told[];
  /** The machines that set-ups are on, in words: 'flat and rows', 'no machine'. */
  readonly machines: Told;
  /**
   * The set-ups on a machine, or on all heads of one body, with their numbers in the whole order; all for null. Null where
   * there is none on it. Where a replay differs no set-up is given in words.
   */
  on(machine: string | null): SetUpsAnswer | null;
  /** All of them for print: with the machines drawn, what to measure on first pieces, and boxes to tick. */
  printed(): Paper;
}

/** Plans the set-ups of a job and replays them. */
export function replayedPlan(analysis: JobAnalysis): ReplayedPlan {
  const plan = analysis.plan();
  const all = plan.setUps.map(({ setUp }) => setUp);
  const replay = replayJob(analysis, all);
  const machines = [...new Set(all.map(({ machine }) => machine.name))];
  return {
    refusals: [...differenceLines(replay), ...leftOutLines(analysis, replay)],
    printed: () => setUpsPaper(analysis, plan, replay, () => true, onPaper(analysis, all)),
    machines: machines.length === 0 ? tell(sayOf.noMachine(), 'mm') : asItIs(listed(machines)),
    on(name) {
      const isWanted: SetUpTest = ({ machine }) => name === null || machine.name === name || machine.body === name;
      if (name !== null && !all.some(isWanted)) return null;
      const paper = setUpsPaper(analysis, plan, replay, isWanted);
      return {
        paper,
        inWords: () => asText(paper),
        asData: () => planData(analysis, plan, replay, isWanted),
      };
    },
  };
}

function differenceLines({ differences }: JobReplay): readonly Told[] {
  return differences.map(({ carcass, panel, message }) =>
    findingWords({
      severity: 'error',
      rule: PLAN_REPLAY_DIFFERS,
      message: tell(planReplayMessages.differs({ panel, fault: message }), 'mm'),
      carcass,
      panel,
    }),
  );
}

/** What the set-ups are not for, and why. */
function leftOutLines(analysis: JobAnalysis, { notReplayed }: JobReplay): readonly Told[] {
  if (analysis.carcasses.length === 0) return [tell(say.noCarcass(), 'mm')];
  const left = leftOut(analysis);
  const panels = notReplayed.map(({ carcass, panel }) => tell(say.panelOf({ carcass, panel }), 'mm'));
  return [
    ...(left.length > 0 ? [tell(say.noSetUpsFor({ carcasses: left }), 'mm')] : []),
    ...(panels.length > 0 ? [tell(say.boreNot({ panels }), 'mm')] : []),
  ];
}

/** The carcasses that no set-ups are made for. */
function leftOut(analysis: JobAnalysis): readonly string[] {
  return analysis.carcasses.filter((one) => !analysis.isPlanned(one)).map(({ name }) => name || UNNAMED.carcass);
}

type SetUpTest = (setUp: SetUp) => boolean;

function planData(analysis: JobAnalysis, plan: Plan, replay: JobReplay, isWanted: SetUpTest): object {
  const { leastSetUps, seconds, leastSeconds, proven, provenOnce } = plan;
  const { shopReader: reader } = analysis;
  return {
    setups: plan.setUps.filter(({ setUp }) => isWanted(setUp)).map(setUpData),
    unreachable: analysis.planned().flatMap((one) => unreachableData(one, reader)),
    fewest: { setups: plan.setUps.length, least: leastSetUps, gap: plan.setUps.length - leastSetUps },
    changeover: { seconds, least: leastSeconds, proven, provenOnce, gap: seconds - leastSeconds },
    cost: costOf(plan, analysis.shop),
    replay: {
      ...replay,
      differences: replay.differences.map((one) => ({ ...one, message: tell(one.message, reader) })),
    },
  };
}

function setUpData({ setUp, refused, changes, seconds }: PlannedSetUp): object {
  const { id, machine, fence, height, stops, extension, depth, thickness, through, runs } = setUp;
  return {
    id,
    machine: machine.name,
    kind: machine.kind,
    fence: fence.map(mm),
    height: height === null ? null : mm(height),
    stops: stops.map(({ name, side, position }) => ({ name, side, position: mm(position) })),
    extension,
    depth: mm(depth),
    // What the depth is set for, where the head's travel ends over the table.
    ...(thickness === null ? {} : { thickness: mm(thickness) }),
    through,
    // Heads and spindles count from 0: spindle k stands k pitches on.
    spindles: loadedIn(setUp).map(spindleData),
    changeoverSeconds: seconds,
    changes,
    panels: runs.map(runData),
    // Not to be bored, as their bores have errors.
    refused: refused.map(({ carcass, panel, pieces }) => ({ carcass, panel, pieces })),
  };
}

function spindleData({ head, spindle, diameter }: Step['spindles'][number]): object {
  return { head, spindle, diameter: mm(diameter) };
}

function runData({ carcass, panel, pieces, steps }: Run): object {
  return { carcass, panel, pieces, steps: steps.map(stepData) };
}

function stepData({ down, edge, end, stop, moved, spindles, holes }: Step): object {
  return { down, edge, end, stop, moved: mm(moved), spindles: spindles.map(spindleData), holes: holes.map(holeData) };
}

function holeData({ face, u, v, diameter, depth, through, bore }: PlannedHole): object {
  return { face, u: mm(u), v: mm(v), diameter: mm(diameter), depth: mm(depth), through, bore };
}

function unreachableData({ name, operations }: CarcassAnalysis, reader: Reader): readonly object[] {
  return (operations?.unreachable ?? []).map(({ panel, machine, parameter, needed, reason, bores }: Unreachable) => ({
    carcass: name,
    panel,
    machine,
    parameter,
    needed: needed === null ? null : mm(needed),
    reason: tell(reason, reader),
    bores: bores.map(({ id }) => id),
  }));
}

/** The set-ups, with what is to be known before them. */
function setUpsPaper(
  analysis: JobAnalysis,
  plan: Plan,
  replay: JobReplay,
  isWanted: SetUpTest,
  onPaper: OnPaper | null = null,
): Paper {
  const { title } = analysis.head;
  const { shopReader: reader } = analysis;
  if (replay.differences.length > 0) {
    return { title: asItIs(title), blocks: list([tell(say.withheld(), reader)]) };
  }
  const lines = [
    totalsWords(plan),
    ...costSentences(costOf(plan, analysis.shop)),
    ...shareWords(plan, isWanted),
    replayWords(analysis, replay),
    ...analysis
      .planned()
      .flatMap(({ name, spec }) =>
        spec === null || spec.note === '' ? [] : [tell(say.note({ carcass: name, note: spec.note }), reader)],
      ),
    ...leftOut(analysis).map((carcass) => tell(say.leftOut({ carcass }), reader)),
    ...unreachableText(analysis),
  ];
  return {
    title: asItIs(title),
    blocks: [...list(lines), ...setUpBlocks(plan, jobWords(analysis), isWanted, onPaper)],
  };
}

function onPaper(analysis: JobAnalysis, setUps: readonly SetUp[]): OnPaper {
  const built = new Map(analysis.planned().map((one) => [one.name, one]));
  return {
    machine(setUp, { carcass: name, panel }, step, room) {
      const { carcass = null, boring = null } = built.get(name) ?? {};
      if (carcass === null || boring === null) return null;
      // As the scales of the machine show them.
      const drawn = { name, carcass, boring, findings: [], reader: analysis.shopReader };
      return machineScene(drawn, { setUps, setUp: setUp.id, panel, step }, 1, room);
    },
    bored(setUp, { carcass, panel: key }) {
      const panel = built.get(carcass)?.carcass?.panels.find((one) => one.key === key);
      return panel === undefined ? null : boredWithin(setUp, carcass, panel, analysis.shop.tolerances);
    },
  };
}

/** How much of the whole the wanted set-ups are, where they are not all. */
function shareWords({ setUps }: Plan, isWanted: SetUpTest): readonly Told[] {
  const own = setUps.filter(({ setUp }) => isWanted(setUp));
  if (own.length === setUps.length) return [];
  const seconds = own.reduce((sum, one) => sum + one.seconds, 0);
  return [tell(say.share({ setUps: own.length, strokes: strokesIn(own), seconds }), 'mm')];
}

/** What the replay has proven, and of how many holes there is nothing to prove. */
function replayWords(analysis: JobAnalysis, { panels, holes, notReplayed }: JobReplay): Told {
  const unbored = unboredHoles(analysis).reduce((sum, { count }) => sum + count, 0);
  return tell(say.replayed({ panels, holes, unbored, refused: notReplayed.length }), 'mm');
}

function unreachableText(analysis: JobAnalysis): readonly Told[] {
  return unboredHoles(analysis).map((one) => tell(say.notBored(one), 'mm'));
}
