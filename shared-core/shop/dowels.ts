import type { Finding } from '../document/finding.js';
import { showLength } from '../length/show.js';
import { half, type Unit } from '../length/units.js';
import { errorAt } from '../schema/tell.js';
import type { ShopInput } from './schema.js';

/**
 * A dowel must be longer than its bore in the face is deep, or nothing of it stands in the end: that is told, and half and
 * half then stands in for it.
 */
export function withEnds(input: ShopInput['value'], unit: Unit, findings: Finding[]): ShopInput['value'] {
  if (input.dowels === undefined) return input;
  const value = input.dowels.value.map((entry) => {
    const { 'in-face': inFace, length } = entry.value.value;
    if (inFace.value < length.value) return entry;
    const [deep, long] = [inFace, length].map((one) => showLength(one.value, unit));
    const message = `The bore in the face is ${deep} deep and the dowel ${long} long: nothing of it is left for the end. Write a smaller \`in-face\`.`;
    findings.push(errorAt('value-wrong', inFace.place, message));
    const halved = { ...entry.value.value, 'in-face': { ...inFace, value: half(length.value) } };
    return { ...entry, value: { ...entry.value, value: halved } };
  });
  return { ...input, dowels: { ...input.dowels, value } };
}
