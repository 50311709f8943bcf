import { asItIs, type Told } from '../words/told.js';

/** Panels of one carcass that are equal. */
export interface Pieces {
  readonly carcass: string;
  readonly panel: string;
  readonly pieces: number;
}

/** 'sink left, base left (4)': each panel by its name, with how many there are where it is not one. */
export function panelsNamed(panels: readonly Pieces[]): Told {
  return asItIs(panels.map(({ carcass, panel, pieces }) => `${carcass} ${panel}${manyWords(pieces)}`).join(', '));
}

/** 'base (4)': a carcass by its name, with how many there are where it is not one. */
export const carcassNamed = (name: string, count: number): Told => asItIs(`${name}${manyWords(count)}`);

/** ' (4)', or nothing for one. */
const manyWords = (pieces: number): string => (pieces === 1 ? '' : ` (${pieces})`);

export const piecesIn = (panels: readonly Pick<Pieces, 'pieces'>[]): number =>
  panels.reduce((sum, { pieces }) => sum + pieces, 0);
