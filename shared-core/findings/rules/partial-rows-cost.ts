import type { Row } from '../../boring/model.js';
import { listed, quoted } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { ownText, remove } from '../changes.js';
import type { Repair } from '../finding.js';
import { distinct, machineFor } from '../lookups.js';
import { rowWork, workWords, type RowWork } from '../row-work.js';
import type { CarcassContext, CarcassRule } from '../rule.js';

interface Costs {
  readonly panels: readonly string[];
  readonly machine: string;
  readonly more: RowWork;
}

export const say = messages('partial-rows-cost', {
  costs: ({ panels, machine, more }: Costs) =>
    `The holes that \`row-holes\` leaves out of the rows of ${listed(panels)} save nothing: on ${quoted(machine)} the rest take ${workWords(more)} more than whole rows, because bits have to come out for them. Bore whole rows, or accept the cost.`,
  whole: () => 'Bore whole rows',
});

export const partialRowsCost: CarcassRule = {
  name: 'partial-rows-cost',
  severity: 'info',
  about: {
    what: 'Rows of which holes are left out take more work than whole ones.',
    why: 'A line drill bores all holes of a row at once. A hole that is not to be there asks for a spindle without its bit, so that bits are taken out for some panels and put back for others. Fewer holes are then dearer; they are told by the shop’s own times, only where they are.',
    remedy: 'Bore whole rows, or leave holes out at an end of the rows alone, where the bits stand past the panel.',
    example: 'kind: base\nwidth: 600\nloose-shelves: 1\nrow-holes: { from: 200, to: 520 }',
  },
  check(context) {
    const drill = machineFor(context, 'rows');
    const partial = context.boring.rows.filter(({ holes }) => holes !== undefined);
    if (drill === null || partial.length === 0) return [];
    const nothingLaid = { panels: new Set<string>(), offset: 0, count: 0, length: 0 };
    const asIs = rowWork(context, nothingLaid);
    const rows = context.boring.rows.map(({ holes: _, ...row }): Row => row);
    const whole = rowWork({ ...context, boring: { ...context.boring, rows } }, nothingLaid);
    if (whole === null || asIs === null || asIs.seconds <= whole.seconds) return [];
    const more = {
      setUps: Math.max(0, asIs.setUps - whole.setUps),
      strokes: Math.max(0, asIs.strokes - whole.strokes),
      seconds: asIs.seconds - whole.seconds,
    };
    const panels = distinct(partial.map(({ panel }) => panel));
    const place = written(context)[0]?.place ?? context.spec.name.place;
    const message = say.costs({ panels, machine: drill.name, more });
    return [{ place, panel: panels[0]!, message, repairs: repairs(context) }];
  },
};

const written = ({ spec: { rowHoles } }: CarcassContext) =>
  [rowHoles.roundShelves, rowHoles.from, rowHoles.to].filter((value) => value !== null);

/** All that leaves holes out is taken out together: one alone would still leave some. */
function repairs(context: CarcassContext): readonly Repair[] {
  const values = written(context);
  return values.every(ownText)
    ? [{ title: say.whole(), changes: values.map(({ path }) => remove(path)), preferred: false }]
    : [];
}
