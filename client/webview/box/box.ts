import '../page/speak.js';
import type { BoxReply } from '../../../shared-core/drawing/messages/box-view.js';
import {
  isBoxSubject,
  isToBoxPage,
  type BoxSubject,
  type FromBoxPage,
  type Pointed,
  type ToBoxPage,
} from '../messages/box.js';
import { h, say, show } from '../page/dom.js';
import { editorSide } from '../page/editor.js';
import { LABELS as OF_PAGE, PHRASES as PHRASES_OF_PAGE } from '../page/messages.js';
import { asBase64 } from '../page/paint.js';
import { Splitter } from '../page/splitter.js';
import { LABELS as OF_MAP } from '../preview/messages.js';
import { Lists } from './lists.js';
import { LABELS } from './messages.js';
import type { PartSolid, Thing } from './solids.js';
import { Stage } from './stage.js';
import { Tools } from './tools.js';

type Boxes = Extract<BoxReply, { kind: 'box' }>;

const editor = editorSide<FromBoxPage>();
let subject: BoxSubject | null = null;
let boxes: Boxes | null = null;
let pointed: readonly Pointed[] = [];
let chosen: Thing | null = null;
/** What is shown and where the panels of it stand: another one is looked at from the usual side. */
let looked = '';

const canvas = h('canvas', {
  class: 'view',
  tabindex: '0',
  role: 'img',
  'aria-label': LABELS.view,
});
const described = h('p', { class: 'unseen', id: 'described' });
const keys = h('p', { class: 'unseen', id: 'keys' }, LABELS.keys);
canvas.setAttribute('aria-describedby', [described.id, keys.id].join(' '));
const hint = h('p', { class: 'keys', 'aria-hidden': 'true' }, LABELS.keysInShort);
/** What the keys have come to, for a reader who listens. */
const spoken = h('p', { class: 'unseen', role: 'status' });
const card = h('div', { class: 'card', hidden: true, 'aria-hidden': 'true' });
const board = h('div', { class: 'board' }, canvas, card, hint);
const empty = h('p', { class: 'empty', role: 'status' });
const stale = h('p', { class: 'stale', role: 'status' });
const done = h('p', { class: 'copied', role: 'status' });
const trouble = h('p', { class: 'trouble', role: 'alert' });
const lists = new Lists({
  reveal: (carcass, source) => editor.postMessage({ type: 'reveal', carcass, source }),
  choose,
});
const tools = new Tools({
  choose: (what, carcass) => editor.postMessage({ type: 'choose', what, carcass }),
  look: (sight) => stage?.look(sight),
  move: (open, apart) => stage?.move(open, apart),
  copy: () => void painted('copy'),
  save: () => void painted('save'),
});
const splitter = new Splitter(
  LABELS.viewAndLists,
  32,
  (share) => document.body.style.setProperty('--lists', `${share}%`),
  () => undefined,
);
const bands = h('div', { class: 'bands' }, trouble, done, stale);
const page = h('div', { class: 'stage' }, empty, board, bands, described, keys, spoken);
document.body.append(h('main', { class: 'page' }, tools.element, page, splitter.element, lists.element));
show(empty, OF_PAGE.waiting);
for (const one of [stale, done, trouble]) show(one, '');
const stage = makeStage();
showEmpty(true);

/** null where the machine draws nothing in three dimensions: then the lists say all. */
function makeStage(): Stage | null {
  try {
    return new Stage(canvas, {
      hover,
      click: (thing) => {
        if (thing !== null) {
          choose(thing);
          editor.postMessage({ type: 'reveal', carcass: thing.carcass, source: (thing.bore ?? thing.part).source });
        }
      },
      lost: noDepth,
      moved: () => undefined,
    });
  } catch {
    noDepth();
    return null;
  }
}

function noDepth(): void {
  board.hidden = true;
  show(empty, LABELS.noDepth);
  document.body.classList.add('without-depth');
}

const hasDepth = (): boolean => !document.body.classList.contains('without-depth');

function showEmpty(isEmpty: boolean): void {
  board.hidden = isEmpty || !hasDepth();
  for (const one of [splitter.element, lists.element]) one.hidden = isEmpty;
}

function receive({ subject: of, reply }: Extract<ToBoxPage, { type: 'reply' }>): void {
  subject = of;
  document.body.dataset.version = String(reply.version);
  editor.setState({ subject });
  show(trouble, '');
  const isEmpty = reply.kind === 'nothing';
  boxes = isEmpty ? null : reply;
  showEmpty(isEmpty);
  show(stale, isEmpty || reply.stale === null ? '' : PHRASES_OF_PAGE.stale(reply.stale));
  document.body.classList.toggle('out-of-date', !isEmpty && reply.stale !== null);
  if (isEmpty) {
    show(empty, reply.reason);
    return;
  }
  if (hasDepth()) show(empty, '');
  tools.show(reply);
  lists.show(reply);
  say(described, reply.described);
  const now = JSON.stringify([reply.uri, reply.what, reply.what === 'wall' ? '' : reply.carcass]);
  stage?.resize();
  stage?.show(reply, now === looked);
  looked = now;
  chosen = chosen === null ? null : sameIn(reply, chosen);
  mark();
}

/** The same thing in a newer reply; the panel alone where the bore is gone. */
function sameIn({ boxes: all }: Boxes, { carcass, part, bore }: Thing): Thing | null {
  const now = all.find(({ scene }) => scene.carcass === carcass)?.scene.parts.find(({ key }) => key === part.key);
  return now === undefined ? null : { carcass, part: now, bore: now.bores.find(({ id }) => id === bore?.id) ?? null };
}

function choose(thing: Thing): void {
  chosen = thing;
  mark();
}

function mark(): void {
  lists.mark(chosen);
  stage?.stress(isPointed, chosen);
}

/** Whether the line of the cursor speaks of a panel. */
function isPointed({ carcass, part }: PartSolid): boolean {
  return pointed.find((one) => one.carcass === carcass)?.parts.includes(part.key) === true;
}

/** What the cursor has come to: the first panel that its line speaks of, and a bore of it that comes from the line. */
function cursor(now: readonly Pointed[]): void {
  pointed = now;
  const solid = stage?.solids.find(isPointed);
  const thing = solid ?? null;
  if (thing !== null && !(chosen !== null && chosen.carcass === thing.carcass && isStill(chosen))) {
    const sources = now.find(({ carcass }) => carcass === thing.carcass)?.sources ?? [];
    const bore =
      thing.part.bores.find(({ source }) => source !== thing.part.source && sources.includes(source)) ?? null;
    chosen = { carcass: thing.carcass, part: thing.part, bore };
  }
  mark();
}

/** Whether what is chosen comes from the line of the cursor, so that a click on a bore is not undone by it. */
function isStill({ carcass, part, bore }: Thing): boolean {
  const here = pointed.find((one) => one.carcass === carcass);
  return here?.sources.includes((bore ?? part).source) === true;
}

function hover(thing: Thing | null, x: number, y: number): void {
  card.hidden = thing === null;
  canvas.classList.toggle('on-thing', thing !== null);
  if (thing === null) return;
  say(card, (thing.bore ?? thing.part).described);
  const { clientWidth, clientHeight } = board;
  const { width, height } = card.getBoundingClientRect();
  card.style.left = `${Math.max(4, Math.min(x + 14, clientWidth - width - 4))}px`;
  card.style.top = `${Math.max(4, y + 14 + height < clientHeight ? y + 14 : y - height - 10)}px`;
}

/** To the next panel in the order of the lists, or the one before. */
function step(by: 1 | -1): void {
  const all = boxes?.boxes.flatMap(({ scene }) =>
    scene.parts.map((part): Thing => ({ carcass: scene.carcass, part, bore: null })),
  );
  if (all === undefined || all.length === 0) return;
  const at = all.findIndex(({ carcass, part }) => carcass === chosen?.carcass && part.key === chosen.part.key);
  const next = all[at < 0 ? (by === 1 ? 0 : all.length - 1) : (at + by + all.length) % all.length]!;
  choose(next);
  say(spoken, next.part.described);
}

const KEYS: Readonly<Record<string, (view: Stage) => void>> = {
  ArrowLeft: (view) => view.turn(-1, 0),
  ArrowRight: (view) => view.turn(1, 0),
  ArrowUp: (view) => view.turn(0, 1),
  ArrowDown: (view) => view.turn(0, -1),
  '+': (view) => view.nearer(1),
  '=': (view) => view.nearer(1),
  '-': (view) => view.nearer(-1),
  '0': (view) => view.look(null),
  PageDown: () => step(1),
  PageUp: () => step(-1),
  o: () => tools.flip('open'),
  a: () => tools.flip('apart'),
  Enter: () => {
    if (chosen !== null)
      editor.postMessage({ type: 'reveal', carcass: chosen.carcass, source: (chosen.bore ?? chosen.part).source });
  },
};
canvas.addEventListener('keydown', (event) => {
  const act = event.ctrlKey || event.metaKey || event.altKey ? undefined : KEYS[event.key];
  if (act === undefined || stage === null) return;
  event.preventDefault();
  act(stage);
});

/** Copies what is seen as a picture, or has it saved. */
async function painted(use: 'copy' | 'save'): Promise<void> {
  if (stage === null || boxes === null) return;
  try {
    const picture = await stage.picture();
    if (use === 'save') {
      const name = boxes.what === 'wall' ? 'wall' : `${boxes.carcass}-box`;
      editor.postMessage({ type: 'painted', name, png: await asBase64(picture) });
    } else {
      await navigator.clipboard.write([new ClipboardItem({ [picture.type]: picture })]);
      show(done, OF_MAP.copied);
      setTimeout(() => show(done, ''), 4000);
    }
  } catch (fault) {
    show(trouble, PHRASES_OF_PAGE.pictureFailed(fault instanceof Error ? fault.message : String(fault)));
  }
}

window.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
  if (!isToBoxPage(data)) return;
  switch (data.type) {
    case 'reply':
      receive(data);
      return;
    case 'cursor':
      cursor(data.pointed);
      return;
    case 'trouble':
      show(trouble, data.message);
      return;
  }
});

const kept: unknown = editor.getState();
if (typeof kept === 'object' && kept !== null && 'subject' in kept && isBoxSubject(kept.subject))
  subject = kept.subject;

new ResizeObserver(() => stage?.resize()).observe(board);
// The editor puts the classes and colours of another theme on the page itself.
new MutationObserver(() => stage?.retheme()).observe(document.body, { attributeFilter: ['class'] });
new MutationObserver(() => stage?.retheme()).observe(document.documentElement, { attributeFilter: ['style'] });
editor.postMessage({ type: 'ready' });
