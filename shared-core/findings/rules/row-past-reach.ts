import type { Micrometres } from '../../length/units.js';
import { listed, quoted } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { boresOfGroups, machineFor } from '../lookups.js';
import { reachRepairs, rowLines } from '../row-reach.js';
import type { CarcassRule } from '../rule.js';

interface TooDeep {
  readonly line: 'front' | 'rear';
  readonly panels: readonly string[];
  readonly at: Micrometres;
  readonly machine: string;
  readonly throat: Micrometres;
}

export const say = messages('row-past-reach', {
  tooDeep: ({ line, panels, at, machine, throat }: TooDeep, show) =>
    `The ${line} row of ${listed(panels)} stands ${show.length(at)} from the front edge; the maximum of ${quoted(machine)} is ${show.length(throat)} (\`throat\`). Move the row toward the front, or choose a drill with a deeper throat.`,
});

export const rowPastReach: CarcassRule = {
  name: 'row-past-reach',
  severity: 'error',
  about: {
    what: 'A row stands farther from the front edge than the line drill reaches.',
    why: 'The front edge lies against the fence, so the throat of the drill is the deepest place that a head can bore. Turning the panel to bore from its back edge would lose the one reference that keeps the box flush. The throat is given in the shop file; the machine’s manual decides.',
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
        message: say.tooDeep({
          line: line.line,
          panels: line.panels,
          at: line.u,
          machine: drill.name,
          throat: drill.throat,
        }),
        bores: boresOfGroups(context, new Set(line.rows.map((row) => row.id))),
        repairs: reachRepairs(context, drill, line),
      }));
  },
};
