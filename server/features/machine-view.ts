import { drawStep, type MachineStepParams, type MachineStepReply, type Plan } from '../../shared-core/service.js';
import type { Plannable } from '../last-plans.js';
import { shownIn } from '../text.js';

/** One stroke as the operator sees it, for the machine view. `plan` is of the plannable text. */
export function machineStep({ job, stale }: Plannable, plan: Plan, params: MachineStepParams): MachineStepReply {
  return drawStep(job.analysis, shownIn(job.document), plan, params, stale);
}
