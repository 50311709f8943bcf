/** Least cost so that every row is covered: `min sum(cost x amount)`, the row's terms at least `need`, amounts from 0 to `most`. */
export interface CoverProgram {
  readonly columns: readonly {
    readonly cost: number;
    readonly most: number | null;
    /** What one of it gives each row, by row index. */
    readonly gives: readonly (readonly [row: number, amount: number])[];
    /** The scarce thing that it uses one of; null for none. */
    readonly uses: number | null;
  }[];
  readonly needs: readonly number[];
  /** How many there are of each scarce thing. */
  readonly scarce: readonly number[];
}

/** A linear programming library, which the core does not bring along. */
export interface CoverSolver {
  /** The optimum with fractions allowed: its amounts, the worth of one more of each need, and what a scarce thing saves (not positive). */
  relaxed(program: CoverProgram): {
    readonly amounts: readonly number[];
    readonly prices: readonly number[];
    readonly scarcity: readonly number[];
  } | null;
  /**
   * A good solution in whole amounts; null where none was found with this effort.
   * @param seconds the most time that it may take; null for a fixed effort
   */
  whole(program: CoverProgram, seconds: number | null): readonly number[] | null;
}
