import type { Located } from '../../document/place.js';
import type { Micrometres } from '../../length/units.js';
import { machineFor } from '../lookups.js';
import type { CarcassRule } from '../rule.js';
import { show, showSpan } from '../words.js';

export const clampTooSmall: CarcassRule = {
  name: 'clamp-too-small',
  severity: 'error',
  about: {
    what: 'The box does not go into the case clamp, or is too small to be held by it.',
    why: 'A glued carcass must be pressed before the glue sets; finding at the clamp that it does not fit loses the box. The ranges are the shop file’s; the clamp’s manual decides, also for keeping hands out of it.',
    remedy:
      'Name another clamp (`machines: clamp`), press it with hand clamps on purpose (`clamp` left out of the shop’s machines), or change the size.',
    example: 'kind: base\nwidth: 1600',
  },
  check(context) {
    const clamp = machineFor(context, 'clamp');
    if (clamp === null) return [];
    const { spec } = context;
    return (['width', 'height', 'depth'] as const).flatMap((side) => {
      const size: Located<Micrometres> = spec[side];
      const range = clamp[side];
      if (range === null || (size.value >= range.min && size.value <= range.max)) return [];
      const over = size.value > range.max;
      return [
        {
          place: size.place,
          message:
            `The box is ${show(context, size.value)} in ${side}; ${clamp.name} holds ${showSpan(context, range)}, ` +
            `so it is ${show(context, over ? size.value - range.max : range.min - size.value)} too ${over ? 'large' : 'small'}. ` +
            'Choose another clamp, or change the size.',
        },
      ];
    });
  },
};
