import { described } from '../../machining/described.js';
import { tell } from '../../words/message.js';
import { EDGES, FACES } from '../../words/names.js';
import type { Told } from '../../words/told.js';
import { AGAINST, say } from './messages.js';
import type { Panel } from '../../carcass/model.js';
import { indexWords, movedWords, turnOf } from '../../drawing/machine-view/words.js';
import { edgeWord, endWord, facesExplained, stopCalled, surfaceWord } from '../../drawing/words.js';
import type { Micrometres, Unit } from '../../length/units.js';
import { blankOf } from '../../machining/blank.js';
import { layOut, type TableLayout } from '../../machining/replay/layout.js';
import { strokesOf } from '../../machining/replay/replay.js';
import type { Run, SetUp, Step } from '../../machining/set-up.js';
import { runContent } from './content.js';
import { sizeWords, type JobWords } from './words.js';

/** One panel of a set-up as its operator handles it. */
export interface LaidRun {
  readonly carcass: string;
  readonly panel: string;
  /** How many equal ones are bored so. */
  readonly pieces: number;
  /** '720 × 560 × 16 mm' */
  readonly size: Told;
  /** See `runContent`. */
  readonly content: string;
  readonly steps: readonly LaidStep[];
}

/** One stroke. */
export interface LaidStep {
  /** How the panel comes to lie otherwise than in the stroke before: 'slide it along'; null where it does not. */
  readonly turn: Told | null;
  /** 'bottom end at near-left' */
  readonly lay: Told;
  /** The index move from there, or from the stroke before: 'move it along 672 mm to the left, 21 pitches, …'; null where there is none. */
  readonly along: Told | null;
  /** Set stops that the panel covers, so that they must be down. */
  readonly lowered: readonly string[];
  /** False where the machine has clamps and none of them comes down on the panel. */
  readonly held: boolean;
  readonly holes: number;
}

/** How each panel of a set-up is laid, stroke by stroke, seen through the replay. */
export function laidRuns(setUp: SetUp, words: JobWords): readonly LaidRun[] {
  return setUp.runs.flatMap((run) => {
    const panel = words.panel(run.carcass, run.panel);
    return panel === undefined ? [] : [laidRun(setUp, run, panel, words)];
  });
}

/** The same for one panel. */
function laidRun(setUp: SetUp, run: Run, panel: Panel, { unit, machineUnit }: Omit<JobWords, 'panel'>): LaidRun {
  const read = strokesOf([setUp], run.carcass, run.panel, blankOf(panel));
  const tables = read.ok ? read.strokes.map(layOut) : [];
  const mixed = facesDown(setUp).length > 1;
  const steps = run.steps.map((step, index): LaidStep => {
    const table = tables[index];
    return {
      turn: turnWords(step, run.steps[index - 1], table, tables[index - 1]),
      lay: mixed ? layWords(setUp, step, panel) : endWords(setUp, step, panel),
      along: alongWords(setUp, step, run.steps[index - 1], machineUnit),
      lowered: table?.stops.filter(({ lowered }) => lowered).map(({ name }) => name) ?? [],
      held: table === undefined || table.clamps.length === 0 || table.clamps.some(({ holds }) => holds),
      holes: step.holes.length,
    };
  });
  const content = runContent(setUp, run, blankOf(panel));
  return { carcass: run.carcass, panel: run.panel, pieces: run.pieces, size: sizeWords(panel, unit), content, steps };
}

/** 'outside face down, bottom end at near-left'; 'outside face down, left end to the head, front edge at square-left'. */
export function layWords(setUp: Pick<SetUp, 'machine'>, step: Step, panel: Panel): Told {
  return tell(say.faceDown({ face: surfaceWord(panel, step.down), lay: endWords(setUp, step, panel) }), 'mm');
}

function endWords({ machine }: Pick<SetUp, 'machine'>, { end, edge, stop }: Step, panel: Panel): Told {
  const at = { end: endWord(panel, end), edge: edgeWord(panel, edge), stop: stopCalled(stop) };
  return tell((described(machine).bores === 'ends' ? say.atHead : say.atStop)(at), 'mm');
}

/** The faces that lie down in a set-up; where there are two, every step says which. */
function facesDown({ runs }: SetUp): readonly Step['down'][] {
  return [...new Set(runs.flatMap(({ steps }) => steps.map(({ down }) => down)))];
}

/** How the panel is turned or pushed from one lay to the next; the turn is seen by where its corners come to lie. */
function turnWords(
  step: Step,
  before: Step | undefined,
  table: TableLayout | undefined,
  last: TableLayout | undefined,
): Told | null {
  if (before === undefined || table === undefined || last === undefined) return null;
  switch (turnOf(last, table)) {
    case 'over':
      return tell(say.turnOver(), 'mm');
    case 'half':
      return tell(say.turnHalf(), 'mm');
    case 'none':
      return isAtSameStop(step, before) ? null : tell(say.slide(), 'mm');
  }
}

function isAtSameStop(step: Step, before: Step): boolean {
  return before.stop === step.stop && before.end === step.end && before.down === step.down;
}

/** The index move from the stop, or from where the panel lay in the stroke before; then also where that brings its end. */
function alongWords(setUp: SetUp, step: Step, before: Step | undefined, unit: Unit): Told | null {
  const from = before !== undefined && isAtSameStop(step, before) ? before.moved : 0;
  const by: Micrometres = step.moved - from;
  if (by === 0) return null;
  const move = indexWords(setUp, by, unit);
  if (from === 0 || step.moved === 0) return tell(say.moveAlong({ move }), unit);
  return tell(say.moveFurther({ move, then: movedWords(setUp, step, unit) }), unit);
}

/** How the panels of a set-up lie; one sentence each. */
export function layRules(setUp: SetUp, words: JobWords): readonly Told[] {
  const level = described(setUp.machine).bores === 'ends';
  const against = level ? AGAINST.squaringStop : AGAINST.fence;
  const [down, other] = facesDown(setUp);
  const edges = [...new Set(setUp.runs.flatMap(({ steps }) => steps.map(({ edge }) => EDGES[edge])))];
  const lies =
    other === undefined && down !== undefined
      ? say.sameFaceDown({ face: FACES[down], edges, against })
      : say.facesDiffer({ edges, against });
  const explained = facesExplained(setUp.runs.flatMap(({ carcass, panel }) => words.panel(carcass, panel) ?? []));
  return [tell(lies, words.unit), ...(explained === null ? [] : [explained])];
}

/** 'slide it along: top end at near-right'; 'bottom end at row-left, then move it along …'; 'move it along …'. */
export function handling({ turn, lay, along }: LaidStep, before: LaidStep | undefined): Told {
  if (along !== null && turn === null && before?.lay === lay) return along;
  const comes = turn === null ? lay : tell(say.turnedTo({ turn, lay }), 'mm');
  return along === null ? comes : tell(say.thenAlong({ lay: comes, along }), 'mm');
}
