import { Derived } from '../derived/derived.js';
import { SORTS_OF_FITTING } from '../fittings/kinds.js';
import type { CarcassSpec } from './spec.js';
import type { Shop } from '../shop/model.js';
import { measureBox } from './box.js';
import { buildJoints } from './joints.js';
import { layOut } from './layout.js';
import { say } from './messages.js';
import type { Carcass, PanelRole } from './model.js';
import { makePanel } from './panel.js';
import { Problems, type Problem } from './problems.js';
import { ROLES } from './roles.js';
import { spindleLine } from './spindle-line.js';
import { Standing } from './standing.js';

/**
 * From the job's words to panels that stand in the carcass frame, with sizes, bands, grooves, bays and joints.
 * Lengths in micrometres, exact. Sizes that cannot be come back as problems; a part that cannot
 * stand is then left out, and the carcass is null only where there is no box to put anything in. Never throws.
 */
export function buildCarcass(
  spec: CarcassSpec,
  shop: Shop,
  derived: Derived = new Derived(),
): { readonly carcass: Carcass | null; readonly problems: readonly Problem[] } {
  const problems = new Problems();
  if (shop.boards.size === 0) problems.add(spec.board, say.noBoards());
  if (shop.fittings.size === 0) problems.add(spec.joint, say.noFittings({ sorts: SORTS_OF_FITTING }));
  if (problems.found.length > 0) return { carcass: null, problems: problems.found };

  const box = measureBox(spec, shop, problems);
  if (box === null) return { carcass: null, problems: problems.found };

  const line = spindleLine(spec, shop, derived);
  const layout = layOut(box, line, problems);
  const panels = (Object.keys(ROLES) as PanelRole[]).flatMap((role) =>
    ROLES[role].outlines(layout).map((outline) => makePanel(box, role, outline)),
  );

  for (const panel of panels)
    if (panel.cutWidth <= 0 || panel.cutLength <= 0) {
      problems.add(panel, say.nothingToCut({ panel: panel.key, length: panel.length, width: panel.width }));
    }
  const { bays, appliances } = layout;
  const joints = buildJoints(new Standing(spec, panels, bays), shop);
  const doors = layout.doors.map(({ key, hung, upright }) => ({ key, hung, upright }));
  const drawers = layout.drawers.map(({ key, slide, length, left, right, line: at, behind, cause }) => {
    return { key, slide, length, left, right, line: at, behind, place: cause.place, path: cause.path };
  });
  const back = box.back?.how ?? 'none';
  return {
    carcass: {
      count: spec.count.value,
      panels,
      joints,
      bays,
      doors,
      drawers,
      appliances,
      back,
      line,
      diagonal: box.diagonal,
    },
    problems: problems.found,
  };
}
