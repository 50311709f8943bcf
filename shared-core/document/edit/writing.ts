import type { Path } from '../place.js';
import { keyText, scalarText, type Quotes } from '../scalar-text.js';

/** Values and the keys and brackets that lead to them, as text. */
export class Writing {
  readonly #eol: string;

  /** `shorthand`: see `EditOptions`. */
  constructor(
    eol: string,
    readonly indent: number,
    readonly shorthand: (path: Path) => string | null,
  ) {
    this.#eol = eol;
  }

  /** `key: value` lines without the indentation of the first; `at` is the path of the map, `rest` starts with the key. */
  entryText(at: Path, rest: Path, value: string, column: number, inFlow: boolean): string {
    const [key, ...more] = rest;
    const path = [...at, key!];
    const start = `${keyText(String(key), inFlow)}:`;
    const short = more.length === 1 && more[0] === this.shorthand(path);
    if (more.length === 0 || short) return `${start} ${this.valueText(value, inFlow)}`;
    if (inFlow || typeof more[0] === 'number') return `${start} ${this.flowText(path, more, value)}`;
    const inner = column + this.indent;
    return `${start}${this.#eol}${' '.repeat(inner)}${this.entryText(path, more, value, inner, false)}`;
  }

  /** The value at the end of `rest` with the brackets that lead to it. */
  flowText(at: Path, rest: Path, value: string, inFlow = true): string {
    const [step, ...more] = rest;
    if (step === undefined) return this.valueText(value, inFlow);
    if (typeof step === 'number') return `[${this.flowText([...at, step], more, value)}]`;
    if (more.length === 0 && step === this.shorthand(at)) return this.valueText(value, inFlow);
    return `{ ${this.entryText(at, rest, value, 0, true)} }`;
  }

  valueText(value: string, inFlow: boolean, before: Quotes = ''): string {
    return isFlowText(value) ? value : scalarText(value, inFlow, before);
  }
}

/** A text that a change hands over as YAML, brackets and all. */
export function isFlowText(text: string): boolean {
  return /^[[{]/.test(text);
}
