import type { Vec3 } from 'manifold-3d';
import type { Panel } from '../../shared-core/carcass/model.js';
import type { SetStop, SetUp, Step } from '../../shared-core/machining/set-up.js';
import { pointOf, type BitPath } from './solids.js';

/*
 * Where the bits of set-ups go into a panel, by the docstrings of set-ups and shops alone. The panel is a brick in the carcass:
 * it is turned about by quarters until the sides that a step names look where they have to, and pushed home by its corners.
 * Table frame: X to the operator's right, Y away from him, Z up; whole micrometres.
 */

type Side = Step['down'] | Step['edge'];
type Turn = (point: Vec3) => Vec3;

/** How far from the panel a bit comes, and how far off a mark stands before the side that it is for. */
const FAR = 10_000_000;

const aboutX: Turn = ([x, y, z]) => [x, -z, y];
const aboutY: Turn = ([x, y, z]) => [z, y, -x];
const aboutZ: Turn = ([x, y, z]) => [-y, x, z];
const times = (turn: Turn, count: number): Turn =>
  count === 0 ? (point) => point : (point) => turn(times(turn, count - 1)(point));
const QUARTERS = [0, 1, 2, 3];
/** Every chain of turns, with the one that undoes it. Turning makes no mirror image. */
const TURNS = QUARTERS.flatMap((x) =>
  QUARTERS.flatMap((y) =>
    QUARTERS.map((z) => {
      const there: Turn = (point) => times(aboutZ, z)(times(aboutY, y)(times(aboutX, x)(point)));
      const back: Turn = (point) =>
        times(aboutX, (4 - x) % 4)(times(aboutY, (4 - y) % 4)(times(aboutZ, (4 - z) % 4)(point)));
      return { there, back };
    }),
  ),
);

/** A mark far before a side of the panel, in the carcass. */
function markOf(panel: Panel, side: Side): Vec3 {
  const [u, v, t] = [panel.width / 2, panel.length / 2, panel.thickness / 2];
  switch (side) {
    case 'front':
      return pointOf(panel, [-FAR, v, t]);
    case 'back':
      return pointOf(panel, [FAR, v, t]);
    case 'reference-end':
      return pointOf(panel, [u, -FAR, t]);
    case 'far-end':
      return pointOf(panel, [u, FAR, t]);
    case 'outside':
      return pointOf(panel, [u, v, -FAR]);
    case 'inside':
      return pointOf(panel, [u, v, FAR]);
  }
}

const cornersOf = (panel: Panel): readonly Vec3[] =>
  [0, panel.width].flatMap((u) =>
    [0, panel.length].flatMap((v) => [0, panel.thickness].map((t) => pointOf(panel, [u, v, t]))),
  );

/** The axis along which a point lies furthest off, and on which side. */
function furthest(point: Vec3): string {
  const axis = [0, 1, 2].reduce((a, b) => (Math.abs(point[b]!) > Math.abs(point[a]!) ? b : a));
  return `${point[axis]! < 0 ? '-' : '+'}${'xyz'[axis]}`;
}

const isAtFar = ({ machine }: SetUp): boolean =>
  machine.kind === 'cup' || machine.kind === 'horizontal' || machine.fence === 'far';

/** The way that each of the three sides which a step names has to look. */
function looks(setUp: SetUp, { down, edge, end }: Step, { side }: SetStop): readonly (readonly [Side, string])[] {
  const toStop = side === 'left' ? '-x' : '+x';
  if (setUp.machine.kind === 'horizontal') return [[down, '-z'], [edge, toStop], [end, '+y']]; // prettier-ignore
  return [[down, '-z'], [edge, isAtFar(setUp) ? '+y' : '-y'], [end, toStop]]; // prettier-ignore
}

/** From where and to where a bit goes, on the table. */
function bitOnTable(setUp: SetUp, head: number, spindle: number, thickness: number): readonly [Vec3, Vec3] {
  const { machine, fence, height, depth } = setUp;
  if (machine.kind === 'horizontal') {
    const x = spindle * machine.pitch;
    return [[x, FAR, height!], [x, -depth, height!]]; // prettier-ignore
  }
  const away = fence[head]! + (machine.kind === 'vertical' ? spindle * machine.pitch : 0);
  const [x, y] = [machine.kind === 'line' ? spindle * machine.pitch : 0, isAtFar(setUp) ? -away : away];
  if (machine.kind !== 'cup' && machine.from === 'below') return [[x, y, -FAR], [x, y, depth]]; // prettier-ignore
  return [[x, y, FAR], [x, y, (setUp.thickness ?? thickness) - depth]]; // prettier-ignore
}

function bitsOfStep(setUp: SetUp, step: Step, panel: Panel): readonly BitPath[] {
  const { machine } = setUp;
  const stop = setUp.stops.find(({ name }) => name === step.stop)!;
  const wanted = looks(setUp, step, stop);
  const middle = pointOf(panel, [panel.width / 2, panel.length / 2, panel.thickness / 2]);
  const fromMiddle = (side: Side): Vec3 => markOf(panel, side).map((at, axis) => at - middle[axis]!) as Vec3;
  const { there, back } = TURNS.find((turn) =>
    wanted.every(([side, way]) => furthest(turn.there(fromMiddle(side))) === way),
  )!;
  const corners = cornersOf(panel).map(there);
  const reach = (axis: number, side: 'min' | 'max'): number => Math[side](...corners.map((corner) => corner[axis]!));
  const line = machine.kind === 'line' || machine.kind === 'horizontal' ? (machine.spindles - 1) * machine.pitch : 0;
  const shift: Vec3 = [
    step.moved + (stop.side === 'left' ? -stop.position - reach(0, 'min') : line + stop.position - reach(0, 'max')),
    isAtFar(setUp) ? -reach(1, 'max') : -reach(1, 'min'),
    -reach(2, 'min'),
  ];
  const inCarcass = (point: Vec3): Vec3 => back(point.map((at, axis) => at - shift[axis]!) as Vec3);
  return step.spindles.map(({ head, spindle, diameter }) => {
    const [from, to] = bitOnTable(setUp, head, spindle, panel.thickness);
    return { from: inCarcass(from), to: inCarcass(to), diameter };
  });
}

/** The paths of all bits that come down on a panel, as it stands in its carcass. */
export function bitsInto(panel: Panel, carcass: string, setUps: readonly SetUp[]): readonly BitPath[] {
  return setUps.flatMap((setUp) =>
    setUp.runs
      .filter((run) => run.carcass === carcass && run.panel === panel.key)
      .flatMap(({ steps }) => steps.flatMap((step) => bitsOfStep(setUp, step, panel))),
  );
}
