import type { BoresTold } from '../../fittings/fitting.js';
import { theBores } from '../../fittings/purposes.js';
import type { Micrometres } from '../../length/units.js';
import { listed } from '../../words/english.js';
import { messages } from '../../words/message.js';
import type { Show } from '../../words/show.js';
import { boresTold } from '../bores.js';
import { grouped } from '../lookups.js';
import type { CarcassRule, Found } from '../rule.js';

interface Missing extends BoresTold {
  readonly bit: Micrometres;
  readonly bits: readonly Micrometres[];
}

export const say = messages('bit-missing', {
  ofFitting: (missing: Missing, show) =>
    `${without(missing, show)} Choose another fitting, or add the bit to \`bits\`.`,
  ofRows: (missing: Missing, show) =>
    `${without(missing, show)} Choose another \`row-diameter\`, or add the bit to \`bits\`.`,
});

const without = ({ bit, bits, ...bores }: Missing, show: Show): string =>
  `${theBores(bores)} ${bores.count === 1 ? 'needs' : 'need'} a bit of ${show.exact(bit)}, which is not among the shop’s bits of ${listed(bits.map(show.exact))}.`;

export const bitMissing: CarcassRule = {
  name: 'bit-missing',
  severity: 'error',
  about: {
    what: 'The shop has no bit of the diameter that a bore needs.',
    why: 'A bore of another size makes a loose joint, or splits the panel.',
    remedy: 'Choose another fitting, or add the diameter to `bits` in the shop file once the shop has the bit.',
    example: 'kind: base\nwidth: 600\njoint: dowel-10x40',
    shop: 'bits: [5, 8]',
  },
  check(context) {
    const { bits } = context.shop;
    if (bits === null) return [];
    // Holes that stay empty are bored with the bits of the joint beside them.
    const without = context.boring.bores.filter(
      ({ purpose, diameter }) => purpose !== 'spare' && !bits.includes(diameter),
    );
    return grouped(without, (bore) => `${bore.diameter} ${bore.fitting ?? 'row'}`).map((same): Found => {
      const bore = same[0]!;
      const place =
        bore.fitting === null
          ? context.spec.name.place
          : context.spec.joint.value === bore.fitting
            ? context.spec.joint.place
            : bore.place;
      return {
        place,
        panel: bore.panel,
        message: (bore.fitting === null ? say.ofRows : say.ofFitting)({ ...boresTold(same), bit: bore.diameter, bits }),
        bores: same.map((one) => one.id),
      };
    });
  },
};
