import type { MachineScene } from '../../../shared-core/drawing/machine-view/scene.js';
import type { MachineStepReply, StepAddress } from '../../../shared-core/drawing/messages/machine-view.js';
import {
  flag,
  index,
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
import { isNearer, isRange } from './common.js';
import { isSetUpsReply } from './set-ups.js';

// What the extension and the page of the machine view say to each other.

/** What the panel shows: the machine, stroke by stroke, or the list of set-ups. Where there is room it shows both. */
const isSide = oneOf('machine', 'list');
export type MachineSide = Of<typeof isSide>;

/** What the page is to show, kept by it so that it comes back after a restart of the editor. */
export const isMachineSubject = object({
  uri: text,
  side: isSide,
  /** Only the steps of this carcass, and of this panel of it; null for all. */
  carcass: orNull(text),
  panel: orNull(text),
});
export type MachineSubject = Of<typeof isMachineSubject>;

export const isStepAddress: Shape<StepAddress> = object({ setUp: text, carcass: text, panel: text, step: index });

/** What the server answers. */
export const isStepReply: Shape<MachineStepReply> = variants('kind', {
  step: {
    uri: text,
    version: number,
    stale: orNull(text),
    address: isStepAddress,
    scene: outline<MachineScene>(['shapes', 'spindles', 'holes', 'signs'], ['words']),
    range: orNull(isRange),
  },
  nothing: { uri: text, version: number, address: isStepAddress, reason: text },
});

/** From the extension to the page. */
export const isToMachinePage = variants('type', {
  /** A command asks for something else than what is shown: the page leaves where it was. */
  subject: { subject: isMachineSubject },
  'set-ups': { reply: isSetUpsReply },
  step: { nearer: isNearer, reply: isStepReply },
  /** All that is ticked off, by content. */
  ticks: { ticks: list(text) },
  /** Something failed outside the drawing, in words. */
  trouble: { message: text },
});
export type ToMachinePage = Of<typeof isToMachinePage>;

/** From the page to the extension. */
export const isFromMachinePage = variants('type', {
  ready: { subject: orNull(isMachineSubject) },
  subject: { subject: isMachineSubject },
  step: { address: isStepAddress, nearer: isNearer },
  tick: { ticks: list(text), on: flag },
  /** The reader goes to the machine, or leaves it. */
  floor: { on: flag },
  /** The papers of the job are wanted. */
  papers: {},
  /** Lead to the text that makes a panel. */
  reveal: { carcass: text, panel: text },
});
export type FromMachinePage = Of<typeof isFromMachinePage>;
