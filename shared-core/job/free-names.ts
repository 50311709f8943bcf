/** So many names that no carcass has yet. */
export function freeNames(text: string, count: number): readonly string[] {
  const taken = new Set(text.match(/carcass-\d+/g));
  const names: string[] = [];
  for (let number = 1; names.length < count; number += 1) {
    const name = `carcass-${number}`;
    if (!taken.has(name)) names.push(name);
  }
  return names;
}

/** How this text ends its lines. */
export function lineFeedOf(text: string): string {
  return /\r?\n/.exec(text)?.[0] ?? '\n';
}
