import { MICROMETRES_PER_MM } from '../length/units.js';
import type { Board } from '../shop/model.js';

type Material = Board['material'];

/** Kilograms per cubic metre. Common practice, no source. */
const DENSITY: Readonly<Record<Material, number>> = {
  particleboard: 680,
  mdf: 750,
  plywood: 600,
  'solid-wood': 600,
};

/** Modulus of elasticity in bending, in N/mm²: up to a thickness in millimetres, the last for all that is thicker. */
const MODULUS: Readonly<Record<Material, readonly (readonly [upTo: number, modulus: number])[]>> = {
  // EN 312, type P2: 1800 for 9 and 12 mm, 1600 for 15 to 18 mm, 1500 for 25 mm, 1350 for 30 mm (from a secondary page). Where one
  // range ends and the next begins, and 1200 and 1050 for thicker boards: from memory.
  particleboard: [
    [13, 1800],
    [20, 1600],
    [25, 1500],
    [32, 1350],
    [40, 1200],
    [Infinity, 1050],
  ],
  // EN 622-5, MDF for general use: from memory.
  mdf: [
    [9, 2700],
    [12, 2500],
    [19, 2200],
    [30, 2100],
    [Infinity, 1900],
  ],
  // Wood Handbook FPL-GTR-190, table 12-1: 6.96 to 8.55 GPa.
  plywood: [[Infinity, 6960]],
  // Wood Handbook FPL-GTR-282, table 5-3, eastern white pine at 12 % moisture: from memory. Most woods are stiffer.
  'solid-wood': [[Infinity, 8500]],
};

/** Kilograms per cubic metre: what the shop says, else what is usual for the material. */
export function densityOf({ density, material }: Pick<Board, 'density' | 'material'>): number {
  return density ?? DENSITY[material];
}

/**
 * Modulus of elasticity in bending, in N/mm²: what the shop says, else the published one of the material and the thickness. The
 * standards say that theirs are no characteristic values for design.
 */
export function modulusOf({ modulus, material, thickness }: Pick<Board, 'modulus' | 'material' | 'thickness'>): number {
  return modulus ?? usualModulus(material, thickness / MICROMETRES_PER_MM);
}

/** @param thickness in millimetres */
export function usualModulus(material: Material, thickness: number): number {
  const steps = MODULUS[material];
  return (steps.find(([upTo]) => thickness <= upTo) ?? steps.at(-1)!)[1];
}
