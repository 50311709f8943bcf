import { boresNamed } from '../bores.js';
import { distinct, grouped } from '../lookups.js';
import type { CarcassRule, Found } from '../rule.js';
import { listed, show } from '../words.js';

export const bitMissing: CarcassRule = {
  name: 'bit-missing',
  severity: 'error',
  about: {
    what: 'The shop has no bit of the diameter that a bore needs.',
    why: 'A bore of the next size makes a loose or a split joint.',
    remedy: 'Choose another fitting, or add the diameter to `bits` in the shop file when the bit has been bought.',
    example: 'kind: base\nwidth: 600\njoint: dowel-10x40',
    shop: 'bits: [5, 8]',
  },
  check(context) {
    const { bits } = context.shop;
    if (bits === null) return [];
    const without = context.boring.bores.filter((bore) => !bits.includes(bore.diameter));
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
        message:
          `${boresNamed(same)} in ${listed(distinct(same.map((one) => one.panel)))} need a bit of ${show(context, bore.diameter)}; ` +
          `the shop has ${listed(bits.map((bit) => show(context, bit)))}. Choose another fitting, or get the bit.`,
        bores: same.map((one) => one.id),
      };
    });
  },
};
