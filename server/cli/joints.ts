import type { JobAnalysis } from '../../shared-core/engine.js';
import { counted } from '../../shared-core/findings/words.js';
import { fine } from '../../shared-core/length/show.js';
import type { Micrometres, Unit } from '../../shared-core/length/units.js';
import { MICROMETRES_PER_MM } from '../../shared-core/length/units.js';
import { FIGURE_NAMES, type FigureName } from '../../shared-core/tolerance/assemble.js';
import { sampleTolerance, type SampledJoint, type Sampling } from '../../shared-core/tolerance/sample.js';
import { toleranceOf, type Closing, type JointTolerance } from '../../shared-core/tolerance/tolerance.js';
import { columns } from './columns.js';
import { openJob } from './files.js';
import { troubles } from './panels.js';
import type { Outcome } from './run.js';
import { asJson, CouldNotRun, readArguments, readFormat } from './run.js';

/** The same boxes each time, so that a figure that changes has a cause in the job or the shop. */
const SAMPLING: Sampling = { samples: 1000, seed: 1, distribution: 'normal' };

/** One figure of a joint, in micrometres. */
type Spread = Readonly<Record<'worst' | 'rootSumSquare' | 'p95', number>>;

interface Joint extends Readonly<Record<FigureName, Spread>> {
  readonly joint: string;
  readonly closes: Closing;
  /** Part of the sampled boxes in which it goes together. */
  readonly closed: number;
}

interface Box {
  readonly name: string;
  readonly joints: readonly Joint[];
  readonly unknown: readonly { readonly joint: string; readonly reason: string }[];
  readonly boxesClose: number;
}

/** `borewright joints FILE [--format text|json]`: what can come out at every joint by the shop's own tolerances. */
export function joints(args: readonly string[]): Outcome {
  const { options, rest } = readArguments(args, ['format']);
  const format = readFormat(options.format);
  const [path, ...more] = rest;
  if (path === undefined || more.length > 0) throw new CouldNotRun('Name one job file: borewright joints FILE.');
  const job = openJob(path);
  const boxes = boxesOf(job.analysis);
  const output = format === 'json' ? asJson({ carcasses: boxes.map(boxJson) }) : asText(boxes, job.analysis.unit);
  return { output, ...troubles(path, job) };
}

function boxesOf(analysis: JobAnalysis): readonly Box[] {
  const setUps = analysis.sheets().map(({ setUp }) => setUp);
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
    front: spread('front'),
    step: spread('step'),
    gap: spread('gap'),
    play: spread('play'),
  };
}

function boxJson({ joints: all, ...box }: Box): object {
  const mm = (size: Micrometres): number => Math.round(size) / MICROMETRES_PER_MM;
  const spreadJson = ({ worst, rootSumSquare, p95 }: Spread): object => ({
    worst: mm(worst),
    rootSumSquare: mm(rootSumSquare),
    p95: mm(p95),
  });
  return {
    ...box,
    joints: all.map(({ joint, closes, closed, ...figures }) => ({
      joint,
      closes,
      closed,
      ...Object.fromEntries(FIGURE_NAMES.map((name) => [name, spreadJson(figures[name])])),
    })),
  };
}

const HEADS = ['Joint', 'Front edge', 'Outside face', 'Gap', 'Play wanted', 'Closes'] as const;

function asText(boxes: readonly Box[], unit: Unit): string {
  const cell = ({ worst, rootSumSquare, p95 }: Spread): string =>
    [rootSumSquare, p95, worst].map((size) => fine(size, unit)).join(' / ');
  const lines = boxes.flatMap(({ name, joints: all, unknown, boxesClose }) => [
    `${name}: ${counted(all.length, 'joint')}; ${(100 * boxesClose).toFixed(1)} % of ${SAMPLING.samples} boxes close`,
    ...columns([
      HEADS,
      ...all.map((one) => [
        one.joint,
        cell(one.front),
        cell(one.step),
        cell(one.gap),
        cell(one.play),
        `${(100 * one.closed).toFixed(1)} %`,
      ]),
    ]),
    ...unknown.map(({ joint, reason }) => `    ${joint}: no figures, ${reason}`),
    '',
  ]);
  const about = [
    `By the shop’s tolerances, in ${unit}: root of the sum of squares / not passed by 19 boxes of 20 / worst case.`,
    'Nothing here is measured on your boards: the figures are as good as the tolerances of the shop file.',
    '',
  ];
  return [...about, ...lines].join('\n');
}
