import { jointsOffLoad } from '../../boring/off-load.js';
import type { Joint } from '../../carcass/model.js';
import type { Micrometres } from '../../length/units.js';
import { bestOrder, orderTask } from '../../machining/plan/plan.js';
import type { Operation } from '../../machining/plan/operation.js';
import { setUpsOf } from '../../machining/plan/set-ups.js';
import { counted, listed } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { timeWords } from '../../words/time.js';
import { setLength } from '../changes.js';
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
});

export const jointOffLoad: CarcassRule = {
  name: 'joint-off-load',
  severity: 'info',
  about: {
    what: 'A joint takes places of its own, though the shop shares one load of bits among its joints.',
    why: 'With `share-places` the bits are loaded once, for the usual depths and rails. Where that load would leave the front, the rear or a stretch between unheld, or would bore wood behind the last place, the joint is bored with bits of its own. The price is what that takes in set-ups and by the shop’s own times, beside the shared load.',
    remedy: 'Take the nearest depth or rail width that the load holds, or accept the price.',
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
      const { railWidth, depth } = context.spec;
      const size = panelOf(context, first.endPanel)?.role === 'rail' ? railWidth : depth;
      return [
        {
          place: size.written ? size.place : first.place,
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
  const all = workOf(context, operations);
  const others = workOf(
    context,
    operations.filter((operation) => !isOff(operation)),
  );
  const setUps = all.setUps - others.setUps;
  return setUps > 0 ? { setUps, seconds: Math.max(0, all.seconds - others.seconds) } : null;
}

/** Of more set-ups than this the order in which they come has to do: an editor asks at every key. */
const MOST_ORDERED = 8;

function workOf(
  { shop, derived }: CarcassContext,
  operations: readonly Operation[],
): Pick<OffLoad, 'setUps' | 'seconds'> {
  const sheets = setUpsOf([{ operations, unreachable: [], count: 1 }], derived);
  const task = orderTask(sheets.length > MOST_ORDERED ? sheets.slice(0, MOST_ORDERED) : sheets, shop.changeover);
  return { setUps: sheets.length, seconds: bestOrder(task).cost };
}

/** How far a size may be changed so that the load holds the joint. */
const MOST_CHANGED = 64;
const MILLIMETRE: Micrometres = 1000;

/** The nearest size above and below that the load holds, the nearer one first. */
function repairs(context: CarcassContext, joints: readonly Joint[]): readonly Repair[] {
  const { spec, carcass, shop } = context;
  const isRail = joints.every(({ endPanel }) => panelOf(context, endPanel)?.role === 'rail');
  const { value: instead } = isRail ? spec.railWidth : spec.depth;
  const holds = (by: Micrometres): boolean => {
    const wider = joints.map(({ endPanel }) => endPanel);
    const panels = carcass.panels.map((panel) =>
      wider.includes(panel.key) || (!isRail && joints.some(({ facePanel }) => facePanel === panel.key))
        ? {
            ...panel,
            width: panel.width + by,
            grooves: panel.grooves.map((groove) => ({ ...groove, from: groove.from + by, to: groove.to + by })),
          }
        : panel,
    );
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
      title: (isRail ? say.wide : say.deep)({ size: instead + by, instead }),
      changes: [setLength(context, [isRail ? 'rail-width' : 'depth'], instead + by)],
      preferred: index === 0,
    }));
}
