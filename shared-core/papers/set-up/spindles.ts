import { described, headsSet } from '../../machining/described.js';
import { tell } from '../../words/message.js';
import type { Told } from '../../words/told.js';
import { COUNTED_FROM, say, type BitsTold } from './messages.js';
import { headName } from '../../drawing/machine-view/words.js';
import type { Reader } from '../../length/reader.js';
import type { Micrometres } from '../../length/units.js';
import type { LoadedSpindle, SetUp } from '../../machining/set-up.js';

type Machine = SetUp['machine'];

/** The bits that a set-up has in its spindles; every step of it has the same. */
export function loadedIn({ runs }: SetUp): readonly LoadedSpindle[] {
  return runs[0]?.steps[0]?.spindles ?? [];
}

/** Where its operator begins to count the spindles from. */
export function countedFrom(machine: Machine): Told {
  return described(machine).spindles === 'away' ? COUNTED_FROM.fence : COUNTED_FROM.left;
}

/** 'Ø 8 mm in spindles 1, 6, 10 and 15', 'Ø 5 mm in all 23 spindles of both heads'. Empty text where nothing is loaded. */
export function bitWords(
  spindles: readonly LoadedSpindle[],
  setUp: Pick<SetUp, 'machine' | 'fence'>,
  reader: Reader,
): Told {
  return tell(say.bits({ bits: bitsOf(spindles, setUp) }), reader);
}

/** Which bits are where, by diameter and by heads that carry them alike. People count spindles from 1. */
export function bitsOf(
  spindles: readonly LoadedSpindle[],
  { machine, fence }: Pick<SetUp, 'machine' | 'fence'>,
): readonly BitsTold[] {
  const { onEachHead, spindles: stand } = described(machine);
  const heads = headsSet({ machine, fence });
  const diameters = [...new Set(spindles.map(({ diameter }) => diameter))].sort((a, b) => a - b);
  return diameters.flatMap((diameter) => {
    const byPlaces = new Map<string, { readonly places: readonly number[]; readonly heads: Told[] }>();
    for (let head = 0; head < heads; head += 1) {
      const places = placesOf(spindles, head, diameter);
      if (places.length === 0) continue;
      const alike = byPlaces.get(places.join());
      if (alike === undefined) byPlaces.set(places.join(), { places, heads: [headName(head, heads)] });
      else alike.heads.push(headName(head, heads));
    }
    return [...byPlaces.values()].map(({ places, heads: here }): BitsTold => ({
      diameter,
      spindles: stand === 'one' ? null : places,
      onEachHead,
      heads: here,
      of: heads,
    }));
  });
}

function placesOf(spindles: readonly LoadedSpindle[], head: number, diameter: Micrometres): readonly number[] {
  return spindles
    .filter((one) => one.head === head && one.diameter === diameter)
    .map(({ spindle }) => spindle + 1)
    .sort((a, b) => a - b);
}
