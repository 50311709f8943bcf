/**
 * What is drawn inside the rim of a bore, on a unit circle, x to the right and y down. Each purpose has a pattern of its own,
 * so that none is told by colour alone.
 */
export type MarkPart =
  | { readonly kind: 'circle'; readonly r: number; readonly filled: boolean }
  | {
      readonly kind: 'path';
      readonly points: readonly MarkPoint[];
      readonly closed: boolean;
      readonly filled: boolean;
    };

interface MarkPoint {
  readonly x: number;
  readonly y: number;
}

/** The colours that bores are drawn in; a theme or a printer says what each is. */
export type Ink = 'black' | 'brown' | 'blue' | 'violet' | 'green';

export const circle = (r: number, filled: boolean): MarkPart => ({ kind: 'circle', r, filled });

export const line = (...points: readonly (readonly [number, number])[]): MarkPart => ({
  kind: 'path',
  points: points.map(([x, y]) => ({ x, y })),
  closed: false,
  filled: false,
});

/** A filled sector of the unit circle, from one angle to another in quarter turns clockwise on the page. */
export function sector(from: number, to: number): MarkPart {
  const steps = Math.round((to - from) * 8);
  const rim = Array.from({ length: steps + 1 }, (_, step) => {
    const angle = ((from + step / 8) * Math.PI) / 2;
    return { x: round(Math.cos(angle)), y: round(Math.sin(angle)) };
  });
  return { kind: 'path', points: [{ x: 0, y: 0 }, ...rim], closed: true, filled: true };
}

const round = (value: number): number => Math.round(value * 1000) / 1000;

/** Half of the side of the square in a unit circle. */
export const DIAGONAL = round(Math.SQRT1_2);
