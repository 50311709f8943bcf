import type { TextRange } from './drawing.js';
import type { SetUpsReply } from './set-ups.js';
import type { MachineScene } from '../machine-view/scene.js';

// What the client, the server and the page of the machine view say to each other about one stroke. Types only.

/** Method of the request from the client to the server: `MachineStepParams` -> `MachineStepReply`. */
export type MachineStepMethod = 'borewright/machineStep';

/** One stroke of one panel in one set-up of the job. */
export interface StepAddress {
  /** Id of the set-up. */
  readonly setUp: string;
  readonly carcass: string;
  readonly panel: string;
  /** Which of the panel's steps in this set-up, from 0. */
  readonly step: number;
}

export interface MachineStepParams extends StepAddress {
  readonly uri: string;
  /** How many times smaller the lettering is wanted, because the reader has zoomed in: 1 (the default) to 64. */
  readonly nearer?: number;
}

export type MachineStepReply =
  | {
      readonly kind: 'step';
      readonly uri: string;
      /** Version of the document that was asked about, also where the step is of an older one. */
      readonly version: number;
      /** null: the step is of this version. Otherwise a sentence that says why an older one is shown. */
      readonly stale: string | null;
      readonly address: StepAddress;
      readonly scene: MachineScene;
      /** The text that makes the panel; null where there is none in this file now. */
      readonly range: TextRange | null;
    }
  | {
      readonly kind: 'nothing';
      readonly uri: string;
      readonly version: number;
      readonly address: StepAddress;
      /** Why it cannot be shown, and what to do. */
      readonly reason: string;
    };

/** What the panel shows: the machine, stroke by stroke, or the list of set-ups. Where there is room it shows both. */
export type MachineSide = 'machine' | 'list';

/** What the page is to show, kept by it so that it comes back after a restart of the editor. */
export interface MachineSubject {
  readonly uri: string;
  readonly side: MachineSide;
  /** Only the steps of this carcass, and of this panel of it; null for all. */
  readonly carcass: string | null;
  readonly panel: string | null;
}

/** From the extension to the page. */
export type ToMachinePage =
  /** A command asks for something else than what is shown: the page leaves where it was. */
  | { readonly type: 'subject'; readonly subject: MachineSubject }
  | { readonly type: 'set-ups'; readonly reply: SetUpsReply }
  | { readonly type: 'step'; readonly nearer: number; readonly reply: MachineStepReply }
  /** All that is ticked off, by content. */
  | { readonly type: 'ticks'; readonly ticks: readonly string[] }
  /** Something failed outside the drawing, in words. */
  | { readonly type: 'trouble'; readonly message: string };

/** From the page to the extension. */
export type FromMachinePage =
  | { readonly type: 'ready'; readonly subject: MachineSubject | null }
  | { readonly type: 'subject'; readonly subject: MachineSubject }
  | { readonly type: 'step'; readonly address: StepAddress; readonly nearer: number }
  | { readonly type: 'tick'; readonly ticks: readonly string[]; readonly on: boolean }
  /** Lead to the text that makes a panel. */
  | { readonly type: 'reveal'; readonly carcass: string; readonly panel: string };
