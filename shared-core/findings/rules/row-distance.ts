import { boresOfGroups, machineFor } from '../lookups.js';
import { frontOf, outOfHeads, reachRepairs, rowLines } from '../row-reach.js';
import type { CarcassRule, Found } from '../rule.js';
import { listed, show, showSpan } from '../words.js';

export const rowDistance: CarcassRule = {
  name: 'row-distance',
  severity: 'error',
  about: {
    what: 'A row stands where no head of the line drill can be set.',
    why: 'The first head is set back from the fence within a range, and the next head stands within a range of distances behind it. A rear row outside that range cannot be bored in the same stroke; where a head can still be set to it by itself, it costs a second set-up (then this is a warning). The ranges are the shop file’s; the machine’s manual decides.',
    remedy:
      'Change `row-setback` or `rear-row`, on the pitch, so that the heads reach both rows; keep the rear row in the rear half of the depth. On a drill with one head leave the rear row out (`rows: front`).',
    example: 'kind: base\nwidth: 600\nrear-row: 101',
  },
  check(context) {
    const drill = machineFor(context, 'rows');
    if (drill === null) return [];
    const found: Found[] = [];
    for (const line of rowLines(context)) {
      const front = frontOf(context, line);
      const out = outOfHeads(context, drill, line, front);
      if (out === null) continue;
      const { reason, alone } = out;
      const where = `The ${line.line} row of ${listed(line.panels)} stands ${show(context, line.u)} from the front edge`;
      const behind = line.u - (front ?? 0);
      const own = 'It can only be bored in a set-up of its own.';
      const heads = drill.heads > 2 ? `${drill.heads} heads` : 'heads';
      const why = {
        setback:
          `the first head of ${drill.name} can be set ${showSpan(context, drill.setback)} from the fence (\`setback\` in the shop file). ` +
          (alone ? own : 'Change the `row-setback` of the carcass.'),
        'one-head':
          `${drill.name} has one head (\`heads\` in the shop file), which can be set ${showSpan(context, drill.setback)} from the fence (\`setback\`). ` +
          'Leave the rear row out (`rows: front`), or choose a drill with two heads (`machines: rows`); correct `heads` or `setback` if the drill can do more.',
        distance:
          `${behind < 0 ? `${show(context, -behind)} in front of` : `${show(context, behind)} behind`} the front row; the ${heads} of ${drill.name} stand ` +
          `${drill.headDistance === null ? 'one behind the other' : `${showSpan(context, drill.headDistance)} apart`} (\`head-distance\` in the shop file). ` +
          (alone ? own : 'Bring it within that range (`rear-row`).'),
      }[reason];
      found.push({
        place: line.place,
        panel: line.panels[0]!,
        severity: alone ? 'warning' : 'error',
        message: reason === 'distance' ? `${where}, ${why}` : `${where}; ${why}`,
        bores: boresOfGroups(context, new Set(line.rows.map((row) => row.id))),
        repairs: reachRepairs(context, drill, line),
      });
    }
    return found;
  },
};
