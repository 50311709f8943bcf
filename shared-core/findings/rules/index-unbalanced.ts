import { setsGrid } from '../../carcass/roles.js';
import { boresOfGroups, distinct, grouped, machineFor } from '../lookups.js';
import { half } from '../../length/units.js';
import { setLength } from '../changes.js';
import { offsetOf, setOffset, shelvesFollow, withThem } from '../row-grid.js';
import type { CarcassRule } from '../rule.js';
import type { Micrometres } from '../../length/units.js';
import { counted, listed, quoted } from '../../words/english.js';
import { messages } from '../../words/message.js';

interface Uneven {
  readonly panels: readonly string[];
  readonly holes: number;
  readonly strokes: number;
  readonly machine: string;
  readonly spindles: number;
}
interface NewHeight {
  readonly height: Micrometres;
  readonly holes: number;
}

const parity = (count: number): string => (count % 2 === 0 ? 'even' : 'odd');

const say = messages('index-unbalanced', {
  uneven: ({ panels, holes, strokes, machine, spindles }: Uneven) =>
    `The rows of ${listed(panels)} cannot be centred in ${strokes} strokes: they have an ${parity(holes)} count of ${counted(holes, 'hole')}, and ${quoted(machine)} has an ${parity(spindles)} count of ${counted(spindles, 'spindle')}. Give them one hole more or less, or accept uneven strokes.`,
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
    what: 'A row of several strokes cannot be spread evenly on both sides of the middle of the panel.',
    why: 'A row longer than the head is bored in several strokes, each moved on by whole pitches. With an odd number of spindles the centre spindle stands over a hole on the mid-line, which only an odd count of holes has; with an even number the mid-line falls between two spindles, which only an even count has. Otherwise the strokes to the left and to the right differ.',
    remedy:
      'Start the rows half a pitch further in, or make the carcass one pitch lower or higher; or accept that the strokes differ.',
    example: 'kind: tall\nwidth: 600\nheight: 2032',
  },
  check(context) {
    const drill = machineFor(context, 'rows');
    if (drill === null) return [];
    const sides = new Set(context.carcass.panels.filter(setsGrid).map(({ key }) => key));
    const rows = context.boring.rows.filter(
      (row) => row.count > drill.spindles && row.count % 2 !== drill.spindles % 2 && sides.has(row.panel),
    );
    return grouped(rows, (row) => `${row.count} ${row.offset}`).map((same) => {
      const row = same[0]!;
      const panels = distinct(same.map((one) => one.panel));
      const { height } = context.spec;
      const offset = offsetOf(context, row.panel);
      const further = row.offset + half(row.pitch);
      const follow = shelvesFollow(context, half(row.pitch));
      return {
        place: height.written ? height.place : offset.place,
        panel: row.panel,
        message: say.uneven({
          panels,
          holes: row.count,
          strokes: Math.ceil(row.count / drill.spindles),
          machine: drill.name,
          spindles: drill.spindles,
        }),
        bores: boresOfGroups(context, new Set(same.map((one) => one.id))),
        repairs: [
          {
            title: say.startFurtherIn({ offset: further, holes: row.count - 1, shelves: follow.keys }),
            changes: [...setOffset(context, panels, further), ...follow.changes],
            preferred: false,
          },
          ...[-1, 1].map((step) => ({
            title: (step < 0 ? say.makeLower : say.makeHigher)({
              height: height.value + step * row.pitch,
              holes: row.count + step,
            }),
            changes: [setLength(context, ['height'], height.value + step * row.pitch)],
            preferred: false,
          })),
        ],
      };
    });
  },
};
