/**
 * A text to begin with: places to be filled in are written `${1:600}`, in the order in which the cursor visits them, and `$1`
 * stands for what is filled in there.
 */
export interface Skeleton {
  readonly label: string;
  readonly about: string;
  readonly text: string;
}

/** The text of a skeleton with every place filled in as it is proposed. */
export function filledIn(text: string): string {
  const proposed = new Map([...text.matchAll(/\$\{(\d+):([^}]*)\}/g)].map(([, place, usual]) => [place, usual!]));
  return text.replace(/\$\{\d+:([^}]*)\}/g, '$1').replace(/\$(\d+)/g, (_, place: string) => proposed.get(place) ?? '');
}
