import { boresNamed, depthOf } from '../bores.js';
import { grouped, isRow, machineFor, onFace } from '../lookups.js';
import type { CarcassRule, Found } from '../rule.js';
import { show, showSpan } from '../words.js';

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
    return grouped(
      out,
      ({ bore }) => `${bore.panel} ${depthOf(context, bore)?.place.start ?? bore.group} ${bore.purpose} ${bore.depth}`,
    ).map((same): Found => {
      const { bore, machine } = same[0]!;
      return {
        place: depthOf(context, bore)?.place ?? bore.place,
        panel: bore.panel,
        message:
          `${boresNamed(same.map((one) => one.bore))} in ${bore.panel} ${same.length === 1 ? 'is' : 'are'} ${show(context, bore.depth)} deep; ` +
          `${machine.name} bores ${showSpan(context, machine.depth)} deep. Choose another depth, fitting or machine.`,
        bores: same.map((one) => one.bore.id),
      };
    });
  },
};
