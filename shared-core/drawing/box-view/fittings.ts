import { boreAxis } from '../../boring/axis.js';
import { matings, type Mate } from '../../boring/matings.js';
import type { Bore } from '../../boring/model.js';
import type { Panel, Point3 } from '../../carcass/model.js';
import { opposite, UNIT, type Extents } from '../../carcass/pose.js';
import { kindOf, type Fitting } from '../../fittings/kinds.js';
import type { BorePurpose } from '../../fittings/names.js';
import { PURPOSES, purposeOf } from '../../fittings/purposes.js';
import type { HungDoor } from '../../hung/model.js';
import type { Micrometres } from '../../length/units.js';
import { asItIs } from '../../words/told.js';
import type { Drawn } from '../drawn.js';
import type { BoxFitting } from './scene.js';

/** What holds the carcass together, and what its doors hang on and are opened by, what it hangs by or stands on itself, what its still fronts are screwed on with, and what clothes hang on. */
export function fittingsOf(drawn: Drawn): readonly BoxFitting[] {
  const panels = new Map(drawn.carcass.panels.map((panel) => [panel.key, panel]));
  return [
    ...inJoints(drawn, panels),
    ...drawn.boring.hung.flatMap((door) => ofHinges(door, drawn.boring.bores)),
    ...drawn.boring.pulls.map(({ id, front, pull, body }) => roomOn(front, 'pull', id, pull.name, body)),
    ...drawn.boring.brackets.map(({ id, side, bracket, body }) => roomOn(side, 'bracket', id, bracket.name, body)),
    ...drawn.boring.feet.map(({ key, foot, bottom, body }) => roomOn(bottom, 'foot', key, foot.name, body)),
    ...drawn.boring.angles.map(({ id, on, angle, body }) => roomOn(on, 'angle', id, angle.name, body)),
    ...drawn.boring.wardrobeRails.map(({ key, sockets, rail, body }) =>
      roomOn(sockets[0]!.upright, 'rail-socket', key, rail.name, body),
    ),
  ];
}

function inJoints(drawn: Drawn, panels: ReadonlyMap<string, Panel>): readonly BoxFitting[] {
  const { carcass, boring } = drawn;
  const mated = new Set<string>();
  const standing = matings(carcass, boring).flatMap(({ joint, mates }) =>
    mates.map((mate) => {
      mated.add(mate.face.id).add(mate.end.id);
      return inBoth(joint.fitting, mate, panels.get(mate.end.panel)!);
    }),
  );
  const joints = new Set(carcass.joints.map(({ id }) => id));
  // What is let into a bore of its own, such as the cam that draws a bolt, fills it.
  const letIn = boring.bores.filter(
    (bore) =>
      joints.has(bore.group) && bore.fitting !== null && purposeOf(bore).mate === null && bore.purpose !== 'spare',
  );
  return [...standing, ...letIn.map((bore) => filling(bore, panels.get(bore.panel)!))];
}

/**
 * What stands in two bores that meet: as long as the fitting is, with the same play at both of its ends; where its length
 * in them is not told, as long as they are deep.
 */
function inBoth(fitting: Fitting, { face, end, depthSum }: Mate, panel: Panel): BoxFitting {
  const { entry, direction } = boreAxis(panel, end);
  const told = end.fitting === fitting.name ? kindOf(fitting).joint.lengthInBoth(fitting) : null;
  const long = told ?? depthSum;
  const play = Math.floor((depthSum - long) / 2);
  return {
    key: `${end.id}+${face.id}`,
    called: asItIs(end.fitting ?? fitting.name),
    on: end.panel,
    ink: purposeOf(end).ink,
    solid: {
      kind: 'cylinder',
      from: along(entry, opposite(direction), face.depth - play),
      along: direction,
      length: long,
      diameter: Math.min(face.diameter, end.diameter),
    },
  };
}

function filling(bore: Bore, panel: Panel): BoxFitting {
  const { entry, direction, length } = boreAxis(panel, bore);
  return {
    key: bore.id,
    called: asItIs(bore.fitting ?? ''),
    on: bore.panel,
    ink: purposeOf(bore).ink,
    solid: { kind: 'cylinder', from: entry, along: direction, length, diameter: bore.diameter },
  };
}

/** Of each hinge the cup, which goes with the door, and the room that hinge and plate need beside the upright. */
function ofHinges({ door, upright, hinge, hinges }: HungDoor, bores: readonly Bore[]): readonly BoxFitting[] {
  return hinges.flatMap(({ id, body }): readonly BoxFitting[] => {
    const cups = bores.filter(({ panel, group, purpose }) => panel === door.key && group === id && purpose === 'cup');
    const room: BoxFitting = {
      key: id,
      called: asItIs(hinge.name),
      on: upright.key,
      ink: PURPOSES.plate.ink,
      solid: { kind: 'room', extents: body },
    };
    return [...cups.map((cup) => filling(cup, door)), room];
  });
}

/** The room of what is screwed to a panel, which goes with it. */
function roomOn(panel: Panel, purpose: BorePurpose, key: string, name: string, extents: Extents): BoxFitting {
  return { key, called: asItIs(name), on: panel.key, ink: PURPOSES[purpose].ink, solid: { kind: 'room', extents } };
}

function along({ x, y, z }: Point3, axis: keyof typeof UNIT, by: Micrometres): Point3 {
  const step = UNIT[axis];
  return { x: x + step.x * by, y: y + step.y * by, z: z + step.z * by };
}
