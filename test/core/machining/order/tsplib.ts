import { readFileSync } from 'node:fs';

const FOLDER = new URL('../../../data/sequencing/', import.meta.url);

/** Reads the full matrix of a TSPLIB file. A .sop file gives the pairs that its -1 entries ask for. */
export function readInstance(name: string): { cost: number[][]; before: [number, number][] } {
  const text = readFileSync(new URL(name, FOLDER), 'utf8');
  const size = Number(/DIMENSION:\s*(\d+)/.exec(text)![1]);
  const numbers = text
    .slice(text.indexOf('EDGE_WEIGHT_SECTION') + 'EDGE_WEIGHT_SECTION'.length)
    .replace('EOF', '')
    .trim()
    .split(/\s+/)
    .map(Number);
  if (name.endsWith('.sop')) numbers.shift();
  if (numbers.length !== size * size) throw new Error(`${name}: ${numbers.length} numbers for ${size} nodes`);
  const before: [number, number][] = [];
  const cost = Array.from({ length: size }, (_, i) =>
    Array.from({ length: size }, (_unused, j) => {
      const value = numbers[i * size + j]!;
      if (value >= 0) return value;
      before.push([j, i]);
      return 0;
    }),
  );
  return { cost, before };
}
