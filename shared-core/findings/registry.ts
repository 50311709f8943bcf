import { byPlace } from './by-place.js';
import type { Steps } from '../derived/steps.js';
import { boresConcerned, type Finding } from './finding.js';
import { workingRepairs } from './working-repairs.js';
import type { CarcassContext, CarcassRule, Found } from './rule.js';
import { bandMissing } from './rules/band-missing.js';
import { bandTooNarrow } from './rules/band-too-narrow.js';
import { bandUnknown } from './rules/band-unknown.js';
import { bitMissing } from './rules/bit-missing.js';
import { besideTooNear } from './rules/beside-too-near.js';
import { boardUnknown } from './rules/board-unknown.js';
import { boreInGroove } from './rules/bore-in-groove.js';
import { boreTooShort } from './rules/bore-too-short.js';
import { boresCollide } from './rules/bores-collide.js';
import { boringDepthOutOfRange } from './rules/boring-depth-out-of-range.js';
import { bracketUnknown } from './rules/bracket-unknown.js';
import { bracketWithoutRoom } from './rules/bracket-without-room.js';
import { breakThrough } from './rules/break-through.js';
import { cannotBeBored } from './rules/cannot-be-bored.js';
import { clothesWithoutDepth } from './rules/clothes-without-depth.js';
import { wardrobeRailUnknown } from './rules/wardrobe-rail-unknown.js';
import { wardrobeRailWithoutRoom } from './rules/wardrobe-rail-without-room.js';
import { clampMissesPanel } from './rules/clamp-misses-panel.js';
import { clampTooSmall } from './rules/clamp-too-small.js';
import { drawerLowerThanSlide } from './rules/drawer-lower-than-slide.js';
import { drawerMeetsShelf } from './rules/drawer-meets-shelf.js';
import { doorSwingMeets } from './rules/door-swing-meets.js';
import { doorTooHeavy } from './rules/door-too-heavy.js';
import { dowelDepths } from './rules/dowel-depths.js';
import { dowelPlaceUnused } from './rules/dowel-place-unused.js';
import { dowelsUnmatched } from './rules/dowels-unmatched.js';
import { feetOverloaded } from './rules/feet-overloaded.js';
import { fittingUnknown } from './rules/fitting-unknown.js';
import { footOutOfRange } from './rules/foot-out-of-range.js';
import { footUnknown } from './rules/foot-unknown.js';
import { footWithoutRoom } from './rules/foot-without-room.js';
import { frontNotHeld } from './rules/front-not-held.js';
import { frontOffPitch } from './rules/front-off-pitch.js';
import { angleUnknown } from './rules/angle-unknown.js';
import { applianceWithoutAir } from './rules/appliance-without-air.js';
import { applianceWithoutRoom } from './rules/appliance-without-room.js';
import { doorHungOnBlind } from './rules/door-hung-on-blind.js';
import { hingeNotForSlant } from './rules/hinge-not-for-slant.js';
import { notInDiagonal } from './rules/not-in-diagonal.js';
import { pullMeetsCorner } from './rules/pull-meets-corner.js';
import { frontsLeaveOpen } from './rules/fronts-leave-open.js';
import { hangsTooHeavy } from './rules/hangs-too-heavy.js';
import { hingeFarOff } from './rules/hinge-far-off.js';
import { hingeOutOfReach } from './rules/hinge-out-of-reach.js';
import { hingeUnknown } from './rules/hinge-unknown.js';
import { hingeWithoutRoom } from './rules/hinge-without-room.js';
import { indexUnbalanced } from './rules/index-unbalanced.js';
import { jointCrowded } from './rules/joint-crowded.js';
import { jointOffLoad } from './rules/joint-off-load.js';
import { jointNotHeld } from './rules/joint-not-held.js';
import { looseShelfWithoutRow } from './rules/loose-shelf-without-row.js';
import { machineUnknown } from './rules/machine-unknown.js';
import { misfitPastLimit } from './rules/misfit-past-limit.js';
import { nearEdge } from './rules/near-edge.js';
import { panelOutOfRange } from './rules/panel-out-of-range.js';
import { panelPastSheet } from './rules/panel-past-sheet.js';
import { partialRowsCost } from './rules/partial-rows-cost.js';
import { planReplayDiffers } from './rules/plan-replay-differs.js';
import { pullOffFront } from './rules/pull-off-front.js';
import { pullScrewMeets } from './rules/pull-screw-meets.js';
import { pullUnknown } from './rules/pull-unknown.js';
import { rowDistance } from './rules/row-distance.js';
import { rowPastReach } from './rules/row-past-reach.js';
import { rowUnbalanced } from './rules/row-unbalanced.js';
import { screwsHidden } from './rules/screws-hidden.js';
import { shelfOffGrid } from './rules/shelf-off-grid.js';
import { shelfPastStop } from './rules/shelf-past-stop.js';
import { slideBesideRow } from './rules/slide-beside-row.js';
import { slideUnknown } from './rules/slide-unknown.js';
import { boreWithoutMate } from './rules/bore-without-mate.js';
import { rowsNotOpposite } from './rules/rows-not-opposite.js';
import { tipsWhenOpen } from './rules/tips-when-open.js';
import { valueUnused } from './rules/value-unused.js';
import { shelfSags } from './rules/shelf-sags.js';
import { shelfShutIn } from './rules/shelf-shut-in.js';
import { shelfTips } from './rules/shelf-tips.js';

/** Every rule over a carcass; findings at one place come in this order. A new rule is added here and nowhere else. */
export const rules: readonly CarcassRule[] = [
  boardUnknown,
  bandUnknown,
  fittingUnknown,
  hingeUnknown,
  slideUnknown,
  pullUnknown,
  bracketUnknown,
  footUnknown,
  angleUnknown,
  wardrobeRailUnknown,
  machineUnknown,
  rowPastReach,
  rowDistance,
  rowUnbalanced,
  indexUnbalanced,
  partialRowsCost,
  looseShelfWithoutRow,
  shelfOffGrid,
  shelfPastStop,
  shelfTips,
  shelfShutIn,
  shelfSags,
  dowelsUnmatched,
  dowelDepths,
  boreTooShort,
  dowelPlaceUnused,
  jointCrowded,
  jointNotHeld,
  jointOffLoad,
  screwsHidden,
  notInDiagonal,
  doorHungOnBlind,
  hingeNotForSlant,
  hingeOutOfReach,
  hingeWithoutRoom,
  hingeFarOff,
  doorSwingMeets,
  frontsLeaveOpen,
  frontOffPitch,
  frontNotHeld,
  besideTooNear,
  applianceWithoutRoom,
  applianceWithoutAir,
  drawerMeetsShelf,
  drawerLowerThanSlide,
  pullOffFront,
  pullScrewMeets,
  pullMeetsCorner,
  doorTooHeavy,
  tipsWhenOpen,
  hangsTooHeavy,
  bracketWithoutRoom,
  footOutOfRange,
  feetOverloaded,
  footWithoutRoom,
  wardrobeRailWithoutRoom,
  clothesWithoutDepth,
  boresCollide,
  boreInGroove,
  breakThrough,
  nearEdge,
  boringDepthOutOfRange,
  bitMissing,
  panelOutOfRange,
  panelPastSheet,
  bandMissing,
  bandTooNarrow,
  clampTooSmall,
  clampMissesPanel,
  cannotBeBored,
  boreWithoutMate,
  rowsNotOpposite,
  slideBesideRow,
  planReplayDiffers,
  misfitPastLimit,
  valueUnused,
];

const HIDING: ReadonlySet<string> = new Set(rules.filter(({ hides }) => hides).map(({ name }) => name));
const SLOW: ReadonlySet<string> = new Set(rules.filter(({ slow }) => slow).map(({ name }) => name));

/** What rules find in one carcass, by place and then in the order of the rules. */
export interface Checked {
  /** What the rules find that take no time. */
  readonly quick: readonly Finding[];
  /**
   * What all find; what takes too long to be run at every key is worked out when it is asked for, a little at a time.
   * @param late the same context where the slow rules get another shop, that is the same to the quick ones
   */
  readonly all: (late?: CarcassContext) => Steps<readonly Finding[]>;
}

/**
 * All findings of one carcass. Where the context can try changes, only repairs that make their finding go away and bring no
 * other are kept. Never throws; but `all` may, as the slow rules may have a fault of ours.
 */
export function checkCarcass(context: CarcassContext): Checked {
  const said = new Set<string>();
  const named = (rule: CarcassRule, found: readonly Found[], heard: Set<string>): readonly Finding[] =>
    found.map((one) => {
      const finding: Finding = { rule: rule.name, severity: rule.severity, related: [], repairs: [], ...one };
      if (finding.severity === 'error') boresConcerned(finding).forEach((bore) => heard.add(bore));
      return finding;
    });
  const working = (found: readonly Finding[], of: CarcassContext): readonly Finding[] =>
    workingRepairs(found, of, HIDING, SLOW).toSorted(byPlace);
  const quick = rules.map((rule) => (rule.slow === true ? null : named(rule, rule.check(context, said), said)));
  return {
    quick: working(
      quick.flatMap((found) => found ?? []),
      context,
    ),
    // No quick rule asks what a slow one has said.
    *all(late = context) {
      const heard = new Set(said);
      const found: Finding[] = [];
      for (const [index, rule] of rules.entries()) {
        if (rule.slow === true) found.push(...named(rule, yield* rule.check(late, heard), heard));
        else found.push(...quick[index]!);
      }
      return working(found, late);
    },
  };
}
