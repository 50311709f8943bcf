import { setLength } from '../changes.js';
import type { Repair } from '../finding.js';
import { panelsOfShelf, rowStart } from '../lookups.js';
import { misfit, offsetOf } from '../row-grid.js';
import type { CarcassRule, Found } from '../rule.js';
import { show } from '../words.js';

export const shelfOffGrid: CarcassRule = {
  name: 'shelf-off-grid',
  severity: 'warning',
  about: {
    what: 'A shelf stands between two places of the pitch grid.',
    why: 'Pins of a loose shelf need a hole at its height. A fixed shelf on the grid keeps its bores between the rows, can be set by the same stops as its neighbours, and leaves the rows above it usable.',
    remedy: 'Move the shelf to the place below or above: (height - row offset) is a whole number of pitches.',
    example: 'kind: base\nwidth: 600\nloose-shelves: [330]',
  },
  check(context) {
    const found: Found[] = [];
    for (const shelf of [...context.spec.fixedShelves, ...context.spec.looseShelves]) {
      const row = misfit(context, shelf);
      if (row === undefined) continue;
      const at = shelf.at.value;
      const start = rowStart(context, row);
      const below = Math.floor((at - start) / row.pitch);
      const holes = [below, below + 1]
        .filter((hole) => hole >= 0 && hole < row.count)
        .map((hole) => ({ number: hole + 1, at: start + hole * row.pitch }))
        .sort((a, b) => Math.abs(a.at - at) - Math.abs(b.at - at));
      const offset = offsetOf(context, row.panel);
      found.push({
        place: shelf.at.place,
        panel: panelsOfShelf(context, shelf)[0]!.key,
        message:
          `${shelf.key} stands at ${show(context, at)}, off the pitch grid of ${row.panel}: its holes stand at ` +
          `${show(context, start + below * row.pitch)} and ${show(context, start + (below + 1) * row.pitch)} ` +
          `(first hole ${show(context, start)}, pitch ${show(context, row.pitch)}). Move the shelf to one of them.`,
        related: offset.written
          ? [{ place: offset.place, message: `The rows start ${show(context, offset.value)} from the reference end.` }]
          : [],
        repairs: holes.map(
          (hole, index): Repair => ({
            title: `Move ${shelf.key} ${hole.at < at ? 'down' : 'up'} to ${show(context, hole.at)} (hole ${hole.number})`,
            changes: [setLength(context, shelf.at.path, hole.at)],
            preferred: index === 0,
            ...(index === 0
              ? { batch: { key: 'shelf-off-grid', title: 'Move every shelf that is off the pitch grid to the nearest place on it' } }
              : {}),
          }),
        ),
      });
    }
    return found;
  },
};
