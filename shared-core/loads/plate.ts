/** Poisson's ratio of wood-based boards (common practice, no source). */
const POISSON = 0.3;
const FAR = 12;
/** Terms of the series; the tenth odd one adds less than a ten-thousandth. */
const TERMS = 10;

/**
 * The first deflection at the middle of the free edge, in millimetres, of a plate that lies on three edges and is free at the
 * fourth, under a load spread evenly: a shelf that is held at its ends and along its back. Lévy's series for plates (Timoshenko and
 * Woinowsky-Krieger, Theory of Plates and Shells, chapter 6).
 * @param pressure N/mm²
 * @param span length of the free edge, mm
 * @param depth from the held edge to the free one, mm
 * @param thickness mm
 * @param modulus N/mm²
 */
export function heldAtBackSag(
  pressure: number,
  span: number,
  depth: number,
  thickness: number,
  modulus: number,
): number {
  const rigidity = (modulus * thickness ** 3) / (12 * (1 - POISSON ** 2));
  let sum = 0;
  for (let term = 0; term < TERMS; term += 1) {
    const m = 2 * term + 1;
    sum += (Math.sin((m * Math.PI) / 2) * atFreeEdge(m, depth / span)) / m ** 5;
  }
  return ((4 * pressure * span ** 4) / (Math.PI ** 5 * rigidity)) * sum;
}

/**
 * One term at the free edge: 1 + A cosh y + B y sinh y + C sinh y + D y cosh y, with y = mπ·depth/span there. At the held edge
 * (y = 0) neither deflection nor moment gives A = -1 and B = -A·(…) = 1/2; no moment and no shear at the free edge give C and D.
 */
function atFreeEdge(m: number, ratio: number): number {
  const y = m * Math.PI * ratio;
  // So far from the held edge nothing of it is felt; what is left would be the difference of huge numbers.
  if (y > FAR) return 1 + (POISSON * (1 + POISSON)) / ((1 - POISSON) * (3 + POISSON));
  const [sinh, cosh] = [Math.sinh(y), Math.cosh(y)];
  const [a, b] = [-1, 0.5];
  const nu = POISSON;
  // Moment: f'' - nu f = 0, shear: f''' - (2 - nu) f' = 0, with derivatives by y.
  const moment = (f: number, f2: number): number => f2 - nu * f;
  const shear = (f1: number, f3: number): number => f3 - (2 - nu) * f1;
  const c = { f: sinh, f1: cosh, f2: sinh, f3: cosh };
  const d = { f: y * cosh, f1: cosh + y * sinh, f2: 2 * sinh + y * cosh, f3: 3 * cosh + y * sinh };
  const rest = {
    f: 1 + a * cosh + b * y * sinh,
    f1: a * sinh + b * (sinh + y * cosh),
    f2: a * cosh + b * (2 * cosh + y * sinh),
    f3: a * sinh + b * (3 * sinh + y * cosh),
  };
  const [c1, d1, r1] = [moment(c.f, c.f2), moment(d.f, d.f2), -moment(rest.f, rest.f2)];
  const [c2, d2, r2] = [shear(c.f1, c.f3), shear(d.f1, d.f3), -shear(rest.f1, rest.f3)];
  const determinant = c1 * d2 - c2 * d1;
  const [cc, dd] = [(r1 * d2 - r2 * d1) / determinant, (c1 * r2 - c2 * r1) / determinant];
  return rest.f + cc * c.f + dd * d.f;
}
