import { rowWork, workMore, workWords, type RowWork } from '../row-work.js';
import { boresOfGroups, distinct, grouped, isBalanced, machineFor, panelOf } from '../lookups.js';
import { half, type Micrometres } from '../../length/units.js';
import type { Row } from '../../boring/model.js';
import { setLength } from '../changes.js';
import type { Repair } from '../finding.js';
import { offsetOf, setOffset, shelvesFollow, withThem } from '../row-grid.js';
import type { CarcassContext, CarcassRule } from '../rule.js';
import { listed, quoted } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { setsGrid } from '../../carcass/roles.js';

interface Unbalanced {
  readonly panels: readonly string[];
  readonly offset: Micrometres;
  /** From the last hole to the top end. */
  readonly rest: Micrometres;
  readonly length: Micrometres;
  readonly pitch: Micrometres;
  readonly machine: string;
  /** What they take more than rows that lie evenly. */
  readonly more: RowWork;
}
interface NewOffset {
  readonly offset: Micrometres;
  readonly instead: Micrometres;
  readonly shelves: readonly string[];
}
interface NewHeight {
  readonly height: Micrometres;
  readonly by: Micrometres;
}

export const say = messages('row-unbalanced', {
  unbalanced: ({ panels, offset, rest, length, pitch, machine, more }: Unbalanced, show) =>
    `The rows of ${listed(panels)} start ${show.exact(offset)} from the bottom end and stop ${show.exact(rest)} from the top end (length ${show.exact(length)}, pitch ${show.nominal(pitch)}), so one stop setting does not serve both ends: on ${quoted(machine)} that takes ${workWords(more)} more than even rows. Change \`row-offset\` or \`height\`.`,
  startAt: ({ offset, instead, shelves }: NewOffset, show) =>
    `Start the rows ${show.exact(offset)} from the ends instead of ${show.exact(instead)}${withThem(shelves)}`,
  makeLower: ({ height, by }: NewHeight, show) =>
    `Make the carcass ${show.exact(height)} high, ${show.exact(by)} lower`,
  makeHigher: ({ height, by }: NewHeight, show) =>
    `Make the carcass ${show.exact(height)} high, ${show.exact(by)} higher`,
});

export const rowUnbalanced: CarcassRule = {
  name: 'row-unbalanced',
  severity: 'warning',
  about: {
    what: 'The rows of a side do not lie evenly between its ends, which costs set-ups or strokes.',
    why: 'A balanced row has its first hole as far from one end as its last from the other: (length - 2 x offset) is a whole number of pitches, as nearly as the shop’s stops are set (`tolerances: stop`). Then one stop setting serves both ends, and left and right sides alike. With top and bottom of thickness T and the offset T/2 the side is n pitches and one T long: T = 16 mm, n = 22 gives 720 mm; T = 19 mm gives 723 mm (common practice, no source).',
    remedy: 'Start the rows at another offset, or make the carcass a little lower or higher.',
    example: 'kind: base\nwidth: 600\nheight: 711',
  },
  check(context) {
    const rows = context.boring.rows.filter((row) => {
      const panel = panelOf(context, row.panel);
      return panel !== undefined && setsGrid(panel) && row.holes === undefined && !isBalanced(panel, row, context.shop);
    });
    return grouped(rows, (row) => `${row.offset} ${panelOf(context, row.panel)!.length}`).flatMap((same) => {
      const row = same[0]!;
      const panels = distinct(same.map((one) => one.panel));
      const length = panelOf(context, row.panel)!.length;
      const more = moreThanEven(context, row, panels, length);
      if (more === null) return [];
      const offset = offsetOf(context, row.panel);
      const height = context.spec.height;
      const rest = length - row.offset - (row.count - 1) * row.pitch;
      return [
        {
          place: !offset.written && height.written ? height.place : offset.place,
          panel: row.panel,
          message: say.unbalanced({
            panels,
            offset: row.offset,
            rest,
            length,
            pitch: row.pitch,
            machine: machineFor(context, 'rows')!.name,
            more,
          }),
          bores: boresOfGroups(context, new Set(same.map((one) => one.id))),
          repairs: repairs(context, row, panels, length),
        },
      ];
    });
  },
};

/** What the rows take more on the drill than as many holes that lie evenly; null where it is nothing, or nobody can tell. */
function moreThanEven(
  context: CarcassContext,
  row: Row,
  panels: readonly string[],
  length: Micrometres,
): RowWork | null {
  const laid = { panels: new Set(panels), offset: row.offset, count: row.count, length };
  const asIs = rowWork(context, laid);
  const even = rowWork(context, { ...laid, offset: half(length - (row.count - 1) * row.pitch) });
  return asIs && even && workMore(asIs, even);
}

function repairs(context: CarcassContext, row: Row, panels: readonly string[], length: Micrometres): readonly Repair[] {
  const pitches = Math.floor((length - 2 * row.offset) / row.pitch);
  const offsets = [half(length - pitches * row.pitch), half(length - (pitches + 1) * row.pitch)]
    .filter((offset) => offset > 0)
    .sort((a, b) => Math.abs(a - row.offset) - Math.abs(b - row.offset));
  const heights = [pitches, pitches + 1]
    .map((count) => context.spec.height.value + (count * row.pitch + 2 * row.offset - length))
    .sort((a, b) => Math.abs(a - context.spec.height.value) - Math.abs(b - context.spec.height.value));
  const offsetFirst = offsetOf(context, row.panel).written || !context.spec.height.written;

  const byOffset = offsets.map((offset, index): Repair => {
    const follow = shelvesFollow(context, offset - row.offset);
    return {
      title: say.startAt({ offset, instead: row.offset, shelves: follow.keys }),
      changes: [...setOffset(context, panels, offset), ...follow.changes],
      preferred: offsetFirst && index === 0,
    };
  });
  const byHeight = heights.map((height, index): Repair => {
    const by = height - context.spec.height.value;
    return {
      title: (by < 0 ? say.makeLower : say.makeHigher)({ height, by: Math.abs(by) }),
      changes: [setLength(context, ['height'], height)],
      preferred: !offsetFirst && index === 0,
    };
  });
  return offsetFirst ? [...byOffset, ...byHeight] : [...byHeight, ...byOffset];
}
