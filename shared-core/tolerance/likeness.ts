import type { LoneJoint } from './lone-joint.js';
import { numbering, type NumberOf } from './lone-likeness.js';
import type { JointCase, Rival } from './rivals.js';

/** Equal for joints that are alike among others that are alike; the same is worked out of both. */
export function likenessOf(joint: JointCase): string {
  const { numberOf } = numbering();
  const said = ({ likeness: { shape, names } }: LoneJoint): string => `${shape} ${names.map(numberOf).join()}`;
  const parts = [said(joint)];
  for (const other of joint.standing.values()) parts.push(`${setBack(other)}@${said(other)}`);
  for (const rival of joint.rivals) parts.push(rivalLikeness(rival, numberOf));
  return parts.join('\n');
}

/** Equal for joints that are alike, stand equally far back, and have the same names for what strays. */
export function namedLikeness(joint: LoneJoint): string {
  const { shape, names } = joint.likeness;
  return `${setBack(joint)}@${shape} ${names.join()}`;
}

/** How far back the front edge of the end panel stands. */
const setBack = ({ end, front }: LoneJoint): number => end.panel.pose.origin[front.axis];

function rivalLikeness({ corner, touching, shares }: Rival, of: NumberOf): string {
  const sum = shares.map((one) => `${one.kind} ${of(one.of)} ${one.share} ${one.kind === 'stand' ? one.along : ''}`);
  return `${corner} ${touching} ${sum.join()}`;
}
