import type { Finding } from '../document/finding.js';
import type { Located } from '../document/place.js';
import type { Micrometres } from '../length/units.js';
import { errorAt, preferred } from '../schema/tell.js';
import { say } from './messages.js';

export type Places = Located<readonly Located<Micrometres>[]>;

/** A place that is written twice in a list is one bore: the second is told and left out. */
export function distinctPlaces(places: Places | null): {
  readonly places: Places | null;
  readonly findings: readonly Finding[];
} {
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
    const repairs = [preferred(say.removeSecond({ place: value }), { kind: 'remove', part: place.part, path })];
    findings.push(errorAt('value-wrong', place, say.placeTwice({ place: value }), { repairs }));
  }
  return { places: findings.length === 0 ? places : { ...places, value: once }, findings };
}
