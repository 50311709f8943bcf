import type { DrawingReply } from '../../../shared-core/drawing/messages/drawing.js';
import { Board } from './board.js';
import { h, say } from '../page/dom.js';
import { Header, type Choice } from './header.js';
import { Lists } from './lists.js';
import { editorSide } from '../page/editor.js';
import { readPlace, type Place } from '../page/viewport.js';
import { NEARER, type Nearer } from '../messages/common.js';
import { type FromPage, type Subject, isSubject, isToPage } from '../messages/preview.js';

const editor = editorSide<FromPage>();

/** What comes back when the editor shows the page again. */
interface State {
  readonly subject: Subject;
  /** Name of the drawing that `place` belongs to. */
  readonly drawing: string;
  readonly place: Place | null;
}

let state: State | null = readState(editor.getState());
let version = -1;
let uri = '';
/** Whether the board knows what the whole drawing is. */
let framed = false;
/** How near the drawing was last asked for. */
let nearer: Nearer = 1;
/** Lettering may grow to this before a nearer drawing is asked for. */
const ENOUGH = 0.8;
/** Whether the board shows the drawing that `state` names. */
let drawn = false;

const reveal = (source: string): void => editor.postMessage({ type: 'reveal', source });
const choose = ({ view, follow, carcass, panel }: Choice): void =>
  editor.postMessage({ type: 'subject', view, follow, carcass, panel });

const header = new Header({ choose });
const board: Board = new Board({
  reveal,
  openPanel: (panel) => {
    if (state !== null) choose({ ...state.subject, view: 'panel', panel });
  },
  moved: keep,
});
const lists = new Lists({ reveal, point: (bores) => board.point(bores) });
const empty = h('p', { class: 'empty', role: 'status' });
const trouble = h('p', { class: 'trouble', role: 'alert' });
document.body.append(header.element, trouble, empty, board.element, lists.element);
show(empty, 'Waiting for the drawing.');
show(trouble, '');

window.addEventListener('message', (event: MessageEvent<unknown>) => {
  const message = event.data;
  if (!isToPage(message)) return;
  switch (message.type) {
    case 'reply':
      receive(message.subject, message.nearer, message.reply);
      return;
    case 'cursor':
      board.showCursor(message.sources);
      return;
    case 'trouble':
      show(trouble, message.message);
      return;
  }
});
editor.postMessage({ type: 'ready' });

/** Shows a reply, unless one of a later text is shown already. */
function receive(subject: Subject, answered: number, reply: DrawingReply): void {
  if (reply.uri === uri && reply.version < version) return;
  document.body.dataset.version = String(reply.version);
  show(trouble, '');
  header.show(subject, reply);
  [uri, version, drawn] = [reply.uri, reply.version, false];
  const nothing = reply.kind === 'nothing';
  document.body.classList.toggle('out-of-date', !nothing && reply.stale !== null);
  board.element.hidden = nothing;
  lists.element.hidden = nothing;
  show(empty, nothing ? reply.reason : '');
  if (nothing) {
    board.clear();
    state = { subject, drawing: '', place: null };
    editor.setState(state);
    return;
  }
  const drawing = [reply.uri, reply.scene.view, reply.carcass, reply.scene.panel ?? ''].join('\n');
  const same = state?.drawing === drawing;
  const place = same ? (state?.place ?? null) : null;
  const whole = answered === 1 || !same || !framed;
  framed = true;
  state = { subject: { ...subject, carcass: reply.carcass, panel: reply.panel }, drawing, place };
  lists.show(reply.scene);
  board.show(reply.scene, place, whole, reply.scene.view === 'all-panels' ? reply.panel : null);
  drawn = true;
  keep();
}

/** Keeps the place that the reader has moved to; not before there is a drawing, or the kept one would be lost. */
function keep(): void {
  if (state === null || !drawn) return;
  state = { ...state, place: board.viewport.place };
  editor.setState(state);
  askNearer();
}

/** Has the drawing lettered anew where the reader has zoomed so far that its lettering is too large or too small. */
function askNearer(): void {
  const wanted = NEARER.findLast((step) => step === 1 || step * ENOUGH <= board.viewport.magnification) ?? 1;
  if (wanted === nearer) return;
  nearer = wanted;
  editor.postMessage({ type: 'nearer', nearer });
}

function show(element: HTMLElement, words: string): void {
  say(element, words);
  element.hidden = words === '';
}

/** What an earlier page kept; anything that does not look like it is dropped. */
function readState(kept: unknown): State | null {
  if (typeof kept !== 'object' || kept === null || !('subject' in kept) || !isSubject(kept.subject)) return null;
  const drawing = 'drawing' in kept && typeof kept.drawing === 'string' ? kept.drawing : '';
  return { subject: kept.subject, drawing, place: 'place' in kept ? readPlace(kept.place) : null };
}
