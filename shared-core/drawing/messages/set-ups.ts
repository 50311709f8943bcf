import type { Micrometres, Unit } from '../../length/units.js';
import type { TextRange } from './drawing.js';

// What the server says to the client about the set-ups of a job. Types only. Words are plain text in the file's unit.

/** Method of the request from the client to the server: `SetUpsParams` -> `SetUpsReply`. */
export type SetUpsMethod = 'borewright/setUps';

export interface SetUpsParams {
  readonly uri: string;
}

export type SetUpsReply =
  | {
      readonly kind: 'set-ups';
      readonly uri: string;
      /** Version of the document that was asked about, also where the set-ups are of an older one. */
      readonly version: number;
      /** null: the set-ups are of this version. Otherwise a sentence that says why older ones are listed. */
      readonly stale: string | null;
      /** Title of the job; '' where it has none. */
      readonly title: string;
      readonly unit: Unit;
      /** In the order to run. */
      readonly setUps: readonly ListedSetUp[];
      readonly totals: SetUpTotals;
      /** What no set-up bores, and why. */
      readonly unbored: readonly UnboredHoles[];
      /** Carcasses that no set-up is for, because their text has errors. */
      readonly broken: readonly string[];
    }
  | {
      readonly kind: 'nothing';
      readonly uri: string;
      readonly version: number;
      /** Why there are no set-ups, and what to do. */
      readonly reason: string;
    };

/** One set-up in its place in the order to run. */
export interface ListedSetUp {
  /** Unique in the job: 'borer-up-C'. */
  readonly id: string;
  /** Changes where anything that is set, or that is bored in it, changes: what was ticked off before is then another set-up. */
  readonly content: string;
  /** The machine by the shop's own name. */
  readonly machine: string;
  readonly kind: 'vertical' | 'horizontal' | 'line' | 'cup';
  /** 'vertical head' */
  readonly kindWords: string;
  /** What is changed to come to it from the set-up before, one sentence each, in the order to do it. Empty: nothing. */
  readonly changes: readonly string[];
  readonly seconds: number;
  /** '7 min 30 s' */
  readonly time: string;
  /** All that stands on the machine, changed or not: stops, fence or heads, height, depth, bits. In the order to set them. */
  readonly settings: readonly SetUpSetting[];
  readonly stops: readonly ListedStop[];
  readonly fence: readonly Micrometres[];
  readonly height: Micrometres | null;
  readonly extension: boolean;
  readonly depth: Micrometres;
  readonly through: boolean;
  /** Heads and spindles are counted from 0 here, from 1 in all words. */
  readonly spindles: readonly { readonly head: number; readonly spindle: number; readonly diameter: Micrometres }[];
  readonly runs: readonly ListedRun[];
  readonly refused: readonly RefusedRun[];
  /** What is measured on the first panel when it is bored: 'from front edge', '37, 485 mm'. */
  readonly firstPiece: readonly { readonly name: string; readonly value: string }[];
  readonly strokes: number;
  readonly holes: number;
  /** How every panel of the set-up lies, and what is never done with one; one sentence each. */
  readonly lay: readonly string[];
  /** In the order in which an operator meets them. */
  readonly cautions: readonly string[];
}

export interface SetUpSetting {
  /** A stop by the shop's own name, or 'fence', 'front head', 'height', 'depth', 'bits'. */
  readonly name: string;
  /** '712 mm'; 'Ø 8 mm in spindles 1, 6, 10 and 15' */
  readonly value: string;
  /** From where to where it is measured: 'to spindle 1', 'from its face to the line of spindles'; '' where the name says it. */
  readonly about: string;
  /** False where it stands so from the set-up before. */
  readonly changed: boolean;
}

export interface ListedStop {
  readonly name: string;
  readonly side: 'left' | 'right';
  readonly position: Micrometres;
  /** '712 mm' */
  readonly words: string;
}

/** One panel on the machine. */
export interface ListedRun {
  readonly carcass: string;
  readonly panel: string;
  /** How many equal ones are bored so. */
  readonly pieces: number;
  /** '720 × 560 × 16 mm' */
  readonly size: string;
  /** Changes where the panel's size, its machine or a hole that is made in it here changes; not where only stops do. */
  readonly content: string;
  /** The text that makes the panel; null where it stands in another file. */
  readonly range: TextRange | null;
  readonly steps: readonly ListedStep[];
}

/** A panel that would be bored in the set-up too, and must not be as it is. */
export interface RefusedRun extends Pick<ListedRun, 'carcass' | 'panel' | 'pieces' | 'size' | 'range'> {
  /** 'DO NOT BORE: its bores have errors' */
  readonly words: string;
}

/** One stroke. */
export interface ListedStep {
  /** What is done with the panel, to be read after the step before: 'Slide it along: top end at near-right'. */
  readonly words: string;
  /** Stops that the panel covers, so that they must be down. */
  readonly lowered: readonly string[];
  /** False where the machine has clamps and none of them comes down on the panel: it is held by a fixture. */
  readonly held: boolean;
  readonly holes: number;
}

export interface SetUpTotals {
  readonly setUps: number;
  /** These strokes cannot be made in fewer set-ups. */
  readonly leastSetUps: number;
  readonly strokes: number;
  readonly panels: number;
  readonly holes: number;
  /** Changeovers in all. */
  readonly seconds: number;
  /** No order of these set-ups takes less. */
  readonly leastSeconds: number;
  /** True where `seconds` is known to be the least. */
  readonly proven: boolean;
  /** '37 set-ups, 218 strokes; no fewer set-ups make these strokes; changeovers 2 h 50 min 30 s in all; …' */
  readonly words: string;
}

export interface UnboredHoles {
  readonly carcass: string;
  readonly panel: string;
  readonly count: number;
  readonly machine: string | null;
  /** Why, with the figures, and what to do. */
  readonly reason: string;
}
