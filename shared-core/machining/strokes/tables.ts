/**
 * A sum of small cost tables over choices that each take one of `domain` values, and the least it can be. Exact:
 * - a value is struck out where another is at least as good whatever the neighbours are (persistency);
 * - a choice with one value left is settled, and its neighbours pay for it;
 * - a choice is taken out by a table over its neighbours that holds, for each of their settings, the least over the
 *   choice (variable elimination, Bertele and Brioschi 1972), the choice with the fewest neighbours first.
 * The work grows with the number of neighbours only, not with the number of choices.
 */
export class Tables {
  /** The part of the sum that hangs on no choice. */
  constant = 0;
  /** Costs of each value of a choice; Infinity where the value is struck out. */
  readonly #singles = new Map<number, Float64Array>();
  readonly #links = new Map<number, Link[]>();
  #wide: Table[] = [];

  constructor(readonly domain: number) {}

  copy(): Tables {
    const twin = new Tables(this.domain);
    twin.constant = this.constant;
    for (const [choice, costs] of this.#singles) twin.#singles.set(choice, costs.slice());
    // Links and wide tables are never changed, only replaced.
    for (const [choice, links] of this.#links) twin.#links.set(choice, links.slice());
    twin.#wide = this.#wide.slice();
    return twin;
  }

  /** Adds a cost for each value of a choice. */
  addOne(choice: number, costs: Float64Array): void {
    const own = this.#single(choice);
    for (let value = 0; value < this.domain; value += 1) own[value]! += costs[value]!;
  }

  /** Adds a cost for each pair of values of two choices; those of `a` change slower. */
  addTwo(a: number, b: number, costs: Float64Array): void {
    const { domain } = this;
    const ofA = onlyValue(this.#single(a));
    const ofB = onlyValue(this.#single(b));
    if (ofA >= 0) {
      this.addOne(b, costs.subarray(ofA * domain, ofA * domain + domain));
    } else if (ofB >= 0) {
      const column = new Float64Array(domain);
      for (let value = 0; value < domain; value += 1) column[value] = costs[value * domain + ofB]!;
      this.addOne(a, column);
    } else {
      this.#link(a, b, costs);
      this.#link(b, a, turned(costs, domain));
    }
  }

  /**
   * Makes the sum as small as it gets without touching what later tables may be added to: takes out all choices but
   * those for which `later` gives a number: the most that later tables can lift one value of it over another. A choice
   * with more than `most` neighbours stays too: its table would be large, and later some of them may be settled.
   */
  reduce(later: Later, most: number, taken?: Taken[]): void {
    this.#strikeOut(later, taken);
    const going = [...this.#singles.keys()].filter((choice) => later(choice, 0, 0) === null).sort((a, b) => a - b);
    const degree = (choice: number): number => {
      if (this.#wide.length === 0) return this.#links.get(choice)?.length ?? 0;
      return this.#around(choice).length;
    };
    while (going.length > 0) {
      let at = 0;
      for (let g = 0, least = Infinity; g < going.length && least > 1; g += 1) {
        const own = degree(going[g]!);
        if (own < least) {
          least = own;
          at = g;
        }
      }
      const choice = going[at]!;
      if (degree(choice) > most) break;
      going[at] = going[going.length - 1]!;
      going.pop();
      const record = this.#takeOut(choice);
      taken?.push(record);
    }
    for (const costs of this.#singles.values()) {
      const least = costs.reduce((a, b) => Math.min(a, b));
      this.constant += least;
      for (let value = 0; value < this.domain; value += 1) costs[value]! -= least;
    }
  }

  /** The least sum over all choices. */
  least(): number {
    const rest = this.copy();
    rest.reduce(() => null, Infinity);
    return rest.constant;
  }

  /** The costs of each choice by itself. */
  eachSingle(take: (choice: number, costs: Float64Array) => void): void {
    this.#singles.forEach((costs, choice) => take(choice, costs));
  }

  /** What is left beside the constant, as a text that is equal for equal tables. */
  signature(): string {
    const parts: string[] = [];
    for (const choice of [...this.#singles.keys()].sort((a, b) => a - b)) {
      parts.push(`${choice}:${this.#singles.get(choice)!.join()}`);
      for (const { other, costs } of (this.#links.get(choice) ?? []).toSorted((a, b) => a.other - b.other)) {
        if (other > choice) parts.push(`${other}=${costs.join()}`);
      }
    }
    for (const { over, costs } of this.#wide) parts.push(`${over.join('+')}=${costs.join()}`);
    return parts.join(';');
  }

  #single(choice: number): Float64Array {
    let own = this.#singles.get(choice);
    if (own === undefined) {
      own = new Float64Array(this.domain);
      this.#singles.set(choice, own);
    }
    return own;
  }

  #link(from: number, to: number, costs: Float64Array): void {
    const links = this.#links.get(from);
    const at = links?.findIndex(({ other }) => other === to) ?? -1;
    if (links === undefined) this.#links.set(from, [{ other: to, costs }]);
    else if (at < 0) links.push({ other: to, costs });
    else links[at] = { other: to, costs: costs.map((value, index) => value + links[at]!.costs[index]!) };
  }

  #unlink(from: number, to: number): void {
    const links = this.#links.get(from)!;
    links.splice(
      links.findIndex(({ other }) => other === to),
      1,
    );
  }

  /** Strikes out values and settles choices for as long as that leads on. */
  #strikeOut(later: Later, taken?: Taken[]): void {
    const { domain } = this;
    const queue = [...this.#singles.keys()].sort((a, b) => a - b);
    const queued = new Set(queue);
    for (let head = 0; head < queue.length; head += 1) {
      const choice = queue[head]!;
      queued.delete(choice);
      const costs = this.#singles.get(choice);
      if (costs === undefined || this.#wide.some(({ over }) => over.includes(choice))) continue;
      const links = this.#links.get(choice) ?? [];
      let struck = false;
      for (let worse = domain - 1; worse >= 0; worse -= 1) {
        for (let better = 0; better < domain && costs[worse] !== Infinity; better += 1) {
          if (better === worse || costs[better] === Infinity) continue;
          let most = later(choice, better, worse) ?? 0;
          const gain = costs[worse]! - costs[better]!;
          for (let l = 0; l < links.length && most <= gain; l += 1) most += this.#mostLift(links[l]!, better, worse);
          if (gain < most) continue;
          costs[worse] = Infinity;
          struck = true;
        }
      }
      const value = onlyValue(costs);
      const wake = struck ? links.map(({ other }) => other) : [];
      if (value >= 0) {
        for (const { other, costs: pair } of links) {
          this.addOne(other, pair.subarray(value * domain, value * domain + domain));
          this.#unlink(other, choice);
        }
        this.#links.delete(choice);
        if (later(choice, 0, 0) === null) {
          this.constant += costs[value]!;
          this.#singles.delete(choice);
          taken?.push({ choice, over: [], best: Uint8Array.of(value) });
        }
      }
      for (const other of wake) {
        if (queued.has(other)) continue;
        queued.add(other);
        queue.push(other);
      }
    }
  }

  /** The most by which a link can charge `better` more than `worse`, over what the neighbour may still be. */
  #mostLift(link: Link, better: number, worse: number): number {
    const { domain } = this;
    const other = this.#singles.get(link.other)!;
    let most = -Infinity;
    for (let value = 0; value < domain; value += 1) {
      if (other[value] === Infinity) continue;
      most = Math.max(most, link.costs[better * domain + value]! - link.costs[worse * domain + value]!);
    }
    return most;
  }

  #around(choice: number): number[] {
    const around = new Set((this.#links.get(choice) ?? []).map(({ other }) => other));
    for (const { over } of this.#wide) if (over.includes(choice)) for (const other of over) around.add(other);
    around.delete(choice);
    return [...around].sort((a, b) => a - b);
  }

  #takeOut(choice: number): Taken {
    const { domain } = this;
    const around = this.#around(choice);
    const own = this.#single(choice);
    const links = this.#links.get(choice) ?? [];
    const wide = this.#wide.filter(({ over }) => over.includes(choice));
    if (wide.length > 0) this.#wide = this.#wide.filter((table) => !wide.includes(table));

    const count = domain ** around.length;
    const costs = new Float64Array(count);
    const best = new Uint8Array(count);
    const values = new Uint8Array(around.length);
    const places = links.map(({ other }) => around.indexOf(other));
    const wideOver = wide.map(({ over }) => over.map((member) => around.indexOf(member)));
    for (let setting = 0; setting < count; setting += 1) {
      for (let a = around.length - 1, rest = setting; a >= 0; a -= 1) {
        values[a] = rest % domain;
        rest = (rest - values[a]!) / domain;
      }
      let least = Infinity;
      for (let value = 0; value < domain; value += 1) {
        let sum = own[value]!;
        for (let l = 0; l < links.length; l += 1) sum += links[l]!.costs[value * domain + values[places[l]!]!]!;
        for (let w = 0; w < wide.length; w += 1) {
          let index = 0;
          for (const place of wideOver[w]!) index = index * domain + (place < 0 ? value : values[place]!);
          sum += wide[w]!.costs[index]!;
        }
        if (sum < least) {
          least = sum;
          best[setting] = value;
        }
      }
      costs[setting] = least;
    }

    for (const { other } of links) this.#unlink(other, choice);
    this.#links.delete(choice);
    this.#singles.delete(choice);
    if (around.length === 0) this.constant += costs[0]!;
    else if (around.length === 1) this.addOne(around[0]!, costs);
    else if (around.length === 2) this.addTwo(around[0]!, around[1]!, costs);
    else this.#wide.push({ over: around, costs });
    return { choice, over: around, best };
  }
}

/** Costs of a choice together with another; those of the choice itself change slower. */
interface Link {
  readonly other: number;
  readonly costs: Float64Array;
}

/** Costs over three choices or more, ascending; the first changes slowest. */
interface Table {
  readonly over: readonly number[];
  readonly costs: Float64Array;
}

/** The most that later tables can charge `better` more than `worse`; null for a choice that none will charge. */
type Later = (choice: number, better: number, worse: number) => number | null;

/** How a choice that was taken out follows from its neighbours. */
export interface Taken {
  readonly choice: number;
  readonly over: readonly number[];
  readonly best: Uint8Array;
}

/** The values of choices that were taken out, the last one first. */
export function readBack(domain: number, taken: readonly Taken[]): Map<number, number> {
  const values = new Map<number, number>();
  for (const { choice, over, best } of taken.toReversed()) {
    let setting = 0;
    for (const other of over) setting = setting * domain + values.get(other)!;
    values.set(choice, best[setting]!);
  }
  return values;
}

/** The one value that is not struck out; -1 where there are several. */
function onlyValue(costs: Float64Array): number {
  let only = -1;
  for (let value = 0; value < costs.length; value += 1) {
    if (costs[value] === Infinity) continue;
    if (only >= 0) return -1;
    only = value;
  }
  return only;
}

function turned(costs: Float64Array, domain: number): Float64Array {
  const twin = new Float64Array(domain * domain);
  for (let a = 0; a < domain; a += 1) for (let b = 0; b < domain; b += 1) twin[b * domain + a] = costs[a * domain + b]!;
  return twin;
}
