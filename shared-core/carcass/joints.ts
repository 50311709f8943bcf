import type { Box } from './box.js';
import { chosen, fittingNamed } from './choices.js';
import { overlaps } from './interval.js';
import type { Carcass, Joint, Panel } from './model.js';
import { extentsOf } from './pose.js';

interface Meeting {
  readonly end: Panel;
  readonly at: Joint['end'];
  readonly face: Panel;
  readonly on?: Joint['face'];
  readonly stagger?: boolean;
}

/** Every place where the end of one panel stands against the face of another. Backs, plinths and loose shelves have none. */
export function buildJoints(box: Box, panels: readonly Panel[], bays: Carcass['bays']): readonly Joint[] {
  const byKey = new Map(panels.map((panel) => [panel.key, panel]));
  const withRole = (role: Panel['role']): readonly Panel[] => panels.filter((panel) => panel.role === role);
  const [left, right, bottom] = [byKey.get('left')!, byKey.get('right')!, byKey.get('bottom')!];
  const top = byKey.get('top');
  const rails = withRole('rail');
  const shelves = withRole('fixed-shelf');

  const between = (panel: Panel): Meeting[] => [
    { end: panel, at: 'reference-end', face: left },
    { end: panel, at: 'far-end', face: right },
  ];
  const across = (panel: Panel, at: Joint['end']): Meeting[] => [left, right].map((end) => ({ end, at, face: panel }));

  const meetings: Meeting[] = [
    ...(box.spec.bottom.value === 'under' ? across(bottom, 'reference-end') : between(bottom)),
    ...(top === undefined ? [] : box.spec.top.value === 'over' ? across(top, 'far-end') : between(top)),
    ...rails.flatMap(between),
    ...withRole('divider').flatMap((divider): Meeting[] => [
      { end: divider, at: 'reference-end', face: bottom },
      ...(top === undefined ? rails : [top]).map((face): Meeting => ({ end: divider, at: 'far-end', face })),
    ]),
    ...shelves.flatMap((shelf): Meeting[] => {
      const bay = bays.findIndex(({ from }) => from === shelf.pose.origin.x);
      const stagger = isStaggered(shelf, bay, shelves, bays);
      const rightOf = byKey.get(bays[bay]!.right)!;
      return [
        { end: shelf, at: 'reference-end', face: byKey.get(bays[bay]!.left)!, stagger },
        { end: shelf, at: 'far-end', face: rightOf, on: rightOf.role === 'divider' ? 'outside' : 'inside', stagger },
      ];
    }),
  ];
  return meetings.map((meeting) => joint(box, meeting));
}

/**
 * Two shelves at one height would bore a divider from both faces at the same places, and the bores would meet inside it.
 * So the shelves of every second bay are staggered where a neighbour stands at their height.
 */
function isStaggered(shelf: Panel, bay: number, shelves: readonly Panel[], bays: Carcass['bays']): boolean {
  if (bay % 2 === 0) return false;
  const height = extentsOf(shelf).z;
  const beside = [bays[bay - 1]?.from, bays[bay + 1]?.from];
  return shelves.some((other) => beside.includes(other.pose.origin.x) && overlaps(extentsOf(other).z, height));
}

/** What one panel chooses as its joint holds for the other too, unless that one chooses for itself. */
function joint({ spec, shop }: Box, { end, at, face, on = 'inside', stagger = false }: Meeting): Joint {
  const [endOwn, faceOwn] = [chosen(spec, end.key, 'joint'), chosen(spec, face.key, 'joint')];
  return {
    id: `${end.key}/${face.key}`,
    facePanel: face.key,
    face: on,
    endPanel: end.key,
    end: at,
    fitting: fittingNamed(shop, (endOwn ?? faceOwn ?? spec.joint).value),
    faceFitting: fittingNamed(shop, (faceOwn ?? endOwn ?? spec.joint).value),
    stagger,
    place: end.place,
    path: end.path,
  };
}
