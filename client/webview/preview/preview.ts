import '../page/speak.js';
import { Board } from './board.js';
import { h, show } from '../page/dom.js';
import { LABELS as OF_PAGE, PHRASES } from '../page/messages.js';
import { LABELS } from './messages.js';
import { Header, type Choice } from './header.js';
import { Lists } from './lists.js';
import { Splitter } from '../page/splitter.js';
import { editorSide } from '../page/editor.js';
import { asBase64, paint } from '../page/paint.js';
import { readPlace, type Place } from '../page/viewport.js';
import { NEARER, type Nearer } from '../messages/common.js';
import { type FromPage, type Subject, type ToPage, isSubject, isToPage } from '../messages/preview.js';

const editor = editorSide<FromPage>();

type Answer = Extract<ToPage, { type: 'reply' }>;

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
/** The pane that the board's frame of the whole drawing is laid out for; null where it has none. */
let framedFor: string | null = null;
/** How the panel lies that is drawn, in words. */
let lies: string | null = null;
/** How near the drawing was last asked for. */
let nearer: Nearer = 1;
/** Lettering may grow to this before a nearer drawing is asked for. */
const ENOUGH = 0.8;
let resting: ReturnType<typeof setTimeout> | undefined;
/** Whether the board shows the drawing that `state` names. */
let drawn = false;

const reveal = (source: string): void => editor.postMessage({ type: 'reveal', source });
const choose = ({ view, follow, carcass, panel }: Choice): void =>
  editor.postMessage({ type: 'subject', view, follow, carcass, panel });

const board: Board = new Board({
  reveal,
  openPanel: (panel) => {
    if (state !== null) choose({ ...state.subject, view: 'panel', panel });
  },
  moveShelf: (shelf, holes) => editor.postMessage({ type: 'move-shelf', shelf, holes }),
  moved: () => {
    keep();
    askForPane();
  },
  scroll: (by) => {
    // A page that is higher than its window scrolls itself.
    const { scrollHeight, clientHeight } = document.documentElement;
    if (scrollHeight <= clientHeight) lists.element.scrollBy(0, by);
  },
});
const header = new Header(
  {
    choose,
    another: () => editor.postMessage({ type: 'another' }),
    papers: () => editor.postMessage({ type: 'papers' }),
    picture: (use) => editor.postMessage({ type: 'picture', use }),
  },
  board.measuring.element,
);
const lists = new Lists({ reveal, point: (bores) => board.point(bores) });
const empty = h('p', { class: 'empty', role: 'status' });
const done = h('p', { class: 'copied', role: 'status' });
const trouble = h('p', { class: 'trouble', role: 'alert' });
const splitter = new Splitter(
  LABELS.drawingAndLists,
  32,
  (share) => document.body.style.setProperty('--lists', `${share}%`),
  (share) => editor.postMessage({ type: 'share', share }),
);
const bands = h('div', { class: 'bands' }, trouble, done, header.state);
const stage = h('div', { class: 'stage' }, empty, board.element, bands);
document.body.append(h('main', { class: 'page' }, header.element, stage, splitter.element, lists.element));
show(empty, OF_PAGE.waiting);
show(trouble, '');
show(done, '');

window.addEventListener('message', (event: MessageEvent<unknown>) => {
  const message = event.data;
  if (!isToPage(message)) return;
  switch (message.type) {
    case 'reply':
      receive(message);
      return;
    case 'lists':
      splitter.show(message.share);
      return;
    case 'cursor':
      board.showCursor(message.sources);
      return;
    case 'paint':
      void painted(message);
      return;
    case 'trouble':
      show(trouble, message.message);
      return;
  }
});
let pane = board.viewport.pane;
editor.postMessage({ type: 'ready', pane });

/** Shows a reply, unless one of a later text is shown already. */
function receive({ subject, nearer: answered, pane: laidFor, reply }: Answer): void {
  if (reply.uri === uri && reply.version < version) return;
  document.body.dataset.version = String(reply.version);
  document.body.dataset.replies = String(Number(document.body.dataset.replies ?? 0) + 1);
  show(trouble, '');
  header.show(subject, reply);
  [uri, version, drawn] = [reply.uri, reply.version, false];
  const nothing = reply.kind === 'nothing';
  document.body.classList.toggle('out-of-date', !nothing && reply.stale !== null);
  for (const one of [board.element, splitter.element, lists.element]) one.hidden = nothing;
  show(empty, nothing ? reply.reason : '');
  if (nothing) {
    board.clear();
    state = { subject, drawing: '', place: null };
    editor.setState(state);
    return;
  }
  const drawing = [reply.uri, reply.scene.view, reply.carcass, reply.scene.panel ?? ''].join('\n');
  // A panel that is turned to fit another pane lies elsewhere on the page.
  const same = state?.drawing === drawing && (lies === null || lies === reply.scene.caption);
  const place = same ? (state?.place ?? null) : null;
  const whole = answered === 1 || !same || framedFor !== JSON.stringify(laidFor);
  framedFor = JSON.stringify(laidFor);
  document.body.dataset.laidFor = `${laidFor.width} ${laidFor.height}`;
  lies = reply.scene.caption;
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

/** Makes dots of a drawing, and copies them or sends them back to be saved. */
async function painted({ use, name, svg }: Extract<ToPage, { type: 'paint' }>): Promise<void> {
  try {
    const picture = await paint(svg);
    if (use === 'png') editor.postMessage({ type: 'painted', name, png: await asBase64(picture) });
    else {
      await navigator.clipboard.write([new ClipboardItem({ [picture.type]: picture })]);
      show(done, LABELS.copied);
      setTimeout(() => show(done, ''), 4000);
    }
  } catch (fault) {
    show(trouble, PHRASES.pictureFailed(fault instanceof Error ? fault.message : String(fault)));
  }
}

/** Has the drawing laid out anew where its pane has become another, once that has come to rest. */
function askForPane(): void {
  clearTimeout(resting);
  resting = setTimeout(() => {
    const now = board.viewport.pane;
    if (board.element.hidden || (now.width === pane.width && now.height === pane.height)) return;
    pane = now;
    editor.postMessage({ type: 'pane', pane });
  }, 80);
}

/** Has the drawing lettered anew where the reader has zoomed so far that its lettering is too large or too small. */
function askNearer(): void {
  const wanted = NEARER.findLast((step) => step === 1 || step * ENOUGH <= board.viewport.magnification) ?? 1;
  if (wanted === nearer) return;
  nearer = wanted;
  editor.postMessage({ type: 'nearer', nearer });
}

/** What an earlier page kept; anything that does not look like it is dropped. */
function readState(kept: unknown): State | null {
  if (typeof kept !== 'object' || kept === null || !('subject' in kept) || !isSubject(kept.subject)) return null;
  const drawing = 'drawing' in kept && typeof kept.drawing === 'string' ? kept.drawing : '';
  return { subject: kept.subject, drawing, place: 'place' in kept ? readPlace(kept.place) : null };
}
