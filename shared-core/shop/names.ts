import type { Finding } from '../document/finding.js';
import type { Place } from '../document/place.js';
import type { Entry } from '../schema/schema.js';
import { errorAt, quoted } from '../schema/tell.js';

const NOWHERE: Place = { part: 'shop', start: 0, end: 0 };

/** Collects the named things of a shop, so that one name never means two things of one sort. */
export class Names {
  readonly #findings: Finding[];
  readonly #builtIn: boolean;

  /** The built-in shop's things have no place: the owner has no file that writes them. */
  constructor(findings: Finding[], builtIn: boolean) {
    this.#findings = findings;
    this.#builtIn = builtIn;
  }

  place(entry: Entry<unknown>): Place {
    return this.#builtIn ? NOWHERE : entry.name.place;
  }

  /** Adds a thing under its name; a name that is taken is told, and the first thing keeps it. `sort`: 'fitting', 'machine'. */
  add<T extends { readonly place: Place }>(into: Map<string, T>, entry: Entry<unknown>, thing: T, sort: string): void {
    const name = entry.name.value;
    const taken = into.get(name);
    if (taken === undefined) {
      into.set(name, thing);
      return;
    }
    const related = [{ place: taken.place, message: `${quoted(name)} is first used here.` }];
    this.#findings.push(
      errorAt(
        'name-duplicate',
        entry.name.place,
        `There is another ${sort} named ${quoted(name)}; a job could not tell them apart. Give this one another name.`,
        { related },
      ),
    );
  }
}
