import type { Box, Pane } from '../scene/scene.js';

/** Scales for a pane are powers of this, so that an edit that moves the frame a little leaves all lettering where it is. */
const STEP = 1.05;
/** Lettering about a panel of common practice, in millimetres of itself, for a first guess: dimensions, names and margin. */
const ABOUT = { width: 45, height: 35 } as const;
/** The panel has this part of the pane at least, however much is lettered about it. */
const LEAST_PART = 0.35;
/** Drafts that are made at most to fit; the second nearly always does. */
const DRAFTS = 4;
/** With its longest side so long in millimetres of lettering, a panel has room for all that is lettered about it. */
const ROOMY = 110;
/** How much longer than wide a panel is that may lie on its side, and how much larger it must come out for that. */
const TALL = 2.5;
const WORTH_IT = 1.5;

interface Size {
  readonly width: number;
  readonly height: number;
}

/** The smallest step at which a thing of this size, in millimetres, has room for `about` millimetres of lettering. */
function stepFor(size: Size, about: Size, pane: Pane): number {
  const of = (length: number, lettering: number, room: number): number =>
    length / Math.max(room - lettering, LEAST_PART * room);
  const scale = Math.max(of(size.width, about.width, pane.width), of(size.height, about.height, pane.height));
  // A hair less, so that a scale that is a step counts as that step.
  return Math.ceil(Math.log(scale) / Math.log(STEP) - 1e-6);
}

/** A drawing as it comes out at a scale. */
export interface Draft {
  /** Lettering included. */
  readonly frame: Box;
  /** Whether no lettering stands over other lettering. */
  readonly isLegible: boolean;
}

/**
 * The scale at which a drawing fills a pane: millimetres of panel for one of lettering, lettering as large as it is meant to
 * be read; smaller where it would run into itself.
 * @param size of what is drawn without its lettering, in millimetres
 */
export function scaleInPane(draftAt: (scale: number) => Draft, size: Size, pane: Pane): number {
  let step = stepFor(size, ABOUT, pane);
  let draft = draftAt(STEP ** step);
  for (let drafts = 1; drafts < DRAFTS; drafts += 1) {
    const scale = STEP ** step;
    const { width, height } = draft.frame;
    const about = { width: (width - size.width) / scale, height: (height - size.height) / scale };
    const next = stepFor(size, about, pane);
    if (next === step) break;
    step = next;
    draft = draftAt(STEP ** step);
  }
  const roomy = Math.max(size.width, size.height) / ROOMY;
  while (!draft.isLegible && STEP ** step > roomy) {
    step -= 1;
    draft = draftAt(STEP ** step);
  }
  return STEP ** step;
}

/** Whether a panel that stands comes out so much larger lying on its side that it had better lie. */
export function liesInPane(length: number, width: number, pane: Pane): boolean {
  const standing = stepFor({ width, height: length }, ABOUT, pane);
  const lying = stepFor({ width: length, height: width }, ABOUT, pane);
  return length >= TALL * width && STEP ** (standing - lying) >= WORTH_IT;
}
