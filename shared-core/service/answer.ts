/** What is printed of a job. Either form is worked out when it is asked for, and is always the same for the same job. */
export interface Answer {
  /** To be read, its columns padded. */
  inWords(): string;
  /** For other programs, as JSON takes it; lengths in mm. */
  asData(): object;
}
