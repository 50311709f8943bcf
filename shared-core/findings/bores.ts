import type { Bore } from '../boring/model.js';
import { chosen } from '../carcass/choices.js';
import { edgeNamed, endNamed } from '../carcass/roles.js';
import type { Located } from '../document/place.js';
import type { BoresTold } from '../fittings/fitting.js';
import type { BorePurpose } from '../fittings/names.js';
import { isRow, purposeOf, PURPOSES } from '../fittings/purposes.js';
import type { Micrometres } from '../length/units.js';
import { EDGES, type LongEdge, type SideName } from '../words/names.js';
import type { Show } from '../words/show.js';
import { distinct, onFace, panelOf } from './lookups.js';
import type { CarcassContext } from './rule.js';

/** The purpose is that of the first. */
export function boresTold(bores: readonly Bore[]): BoresTold {
  return {
    purpose: bores[0]!.purpose,
    count: bores.length,
    panels: distinct(bores.map(({ panel }) => panel)),
  };
}

/** One bore by what it belongs to and where it stands, for a message. */
export interface BoreTold {
  readonly purpose: BorePurpose;
  /** The number of a row hole from the first, and its line. */
  readonly hole: number | null;
  readonly line: 'front' | 'rear' | null;
  /** The panel that a bore of a joint is for. */
  readonly mate: string | null;
  readonly fromFront: Micrometres;
  /** What that is counted from. */
  readonly edge: LongEdge;
  /** The other figure, and what it is counted from. */
  readonly across: Micrometres;
  readonly from: SideName;
}

export function boreTold(context: CarcassContext, bore: Bore): BoreTold {
  const row = isRow(bore) ? context.boring.rows.find(({ id }) => id === bore.group) : undefined;
  const joint = context.carcass.joints.find(({ id }) => id === bore.group);
  const panel = panelOf(context, bore.panel);
  return {
    purpose: bore.purpose,
    hole: row === undefined ? null : (bore.v - row.offset) / row.pitch + 1,
    line: row?.line ?? null,
    mate: joint === undefined ? null : joint.endPanel === bore.panel ? joint.facePanel : joint.endPanel,
    fromFront: bore.u,
    edge: panel === undefined ? EDGES.front : edgeNamed(panel, 'front'),
    across: bore.v,
    from: onFace(bore) && panel !== undefined ? endNamed(panel, 'reference-end') : 'outside face',
  };
}

/** 'hole 3 of the front row', 'the dowel bore for bottom' */
export function theBore({ purpose, hole, line, mate }: BoreTold): string {
  if (hole !== null) return `hole ${hole} of the ${line} row`;
  return `the ${PURPOSES[purpose].nouns[0]}${mate === null ? '' : ` for ${mate}`}`;
}

/** '37 mm from the front edge and 328 mm from the bottom end' */
export function boreAt({ fromFront, edge, across, from }: BoreTold, show: Show): string {
  return `${show.length(fromFront)} from the ${edge} and ${show.length(across)} from the ${from}`;
}

/** The panel's own choice that sets the depth of a bore for a joint, where it has one; all others are their fitting's or the shop's. */
export function depthOf(context: CarcassContext, bore: Bore): Located<Micrometres> | undefined {
  if (!purposeOf(bore).depthChosen) return undefined;
  return chosen(context.spec, bore.panel, onFace(bore) ? 'faceDepth' : 'endDepth');
}
