import type { Joint, Panel } from '../../carcass/model.js';
import { within } from '../../carcass/interval.js';
import { extentsOf } from '../../carcass/pose.js';
import { boreAxis } from '../../boring/axis.js';
import { panelOf } from '../lookups.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';
import { counted, listed, show } from '../words.js';

export const screwsHidden: CarcassRule = {
  name: 'screws-hidden',
  severity: 'warning',
  about: {
    what: 'Two shelves back to back on a divider are screwed through it, and each hides the screws of the other.',
    why: 'A connector screw is driven from the other face of the divider, in the bay beside. Where a fixed shelf stands there at the same height, whichever is screwed first covers the holes for the second.',
    remedy: 'Move one of the two up or down by a pitch, or hold one with dowels or cams.',
    example: 'kind: wall\nwidth: 900\njoint: screw-7x50\ndividers: 1\nfixed-shelves: 1',
  },
  check(context) {
    const screwed = context.carcass.joints.filter(
      ({ fitting, faceFitting }) => fitting.kind === 'screw' && faceFitting.kind === 'screw',
    );
    const hidden = screwed.flatMap((one, index) =>
      screwed
        .slice(index + 1)
        .filter((other) => covers(context, other, one) && covers(context, one, other))
        .map((other) => [one, other] as const),
    );
    return hidden.map(([one, other]) => found(context, one, other));
  },
};

/** True where the end panel of one joint stands over a hole that a screw of the other is driven into. */
function covers(context: CarcassContext, { facePanel, face, endPanel }: Joint, other: Joint): boolean {
  if (facePanel !== other.facePanel || face === other.face) return false;
  const [through, over] = [panelOf(context, facePanel), panelOf(context, endPanel)];
  return through !== undefined && over !== undefined && standsOver(context, over, through, other);
}

function standsOver(context: CarcassContext, over: Panel, through: Panel, { id }: Joint): boolean {
  const { x, y, z } = extentsOf(over);
  return context.boring.bores
    .filter(({ group, panel, purpose }) => group === id && panel === through.key && purpose === 'clearance')
    .map((bore) => boreAxis(through, bore).entry)
    .some((at) =>
      [[at.x, x] as const, [at.y, y] as const, [at.z, z] as const].every(([p, run]) => within({ from: p, to: p }, run)),
    );
}

function found(context: CarcassContext, one: Joint, other: Joint): Found {
  const groups = new Set([one.id, other.id]);
  const holes = context.boring.bores.filter(({ group, purpose }) => groups.has(group) && purpose === 'clearance');
  const shelf = context.spec.fixedShelves.find(({ at }) => at.place.start === other.place.start);
  return {
    place: other.place,
    panel: other.endPanel,
    message:
      `The ${counted(holes.length, 'screw')} of ${listed([one.endPanel, other.endPanel])} go through ${one.facePanel} from both faces` +
      `${shelf === undefined ? '' : ` at ${show(context, shelf.at.value)}`}: each shelf covers the holes that the screws of the other are driven into. ` +
      `Move one of them by a pitch, or hold one with another fitting (\`joint\` of ${other.endPanel} under \`panels\`).`,
    related:
      one.place.start === other.place.start
        ? []
        : [{ place: one.place, message: `${one.endPanel} stands on the other face of ${one.facePanel}.` }],
    bores: holes.map(({ id }) => id),
  };
}
