import { boresNamed, depthOf } from '../bores.js';
import { distinct, grouped, isRow, machineFor, onFace } from '../lookups.js';
import type { CarcassRule, Found } from '../rule.js';
import { listed, show, showSpan, verb } from '../words.js';

export const boringDepthOutOfRange: CarcassRule = {
  name: 'boring-depth-out-of-range',
  severity: 'error',
  about: {
    what: 'A bore is deeper or shallower than its machine can bore.',
    why: 'The stroke of a head ends at its depth stop. The range is the shop file’s; the machine’s manual decides, together with the length of the bit.',
    remedy: 'Choose another fitting or depth, or another machine.',
    example: 'kind: base\nwidth: 600\npanels:\n  bottom: { end-depth: 90 }',
  },
  check(context) {
    const out = context.boring.bores.flatMap((bore) => {
      const machine = machineFor(context, isRow(bore) ? 'rows' : onFace(bore) ? 'faces' : 'ends');
      if (machine === null || (bore.depth >= machine.depth.min && bore.depth <= machine.depth.max)) return [];
      return [{ bore, machine }];
    });
    const cause = ({ bore, machine }: (typeof out)[number]): string => {
      const place = depthOf(context, bore)?.place ?? bore.place;
      return `${place.part} ${place.start} ${machine.name} ${bore.purpose} ${bore.depth}`;
    };
    return grouped(out, cause).map((same): Found => {
      const { bore, machine } = same[0]!;
      const panels = distinct(same.map((one) => one.bore.panel));
      return {
        place: depthOf(context, bore)?.place ?? bore.place,
        panel: bore.panel,
        message:
          `${boresNamed(same.map((one) => one.bore))} in ${listed(panels)} ${verb(same.length, 'is', 'are')} ${show(context, bore.depth)} deep; ` +
          `${machine.name} bores ${showSpan(context, machine.depth)} deep. ` +
          (isRow(bore)
            ? 'Give the shop another `row-depth`, or choose another machine.'
            : 'Choose another depth, fitting or machine.'),
        bores: same.map((one) => one.bore.id),
      };
    });
  },
};
