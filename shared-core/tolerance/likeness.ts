import type { Stroke } from '../machining/replay/bore.js';
import type { Half, LoneJoint } from './joint.js';
import type { JointCase, Rival } from './rivals.js';

/** The number of a name: names count by which of them are the same, not by what they say. */
type NumberOf = (name: string) => number;

/**
 * Equal for joints at which things that stray do the same, wherever the joints stand and however long their panels are: no
 * more is left out than where things lie along the axes in which they are only moved. What is worked out of two of them is the
 * same but for the last bits of floating-point numbers.
 */
export function likenessOf(joint: JointCase): string {
  const numbers = new Map<string, number>();
  const numberOf = (name: string): number => {
    const known = numbers.get(name);
    if (known !== undefined) return known;
    numbers.set(name, numbers.size);
    return numbers.size - 1;
  };
  const parts = [loneLikeness(joint, numberOf)];
  for (const other of joint.standing.values()) {
    parts.push(`${other.end.panel.pose.origin[other.front.axis]}@${loneLikeness(other, numberOf)}`);
  }
  for (const rival of joint.rivals) parts.push(rivalLikeness(rival, numberOf));
  return parts.join('\n');
}

function loneLikeness({ joint, face, end, ties, front, outside, contact, names }: LoneJoint, of: NumberOf): string {
  const datums = [front, outside].map(({ side, axis, drawn }) => `${side} ${axis} ${drawn === 0}`);
  const lengths = ties.map(({ dowelLength }) => dowelLength);
  const own = [joint.end, contact.from, contact.to, of(names.along), of(names.across), ...datums, ...lengths];
  return `${own.join()};${halfLikeness(face, of)};${halfLikeness(end, of)}`;
}

/** A panel, and how each of its holes at the joint comes about. Along the panel holes are only moved. */
function halfLikeness({ panel, blank, names, strokes, drawn }: Half, of: NumberOf): string {
  const { u, v, t } = panel.pose;
  const parts = [`${u}${v}${t} ${blank.hand} ${blank.width} ${blank.thickness} ${of(names.panel)}`];
  for (const { stroke, spindles, ties } of strokes) {
    const { setting } = stroke.names;
    const settings = stroke.setUp.machine.kind === 'horizontal' ? [setting.height] : setting.heads;
    parts.push(`${layLikeness(stroke)} ${of(setting.stop)} ${settings.map(of).join(' ')}`);
    ties.forEach((tie, i) => {
      const { face, u: across, v: along, depth } = drawn[tie]!;
      const height = face === 'inside' || face === 'outside' ? '' : along;
      const spindle = spindles[i]!;
      parts.push(`${tie} ${face} ${across} ${height} ${depth} ${spindle.head} ${of(spindle.across)}`);
    });
  }
  return parts.join();
}

/** How a panel lies for a stroke: what of it comes against what of the machine, and from where it is bored. */
function layLikeness({ setUp: { machine, through }, step: { down, edge, end }, stop }: Stroke): string {
  const kind = machine.kind === 'vertical' || machine.kind === 'line' ? `${machine.fence} ${machine.from}` : '';
  return `${machine.kind} ${kind} ${through} ${down} ${edge} ${end} ${stop.side}`;
}

function rivalLikeness({ corner, touching, shares }: Rival, of: NumberOf): string {
  const sum = shares.map((one) => `${one.kind} ${of(one.of)} ${one.share} ${one.kind === 'stand' ? one.along : ''}`);
  return `${corner} ${touching} ${sum.join()}`;
}
