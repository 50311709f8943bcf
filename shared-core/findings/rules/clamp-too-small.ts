import { reachOf } from '../../carcass/diagonal.js';
import { outerSize } from '../../carcass/outer-size.js';
import type { Micrometres } from '../../length/units.js';
import { machineFor } from '../lookups.js';
import type { CarcassRule } from '../rule.js';
import type { Span } from '../../schema/schema.js';
import { quoted } from '../../words/english.js';
import { messages } from '../../words/message.js';

interface OutOfRange {
  readonly side: 'width' | 'height' | 'depth';
  readonly key: string;
  readonly size: Micrometres;
  readonly clamp: string;
  readonly range: Span;
}

export const say = messages('clamp-too-small', {
  outOfRange: ({ side, key, size, clamp, range }: OutOfRange, show) =>
    `The box is ${show.length(size)} ${{ width: 'wide', height: 'high', depth: 'deep' }[side]}; ${quoted(clamp)} holds between ${show.length(range.min)} and ${show.length(range.max)}. Change \`${key}\`, or choose another clamp (\`machines: clamp\`).`,
});

export const clampTooSmall: CarcassRule = {
  name: 'clamp-too-small',
  severity: 'error',
  about: {
    what: 'The box does not go into the case clamp, or is too small to be held by it.',
    why: 'A glued carcass must be pressed before the glue sets; finding at the clamp that it does not fit loses the box. The ranges are given in the shop file; the clamp’s manual decides, also on keeping hands out of it.',
    remedy:
      'Name another clamp (`machines: clamp`), leave `clamp` out of the shop’s machines and press the box with hand clamps, or change the size.',
    example: 'kind: base\nwidth: 1600',
  },
  check(context) {
    const clamp = machineFor(context, 'clamp');
    if (clamp === null) return [];
    const sizes = outerSize(context.carcass);
    const { spec } = context;
    const reach = reachOf(spec);
    return (['width', 'height', 'depth'] as const).flatMap((side) => {
      const [size, range] = [sizes[side], clamp[side]];
      if (range === null || (size >= range.min && size <= range.max)) return [];
      // Across a corner it is as deep as its other wing reaches.
      const isReach = side === 'depth' && reach !== null;
      const said = isReach ? reach : spec[side];
      const key = isReach ? 'diagonal' : side;
      return [{ place: said.place, message: say.outOfRange({ side, key, size, clamp: clamp.name, range }) }];
    });
  },
};
