import type { Micrometres } from '../length/units.js';
import { listed, quoted, verb } from '../words/english.js';
import { messages } from '../words/message.js';

interface Side {
  readonly thick: readonly [Micrometres, Micrometres];
  /** The size of the carcass, and what it must be more than. */
  readonly size: Micrometres;
  readonly least: Micrometres;
}

type Run = readonly [from: Micrometres, to: Micrometres];

/** What cannot be built, with the sizes that stand in each other's way. */
export const say = messages('size', {
  noBoards: () => 'The shop has no boards. Add one to the shop file.',
  noFittings: ({ sorts }: { readonly sorts: string }) =>
    `The shop has nothing to join panels with. Add a ${sorts} to the shop file.`,
  noWidth: ({ thick: [left, right], size, least }: Side, show) =>
    `The sides, ${show.length(left)} and ${show.length(right)} thick, leave no room in a carcass ${show.length(size)} wide. Make it wider than ${show.length(least)}.`,
  noHeight: ({ thick: [bottom, top], size, least }: Side, show) =>
    `Bottom and top, ${show.length(bottom)} and ${show.length(top)} thick, leave no room in a carcass ${show.length(size)} high. Make it higher than ${show.length(least)}.`,
  noDepth: ({ behind, size }: { readonly behind: Micrometres; readonly size: Micrometres }, show) =>
    `The back takes ${show.length(behind)} and leaves no room in a carcass ${show.length(size)} deep. Make it deeper than ${show.length(behind)}.`,
  noDiagonal: (
    { size, depth, least }: { readonly size: Micrometres; readonly depth: Micrometres; readonly least: Micrometres },
    show,
  ) =>
    `A carcass ${show.length(depth)} deep that reaches ${show.length(size)} along a wall has no front across the corner. Make it reach more than ${show.length(least)}, or less deep.`,
  grooveThrough: (
    {
      panel,
      groove,
      thickness,
    }: { readonly panel: string; readonly groove: Micrometres; readonly thickness: Micrometres },
    show,
  ) =>
    `The groove for the back is ${show.length(groove)} deep and goes through ${panel}, which is ${show.length(thickness)} thick. Make it shallower.`,
  dividersNoBay: (
    {
      count,
      thickness,
      clear,
    }: { readonly count: number; readonly thickness: Micrometres; readonly clear: Micrometres },
    show,
  ) =>
    `${count} dividers of ${show.length(thickness)} leave no clear bay in a clear width of ${show.length(clear)}. Use fewer dividers, or make the carcass wider.`,
  shelvesTooMany: (
    {
      count,
      kind,
      pitch,
      most,
    }: { readonly count: number; readonly kind: 'fixed' | 'loose'; readonly pitch: Micrometres; readonly most: number },
    show,
  ) =>
    `${count} ${kind} shelves do not fit on the pitch of ${show.nominal(pitch)}; ${most === 0 ? 'not even one does' : `the maximum is ${most}`}. Use fewer shelves, or make the carcass higher.`,
  bayMissing: ({ shelf, bay, bays }: { readonly shelf: string; readonly bay: number; readonly bays: number }) =>
    bays === 1
      ? `${shelf} cannot stand in bay ${bay}, because the carcass has no dividers. Use bay 1, or add a divider.`
      : `${shelf} cannot stand in bay ${bay}, because the carcass has ${bays} bays. Use a bay between 1 and ${bays}.`,
  shelfOutside: (
    {
      shelf,
      at,
      above,
      room,
    }: { readonly shelf: string; readonly at: Micrometres; readonly above: 'top' | 'rails'; readonly room: Run },
    show,
  ) =>
    `${shelf} at ${show.length(at)} does not fit between bottom and ${above}. Put it between ${show.length(room[0])} and ${show.length(room[1])}.`,
  shelfNowhere: (
    { shelf, at, above }: { readonly shelf: string; readonly at: Micrometres; readonly above: 'top' | 'rails' },
    show,
  ) =>
    `${shelf} at ${show.length(at)} does not fit between bottom and ${above}. Remove it, or make the carcass higher.`,
  shelfRunsInto: (
    {
      shelf,
      at,
      other,
      free: [down, up],
    }: { readonly shelf: string; readonly at: Micrometres; readonly other: string; readonly free: Run },
    show,
  ) =>
    `${shelf} at ${show.length(at)} runs into ${other}. Put it at ${show.length(down)} or lower, or at ${show.length(up)} or higher.`,
  shelfNoLength: (
    { shelf, bay, play }: { readonly shelf: string; readonly bay: Micrometres; readonly play: Micrometres },
    show,
  ) =>
    `${shelf} has no length left: the bay is ${show.length(bay)} wide, and the play at both ends takes ${show.length(play)}. Make the bay wider.`,
  shelfNoWidth: (
    { shelf, clear, setback }: { readonly shelf: string; readonly clear: Micrometres; readonly setback: Micrometres },
    show,
  ) =>
    `${shelf} has no width left: the clear depth is ${show.length(clear)}, and the setback of the shelf takes ${show.length(setback)}. Make the setback smaller.`,
  shelfAllCut: ({ shelf, setback }: { readonly shelf: string; readonly setback: Micrometres }, show) =>
    `The setback of ${show.length(setback)} leaves ${shelf} no straight edges at the sides. Make it smaller.`,
  shelfInDoor: (
    { shelf, setback, inset }: { readonly shelf: string; readonly setback: Micrometres; readonly inset: Micrometres },
    show,
  ) =>
    `${shelf} stands ${show.length(setback)} back from the front and runs into an inset door, which reaches ${show.length(inset)} back. Make its setback at least ${show.length(inset)}.`,
  doorsBeforeDividers: ({ bays }: { readonly bays: number }) =>
    `An inset door cannot hang before the dividers between ${bays} bays, because they reach to the front. Say with \`bays\` what hangs before each bay, or make the doors overlay ones.`,
  doorBayMissing: ({ asked, bays }: { readonly asked: number; readonly bays: number }) =>
    `The doors of ${asked} bays are listed, but the carcass has ${bays}. List no more than it has, or add a divider.`,
  frontBayMissing: ({ bay, bays }: { readonly bay: number; readonly bays: number }) =>
    bays === 1
      ? `A front cannot stand before bay ${bay}, because the carcass has no dividers. Use bay 1, or add a divider.`
      : `A front cannot stand before bay ${bay}, because the carcass has ${bays} bays. Use a bay between 1 and ${bays}.`,
  frontsTooHigh: (
    {
      fronts,
      given,
      room,
      left,
    }: {
      readonly fronts: number;
      readonly given: Micrometres;
      readonly room: Micrometres;
      readonly left: Micrometres;
    },
    show,
  ) =>
    `The heights of ${fronts} fronts come to ${show.length(given)} without their gaps, and the room for them is ${show.length(room)} high: ${show.length(Math.max(0, left))} is left for the others. Make one lower, or leave its height out.`,
  backAllOpen: () => 'The place that is left open takes the whole of the back. Write `back: none`, or leave less open.',
  blindTooWide: ({ reach, width }: { readonly reach: Micrometres; readonly width: Micrometres }, show) =>
    `The blind panel would reach ${show.length(reach)} from the side with its strip, and leaves nothing to open in a carcass ${show.length(width)} wide. Make the carcass wider, or less of it blind.`,
  frontBehindBlind: ({ front }: { readonly front: string }) =>
    `${front} would lie wholly behind the blind panel. Say with \`bay\` before which bay it stands, or make less of the carcass blind.`,
  drawerBehindBlind: (
    {
      drawer,
      from,
      to,
      box,
    }: { readonly drawer: string; readonly from: Micrometres; readonly to: Micrometres; readonly box: Run },
    show,
  ) =>
    `The box of ${drawer} would stand between ${show.length(box[0])} and ${show.length(box[1])} from the left, and cannot come out past the blind panel, beside which the front is open from ${show.length(from)} to ${show.length(to)}. Part the carcass with a divider there, and stand the drawer before the other bay.`,
  noSlides: () => 'The shop has no slides. Add one to the shop file.',
  drawerNoDepth: (
    {
      drawer,
      slide,
      least,
      room,
    }: {
      readonly drawer: string;
      readonly slide: string;
      readonly least: Micrometres;
      readonly room: Micrometres;
    },
    show,
  ) =>
    `${drawer} finds no slide: the shortest of ${quoted(slide)} is ${show.length(least)} long, and the room behind its front is ${show.length(room)}. Make the carcass deeper, or use another slide.`,
  drawerNoWidth: (
    { drawer, bay, taken }: { readonly drawer: string; readonly bay: Micrometres; readonly taken: Micrometres },
    show,
  ) =>
    `${drawer} finds no room between uprights ${show.length(bay)} apart, of which the slides take ${show.length(taken)}. Make the bay wider.`,
  drawerNoHeight: (
    {
      drawer,
      height,
      most,
      canBeLower,
    }: {
      readonly drawer: string;
      readonly height: Micrometres;
      readonly most: Micrometres;
      /** Whether there is room for the lowest box that is made. */
      readonly canBeLower: boolean;
    },
    show,
  ) =>
    `The box of ${drawer} would have to be ${show.length(height)} high, and behind its front, on the pitch, there is room for ${show.length(Math.max(0, most))}. Make the front higher${canBeLower ? ', or the box lower' : ''}.`,
  doorNoSize: (
    { door, width, height }: { readonly door: string; readonly width: Micrometres; readonly height: Micrometres },
    show,
  ) =>
    `${door} would be ${show.length(width)} wide and ${show.length(height)} high. Make its reveals and gaps smaller, or the carcass larger.`,
  doorTooThick: (
    { door, thickness, clear }: { readonly door: string; readonly thickness: Micrometres; readonly clear: Micrometres },
    show,
  ) =>
    `${door} is ${show.length(thickness)} thick and finds no room in a clear depth of ${show.length(clear)}. Give it a thinner board, or make it an overlay door.`,
  dividerUnderRails: ({ thick: [front, back] }: Pick<Side, 'thick'>, show) =>
    `A divider cannot end under both rails, because the front one is ${show.length(front)} thick and the rear one ${show.length(back)}. Give both the same board.`,
  dividerOutside: (
    {
      divider,
      run,
      beside,
      room,
    }: { readonly divider: string; readonly run: Run; readonly beside: string; readonly room: Run },
    show,
  ) =>
    `${divider} would stand from ${show.length(run[0])} to ${show.length(run[1])}, but the clear space beside ${beside} runs from ${show.length(room[0])} to ${show.length(room[1])}. Move it, or remove it.`,
  plinthTooThick: ({ thickness, clear }: { readonly thickness: Micrometres; readonly clear: Micrometres }, show) =>
    `The plinth is ${show.length(thickness)} thick and does not fit under a clear depth of ${show.length(clear)}. Give it a thinner board.`,
  railsTooWide: (
    { width, clear, pitch }: { readonly width: Micrometres; readonly clear: Micrometres; readonly pitch: Micrometres },
    show,
  ) =>
    `Two rails ${show.length(width)} wide do not fit in a clear depth of ${show.length(clear)} with the rear one on the pitch of ${show.nominal(pitch)}. Make them narrower, or the carcass deeper.`,
  nothingToCut: (
    { panel, length, width }: { readonly panel: string; readonly length: Micrometres; readonly width: Micrometres },
    show,
  ) =>
    `The bands of ${panel} leave nothing to cut of its ${show.length(length)} × ${show.length(width)}. Make it larger, or its bands thinner.`,
  panelMisspelt: ({ panel, near }: { readonly panel: string; readonly near: string }) =>
    `The carcass has no panel ${quoted(panel)}. Did you mean \`${near}\`?`,
  panelUnknown: ({ panel, panels }: { readonly panel: string; readonly panels: readonly string[] }) =>
    `The carcass has no panel ${quoted(panel)}. Its ${verb(panels.length, 'panel is', 'panels are')} ${listed(panels)}.`,
  rename: ({ panel }: { readonly panel: string }) => `Rename to ${panel}`,
});
