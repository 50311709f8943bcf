import type { Micrometres } from '../../length/units.js';
import { counted, listed, quoted } from '../../words/english.js';
import type { NumberedHoles, ShelfOnPins } from '../pins.js';
import { messages } from '../../words/message.js';
import { labels } from '../../words/told.js';

export const HEADS = labels('assembly-heads', {
  step: 'Step',
  putOn: 'Put on',
  joints: 'Joints',
  fittings: 'Fittings',
});

/** A side of the box at the clamp; `range` null where the shop file gives none. */
interface ClampedSide {
  readonly side: 'width' | 'height' | 'depth';
  readonly size: Micrometres;
  readonly range: { readonly min: Micrometres; readonly max: Micrometres } | null;
}

/** 'hole 11'; 'hole 11 in left and right, 10 in divider-1'. */
export const holesTold = (holes: NumberedHoles): string =>
  holes.length === 1
    ? `hole ${holes[0]!.number}`
    : `hole ${holes.map(({ number, uprights }) => `${number} in ${listed(uprights)}`).join(', ')}`;

/** What the assembly sheet says. */
export const say = messages('assembly', {
  caution: () =>
    'A case clamp presses with great force: keep hands out while it moves, and let nobody else reach the controls. Lift large boxes with two people. Whoever hangs a cabinet answers for the wall and its fixing. The machine’s manual and local rules decide.',
  dryFit: () => 'Dry-fit first: every joint closes by hand before any glue is opened.',
  drawnApart: ({ carcass }: { readonly carcass: string }) => `${carcass}, drawn apart; the numbers are the steps`,
  drawnInOrder: ({ carcass, steps }: { readonly carcass: string; readonly steps: readonly (readonly string[])[] }) =>
    `${carcass} drawn apart. In order: ${steps.map((panels) => listed(panels)).join('; ')}.`,
  layDown: ({ panel }: { readonly panel: string }) => `${panel}: lay it down`,
  workIn: ({ panels }: { readonly panels: readonly string[] }) =>
    `${listed(panels)}: work them in together; no straight move puts them on one by one`,
  joint: ({ end, face }: { readonly end: string; readonly face: string }) => `${end} to ${face}`,
  fixBack: () => 'Fix the back when the box is square; it keeps it square.',
  layBack: () => 'Lay the back into its rebates and fix it when the box is square; it keeps it square.',
  plinth: () => 'Put on the plinth when the box stands.',
  clipPlinth: () =>
    'Clip the plinth onto the feet once the cabinet stands level and nothing has to be screwed on any more.',
  hangDoors: ({ count }: { readonly count: number }) =>
    `Hang the ${counted(count, 'door', 'doors')} when the box stands and can no longer tip; have a second person hold a large one.`,
  drawers: ({ count, bottom }: { readonly count: number; readonly bottom: 'grooved' | 'applied' }) =>
    `Put the ${counted(count, 'drawer')} together beside the box: front and back to one side${bottom === 'grooved' ? ', the bottom into their grooves' : ''}, then the other side${bottom === 'applied' ? ', and the bottom from below' : ''}; both diagonals alike. Screw the slides to the box and to the drawers, run each drawer in, and screw its front on from inside when its gaps are right. Do not pull several out before the cabinet is fixed: it may tip.`,
  endPanels: ({ count }: { readonly count: number }) =>
    `Screw the ${counted(count, 'end panel')} on from inside when the cabinet stands level, its front edge flush with the fronts.`,
  fillers: ({ count }: { readonly count: number }) =>
    `Cut the ${counted(count, 'filler')} to the wall last: hold it there, scribe the line of the wall, and saw outside of that.`,
  pulls: ({ count }: { readonly count: number }) =>
    `Screw on the ${counted(count, 'pull')} from inside when the fronts hang; try one by hand first, as too long a screw comes through.`,
  brackets: ({ count }: { readonly count: number }) =>
    `Screw the ${counted(count, 'hanging bracket')} to the sides before the box is lifted, and cut the back out where one reaches through it. Let someone competent judge the wall and its fixing; hang the box with two people, and fill it only when it is fixed.`,
  wardrobeRails: ({ count }: { readonly count: number }) =>
    `Screw on the sockets of the ${counted(count, 'wardrobe rail')}, and put ${count === 1 ? 'it' : 'them'} in; measure the opening before a rail is cut.`,
  feet: ({ count }: { readonly count: number }) =>
    `Put the ${count} feet on while the box lies on its back, lift it upright with two people, and set it level. Do not push it along on its feet.`,
  fixedFronts: ({ count }: { readonly count: number }) =>
    `Fix the ${counted(count, 'front that does not move', 'fronts that do not move')} last, when those beside ${count === 1 ? 'it' : 'them'} hang.`,
  looseShelves: ({ shelves }: { readonly shelves: readonly ShelfOnPins[] }, show) => {
    const told = shelves.map(
      ({ panel, at, holes }) => `${panel} ${show.exact(at)}${holes.length === 0 ? '' : ` (${holesTold(holes)})`}`,
    );
    return `Put in ${counted(shelves.length, 'loose shelf', 'loose shelves')} last. Their pins stand this far from the bottom end of the sides, holes counted from there: ${told.join('; ')}.`;
  },
  noClamp: () => 'The shop file names no case clamp: press the box with hand clamps, square to it.',
  clamp: ({ clamp, sides }: { readonly clamp: string; readonly sides: readonly ClampedSide[] }, show) => {
    const told = sides.map(({ side, size, range }) => {
      if (range === null) return `${side} ${show.exact(size)}`;
      const fits = size >= range.min && size <= range.max ? '' : ', DOES NOT FIT';
      return `${side} ${show.exact(size)} (takes ${show.exact(range.min)} to ${show.exact(range.max)}${fits})`;
    });
    return `Case clamp ${quoted(clamp)}: ${told.join('; ')}.`;
  },
  diagonals: ({ diagonal }: { readonly diagonal: Micrometres }, show) =>
    `Measure both diagonals at the front in the clamp: both are ${show.exact(diagonal)}. If they differ, shift the box in the clamp before the glue sets.`,
});
