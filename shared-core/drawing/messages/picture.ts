import type { DrawingParams } from './drawing.js';

// What the client and the server say to each other about a drawing that leaves the editor. Types only.

/** Method of the request from the client to the server: `PictureParams` -> `PictureReply`. */
export type PictureMethod = 'borewright/picture';

/** What becomes of it. */
export type PictureUse = 'svg' | 'png' | 'copy' | 'print';

/** The drawing on paper, to scale, with its hole table. */
export type PictureParams = Pick<DrawingParams, 'uri' | 'view' | 'carcass' | 'panel'>;

export type PictureReply =
  | {
      readonly kind: 'picture';
      readonly uri: string;
      /** 'right-base-left': a name for its file, without an ending. */
      readonly name: string;
      /** A file of its own, sizes in millimetres of paper. */
      readonly svg: string;
    }
  | {
      readonly kind: 'nothing';
      readonly uri: string;
      /** Why there is nothing to draw, and what to do. */
      readonly reason: string;
    };
