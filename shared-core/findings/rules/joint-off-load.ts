import { jointsOffLoad } from '../../boring/off-load.js';
import type { Joint, Panel } from '../../carcass/model.js';
import type { Located, Path } from '../../document/place.js';
import type { Micrometres } from '../../length/units.js';
import { secondsToChange } from '../../machining/plan/plan.js';
import type { Operation } from '../../machining/plan/operation.js';
import { setUpsOf, type BatchedSetUp } from '../../machining/plan/set-ups.js';
import { counted, listed } from '../../words/english.js';
import { means } from '../../job/panel-key.js';
import { messages, type Message } from '../../words/message.js';
import { timeWords } from '../../words/time.js';
import { ownText, setLength } from '../changes.js';
import type { Repair } from '../finding.js';
import { boresOfGroups, distinct, grouped, panelOf } from '../lookups.js';
import type { CarcassContext, CarcassRule } from '../rule.js';

interface OffLoad {
  readonly panels: readonly string[];
  readonly spindles: readonly number[];
  readonly setUps: number;
  readonly seconds: number;
}
interface NewSize {
  readonly size: Micrometres;
  readonly instead: Micrometres;
}

export const say = messages('joint-off-load', {
  own: ({ panels, spindles, setUps, seconds }: OffLoad) =>
    `The load of bits that usual joints share (spindles ${listed(spindles.map(String))}, counted from the front edge) does not hold ${listed(panels)}, so their joints take places and a load of their own: ${counted(setUps, 'set-up')}, ${timeWords(seconds)}.`,
  deep: ({ size, instead }: NewSize, show) =>
    `Make the carcass ${show.exact(size)} deep instead of ${show.exact(instead)}`,
  wide: ({ size, instead }: NewSize, show) =>
    `Make the rails ${show.exact(size)} wide instead of ${show.exact(instead)}`,
  back: ({ shelf, size, instead }: NewSize & { readonly shelf: string }, show) =>
    `Set ${shelf} ${show.exact(size)} back instead of ${show.exact(instead)}`,
});

export const jointOffLoad: CarcassRule = {
  name: 'joint-off-load',
  severity: 'info',
  about: {
    what: 'A joint takes places of its own, though the shop shares one load of bits among its joints.',
    why: 'With `share-places` the bits are loaded once, for the usual depths and rails. Where that load would leave the front, the rear or a stretch between unheld, or would bore wood behind the last place, the joint is bored with bits of its own. The price is what that takes in set-ups and by the shop’s own times, beside the shared load.',
    remedy: 'Take the nearest depth, rail width or shelf setback that the load holds, or accept the price.',
    shop: 'habits: { share-places: yes }',
    example: 'kind: base\nwidth: 600\ndepth: 440',
  },
  check(context) {
    const { shared } = context.carcass.line;
    if (shared === null) return [];
    const off = jointsOffLoad(context.spec, context.carcass, context.shop);
    return grouped(off, ({ endPanel }) => sizeKeyOf(context, endPanel)).flatMap((joints) => {
      const groups = new Set(joints.map(({ id }) => id));
      const price = priceOf(context, groups);
      const [first] = joints;
      if (first === undefined || price === null) return [];
      const panels = distinct(joints.map(({ endPanel }) => endPanel));
      const { value } = sizeOf(context, joints);
      return [
        {
          place: value.written ? value.place : first.place,
          panel: first.endPanel,
          message: say.own({ panels, spindles: shared.load.map((k) => k + 1), ...price }),
          bores: boresOfGroups(context, groups),
          repairs: repairs(context, joints),
        },
      ];
    });
  },
};

/** Joints whose panels are as wide and stand as far back have the same cause. */
function sizeKeyOf(context: CarcassContext, key: string): string {
  const panel = panelOf(context, key);
  return panel === undefined ? key : `${panel.role === 'rail'} ${panel.width} ${panel.pose.origin.y}`;
}

/** What the operations that bore these joints take beside all others, carcass by carcass; null where they share their set-ups. */
function priceOf(context: CarcassContext, groups: ReadonlySet<string>): Pick<OffLoad, 'setUps' | 'seconds'> | null {
  const { operations } = context.operations;
  const isOff = ({ ways }: Operation): boolean =>
    ways.every(({ strokes }) => strokes.every(({ wanted }) => wanted.every(({ bore }) => groups.has(bore.group))));
  const all = context.alone.setUps;
  const rest = operations.filter((operation) => !isOff(operation));
  const others = setUpsOf([{ operations: rest, unreachable: [], count: 1 }], context.derived);
  const setUps = all.length - others.length;
  if (setUps <= 0) return null;
  const changing = (some: readonly BatchedSetUp[]): number =>
    secondsToChange(some, context.shop.changeover, all.length);
  return { setUps, seconds: Math.max(0, changing(all) - changing(others)) };
}

/** What one would change so that the load holds joints, and what it does to a panel. */
interface Size {
  readonly value: Located<Micrometres>;
  readonly path: Path;
  readonly title: (size: NewSize) => Message;
  readonly changed: (panel: Panel, by: Micrometres) => Panel;
}

/** The setback of the shelf whose joints they are, if it has one of its own; else the width of the rails, or the depth. */
function sizeOf(context: CarcassContext, joints: readonly Joint[]): Size {
  const { spec } = context;
  const ends = joints.map(({ endPanel }) => endPanel);
  const isEnd = ({ key }: Panel): boolean => ends.includes(key);
  const shelf = spec.fixedShelves.find(({ key }) => ends.every((end) => means(key, end)));
  if (shelf !== undefined && ownText(shelf.setback)) {
    return {
      value: shelf.setback,
      path: shelf.setback.path,
      title: (size) => say.back({ shelf: shelf.key, ...size }),
      changed: (panel, by) => (isEnd(panel) ? setBack(panel, by) : panel),
    };
  }
  if (ends.every((end) => panelOf(context, end)?.role === 'rail')) {
    const { railWidth: value } = spec;
    return {
      value,
      path: ['rail-width'],
      title: say.wide,
      changed: (panel, by) => (isEnd(panel) ? wider(panel, by) : panel),
    };
  }
  const isFace = ({ key }: Panel): boolean => joints.some(({ facePanel }) => facePanel === key);
  return {
    value: spec.depth,
    path: ['depth'],
    title: say.deep,
    changed: (panel, by) => (isEnd(panel) || isFace(panel) ? wider(panel, by) : panel),
  };
}

const wider = (panel: Panel, by: Micrometres): Panel => ({
  ...panel,
  width: panel.width + by,
  grooves: panel.grooves.map((groove) => ({ ...groove, from: groove.from + by, to: groove.to + by })),
});

function setBack(panel: Panel, by: Micrometres): Panel {
  const { origin } = panel.pose;
  return { ...panel, width: panel.width - by, pose: { ...panel.pose, origin: { ...origin, y: origin.y + by } } };
}

/** How far a size may be changed so that the load holds the joint. */
const MOST_CHANGED = 64;
const MILLIMETRE: Micrometres = 1000;

/** The nearest size above and below that the load holds, the nearer one first. */
function repairs(context: CarcassContext, joints: readonly Joint[]): readonly Repair[] {
  const { spec, carcass, shop } = context;
  const { value, path, title, changed } = sizeOf(context, joints);
  const instead = value.value;
  const holds = (by: Micrometres): boolean => {
    const panels = carcass.panels.map((panel) => changed(panel, by));
    return jointsOffLoad(spec, { ...carcass, panels, joints }, shop).length === 0;
  };
  const steps = Array.from({ length: MOST_CHANGED }, (_, index) => (index + 1) * MILLIMETRE);
  const nearest = [1, -1].flatMap((sign) => {
    const by = steps.map((step) => sign * step).find((step) => instead + step > 0 && holds(step));
    return by === undefined ? [] : [by];
  });
  return nearest
    .sort((a, b) => Math.abs(a) - Math.abs(b))
    .map((by, index) => ({
      title: title({ size: instead + by, instead }),
      changes: [setLength(context, path, instead + by)],
      preferred: index === 0,
    }));
}
