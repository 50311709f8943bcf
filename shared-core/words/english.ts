import { andWord, rangeWord } from './spoken.js';

/** 'a', 'a and b', 'a, b and c'. */
export function listed(words: readonly string[], last: 'and' | 'or' | 'und' | 'et' = andWord()): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1)!}`;
}

/** '1 hole', '3 holes'. */
export function counted(count: number, noun: string, several = `${noun}s`): string {
  return `${count} ${count === 1 ? noun : several}`;
}

/** The first for one, the second for any other number: 'stands' or 'stand', 'row' or 'rows'. */
export function verb(count: number, one: string, several: string): string {
  return count === 1 ? one : several;
}

/** Numbers in a list, three and more in a row as a run: '1, 6 and 10 to 15'. */
export function runsOfNumbers(numbers: readonly number[], to = rangeWord(), last = andWord()): string {
  const runs: number[][] = [];
  for (const number of [...numbers].sort((a, b) => a - b)) {
    const run = runs.at(-1);
    if (run?.at(-1) === number - 1) run.push(number);
    else runs.push([number]);
  }
  return listed(
    runs.flatMap((run) => (run.length > 2 ? [`${run[0]!} ${to} ${run.at(-1)!}`] : run.map((number) => String(number)))),
    last,
  );
}

/** First letter large, the rest as it is. */
export function sentence<T extends string>(text: T): T {
  // A capital makes no other text of it.
  return (text.charAt(0).toUpperCase() + text.slice(1)) as T;
}

/** 'a shelf', 'an edge band', 'the habits': what something is called at its first mention. */
export function aNoun(noun: string): string {
  return /[^s]s$/.test(noun) ? `the ${noun}` : `${/^[aeiou]/.test(noun) ? 'an' : 'a'} ${noun}`;
}

const LONGEST_SHOWN = 40;

/** A text of an owner for a message: in quotes, on one line, and not longer than a line can bear. */
export function quoted(text: string): string {
  const line = text.replace(/\s+/g, ' ').trim();
  return `‘${line.length > LONGEST_SHOWN ? `${line.slice(0, LONGEST_SHOWN)}…` : line}’`;
}

/** A sort of things as a sentence calls it: 'wardrobe rail' of 'wardrobe-rail'. */
export const sortNoun = (sort: string): string => sort.replaceAll('-', ' ');

/** ' (`box-offset` of ‘slide-45’)', or nothing. */
export function inKey(of: { readonly key: string; readonly fitting: string } | null): string {
  return of === null ? '' : ` (\`${of.key}\` of ${quoted(of.fitting)})`;
}
