import type { Micrometres } from '../../length/units.js';
import type { Severity } from '../../findings/finding.js';
import { counted, listed, quoted, sentence } from '../../words/english.js';
import { messages } from '../../words/message.js';
import type { Show } from '../../words/show.js';
import type { BoxMove } from './scene.js';
import type { Told } from '../../words/told.js';

const severities = (found: readonly Severity[]): readonly string[] =>
  (['error', 'warning', 'info'] as const).flatMap((one) => {
    const count = found.filter((severity) => severity === one).length;
    return count === 0 ? [] : [one === 'info' ? `${count} of info` : counted(count, one)];
  });

interface Part {
  readonly role: string;
  readonly key: string;
  readonly size: Told;
  readonly board: string;
  readonly bores: number;
  readonly found: readonly Severity[];
  /** How it opens; null for what does not. */
  readonly move: BoxMove | null;
}

/** What the box view says. */
export const say = messages('box-view', {
  title: ({ carcass, size }: { readonly carcass: string; readonly size: Told }) =>
    `${carcass}, ${size} with all that is on it`,
  part: ({ role, key }: { readonly role: string; readonly key: string }) =>
    key === role ? sentence(role) : `${sentence(role)} ${quoted(key)}`,
  partDescribed: ({ role, key, size, board, bores, found, move }: Part, show) =>
    [
      `${key === role ? sentence(role) : `${sentence(role)} ${quoted(key)}`}: ${size}, ${board}.`,
      bores === 0 ? 'No bores.' : `${sentence(counted(bores, 'bore'))}.`,
      ...(move === null ? [] : [opens(move, show)]),
      ...(found.length === 0 ? [] : [`Findings: ${listed(severities(found))}.`]),
    ].join(' '),
  described: ({
    title,
    parts,
    bores,
    fittings,
    doors,
    drawers,
    found,
  }: {
    readonly title: Told;
    readonly parts: readonly string[];
    readonly bores: number;
    readonly fittings: number;
    readonly doors: number;
    readonly drawers: number;
    readonly found: readonly Severity[];
  }) =>
    [
      `${title}: ${counted(parts.length, 'panel')} (${listed(parts)}), ${counted(bores, 'bore')}, ${counted(fittings, 'fitting')}.`,
      ...(doors + drawers === 0
        ? []
        : [
            `${listed([...(doors === 0 ? [] : [counted(doors, 'door')]), ...(drawers === 0 ? [] : [counted(drawers, 'drawer')])])} can be opened.`,
          ]),
      found.length === 0 ? 'No findings.' : `Findings: ${listed(severities(found))}.`,
    ].join(' '),
  wall: (
    { wall, long, carcasses }: { readonly wall: number; readonly long: Micrometres; readonly carcasses: number },
    show,
  ) => `Wall ${wall}, ${counted(carcasses, 'carcass', 'carcasses')}, ${show.length(long)} long`,
  wallDescribed: (
    {
      title,
      stands,
    }: {
      readonly title: Told;
      readonly stands: readonly {
        readonly name: string;
        readonly from: Micrometres;
        readonly above: Micrometres;
        readonly count: number;
        readonly drawn: number;
      }[];
    },
    show,
  ) =>
    `${title}. From the left: ${stands
      .map(({ name, from, above, count, drawn }) =>
        [
          `${quoted(name)} at ${show.length(from)}`,
          ...(above === 0 ? [] : [`${show.length(above)} above the floor`]),
          ...(count === 1 ? [] : [`${count} side by side`]),
          ...(drawn < count ? [`of which ${drawn} are drawn`] : []),
        ].join(', '),
      )
      .join('; ')}.`,
  shopHasNoBox: () => 'This is a shop file. Open a job file to see its cabinets.',
});

function opens(move: BoxMove, show: Show): string {
  return move.kind === 'turn' ? `It opens by ${move.degrees} degrees.` : `It comes out by ${show.exact(move.travel)}.`;
}
