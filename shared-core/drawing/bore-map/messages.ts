import { inOneNotation } from '../../length/show.js';
import type { Micrometres } from '../../length/units.js';
import { listed, sentence } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { labels } from '../../words/told.js';

export const FACTS = labels('facts', {
  pieces: 'Pieces',
  finished: 'Finished',
  cut: 'Cut',
  board: 'Board',
  banded: 'Banded',
  noEdge: 'no edge',
  panels: 'Panels',
  bores: 'Bores',
  boards: 'Boards',
});

export const TABLE = labels('table', { number: 'No.', count: 'Qty', face: 'Face', for: 'For', through: 'through' });

/** How far one bore is from another. */
export const MEASURED = labels('distances', {
  u: 'Front to back',
  v: 'End to end',
  t: 'Face to face',
  straight: 'Straight',
});

type Way = 'left' | 'right';

/** How a panel lies: the face that is seen, and the edge and the end that figures count from. */
interface Lies {
  readonly face: string;
  readonly edge: string;
  readonly end: string;
}

/** What bore maps say. */
export const say = messages('bore-map', {
  title: ({ carcass, panel }: { readonly carcass: string; readonly panel: string }) => `${carcass}, ${panel}`,
  fromEdge: ({ edges }: { readonly edges: readonly string[] }, { unit }) => `From ${edges.join(' / ')}, ${unit}`,
  fromEnd: ({ end }: { readonly end: string }, { unit }) => `From ${end}, ${unit}`,
  fromEndOrOutside: ({ end }: { readonly end: string }, { unit }) => `From ${end} or outside, ${unit}`,
  diameter: (_: unknown, { unit }) => `Ø, ${unit}`,
  depth: (_: unknown, { unit }) => `Depth, ${unit}`,
  run: ({ first, last, by }: { readonly first: string; readonly last: string; readonly by: string }) =>
    `${first} to ${last} by ${by}`,
  banded: ({ bands }: { readonly bands: readonly { readonly band: string; readonly edges: readonly string[] }[] }) =>
    bands.map(({ band, edges }) => `${listed(edges)} with ${band}`).join('; '),
  shelfOnHole: ({ shelf, hole, of }: { readonly shelf: string; readonly hole: number; readonly of: number }) =>
    `${shelf} on hole ${hole} of ${of}`,
  edge: ({ edge }: { readonly edge: string }) => sentence(edge),
  bareEdge: ({ edge }: { readonly edge: string }) => `${sentence(edge)}, bare`,
  bandedEdge: ({ edge, band }: { readonly edge: string; readonly band: string }) => `${sentence(edge)}, ${band}`,

  // How the panel lies on the page.
  standing: ({ face, edge, end, edgeOn }: Lies & { readonly edgeOn: Way }) =>
    `${sentence(face)} up; ${edge} on the ${edgeOn}, ${end} down.`,
  lying: ({ face, edge, end, endOn }: Lies & { readonly endOn: Way }) =>
    `${sentence(face)} up; ${edge} toward you, ${end} on the ${endOn}.`,
  allPanels: () =>
    'Every panel on the face that has more bores; uprights as they stand, horizontals with the front edge toward you.',

  // Notes.
  dashed: ({ face }: { readonly face: string }) => `Dashed circles are bored from the ${face}.`,
  folded: ({ face }: { readonly face: string }) => `Ends are folded out; across them, figures count from the ${face}.`,
  figures: ({ edge, end }: { readonly edge: string; readonly end: string }, { unit }) =>
    `Figures in ${unit === 'mm' ? 'millimetres' : 'inches, decimals to a thousandth'}, from the ${edge} and the ${end}.`,
  allFolded: () =>
    'Ends are folded out; across them, figures count from the outside face. Dashed circles are bored from the face that lies down.',
  allFigures: ({ hasDrawers }: { readonly hasDrawers: boolean }) =>
    `Figures along a panel count from the bottom end of an upright one${hasDrawers ? ', the front end of a drawer’s side' : ''} and the left end of any other.`,
  groove: (
    {
      kind,
      from,
      to,
      depth,
      edge,
    }: {
      readonly kind: 'groove' | 'rebate';
      readonly from: Micrometres;
      readonly to: Micrometres;
      readonly depth: Micrometres;
      readonly edge: string;
    },
    show,
  ) => {
    const write = inOneNotation([from, to], show.reader);
    return `${sentence(kind)} on the inside face, ${write(from)} to ${write(to)} ${show.unit} from the ${edge}, ${show.exact(depth)} deep.`;
  },
  corner: (
    {
      edge,
      end,
      bored,
      along,
      across,
      finished,
      band,
    }: {
      readonly edge: string;
      readonly end: string;
      readonly bored: boolean;
      /** Along the edge and along the end, as sawn. */
      readonly along: Micrometres;
      readonly across: Micrometres;
      readonly finished: readonly [along: Micrometres, across: Micrometres];
      readonly band: string | null;
    },
    show,
  ) => {
    const write = inOneNotation([along, across, ...finished], show.reader);
    const sawn = `${bored ? 'Bore it whole, then saw off' : 'Saw off'} the corner of ${edge} and ${end}: ${write(along)} ${show.unit} along the ${edge}, ${write(across)} ${show.unit} along the ${end}`;
    return band === null
      ? `${sawn}.`
      : `${sawn}. With ${band} on it the slanting edge then ends at ${write(finished[0])} and ${write(finished[1])} ${show.unit}.`;
  },
  note: ({ note }: { readonly note: string }) => `Note: ${note}`,

  // The whole, for a reader who cannot see it.
  described: ({
    title,
    caption,
    facts,
    bores,
    findings,
  }: {
    readonly title: string;
    readonly caption: string;
    readonly facts: readonly { readonly word: string; readonly value: string }[];
    readonly bores: number;
    readonly findings: readonly string[];
  }) =>
    [
      `${title}.`,
      caption,
      facts.map(({ word, value }) => `${word}: ${value}.`).join(' '),
      `${bores === 1 ? 'One bore' : `${bores} bores`}.`,
      findings.length === 0 ? 'No findings.' : `Findings: ${findings.join(' ')}`,
    ].join(' '),
});
