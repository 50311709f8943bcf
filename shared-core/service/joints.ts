import type { JobAnalysis } from '../engine.js';
import type { Reader } from '../length/reader.js';
import type { Micrometres } from '../length/units.js';
import { jointsPaper, type Spread, type SpreadBox, type SpreadJoint } from '../papers/joints/paper.js';
import { asText } from '../papers/render/text.js';
import { FIGURE_NAMES, type FigureName } from '../tolerance/assemble.js';
import { sampleTolerance, type SampledJoint, type Sampling } from '../tolerance/sample.js';
import { toleranceOf, type Closing, type JointTolerance } from '../tolerance/tolerance.js';
import { tell } from '../words/message.js';
import type { Answer } from './answer.js';
import { mm } from './mm.js';

/** The same boxes each time, so that a figure that changes has a cause in the job or the shop. */
const SAMPLING: Sampling = { samples: 1000, seed: 1, distribution: 'normal' };

interface Joint extends SpreadJoint {
  readonly closes: Closing;
}

/** What can come out at every joint of a job by the shop's own tolerances. */
export function jointsOf(analysis: JobAnalysis): Answer {
  const boxes = boxesOf(analysis);
  const { shop, reader } = analysis;
  return {
    inWords: () => asText(jointsPaper(boxes, { samples: SAMPLING.samples, tolerances: shop.tolerances, reader })),
    asData: () => ({ carcasses: boxes.map((box) => boxData(box, reader)) }),
  };
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

function boxData({ joints: all, unknown, ...box }: SpreadBox<Joint>, reader: Reader): object {
  return {
    ...box,
    unknown: unknown.map(({ joint, reason }) => ({ joint, reason: tell(reason, reader) })),
    joints: all.map(({ joint, closes, closed, fits, ...figures }) => ({
      joint,
      closes,
      closed,
      fits,
      ...Object.fromEntries(FIGURE_NAMES.map((name) => [name, spreadData(figures[name])])),
    })),
  };
}

function spreadData({ worst, rootSumSquare, p95 }: Spread): object {
  const whole = (size: Micrometres): number => mm(Math.round(size));
  return { worst: whole(worst), rootSumSquare: whole(rootSumSquare), p95: whole(p95) };
}
