import type { Point3 } from '../../carcass/model.js';
import type { Worktop } from '../../wall/line-up.js';
import type { BoxScene } from '../box-view/scene.js';
import type { SourceKey } from '../scene/scene.js';
import type { DrawingParams, TextRange } from './drawing.js';

// What the client and the server say to each other about the box view. Types only; `client/webview/messages` guards what comes.

/** Method of the request from the client to the server: `BoxParams` -> `BoxReply`. */
export type BoxMethod = 'borewright/box';

/** One carcass by itself, or all that stand along its wall. */
export type BoxWhat = 'carcass' | 'wall';

/** The carcass of the cursor, else the one of this name, else the first. */
export interface BoxParams extends Pick<DrawingParams, 'uri' | 'position' | 'carcass'> {
  readonly what: BoxWhat;
}

export type BoxReply =
  | {
      readonly kind: 'box';
      readonly uri: string;
      /** Version of the document that was asked about, also where what is drawn is older. */
      readonly version: number;
      /** null: all is of this version. Otherwise a sentence that says what is older. */
      readonly stale: string | null;
      readonly what: BoxWhat;
      /** Every carcass that can be drawn, with its text; null where the present text no longer has it. */
      readonly carcasses: readonly { readonly name: string; readonly range: TextRange | null }[];
      readonly carcass: string;
      readonly title: string;
      /** All of it in words. */
      readonly described: string;
      readonly boxes: readonly StandingBox[];
      /** In the frame of the wall, as the places of the boxes. */
      readonly worktops: readonly Worktop[];
    }
  | {
      readonly kind: 'nothing';
      readonly uri: string;
      readonly version: number;
      /** Why there is nothing to draw, and what to do. */
      readonly reason: string;
    };

/** A carcass where it stands. */
export interface StandingBox {
  /** Where the origin of its frame stands, for each one that is drawn: one and 0 where a carcass is shown by itself. */
  readonly at: readonly Point3[];
  readonly scene: Omit<BoxScene, 'sources'>;
  /** Where what is drawn stands in the text; what stands in another file is left out. */
  readonly ranges: Readonly<Record<SourceKey, TextRange>>;
  /** Lines that speak of some of its parts, and the keys of these; narrower ones after those that they stand in. */
  readonly spoken: readonly { readonly range: TextRange; readonly parts: readonly string[] }[];
}
