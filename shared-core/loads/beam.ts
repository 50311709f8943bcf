// Deflections at the middle, in millimetres, of beams with one span: lengths in mm, forces in N, line loads in N/mm, stiffness EI
// in N·mm². First deflections: what creep adds is another matter. Formulas of any textbook, as Wood Handbook FPL-GTR-282, chapter 9.

export type Ends = 'lying' | 'clamped';

/** Of a load spread evenly: 5wL⁴/384EI with ends that lie, wL⁴/384EI with ends that are clamped. */
export function evenLoadSag(line: number, span: number, stiffness: number, ends: Ends): number {
  return ((ends === 'lying' ? 5 : 1) * line * span ** 4) / (384 * stiffness);
}

/** Of a load at the middle: PL³/48EI with ends that lie, PL³/192EI with ends that are clamped. */
export function middleLoadSag(force: number, span: number, stiffness: number, ends: Ends): number {
  return (force * span ** 3) / ((ends === 'lying' ? 48 : 192) * stiffness);
}

/** A rectangle in a section: its width, its height, how far down its upper edge is, and the modulus of its material. */
export interface Layer {
  readonly width: number;
  readonly height: number;
  readonly down: number;
  readonly modulus: number;
}

/**
 * EI of rectangles that are glued to one another and bend as one, in N·mm²: each about the common neutral axis, which is where
 * their areas balance, weighted by their moduli (the parallel-axis theorem for a transformed section).
 */
export function stiffnessOf(layers: readonly Layer[]): number {
  const parts = layers.map(({ width, height, down, modulus }) => ({
    axial: modulus * width * height,
    own: (modulus * width * height ** 3) / 12,
    middle: down + height / 2,
  }));
  const axial = parts.reduce((sum, part) => sum + part.axial, 0);
  const axis = parts.reduce((sum, part) => sum + part.axial * part.middle, 0) / axial;
  return parts.reduce((sum, { axial: area, own, middle }) => sum + own + area * (middle - axis) ** 2, 0);
}
