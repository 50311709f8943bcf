import type { Corner, CuttingProblem, Part, SheetLayout, Size } from '../model.js';
import type { Lie } from '../staged/lie.js';
import type { SheetPattern } from '../staged/pattern.js';
import type { Stack, Strip } from '../staged/strip.js';

/** From strips and stacks, kerf included, to the cuts of one sheet with real sizes and places. */
export function layOut(pattern: SheetPattern, problem: CuttingProblem): SheetLayout {
  const { stock, first } = pattern.bed;
  const { trim } = problem.saw;
  const size = { length: stock.length - 2 * trim, width: stock.width - 2 * trim };
  const strips = [...pattern.strips].sort((a, b) => b.rise - a.rise || b.value - a.value);
  const table = new Table(problem, first);
  return { stock: stock.name, part: table.strips({ x: trim, y: trim }, size, strips) };
}

class Table {
  readonly #problem: CuttingProblem;
  readonly #first: 'along' | 'across';

  constructor(problem: CuttingProblem, first: 'along' | 'across') {
    this.#problem = problem;
    this.#first = first;
  }

  strips(at: Corner, size: Size, strips: readonly Strip[]): Part {
    const parts = strips.map((strip) => ({
      extent: strip.rise,
      make: (corner: Corner, each: Size): Part => this.#stacks(corner, each, strip),
    }));
    return this.#cut('rise', at, size, parts);
  }

  #stacks(at: Corner, size: Size, strip: Strip): Part {
    const stacks = [...strip.stacks].sort((a, b) => b.run - a.run || b.rise - a.rise);
    const parts = stacks.map((stack) => ({
      extent: stack.run,
      make: (corner: Corner, each: Size): Part => this.#pieces(corner, each, stack, strip.rise),
    }));
    return this.#cut('run', at, size, parts);
  }

  #pieces(at: Corner, size: Size, stack: Stack, rise: number): Part {
    const [only] = stack.lies;
    if (stack.lies.length === 1 && stack.rise === rise) return this.#piece(at, size, only!);
    const parts = stack.lies.map((lie) => ({
      extent: lie.rise,
      make: (corner: Corner, each: Size): Part => this.#piece(corner, each, lie),
    }));
    return this.#cut('rise', at, size, parts);
  }

  #piece(at: Corner, size: Size, { piece, turned }: Lie): Part {
    return { kind: 'piece', piece: this.#problem.pieces[piece]!.id, turned, at, size };
  }

  /** Parts one after the other from the corner, each followed by a cut, and what is left behind the last. */
  #cut(
    direction: 'run' | 'rise',
    at: Corner,
    size: Size,
    parts: readonly { readonly extent: number; readonly make: (at: Corner, size: Size) => Part }[],
  ): Part {
    const { kerf } = this.#problem.saw;
    const alongLength = (direction === 'run') === (this.#first === 'along');
    const whole = alongLength ? size.length : size.width;
    const made: Part[] = [];
    let from = 0;
    const place = (extent: number): { at: Corner; size: Size } =>
      alongLength
        ? { at: { x: at.x + from, y: at.y }, size: { length: extent, width: size.width } }
        : { at: { x: at.x, y: at.y + from }, size: { length: size.length, width: extent } };
    for (const { extent, make } of parts) {
      const each = place(extent - kerf);
      made.push(make(each.at, each.size));
      from += extent;
    }
    if (whole > from)
      made.push({ kind: 'offcut', kept: this.#isKept(place(whole - from).size), ...place(whole - from) });
    return { kind: 'cut', cuts: alongLength ? 'across' : 'along', at, size, parts: made };
  }

  #isKept({ length, width }: Size): boolean {
    const least = this.#problem.offcut;
    return length >= least.length && width >= least.width;
  }
}
