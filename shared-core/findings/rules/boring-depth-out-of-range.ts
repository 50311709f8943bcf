import type { BoresTold } from '../../fittings/fitting.js';
import { isRow, theBores } from '../../fittings/purposes.js';
import type { Micrometres } from '../../length/units.js';
import { travelFor } from '../../machining/plan/lines.js';
import type { Span } from '../../schema/schema.js';
import { quoted, verb } from '../../words/english.js';
import { messages } from '../../words/message.js';
import type { Show } from '../../words/show.js';
import { boresTold, depthOf } from '../bores.js';
import { grouped, machineThatBores } from '../lookups.js';
import type { CarcassRule, Found } from '../rule.js';

interface OutOfRange extends BoresTold {
  /** How deep the bit has to go; of a through bore, with the shop's allowance. */
  readonly depth: Micrometres;
  readonly through: boolean;
  readonly machine: string;
  readonly range: Span;
}

export const say = messages('boring-depth-out-of-range', {
  ofRows: (out: OutOfRange, show) => `${outOfRange(out, show)} Change \`row-depth\`, or choose another machine.`,
  ofJoint: (out: OutOfRange, show) => `${outOfRange(out, show)} Choose another depth, fitting or machine.`,
});

const outOfRange = ({ depth, through, machine, range, ...bores }: OutOfRange, show: Show): string =>
  `${theBores(bores)} ${verb(bores.count, 'is', 'are')} ${through ? `through, for which the bits go ${show.length(depth)}` : show.length(depth)} deep; ${quoted(machine)} bores between ${show.length(range.min)} and ${show.length(range.max)} deep.`;

export const boringDepthOutOfRange: CarcassRule = {
  name: 'boring-depth-out-of-range',
  severity: 'error',
  about: {
    what: 'A bore is deeper or shallower than its machine can bore.',
    why: 'The stroke of a head ends at its depth stop. The range is given in the shop file; the machine’s manual and the length of the bit decide.',
    remedy: 'Choose another fitting or depth, or another machine.',
    example: 'kind: base\nwidth: 600\npanels:\n  bottom: { end-depth: 90 }',
  },
  check(context) {
    const out = context.boring.bores.flatMap((bore) => {
      const machine = machineThatBores(context, bore);
      if (machine === null) return [];
      const travel = travelFor(bore, context.shop.habits.throughAllowance);
      return travel >= machine.depth.min && travel <= machine.depth.max ? [] : [{ bore, machine, travel }];
    });
    const cause = ({ bore, machine }: (typeof out)[number]): string => {
      const place = depthOf(context, bore)?.place ?? bore.place;
      return `${place.part} ${place.start} ${machine.name} ${bore.purpose} ${bore.depth}`;
    };
    return grouped(out, cause).map((same): Found => {
      const { bore, machine, travel } = same[0]!;
      return {
        place: depthOf(context, bore)?.place ?? bore.place,
        panel: bore.panel,
        message: (isRow(bore) ? say.ofRows : say.ofJoint)({
          ...boresTold(same.map((one) => one.bore)),
          depth: travel,
          through: bore.through,
          machine: machine.name,
          range: machine.depth,
        }),
        bores: same.map((one) => one.bore.id),
      };
    });
  },
};
