import { measureBox } from '../../carcass/box.js';
import { jointsChosen } from '../../carcass/choices.js';
import { extent, type Interval } from '../../carcass/interval.js';
import { Problems } from '../../carcass/problems.js';
import type { CarcassSpec } from '../../carcass/spec.js';
import type { Located } from '../../document/place.js';
import { ownText, setLength } from '../../findings/changes.js';
import type { JointPlaces } from '../../job/model.js';
import type { Micrometres } from '../../length/units.js';
import type { Message } from '../../words/message.js';
import type { JobAnalysis } from '../analysis.js';
import { cursorAt } from '../cursor.js';
import { notationIn } from '../notation.js';
import type { Refactor } from '../refactor.js';
import { editsInCarcass } from '../repairs.js';
import { say } from './messages.js';

const SIZES = ['width', 'height', 'depth'] as const;
type Size = (typeof SIZES)[number];

/** What is written goes in steps of so much: a tenth of a millimetre, or the 32nd part of an inch. */
const STEP = { mm: 100, in: 25_400 / 32 } as const;

interface Follows {
  readonly of: Located<Micrometres>;
  readonly to: Micrometres;
}

/**
 * Another size for a carcass, with what is written in figures inside it: dividers and shelves keep the proportions of the openings,
 * shelves that stand on the pitch grid stay on it, heights of fronts that fill the whole keep theirs, and what stands in the rear
 * half keeps its distance from the back. Offered for the sizes that lie near: a pitch more and less of height, and what other
 * carcasses have.
 */
export function stretched(analysis: JobAnalysis, offset: number): readonly Refactor[] {
  const { part, carcass, path } = cursorAt(analysis, offset);
  const size = SIZES.find((one) => path.join() === one);
  if (part !== 'self' || carcass === null || size === undefined) return [];
  const { spec } = analysis.carcasses[carcass]!;
  if (spec === null || !ownText(spec[size])) return [];
  return wishes(analysis, spec, size).flatMap(({ to, title }): readonly Refactor[] => {
    const follow = followers(analysis, spec, size, to - spec[size].value);
    // Without any, the figure alone says it; and what would end in front of its edge, or have no height, cannot follow.
    if (follow.length === 0 || follow.some((one) => one.to <= 0)) return [];
    const how = notationIn(analysis, carcass);
    const changes = [{ of: spec[size], to }, ...follow].map((one) => setLength(how, one.of.path, one.to));
    const edits = editsInCarcass(analysis, carcass, changes);
    return edits.length === 0 ? [] : [{ title, edits }];
  });
}

interface Wish {
  readonly to: Micrometres;
  readonly title: Message;
}

/** A pitch more and less of height; and the next smaller and the next larger size that another carcass has. */
function wishes(analysis: JobAnalysis, spec: CarcassSpec, size: Size): readonly Wish[] {
  const now = spec[size].value;
  const { pitch } = analysis.shop.habits;
  const byPitch = [1, -1].map((pitches): Wish => {
    const to = now + pitches * pitch;
    return { to, title: say.pitches({ size: to, pitches }) };
  });
  const all = analysis.carcasses.flatMap((one) =>
    one.spec === null ? [] : [{ to: one.spec[size].value, name: one.name }],
  );
  const next = (side: 1 | -1) =>
    all.filter(({ to }) => (to - now) * side > 0).toSorted((a, b) => (a.to - b.to) * side)[0];
  const asOthers = [next(1), next(-1)].flatMap((one): readonly Wish[] =>
    one === undefined ? [] : [{ to: one.to, title: say.asOther({ size: one.to, name: one.name }) }],
  );
  return size === 'height' ? [...byPitch, ...asOthers] : asOthers;
}

function followers(analysis: JobAnalysis, spec: CarcassSpec, size: Size, by: Micrometres): readonly Follows[] {
  const box = analysis.shop.boards.size === 0 ? null : measureBox(spec, analysis.shop, new Problems());
  if (box === null) return [];
  const step = STEP[analysis.unit];
  const move = (of: Located<Micrometres>, to: Micrometres): readonly Follows[] =>
    ownText(of) && of.value !== to ? [{ of, to }] : [];
  if (size === 'width') {
    const scaled = scale(box.clearX, by, step);
    return spec.dividers.flatMap(({ at }) => move(at, scaled(at.value)));
  }
  if (size === 'depth') return inRearHalf(spec).flatMap((of) => move(of, of.value + by));
  const { pitch } = analysis.shop.habits;
  const scaled = scale({ from: box.clearZ.from - box.sideZ.from, to: box.clearZ.to - box.sideZ.from }, by, step);
  const onGrid = (at: Micrometres): Micrometres => {
    const holes = (at - spec.rowOffset.value) / pitch;
    if (!Number.isInteger(holes)) return scaled(at);
    return spec.rowOffset.value + Math.round((scaled(at) - spec.rowOffset.value) / pitch) * pitch;
  };
  const shelves = [...spec.fixedShelves, ...spec.looseShelves].flatMap(({ at }) => move(at, onGrid(at.value)));
  const rails = (spec.wardrobeRails?.value ?? []).flatMap(({ value: { at } }) => move(at, onGrid(at.value)));
  return [...shelves, ...rails, ...frontHeights(spec, by, step).flatMap(({ of, to }) => move(of, to))];
}

/** Where a place comes to when an opening grows: it keeps its proportion. */
function scale({ from, to }: Interval, by: Micrometres, step: number): (at: Micrometres) => Micrometres {
  const factor = (extent({ from, to }) + by) / extent({ from, to });
  return (at) => Math.round(Math.round((from + (at - from) * factor) / step) * step);
}

/** What is counted from the front edge and stands nearer to the back. */
function inRearHalf({ depth, rearRow, dowels, panels }: CarcassSpec): readonly Located<Micrometres>[] {
  const chosen = [...panels.values()].flatMap((panel) => [
    ...(panel.dowels?.value ?? []),
    ...placesListed(panel.endDowels),
    ...jointsChosen(panel).flatMap(({ dowels }) => placesListed(dowels)),
  ]);
  const all = [...(rearRow === null ? [] : [rearRow]), ...(dowels?.value ?? []), ...chosen];
  return all.filter(({ value }) => value * 2 > depth.value);
}

const placesListed = (asked: JointPlaces | undefined): readonly Located<Micrometres>[] =>
  asked?.as === 'list' ? asked.is.value : [];

/** Of fronts that all have a height, one over the other before the whole: the last one takes what rounding leaves. */
function frontHeights({ fronts }: CarcassSpec, by: Micrometres, step: number): readonly Follows[] {
  const stack = fronts?.value ?? [];
  const heights = stack.flatMap(({ value }) => (value.height === undefined ? [] : [value.height]));
  if (stack.length === 0 || heights.length < stack.length || stack.some(({ value }) => value.bay !== undefined))
    return [];
  const sum = heights.reduce((all, { value }) => all + value, 0);
  const scaled = heights.map(({ value }) => Math.round(Math.round((value * (sum + by)) / sum / step) * step));
  const rest = sum + by - scaled.slice(0, -1).reduce((all, value) => all + value, 0);
  return heights.map((of, i) => ({ of, to: i === heights.length - 1 ? rest : scaled[i]! }));
}
