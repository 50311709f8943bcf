import type { Blank, SetUp, Step } from '../set-up.js';
import { bore, type Hole, type NominalStroke, type Stroke } from './bore.js';
import { checkSetUp } from './check-setup.js';
import { checkBlank, checkStep, checkStroke, isBeside } from './check-step.js';
import { HoleMap } from './hole-map.js';
import { findTurn } from './lie.js';
import { realSolid, solidNames, type Side } from './solid.js';
import { NOTHING } from './stray.js';
import { contacts, settingNames } from './table.js';
import { say } from './messages.js';
import type { Message } from '../../words/message.js';

/** Why a set-up cannot be carried out. */
export interface ReplayProblem {
  readonly setUp: string;
  /** Counted from 0; null where the set-up itself or the whole run is at fault. */
  readonly step: number | null;
  readonly message: Message;
}

/** A hole with the stroke that made it. */
export interface ReplayedHole extends Hole {
  readonly setUp: string;
  readonly step: number;
  readonly head: number;
  readonly spindle: number;
}

/** The holes that the moves of a set-up make in one panel; or, where it cannot be carried out, why. */
export type Replay =
  | { readonly ok: true; readonly holes: readonly ReplayedHole[] }
  | { readonly ok: false; readonly problems: readonly ReplayProblem[] };

/** The strokes of one panel over all set-ups, in order; or why they cannot be made. */
export type Strokes =
  | { readonly ok: true; readonly strokes: readonly NominalStroke[] }
  | { readonly ok: false; readonly problems: readonly ReplayProblem[] };

type StepFit = { readonly stroke: NominalStroke } | { readonly messages: readonly Message[] };

/** The other one of the two sides of a kind: what comes to the stop when the named one does not. */
const OPPOSITE: Readonly<Record<Side, Side>> = {
  front: 'back',
  back: 'front',
  'reference-end': 'far-end',
  'far-end': 'reference-end',
  inside: 'outside',
  outside: 'inside',
};

function layDown(setUp: SetUp, step: Step, index: number, blank: Blank, panel: string): StepFit {
  const stop = setUp.stops.find((one) => one.name === step.stop);
  if (stop === undefined) return { messages: [say.stopNotSet({ stop: step.stop })] };
  const names = { solid: solidNames(panel), setting: settingNames(setUp, stop) };
  const [down, second, third] = contacts(setUp, step, stop, names.setting, NOTHING);
  const rotation = findTurn(blank.hand, [down, second, third]);
  if (rotation !== null) {
    const spindles = step.spindles.map((loaded) => {
      const name = `${setUp.id} ${panel} step ${index} head ${loaded.head} spindle ${loaded.spindle}`;
      return { ...loaded, across: `${name} across`, along: `${name} along` };
    });
    const stroke: Stroke = { setUp, step, index, stop, blank, panel, rotation, spindles, names };
    return { stroke: { ...stroke, holes: bore(stroke, NOTHING) } };
  }
  // What comes to the stop is decided by the other two contacts.
  const atStop = setUp.machine.kind === 'horizontal' ? second : third;
  const comes = OPPOSITE[atStop.side];
  return { messages: [say.otherSideAtStop({ stop: stop.name, hand: stop.side, comes, wanted: atStop.side })] };
}

const mayMeetTwice = ({ machine }: SetUp): boolean => machine.kind === 'line' && machine.meetsHolesTwice;

function stepsOf({ runs }: SetUp, carcass: string, panel: string): readonly Step[] {
  return runs.flatMap((run) => (run.panel === panel && run.carcass === carcass ? run.steps : []));
}

/**
 * Reads the strokes of one panel out of the set-ups and finds how the panel has to be turned for each. Reads nothing but
 * the set-up and the blank; of a step, not the holes that it claims.
 */
export function strokesOf(setUps: readonly SetUp[], carcass: string, panel: string, blank: Blank): Strokes {
  const strokes: NominalStroke[] = [];
  const problems: ReplayProblem[] = [];
  for (const setUp of setUps) {
    const steps = stepsOf(setUp, carcass, panel);
    if (steps.length === 0) continue;
    const settings = [...checkSetUp(setUp), ...checkBlank(setUp, blank)];
    problems.push(...settings.map((message) => ({ setUp: setUp.id, step: null, message })));
    steps.forEach((step, index) => {
      const fit = layDown(setUp, step, index, blank, panel);
      const messages = [...checkStep(setUp, step), ...('messages' in fit ? fit.messages : [])];
      problems.push(...messages.map((message) => ({ setUp: setUp.id, step: index, message })));
      if ('stroke' in fit) strokes.push(fit.stroke);
    });
  }
  return problems.length === 0 ? { ok: true, strokes } : { ok: false, problems };
}

/**
 * How a panel lies against its stop: holes bored while it lay otherwise stand where its length and width put them, and those
 * that another machine bored, where a stop of that puts them.
 */
const layOf = ({ setUp, step, stop }: Stroke): string =>
  `${step.down} ${step.edge} ${step.end} ${stop.side} ${setUp.machine.name}`;

/** What one stroke bored, and how the panel lay for it. */
interface Bored {
  readonly lay: string;
  readonly holes: readonly Hole[];
}

/**
 * Pins that register in the row need a hole of it: one bored before on the same machine, as wide as the pins, in the same face
 * and line, whole pitches away, while the panel lay the same way against a stop of the same hand.
 */
function hasHolesForPins(stroke: Stroke, next: Hole | undefined, bored: readonly Bored[]): boolean {
  const { machine } = stroke.setUp;
  if (stroke.step.moved === 0 || machine.kind !== 'line' || machine.indexPins !== 'row' || next === undefined)
    return true;
  const own = layOf(stroke);
  return bored.some(
    ({ lay, holes }) =>
      lay === own &&
      holes.some(
        ({ face, u, v, diameter }) =>
          diameter === next.diameter && face === next.face && u === next.u && (v - next.v) % machine.pitch === 0,
      ),
  );
}

/**
 * Carries out the set-ups on one nominal panel.
 * @param setUps All set-ups of the job in the order in which they are run.
 * @param blank Finished size of the panel and which of the two mirror images it is.
 */
export function replayPanel(setUps: readonly SetUp[], carcass: string, panel: string, blank: Blank): Replay {
  return replayStrokes(strokesOf(setUps, carcass, panel, blank), panel, blank);
}

/** The same where the strokes of the panel are known. */
export function replayStrokes(read: Strokes, panel: string, blank: Blank): Replay {
  if (!read.ok) return read;
  const holes: ReplayedHole[] = [];
  const before: Bored[] = [];
  const problems: ReplayProblem[] = [];
  const met = new HoleMap<true>();
  const solid = realSolid(blank, solidNames(panel), NOTHING);
  for (const stroke of read.strokes) {
    const beside = stroke.holes.map((hole) => isBeside(solid, hole));
    const made = stroke.holes.filter((_, i) => !beside[i]);
    const messages = checkStroke(stroke, solid, made);
    if (!hasHolesForPins(stroke, made[0], before)) {
      messages.push(say.noHoleForPins());
    }
    stroke.holes.forEach((hole, i) => {
      if (beside[i]) return;
      const { head, spindle } = stroke.step.spindles[i]!;
      if (!met.has(hole)) holes.push({ ...hole, setUp: stroke.setUp.id, step: stroke.index, head, spindle });
      else if (!mayMeetTwice(stroke.setUp)) messages.push(say.boredTwice({ hole }));
      met.set(hole, true);
    });
    before.push({ lay: layOf(stroke), holes: made });
    problems.push(...messages.map((message) => ({ setUp: stroke.setUp.id, step: stroke.index, message })));
  }
  return problems.length === 0 ? { ok: true, holes } : { ok: false, problems };
}
