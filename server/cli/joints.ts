import type { JobAnalysis } from '../../shared-core/engine.js';
import type { Micrometres } from '../../shared-core/length/units.js';
import { MICROMETRES_PER_MM } from '../../shared-core/length/units.js';
import { jointsPaper, type Spread, type SpreadBox, type SpreadJoint } from '../../shared-core/papers/joints/paper.js';
import { asText } from '../../shared-core/papers/render/text.js';
import { FIGURE_NAMES, type FigureName } from '../../shared-core/tolerance/assemble.js';
import { sampleTolerance, type SampledJoint, type Sampling } from '../../shared-core/tolerance/sample.js';
import { toleranceOf, type Closing, type JointTolerance } from '../../shared-core/tolerance/tolerance.js';
import { openJob } from './files.js';
import { troubles } from './panels.js';
import type { Outcome } from './run.js';
import { asJson, CouldNotRun, readArguments, readFormat } from './run.js';

/** The same boxes each time, so that a figure that changes has a cause in the job or the shop. */
const SAMPLING: Sampling = { samples: 1000, seed: 1, distribution: 'normal' };

interface Joint extends SpreadJoint {
  readonly closes: Closing;
}

/** `borewright joints FILE [--format text|json]`: what can come out at every joint by the shop's own tolerances. */
export function joints(args: readonly string[]): Outcome {
  const { options, rest } = readArguments(args, ['format']);
  const format = readFormat(options.format);
  const [path, ...more] = rest;
  if (path === undefined || more.length > 0) throw new CouldNotRun('Name one job file: borewright joints FILE.');
  const job = openJob(path);
  const boxes = boxesOf(job.analysis);
  const output =
    format === 'json'
      ? asJson({ carcasses: boxes.map(boxJson) })
      : asText(
          jointsPaper(boxes, {
            samples: SAMPLING.samples,
            tolerances: job.analysis.shop.tolerances,
            unit: job.analysis.unit,
          }),
        );
  return { output, ...troubles(path, job) };
}

function boxesOf(analysis: JobAnalysis): readonly SpreadBox<Joint>[] {
  const setUps = analysis.setUps().map(({ setUp }) => setUp);
  return analysis.planned().flatMap(({ name, carcass, boring }) => {
    if (carcass === null || boring === null) return [];
    const of = { name, carcass, boring, setUps, shop: analysis.shop };
    const { joints: known, unknown } = toleranceOf(of);
    const sampled = sampleTolerance(of, SAMPLING);
    const drawn = new Map(sampled.joints.map((one) => [one.joint, one]));
    return [
      {
        name,
        joints: known.flatMap((one) => {
          const same = drawn.get(one.joint);
          return same === undefined ? [] : [jointOf(one, same)];
        }),
        unknown: unknown.map(({ joint, reason }) => ({ joint, reason })),
        boxesClose: sampled.boxesClose,
        boxesFit: sampled.boxesFit,
      },
    ];
  });
}

function jointOf(known: JointTolerance, drawn: SampledJoint): Joint {
  const spread = (name: FigureName): Spread => ({
    worst: known[name].worst,
    rootSumSquare: known[name].rootSumSquare,
    p95: drawn[name].p95,
  });
  const { joint, closes } = known;
  return {
    joint,
    closes,
    closed: drawn.closes,
    fits: drawn.fits,
    front: spread('front'),
    step: spread('step'),
    gap: spread('gap'),
    play: spread('play'),
  };
}

function boxJson({ joints: all, ...box }: SpreadBox<Joint>): object {
  const mm = (size: Micrometres): number => Math.round(size) / MICROMETRES_PER_MM;
  const spreadJson = ({ worst, rootSumSquare, p95 }: Spread): object => ({
    worst: mm(worst),
    rootSumSquare: mm(rootSumSquare),
    p95: mm(p95),
  });
  return {
    ...box,
    joints: all.map(({ joint, closes, closed, fits, ...figures }) => ({
      joint,
      closes,
      closed,
      fits,
      ...Object.fromEntries(FIGURE_NAMES.map((name) => [name, spreadJson(figures[name])])),
    })),
  };
}
