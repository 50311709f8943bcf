import type { Panel } from '../../carcass/model.js';
import type { EdgeName } from '../../job/model.js';
import type { Band } from '../../shop/model.js';
import type { Message } from '../../words/message.js';
import type { Told } from '../../words/told.js';
import { CUT_EDGE } from '../../words/names.js';
import { say } from './messages.js';

const ORDER: readonly EdgeName[] = ['front', 'back', 'reference-end', 'far-end'];

/** 'front and back white-1': which band goes on which edges, the edges by the names that they have here; last on that of a cut corner. */
export function bandsOf(bands: Panel['bands'], named: (edge: EdgeName) => Told, onCut: Band | null = null): Message {
  const edgesOf = new Map<string, Told[]>();
  for (const edge of ORDER) {
    const band = bands[edge];
    if (band !== null) edgesOf.set(band.name, [...(edgesOf.get(band.name) ?? []), named(edge)]);
  }
  if (onCut !== null) edgesOf.set(onCut.name, [...(edgesOf.get(onCut.name) ?? []), CUT_EDGE]);
  return edgesOf.size === 0
    ? say.noBand()
    : say.bands({ bands: [...edgesOf].map(([band, edges]) => ({ band, edges })) });
}
