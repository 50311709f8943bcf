import { chosen } from '../../carcass/choices.js';
import type { ShelfSpec } from '../../carcass/spec.js';
import type { Micrometres } from '../../length/units.js';
import { remove, setLength } from '../changes.js';
import type { Repair } from '../finding.js';
import { distinct, panelsOfShelf, rowStart } from '../lookups.js';
import { misfit, offsetOf, rowsBeside } from '../row-grid.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';
import { listed } from '../../words/english.js';
import { messages } from '../../words/message.js';

interface OffGrid {
  readonly shelf: string;
  readonly at: Micrometres;
  readonly panel: string;
  readonly below: Micrometres;
  readonly above: Micrometres;
  readonly first: Micrometres;
  readonly pitch: Micrometres;
}
interface Moved {
  readonly shelf: string;
  readonly at: Micrometres;
  readonly hole: number;
}

export const say = messages('shelf-off-grid', {
  offGrid: ({ shelf, at, panel, below, above, first, pitch }: OffGrid, show) =>
    `${shelf} stands at ${show.exact(at)}, between the holes of ${panel} at ${show.exact(below)} and ${show.exact(above)} (first hole ${show.exact(first)}, pitch ${show.nominal(pitch)}). Move the shelf to one of them.`,
  rowsStart: ({ offset }: { readonly offset: Micrometres }, show) =>
    `The rows start ${show.exact(offset)} from the bottom end.`,
  moveDown: ({ shelf, at, hole }: Moved, show) => `Move ${shelf} down to ${show.exact(at)} (hole ${hole})`,
  moveUp: ({ shelf, at, hole }: Moved, show) => `Move ${shelf} up to ${show.exact(at)} (hole ${hole})`,
  moveEvery: () => 'Move every shelf that is off the pitch grid to its nearest hole',
  align: ({ panels }: { readonly panels: readonly string[] }) =>
    `Start the rows of ${listed(panels)} where those of the carcass start`,
  alignAndMove: (
    { panels, shelf, at }: { readonly panels: readonly string[]; readonly shelf: string; readonly at: Micrometres },
    show,
  ) => `Start the rows of ${listed(panels)} where those of the carcass start, and move ${shelf} to ${show.exact(at)}`,
});

export const shelfOffGrid: CarcassRule = {
  name: 'shelf-off-grid',
  severity: 'warning',
  about: {
    what: 'A loose shelf stands between two places of the pitch grid.',
    why: 'Its pins need a hole at its height. A fixed shelf has bores of its own and may stand anywhere; bores too close to the rows are reported as `bores-collide`.',
    remedy: 'Move the shelf to the place below or above: (height - row offset) is a whole number of pitches.',
    example: 'kind: base\nwidth: 600\nloose-shelves: [330]',
  },
  check(context) {
    const found: Found[] = [];
    for (const shelf of context.spec.looseShelves) {
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
        message: say.offGrid({
          shelf: shelf.key,
          at,
          panel: row.panel,
          below: start + below * row.pitch,
          above: start + (below + 1) * row.pitch,
          first: start,
          pitch: row.pitch,
        }),
        related: offset.written ? [{ place: offset.place, message: say.rowsStart({ offset: offset.value }) }] : [],
        repairs: [...(shelf.at.written ? moves(context, shelf, holes) : []), ...alignRows(context, shelf)],
      });
    }
    return found;
  },
};

interface Hole {
  readonly number: number;
  readonly at: Micrometres;
}

/** Offers to move the shelf to the holes, the nearest first. */
function moves(context: CarcassContext, shelf: ShelfSpec, holes: readonly Hole[]): readonly Repair[] {
  const batch = {
    key: 'shelf-off-grid',
    title: say.moveEvery(),
  };
  return holes.map((hole, index) => ({
    title: (hole.at < shelf.at.value ? say.moveDown : say.moveUp)({ shelf: shelf.key, at: hole.at, hole: hole.number }),
    changes: [setLength(context, shelf.at.path, hole.at)],
    preferred: index === 0,
    ...(index === 0 ? { batch } : {}),
  }));
}

/** Where the rows on the two hands of the shelf differ, offers to start them all alike, and the shelf on them. */
function alignRows(context: CarcassContext, shelf: ShelfSpec): readonly Repair[] {
  const { spec, shop } = context;
  const panels = distinct(rowsBeside(context, shelf).map((row) => row.panel));
  const own = panels.filter((key) => chosen(spec, key, 'rowOffset') !== undefined);
  if (own.length === 0) return [];
  const { pitch } = shop.habits;
  const at = spec.rowOffset.value + Math.round((shelf.at.value - spec.rowOffset.value) / pitch) * pitch;
  const moves = shelf.at.written && at !== shelf.at.value;
  return [
    {
      title: moves ? say.alignAndMove({ panels: own, shelf: shelf.key, at }) : say.align({ panels: own }),
      changes: [
        ...own.map((key) => remove(chosen(spec, key, 'rowOffset')!.path)),
        ...(moves ? [setLength(context, shelf.at.path, at)] : []),
      ],
      preferred: false,
    },
  ];
}
