import { tell } from '../words/message.js';
import type { Told } from '../words/told.js';
import { HEADS, hover } from './messages.js';
import { isRow } from '../fittings/purposes.js';
import type { Panel } from '../carcass/model.js';
import type { Path } from '../document/place.js';
import { stopCalled } from '../drawing/words.js';
import { fine } from '../length/show.js';
import type { CarcassAnalysis, JobAnalysis } from '../engine.js';
import type { Reader } from '../length/reader.js';
import type { BatchedSetUp } from '../machining/plan/set-ups.js';
import type { SetUp, Step } from '../machining/set-up.js';
import { pinHoles as pinsOf, pinNumbers, type PinHole } from '../papers/pins.js';
import { layWords } from '../papers/set-up/lay.js';
import { rowStrokes, type RowStrokes } from '../papers/set-up/row-strokes.js';
import { bitWords, loadedIn } from '../papers/set-up/spindles.js';
import type { FigureName } from '../tolerance/assemble.js';
import type { Figure } from '../tolerance/spread.js';
import { toleranceOf, type CarcassTolerance, type JointTolerance } from '../tolerance/tolerance.js';
import { code, plain, table } from './markdown.js';

// What the machines do, as Markdown for hovers. From the set-ups, never from the plan: no order of set-ups is needed here.

/** A stroke with the set-up and the panel that it is of. */
export interface PanelStep {
  readonly setUp: SetUp;
  /** Its name; that of its machine alone until the order to run is known. */
  readonly called: string;
  readonly panel: string;
  readonly step: Step;
}

/** All steps of a carcass, set-up by set-up. Empty for one that no set-ups are made for. */
export function stepsOf(analysis: JobAnalysis, carcass: CarcassAnalysis): readonly PanelStep[] {
  if (!analysis.isPlanned(carcass)) return [];
  const work = analysis.isOrdered ? letteredSteps : stepsOnMachines;
  return analysis.derived.get(work, analysis.setUps()).get(carcass.name) ?? [];
}

const letteredSteps = (setUps: readonly BatchedSetUp[]): ReadonlyMap<string, readonly PanelStep[]> =>
  stepsByCarcass(setUps, ({ id }) => id);

/** Until the order to run is known a set-up has no letter. */
const stepsOnMachines = (setUps: readonly BatchedSetUp[]): ReadonlyMap<string, readonly PanelStep[]> =>
  stepsByCarcass(setUps, ({ machine }) => machine.name);

function stepsByCarcass(
  setUps: readonly BatchedSetUp[],
  nameOf: (setUp: SetUp) => string,
): ReadonlyMap<string, readonly PanelStep[]> {
  const found = new Map<string, PanelStep[]>();
  for (const { setUp } of setUps) {
    for (const run of setUp.runs) {
      const own = found.get(run.carcass) ?? [];
      for (const step of run.steps) own.push({ setUp, called: nameOf(setUp), panel: run.panel, step });
      found.set(run.carcass, own);
    }
  }
  return found;
}

/** '**On the machines:** 10 strokes in 5 set-ups.' */
export function onMachines(steps: readonly PanelStep[]): Told {
  const setUps = new Set(steps.map(({ setUp }) => setUp));
  return tell(hover.onMachines({ strokes: steps.length, setUps: setUps.size }), 'mm');
}

/** A hover with more lines than this is read by nobody. */
const MOST_ROWS = 12;

/** The set-ups that steps are of, one line each. */
export function setUpTable(steps: readonly PanelStep[], reader: Reader): string {
  if (steps.length === 0) return '';
  const setUps = [...new Set(steps.map(({ setUp }) => setUp))];
  const shown = setUps.slice(0, MOST_ROWS);
  const lines = table(
    [
      { title: HEADS.setUp },
      { title: HEADS.stops },
      { title: HEADS.depth },
      { title: HEADS.bits },
      { title: HEADS.strokes, figures: true },
    ],
    shown.map((setUp) => {
      const own = steps.filter((one) => one.setUp === setUp);
      const used = new Set(own.map(({ step }) => step.stop));
      const stops = setUp.stops.filter(({ name }) => used.has(name));
      return [
        own[0]!.called,
        stops.map((stop) => stopWords(stop, reader)).join(', '),
        depthWords(setUp, reader),
        bits(setUp, reader),
        String(own.length),
      ];
    }),
  );
  const more = setUps.length - shown.length;
  return more === 0 ? lines : `${lines}\n\n${tell(hover.more({ count: more }), reader)}`;
}

/** The strokes given, panel by panel: where each lies, at which stop, how deep, with which bits. Rows alike are told once, too many by set-up. */
export function stepTable(carcass: CarcassAnalysis, steps: readonly PanelStep[], reader: Reader): string {
  const panels = new Map(carcass.carcass?.panels.map((panel): [string, Panel] => [panel.key, panel]));
  const rows = steps.flatMap(({ setUp, called, panel: key, step }): readonly (readonly string[])[] => {
    const panel = panels.get(key);
    const stop = setUp.stops.find(({ name }) => name === step.stop);
    if (panel === undefined || stop === undefined) return [];
    const lay = tell(hover.layAt({ lay: layWords(setUp, step, panel), at: stop.position }), reader);
    return [[key, called, lay, depthWords(setUp, reader), bits(setUp, reader)]];
  });
  const different = [...new Map(rows.map((row) => [row.join('\n'), row])).values()];
  if (different.length === 0) return '';
  if (different.length > MOST_ROWS) return setUpTable(steps, reader);
  return table(
    [
      { title: HEADS.panel },
      { title: HEADS.setUp },
      { title: HEADS.lie },
      { title: HEADS.depth },
      { title: HEADS.bits },
    ],
    different,
  );
}

function stopWords({ name, position }: SetUp['stops'][number], reader: Reader): Told {
  return tell(hover.stop({ stop: stopCalled(name), at: position }), reader);
}

/** '12 mm'; 'through 16 mm'; '19 mm at 8 mm height' */
function depthWords({ depth, through, height }: SetUp, reader: Reader): Told {
  return tell(hover.depth({ depth, through, height }), reader);
}

function bits(setUp: SetUp, reader: Reader): Told {
  return bitWords(loadedIn(setUp), setUp, reader);
}

/** The steps that bore any of the bores named. */
export function stepsBoring(steps: readonly PanelStep[], bores: ReadonlySet<string>): readonly PanelStep[] {
  return steps.filter(({ step }) => step.holes.some(({ bore }) => bores.has(bore)));
}

/** Joints that panels bring with them: those of their ends, and of a top or bottom also those of its faces. */
export function jointsOf({ carcass }: CarcassAnalysis, panels: readonly Panel[]): ReadonlySet<string> {
  const ends = new Set(panels.map(({ key }) => key));
  const faces = new Set(panels.filter(({ role }) => role === 'top' || role === 'bottom').map(({ key }) => key));
  const own = carcass?.joints.filter(({ endPanel, facePanel }) => ends.has(endPanel) || faces.has(facePanel)) ?? [];
  return new Set(own.map(({ id }) => id));
}

const ROW_KEYS: ReadonlySet<unknown> = new Set(['rows', 'row-offset', 'row-setback', 'rear-row']);

/** Whether the text at a path is about rows, not about the panels that have them. */
export function isAboutRows(path: Path): boolean {
  return ROW_KEYS.has(path[0]) || (path[0] === 'panels' && ROW_KEYS.has(path[2]));
}

/** The bores that a line about panels causes: of its rows, of the joints of the panels, or all of a panel chosen by name. */
export function boresAt(carcass: CarcassAnalysis, path: Path, panels: readonly Panel[]): ReadonlySet<string> {
  const keys = new Set(panels.map(({ key }) => key));
  const all = carcass.boring?.bores ?? [];
  if (isAboutRows(path)) return idsOf(all.filter((bore) => keys.has(bore.panel) && isRow(bore)));
  if (path[0] === 'panels') return idsOf(all.filter((bore) => keys.has(bore.panel)));
  const joints = jointsOf(carcass, panels);
  return idsOf(all.filter((bore) => joints.has(bore.group)));
}

function idsOf(bores: readonly { readonly id: string }[]): ReadonlySet<string> {
  return new Set(bores.map(({ id }) => id));
}

/** How the rows of a panel are bored; rows that share their strokes are told together. Empty where no set-up makes one. */
export function rowStrokeWords(analysis: JobAnalysis, carcass: CarcassAnalysis, panel: Panel): string {
  if (carcass.boring === null || !analysis.isPlanned(carcass)) return '';
  const { rows, bores } = carcass.boring;
  const setUps = analysis.setUps().map(({ setUp }) => setUp);
  const told = new Map<string, { readonly lines: string[]; readonly made: RowStrokes }>();
  for (const row of rows.filter((one) => one.panel === panel.key)) {
    const own = idsOf(bores.filter(({ group }) => group === row.id));
    const made = rowStrokes(setUps, carcass.name, panel, row, own);
    if (made === null) continue;
    const key = made.strokes.map(({ setUp, step }) => `${setUps.indexOf(setUp)} ${step.stop} ${step.moved}`).join();
    const alike = told.get(key);
    if (alike === undefined) told.set(key, { lines: [row.line], made });
    else alike.lines.push(row.line);
  }
  return [...told.values()].map(({ lines, made }) => strokesTold(plain(panel.key), lines, made, analysis)).join('\n');
}

/** '- left, front row: 3 strokes on row-drill, row-left at 8 mm; Ø 5 mm in spindles 1 to 21, then …; 2 index moves, …; not centred.' */
function strokesTold(
  panel: string,
  lines: readonly string[],
  { strokes, moves, centred }: RowStrokes,
  { isOrdered, shopReader: reader }: JobAnalysis,
): Told {
  const setUps = [...new Set(strokes.map(({ setUp }) => setUp))];
  const [first] = setUps;
  const stops = strokes.flatMap(({ setUp, step }) =>
    setUp.stops
      .filter(({ name }) => name === step.stop)
      .map(({ name, position }) => ({ name: code(name), at: position })),
  );
  return tell(
    hover.rowStrokes({
      panel,
      lines,
      strokes: strokes.length,
      machine: code(first!.machine.name),
      stops,
      depth: depthWords(first!, reader),
      through: first!.through,
      setUps: isOrdered ? setUps.map(({ id }) => plain(id)) : [],
      bits: setUps.map((setUp) => bits(setUp, reader)),
      moves,
      centred,
    }),
    reader,
  );
}

/** The tolerance of the joints of a carcass by its present set-ups, worked out once: it takes some milliseconds. */
function toleranceFor(analysis: JobAnalysis, one: CarcassAnalysis): CarcassTolerance | null {
  if (!analysis.isPlanned(one)) return null;
  return analysis.derived.get(tolerances, analysis)(one);
}

function tolerances(analysis: JobAnalysis): (one: CarcassAnalysis) => CarcassTolerance | null {
  const setUps = analysis.setUps().map(({ setUp }) => setUp);
  const work = ({ name, carcass, boring }: CarcassAnalysis): CarcassTolerance | null =>
    carcass === null || boring === null ? null : toleranceOf({ name, carcass, boring, setUps, shop: analysis.shop });
  return (one) => analysis.derived.get(work, one);
}

const FIGURES = ['front', 'step', 'gap'] as const satisfies readonly FigureName[];

/** What can come out at the joints, the worst of each figure; `joints` null for all of them. Empty where nothing is known. */
export function toleranceWords(
  analysis: JobAnalysis,
  carcass: CarcassAnalysis,
  joints: ReadonlySet<string> | null,
): string {
  const all = toleranceFor(analysis, carcass)?.joints ?? [];
  const those = all.filter(({ joint }) => joints === null || joints.has(joint));
  const { reader } = analysis;
  const parts = FIGURES.flatMap((name) => {
    const counts = those.filter((one) => (name === 'front' ? one.frontFlush : name === 'step' ? one.stepFlush : true));
    const worst = worstOf(counts, name);
    if (worst === null) return [];
    return [{ of: name, likely: fine(worst.rootSumSquare, reader), worst: fine(worst.worst, reader) }];
  });
  if (parts.length === 0) return '';
  const open = those.filter(({ closes }) => closes === 'not-always').length;
  return tell(hover.tolerance({ joints: those.length, worst: parts, open }), reader);
}

function worstOf(joints: readonly JointTolerance[], name: FigureName): Figure | null {
  return joints.reduce<Figure | null>(
    (most, joint) => (most === null || joint[name].worst > most.worst ? joint[name] : most),
    null,
  );
}

/** The holes that the pins of loose shelves stand in; none in a carcass that cannot be bored. */
export function pinHoles({ carcass, spec, boring }: CarcassAnalysis, panels: readonly Panel[]): readonly PinHole[] {
  return spec === null || carcass === null || boring === null ? [] : pinsOf({ carcass, spec, boring }, panels);
}

/** 'hole 11'; 'hole 11 in left and right, 10 in divider-1'; '' for none. */
export function pinWords(holes: readonly PinHole[]): Told | '' {
  return holes.length === 0 ? '' : tell(hover.pinHoles({ holes: pinNumbers(holes) }), 'mm');
}
