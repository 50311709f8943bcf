import { inOneNotation } from '../../length/show.js';
import { unitFor, type Reader } from '../../length/reader.js';
import type { Micrometres } from '../../length/units.js';
import { asItIs } from '../../words/told.js';
import type { BoreShape, Fact } from '../scene/scene.js';
import { MEASURED } from './messages.js';

/** How far it is from the mouth of one bore to that of another, along the axes of their panel and straight across. */
export interface Measured {
  readonly u: Micrometres;
  readonly v: Micrometres;
  readonly t: Micrometres;
  /** To the nearest micrometre. */
  readonly straight: Micrometres;
}

/** null for bores of two panels, which may lie anywhere to each other. */
export function measure(from: BoreShape, to: BoreShape): Measured | null {
  if (from.panel !== to.panel) return null;
  const [u, v, t] = (['u', 'v', 't'] as const).map((axis) => Math.abs(to.mouth[axis] - from.mouth[axis]));
  return { u: u!, v: v!, t: t!, straight: Math.round(Math.hypot(u!, v!, t!)) };
}

/** The same for a reader, each figure with its unit; the thickness counts only where the bores enter in different planes. */
export function measuredWords({ u, v, t, straight }: Measured, reader: Reader): readonly Fact[] {
  const along = [u, v, ...(t === 0 ? [] : [t])];
  const write = inOneNotation(along, reader);
  const words = [MEASURED.u, MEASURED.v, MEASURED.t];
  return [
    ...along.map((length, index) => ({ word: words[index]!, value: asItIs(`${write(length)} ${unitFor(reader)}`) })),
    { word: MEASURED.straight, value: asItIs(`${inOneNotation([straight], reader)(straight)} ${unitFor(reader)}`) },
  ];
}
