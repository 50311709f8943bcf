import { SORTS_OF_FITTING } from '../fittings/kinds.js';
import type { CarcassSpec } from './spec.js';
import type { Unit } from '../length/units.js';
import type { Shop } from '../shop/model.js';
import { measureBox } from './box.js';
import { buildJoints } from './joints.js';
import { layOut } from './layout.js';
import type { Carcass } from './model.js';
import { makePanel } from './panel.js';
import { Problems, type Problem } from './problems.js';
import { ROLES, type PanelRole } from './roles.js';
import { Standing } from './standing.js';

/**
 * From the job's words to panels that stand in the carcass frame, with sizes, bands, grooves, bays and joints.
 * Lengths in micrometres, exact. Sizes that cannot be come back as problems, with figures in `unit`; a part that cannot
 * stand is then left out, and the carcass is null only where there is no box to put anything in. Never throws.
 */
export function buildCarcass(
  spec: CarcassSpec,
  shop: Shop,
  unit: Unit = 'mm',
): { readonly carcass: Carcass | null; readonly problems: readonly Problem[] } {
  const problems = new Problems(unit);
  if (shop.boards.size === 0) problems.add(spec.board, 'The shop has no boards. Add one to the shop file.');
  if (shop.fittings.size === 0)
    problems.add(spec.joint, `The shop has nothing to join panels with. Add a ${SORTS_OF_FITTING} to the shop file.`);
  if (problems.found.length > 0) return { carcass: null, problems: problems.found };

  const box = measureBox(spec, shop, problems);
  if (box === null) return { carcass: null, problems: problems.found };

  const layout = layOut(box, problems);
  const panels = (Object.keys(ROLES) as PanelRole[]).flatMap((role) =>
    ROLES[role].outlines(layout).map((outline) => makePanel(box, role, outline)),
  );

  for (const panel of panels)
    if (panel.cutWidth <= 0 || panel.cutLength <= 0) {
      const { show } = problems;
      problems.add(
        panel,
        `${panel.key} is ${show(panel.length)} by ${show(panel.width)}; its bands leave nothing of it to cut. Make it larger or its bands thinner.`,
      );
    }
  const { bays } = layout;
  const joints = buildJoints(new Standing(spec, panels, bays), shop);
  return {
    carcass: { count: spec.count.value, panels, joints, bays, back: box.back?.how ?? 'none' },
    problems: problems.found,
  };
}
