import type { BorePurpose } from '../../fittings/names.js';
import type { Bore } from '../../boring/model.js';
import { handedness } from '../../carcass/pose.js';
import { means } from '../../job/panel-key.js';
import type { Micrometres } from '../../length/units.js';
import { taskOf } from '../../machining/plan/operations.js';
import { handOfEnd } from '../../machining/plan/orientation.js';
import type { Hand, VerticalHead } from '../../shop/model.js';
import { setLength } from '../changes.js';
import type { Repair } from '../finding.js';
import { distinct, grouped, machineFor, onFace, panelOf, rowStart } from '../lookups.js';
import { rowsBeside } from '../row-grid.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';
import { counted, listed, quoted, verb } from '../../words/english.js';
import { messages } from '../../words/message.js';
import type { EndName } from '../../words/names.js';
import type { Show } from '../../words/show.js';
import { endNamed } from '../../carcass/roles.js';

/** A line from one end of its panel, and how far the stops reach that this end would lie against. */
interface WayTold {
  readonly at: Micrometres;
  readonly end: EndName;
  readonly hand: Hand;
  readonly stops: number;
  /** null for no stop. */
  readonly reach: Micrometres | null;
}
interface PastStop {
  /** The panel that the line is for; null for one of the panel's own. */
  readonly line: string | null;
  readonly panels: readonly string[];
  readonly ways: readonly [near: WayTold, far: WayTold];
  readonly machine: string;
  readonly extension: Micrometres;
  /** Where a stop may reach what the line is for; null where it stands at its place, as a bottom does. */
  readonly move: 'nearer' | 'farther' | null;
}
interface Moved {
  readonly shelf: string;
  readonly at: Micrometres;
  readonly hole: number;
}

export const say = messages('shelf-past-stop', {
  pastStop: ({ line, panels, ways: [near, far], machine, extension, move }: PastStop, show) =>
    [
      `${line === null ? 'A line of bores' : `The line of ${line}`} in ${listed(panels)} stands ${show.length(near.at)} from the ${near.end} and ${show.length(far.at)} from the ${far.end}.`,
      `On ${quoted(machine)}, ${reaches(near, extension, show)} and ${reaches(far, extension, show)}.`,
      remedy(near, extension, move, show),
    ].join(' '),
  moveDown: ({ shelf, at, hole }: Moved, show) =>
    `Move ${shelf} down to ${show.exact(at)} (hole ${hole}), where a stop reaches`,
  moveUp: ({ shelf, at, hole }: Moved, show) =>
    `Move ${shelf} up to ${show.exact(at)} (hole ${hole}), where a stop reaches`,
});

/** 'the 2 stops on the left reach 700 mm (900 mm with the extension)' */
function reaches({ hand, stops, reach }: WayTold, extension: Micrometres, show: Show): string {
  if (reach === null) return `there is no stop on the ${hand}`;
  const longer = extension === 0 ? '' : ` (${show.length(reach + extension)} with the extension)`;
  return `${stops === 1 ? 'the stop' : `the ${counted(stops, 'stop')}`} on the ${hand} ${verb(stops, 'reaches', 'reach')} ${show.length(reach)}${longer}`;
}

const GIVE: Readonly<Record<NonNullable<PastStop['move']> | 'none', string>> = {
  nearer: 'Move it nearer to an end, or give',
  farther: 'Move it farther from the end, or give',
  none: 'Give',
};

function remedy({ at, hand, reach }: WayTold, extension: Micrometres, move: PastStop['move'], show: Show): string {
  const past = reach === null ? 0 : at - reach;
  return past > extension
    ? `${GIVE[move ?? 'none']} the machine an extension of ${show.length(past)} or a stop that reaches ${show.length(at)}.`
    : `${GIVE[move ?? 'none']} the machine a stop on the ${hand} whose range holds ${show.length(at)}.`;
}

export const shelfPastStop: CarcassRule = {
  name: 'shelf-past-stop',
  severity: 'error',
  about: {
    what: 'A line of construction bores stands farther from both ends of the panel than any stop can be set.',
    why: 'The spindle line lies across the table, and the panel’s end lies against a stop to the left or the right of it: the stop’s range, with the extension of the fence, is how far from an end a line can be bored. A line measured by eye along the fence is not repeatable.',
    remedy:
      'Move the shelf or divider nearer to an end, or allow for it in the shop file when the fence has been extended (`extension`, or the range of a stop).',
    example: 'kind: tall\nwidth: 600\nfixed-shelves: [1032]',
    shop: [
      'vertical-heads:',
      '  upright:',
      '    { spindles: 24, pitch: 32, fence: far, from: above, fence-offset: 20 to 80, depth: 2 to 60, stops: {',
      '      A: { side: left, range: 0 to 900 }, B: { side: right, range: 0 to 900 } } }',
    ].join('\n'),
  },
  check(context) {
    const head = machineFor(context, 'faces');
    if (head === null) return [];
    // Rows and cups are bored on machines of their own, with stops of their own.
    const bores = context.boring.bores.filter((bore) => taskOf(bore) === 'faces');
    const past = grouped(bores, (bore) => `${bore.panel} ${bore.face} ${bore.v}`).flatMap((line) => {
      const ways = missOf(context, head, line[0]!);
      return ways === null
        ? []
        : [{ line, of: lineOf(context, line[0]!), ways, move: moveOf(context, head, line[0]!, ways) }];
    });
    return grouped(past, ({ line, of, ways: [near, far], move }) =>
      [line[0]!.place.part, line[0]!.place.start, of, near.at, near.end, near.reach, far.reach, move].join(' '),
    ).map((same): Found => {
      const { line, of, ways, move } = same[0]!;
      const bore = line[0]!;
      const joint = context.carcass.joints.find((one) => one.id === bore.group);
      return {
        place: bore.place,
        panel: bore.panel,
        message: say.pastStop({
          line: of,
          panels: distinct(same.map((one) => one.line[0]!.panel)),
          ways,
          machine: head.name,
          extension: head.extension,
          move,
        }),
        bores: same.flatMap((one) => one.line.map((each) => each.id)),
        repairs: joint === undefined ? [] : moveShelf(context, head, joint.endPanel),
      };
    });
  },
};

/** The panel that a line in a face is for; null for a line of the panel's own. */
function lineOf({ carcass }: CarcassContext, { group, panel }: Bore): string | null {
  const joint = carcass.joints.find((one) => one.id === group);
  return joint === undefined || joint.endPanel === panel ? null : joint.endPanel;
}

/** What has bores of its own in a panel, and keys that say where. */
const OWN_PLACES: ReadonlySet<BorePurpose> = new Set(['rail-socket', 'pull']);

/** Where what a line is for may be moved to; null where no key of the job says its place. */
function moveOf(
  { spec, carcass }: CarcassContext,
  { stops }: VerticalHead,
  { group, purpose }: Bore,
  [near]: PastStop['ways'],
): PastStop['move'] {
  const joint = carcass.joints.find((one) => one.id === group);
  // A shelf under an appliance follows from the fronts.
  const placed = [...spec.fixedShelves.filter(({ at }) => at.path[0] !== 'fronts'), ...spec.dividers];
  const isPlaced = joint === undefined ? OWN_PLACES.has(purpose) : placed.some(({ key }) => means(key, joint.endPanel));
  if (!isPlaced) return null;
  const least = Math.min(...stops.flatMap(({ side, range }) => (side === near.hand ? [range.min] : [])));
  return near.reach !== null && near.at < least ? 'farther' : 'nearer';
}

/** The ways from the nearer and the farther end, where neither can lie against a stop; null where one can. */
function missOf(context: CarcassContext, head: VerticalHead, bore: Bore): PastStop['ways'] | null {
  const panel = panelOf(context, bore.panel)!;
  const worked = bore.face === 'inside' ? 'inside' : 'outside';
  const other = worked === 'inside' ? 'outside' : 'inside';
  const down = head.from === 'above' ? other : worked;
  const ways = (['reference-end', 'far-end'] as const).map((end): WayTold & { readonly reached: boolean } => {
    const at = end === 'reference-end' ? bore.v : panel.length - bore.v;
    const hand = handOfEnd(end, down, handedness(panel.pose), head.fence);
    const stops = head.stops.filter(({ side }) => side === hand);
    return {
      at,
      hand,
      end: endNamed(panel, end),
      stops: stops.length,
      reach: stops.length === 0 ? null : Math.max(...stops.map(({ range }) => range.max)),
      reached: stops.some(({ range }) => at >= range.min && at <= range.max + head.extension),
    };
  });
  if (ways.some(({ reached }) => reached)) return null;
  const [nearer, farther] = ways.toSorted((a, b) => a.at - b.at);
  return [nearer!, farther!];
}

/** Offers to move a fixed shelf to the nearest places of its grid, below and above, whose lines a stop reaches. */
function moveShelf(context: CarcassContext, head: VerticalHead, panel: string): readonly Repair[] {
  const shelf = context.spec.fixedShelves.find(({ key }) => means(key, panel));
  if (shelf === undefined) return [];
  const [row] = rowsBeside(context, shelf);
  if (row === undefined) return [];
  const { at } = shelf;
  const lines = context.boring.bores.filter((bore) => onFace(bore) && bore.group.startsWith(`${panel}/`));
  const start = rowStart(context, row);
  const places = Array.from({ length: row.count }, (_, hole) => start + hole * row.pitch).filter((place) =>
    lines.every((bore) => missOf(context, head, { ...bore, v: bore.v + place - at.value }) === null),
  );
  const below = places.filter((place) => place < at.value).at(-1);
  const above = places.find((place) => place > at.value);
  return [below, above]
    .filter((place) => place !== undefined)
    .toSorted((a, b) => Math.abs(a - at.value) - Math.abs(b - at.value))
    .map((place, index) => ({
      title: (place < at.value ? say.moveDown : say.moveUp)({
        shelf: shelf.key,
        at: place,
        hole: (place - start) / row.pitch + 1,
      }),
      changes: [setLength(context, at.path, place)],
      preferred: index === 0,
    }));
}
