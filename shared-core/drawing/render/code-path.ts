import type { CodeShape } from '../scene/scene.js';

/** The dark squares of a code as one path: those that stand side by side are one, so that no hairline shows between them. */
export function codePath({ x, y, size, dark }: Pick<CodeShape, 'x' | 'y' | 'size' | 'dark'>): string {
  const side = size / dark.length;
  const at = (value: number): string => String(Math.round(value * 10_000) / 10_000 + 0);
  return dark
    .flatMap((row, down) =>
      runsIn(row).map(
        ([from, to]) =>
          `M${at(x + from * side)} ${at(y + down * side)}H${at(x + to * side)}V${at(y + (down + 1) * side)}H${at(x + from * side)}Z`,
      ),
    )
    .join('');
}

/** From where to where a row is dark. */
function runsIn(row: readonly boolean[]): readonly (readonly [from: number, to: number])[] {
  const runs: [number, number][] = [];
  row.forEach((isDark, index) => {
    const last = runs.at(-1);
    if (!isDark) return;
    if (last?.[1] === index) last[1] = index + 1;
    else runs.push([index, index + 1]);
  });
  return runs;
}
