import type { Stroke } from '../machining/replay/bore.js';
import type { Half, Likeness, LoneJoint } from './lone-joint.js';

/** The number of a name: names count by which of them are the same, not by what they say. */
export type NumberOf = (name: string) => number;

/** Numbers names in the order in which they are met. */
export function numbering(): { readonly names: ReadonlyMap<string, number>; readonly numberOf: NumberOf } {
  const names = new Map<string, number>();
  const numberOf = (name: string): number => {
    const known = names.get(name);
    if (known !== undefined) return known;
    names.set(name, names.size);
    return names.size - 1;
  };
  return { names, numberOf };
}

/** What a joint is like before anything is known of the others of its carcass. */
export function loneLikeness(of: Omit<LoneJoint, 'likeness'>): Likeness {
  const { joint, face, end, ties, front, outside, contact, names } = of;
  const { names: numbered, numberOf } = numbering();
  const datums = [front, outside].map(({ side, axis, drawn }) => `${side} ${axis} ${drawn === 0}`);
  const play = [names.along, names.across].map(numberOf);
  const lengths = ties.map(({ dowelLength }) => dowelLength);
  const own = [joint.end, contact.from, contact.to, ...play, ...datums, ...lengths];
  const shape = `${own.join()};${halfLikeness(face, numberOf)};${halfLikeness(end, numberOf)}`;
  return { shape, names: [...numbered.keys()] };
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
