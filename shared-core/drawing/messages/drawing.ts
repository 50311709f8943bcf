import type { Pane, Scene, SourceKey } from '../scene/scene.js';

// What the client and the server say to each other about drawings. Types only; `client/webview/messages` guards what comes.

/** Method of the request from the client to the server: `DrawingParams` -> `DrawingReply`. */
export type DrawingMethod = 'borewright/drawing';

/** Zero-based, in UTF-16 code units, as in the protocol. */
export interface TextPosition {
  readonly line: number;
  readonly character: number;
}
export interface TextRange {
  readonly start: TextPosition;
  readonly end: TextPosition;
}

export type View = 'panel' | 'all-panels';

/** Which drawing is wanted. */
export interface DrawingParams {
  readonly uri: string;
  readonly view: View;
  /** The cursor: the carcass, and the panel, whose text it stands in is drawn. null where no cursor is followed. */
  readonly position: TextPosition | null;
  /**
   * What to draw where the cursor is not followed or stands in no carcass; `panel` also where it stands in `carcass` but
   * in the text of no panel. null and names that are not there: the first.
   */
  readonly carcass: string | null;
  readonly panel: string | null;
  /** What it is for: to scale on paper (the default), or lettered to be read in a pane. */
  readonly medium?: 'paper' | 'screen';
  /** On a screen, the pane; left out for half a window. */
  readonly pane?: Pane;
  /** On a screen, how many times smaller the lettering of a bore map is wanted, because the reader has zoomed in: 1 (the default) to 64. */
  readonly nearer?: number;
}

/** What can be drawn of the file, for the lists that choose. */
export interface DrawableCarcass {
  readonly name: string;
  readonly panels: readonly string[];
}

export type DrawingReply =
  | {
      readonly kind: 'drawing';
      readonly uri: string;
      /** Version of the document that was asked about, also where the drawing is older. */
      readonly version: number;
      /** null: the drawing is of this version. Otherwise a sentence that says why an older one is shown. */
      readonly stale: string | null;
      readonly carcasses: readonly DrawableCarcass[];
      readonly carcass: string;
      /** Key of the panel drawn; where all are drawn, of the panel under the cursor if there is one. */
      readonly panel: string | null;
      readonly scene: Scene;
      /** `scene.sources` as ranges of the document; what stands in another file (the shop's) is left out. */
      readonly ranges: Readonly<Record<SourceKey, TextRange>>;
    }
  | {
      readonly kind: 'nothing';
      readonly uri: string;
      readonly version: number;
      readonly carcasses: readonly DrawableCarcass[];
      /** Why there is nothing to draw, and what to do. */
      readonly reason: string;
    };
