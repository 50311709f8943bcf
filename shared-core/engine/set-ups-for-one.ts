import type { Bore, Row } from '../boring/model.js';
import type { Place } from '../document/place.js';
import { isRow } from '../fittings/purposes.js';
import type { Micrometres } from '../length/units.js';
import { setUpsForOne, type Difference, type SetUpForOne } from '../machining/plan/for-one.js';
import { timeWords } from '../papers/set-up/words.js';
import { quoted } from '../words/english.js';
import { messages } from '../words/message.js';
import type { Show } from '../words/show.js';
import type { BatchedSetUp } from '../machining/plan/set-ups.js';
import type { Run } from '../machining/set-up.js';
import type { Shop } from '../shop/model.js';
import type { CarcassAnalysis, FileFinding } from './carcass-analysis.js';

/** Of larger jobs nothing is told: every edit would weigh all of their set-ups. */
const MOST_CARCASSES = 300;

interface ForOne {
  readonly panel: string;
  readonly machine: string;
  /** A carcass whose panels the other set-up serves. */
  readonly other: string;
  readonly seconds: number;
  readonly difference: Difference;
  /** The row that would move; null where the difference is not in a row. */
  readonly line: Row['line'] | null;
}

export const say = messages('set-up-for-one', {
  saved: (one: ForOne, show) =>
    `${one.panel} has a set-up of ${one.machine} to itself, which takes ${timeWords(one.seconds)} more than that of ${quoted(one.other)}. ${differs(one, show)} With ${remedy(one, show)} the panel could be bored along with ${quoted(one.other)}.`,
});

function differs({ difference }: ForOne, show: Show): string {
  const { is, instead } = difference;
  const what = {
    fence: 'distance from the fence',
    height: 'height of the spindles',
    depth: 'depth',
    thickness: 'thickness of the board',
  }[difference.in];
  return `Only its ${what} differs: ${show.exact(is)} instead of ${show.exact(instead)}.`;
}

function remedy({ difference, line }: ForOne, show: Show): string {
  const { is, instead } = difference;
  switch (difference.in) {
    case 'fence': {
      if (line === null)
        return `bores ${show.exact(Math.abs(instead - is))} ${instead > is ? 'further back' : 'further to the front'} (\`dowels\`)`;
      return line === 'front'
        ? `the front row ${show.exact(instead)} from the front edge (\`row-setback\`)`
        : `the rear row ${show.exact(instead)} from the front edge (\`rear-row\`)`;
    }
    case 'height':
      return 'a board as thick as the others have (`board`)';
    case 'depth':
      return `bores ${show.exact(instead)} deep`;
    case 'thickness':
      return `a board ${show.exact(instead)} thick (\`board\`)`;
  }
}

/** Of a job what its set-ups are weighed by. */
interface PlannedJob {
  readonly carcasses: readonly CarcassAnalysis[];
  readonly shop: Shop;
  planned(): readonly CarcassAnalysis[];
  setUps(): readonly BatchedSetUp[];
}

/** Whether such set-ups are told of a job of this size, so that its set-ups must be known for it. */
export const areToldOf = (carcasses: readonly CarcassAnalysis[]): boolean => carcasses.length <= MOST_CARCASSES;

/** Set-ups of a job that serve a single panel, each with the value that would save it. */
export function findSetUpsForOne(analysis: PlannedJob): readonly FileFinding[] {
  const { carcasses, shop } = analysis;
  if (!areToldOf(carcasses) || analysis.planned().length < 2) return [];
  return setUpsForOne(analysis.setUps(), shop.changeover, shop.habits.rearMargin).flatMap((one) =>
    found(analysis, one),
  );
}

function found(
  { carcasses, shop }: PlannedJob,
  { own, other, difference, seconds }: SetUpForOne,
): readonly FileFinding[] {
  const [run] = own.setUp.runs;
  const index = carcasses.findIndex(({ name, operations }) => name === run?.carcass && operations !== null);
  const carcass = carcasses[index];
  if (run === undefined || carcass === undefined || carcass.nameAt === null) return [];
  const bores = new Set(run.steps.flatMap(({ holes }) => holes.map(({ bore }) => bore)));
  // Where fittings are bored that hold no joint follows from how they are made: no key moves their bores alone.
  const joints = new Set(carcass.carcass?.joints.map(({ id }) => id));
  const isMoved = (bore: Bore): boolean => isRow(bore) || bore.purpose === 'spare' || joints.has(bore.group);
  if (carcass.boring?.bores.every((bore) => !bores.has(bore.id) || isMoved(bore)) !== true) return [];
  const others = other.setUp.runs.find((one) => one.carcass !== run.carcass);
  const planned = carcasses.find(({ name, operations }) => name === others?.carcass && operations !== null);
  const isInRow = own.setUp.machine.kind === 'line' && difference.in === 'fence';
  const line = isInRow ? lineOf(carcass, run, difference.is) : null;
  // A row does not go where others have their other row, nor past its own other one.
  if (isInRow && (line === null || lineOf(planned, others, difference.instead) !== line)) return [];
  if (isInRow && isPastOther(carcass, run, line, difference.instead)) return [];
  const message = say.saved({
    panel: run.panel,
    machine: own.setUp.machine.name,
    other: others?.carcass ?? run.carcass,
    seconds,
    difference,
    line,
  });
  return [
    {
      finding: {
        rule: 'set-up-for-one',
        severity: 'info',
        place: placeOf(carcass, run.panel, difference, line) ?? carcass.nameAt.place,
        // The figures are those of the machine's scales.
        message: message.in(shop.unit),
        panel: run.panel,
        related: [],
        bores: [...bores],
        repairs: [],
      },
      carcass: index,
    },
  ];
}

/** Which row of a panel stands so far from its front edge. */
const lineOf = (carcass: CarcassAnalysis | undefined, run: Run | undefined, u: Micrometres): ForOne['line'] =>
  carcass?.boring?.rows.find((row) => row.panel === run?.panel && row.u === u)?.line ?? null;

/** Whether a row of a panel would not stand before, or behind, its other row any more. */
const isPastOther = (carcass: CarcassAnalysis, run: Run, line: ForOne['line'], to: Micrometres): boolean =>
  carcass.boring?.rows.some(
    (row) => row.panel === run.panel && row.line !== line && (line === 'front' ? to >= row.u : to <= row.u),
  ) ?? false;

/** Where the value stands that makes the difference, if the carcass writes it itself. */
function placeOf({ spec }: CarcassAnalysis, panel: string, difference: Difference, line: ForOne['line']): Place | null {
  const own = spec?.panels.get(panel);
  const candidates = {
    fence: line === null ? [] : [line === 'rear' ? spec?.rearRow : spec?.rowSetback],
    height: [own?.board, spec?.board],
    depth: [own?.faceDepth, own?.endDepth],
    thickness: [own?.board, spec?.board],
  }[difference.in];
  const written = candidates.find((value) => value?.written === true && value.place.part === 'self');
  return written?.place ?? null;
}
