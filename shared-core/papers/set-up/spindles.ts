import { described, headsSet } from '../../machining/described.js';
import { listed } from '../../words/english.js';
import { headName, runsOfNumbers } from '../../drawing/machine-view/words.js';
import type { Micrometres, Unit } from '../../length/units.js';
import { nominal } from '../../length/show.js';
import type { LoadedSpindle, SetUp } from '../../machining/set-up.js';

type Machine = SetUp['machine'];

/** The bits that a set-up has in its spindles; every step of it has the same. */
export function loadedIn({ runs }: SetUp): readonly LoadedSpindle[] {
  return runs[0]?.steps[0]?.spindles ?? [];
}

/** Where its operator begins to count the spindles from. */
export function countedFrom(machine: Machine): string {
  return described(machine).spindles === 'away' ? 'the fence' : 'the left';
}

/**
 * Which bit is where: 'Ø 8 mm in spindles 1, 6, 10 and 15', 'Ø 5 mm in all 23 spindles of both heads'. People count spindles
 * from 1. Empty text where nothing is loaded.
 */
export function bitWords(
  spindles: readonly LoadedSpindle[],
  { machine, fence }: Pick<SetUp, 'machine' | 'fence'>,
  unit: Unit,
  relation: 'in' | 'into' | 'from' = 'in',
): string {
  if (described(machine).spindles === 'one')
    return spindles.map(({ diameter }) => `Ø ${nominal(diameter, unit)}`).join('');
  const heads = headsSet({ machine, fence });
  const diameters = [...new Set(spindles.map(({ diameter }) => diameter))].sort((a, b) => a - b);
  const parts = diameters.flatMap((diameter) => {
    const byHead = new Map<string, { readonly places: readonly number[]; readonly heads: number[] }>();
    for (let head = 0; head < heads; head += 1) {
      const places = placesOf(spindles, head, diameter);
      if (places.length === 0) continue;
      const alike = byHead.get(places.join());
      if (alike === undefined) byHead.set(places.join(), { places, heads: [head] });
      else alike.heads.push(head);
    }
    return [...byHead.values()].map(
      ({ places, heads: here }) =>
        `Ø ${nominal(diameter, unit)} ${relation} ${spindleWords(places, described(machine).onEachHead)}${headWords(here, heads)}`,
    );
  });
  return listed(parts);
}

function placesOf(spindles: readonly LoadedSpindle[], head: number, diameter: Micrometres): readonly number[] {
  return spindles
    .filter((one) => one.head === head && one.diameter === diameter)
    .map(({ spindle }) => spindle + 1)
    .sort((a, b) => a - b);
}

function spindleWords(places: readonly number[], all: number): string {
  if (places.length === all && all > 1) return `all ${all} spindles`;
  return `${places.length === 1 ? 'spindle' : 'spindles'} ${runsOfNumbers(places)}`;
}

function headWords(here: readonly number[], heads: number): string {
  if (heads < 2) return '';
  if (here.length === heads) return heads === 2 ? ' of both heads' : ` of all ${heads} heads`;
  return ` of the ${listed(here.map((head) => headName(head, heads)))}`;
}
