import type { Bore } from '../../boring/model.js';
import { theBores } from '../../fittings/purposes.js';
import { taskOf } from '../../machining/plan/operations.js';
import type { BoresTold } from '../../fittings/fitting.js';
import { KIND_FOR_USE } from '../../shop/habits.js';
import { identityOf, messages, type Message } from '../../words/message.js';
import { boresTold } from '../bores.js';
import { grouped } from '../lookups.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';

export const say = messages('cannot-be-bored', {
  noSetUp: ({ reason, ...bores }: BoresTold & { readonly reason: Message }, show) =>
    `${theBores(bores)} cannot be bored. ${show.tell(reason)}`,
});

export const cannotBeBored: CarcassRule = {
  name: 'cannot-be-bored',
  severity: 'error',
  about: {
    what: 'No set-up of the machine that the carcass is sent to makes these bores.',
    why: 'A set-up is a fence, stops, a depth and loaded spindles within the ranges of the shop file, with the front edge as the reference. The finding names the parameter that stands in the way. Widen it only if the machine’s manual allows it.',
    remedy:
      'Change the bores, send the carcass to another machine (`machines`), or correct the machine in the shop file.',
    example: 'kind: base\nwidth: 600',
    shop: [
      'horizontal-heads:',
      '  level:',
      '    { spindles: 24, pitch: 32, height: 4 to 40, depth: 2 to 60, stops: { E: { side: left, range: 20 to 80 } } }',
    ].join('\n'),
  },
  check(context, said) {
    const unsaid = context.operations.unreachable.flatMap((one) => {
      // The shop has the machine, but its text has a fault: that is told with the shop.
      if (one.machine === null && one.parameter === 'machines' && waitsForMachine(context, one.bores[0])) return [];
      const bores = one.bores.filter((bore) => !said.has(bore.id));
      return bores.length > 0 ? [{ ...one, bores }] : [];
    });
    const causes = grouped(unsaid, ({ machine, parameter, needed, reason, bores }) =>
      [machine, parameter, needed, identityOf(reason), bores[0]!.place.part, bores[0]!.place.start].join('\n'),
    );
    return causes.map((same): Found => {
      const { reason, bores, panel } = same[0]!;
      const all = same.flatMap((one) => one.bores);
      return {
        place: bores[0]!.place,
        panel,
        message: say.noSetUp({ ...boresTold(all), reason }),
        bores: all.map((bore) => bore.id),
      };
    });
  },
};

/** True where the shop's only machines for the bore cannot be read. */
function waitsForMachine({ shop }: CarcassContext, bore: Bore | undefined): boolean {
  return bore !== undefined && [...(shop.unread?.machines.values() ?? [])].includes(KIND_FOR_USE[taskOf(bore)]);
}
