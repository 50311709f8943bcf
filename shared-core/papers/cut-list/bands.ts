import type { Panel } from '../../carcass/model.js';
import type { EdgeName } from '../../job/model.js';
import type { Message } from '../../words/message.js';
import type { Told } from '../../words/told.js';
import { say } from './messages.js';

const ORDER: readonly EdgeName[] = ['front', 'back', 'reference-end', 'far-end'];

/** 'front and back white-1': which band goes on which edges, the edges by the names that they have here. */
export function bandsOf(bands: Panel['bands'], named: (edge: EdgeName) => Told): Message {
  const edgesOf = new Map<string, Told[]>();
  for (const edge of ORDER) {
    const band = bands[edge];
    if (band !== null) edgesOf.set(band.name, [...(edgesOf.get(band.name) ?? []), named(edge)]);
  }
  return edgesOf.size === 0
    ? say.noBand()
    : say.bands({ bands: [...edgesOf].map(([band, edges]) => ({ band, edges })) });
}
