import '../page/speak.js';
import type { MachineStepReply, StepAddress } from '../../../shared-core/drawing/messages/machine-view.js';
import type { ListedSetUp, SetUpsReply } from '../../../shared-core/drawing/messages/set-ups.js';
import { inShort } from '../../../shared-core/machining/caution.js';
import { h, icon, show, svg } from '../page/dom.js';
import { PHRASES } from '../page/messages.js';
import { LABELS } from './messages.js';
import { ARROWS } from '../page/pointer.js';
import { readPlace, type Place } from '../page/viewport.js';
import { Bar, type Go, type Standing } from './bar.js';
import { MachineBoard } from './board.js';
import { editorSide } from '../page/editor.js';
import { Floor, type FloorTask } from './floor.js';
import { floorStepAt, floorSteps, isFloorKind, whereToGoOn, type FloorStep } from './floor-steps.js';
import { nextWords } from './figures.js';
import { SetUpList } from './list.js';
import { findAgain, isSameStep, soundScope, stepsOf, toSetUp, within, type OrderedStep } from './order.js';
import { ScopePicker } from './scope.js';
import { Legend } from './signs.js';
import { NEARER, type Nearer } from '../messages/common.js';
import {
  type FromMachinePage,
  type MachineSubject,
  isMachineSubject,
  isStepAddress,
  isToMachinePage,
} from '../messages/machine.js';

const editor = editorSide<FromMachinePage>();

/** What comes back when the editor shows the page again. */
interface State {
  readonly subject: MachineSubject;
  readonly address: StepAddress | null;
  readonly place: Place | null;
  /** What is being done at the machine; null where the reader is not there. */
  readonly floor: FloorStep['kind'] | null;
}

const kept = readState(editor.getState());
let subject: MachineSubject | null = kept?.subject ?? null;
let wanted: StepAddress | null = kept?.address ?? null;
let place: Place | null = kept?.place ?? null;
let reply: Extract<SetUpsReply, { kind: 'set-ups' }> | null = null;
let steps: readonly OrderedStep[] = [];
let index = 0;
let ticks: ReadonlySet<string> = new Set();
let ticksKnown = false;
/** At the machine: all that is to be done, and which of it is stood at; null where the reader is not there. */
let floorIndex: number | null = null;
let floors: readonly FloorStep[] = [];
let floorKept = kept?.floor ?? null;
/** The list opens at its head; only where the reader left it at a step, there. */
let opened = wanted !== null;
/** How near the drawing was last asked for, and whether the board shows the step that is stood on. */
let nearer: Nearer = 1;
let drawn: StepAddress | null = null;
const ENOUGH = 0.8;

const tick = (contents: readonly string[], on: boolean): void =>
  editor.postMessage({ type: 'tick', ticks: contents, on });
const current = (): OrderedStep | null => steps[index] ?? null;
const revealCurrent = (): void => {
  const step = current();
  if (step !== null) editor.postMessage({ type: 'reveal', carcass: step.carcass, panel: step.panel });
};

const bar = new Bar({ go, tick: (content, on) => tick([content], on), reveal: revealCurrent });
const board: MachineBoard = new MachineBoard({ reveal: revealCurrent, moved: keepPlace });
const legend = new Legend();
const list = new SetUpList({
  tick,
  papers: () => editor.postMessage({ type: 'papers' }),
  choose: (setUp, run) => {
    if (subject === null) return;
    // What is chosen by hand is seen, whatever was stepped through before.
    const scope = steps.some((one) => one.setUp === setUp.id && one.run.content === run.content)
      ? subject
      : { carcass: null, panel: null };
    subject = { ...subject, side: 'machine', carcass: scope.carcass, panel: scope.panel };
    wanted = { setUp: setUp.id, carcass: run.carcass, panel: run.panel, step: 0 };
    editor.postMessage({ type: 'subject', subject });
    restep(false);
    showSide();
  },
  reveal: (carcass, panel) => editor.postMessage({ type: 'reveal', carcass, panel }),
});
const scope = new ScopePicker({
  side: (side) => change({ side }),
  choose: (carcass, panel) => change({ carcass, panel }),
  toMachine: () => toMachine(whereToGoOn(floorSteps(steps), ticks)),
});
const floor = new Floor({
  back: () => goOnFloor(-1),
  next: () => goOnFloor(1),
  done,
  leave: leaveMachine,
});
const stale = h('p', { class: 'stale', role: 'status' });
const trouble = h('p', { class: 'trouble', role: 'alert' });
const empty = h('p', { class: 'empty', role: 'status' });
const nothing = h('p', { class: 'empty', role: 'status' });
/** In full where a machine is begun, in the run of what is read there. */
const first = h('ul', { class: 'first-cautions' });
const cautions = h('ul', {});
const caution = h(
  'details',
  { class: 'cautions' },
  h('summary', {}, warningSign(), h('strong', {}, LABELS.cautions), h('span', { class: 'in-short' }, inShort())),
  cautions,
);
const machine = h(
  'section',
  { class: 'machine-side', 'aria-label': LABELS.machineView },
  bar.element,
  first,
  bar.words,
  nothing,
  board.element,
  legend.element,
);
const both = h('main', { class: 'both' }, list.element, machine);
document.body.append(
  scope.element,
  trouble,
  stale,
  empty,
  both,
  h('section', { class: 'cautioned', 'aria-label': LABELS.cautions }, caution),
  floor.element,
);
show(empty, LABELS.waiting);
for (const one of [trouble, stale, nothing]) show(one, '');
both.hidden = true;
caution.hidden = true;

window.addEventListener('message', (event: MessageEvent<unknown>) => {
  const message = event.data;
  if (!isToMachinePage(message)) return;
  switch (message.type) {
    case 'subject':
      receiveSubject(message.subject);
      return;
    case 'set-ups':
      receiveSetUps(message.reply);
      return;
    case 'step':
      receiveStep(message.reply, message.nearer);
      return;
    case 'ticks':
      ticks = new Set(message.ticks);
      list.showTicks(ticks, !ticksKnown);
      ticksKnown = true;
      bar.showStanding(standing(), ticks);
      showFloor();
      return;
    case 'trouble':
      show(trouble, message.message);
      return;
  }
});
document.addEventListener('keydown', key);
editor.postMessage({ type: 'ready', subject });

/** What a command asks for. */
function receiveSubject(next: MachineSubject): void {
  const other = next.uri !== subject?.uri;
  subject = next;
  if (other) {
    [reply, wanted, ticksKnown] = [null, null, false];
    list.clear();
    board.clear();
    both.hidden = true;
    show(empty, LABELS.waiting);
  }
  restep(true);
  showSide();
  keep();
}

function change(by: Partial<MachineSubject>): void {
  if (subject === null) return;
  subject = { ...subject, ...by };
  editor.postMessage({ type: 'subject', subject });
  restep(true);
  showSide();
  keep();
}

function receiveSetUps(next: SetUpsReply): void {
  if (subject === null || next.uri !== subject.uri) return;
  show(trouble, '');
  document.body.dataset.version = String(next.version);
  const isNothing = next.kind === 'nothing';
  // Where there is nothing any more, the last plan would be of a job that is gone.
  reply = isNothing ? null : next;
  show(empty, isNothing ? next.reason : '');
  both.hidden = isNothing;
  caution.hidden = isNothing;
  const old = isNothing ? null : next.stale;
  show(stale, old === null ? '' : PHRASES.stale(old));
  document.body.classList.toggle('out-of-date', old !== null);
  if (isNothing) {
    steps = [];
    leaveMachine();
    list.clear();
    board.clear();
    scope.show(subject, []);
    return;
  }
  list.show(next);
  list.showTicks(ticks, false);
  restep(opened);
  opened = true;
  showSide();
  // A page that comes back comes back to the machine.
  if (floorKept !== null && floors.length > 0) toMachine(floorStepAt(floors, floorKept, index));
}

/** Finds the step anew in the steps of the plan and the scope, and asks for its drawing. */
function restep(scroll: boolean): void {
  if (reply === null || subject === null) return;
  const all = stepsOf(reply.setUps);
  const was = current();
  const sound = soundScope(all, subject);
  subject = { ...subject, ...sound };
  steps = within(all, sound);
  scope.show(subject, reply.setUps);
  const asked = wanted === null ? -1 : steps.findIndex((one) => isSameStep(one, wanted!));
  const half =
    wanted === null ? -1 : steps.findIndex((one) => one.carcass === wanted!.carcass && one.panel === wanted!.panel);
  index = asked >= 0 ? asked : was !== null ? findAgain(steps, was) : Math.max(half, 0);
  wanted = null;
  const kind = floorIndex === null ? null : (floors[floorIndex]?.kind ?? 'stroke');
  floors = floorSteps(steps);
  if (kind !== null) floorIndex = floorStepAt(floors, kind, index);
  stand(scroll);
}

/** Shows the step that is stood on. */
function stand(scroll: boolean): void {
  const step = current();
  bar.showStanding(standing(), ticks);
  if (step === null) {
    board.clear();
    bar.showWords(null, null);
    return;
  }
  list.showCurrent(step.setUp, step.carcass, step.panel, scroll);
  showCautions(
    step.listed,
    floors.some(({ at, isFirstOfMachine }) => at === index && isFirstOfMachine),
  );
  showFloor();
  askStep(step);
  keep();
}

function askStep({ setUp, carcass, panel, step }: StepAddress): void {
  editor.postMessage({ type: 'step', address: { setUp, carcass, panel, step }, nearer });
}

function standing(): Standing | null {
  const step = current();
  return step === null
    ? null
    : { step, index, count: steps.length, setUps: reply?.setUps.length ?? 0, next: nextWords(steps, index) };
}

function receiveStep(next: MachineStepReply, answered: number): void {
  const step = current();
  if (step === null || subject?.uri !== next.uri || !isSameStep(step, next.address)) return;
  show(nothing, next.kind === 'nothing' ? next.reason : '');
  board.element.hidden = next.kind === 'nothing';
  legend.element.hidden = next.kind === 'nothing';
  bar.showWords(next.kind === 'nothing' ? null : next.scene, step);
  if (next.kind === 'nothing') {
    board.clear();
    return;
  }
  const same = drawn !== null && isSameStep(drawn, next.address);
  if (!same && drawn !== null) place = null;
  board.show(next.scene, place, answered === 1 || !same);
  drawn = next.address;
  legend.show(next.scene);
  const task = floorTask();
  if (task !== null) floor.showScene(next.scene, task);
  document.body.dataset.step = [step.setUp, step.carcass, step.panel, step.step].join('/');
  // Only now may the board say where the reader has moved to.
  keepPlace();
}

function go(where: Go): void {
  const last = steps.length - 1;
  const to = {
    first: 0,
    before: Math.max(index - 1, 0),
    after: Math.min(index + 1, last),
    last,
    'set-up-before': toSetUp(steps, index, -1),
    'set-up-after': toSetUp(steps, index, 1),
  }[where];
  if (to === index || to < 0) return;
  index = to;
  nearer = 1;
  // What is to be done with the panel now stands at the top, and is read before the drawing.
  machine.scrollTop = 0;
  stand(true);
}

/** What is done now at the machine; null where the reader is not there. */
function floorTask(): FloorTask | null {
  const [one, step] = [floorIndex === null ? undefined : floors[floorIndex], current()];
  if (floorIndex === null || one === undefined || step === null) return null;
  const isDone = one.content !== null && ticks.has(one.content);
  return { floor: one, step, index: floorIndex, count: floors.length, setUps: reply?.setUps.length ?? 0, isDone };
}

function showFloor(): void {
  const task = floorTask();
  if (task !== null) floor.show(task);
}

function toMachine(at: number): void {
  if (floors.length === 0) return;
  floorKept = null;
  document.body.dataset.floor = 'on';
  floor.slot.append(board.element);
  floor.open();
  editor.postMessage({ type: 'floor', on: true });
  standOnFloor(at);
}

function standOnFloor(at: number): void {
  floorIndex = at;
  index = floors[at]!.at;
  nearer = 1;
  place = null;
  stand(true);
}

function goOnFloor(by: 1 | -1): void {
  const to = (floorIndex ?? 0) + by;
  if (to >= 0 && to < floors.length) standOnFloor(to);
}

/** Ticks off what is stood at, and goes on; what is ticked off already stays so. */
function done(): void {
  const task = floorTask();
  if (task === null) return;
  const { content } = task.floor;
  if (content !== null && !task.isDone) tick([content], true);
  goOnFloor(1);
}

function leaveMachine(): void {
  if (floorIndex === null) return;
  floorIndex = null;
  delete document.body.dataset.floor;
  legend.element.before(board.element);
  floor.close();
  editor.postMessage({ type: 'floor', on: false });
  keep();
  scope.element.querySelector<HTMLElement>('.floor-open')?.focus();
}

/** Keys at the machine: to and fro, done, and out. */
function keyOnFloor(event: KeyboardEvent): void {
  const pressed = event.target instanceof Element && event.target.closest('button') !== null;
  if (event.key === 'ArrowRight' || event.key === 'PageDown') goOnFloor(1);
  else if (event.key === 'ArrowLeft' || event.key === 'PageUp') goOnFloor(-1);
  else if (event.key === ' ' || (event.key === 'Enter' && !pressed)) done();
  else if (event.key === 'Escape') leaveMachine();
  else return;
  event.preventDefault();
}

const KEYS: Readonly<Record<string, Go>> = {
  ArrowLeft: 'before',
  ArrowRight: 'after',
  ArrowUp: 'set-up-before',
  ArrowDown: 'set-up-after',
  PageUp: 'set-up-before',
  PageDown: 'set-up-after',
  Home: 'first',
  End: 'last',
};

/** Keys of the machine view; in the list and in fields the keys are the editor's own. */
function key(event: KeyboardEvent): void {
  if (event.ctrlKey || event.metaKey || event.altKey) return;
  if (floorIndex !== null) {
    keyOnFloor(event);
    return;
  }
  if (machine.offsetParent === null) return;
  const target = event.target instanceof Element ? event.target : null;
  const arrow = ARROWS[event.key];
  if (event.shiftKey && arrow !== undefined && target !== null && board.element.contains(target)) {
    board.viewport.panBy(-arrow.x * 40, -arrow.y * 40);
    event.preventDefault();
    return;
  }
  // A plus sign needs the shift key on many keyboards.
  if (event.shiftKey && event.key !== '+') return;
  if (target !== null && (list.element.contains(target) || target.closest('select') !== null)) return;
  const where = KEYS[event.key];
  const pressed = target?.closest('button, input, summary') ?? null;
  const step = current();
  if (where !== undefined) go(where);
  else if (event.key === '+' || event.key === '=') board.viewport.zoomBy(1);
  else if (event.key === '-') board.viewport.zoomBy(-1);
  else if (event.key === '0') board.viewport.go(null);
  else if (event.key === ' ' && pressed?.matches('input, summary') !== true && step !== null)
    tick([step.run.content], !ticks.has(step.run.content));
  else if (event.key === 'Enter' && pressed === null) revealCurrent();
  else return;
  event.preventDefault();
}

function showSide(): void {
  if (subject === null) return;
  document.body.dataset.side = subject.side;
}

/** In full where a machine is begun; there and after that in short on a line, which opens. */
function showCautions({ cautions: sentences }: ListedSetUp, inFull: boolean): void {
  first.hidden = !inFull;
  const text = sentences.join('\n');
  if (cautions.dataset.text === text) return;
  cautions.dataset.text = text;
  caution.open = false;
  for (const list of [first, cautions]) list.replaceChildren(...sentences.map((sentence) => h('li', {}, sentence)));
}

/** Keeps the place that the reader has moved to; not before there is a drawing, or the kept one would be lost. */
function keepPlace(): void {
  const step = current();
  if (drawn === null || step === null || !isSameStep(step, drawn)) return;
  place = board.viewport.place;
  keep();
  const next = NEARER.findLast((one) => one === 1 || one * ENOUGH <= board.viewport.magnification) ?? 1;
  if (next === nearer) return;
  nearer = next;
  askStep(step);
}

function keep(): void {
  if (subject === null) return;
  const step = current();
  const address =
    step === null ? wanted : { setUp: step.setUp, carcass: step.carcass, panel: step.panel, step: step.step };
  const kind = floorIndex === null ? floorKept : (floors[floorIndex]?.kind ?? null);
  editor.setState({ subject, address, place, floor: kind } satisfies State);
}

/** What an earlier page kept; anything that does not look like it is dropped. */
function readState(state: unknown): State | null {
  if (typeof state !== 'object' || state === null || !('subject' in state) || !isMachineSubject(state.subject))
    return null;
  const address = 'address' in state && isStepAddress(state.address) ? state.address : null;
  const doing = 'floor' in state && isFloorKind(state.floor) ? state.floor : null;
  return { subject: state.subject, address, place: 'place' in state ? readPlace(state.place) : null, floor: doing };
}

/** A triangle with an exclamation mark, as shop signs have it (ISO 7010, general warning). */
function warningSign(): SVGSVGElement {
  return icon(
    { from: 0, size: 20 },
    svg('path', { d: 'M10 2L18.5 17H1.5Z', class: 'frame' }),
    svg('path', { d: 'M10 7.5V12M10 14V15', class: 'mark' }),
  );
}
