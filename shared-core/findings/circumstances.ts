import { isFace } from '../boring/surface.js';
import { isRow, purposeOf } from '../fittings/purposes.js';
import type { Path } from '../document/place.js';
import { isAboveFloor } from '../job/above-floor.js';
import { reachAt, type Circumstance, type Reach } from '../job/reach.js';
import type { EndName } from '../job/model.js';
import { means, wholeOf } from '../job/panel-key.js';
import { chosen, chosenAtEnd } from '../carcass/choices.js';
import { doorKeys, hasFronts, keysOfKind, pullsGiven, stacksAsked, staysOpen } from '../carcass/fronts/asked.js';
import { blindHands } from '../carcass/fronts/blind.js';
import { standsStill } from '../carcass/fronts/still.js';
import { sharesHeight } from '../carcass/fronts/heights.js';
import { mayHavePull } from '../carcass/fronts/pull.js';
import type { Joint, Panel } from '../carcass/model.js';
import { roleOf, setsGrid } from '../carcass/roles.js';
import type { CarcassContext } from './rule.js';

/** What of a carcass a circumstance is read off. */
export type Made = Pick<CarcassContext, 'spec' | 'carcass' | 'boring'>;

type Test = (made: Made, isMeant: (panel: string) => boolean, path: Path) => boolean;

/** `isMeant`: the panels that the value is written for. A circumstance without its test does not compile. */
const HOLDS: Readonly<Record<Circumstance, Test>> = {
  rails: ({ spec }) => spec.top.value === 'rails',
  back: ({ spec }) => spec.back.how.value !== 'none',
  recess: ({ spec }) => spec.back.how.value === 'grooved' || spec.back.how.value === 'rebated',
  groove: ({ spec }) => spec.back.how.value === 'grooved',
  bays: ({ spec }) => spec.dividers.length > 0,
  rows: ({ boring }, isMeant) => boring.rows.some(({ panel }) => isMeant(panel)),
  'rows-asked': asksForRows,
  'rows-in-bays': (made) => asksForRows(made) && made.spec.dividers.length > 0,
  grid: ({ boring, spec: { fixedShelves, looseShelves } }) =>
    boring.rows.length > 0 ||
    hasHinges(boring) ||
    boring.angles.length > 0 ||
    [...fixedShelves, ...looseShelves].some(({ at }) => !at.written && at.path[0] !== 'fronts'),
  'own-grid': ({ spec, boring }, isMeant) =>
    boring.rows.some(({ panel }) => isMeant(panel)) ||
    // The places on a divider follow from those of one side.
    ((hasHinges(boring) || boring.angles.length > 0) && isMeant(spec.leading)) ||
    boring.angles.some(({ on }) => roleOf(on).rows !== 'none' && isMeant(on.key)) ||
    boring.hung.some(({ hinges, upright }) => hinges.length > 0 && isMeant(upright.key)),
  'rear-rows': ({ boring }, isMeant) => boring.rows.some(({ panel, line }) => line === 'rear' && isMeant(panel)),
  doors: ({ spec }) => doorKeys(spec).length > 0,
  fronts: ({ spec }) => hasFronts(spec) || isBlind(spec),
  'overlay-fronts': ({ spec }) => (hasFronts(spec) || isBlind(spec)) && spec.doors.how.value === 'overlay',
  'front-gaps': ({ spec }) =>
    (spec.doors.how.value === 'inset' && (hasFronts(spec) || isBlind(spec))) ||
    (hasFronts(spec) && (isBlind(spec) || hasNeighbours(spec))),
  blind: ({ spec }) => isBlind(spec),
  'whole-front': ({ spec }) => spec.doors.bays === null && spec.fronts === null,
  'no-fronts': ({ spec }) => spec.fronts === null,
  'shared-heights': ({ spec }) => shareHeights(spec),
  'stepped-fronts': ({ spec }) => spec.frontHeights.how.value === 'stepped' && shareHeights(spec),
  'no-height': ({ spec }, _, [, index]) => spec.fronts?.value[Number(index)]?.value.height === undefined,
  drawers: ({ spec }) => keysOfKind(spec, 'drawer').length > 0,
  'pulled-here': (made) =>
    withoutOwnPull(made).some(
      ({ role }) => role === 'door' || (role === 'drawer-front' && made.spec.pulls.onDrawers === null),
    ),
  'pulled-drawers': (made) => withoutOwnPull(made).some(({ role }) => role === 'drawer-front'),
  'front-place': (made, _, path) => takesPull(made, path),
  'door-pulls': ({ boring }) => boring.pulls.some(({ front }) => front.role === 'door'),
  'long-door-pulls': ({ boring }) => boring.pulls.some(({ front, pull }) => front.role === 'door' && pull.spacing > 0),
  'pulls-by-end': ({ boring }) => boring.pulls.some(({ byEnd }) => byEnd),
  'drawer-pulls': ({ boring }) => boring.pulls.some(({ front }) => front.role !== 'door'),
  'own-pull': ({ carcass }, isMeant) => carcass.panels.some((panel) => mayHavePull(panel) && isMeant(panel.key)),
  'own-door-pull': ({ boring }, isMeant) =>
    boring.pulls.some(({ front }) => front.role === 'door' && isMeant(front.key)),
  'own-long-pull': ({ boring }, isMeant) =>
    boring.pulls.some(({ front, pull }) => pull.spacing > 0 && isMeant(front.key)),
  'own-pull-by-end': ({ boring }, isMeant) => boring.pulls.some(({ front, byEnd }) => byEnd && isMeant(front.key)),
  'own-lying-pull': ({ boring }, isMeant) =>
    boring.pulls.some(({ front }) => front.role !== 'door' && isMeant(front.key)),
  like: ({ spec }) => spec.like !== null,
  'on-plinth': ({ spec }) => spec.plinth.value > 0,
  still: ({ carcass }) => carcass.panels.some(standsStill),
  hanging: ({ spec }) => isAboveFloor(spec),
  standing: ({ spec }) => !isAboveFloor(spec),
  'end-panels': ({ spec }) => spec.endPanels.on.value !== 'none',
  'end-panels-beside-plinth': ({ spec }) => spec.endPanels.on.value !== 'none' && spec.plinth.value > 0,
  fillers: ({ spec: { fillers } }) => fillers.left !== null || fillers.right !== null,
  upright: ({ carcass }, isMeant) =>
    carcass.panels.some((panel) => isMeant(panel.key) && roleOf(panel).rows !== 'none'),
  joined: (made, isMeant, path) =>
    undecided(made, path).some(({ facePanel, endPanel }) => isMeant(facePanel) || isMeant(endPanel)),
  'end-joined': (made, isMeant, path) => undecided(made, path).some(({ endPanel }) => isMeant(endPanel)),
  'reference-end-joined': (made, isMeant) => isJoinedAt(made, 'reference-end', isMeant),
  'far-end-joined': (made, isMeant) => isJoinedAt(made, 'far-end', isMeant),
  'deep-in-face': ({ boring }, isMeant) =>
    boring.bores.some((bore) => isMeant(bore.panel) && isFace(bore.face) && hasDepth(bore)),
  'deep-in-end': ({ boring }, isMeant) =>
    boring.bores.some((bore) => isMeant(bore.panel) && !isFace(bore.face) && hasDepth(bore)),
};

/** The joints that do not say for themselves what the key says of all joints of a panel. */
function undecided({ spec, carcass }: Made, path: Path): readonly Joint[] {
  const key = path.at(-1) === 'joint' ? 'joint' : 'dowels';
  return carcass.joints.filter(({ endPanel, end }) => chosenAtEnd(spec, endPanel, end, key) === undefined);
}

const isJoinedAt = ({ carcass }: Made, at: EndName, isMeant: (panel: string) => boolean): boolean =>
  carcass.joints.some(({ endPanel, end }) => end === at && isMeant(endPanel));

/** Whether a panel is to have rows, be holes of them left out or not. */
function asksForRows({ spec, carcass, boring }: Made): boolean {
  const asked = ({ key }: Panel): string => (chosen(spec, key, 'rows') ?? spec.rows).value;
  return boring.rows.length > 0 || carcass.panels.some((panel) => setsGrid(panel) && asked(panel) !== 'none');
}

/** Whether two fronts stand beside each other: two doors of a pair, one over the other, or before two bays. */
function hasNeighbours(spec: Made['spec']): boolean {
  const stacks = stacksAsked(spec);
  return (
    stacks.some(({ fronts }) => fronts.length > 1 || fronts.some(({ kind }) => kind === 'pair')) ||
    (stacks.some(({ bay }) => bay !== null) && spec.dividers.length > 0)
  );
}

const isBlind = (spec: Made['spec']): boolean => blindHands(spec).length > 0;

/** Whether before one bay there are two fronts or more that share what is left of its height. */
const shareHeights = (spec: Made['spec']): boolean =>
  stacksAsked(spec).some(({ fronts }) => fronts.filter(sharesHeight).length > 1);

/** The fronts that take their pull from what is said of all. */
function withoutOwnPull({ spec, carcass }: Made): readonly Panel[] {
  const given = pullsGiven(spec);
  return carcass.panels.filter(
    (panel) => mayHavePull(panel) && chosen(spec, panel.key, 'pull') === undefined && !given.has(wholeOf(panel.key)),
  );
}

/** Whether the pull that an item of `fronts` names, or may name, is that of any front which the item makes. */
function takesPull({ spec, carcass }: Made, [, index]: Path): boolean {
  const item = spec.fronts?.value[Number(index)]?.value;
  if (item === undefined || staysOpen(item.front.value)) return item === undefined;
  const keys = [...pullsGiven(spec)].flatMap(([key, pull]) => (pull === item.pull ? [key] : []));
  const fronts = carcass.panels.filter((panel) => mayHavePull(panel) && keys.includes(wholeOf(panel.key)));
  return fronts.length === 0 || fronts.some(({ key }) => chosen(spec, key, 'pull') === undefined);
}

const hasHinges = ({ hung }: Made['boring']): boolean => hung.some(({ hinges }) => hinges.length > 0);

const hasDepth = (bore: Parameters<typeof purposeOf>[0]): boolean => !isRow(bore) && purposeOf(bore).depthChosen;

/**
 * Whether a value counts in a carcass. `panel`: the key under `panels` that it is written for; null for the carcass as a whole.
 * `path`: of its key, from the root of the carcass.
 */
export function holds(circumstance: Circumstance, made: Made, panel: string | null, path: Path): boolean {
  return HOLDS[circumstance](made, (key) => panel === null || means(panel, key), path);
}

/**
 * Whether a key at a path of a carcass would count in any of these; true where there are none to ask. The path is that of the
 * key from the carcass's root, and so it is in the job's defaults, whose reach is told apart.
 */
export function wouldCount(path: Path, made: readonly Made[], reach: Reach = reachAt(path)): boolean {
  if (reach === 'always' || made.length === 0) return true;
  const panel = path[0] === 'panels' && typeof path[1] === 'string' ? path[1] : null;
  return made.some((one) => holds(reach, one, panel, path));
}
