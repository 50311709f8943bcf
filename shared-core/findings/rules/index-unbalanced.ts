import { setsGrid } from '../../carcass/roles.js';
import { boresOfGroups, distinct, grouped, machineFor } from '../lookups.js';
import { half } from '../../length/units.js';
import { setLength } from '../changes.js';
import { offsetOf, setOffset, shelvesFollow } from '../row-grid.js';
import type { CarcassRule } from '../rule.js';
import { listed, show, verb } from '../words.js';

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
        message:
          `The rows of ${listed(panels)} have ${row.count} holes, an ${row.count % 2 === 0 ? 'even' : 'odd'} count, and need ` +
          `${Math.ceil(row.count / drill.spindles)} strokes of the ${drill.spindles} spindles of ${drill.name}, an ` +
          `${drill.spindles % 2 === 0 ? 'even' : 'odd'} number: the strokes cannot be centred on the panel. ` +
          'A count of one more or one less can.',
        bores: boresOfGroups(context, new Set(same.map((one) => one.id))),
        repairs: [
          {
            title:
              `Start the rows half a pitch further in, ${show(context, further)} from the ends (${row.count - 1} holes)` +
              (follow.keys.length === 0
                ? ''
                : `; ${listed(follow.keys)} ${verb(follow.keys.length, 'moves', 'move')} with them`),
            changes: [...setOffset(context, panels, further), ...follow.changes],
            preferred: false,
          },
          ...[-1, 1].map((step) => ({
            title: `Make the carcass ${show(context, height.value + step * row.pitch)} high, one pitch ${step < 0 ? 'lower' : 'higher'} (${row.count + step} holes)`,
            changes: [setLength(context, ['height'], height.value + step * row.pitch)],
            preferred: false,
          })),
        ],
      };
    });
  },
};
