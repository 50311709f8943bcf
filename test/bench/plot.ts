import { scaleLog } from 'd3-scale';
import { line } from 'd3-shape';

/** A figure over the number of carcasses. */
export interface Curve {
  readonly name: string;
  readonly points: readonly (readonly [carcasses: number, figure: number])[];
}

const [WIDTH, HEIGHT] = [720, 360];
const ROOM = { left: 70, right: 190, top: 40, bottom: 46 };
/** So far apart that they can be told from each other by those who do not see colours as most do, and in print. */
const STROKES = [
  { colour: '#1b4f9c', dashes: '' },
  { colour: '#b4431f', dashes: '8 4' },
  { colour: '#3a6b35', dashes: '2 4' },
  { colour: '#555555', dashes: '10 3 2 3' },
];

/** Curves over the number of carcasses, both by their logarithms, as SVG. */
export function plotted(title: string, unit: string, curves: readonly Curve[]): string {
  const all = curves.flatMap(({ points }) => points);
  const [sizes, figures] = [all.map(([size]) => size), all.map(([, figure]) => figure)];
  const x = scaleLog([Math.min(...sizes), Math.max(...sizes)], [ROOM.left, WIDTH - ROOM.right]);
  const y = scaleLog([Math.min(...figures), Math.max(...figures)], [HEIGHT - ROOM.bottom, ROOM.top]).nice();
  const path = line<readonly [number, number]>(
    ([size]) => x(size),
    ([, figure]) => y(figure),
  );
  const [left, right, bottom] = [ROOM.left, WIDTH - ROOM.right, HEIGHT - ROOM.bottom];
  const heights = spread(curves.map(({ points }) => y(points.at(-1)![1])));
  const parts = [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${HEIGHT}" font-family="sans-serif" font-size="12">`,
    `<title>${title}</title><rect width="${WIDTH}" height="${HEIGHT}" fill="#fff"/>`,
    `<text x="${left}" y="22" font-size="14">${title}, ${unit}</text>`,
    ...y
      .ticks()
      .filter(isRound)
      .map((tick) => {
        const at = y(tick).toFixed(1);
        return `<path d="M${left} ${at}H${right}" stroke="#ddd"/><text x="${left - 8}" y="${at}" dy="4" text-anchor="end">${tick.toLocaleString('en')}</text>`;
      }),
    ...[...new Set(sizes)].map((size) => {
      const at = x(size).toFixed(1);
      return `<path d="M${at} ${bottom}v5" stroke="#000"/><text x="${at}" y="${bottom + 18}" text-anchor="middle">${size.toLocaleString('en')}</text>`;
    }),
    `<text x="${(left + right) / 2}" y="${HEIGHT - 8}" text-anchor="middle">carcasses</text>`,
    `<path d="M${left} ${ROOM.top}V${bottom}H${right}" fill="none" stroke="#000"/>`,
    ...curves.map(({ name, points }, index) => {
      const { colour, dashes } = STROKES[index % STROKES.length]!;
      const end = `<text x="${right + 10}" y="${heights[index]!.toFixed(1)}" dy="4" fill="${colour}">${name}</text>`;
      return `<path d="${path(points)!}" fill="none" stroke="${colour}" stroke-width="2" stroke-dasharray="${dashes}"/>${end}`;
    }),
    '</svg>',
  ];
  return `${parts.join('\n')}\n`;
}

/** One, two or five of a power of ten: more lines would stand on each other. */
const isRound = (tick: number): boolean => [1, 2, 5].includes(tick / 10 ** Math.floor(Math.log10(tick)));

/** Heights of labels moved down where they would stand on each other. */
function spread(heights: readonly number[]): readonly number[] {
  const placed = [...heights];
  let last = Number.NEGATIVE_INFINITY;
  for (const index of heights.map((_, i) => i).sort((a, b) => heights[a]! - heights[b]!)) {
    last = Math.max(heights[index]!, last + 15);
    placed[index] = last;
  }
  return placed;
}
