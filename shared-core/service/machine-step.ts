import { tell, type Message } from '../words/message.js';
import { say } from './messages.js';
import type { MachineStepParams, MachineStepReply, StepAddress } from '../drawing/messages/machine-view.js';
import { machineScene } from '../drawing/machine-view/view.js';
import type { Plan } from '../machining/plan/plan.js';
import type { JobAnalysis } from '../engine.js';
import type { DrawnDocument } from './drawing.js';
import { inJob } from './file.js';

/**
 * One stroke as the operator sees it, for the machine view. `plan` is of the analysis.
 * @param stale why the analysis is not of the present text; null where it is
 */
export function drawStep(
  analysis: JobAnalysis,
  { uri, version, toRange }: DrawnDocument,
  plan: Plan,
  params: MachineStepParams,
  stale: string | null,
): MachineStepReply {
  const address = addressOf(params);
  const nothing = (why: Message): MachineStepReply => ({
    kind: 'nothing',
    uri,
    version,
    address,
    reason: tell(why, analysis.reader),
  });
  const carcass = analysis.planned().find(({ name }) => name === address.carcass);
  const panel = carcass?.carcass?.panels.find(({ key }) => key === address.panel);
  if (!carcass?.carcass || !carcass.boring || panel === undefined)
    return nothing(say.noPanelNow({ carcass: address.carcass, panel: address.panel }));
  const drawn = {
    name: carcass.name,
    carcass: carcass.carcass,
    boring: carcass.boring,
    findings: [],
    // As the scales of the machine show them.
    reader: analysis.shopReader,
  };
  const near = typeof params.nearer === 'number' && params.nearer >= 1 && params.nearer <= 64 ? params.nearer : 1;
  const setUps = plan.setUps.map(({ setUp }) => setUp);
  const scene = machineScene(drawn, { setUps, ...address }, near);
  if (scene === null) return nothing(say.noStepNow({ ...address, step: address.step + 1 }));
  const index = analysis.carcasses.indexOf(carcass);
  const span = inJob(analysis, panel.place, index);
  const range = span === null ? null : toRange(span.start, span.end);
  return { kind: 'step', uri, version, stale, address, scene, range };
}

/** What a client sent may be anything. */
function addressOf({ setUp, carcass, panel, step }: Readonly<Record<keyof StepAddress, unknown>>): StepAddress {
  const text = (value: unknown): string => (typeof value === 'string' ? value : '');
  const whole = typeof step === 'number' && Number.isInteger(step) && step >= 0 ? step : 0;
  return { setUp: text(setUp), carcass: text(carcass), panel: text(panel), step: whole };
}
