import { isFace } from '../../boring/surface.js';
import { Derived } from '../../derived/derived.js';
import type { Bore, BoreMap } from '../../boring/model.js';
import type { Carcass, Joint, Panel } from '../../carcass/model.js';
import { runsAlong } from '../../carcass/panel.js';
import { purposeOf } from '../../fittings/purposes.js';
import type { CarcassSpec } from '../../carcass/spec.js';
import { KIND_FOR_USE } from '../../shop/habits.js';
import type { Machine, Shop } from '../../shop/model.js';
import { blankOf } from '../blank.js';
import type { Blank } from '../set-up.js';
import { cupOperations } from './cup-operations.js';
import { endOperations } from './end-operations.js';
import { faceOperations } from './face-operations.js';
import { standsAlone } from './batch.js';
import type { Found, Obstacle } from './lines.js';
import { say } from './messages.js';
import { groupBy } from './numbers.js';
import { within } from '../../schema/in-span.js';
import type { BoringMachine, Operation, Unreachable } from './operation.js';
import { rowOperations } from './row-operations.js';

export interface CarcassOperations {
  readonly operations: readonly Operation[];
  readonly unreachable: readonly Unreachable[];
  /** How many equal carcasses are made. */
  readonly count: number;
}

type Task = 'faces' | 'ends' | 'rows' | 'cups';

/**
 * All operations of one carcass, in the order of its panels, and the bores that its machines cannot make. It depends on
 * nothing outside the carcass and the shop, so it is computed anew only for a carcass that changed.
 */
export function operationsOf(
  name: string,
  spec: CarcassSpec,
  carcass: Carcass,
  boring: BoreMap,
  shop: Shop,
  derived = new Derived(),
): CarcassOperations {
  const operations: Operation[] = [];
  const unreachable: Unreachable[] = [];
  const boresOf = groupBy(boring.bores, (bore) => bore.panel);
  const alongPanel = jointsAlong(carcass);
  for (const panel of carcass.panels) {
    const blank = blankOf(panel);
    const all = boresOf.get(panel.key) ?? [];
    const astray = all.filter((bore) => !isInWood(panel, bore));
    if (astray.length > 0) {
      const reason = say.outsidePanel();
      unreachable.push({ panel: panel.key, bores: astray, machine: null, parameter: null, needed: null, reason });
    }
    const tasks = groupBy(
      all.filter((bore) => !astray.includes(bore)),
      taskOf,
    );
    for (const [task, bores] of tasks) {
      const machine = machineFor(task, spec, shop);
      if (!machine) {
        const reason = say.noMachine({ kind: KIND_FOR_USE[task] });
        unreachable.push({ panel: panel.key, bores, machine: null, parameter: 'machines', needed: null, reason });
        continue;
      }
      const misfit = outOfRange(panel, machine);
      const bits = shop.bits;
      const noBit = bits && bores.find((bore) => !bits.includes(bore.diameter));
      if (misfit) {
        unreachable.push({ panel: panel.key, bores, machine: machine.name, ...misfit });
        continue;
      }
      if (noBit) {
        const reason = say.noBit({ bit: noBit.diameter });
        unreachable.push({
          panel: panel.key,
          bores,
          machine: machine.name,
          parameter: 'bits',
          needed: noBit.diameter,
          reason,
        });
        continue;
      }
      const found = onMachine(name, panel, blank, bores, alongPanel, machine, boring, shop, derived);
      unreachable.push(...found.unreachable);
      for (const operation of found.operations) {
        if (standsAlone(operation)) operations.push(operation);
        else unreachable.push(heldUp(operation));
      }
    }
  }
  return { operations, unreachable, count: carcass.count };
}

/** Ids of the joints whose bores in the face run along the panel of that, not across it. */
function jointsAlong({ panels, joints }: Carcass): ReadonlySet<string> {
  const byKey = new Map(panels.map((panel) => [panel.key, panel]));
  const isAlong = ({ endPanel, facePanel }: Joint): boolean => runsAlong(byKey.get(facePanel)!, byKey.get(endPanel)!);
  return new Set(joints.filter(isAlong).map(({ id }) => id));
}

/** Whether a bore's centre stands on the surface that it enters, and its end where it says. */
function isInWood({ length, width, thickness }: Panel, { face, u, v, depth, through }: Bore): boolean {
  const inFace = isFace(face);
  const [extent, deep] = inFace ? [length, thickness] : [thickness, length];
  return u > 0 && u < width && v > 0 && v < extent && (through ? inFace : depth < deep);
}

/** The use of machines that a bore asks for. */
export function taskOf(bore: Bore): Task {
  return purposeOf(bore).machine ?? (isFace(bore.face) ? 'faces' : 'ends');
}

/** The machine that the carcass asks for, else the shop's usual one, else the first of its kind. */
function machineFor(task: Task, spec: CarcassSpec, shop: Shop): BoringMachine | null {
  const asked = task === 'cups' ? null : spec.machines[task];
  const named = asked?.value ?? shop.habits.machines[task];
  const isRight = (machine: Machine | undefined): machine is BoringMachine => machine?.kind === KIND_FOR_USE[task];
  const machine = named === null ? undefined : shop.machines.get(named);
  return isRight(machine) ? machine : ([...shop.machines.values()].find(isRight) ?? null);
}

/** An operation whose stop cannot be lowered for the index move that follows. */
function heldUp({ panel, machine, ways }: Operation): Unreachable {
  const bores = ways[0]?.strokes.flatMap((stroke) => stroke.wanted.map(({ bore }) => bore)) ?? [];
  const reason = say.stopHeld({ machine: machine.name });
  return { panel, bores, machine: machine.name, parameter: 'lowers', needed: null, reason };
}

function outOfRange(panel: Panel, { name, panel: ranges }: BoringMachine): Obstacle | null {
  for (const measure of ['length', 'width', 'thickness'] as const) {
    const range = ranges[measure];
    const needed = panel[measure];
    if (range && !within(needed, range)) {
      return { parameter: 'panel', needed, reason: say.panelSize({ machine: name, measure, range, needed }) };
    }
  }
  return null;
}

function onMachine(
  carcass: string,
  panel: Panel,
  blank: Blank,
  bores: readonly Bore[],
  alongPanel: ReadonlySet<string>,
  machine: BoringMachine,
  boring: BoreMap,
  shop: Shop,
  derived: Derived,
): Found {
  switch (machine.kind) {
    case 'vertical':
      return faceOperations(
        carcass,
        panel,
        blank,
        bores,
        alongPanel,
        machine,
        shop.habits.firstDowel,
        shop.habits.throughAllowance,
      );
    case 'horizontal':
      return endOperations(carcass, panel, blank, bores, machine, shop.habits.firstDowel);
    case 'line':
      return rowOperations(
        carcass,
        panel,
        blank,
        bores,
        boring.rows.filter((row) => row.panel === panel.key),
        machine,
        shop.habits.setback,
        shop.habits.throughAllowance,
        derived,
      );
    case 'cup':
      return cupOperations(carcass, panel, blank, bores, machine);
  }
}
