import type { DrawingReply, View } from '../../../shared-core/drawing/messages/drawing.js';
import type { PictureReply, PictureUse } from '../../../shared-core/drawing/messages/picture.js';
import type { MoveShelfReply } from '../../../shared-core/drawing/messages/shelves.js';
import type { Pane, Scene } from '../../../shared-core/drawing/scene/scene.js';
import {
  dictionary,
  flag,
  list,
  number,
  object,
  oneOf,
  orNull,
  outline,
  text,
  variants,
  whole,
  type Of,
  type Shape,
} from '../shape.js';
import { isNearer, isRange } from './common.js';

// What the extension and the page of the preview say to each other.

const isView: Shape<View> = oneOf('panel', 'all-panels');
/** What is shown of a file. */
const shown = {
  view: isView,
  /** True: the drawing follows the cursor. False: it stays on `carcass` and `panel`. */
  follow: flag,
  carcass: orNull(text),
  panel: orNull(text),
};

/** What the preview shows, kept by the page so that it comes back after a restart of the editor. */
export const isSubject = object({ uri: text, ...shown });
export type Subject = Of<typeof isSubject>;

/** Room for the drawing, in millimetres of lettering. */
const isPane: Shape<Pane> = object({ width: number, height: number });

const carcasses = list(object({ name: text, panels: list(text) }));

/** What the server answers. */
export const isReply: Shape<DrawingReply> = variants('kind', {
  drawing: {
    uri: text,
    version: number,
    stale: orNull(text),
    carcasses,
    carcass: text,
    panel: orNull(text),
    scene: outline<Scene>(['shapes', 'table', 'findings', 'shelves']),
    ranges: dictionary(isRange),
  },
  nothing: { uri: text, version: number, carcasses, reason: text },
});

export const isPicture: Shape<PictureReply> = variants('kind', {
  picture: { uri: text, name: text, svg: text },
  nothing: { uri: text, reason: text },
});
const isUse: Shape<PictureUse> = oneOf('svg', 'png', 'copy', 'print');

/** The change of a text that moves a shelf. */
export const isMoveShelfReply: Shape<MoveShelfReply> = object({
  uri: text,
  version: number,
  edits: list(object({ range: isRange, text })),
});

/** From the extension to the page. */
export const isToPage = variants('type', {
  reply: { subject: isSubject, nearer: isNearer, pane: isPane, reply: isReply },
  /** The cursor stands in the text of these sources. */
  cursor: { sources: list(text) },
  /** What part of the page the lists were given last, in percent. */
  lists: { share: number },
  /** Make dots of this drawing: to be copied, or to be sent back under its name. */
  paint: { use: oneOf('png', 'copy'), name: text, svg: text },
  /** Something failed outside the drawing, in words. */
  trouble: { message: text },
});
export type ToPage = Of<typeof isToPage>;

/** From the page to the extension. */
export const isFromPage = variants('type', {
  ready: { pane: isPane },
  subject: shown,
  nearer: { nearer: isNearer },
  pane: { pane: isPane },
  /** The reader gives the lists this part of the page, in percent. */
  share: { share: number },
  reveal: { source: text },
  /** A loose shelf is wanted so many holes further up, or down where negative. */
  'move-shelf': { shelf: text, holes: whole },
  /** One more preview is wanted, kept on what is drawn now. */
  another: {},
  /** The papers of the job are wanted. */
  papers: {},
  /** What is drawn now is wanted as a picture. */
  picture: { use: isUse },
  /** The dots of a drawing that was to be painted, as a PNG in base 64. */
  painted: { name: text, png: text },
});
export type FromPage = Of<typeof isFromPage>;
