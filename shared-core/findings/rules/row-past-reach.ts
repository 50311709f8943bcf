import { boresOfGroups, machineFor } from '../lookups.js';
import { reachRepairs, rowLines } from '../row-reach.js';
import type { CarcassRule } from '../rule.js';
import { listed, show } from '../words.js';

export const rowPastReach: CarcassRule = {
  name: 'row-past-reach',
  severity: 'error',
  about: {
    what: 'A row stands deeper from the front edge than the line drill reaches.',
    why: 'The front edge lies against the fence, so the throat of the drill is the deepest place that a head can bore. Turning the panel to bore from its back edge would lose the one reference that keeps the box flush. The throat is the shop file’s; the machine’s manual decides.',
    remedy:
      'Bring the row nearer to the front edge, on the pitch, or send the carcass to a drill with a deeper throat (`machines: rows`).',
    example: 'kind: base\nwidth: 600\ndepth: 800\nrear-row: 741',
  },
  check(context) {
    const drill = machineFor(context, 'rows');
    if (drill === null) return [];
    return rowLines(context)
      .filter((line) => line.u > drill.throat)
      .map((line) => ({
        place: line.place,
        panel: line.panels[0]!,
        message:
          `The ${line.line} row of ${listed(line.panels)} stands ${show(context, line.u)} from the front edge, ` +
          `${show(context, line.u - drill.throat)} past the throat of ${drill.name} (${show(context, drill.throat)}, \`throat\` in the shop file). ` +
          'Bring it nearer to the front, or choose a drill with a deeper throat.',
        bores: boresOfGroups(context, new Set(line.rows.map((row) => row.id))),
        repairs: reachRepairs(context, drill, line),
      }));
  },
};
