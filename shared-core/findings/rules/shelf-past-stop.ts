import type { Bore } from '../../boring/model.js';
import { handedness } from '../../carcass/pose.js';
import { means } from '../../job/panel-key.js';
import type { Micrometres } from '../../length/units.js';
import { handOfEnd } from '../../machining/plan/orientation.js';
import type { Hand, Stop, VerticalHead } from '../../shop/model.js';
import { setLength } from '../changes.js';
import type { Repair } from '../finding.js';
import { distinct, grouped, isRow, machineFor, onFace, panelOf, rowStart } from '../lookups.js';
import { rowsBeside } from '../row-grid.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';
import { listed, show, verb } from '../words.js';

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
      '    { spindles: 21, pitch: 32, fence: far, from: above, fence-offset: 20 to 80, depth: 2 to 60, stops: {',
      '      A: { side: left, range: 0 to 900 }, B: { side: right, range: 0 to 900 } } }',
    ].join('\n'),
  },
  check(context) {
    const head = machineFor(context, 'faces');
    if (head === null) return [];
    const bores = context.boring.bores.filter((bore) => onFace(bore) && !isRow(bore));
    const past = grouped(bores, (bore) => `${bore.panel} ${bore.face} ${bore.v}`).flatMap((line) => {
      const miss = missOf(context, head, line[0]!);
      return miss === null ? [] : [{ line, ...miss }];
    });
    return grouped(past, ({ line, ways }) => `${line[0]!.place.part} ${line[0]!.place.start} ${ways[0].at}`).map(
      (same): Found => {
        const { line, ways } = same[0]!;
        const [near, far] = ways;
        const bore = line[0]!;
        const joint = context.carcass.joints.find((one) => one.id === bore.group);
        const what =
          joint === undefined || joint.endPanel === bore.panel ? 'a line of bores' : `the line of ${joint.endPanel}`;
        const panels = distinct(same.map((one) => one.line[0]!.panel));
        return {
          place: bore.place,
          panel: bore.panel,
          message:
            `On ${listed(panels)} ${what} stands ${show(context, near.at)} from the ${near.end} and ${show(context, far.at)} from the other; ` +
            `no stop of ${head.name} can be set there: ${hasWords(context, head, near)}; ${hasWords(context, head, far)}. ` +
            remedyWords(context, head, near),
          bores: same.flatMap((one) => one.line.map((each) => each.id)),
          repairs: joint === undefined ? [] : moveShelf(context, head, joint.endPanel),
        };
      },
    );
  },
};

/** A line of bores from one end of its panel, which lies against a stop on that hand. */
interface EndWay {
  readonly at: Micrometres;
  readonly hand: Hand;
  readonly end: string;
}

const stopsOn = (head: VerticalHead, hand: Hand): readonly Stop[] => head.stops.filter(({ side }) => side === hand);

/** 'its stops on the left go to 900 mm, 1500 mm with the extension' */
function hasWords(context: CarcassContext, head: VerticalHead, { hand }: EndWay): string {
  const stops = stopsOn(head, hand);
  if (stops.length === 0) return `it has none on the ${hand}`;
  const reach = Math.max(...stops.map(({ range }) => range.max));
  const longer = head.extension === 0 ? '' : `, ${show(context, reach + head.extension)} with the extension`;
  return `${stops.length === 1 ? 'its stop' : 'its stops'} on the ${hand} ${verb(stops.length, 'goes', 'go')} to ${show(context, reach)}${longer}`;
}

function remedyWords(context: CarcassContext, head: VerticalHead, { at, hand }: EndWay): string {
  const reaches = stopsOn(head, hand).map(({ range }) => range.max);
  const past = reaches.length > 0 ? at - Math.max(...reaches) : 0;
  return past > head.extension
    ? `An extension of ${show(context, past)} or a stop that goes to ${show(context, at)} would allow it.`
    : `A stop on the ${hand} with a range that holds ${show(context, at)} would allow it.`;
}

/** The ways from the nearer and the farther end, where neither can lie against a stop; null where one can. */
function missOf(
  context: CarcassContext,
  head: VerticalHead,
  bore: Bore,
): { readonly ways: readonly [EndWay, EndWay] } | null {
  const panel = panelOf(context, bore.panel);
  if (panel === undefined) return null;
  const worked = bore.face === 'inside' ? 'inside' : 'outside';
  const other = worked === 'inside' ? 'outside' : 'inside';
  const down = head.from === 'above' ? other : worked;
  const ways = (['reference-end', 'far-end'] as const).map((end) => ({
    at: end === 'reference-end' ? bore.v : panel.length - bore.v,
    hand: handOfEnd(end, down, handedness(panel.pose), head.fence),
    end: end === 'reference-end' ? 'reference end' : 'far end',
  }));
  const reached = ways.some(({ at, hand }) =>
    head.stops.some((stop) => stop.side === hand && at >= stop.range.min && at <= stop.range.max + head.extension),
  );
  if (reached) return null;
  const [nearer, farther] = ways.toSorted((a, b) => a.at - b.at);
  return { ways: [nearer!, farther!] };
}

/** Offers to move a fixed shelf to the nearest places of its grid, below and above, whose lines a stop reaches. */
function moveShelf(context: CarcassContext, head: VerticalHead, panel: string): readonly Repair[] {
  const shelf = context.spec.fixedShelves.find(({ key }) => means(key, panel));
  const row = shelf === undefined ? undefined : rowsBeside(context, shelf)[0];
  if (shelf === undefined || row === undefined) return [];
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
      title: `Move ${shelf.key} ${place < at.value ? 'down' : 'up'} to ${show(context, place)} (hole ${(place - start) / row.pitch + 1}), where a stop reaches`,
      changes: [setLength(context, at.path, place)],
      preferred: index === 0,
    }));
}
