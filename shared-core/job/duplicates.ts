import type { Finding } from '../document/finding.js';
import type { Located } from '../document/place.js';
import { keyText } from '../document/scalar-text.js';
import { errorAt } from '../schema/tell.js';
import { say } from './messages.js';

/**
 * Carcasses with a name that an earlier one has. `names` are in the order of `parts.carcasses`, null where there is none.
 * The finding belongs to the carcass of the index; its places are counted in that carcass's text, the related one in the first's.
 */
export function duplicateCarcasses(
  names: readonly (Located<string> | null)[],
): readonly { readonly carcass: number; readonly finding: Finding }[] {
  const first = new Map<string, number>();
  const freeName = freeNames(names);
  const found: { carcass: number; finding: Finding }[] = [];
  names.forEach((name, carcass) => {
    if (name === null) return;
    const earlier = first.get(name.value);
    if (earlier === undefined) {
      first.set(name.value, carcass);
      return;
    }
    const related = [{ place: names[earlier]!.place, message: say.nameFirst({ name: name.value }), carcass: earlier }];
    const free = freeName(name.value);
    const { part, start, end } = name.place;
    const rewrites = [{ part, start, end, text: keyText(free, true) }];
    const repairs = [{ title: say.nameIt({ name: free }), changes: [], rewrites, preferred: false }];
    const message = say.nameTwice({ name: name.value });
    found.push({ carcass, finding: errorAt('name-duplicate', name.place, message, { related, repairs }) });
  });
  return found;
}

/** The next name of a stem that no carcass has. Each stem is counted once, however often its names repeat. */
function freeNames(names: readonly (Located<string> | null)[]): (name: string) => string {
  const taken = new Set(names.map((one) => one?.value));
  const free = new Map<string, string>();
  return (name) => {
    const stem = name.replace(/-\d+$/, '');
    let found = free.get(stem);
    if (found === undefined) {
      let number = 2;
      while (taken.has(`${stem}-${number}`)) number += 1;
      found = `${stem}-${number}`;
      free.set(stem, found);
    }
    return found;
  };
}
