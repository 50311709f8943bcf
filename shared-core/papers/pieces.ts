/** Panels of one carcass that are equal. */
export interface Pieces {
  readonly carcass: string;
  readonly panel: string;
  readonly pieces: number;
}

/** 'sink left, base left (4)': each panel by its name, with how many there are where it is not one. */
export function panelsNamed(panels: readonly Pieces[]): string {
  return panels.map(({ carcass, panel, pieces }) => `${carcass} ${panel}${manyWords(pieces)}`).join(', ');
}

/** ' (4)', or nothing for one. */
export const manyWords = (pieces: number): string => (pieces === 1 ? '' : ` (${pieces})`);

export const piecesIn = (panels: readonly Pick<Pieces, 'pieces'>[]): number =>
  panels.reduce((sum, { pieces }) => sum + pieces, 0);
