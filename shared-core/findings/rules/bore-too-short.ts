import type { Mate } from '../../boring/matings.js';
import type { Bore } from '../../boring/model.js';
import type { TooShort } from '../../fittings/fitting.js';
import { fittingKinds, kindOf } from '../../fittings/kinds.js';
import { groupBy } from '../../machining/plan/numbers.js';
import { identityOf, messages } from '../../words/message.js';
import { boresTold, depthOf } from '../bores.js';
import { ownText, remove } from '../changes.js';
import { grouped, panelOf } from '../lookups.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';

export const say = messages('bore-too-short', {
  leaveDepth: ({ panel }: { readonly panel: string }) => `Leave the depth in ${panel} to the fitting`,
});

export const boreTooShort: CarcassRule = {
  name: 'bore-too-short',
  severity: 'error',
  about: {
    what: 'A bore is shorter than the screw, the bolt or the stud that goes into it, or the screw barely reaches the end of the panel, or does not reach it at all.',
    why: fittingKinds.flatMap(({ joint }) => joint.whyDeepEnough ?? []).join(' '),
    remedy:
      'Leave the depth to the fitting, or bore deeper; where a screw or a cam is too short for the board, take a longer one.',
    example: 'kind: wall\nwidth: 600\njoint: screw-7x50\npanels:\n  bottom: { end-depth: 10 }',
  },
  check(context) {
    const meeting = groupBy(context.boring.bores, ({ meets }) => meets);
    const short = context.matings.flatMap(({ mates }) =>
      mates.flatMap((mate) =>
        mate.faults.length > 0 ? [] : shortBores(context, mate, meeting.get(mate.end.id) ?? []),
      ),
    );
    return grouped(short, ({ bore, told }) => {
      const place = depthOf(context, bore)?.place ?? bore.place;
      return `${place.part} ${place.start} ${identityOf(told({ purpose: bore.purpose, count: 1, panels: [] }))}`;
    }).map((same) => found(context, same));
  },
};

/** @param meeting the bores that meet that in the end by design */
function shortBores(context: CarcassContext, { face, end }: Mate, meeting: readonly Bore[]): readonly TooShort<Bore>[] {
  const fitting = end.fitting === null ? undefined : context.shop.fittings.get(end.fitting);
  if (fitting === undefined) return [];
  const faceThickness = panelOf(context, face.panel)!.thickness;
  const endThickness = panelOf(context, end.panel)!.thickness;
  const crossing = meeting.map((bore) => ({ bore, under: bore.face === 'outside' ? end.v : endThickness - end.v }));
  const mates = { face, end, faceThickness, endThickness, crossing };
  return kindOf(fitting).joint.tooShort(fitting, mates);
}

function found(context: CarcassContext, same: readonly TooShort<Bore>[]): Found {
  const { bore, told, severity } = same[0]!;
  const own = depthOf(context, bore);
  const bores = same.map((one) => one.bore);
  return {
    place: own?.place ?? bore.place,
    panel: bore.panel,
    severity,
    message: told(boresTold(bores)),
    bores: bores.map(({ id }) => id),
    repairs:
      own !== undefined && ownText(own)
        ? [{ title: say.leaveDepth({ panel: bore.panel }), changes: [remove(own.path)], preferred: true }]
        : [],
  };
}
