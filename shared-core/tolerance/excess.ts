import type { Met } from './meeting.js';
import { total, type Sum } from './shares.js';

/**
 * By how much one of the panels that two faces meet holds them further apart, at a place on the front-to-back axis, than the
 * outermost ones leave them there; null where what they meet leaves them free to lean.
 * @param way from the near face to the far one
 */
export function excessBetween(met: readonly Met[], way: 1 | -1): ((one: Met, along: number) => Sum) | null {
  const [low, high] = [Math.min(...met.map(({ at }) => at)), Math.max(...met.map(({ at }) => at))];
  if (low >= high) return null;
  const [lowest, highest] = [met.filter(({ at }) => at === low), met.filter(({ at }) => at === high)];
  const width = (near: Sum, far: Sum): Sum => total([far, way], [near, -way]);
  const widthOf = (ones: readonly Met[], along: number): Sum =>
    width(placeAt(ones, 'near', along), placeAt(ones, 'far', along));
  return (one, along) => {
    const level = [lowest, highest].find((ones) => ones.includes(one));
    if (level !== undefined) {
      return width(atOdds(one, level, 'near', along), atOdds(one, level, 'far', along));
    }
    const part = (one.at - low) / (high - low);
    return total([widthOf([one], along), 1], [widthOf(lowest, along), part - 1], [widthOf(highest, along), -part]);
  };
}

type SideName = 'near' | 'far';

/** An outermost panel is at odds only with others at its height, and only about where its own ends are. */
function atOdds(one: Met, level: readonly Met[], side: SideName, along: number): Sum {
  const own = one[side];
  return own.how === 'by-bores' ? [] : total([own.at, 1], [placeAt(level, side, along), -1]);
}

/**
 * Where a face stands at one height. Against several ends it is square to them, at their mean. The bores of several joints
 * put it on the straight line that fits best through the middles of them.
 */
function placeAt(met: readonly Met[], side: SideName, along: number): Sum {
  const meetings = met.map((one) => one[side]);
  const bored = meetings.flatMap((one) => (one.how === 'by-bores' ? [one] : []));
  const ends = meetings.flatMap((one) => (one.how === 'against-end' ? [one.at] : []));
  if (ends.length > 0) return total(...ends.map((at): [Sum, number] => [at, 1 / ends.length]));
  if (bored.length === 1) return [{ kind: 'stand', of: bored[0]!.id, along, share: 1 }, ...bored[0]!.beyond];
  const mean = bored.reduce((sum, { middle }) => sum + middle, 0) / bored.length;
  const spread = bored.reduce((sum, { middle }) => sum + (middle - mean) ** 2, 0);
  return total(
    ...bored.map(({ id, middle, beyond }): [Sum, number] => {
      const turn = spread < 1 ? 0 : ((along - mean) * (middle - mean)) / spread;
      return [[{ kind: 'stand', of: id, along: middle, share: 1 }, ...beyond], 1 / bored.length + turn];
    }),
  );
}
