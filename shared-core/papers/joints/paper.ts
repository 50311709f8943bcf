import { counted } from '../../words/english.js';
import { fine } from '../../length/show.js';
import type { Unit } from '../../length/units.js';
import type { FigureName } from '../../tolerance/assemble.js';
import { column, heading, list, paragraph, type Block, type Paper } from '../paper.js';

/** One figure of a joint, in micrometres. */
export type Spread = Readonly<Record<'worst' | 'rootSumSquare' | 'p95', number>>;

export interface SpreadJoint extends Readonly<Record<FigureName, Spread>> {
  readonly joint: string;
  /** Part of the sampled boxes in which it goes together. */
  readonly closed: number;
}

/** What can come out at the joints of one carcass. */
export interface SpreadBox<J extends SpreadJoint = SpreadJoint> {
  readonly name: string;
  readonly joints: readonly J[];
  readonly unknown: readonly { readonly joint: string; readonly reason: string }[];
  /** Part of the sampled boxes that go together whole. */
  readonly boxesClose: number;
}

const HEADS = ['Joint', 'Front edge', 'Outside face', 'Gap', 'Play wanted', 'Closes'] as const;

/** What can come out at every joint of a job by the shop's tolerances, from so many sampled boxes of each carcass. */
export function jointsPaper(boxes: readonly SpreadBox[], samples: number, unit: Unit): Paper {
  return {
    title: '',
    blocks: [
      ...list([
        `By the shop’s tolerances, in ${unit === 'mm' ? 'millimetres' : 'inches'}: root of the sum of squares / not passed by 19 boxes of 20 / worst case.`,
        'Nothing here is measured on your boards: the figures are as good as the tolerances of the shop file.',
      ]),
      ...boxes.flatMap((box) => boxBlocks(box, samples, unit)),
    ],
  };
}

function boxBlocks({ name, joints, unknown, boxesClose }: SpreadBox, samples: number, unit: Unit): readonly Block[] {
  const cell = ({ worst, rootSumSquare, p95 }: Spread): string =>
    [rootSumSquare, p95, worst].map((size) => fine(size, unit)).join(' / ');
  return [
    heading(2, `${name}: ${counted(joints.length, 'joint')}; ${percent(boxesClose)} of ${samples} boxes close`),
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
      ]),
    },
    ...unknown.map(({ joint, reason }) => paragraph(`${joint}: no figures, ${reason}`)),
  ];
}

const percent = (part: number): string => `${(100 * part).toFixed(1)} %`;
