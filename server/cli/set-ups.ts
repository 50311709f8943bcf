import type { CarcassAnalysis, JobAnalysis } from '../../shared-core/engine.js';
import { PLAN_REPLAY_DIFFERS, replayJob, type JobReplay } from '../../shared-core/engine/replay-job.js';
import { sentence } from '../../shared-core/drawing/words.js';
import { counted, listed } from '../../shared-core/words/english.js';
import type { Micrometres } from '../../shared-core/length/units.js';
import { MICROMETRES_PER_MM } from '../../shared-core/length/units.js';
import type { Unreachable } from '../../shared-core/machining/plan/operation.js';
import { costOf } from '../../shared-core/machining/plan/cost.js';
import type { Plan, PlannedSetUp } from '../../shared-core/machining/plan/plan.js';
import type { PlannedHole, Run, SetUp, Step } from '../../shared-core/machining/setup-sheet.js';
import { list, type Paper } from '../../shared-core/papers/paper.js';
import { asText } from '../../shared-core/papers/render/text.js';
import { costSentences } from '../../shared-core/papers/set-up/cost.js';
import { setUpSheets } from '../../shared-core/papers/set-up/paper.js';
import { loadedIn } from '../../shared-core/papers/set-up/spindles.js';
import { countWords, totalsWords } from '../../shared-core/papers/set-up/totals.js';
import { timeWords } from '../../shared-core/papers/set-up/words.js';
import { jobWords } from '../../shared-core/service/job-words.js';
import { unboredHoles } from '../../shared-core/service/set-ups.js';
import { findingLine, findingsOf } from './check.js';
import { openJob } from './files.js';
import type { Outcome } from './run.js';
import { asJson, CouldNotRun, readArguments, readFormat } from './run.js';

const mm = (length: Micrometres): number => length / MICROMETRES_PER_MM;

/**
 * `borewright setups FILE [--format text|json] [--machine NAME]`: the set-ups of a job in the order to run, or those of one
 * machine of it, which keep their numbers in the whole order. Before anything is printed the
 * whole plan is replayed; where a replay differs no set-up is written as text. Errors of the job are told on stderr.
 */
export function setUps(args: readonly string[]): Outcome {
  const { options, rest } = readArguments(args, ['format', 'machine']);
  const format = readFormat(options.format);
  const [path, ...more] = rest;
  if (path === undefined || more.length > 0) throw new CouldNotRun('Name one job file: borewright setups FILE.');
  const job = openJob(path);
  const { analysis } = job;
  const plan = analysis.plan();
  const isWanted = wantedBy(options.machine, path, plan);
  const replay = replayJob(
    analysis,
    plan.setUps.map(({ setUp }) => setUp),
  );
  const errors = findingsOf(job).filter(({ severity }) => severity === 'error');
  const lines = [
    ...errors.map((finding) => findingLine(path, finding)),
    ...differenceLines(path, replay),
    ...leftOutLines(path, analysis, replay),
  ];
  return {
    output:
      format === 'json'
        ? asJson(planJson(analysis, plan, replay, isWanted))
        : asText(setUpsPaper(analysis, plan, replay, isWanted)),
    errors: lines.map((line) => `${line}\n`).join(''),
    code: lines.length > 0 || analysis.carcasses.length === 0 ? 1 : 0,
  };
}

function differenceLines(path: string, { differences }: JobReplay): readonly string[] {
  return differences.map(
    ({ carcass, panel, message }) =>
      `${path}: error ${PLAN_REPLAY_DIFFERS}: The set-ups of the job do not make the bore map of ${panel}: ${message}. The fault is Borewright’s, not yours. Do not bore this panel from these set-ups. (${carcass}, ${panel})`,
  );
}

/** What the set-ups are not for, and why. */
function leftOutLines(path: string, analysis: JobAnalysis, { notReplayed }: JobReplay): readonly string[] {
  if (analysis.carcasses.length === 0) return [`${path}: there is no carcass in this job.`];
  const left = leftOut(analysis);
  const panels = notReplayed.map(({ carcass, panel }) => `${panel} of ${carcass}`);
  return [
    ...(left.length > 0 ? [`${path}: no set-ups for ${left.join(', ')}; put the errors right first.`] : []),
    ...(panels.length > 0
      ? [`${path}: do not bore ${panels.join(', ')} from these set-ups before the errors are put right.`]
      : []),
  ];
}

/** The carcasses that no set-ups are made for. */
function leftOut(analysis: JobAnalysis): readonly string[] {
  return analysis.carcasses.filter((one) => !analysis.isPlanned(one)).map(({ name }) => name || '(no name)');
}

type SetUpTest = (setUp: SetUp) => boolean;

/** The set-ups on a machine, or on all heads of one body; all where none is named. */
function wantedBy(name: string | undefined, path: string, { setUps }: Plan): SetUpTest {
  if (name === undefined) return () => true;
  const isWanted: SetUpTest = ({ machine }) => machine.name === name || machine.body === name;
  if (setUps.some(({ setUp }) => isWanted(setUp))) return isWanted;
  const machines = [...new Set(setUps.map(({ setUp }) => setUp.machine.name))];
  const has = machines.length === 0 ? 'no machine' : listed(machines);
  throw new CouldNotRun(`No set-up of ${path} is on a machine called ${name}; they are on ${has}.`);
}

function planJson(analysis: JobAnalysis, plan: Plan, replay: JobReplay, isWanted: SetUpTest): object {
  const { leastSetUps, seconds, leastSeconds, proven, provenOnce } = plan;
  return {
    setups: plan.setUps.filter(({ setUp }) => isWanted(setUp)).map(setUpJson),
    unreachable: analysis.planned().flatMap(unreachableJson),
    fewest: { setups: plan.setUps.length, least: leastSetUps, gap: plan.setUps.length - leastSetUps },
    changeover: { seconds, least: leastSeconds, proven, provenOnce, gap: seconds - leastSeconds },
    cost: costOf(plan, analysis.shop),
    replay,
  };
}

function setUpJson({ setUp, changes, seconds }: PlannedSetUp): object {
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
    spindles: loadedIn(setUp).map(spindleJson),
    changeoverSeconds: seconds,
    changes,
    panels: runs.map(runJson),
  };
}

function spindleJson({ head, spindle, diameter }: Step['spindles'][number]): object {
  return { head, spindle, diameter: mm(diameter) };
}

function runJson({ carcass, panel, pieces, steps }: Run): object {
  return { carcass, panel, pieces, steps: steps.map(stepJson) };
}

function stepJson({ down, edge, end, stop, moved, spindles, holes }: Step): object {
  return { down, edge, end, stop, moved: mm(moved), spindles: spindles.map(spindleJson), holes: holes.map(holeJson) };
}

function holeJson({ face, u, v, diameter, depth, through, bore }: PlannedHole): object {
  return { face, u: mm(u), v: mm(v), diameter: mm(diameter), depth: mm(depth), through, bore };
}

function unreachableJson({ name, operations }: CarcassAnalysis): readonly object[] {
  return (operations?.unreachable ?? []).map(({ panel, machine, parameter, needed, reason, bores }: Unreachable) => ({
    carcass: name,
    panel,
    machine,
    parameter,
    needed: needed === null ? null : mm(needed),
    reason,
    bores: bores.map(({ id }) => id),
  }));
}

/** The set-up sheets, with what is to be known before them. */
export function setUpsPaper(analysis: JobAnalysis, plan: Plan, replay: JobReplay, isWanted: SetUpTest): Paper {
  const { title } = analysis.head;
  if (replay.differences.length > 0) {
    const withheld =
      'The set-ups are withheld: a replay of them does not give the bore maps. Bore nothing from this plan.';
    return { title, blocks: list([withheld]) };
  }
  const lines = [
    totalsWords(plan),
    ...costSentences(costOf(plan, analysis.shop)),
    ...shareWords(plan, isWanted),
    replayWords(analysis, replay),
    ...analysis
      .planned()
      .flatMap(({ name, spec }) => (spec === null || spec.note === '' ? [] : [`Note on ${name}: ${spec.note}`])),
    ...leftOut(analysis).map((name) => `LEFT OUT: ${name}. Put its errors right first.`),
    ...unreachableText(analysis),
  ];
  const isRefused = (carcass: string, panel: string): boolean =>
    replay.notReplayed.some((one) => one.carcass === carcass && one.panel === panel);
  return { title, blocks: [...list(lines), ...setUpSheets(plan, jobWords(analysis), isRefused, isWanted)] };
}

/** How much of the whole the wanted set-ups are, where they are not all. */
function shareWords({ setUps }: Plan, isWanted: SetUpTest): readonly string[] {
  const own = setUps.filter(({ setUp }) => isWanted(setUp));
  if (own.length === setUps.length) return [];
  const seconds = own.reduce((sum, one) => sum + one.seconds, 0);
  return [`Of these here: ${countWords(own)}; changeovers ${timeWords(seconds)}.`];
}

/** What the replay has proven, and of how many holes there is nothing to prove. */
function replayWords(analysis: JobAnalysis, { panels, holes, notReplayed }: JobReplay): string {
  const unbored = unboredHoles(analysis).reduce((sum, { count }) => sum + count, 0);
  const left = [
    ...(unbored > 0 ? [`${counted(unbored, 'hole')} in no set-up`] : []),
    ...(notReplayed.length > 0 ? [`${counted(notReplayed.length, 'panel')} not to be bored`] : []),
  ];
  const rest = left.length === 0 ? '' : `; ${left.join(', ')}, see below`;
  return `Replayed from the set-ups alone: ${panels} panels, ${holes} holes, all as in their bore maps${rest}.`;
}

function unreachableText(analysis: JobAnalysis): readonly string[] {
  return unboredHoles(analysis).map(
    ({ carcass, panel, count, reason }) =>
      `NOT BORED: ${counted(count, 'hole')} of ${carcass} ${panel}. ${sentence(reason)}`,
  );
}
