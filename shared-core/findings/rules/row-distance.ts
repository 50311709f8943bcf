import type { Micrometres } from '../../length/units.js';
import type { Span } from '../../schema/schema.js';
import { listed, quoted } from '../../words/english.js';
import { messages, type Template } from '../../words/message.js';
import type { Show } from '../../words/show.js';
import { boresOfGroups, machineFor } from '../lookups.js';
import { outOfHeads, reachRepairs, rowLines, type OutOfHeads } from '../row-reach.js';
import type { CarcassRule, Found } from '../rule.js';

interface Distance {
  readonly line: 'front' | 'rear';
  readonly panels: readonly string[];
  readonly at: Micrometres;
  readonly machine: string;
  /** True where it can still be bored, in a set-up of its own. */
  readonly alone: boolean;
  /** From the fence to the first head. */
  readonly setback: Span;
  /** Behind the front row; in front of it where negative. */
  readonly behind: Micrometres;
  readonly heads: number;
  readonly apart: Span | null;
}

export const say = messages('row-distance', {
  setback: ({ machine, alone, setback, ...row }: Distance, show) =>
    `${theRow(row, show)}; the first head of ${quoted(machine)} stands between ${show.length(setback.min)} and ${show.length(setback.max)} from the fence (\`setback\`). ${alone ? OWN_SET_UP : 'Change `row-setback` of the carcass.'}`,
  'one-head': ({ machine, setback, ...row }: Distance, show) =>
    `${theRow(row, show)}; ${quoted(machine)} has one head (\`heads\`), which stands between ${show.length(setback.min)} and ${show.length(setback.max)} from the fence (\`setback\`). Leave the rear row out (\`rows: front\`), or choose a drill with two heads (\`machines: rows\`).`,
  distance: ({ machine, alone, behind, heads, apart, ...row }: Distance, show) =>
    `${theRow(row, show)}, ${show.length(Math.abs(behind))} ${behind < 0 ? 'in front of' : 'behind'} the front row; the ${heads > 2 ? `${heads} heads` : 'heads'} of ${quoted(machine)} stand ${apart === null ? 'one behind the other' : `between ${show.length(apart.min)} and ${show.length(apart.max)} apart`} (\`head-distance\`). ${alone ? OWN_SET_UP : 'Move the row within that range (`rear-row`).'}`,
} satisfies Readonly<Record<OutOfHeads['reason'], Template<Distance>>>);

const OWN_SET_UP = 'The row can be bored only in a set-up of its own.';

const theRow = ({ line, panels, at }: Pick<Distance, 'line' | 'panels' | 'at'>, show: Show): string =>
  `The ${line} row of ${listed(panels)} stands ${show.length(at)} from the front edge`;

export const rowDistance: CarcassRule = {
  name: 'row-distance',
  severity: 'error',
  about: {
    what: 'A row stands where no head of the line drill can be set.',
    why: 'The first head is set back from the fence within a range, and the next head stands within a range of distances behind it. A rear row outside that range cannot be bored in the same stroke; where a head can still be set to it by itself, it costs a second set-up (then this is a warning). The ranges are given in the shop file; the machine’s manual decides.',
    remedy:
      'Change `row-setback` or `rear-row`, on the pitch, so that the heads reach both rows; keep the rear row in the rear half of the depth. On a drill with one head leave the rear row out (`rows: front`).',
    example: 'kind: base\nwidth: 600\nrear-row: 101',
  },
  check(context) {
    const drill = machineFor(context, 'rows');
    if (drill === null) return [];
    const found: Found[] = [];
    for (const line of rowLines(context)) {
      const out = outOfHeads(context, drill, line);
      if (out === null) continue;
      const { reason, alone } = out;
      const figures = {
        line: line.line,
        panels: line.panels,
        at: line.u,
        machine: drill.name,
        alone,
        setback: drill.setback,
        behind: line.u - context.spec.rowSetback.value,
        heads: drill.heads,
        apart: drill.headDistance,
      };
      found.push({
        place: line.place,
        panel: line.panels[0]!,
        severity: alone ? 'warning' : 'error',
        message: say[reason](figures),
        bores: boresOfGroups(context, new Set(line.rows.map((row) => row.id))),
        repairs: reachRepairs(context, drill, line),
      });
    }
    return found;
  },
};
