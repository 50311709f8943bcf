import { setsGrid } from '../../carcass/roles.js';
import { boresOfGroups, distinct, grouped, machineFor, panelOf } from '../lookups.js';
import type { Repair } from '../finding.js';
import type { Row } from '../../boring/model.js';
import { rowWork, workMore, workWords, type RowWork } from '../row-work.js';
import { half } from '../../length/units.js';
import { setLength } from '../changes.js';
import { offsetOf, setOffset, shelvesFollow, withThem } from '../row-grid.js';
import type { CarcassContext, CarcassRule } from '../rule.js';
import type { Micrometres } from '../../length/units.js';
import { counted, listed, quoted } from '../../words/english.js';
import { messages } from '../../words/message.js';

interface Uneven {
  readonly panels: readonly string[];
  readonly holes: number;
  readonly machine: string;
  readonly spindles: number;
  /** The count with which the rows take least, and what they take less then. */
  readonly instead: number;
  readonly less: RowWork;
}
interface NewHeight {
  readonly height: Micrometres;
  readonly holes: number;
}

const parity = (count: number): string => (count % 2 === 0 ? 'even' : 'odd');

export const say = messages('index-unbalanced', {
  uneven: ({ panels, holes, machine, spindles, instead, less }: Uneven) =>
    `The rows of ${listed(panels)} cannot be bored evenly from both ends: they have an ${parity(holes)} count of ${counted(holes, 'hole')}, and ${quoted(machine)} has an ${parity(spindles)} count of ${counted(spindles, 'spindle')}. With ${counted(instead, 'hole')} they take ${workWords(less)} less. Give them one hole more or less, or accept the cost.`,
  startFurtherIn: (
    {
      offset,
      holes,
      shelves,
    }: { readonly offset: Micrometres; readonly holes: number; readonly shelves: readonly string[] },
    show,
  ) =>
    `Start the rows half a pitch further in, ${show.exact(offset)} from the ends (${counted(holes, 'hole')})${withThem(shelves)}`,
  makeLower: ({ height, holes }: NewHeight, show) =>
    `Make the carcass ${show.exact(height)} high, one pitch lower (${counted(holes, 'hole')})`,
  makeHigher: ({ height, holes }: NewHeight, show) =>
    `Make the carcass ${show.exact(height)} high, one pitch higher (${counted(holes, 'hole')})`,
});

export const indexUnbalanced: CarcassRule = {
  name: 'index-unbalanced',
  severity: 'info',
  about: {
    what: 'A row of several strokes cannot be spread evenly on both sides of the middle of the panel, and that costs set-ups or strokes.',
    why: 'A row longer than the head is bored in several strokes, each moved on by whole pitches. With an odd number of spindles the centre spindle stands over a hole on the mid-line, which only an odd count of holes has; with an even number the mid-line falls between two spindles, which only an even count has. Otherwise the strokes to the left and to the right differ. It is told only where one hole more or less takes less by the shop’s own times.',
    remedy:
      'Start the rows half a pitch further in, or make the carcass one pitch lower or higher; or accept the cost.',
    example: 'kind: tall\nwidth: 600\nheight: 880',
  },
  check(context) {
    const drill = machineFor(context, 'rows');
    if (drill === null) return [];
    const sides = new Set(context.carcass.panels.filter(setsGrid).map(({ key }) => key));
    const rows = context.boring.rows.filter(
      (row) =>
        row.holes === undefined &&
        row.count > drill.spindles &&
        row.count % 2 !== drill.spindles % 2 &&
        sides.has(row.panel),
    );
    return grouped(rows, (row) => `${row.count} ${row.offset}`).flatMap((same) => {
      const row = same[0]!;
      const panels = distinct(same.map((one) => one.panel));
      const cheaper = cheaperCounts(context, row, panels);
      const [best] = cheaper;
      if (best === undefined) return [];
      const { height } = context.spec;
      const offset = offsetOf(context, row.panel);
      return [
        {
          place: height.written ? height.place : offset.place,
          panel: row.panel,
          message: say.uneven({
            panels,
            holes: row.count,
            machine: drill.name,
            spindles: drill.spindles,
            instead: best.count,
            less: best.less,
          }),
          bores: boresOfGroups(context, new Set(same.map((one) => one.id))),
          repairs: cheaper.map(({ repair }) => repair),
        },
      ];
    });
  },
};

interface Cheaper {
  readonly count: number;
  readonly less: RowWork;
  readonly repair: Repair;
}

/** Rows of one hole more or less that take fewer set-ups or strokes, that which saves most first. */
function cheaperCounts(context: CarcassContext, row: Row, panels: readonly string[]): readonly Cheaper[] {
  const { length } = panelOf(context, row.panel)!;
  const { height } = context.spec;
  const asIs = { panels: new Set(panels), offset: row.offset, count: row.count, length };
  const work = rowWork(context, asIs);
  if (work === null) return [];
  const further = row.offset + half(row.pitch);
  const follow = shelvesFollow(context, half(row.pitch));
  const byHeight = ([-1, 1] as const).map((step) => {
    const [holes, high] = [row.count + step, height.value + step * row.pitch];
    return {
      laid: { ...asIs, count: holes, length: length + step * row.pitch },
      title: (step < 0 ? say.makeLower : say.makeHigher)({ height: high, holes }),
      changes: [setLength(context, ['height'], high)],
    };
  });
  const ways = [
    {
      laid: { ...asIs, offset: further, count: row.count - 1 },
      title: say.startFurtherIn({ offset: further, holes: row.count - 1, shelves: follow.keys }),
      changes: [...setOffset(context, panels, further), ...follow.changes],
    },
    ...byHeight,
  ];
  return ways
    .flatMap(({ laid, title, changes }): Cheaper[] => {
      const other = rowWork(context, laid);
      if (other === null) return [];
      const less = workMore(work, other);
      // Fewer strokes at the price of another set-up are no gain, nor the other way about, unless time says so.
      if (less === null || other.seconds >= work.seconds) return [];
      return [{ count: laid.count, less, repair: { title, changes, preferred: false } }];
    })
    .sort((a, b) => b.less.seconds - a.less.seconds);
}
