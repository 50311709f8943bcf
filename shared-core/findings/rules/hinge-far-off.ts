import { overlaps, type Interval } from '../../carcass/interval.js';
import type { Panel } from '../../carcass/model.js';
import { extentsOf } from '../../carcass/pose.js';
import type { HungDoor, HungHinge } from '../../hung/model.js';
import { half, type Micrometres } from '../../length/units.js';
import { listed, verb } from '../../words/english.js';
import { messages, type Message } from '../../words/message.js';
import { distinct, grouped, panelOf } from '../lookups.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';

interface FarOff {
  readonly doors: readonly string[];
  readonly distance: Micrometres;
  readonly usual: Micrometres;
  /** What is in the room of hinges where they would usually be; none where the pitch has no places there. */
  readonly others: readonly string[];
  /** So much clear height always holds a hinge on the pitch. */
  readonly room: Micrometres;
}

export const say = messages('hinge-far-off', {
  fromEnd: ({ doors, end, distance, usual, others, room }: FarOff & { readonly end: 'top' | 'bottom' }, show) =>
    [
      `The ${end} ${verb(doors.length, 'hinge', 'hinges')} of ${listed(doors)} ${verb(doors.length, 'stands', 'stand')} ${show.length(distance)} from the ${end} end, where ${show.length(usual)} is usual (\`hinge-end\`).`,
      others.length === 0
        ? 'The pitch has no place nearer to it. Begin the rows nearer to the end (`row-offset`).'
        : `${listed(others)} ${verb(others.length, 'is', 'are')} in the way nearer to it. Leave ${show.length(room)} of height clear there: that holds a hinge wherever the pitch is.`,
    ].join(' '),
  apart: ({ doors, distance, usual, others, room, below }: FarOff & { readonly below: Micrometres }, show) =>
    [
      `Above the hinge that is ${show.length(below)} from the bottom end of ${listed(doors)}, the next one comes after ${show.length(distance)}, where ${show.length(usual)} would be even.`,
      ...(others.length === 0
        ? []
        : [`${listed(others)} ${verb(others.length, 'is', 'are')} in the way between them.`]),
      `Leave ${show.length(room)} of height clear there: that holds a hinge wherever the pitch is.`,
    ].join(' '),
});

/** By how much of the even spacing an outer hinge may be moved, and a spacing may be longer: common practice, no source. */
const MOST_MOVED = 1 / 4;
const MOST_LONGER = 1 / 2;

export const hingeFarOff: CarcassRule = {
  name: 'hinge-far-off',
  severity: 'warning',
  about: {
    what: 'A hinge stands far from its usual place, so that much of the door hangs free.',
    why: 'A hinge gives way to what stands in its room, and may find the next room far away. A door that hangs free over much of its height warps, and its hinges carry more than their share. An outer hinge may be moved by a quarter of the spacing that hinges have where nothing is in their way, a spacing be longer by half of that, and either by two pitches, which is what one shelf asks for (common practice, no source).',
    remedy: 'Move the shelf that the message names, or have fewer shelves there.',
    example: 'kind: base\nwidth: 600\nloose-shelves: [328, 424, 520, 616]\ndoors: left',
  },
  check(context) {
    const far = context.boring.hung
      // What stands in the room of something, or is not there at all, is told by `hinge-without-room`.
      .filter(({ wanted, hinges }) => hinges.length === wanted && hinges.every(({ meets }) => meets === null))
      .flatMap((hung) => farIn(context, hung));
    return grouped(far, ({ place, identity }) => [place.part, place.start, identity].join(' ')).map((same): Found => {
      const { place, panel, told } = same[0]!;
      return {
        place,
        panel,
        message: told(same.map((one) => one.panel)),
        bores: same.flatMap((one) => one.bores),
      };
    });
  },
};

/** One thing that is far off on one door. */
interface Far extends Pick<Found, 'place'> {
  readonly panel: string;
  readonly bores: readonly string[];
  /** What doors have to have in common for one finding to tell of them. */
  readonly identity: string;
  readonly told: (doors: readonly string[]) => Message;
}

/** What is far off on a door: its outer hinges from its ends, and neighbours from each other, from the bottom up. */
function farIn(context: CarcassContext, { door, hinge, hinges }: HungDoor): readonly Far[] {
  const { hingeEnd, pitch } = context.shop.habits;
  const even = Math.round(Math.max(0, door.length - 2 * hingeEnd) / (hinges.length - 1));
  const far = ({ at, pushed, distance, usual, more, between, told }: Looked): readonly Far[] => {
    if (distance <= usual + Math.max(more * even, 2 * pitch)) return [];
    const pushing = distinct(pushed.flatMap(({ gaveWayTo }) => gaveWayTo)).filter((key) => {
      if (hinges.some(({ id }) => id === key)) return false;
      const panel = panelOf(context, key);
      return panel === undefined || overlaps(extentsOf(panel).z, between);
    });
    const first = pushing.map((key) => panelOf(context, key)).find((panel) => panel !== undefined);
    const others = inOrderOf(context.carcass.panels, pushing);
    return [
      {
        place: (first ?? door).place,
        panel: door.key,
        bores: context.boring.bores.filter(({ group }) => at.some(({ id }) => id === group)).map(({ id }) => id),
        identity: [...at.map(({ cup }) => cup.v), ...others].join(' '),
        told: (doors) => told({ doors, distance, usual, others, room: hinge.bodyHeight + pitch }),
      },
    ];
  };
  const [lowest, highest] = [hinges[0]!, hinges.at(-1)!];
  const foot = lowest.z - lowest.cup.v;
  const beside = half(hinge.bodyHeight);
  const outer = { usual: hingeEnd, more: MOST_MOVED } as const;
  return [
    ...far({
      ...outer,
      at: [lowest],
      pushed: [lowest],
      distance: lowest.cup.v,
      between: { from: foot + hingeEnd - beside, to: lowest.z },
      told: (told) => say.fromEnd({ ...told, end: 'bottom' }),
    }),
    ...hinges.slice(1).flatMap((upper, i) => {
      const lower = hinges[i]!;
      return far({
        usual: even,
        more: MOST_LONGER,
        at: [lower, upper],
        pushed: hinges,
        distance: upper.z - lower.z,
        between: { from: lower.z, to: upper.z },
        told: (told) => say.apart({ ...told, below: lower.cup.v }),
      });
    }),
    ...far({
      ...outer,
      at: [highest],
      pushed: [highest],
      distance: door.length - highest.cup.v,
      between: { from: highest.z, to: foot + door.length - hingeEnd + beside },
      told: (told) => say.fromEnd({ ...told, end: 'top' }),
    }),
  ];
}

/** One distance that is looked at. */
interface Looked extends Pick<FarOff, 'distance' | 'usual'> {
  readonly at: readonly HungHinge[];
  /** The hinges that would stand there, were nothing in their way. */
  readonly pushed: readonly HungHinge[];
  /** How much more is let pass, in even spacings. */
  readonly more: number;
  /** The heights where they would stand, in the carcass frame. */
  readonly between: Interval;
  readonly told: (far: FarOff) => Message;
}

/** Keys in the order of the panels that they are of; what is no panel comes last. */
function inOrderOf(panels: readonly Panel[], keys: readonly string[]): readonly string[] {
  const ofPanels = panels.filter(({ key }) => keys.includes(key)).map(({ key }) => key);
  return distinct([...ofPanels, ...keys]);
}
