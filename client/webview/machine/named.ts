/** A panel of a carcass. */
export interface Named {
  readonly carcass: string;
  readonly panel: string;
}

export interface Lay {
  /** How the panel lies, as the server words it. */
  readonly words: string;
  readonly lowered: readonly string[];
  readonly held: boolean;
}

export const nameOf = ({ carcass, panel }: Named): string => `${carcass}, ${panel}`;
