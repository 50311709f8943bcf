import { counted, listed } from '../../words/english.js';
import { fine } from '../../length/show.js';
import type { Unit } from '../../length/units.js';
import type { FigureName } from '../../tolerance/assemble.js';
import type { Tolerances } from '../../shop/model.js';
import { column, heading, list, paragraph, type Block, type Paper } from '../paper.js';

/** One figure of a joint, in micrometres. */
export type Spread = Readonly<Record<'worst' | 'rootSumSquare' | 'p95', number>>;

export interface SpreadJoint extends Readonly<Record<FigureName, Spread>> {
  readonly joint: string;
  /** Part of the sampled boxes in which it goes together. */
  readonly closed: number;
  /** Part of them in which its offset, step and gap are within the shop's limits too. */
  readonly fits: number;
}

/** What can come out at the joints of one carcass. */
export interface SpreadBox<J extends SpreadJoint = SpreadJoint> {
  readonly name: string;
  readonly joints: readonly J[];
  readonly unknown: readonly { readonly joint: string; readonly reason: string }[];
  /** Part of the sampled boxes that go together whole. */
  readonly boxesClose: number;
  /** Part of them in which every joint is within the shop's limits too. */
  readonly boxesFit: number;
}

/** What a paper of joints is made by. */
export interface Made {
  /** Boxes of each carcass. */
  readonly samples: number;
  readonly tolerances: Tolerances;
  readonly unit: Unit;
}

const HEADS = ['Joint', 'Front edge', 'Outside face', 'Gap', 'Play wanted', 'Goes in', 'Within limits'] as const;

/** What can come out at every joint of a job by the shop's tolerances. */
export function jointsPaper(boxes: readonly SpreadBox[], made: Made): Paper {
  const { samples, tolerances, unit } = made;
  const { frontLimit, stepLimit, gapLimit } = tolerances;
  const limits = [frontLimit, stepLimit, gapLimit].map((limit) => fine(limit, unit));
  return {
    title: '',
    blocks: [
      ...list([
        `By the shop’s tolerances, in ${unit === 'mm' ? 'millimetres' : 'inches'}: root of the sum of squares / not passed by 19 boxes of 20 / worst case.`,
        `Goes in: in how many of ${samples} sampled boxes every dowel or screw finds its bores with the play that it has. It says nothing of offsets and gaps.`,
        `Within limits: in how many it goes in, and front edge, outside face and gap keep the shop’s limits too (${listed(limits)}). Offsets count where the panels are drawn flush.`,
        'A worst case has every tolerance at its bound at once, so it may pass a limit that every sampled box keeps.',
        'Nothing here is measured on your boards: the figures are as good as the tolerances of the shop file.',
      ]),
      ...boxes.flatMap((box) => boxBlocks(box, made)),
    ],
  };
}

function boxBlocks(
  { name, joints, unknown, boxesClose, boxesFit }: SpreadBox,
  { samples, unit }: Made,
): readonly Block[] {
  const cell = ({ worst, rootSumSquare, p95 }: Spread): string =>
    [rootSumSquare, p95, worst].map((size) => fine(size, unit)).join(' / ');
  return [
    heading(
      2,
      `${name}: ${counted(joints.length, 'joint')}; of ${samples} boxes ${percent(boxesClose)} go together, ${percent(boxesFit)} within the limits`,
    ),
    {
      kind: 'table',
      columns: HEADS.map(column),
      rows: joints.map((one) => [
        one.joint,
        cell(one.front),
        cell(one.step),
        cell(one.gap),
        cell(one.play),
        percent(one.closed),
        percent(one.fits),
      ]),
    },
    ...unknown.map(({ joint, reason }) => paragraph(`${joint}: no figures, ${reason}`)),
  ];
}

const percent = (part: number): string => `${(100 * part).toFixed(1)} %`;
