import type { Finding } from '../document/finding.js';
import type { Located } from '../document/place.js';
import { showLength } from '../length/show.js';
import type { Micrometres, Unit } from '../length/units.js';
import { errorAt, preferred } from '../schema/tell.js';

type Places = Located<readonly Located<Micrometres>[]>;

/** A place that is written twice in a list is one bore: the second is told and left out. */
export function distinctPlaces(
  places: Places | null,
  unit: Unit,
): { readonly places: Places | null; readonly findings: readonly Finding[] } {
  if (places === null) return { places, findings: [] };
  const seen = new Set<Micrometres>();
  const once: Located<Micrometres>[] = [];
  const findings: Finding[] = [];
  for (const one of places.value) {
    const { value, place, path } = one;
    if (!seen.has(value)) {
      seen.add(value);
      once.push(one);
      continue;
    }
    const length = showLength(value, unit);
    const repairs = [preferred(`Take the second ${length} out`, { kind: 'remove', part: place.part, path })];
    const message = `${length} stands in this list already; one bore is made there. Take it out, or write another place.`;
    findings.push(errorAt('value-wrong', place, message, { repairs }));
  }
  return { places: findings.length === 0 ? places : { ...places, value: once }, findings };
}
