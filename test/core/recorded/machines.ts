import type { JobAnalysis } from '../../../shared-core/engine.js';
import type { SetUp } from '../../../shared-core/machining/set-up.js';
import {
  carcassTotals,
  drawStep,
  jointsOf,
  listSetUps,
  panelsOf,
  planTotals,
  replayedPlan,
} from '../../../shared-core/service.js';
import type { OrderTask, SetUpOrder } from '../../../shared-core/service.js';
import { unboredHoles } from '../../../shared-core/service/set-ups.js';
import { toleranceOf } from '../../../shared-core/tolerance/tolerance.js';
import { digest, flat, under } from './flat.js';
import { shown } from './shown.js';

/** Operations, set-ups in the order that they come in with every stroke of them, and what comes out at the joints. */
export async function machines(job: JobAnalysis): Promise<readonly string[]> {
  const plan = await job.planBy(asTheyCome);
  const replayed = replayedPlan(job);
  const { setUps, ...totals } = plan;
  const listed = listSetUps({ kind: 'job', analysis: job }, shown(job), plan, null);
  return [
    ...under('totals', [
      ...carcassTotals(job).map(flat),
      ...Object.entries(totals).map(([key, value]) => `${key}: ${flat(value)}`),
    ]),
    ...under('refused', replayed.refusals),
    ...under('not bored', unboredHoles(job).map(flat)),
    ...job.carcasses.flatMap(({ name, operations }) =>
      operations === null ? [] : [`operations of ${name}: ${operations.operations.length} ${digest(operations)}`],
    ),
    ...setUps.flatMap(({ setUp, changes, seconds, strokes }) => [
      ...setUpLines(setUp),
      `  ${seconds} s, ${strokes} strokes; ${flat(changes)}`,
    ]),
    `set-ups in words: ${digest(replayed.on(null)?.inWords() ?? '')}`,
    `set-ups for programs: ${digest(replayed.on(null)?.asData() ?? '')}`,
    `set-ups as listed: ${digest(listed)}`,
    ...jointLines(job),
    ...strokeLines(job),
  ];
}

function setUpLines({
  id,
  machine,
  fence,
  height,
  stops,
  extension,
  depth,
  thickness,
  through,
  runs,
}: SetUp): readonly string[] {
  const settings = { fence, height, depth, thickness, through, extension };
  return [
    `${id} on ${machine.name}: ${flat(settings)}`,
    `  stops ${stops.map(({ name, side, position }) => `${name} (${side}) ${position}`).join(', ')}`,
    ...runs.map(({ carcass, panel, pieces, steps }) => {
      const lies = steps.map(({ down, edge, end, stop, moved, spindles, holes }) => {
        const loaded = spindles.map((one) => `${one.head}.${one.spindle}`).join(' ');
        return `${down} down, ${edge} at the fence, ${end} at ${stop}${moved === 0 ? '' : `, moved ${moved}`}: ${loaded} (${holes.length} holes ${digest(holes)})`;
      });
      return `  ${pieces} x ${carcass}/${panel}: ${lies.join(' | ')}`;
    }),
  ];
}

/** The best order takes a second to find, and is recorded for jobs of few set-ups. */
const asTheyCome = ({ setUps }: OrderTask): Promise<SetUpOrder> =>
  Promise.resolve({ order: [...setUps.keys()], cost: 0, lowerBound: 0, proven: false, provenOnce: false });

/** The order to run, and what is changed on the way. */
export function inOrder(job: JobAnalysis): readonly string[] {
  const { setUps, ...totals } = job.plan();
  return [
    flat(totals),
    flat(planTotals(job.plan())),
    panelsOf(job).inWords(),
    ...setUps.map(({ setUp, changes, found, seconds }) => `${setUp.id} ${seconds} s ${flat(changes)} ${digest(found)}`),
  ];
}

/** What comes out at each joint, at worst and by the root of the sum of squares. */
function jointLines(job: JobAnalysis): readonly string[] {
  const setUps = job.setUps().map(({ setUp }) => setUp);
  return job.planned().flatMap(({ name, carcass, boring }) => {
    if (carcass === null || boring === null) return [];
    const { joints, unknown } = toleranceOf({ name, carcass, boring, setUps, shop: job.shop });
    return under(
      `strays of ${name}, ${unknown.length} unknown`,
      joints.map(({ joint, closes, frontFlush, stepFlush, ...figures }) => {
        const worst = Object.entries(figures).map(
          ([figure, { worst, rootSumSquare }]) => `${figure} ${flat([worst, rootSumSquare])}`,
        );
        return `${joint} ${closes} ${flat([frontFlush, stepFlush])} ${worst.join(' ')} ${digest(figures)}`;
      }),
    );
  });
}

/** The same of a thousand boxes, joint by joint. */
export function sampled(job: JobAnalysis): readonly string[] {
  const { carcasses } = jointsOf(job).asData() as { readonly carcasses: readonly SampledBox[] };
  const boxes = carcasses.flatMap(({ joints, ...box }) => under(flat(box), joints.map(flat)));
  return [...boxes, jointsOf(job).inWords()];
}

type SampledBox = object & { readonly joints: readonly object[] };

/** As many set-ups are drawn. */
const DRAWN = 16;

/** The first and the last stroke of set-ups, as they are drawn. */
function strokeLines(job: JobAnalysis): readonly string[] {
  const plan = job.plan();
  const document = shown(job);
  const every = Math.ceil(plan.setUps.length / DRAWN);
  return plan.setUps.flatMap(({ setUp }, index) => {
    if (index % every !== 0) return [];
    const drawn = [setUp.runs[0]!, setUp.runs.at(-1)!].map(({ carcass, panel, steps }, nearer) => {
      const address = { uri: job.uri, setUp: setUp.id, carcass, panel, step: nearer * (steps.length - 1) };
      return digest(drawStep(job, document, plan, { ...address, nearer: 1 + nearer }, null));
    });
    return [`drawn: ${setUp.id} ${drawn.join(' ')}`];
  });
}
