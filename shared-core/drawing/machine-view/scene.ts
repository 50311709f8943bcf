import type { Reader } from '../../length/reader.js';
import type { Box, Shape } from '../scene/scene.js';

/**
 * One stroke as the operator sees it: the table from above, he stands at the lower edge of the page. Coordinates are
 * millimetres of the machine, x to his right and y DOWN the page, so toward him; where nothing stands for a long way the
 * view is interrupted (ISO 128-3), and figures, not lengths on the page, tell how far. Lettering as in `Scene`.
 */
export interface MachineScene {
  readonly view: 'machine';
  readonly title: string;
  readonly reader: Reader;
  /** The stop that the panel is laid against, by the shop's own name. */
  readonly stop: string;
  readonly scale: number;
  readonly frame: Box;
  /** In the order of painting. Keys are unique in the scene. */
  readonly shapes: readonly Shape[];
  readonly words: StepWords;
  readonly spindles: readonly SceneSpindle[];
  readonly holes: readonly SceneHole[];
  /** The signs that this scene has, for a legend. */
  readonly signs: readonly { readonly sign: Sign; readonly words: string }[];
}

/** The step in sentences; plain text, figures with their reader. */
export interface StepWords {
  /** 'Inside face up, front edge at the fence, bottom end against near-left.' */
  readonly lie: string;
  /** What is done with the panel since the stroke before; null for the first of a set-up. */
  readonly move: string | null;
  /** 'Spindles 1, 6, 10 and 15 bore 4 holes Ø 8 mm, 12 mm deep.' */
  readonly bore: string;
  /** What else is to be seen to: stops to lower, spindles that bore beside the panel, the extension. */
  readonly notes: readonly string[];
  /** '4 holes are still to come.' */
  readonly left: string;
  /** All that the drawing shows, for a reader who cannot see it. */
  readonly described: string;
}

/** A spindle of the set-up; `head` and `spindle` count from 0 here, from 1 in `about`. */
export interface SceneSpindle {
  /** Key of its shape. */
  readonly key: string;
  readonly head: number;
  readonly spindle: number;
  /** Micrometres; null where it is empty. */
  readonly diameter: number | null;
  readonly about: string;
}

export type HoleState = 'made' | 'now' | 'to-come';

export interface SceneHole {
  readonly key: string;
  readonly bore: string;
  readonly state: HoleState;
  readonly about: string;
}

export type Sign =
  | 'spindle-loaded'
  | 'spindle-empty'
  | 'hole-made'
  | 'hole-now'
  | 'hole-to-come'
  | 'stop-used'
  | 'stop-standing'
  | 'stop-lowered'
  | 'clamp'
  | 'hands-clear'
  | 'band';
