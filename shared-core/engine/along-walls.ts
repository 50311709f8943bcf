import { isDiagonal } from '../carcass/diagonal.js';
import { blindHands } from '../carcass/fronts/blind.js';
import { handsSaid } from '../carcass/hands.js';
import { overlaps, type Interval } from '../carcass/interval.js';
import type { Carcass } from '../carcass/model.js';
import type { CarcassSpec } from '../carcass/spec.js';
import type { Derived } from '../derived/derived.js';
import type { Place } from '../document/place.js';
import type { Severity } from '../findings/finding.js';
import type { Micrometres } from '../length/units.js';
import type { Habits, Hand } from '../shop/model.js';
import { linesOf, underWorktop, type Line, type Stand } from '../wall/line-up.js';
import { quoted } from '../words/english.js';
import { messages, type Message } from '../words/message.js';
import type { CarcassAnalysis, FileFinding } from './carcass-analysis.js';

interface Overlap {
  readonly name: string;
  readonly other: string;
  readonly wall: number;
  readonly own: Interval;
  readonly others: Interval;
  readonly by: Micrometres;
}

export const sayOverlap = messages('carcasses-overlap', {
  overlap: ({ name, other, wall, own, others, by }: Overlap, show) =>
    `${quoted(name)} stands from ${show.length(own.from)} to ${show.length(own.to)} along wall ${wall}, and ${quoted(other)} from ${show.length(others.from)} to ${show.length(others.to)} at the same height: they stand in each other by ${show.length(by)}. Move one of them (\`place\`).`,
});

export const sayPast = messages('past-wall-end', {
  corner: ({
    name,
    other,
    wall,
    hand,
  }: {
    readonly name: string;
    readonly other: string;
    readonly wall: number;
    readonly hand: Hand;
  }) =>
    `${quoted(name)} stands to the ${hand} of ${quoted(other)} along wall ${wall}, and the ${hand} end of that stands in the corner of the room. Say on which other wall it stands (\`place: wall\`), or move it.`,
  end: ({ name, wall, by }: { readonly name: string; readonly wall: number; readonly by: Micrometres }, show) =>
    `${quoted(name)} stands ${show.length(by)} past the left end of wall ${wall} with what stands beside its left side. Move it that far to the right (\`place\`).`,
});

export const sayUneven = messages('worktop-uneven', {
  uneven: (
    {
      name,
      other,
      top,
      beside,
    }: { readonly name: string; readonly other: string; readonly top: Micrometres; readonly beside: Micrometres },
    show,
  ) =>
    `The top of ${quoted(name)} stands ${show.length(top)} above the floor, and that of ${quoted(other)} beside it ${show.length(beside)}: a worktop over both would not lie level. Make them equally high (\`height\`, \`plinth\`).`,
});

/** A carcass that was made, with its place in the file. */
interface Placed {
  readonly spec: CarcassSpec;
  readonly carcass: Carcass;
  readonly index: number;
  readonly name: string;
  /** Whether it stands where it is lined up, whatever becomes of the carcasses that could not be made. */
  readonly isCertain: boolean;
}

type Standing = Stand<Placed>;

/** What cannot stand along its wall as the job has it. */
export function findAlongWalls(
  carcasses: readonly CarcassAnalysis[],
  habits: Habits,
  derived: Derived,
): readonly FileFinding[] {
  let isWhole = true;
  const made: Placed[] = [];
  carcasses.forEach(({ spec, carcass, name }, index) => {
    isWhole &&= carcass !== null;
    if (spec !== null && carcass !== null)
      made.push({ spec, carcass, index, name, isCertain: isWhole || spec.place.at !== null });
  });
  // Where nothing is placed, the order of the file need not be that of a wall.
  const isPlaced = made.some(({ spec }) => hasPlace(spec));
  return linesOf(made, habits, derived)
    .map((wall) => ({ ...wall, stands: wall.stands.filter(({ one }) => one.isCertain) }))
    .flatMap((wall) => [
      ...overlapsOn(wall),
      ...(isPlaced ? [...pastCorners(wall), ...pastLeftEnd(wall)] : []),
      ...(habits.worktopThickness === 0 ? [] : unevenOn(wall, habits.worktopThickness)),
    ]);
}

const hasPlace = ({ place }: CarcassSpec): boolean => place.at !== null || place.wall.written;

/** Each that stands in one before it in the file, told of the first of those. All stand with their backs at the wall. */
function overlapsOn({ number, stands }: Line<Placed>): readonly FileFinding[] {
  const met = new Map<Standing, Standing>();
  let open: Standing[] = [];
  for (const stand of stands.toSorted((a, b) => a.run.from - b.run.from)) {
    open = open.filter(({ run }) => run.to > stand.run.from);
    for (const other of open) {
      if (!standsInside(stand, other)) continue;
      const [first, then] = stand.one.index < other.one.index ? [stand, other] : [other, stand];
      const known = met.get(then);
      if (known === undefined || first.one.index < known.one.index) met.set(then, first);
    }
    open.push(stand);
  }
  return [...met].map(([then, first]) => {
    const by = Math.min(then.run.to, first.run.to) - Math.max(then.run.from, first.run.from);
    const figures = { wall: number, own: then.run, others: first.run, by };
    return found(
      'carcasses-overlap',
      'warning',
      then,
      sayOverlap.overlap({ name: then.one.name, other: first.one.name, ...figures }),
    );
  });
}

const standsInside = (a: Standing, b: Standing): boolean => overlaps(a.run, b.run) && overlaps(a.high, b.high);

/** The first in the file that stands past each end of a carcass which is in a corner of the room. */
function pastCorners({ number, stands }: Line<Placed>): readonly FileFinding[] {
  return stands.flatMap((corner): FileFinding[] => {
    const { spec, carcass, name: other } = corner.one;
    // Several equal ones are not all in this corner.
    if (carcass.count > 1) return [];
    const isAcross = isDiagonal(spec);
    const hands = isAcross ? handsSaid(spec.diagonal) : blindHands(spec);
    return hands.flatMap((hand): FileFinding[] => {
      const past = stands.find((one) => {
        if (one === corner || standsInside(one, corner)) return false;
        // Over a blind end there may be room up to the corner, which stands some way off.
        if (!isAcross && !overlaps(one.high, corner.high)) return false;
        return hand === 'right' ? one.run.to > corner.run.to : one.run.from < corner.run.from;
      });
      if (past === undefined) return [];
      const message = sayPast.corner({ name: past.one.name, other, wall: number, hand });
      return [found('past-wall-end', 'warning', past, message)];
    });
  });
}

/** Those whose end panel or filler stands past the left end of the wall. */
function pastLeftEnd({ number, stands }: Line<Placed>): readonly FileFinding[] {
  return stands
    .filter(({ run }) => run.from < 0)
    .map((one) =>
      found('past-wall-end', 'warning', one, sayPast.end({ name: one.one.name, wall: number, by: 0 - one.run.from })),
    );
}

/** So much no worktop shows (common practice, no source). */
const LEVEL: Micrometres = 100;

/**
 * Neighbours under a worktop of which one is higher, told of the later one in the file. A step that is higher than the worktop is
 * thick may be meant: it is told of what has a place of its own alone.
 */
function unevenOn({ stands }: Line<Placed>, thickness: Micrometres): readonly FileFinding[] {
  const under = underWorktop(stands);
  return under.flatMap((right, i): FileFinding[] => {
    const left = under[i - 1];
    if (left?.run.to !== right.run.from) return [];
    const step = Math.abs(left.top - right.top);
    const mayBeMeant = step > thickness;
    if (step <= LEVEL || (mayBeMeant && ![left, right].some(({ one }) => hasPlace(one.spec)))) return [];
    const [other, then] = left.one.index < right.one.index ? [left, right] : [right, left];
    const names = { name: then.one.name, other: other.one.name };
    const message = sayUneven.uneven({ ...names, top: then.top, beside: other.top });
    const at = [then.one.spec.height, then.one.spec.plinth].find(({ written, place }) => written && isOwn(place));
    return [found('worktop-uneven', mayBeMeant ? 'info' : 'warning', then, message, at?.place)];
  });
}

const isOwn = ({ part }: Place): boolean => part === 'self';

function found(
  rule: string,
  severity: Severity,
  { one: { spec, index } }: Standing,
  message: Message,
  at: Place | undefined = (spec.place.at ?? (spec.place.wall.written ? spec.place.wall : spec.name)).place,
): FileFinding {
  return { carcass: index, finding: { rule, severity, place: at, message, related: [], repairs: [] } };
}
