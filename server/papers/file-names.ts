/** The name, with a number behind it where it is taken: `a` and `A` are one file on some disks. */
export function freeName(name: string, taken: Set<string>): string {
  let free = name;
  for (let n = 2; taken.has(free.toLowerCase()); n += 1) free = `${name}-${n}`;
  taken.add(free.toLowerCase());
  return free;
}

/** A name as part of a file name on every system. */
export function fileName(name: string): string {
  return name.replace(/[^\p{L}\p{N}_-]+/gu, '_') || '_';
}
