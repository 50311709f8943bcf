import { describe, expect, test } from 'vitest';
import { evenLoadSag, middleLoadSag, stiffnessOf, type Ends } from '../../../shared-core/loads/beam.js';
import { usualModulus } from '../../../shared-core/loads/boards.js';
import { sagsOf } from '../../../shared-core/loads/shelf.js';
import { neutralShop } from '../../../shared-core/shop/neutral.js';
import { analyse } from '../findings/jobs.js';

/*
 * Wood Handbook FPL-GTR-282, chapter 9, table 9-1: the deflection of a beam is kb·W·L³/(E·I) + ks·W·L/(G·A'), W being the whole
 * load, G the modulus of rigidity, A' five sixths of a rectangle's area. Coefficients from memory.
 */
const TABLE: readonly (readonly [load: 'even' | 'middle', ends: Ends, kb: readonly [number, number], ks: number])[] = [
  ['even', 'lying', [5, 384], 1 / 8],
  ['even', 'clamped', [1, 384], 1 / 8],
  ['middle', 'lying', [1, 48], 1 / 4],
  ['middle', 'clamped', [1, 192], 1 / 4],
];

const sagOf = (load: 'even' | 'middle', whole: number, span: number, stiffness: number, ends: Ends): number =>
  load === 'even' ? evenLoadSag(whole / span, span, stiffness, ends) : middleLoadSag(whole, span, stiffness, ends);

describe('the beam equations of the Wood Handbook', () => {
  test.each(TABLE)('%s load, ends %s', (load, ends, [over, under]) => {
    const [whole, span, stiffness] = [212.5, 870, 1.37e8];
    const handbook = ((over / under) * whole * span ** 3) / stiffness;
    expect(sagOf(load, whole, span, stiffness, ends)).toBeCloseTo(handbook, 9);
  });

  // Of shear we say nothing: with E/G = 16 (the usual value for boards; from memory) it is this share of what bending gives.
  test.each(TABLE)('what shear adds is little in shelves: %s load, ends %s', (load, ends, [over, under], ks) => {
    const share = (slenderness: number): number => {
      const [height, span] = [1, slenderness];
      const bending = ((over / under) * span ** 3) / (height ** 3 / 12);
      const shear = (ks * span * 16) / ((5 / 6) * height);
      return shear / bending;
    };
    // A shelf of 16 mm is seldom shorter than 400 mm.
    expect(share(400 / 16)).toBeLessThan(ends === 'lying' ? 0.05 : 0.21);
    expect(share(800 / 16)).toBeLessThan(ends === 'lying' ? 0.013 : 0.053);
  });

  // The same beam in pounds and inches, worked by hand: I = 12·0.75³/12 = 0.421875 in⁴, w = 40/12 = 3.3333 lb/in, E = 1.01e6 lb/in²
  // (plywood, table 12-1 of FPL-GTR-190: 6.96 GPa = 1.01·10⁶ lb/in²); 5·3.3333·36⁴/(384·1.01e6·0.421875) = 0.1711 in.
  test('a shelf of plywood under 40 lb a running foot, worked in pounds and inches', () => {
    const [inch, pound] = [25.4, 0.45359237 * 9.80665];
    const stiffness = stiffnessOf([
      { width: 12 * inch, height: 0.75 * inch, down: 0, modulus: usualModulus('plywood', 19.05) },
    ]);
    const sag = evenLoadSag((40 * pound) / (12 * inch), 36 * inch, stiffness, 'lying');
    expect(Math.abs(sag / inch / 0.1711 - 1)).toBeLessThan(0.005);
  });

  test('the same of a carcass in inches, from the text to the figure', () => {
    const shop = `unit: in
boards:
  ply: { thickness: 3/4, material: plywood }
habits: { board: ply, back-board: ply, creep-factor: 1, shelf-setback: 0 }
`;
    const text = `unit: in
shop: own.shop.yaml
carcasses:
  books: { kind: open, width: 37 1/2, depth: 12, height: 32, back: none, load: { standard: books }, fixed-shelves: 1 }
`;
    const job = analyse(text, { 'own.shop.yaml': shop });
    const { spec, carcass } = job.carcasses[0]!;
    const [shelf] = sagsOf(spec!, carcass!, job.shop.habits).filter(({ panel }) => panel.key === 'shelf-1');
    expect(shelf!.panel.length / 25_400).toBe(36);
    // The shelf's own weight is not in the example.
    const { own, spread } = shelf!.load;
    const ofBooks = (shelf!.sag * spread) / (own + spread);
    // 59.5 kg a metre is 39.98 lb a foot.
    expect(Math.abs(ofBooks / 25_400 / 0.1711 - 1)).toBeLessThan(0.006);
  });
});

describe('moduli of wood', () => {
  // Wood Handbook FPL-GTR-282, table 5-3, at 12 % moisture, in MPa: from memory. They were measured over spans of 14 times the height
  // and so have the shear of such beams in them already.
  const WOODS = {
    'eastern white pine': 8500,
    'ponderosa pine': 8900,
    'yellow-poplar': 10_900,
    'black cherry': 10_300,
    'black walnut': 11_600,
    'northern red oak': 12_500,
    'sugar maple': 12_600,
    'Douglas-fir, coast': 13_400,
    'yellow birch': 13_900,
  };

  test('solid wood counts as the softest of those that cabinets are made of', () => {
    expect(usualModulus('solid-wood', 20)).toBe(Math.min(...Object.values(WOODS)));
  });

  // ANSI A208.1-1999, particleboard M-1, M-S, M-2, M-3: 1725, 1900, 2250, 2750 N/mm². From memory.
  test('particleboard counts as no stiffer than the least grade of another standard, up to what is usual in carcasses', () => {
    for (const thickness of [15, 16, 18, 19]) expect(usualModulus('particleboard', thickness)).toBeLessThan(1725);
  });
});

describe('creep', () => {
  // Part of the first sag that is added in years under a load that stays. NDS 2018, 3.5.2: 0.5 for seasoned lumber, 1 for structural
  // panels; EN 1995-1-1, table 3.2, dry rooms: 0.6 for solid wood, 0.8 for plywood, 2.25 for particleboard and MDF. From memory.
  const ADDED = { lumber: 0.5, panels: 1, wood: 0.6, plywood: 0.8, boards: 2.25 };

  test('the usual factor is the least of what standards count for loads that stay', () => {
    expect(neutralShop.habits.creepFactor).toBe(1 + Math.min(...Object.values(ADDED)));
  });
});
