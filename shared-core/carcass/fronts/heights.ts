import type { Micrometres } from '../../length/units.js';
import type { Shop } from '../../shop/model.js';
import type { Interval } from '../interval.js';
import type { CarcassSpec } from '../spec.js';
import type { AskedFront } from './asked.js';

/** Heights of the fronts of one bay from the top down, without the gaps between them. */
export type FrontHeights =
  | {
      readonly as: 'heights';
      readonly each: readonly Micrometres[];
      /** False where they were to be in whole pitches, and there are too few for so many or for such steps; they are alike then. */
      readonly isOnPitch: boolean;
      /** Whole pitches that there are to share, with a gap for each front. */
      readonly pitches: number;
    }
  | { readonly as: 'too-high'; readonly given: Micrometres; readonly left: Micrometres };

/** No saw is set finer than to a tenth of a millimetre. */
const TENTH: Micrometres = 100;

/** The same for all where it comes out even, as inches may; else whole tenths of a millimetre. */
function equalShare(room: Micrometres, shares: number): Micrometres {
  if (room % shares === 0) return room / shares;
  return Math.floor(room / shares / TENTH) * TENTH;
}

/** Whether a front has no height of its own, and takes a share of what the others leave. */
export const sharesHeight = ({ height, pitches }: Pick<AskedFront, 'height' | 'pitches'>): boolean =>
  height === null && pitches === null;

/** The height that a front has by itself; null where it shares what is left. */
export function ownHeight(
  { doors }: Pick<CarcassSpec, 'doors'>,
  { habits }: Shop,
  { height, pitches }: Pick<AskedFront, 'height' | 'pitches'>,
): Micrometres | null {
  if (height !== null) return height.value;
  return pitches === null ? null : pitches.value * habits.pitch - doors.gap.value;
}

/**
 * What the fronts of one bay have of its height, as the job divides it: those without a height of their own share what is left,
 * and what cannot be shared goes to the lowest of them.
 * @param room from the upper edge of the highest to the lower edge of the lowest
 */
export function frontHeights(
  spec: Pick<CarcassSpec, 'doors' | 'frontHeights'>,
  shop: Shop,
  fronts: readonly AskedFront[],
  room: Micrometres,
): FrontHeights {
  const gap = spec.doors.gap.value;
  const own = fronts.map((front) => ownHeight(spec, shop, front));
  const given = own.reduce<Micrometres>((sum, height) => sum + (height ?? 0), 0);
  const sharing = own.filter((height) => height === null).length;
  const left = room - (fronts.length - 1) * gap - given;
  if (left < sharing * TENTH || own.some((height) => height !== null && height <= 0))
    return { as: 'too-high', given, left };
  const { how, step } = spec.frontHeights;
  const { pitch } = shop.habits;
  // Each has a gap under it, the lowest too: what it has more than whole pitches is what is left over.
  const pitches = Math.floor((left + sharing * gap) / pitch);
  const inPitches =
    how.value === 'equal' || sharing < 2 ? null : pitchShares(pitches, sharing, stepOf(how.value, step.value));
  const isOnPitch = inPitches?.every((share) => share * pitch > gap) === true;
  const alike = sharing === 0 ? 0 : equalShare(left, sharing);
  const shares = isOnPitch
    ? inPitches.map((share) => share * pitch - gap)
    : Array.from({ length: sharing }, () => alike);
  const rest = left - shares.reduce((sum, share) => sum + share, 0);
  let next = 0;
  const each = own.map((height) => {
    if (height !== null) return height;
    next += 1;
    return shares[next - 1]! + (next === sharing ? rest : 0);
  });
  return { as: 'heights', each, isOnPitch: isOnPitch || how.value === 'equal' || sharing < 2, pitches };
}

/** The rooms of fronts over each other, from the top down, with a gap between two. */
export function stackedDown(heights: readonly Micrometres[], from: Micrometres, gap: Micrometres): readonly Interval[] {
  let top = from;
  return heights.map((height) => {
    const room = { from: top - height, to: top };
    top = room.from - gap;
    return room;
  });
}

/** By how many pitches each is to be higher than the one above it. */
export const stepOf = (how: 'equal' | 'on-pitch' | 'stepped', step: number): number => (how === 'stepped' ? step : 0);

/** What the steps between so many fronts come to, in pitches. */
export const pitchesOfSteps = (fronts: number, step: number): number => (step * fronts * (fronts - 1)) / 2;

/**
 * Whole pitches for so many fronts from the top down, each so many more than the one above; what is over goes to the lowest
 * ones, one to each. null where the uppermost would have none.
 */
export function pitchShares(pitches: number, fronts: number, step: number): readonly number[] | null {
  const steps = pitchesOfSteps(fronts, step);
  const least = Math.floor((pitches - steps) / fronts);
  if (least < 1) return null;
  const over = pitches - steps - least * fronts;
  return Array.from({ length: fronts }, (_, i) => least + step * i + (i >= fronts - over ? 1 : 0));
}
