import type { TextRange } from './drawing.js';
import type { MachineScene } from '../machine-view/scene.js';

// What the client and the server say to each other about one stroke. Types only; `client/webview/messages` guards what comes.

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
