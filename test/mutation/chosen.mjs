// Lets only the chosen mutants run: whatever else lies within their places is put aside untried.
import { readFileSync } from 'node:fs';

/** What tells one mutant from all others: the same for the list of all and for a run of a few. */
export const keyOf = ({ fileName, location: { start, end }, mutatorName, replacement }) =>
  JSON.stringify([
    fileName.slice(fileName.lastIndexOf('shared-core/')),
    ...[start, end].flatMap(({ line, column }) => [line, column]),
    mutatorName,
    replacement,
  ]);

class Chosen {
  #keys;

  async init() {
    this.#keys = new Set(JSON.parse(readFileSync(process.env['BOREWRIGHT_CHOSEN_MUTANTS'], 'utf8')));
  }

  async group(mutants) {
    return [mutants.map(({ id }) => id)];
  }

  async check(mutants) {
    const resultOf = (mutant) =>
      this.#keys.has(keyOf(mutant)) ? { status: 'passed' } : { status: 'compileError', reason: 'not chosen' };
    return Object.fromEntries(mutants.map((mutant) => [mutant.id, resultOf(mutant)]));
  }
}

export const strykerPlugins = [{ kind: 'Checker', name: 'chosen', injectableClass: Chosen }];
