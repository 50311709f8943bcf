import { say } from './messages.js';
import type { Told } from '../words/told.js';
import type { ListedRun, ListedSetUp, SetUpsReply, SetUpTotals, UnboredHoles } from '../drawing/messages/set-ups.js';
import type { TextRange } from '../drawing/messages/drawing.js';
import { showLength } from '../length/show.js';
import { unitFor, type Reader } from '../length/reader.js';
import type { JobAnalysis } from '../engine.js';
import { cautionsFor } from '../machining/caution.js';
import { costOf } from '../machining/plan/cost.js';
import { groupBy } from '../machining/plan/numbers.js';
import type { Plan } from '../machining/plan/plan.js';
import { wholeSentence } from '../papers/set-up/cost.js';
import type { SetUp } from '../machining/set-up.js';
import { say as sayOfSetUps } from '../papers/set-up/messages.js';
import { contentOf } from '../papers/set-up/content.js';
import { firstPiece } from '../papers/set-up/first-piece.js';
import { handledWords, laidRuns, layRules, type LaidRun } from '../papers/set-up/lay.js';
import { changeSentences, inOrder, settingsOf, type InOrder } from '../papers/set-up/settings.js';
import { loadedIn } from '../papers/set-up/spindles.js';
import { totalsWords } from '../papers/set-up/totals.js';
import { timeWords, type JobWords } from '../papers/set-up/words.js';
import type { Shop } from '../shop/model.js';
import { KIND_WORDS } from '../shop/kind-words.js';
import { inJob, type AnalysedFile, type JobFile, type ToRange } from './file.js';
import type { DrawnDocument } from './drawing.js';
import { jobWords } from './job-words.js';
import { tell } from '../words/message.js';

/**
 * The set-ups of a job in the order to run, as the client lists them. `plan` is of the file's analysis; null for a shop file.
 * @param stale why the file is not of the present text; null where it is
 */
export function listSetUps(
  file: AnalysedFile,
  { uri, version, toRange }: DrawnDocument,
  plan: Plan | null,
  stale: string | null,
): SetUpsReply {
  if (file.kind === 'shop' || plan === null) {
    const reason = tell(say.shopHasNoSetUps(), 'mm');
    return { kind: 'nothing', uri, version, reason };
  }
  const { analysis } = file;
  const words = jobWords(analysis);
  const ranges = panelRanges(file, toRange);
  const listedSetUps = inOrder(plan).map((one) => listedSetUp(one, words, ranges));
  const unbored = unboredHoles(analysis);
  if (listedSetUps.length === 0 && unbored.length === 0) {
    return { kind: 'nothing', uri, version, reason: reasonFor(analysis) };
  }
  return {
    kind: 'set-ups',
    uri,
    version,
    stale,
    title: analysis.head.title,
    unit: unitFor(analysis.reader),
    setUps: listedSetUps,
    totals: totalsOf(plan, listedSetUps, analysis.shop),
    unbored,
    broken: analysis.carcasses.filter((one) => !analysis.isPlanned(one)).map(({ name }) => name),
  };
}

function listedSetUp(one: InOrder, words: JobWords, ranges: PanelRanges): ListedSetUp {
  const { setUp, refused, seconds, strokes } = one.planned;
  const { machineReader: reader } = words;
  const runs = laidRuns(setUp, words).map((run) => listedRun(run, reader, ranges));
  return {
    id: setUp.id,
    content: contentOf(setUp),
    machine: setUp.machine.name,
    kind: setUp.machine.kind,
    kindWords: KIND_WORDS[setUp.machine.kind],
    changes: changeSentences(one, reader),
    seconds,
    time: timeWords(seconds),
    settings: settingsOf(one, reader),
    stops: setUp.stops.map((stop) => ({ ...stop, words: showLength(stop.position, reader) })),
    fence: setUp.fence,
    height: setUp.height,
    extension: setUp.extension,
    depth: setUp.depth,
    through: setUp.through,
    spindles: loadedIn(setUp),
    runs,
    refused: laidRuns({ ...setUp, runs: refused }, words).map(({ carcass, panel, pieces, size }) => ({
      carcass,
      panel,
      pieces,
      size,
      range: ranges(carcass, panel),
      words: tell(sayOfSetUps.doNotBore(), reader),
    })),
    firstPiece: firstPieceOf(setUp, words),
    strokes,
    holes: sum(runs.flatMap(({ pieces, steps }) => steps.map(({ holes }) => pieces * holes))),
    lay: layRules(setUp, words),
    cautions: cautionsFor(setUp).map(({ text }) => text),
  };
}

/** In the job's reader, as its bore maps are. */
function firstPieceOf({ runs: [run] }: SetUp, words: JobWords): ListedSetUp['firstPiece'] {
  const panel = run === undefined ? undefined : words.panel(run.carcass, run.panel);
  return run === undefined || panel === undefined ? [] : firstPiece(run, panel, words.reader);
}

function listedRun(
  { carcass, panel, pieces, size, content, steps }: LaidRun,
  reader: Reader,
  ranges: PanelRanges,
): ListedRun {
  return {
    carcass,
    panel,
    pieces,
    size,
    content,
    range: ranges(carcass, panel),
    steps: steps.map(({ handled, ...rest }) => ({ words: handledWords(handled, reader), ...rest })),
  };
}

type PanelRanges = (carcass: string, panel: string) => TextRange | null;

/** Where the text of each panel stands in the job file. */
function panelRanges({ analysis }: JobFile, toRange: ToRange): PanelRanges {
  const planned = new Set(analysis.planned());
  const known = new Map<string, TextRange>();
  analysis.carcasses.forEach((one, index) => {
    if (!planned.delete(one)) return;
    for (const { key, place } of one.carcass?.panels ?? []) {
      const span = inJob(analysis, place, index);
      if (span !== null) known.set(`${one.name}\n${key}`, toRange(span.start, span.end));
    }
  });
  return (carcass, panel) => known.get(`${carcass}\n${panel}`) ?? null;
}

function totalsOf(plan: Plan, setUps: readonly ListedSetUp[], shop: Shop): SetUpTotals {
  const panels = new Map(
    setUps.flatMap(({ runs }) => runs.map(({ carcass, panel, pieces }) => [`${carcass}\n${panel}`, pieces] as const)),
  );
  return {
    setUps: setUps.length,
    leastSetUps: plan.leastSetUps,
    strokes: sum(setUps.map(({ strokes }) => strokes)),
    panels: sum([...panels.values()]),
    holes: sum(setUps.map(({ holes }) => holes)),
    seconds: plan.seconds,
    leastSeconds: plan.leastSeconds,
    proven: plan.proven,
    words: setUps.length === 0 ? totalsWords(plan) : `${totalsWords(plan)} ${wholeSentence(costOf(plan, shop))}`,
  };
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, one) => total + one, 0);
}

/** What no set-up bores, told with what stands in the way. */
export function unboredHoles(analysis: JobAnalysis): readonly UnboredHoles[] {
  const unreachable = analysis.planned().flatMap(({ name, operations }) =>
    (operations?.unreachable ?? []).map(({ panel, bores, machine, reason }): UnboredHoles => ({
      carcass: name,
      panel,
      count: bores.length,
      machine,
      reason: tell(reason, analysis.shopReader),
    })),
  );
  return [...unreachable, ...refusedHoles(analysis)];
}

/** Holes of panels that have bores with errors, whether they would be in a set-up with others or alone. */
function refusedHoles(analysis: JobAnalysis): readonly UnboredHoles[] {
  const runs = [
    ...analysis.setUps().flatMap(({ refused }) => refused),
    ...analysis.setUpsNotRun().flatMap(({ setUp }) => setUp.runs),
  ];
  const byPanel = groupBy(runs, ({ carcass, panel }) => JSON.stringify([carcass, panel]));
  return [...byPanel.values()].map((of): UnboredHoles => ({
    carcass: of[0]!.carcass,
    panel: of[0]!.panel,
    count: sum(of.flatMap(({ steps }) => steps.map(({ holes }) => holes.length))),
    machine: null,
    reason: tell(say.panelRefused(), analysis.reader),
  }));
}

function reasonFor(analysis: JobAnalysis): Told {
  const first = analysis.known().find(({ finding }) => finding.severity === 'error');
  return tell(
    first !== undefined
      ? say.notPlannedYet({ fault: first.finding.message })
      : analysis.carcasses.length === 0
        ? say.noCarcasses()
        : say.nothingBored({ carcasses: analysis.carcasses.map(({ name }) => name) }),
    analysis.reader,
  );
}
