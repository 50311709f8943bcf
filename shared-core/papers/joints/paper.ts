import { tellerTo, type Message } from '../../words/message.js';
import { asRead } from '../../words/spoken.js';
import { asItIs, joined, type Told } from '../../words/told.js';
import { HEADS, say } from './messages.js';
import { percent } from './percent.js';
import { fine } from '../../length/show.js';
import type { Reader } from '../../length/reader.js';
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
  readonly unknown: readonly { readonly joint: string; readonly reason: Message }[];
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
  readonly reader: Reader;
}

/** What can come out at every joint of a job by the shop's tolerances. */
export function jointsPaper(boxes: readonly SpreadBox[], made: Made): Paper {
  const { samples, tolerances, reader } = made;
  const { frontLimit, stepLimit, gapLimit } = tolerances;
  const limits = [frontLimit, stepLimit, gapLimit].map((limit) => fine(limit, reader));
  return {
    title: '',
    blocks: [
      ...list(
        [say.how(), say.goesIn({ samples }), say.within({ limits }), say.worstCase(), say.notMeasured()].map(
          tellerTo(reader),
        ),
      ),
      ...boxes.flatMap((box) => boxBlocks(box, made)),
    ],
  };
}

function boxBlocks(
  { name, joints, unknown, boxesClose, boxesFit }: SpreadBox,
  { samples, reader }: Made,
): readonly Block[] {
  const told = tellerTo(reader);
  const cell = ({ worst, rootSumSquare, p95 }: Spread): Told =>
    joined(
      [rootSumSquare, p95, worst].map((size) => asItIs(fine(size, reader))),
      ' / ',
    );
  return [
    heading(2, told(say.box({ carcass: name, joints: joints.length, samples, close: boxesClose, fit: boxesFit }))),
    {
      kind: 'table',
      columns: [HEADS.joint, HEADS.front, HEADS.step, HEADS.gap, HEADS.play, HEADS.closes, HEADS.fits].map(column),
      rows: joints.map((one) => [
        asItIs(one.joint),
        cell(one.front),
        cell(one.step),
        cell(one.gap),
        cell(one.play),
        asItIs(asRead(percent(one.closed))),
        asItIs(asRead(percent(one.fits))),
      ]),
    },
    ...unknown.map((one) => paragraph(told(say.unknown(one)))),
  ];
}
