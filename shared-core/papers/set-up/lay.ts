import { described } from '../../machining/described.js';
import { tell } from '../../words/message.js';
import { EDGES, FACES, LYING_ENDS } from '../../words/names.js';
import type { Told } from '../../words/told.js';
import { AGAINST, say, type Handled, type Lay } from './messages.js';
import type { Panel } from '../../carcass/model.js';
import { indexMove, offStop, turnOf } from '../../drawing/machine-view/words.js';
import { edgeWord, facesExplained, stopCalled, surfaceWord } from '../../drawing/words.js';
import type { Reader } from '../../length/reader.js';
import type { Micrometres } from '../../length/units.js';
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
  /** What is done with the panel before it. */
  readonly handled: Handled;
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
function laidRun(setUp: SetUp, run: Run, panel: Panel, { reader }: Omit<JobWords, 'panel'>): LaidRun {
  const read = strokesOf([setUp], run.carcass, run.panel, blankOf(panel));
  const tables = read.ok ? read.strokes.map(layOut) : [];
  const mixed = facesDown(setUp).length > 1;
  const steps = run.steps.map((step, index): LaidStep => {
    const table = tables[index];
    const lay = mixed ? layOf(setUp, step, panel) : endsOf(setUp, step, panel);
    return {
      handled: handledFrom(setUp, lay, { step, table }, { step: run.steps[index - 1], table: tables[index - 1] }),
      lowered: table?.stops.filter(({ lowered }) => lowered).map(({ name }) => name) ?? [],
      held: table === undefined || table.clamps.length === 0 || table.clamps.some(({ holds }) => holds),
      holes: step.holes.length,
    };
  });
  const content = runContent(setUp, run, blankOf(panel));
  return { carcass: run.carcass, panel: run.panel, pieces: run.pieces, size: sizeWords(panel, reader), content, steps };
}

/** 'outside face down, bottom end at near-left'; 'outside face down, left end to the head, front edge at square-left'. */
export function layWords(setUp: Pick<SetUp, 'machine'>, step: Step, panel: Panel): Told {
  return tell(say.lay(layOf(setUp, step, panel)), 'mm');
}

function layOf(setUp: Pick<SetUp, 'machine'>, step: Step, panel: Panel): Lay {
  return { ...endsOf(setUp, step, panel), face: surfaceWord(panel, step.down) };
}

/** The same where every panel lies on that face. */
function endsOf({ machine }: Pick<SetUp, 'machine'>, { end, edge, stop }: Step, panel: Panel): Lay {
  const isAtHead = described(machine).bores === 'ends';
  return {
    face: null,
    end: edgeWord(panel, end),
    edge: isAtHead ? edgeWord(panel, edge) : null,
    atFence: isAtHead || edge === 'front' ? null : edgeWord(panel, edge),
    stop: stopCalled(stop),
  };
}

/** The faces that lie down in a set-up; where there are two, every step says which. */
function facesDown({ runs }: SetUp): readonly Step['down'][] {
  return [...new Set(runs.flatMap(({ steps }) => steps.map(({ down }) => down)))];
}

/** A stroke, and how the panel lies on the table in it; undefined where there is none. */
interface Laid {
  readonly step: Step | undefined;
  readonly table: TableLayout | undefined;
}

/** How the panel comes from one stroke to the next; a turn is seen by where its corners come to lie. */
function handledFrom(setUp: SetUp, lay: Lay, now: Laid & { readonly step: Step }, last: Laid): Handled {
  const { step, table } = now;
  const before = last.step;
  const isPushed = before !== undefined && isAtSameStop(step, before);
  const from = isPushed ? before.moved : 0;
  const by: Micrometres = step.moved - from;
  const move = by === 0 ? null : indexMove(setUp, by);
  const turned = table === undefined || last.table === undefined ? null : turnOf(last.table, table);
  if (move !== null && isPushed && (turned === null || turned === 'none'))
    return { kind: 'moved', move, then: from === 0 || step.moved === 0 ? null : offStop(setUp, step) };
  const turn = turned !== 'none' ? turned : isPushed ? null : 'slide';
  return { kind: 'laid', turn, lay, move };
}

function isAtSameStop(step: Step, before: Step): boolean {
  return before.stop === step.stop && before.edge === step.edge && before.end === step.end && before.down === step.down;
}

/** How the panels of a set-up lie; one sentence each. */
export function layRules(setUp: SetUp, words: JobWords): readonly Told[] {
  const level = described(setUp.machine).bores === 'ends';
  const against = level ? AGAINST.squaringStop : AGAINST.fence;
  const [down, other] = facesDown(setUp);
  const laid = setUp.runs.map((run) => ({ run, panel: words.panel(run.carcass, run.panel) }));
  const edges = laid.flatMap(({ run, panel }) =>
    run.steps.map(({ edge }) => (panel === undefined ? { ...EDGES, ...LYING_ENDS }[edge] : edgeWord(panel, edge))),
  );
  const lies =
    other === undefined && down !== undefined
      ? say.sameFaceDown({ face: FACES[down], edges: [...new Set(edges)], against })
      : say.facesDiffer({ edges: [...new Set(edges)], against });
  const explained = facesExplained(laid.flatMap(({ panel }) => panel ?? []));
  const cut = laid.flatMap(({ run, panel }) => (panel?.corner === undefined ? [] : [`${run.carcass} ${run.panel}`]));
  return [
    tell(lies, words.reader),
    ...(explained === null ? [] : [explained]),
    ...(cut.length === 0 ? [] : [tell(say.cornersLater({ panels: cut }), words.reader)]),
  ];
}

/** 'slide it along: top end at near-right'; 'bottom end at row-left, then move it along …'. */
export function handledWords(handled: Handled, reader: Reader): Told {
  return tell(say.handled(handled), reader);
}
