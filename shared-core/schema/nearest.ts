/**
 * The candidate that a writer most likely meant by `word`, or null where none is near. Distance: insertions, deletions,
 * changed letters and swapped neighbours (optimal string alignment), case not counted; a tie goes to the first candidate.
 * A word that is only the figures of one candidate, such as `19` or `19 mm` of `board-19`, is taken for it.
 */
export function nearestName(word: string, candidates: Iterable<string>): string | null {
  if (word.length > 60) return null;
  const named = byLastWords(word, candidates);
  if (named !== null) return named;
  const limit = Math.max(1, Math.floor(word.length / 3));
  let best: string | null = null;
  let least = limit + 1;
  for (const candidate of candidates) {
    if (Math.abs(candidate.length - word.length) >= least) continue;
    const far = distance(word.toLowerCase(), candidate.toLowerCase());
    if (far < least) {
      best = candidate;
      least = far;
    }
  }
  return best ?? byFigures(word, candidates);
}

/** 'edge bands' as 'edge-bands': words as keys have them. */
export function asKey(words: string): string {
  return words
    .trim()
    .toLowerCase()
    .replace(/[\s_]+/g, '-');
}

/**
 * Of several words the candidate that is all of them, or else the longest that is the last of them: 'edge bands' are `bands`
 * rather than `edge-banders`, which is no more than letters away. Null where a candidate is nearly all of the words.
 */
function byLastWords(word: string, candidates: Iterable<string>): string | null {
  const key = asKey(word);
  const parts = key.split('-');
  if (parts.length < 2) return null;
  const all = [...candidates];
  if (all.some((one) => distance(key, one.toLowerCase()) === 1)) return null;
  const tails = parts.map((_, i) => parts.slice(i).join('-'));
  const tail = tails.find((one) => all.some((candidate) => candidate.toLowerCase() === one));
  return tail === undefined ? null : all.find((candidate) => candidate.toLowerCase() === tail)!;
}

/** The only candidate with the word as one of its parts; null where the word has no figure, or several candidates have it. */
function byFigures(word: string, candidates: Iterable<string>): string | null {
  const figures = word
    .trim()
    .toLowerCase()
    .replace(/\s*mm$/, '');
  if (!/^\d[\dx./]*$/.test(figures)) return null;
  const having = [...candidates].filter((candidate) =>
    candidate
      .toLowerCase()
      .split(/[^\p{L}\d.]+/u)
      .includes(figures),
  );
  return having.length === 1 ? having[0]! : null;
}

/** Optimal string alignment distance, over three rolling rows. */
export function distance(a: string, b: string): number {
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const changed = last[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      let least = Math.min(changed, last[j]! + 1, row[j - 1]! + 1);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) least = Math.min(least, before[j - 2]! + 1);
      row.push(least);
    }
    before = last;
    last = row;
  }
  return last[b.length]!;
}
