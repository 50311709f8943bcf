// Two-dimensional guillotine cutting of one sheet, fixed orientation, no kerf. Files from the ESICUP data sets (repository
// JeroenGar/datasets, folder 2d_rectangular, CC0). cgcut: Christofides and Whitlock 1977. wang: Wang 1983; olive: Oliveira and
// Ferreira 1990. gcut: Beasley 1985, any number of copies. Optima: cgcut and olive read in a stored copy of the source; wang and gcut from
// memory, and each proven since by an exact program.
import { readFileSync } from 'node:fs';
import type { OneSheet, Rectangle } from '../../oracles/one-sheet/problem.js';

const numbers = (file: string): number[] =>
  readFileSync(new URL(`../../data/guillotine/${file}`, import.meta.url), 'latin1')
    .replaceAll('\u001a', ' ')
    .trim()
    .split(/\s+/)
    .map(Number);

function sheet(
  file: string,
  perRow: number,
  rectangle: (row: readonly number[], length: number, width: number) => Rectangle,
): OneSheet {
  const [count, length, width, ...rest] = numbers(file);
  const rectangles = Array.from({ length: count! }, (_, i) =>
    rectangle(rest.slice(i * perRow, (i + 1) * perRow), length!, width!),
  );
  return { length: length!, width: width!, rectangles };
}
const cgcut = (file: string): OneSheet =>
  sheet(`cgcut/${file}`, 4, ([length, width, most, value]) => ({
    length: length!,
    width: width!,
    most: most!,
    value: value!,
  }));
const wang = (file: string): OneSheet =>
  sheet(`wang/${file}`, 4, ([value, length, width, most]) => ({
    length: length!,
    width: width!,
    most: most!,
    value: value!,
  }));
const gcut = (file: string): OneSheet =>
  sheet(`gcut/${file}`, 3, ([length, width, value], sheetLength, sheetWidth) => ({
    length: length!,
    width: width!,
    most: Math.floor(sheetLength / length!) * Math.floor(sheetWidth / width!),
    value: value!,
  }));
/** The same instance with any number of copies of each piece. */
const unlimited = ({ length, width, rectangles }: OneSheet): OneSheet => ({
  length,
  width,
  rectangles: rectangles.map((one) => ({
    ...one,
    most: Math.floor(length / one.length) * Math.floor(width / one.width),
  })),
});

export const published: readonly { readonly name: string; readonly sheet: OneSheet; readonly optimum: number }[] = [
  { name: 'cgcut1', sheet: cgcut('cgcut1.txt'), optimum: 244 },
  { name: 'cgcut2', sheet: cgcut('cgcut2.txt'), optimum: 2892 },
  { name: 'cgcut3', sheet: cgcut('cgcut3.txt'), optimum: 1860 },
  { name: 'cgcut1, any copies', sheet: unlimited(cgcut('cgcut1.txt')), optimum: 249 },
  { name: 'cgcut2, any copies', sheet: unlimited(cgcut('cgcut2.txt')), optimum: 3076 },
  { name: 'cgcut3, any copies', sheet: unlimited(cgcut('cgcut3.txt')), optimum: 2240 },
  { name: 'wang1', sheet: wang('wang1.dat'), optimum: 2277 },
  { name: 'wang2', sheet: wang('wang2.DAT'), optimum: 2694 },
  { name: 'olive1', sheet: wang('olive1.dat'), optimum: 2737 },
  { name: 'gcut1', sheet: gcut('gcut1.txt'), optimum: 56460 },
  { name: 'gcut2', sheet: gcut('gcut2.txt'), optimum: 60536 },
  { name: 'gcut3', sheet: gcut('gcut3.txt'), optimum: 61036 },
  { name: 'gcut4', sheet: gcut('gcut4.txt'), optimum: 61698 },
  { name: 'gcut5', sheet: gcut('gcut5.txt'), optimum: 246000 },
];
