import type { BoxReply, BoxWhat, StandingBox } from '../../../shared-core/drawing/messages/box-view.js';
import type { BoxScene } from '../../../shared-core/drawing/box-view/scene.js';
import {
  dictionary,
  list,
  number,
  object,
  oneOf,
  orNull,
  outline,
  text,
  variants,
  type Of,
  type Shape,
} from '../shape.js';
import { isRange } from './common.js';

// What the extension and the page of the box view say to each other.

const isWhat: Shape<BoxWhat> = oneOf('carcass', 'wall');

/** What the page shows, kept by it so that it comes back after a restart of the editor. */
export const isBoxSubject = object({ uri: text, what: isWhat, carcass: orNull(text) });
export type BoxSubject = Of<typeof isBoxSubject>;

const isPoint: Shape<StandingBox['at'][number]> = object({ x: number, y: number, z: number });
const isRun = object({ from: number, to: number });
const isSpot = object({ x: number, y: number });
const isStanding: Shape<StandingBox> = object({
  at: list(isPoint),
  scene: outline<Omit<BoxScene, 'sources'>>(['parts', 'fittings', 'moves', 'findings'], ['extents']),
  ranges: dictionary(isRange),
  spoken: list(object({ range: isRange, parts: list(text) })),
});

/** What the server answers. */
export const isBoxReply: Shape<BoxReply> = variants('kind', {
  box: {
    uri: text,
    version: number,
    stale: orNull(text),
    what: isWhat,
    carcasses: list(object({ name: text, range: orNull(isRange) })),
    carcass: text,
    title: text,
    described: text,
    boxes: list(isStanding),
    worktops: list(object({ outline: list(isSpot), z: isRun })),
  },
  nothing: { uri: text, version: number, reason: text },
});

/** What the cursor's line speaks of in one carcass. */
const isPointed = object({
  carcass: text,
  /** Keys of parts. */
  parts: list(text),
  /** Sources of parts and bores. */
  sources: list(text),
});
export type Pointed = Of<typeof isPointed>;

/** From the extension to the page. */
export const isToBoxPage = variants('type', {
  reply: { subject: isBoxSubject, reply: isBoxReply },
  cursor: { pointed: list(isPointed) },
  /** Something failed outside the drawing, in words. */
  trouble: { message: text },
});
export type ToBoxPage = Of<typeof isToBoxPage>;

/** From the page to the extension. */
export const isFromBoxPage = variants('type', {
  ready: {},
  choose: { what: isWhat, carcass: orNull(text) },
  reveal: { carcass: text, source: text },
  /** The dots of the picture, as a PNG in base 64. */
  painted: { name: text, png: text },
});
export type FromBoxPage = Of<typeof isFromBoxPage>;
