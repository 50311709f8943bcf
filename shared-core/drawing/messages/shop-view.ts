import type { Box, Shape } from '../scene/scene.js';
import type { TextRange } from './drawing.js';

// What the client and the server say to each other about the machines of a shop. Types only.

/** Method of the request from the client to the server: `ShopViewParams` -> `ShopViewReply`. */
export type ShopViewMethod = 'borewright/shopView';

export interface ShopViewParams {
  readonly uri: string;
  /** Room for a drawing, in millimetres of lettering; left out for half a window. */
  readonly width?: number;
}

export interface ShopMachineView {
  /** By the shop's own name. */
  readonly name: string;
  /** 'vertical head' */
  readonly kindWords: string;
  readonly facts: readonly Readonly<Record<'word' | 'value', string>>[];
  /** null for a machine that bores nothing, and for one that cannot be read. */
  readonly scene: {
    readonly scale: number;
    readonly frame: Box;
    readonly shapes: readonly Shape[];
    readonly described: string;
  } | null;
  /** Why it cannot be drawn as it is written, and what to do; null where it is. */
  readonly trouble: string | null;
  /** Key of its text in `ranges`. */
  readonly source: string;
}

export type ShopViewReply =
  | {
      readonly kind: 'shop';
      readonly uri: string;
      readonly version: number;
      /** Title of the shop; '' where it has none. */
      readonly title: string;
      readonly machines: readonly ShopMachineView[];
      /** Where machines and their parts stand in the text, by source; what does not stand in this file is left out. */
      readonly ranges: Readonly<Record<string, TextRange>>;
    }
  | {
      readonly kind: 'nothing';
      readonly uri: string;
      readonly version: number;
      /** Why there is nothing to draw, and what to do. */
      readonly reason: string;
    };
