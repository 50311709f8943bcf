import type {
  MachineStepParams,
  MachineStepReply,
  StepAddress,
} from '../../shared-core/drawing/messages/machine-view.js';
import { machineScene } from '../../shared-core/drawing/machine-view/view.js';
import type { Plan } from '../../shared-core/machining/plan/plan.js';
import type { Plannable } from '../last-plans.js';
import { JobPlaces } from './diagnostics.js';

/** One stroke as the operator sees it, for the machine view. `plan` is of the plannable text. */
export function machineStep(
  { job: { document, analysis }, stale }: Plannable,
  plan: Plan,
  params: MachineStepParams,
): MachineStepReply {
  const { uri, version } = document;
  const address = addressOf(params);
  const nothing = (reason: string): MachineStepReply => ({ kind: 'nothing', uri, version, address, reason });
  const carcass = analysis.planned().find(({ name }) => name === address.carcass);
  const panel = carcass?.carcass?.panels.find(({ key }) => key === address.panel);
  if (!carcass?.carcass || !carcass.boring || panel === undefined)
    return nothing(`The job has no panel ${address.panel} in a carcass ${address.carcass} now.`);
  const drawn = {
    name: carcass.name,
    carcass: carcass.carcass,
    boring: carcass.boring,
    findings: [],
    // As the scales of the machine show them.
    unit: analysis.shop.unit,
  };
  const near = typeof params.nearer === 'number' && params.nearer >= 1 && params.nearer <= 64 ? params.nearer : 1;
  const setUps = plan.setUps.map(({ setUp }) => setUp);
  const scene = machineScene(drawn, { setUps, ...address }, near);
  if (scene === null)
    return nothing(
      `No set-up ${address.setUp} of this job bores ${address.carcass}, ${address.panel} in a step ${address.step + 1} now.`,
    );
  const index = analysis.carcasses.indexOf(carcass);
  const location = new JobPlaces(document, analysis).location(panel.place, index);
  const range = location?.uri === uri ? location.range : null;
  return { kind: 'step', uri, version, stale, address, scene, range };
}

/** What a client sent may be anything. */
function addressOf({ setUp, carcass, panel, step }: Readonly<Record<keyof StepAddress, unknown>>): StepAddress {
  const text = (value: unknown): string => (typeof value === 'string' ? value : '');
  const whole = typeof step === 'number' && Number.isInteger(step) && step >= 0 ? step : 0;
  return { setUp: text(setUp), carcass: text(carcass), panel: text(panel), step: whole };
}
