import type { Path } from '../place.js';
import type { TextEdit } from '../pieces.js';
import { writtenEnd } from '../read.js';
import { scalarText } from '../scalar-text.js';
import type { ListNode, MapNode, ScalarNode, TreeNode } from '../tree.js';
import type { TextLines } from './text-lines.js';
import type { Step, Walk } from './walk.js';
import type { Writing } from './writing.js';

/** Sets values in a text, with what leads to them where it is not there yet. */
export class Setting {
  readonly #lines: TextLines;
  readonly #writing: Writing;

  constructor(lines: TextLines, writing: Writing) {
    this.#lines = lines;
    this.#writing = writing;
  }

  /** The edits that set the value at the end of a path; null where it cannot be set. */
  edits(walk: Walk, path: Path, value: string): readonly TextEdit[] | null {
    const last = walk.steps.at(-1)!;
    const { rest, inFlow } = walk;
    const at = path.slice(0, path.length - rest.length);
    const { node } = last;
    if (node === null || (node.kind === 'scalar' && node.text === '' && node.plain))
      return this.#fill(last, at, rest, value, inFlow);
    if (rest.length === 0) return this.#replace(last, node, value, inFlow);
    if (node.kind === 'scalar') return this.#unfold(last, node, at, rest, value, inFlow);
    if (node.kind === 'map') return typeof rest[0] === 'string' ? this.#addEntry(node, at, rest, value, inFlow) : null;
    return rest[0] === node.items.length ? this.#addItem(node, at, rest, value, inFlow) : null;
  }

  #replace(step: Step, node: TreeNode, value: string, inFlow: boolean): readonly TextEdit[] | null {
    const { start, end } = node.alias ?? node.place;
    if (node.kind === 'scalar' && node.alias === undefined) {
      const before = node.plain ? '' : this.#lines.quotesAt(start, end);
      return this.#overScalar(node, this.#writing.valueText(value, inFlow, before));
    }
    const text = this.#writing.valueText(value, inFlow);
    if (node.alias !== undefined || node.kind === 'scalar' || node.flow || !('entry' in step))
      return [{ start, end, text }];
    const colon = this.#lines.colonEnd(step.entry);
    if (colon === null) return null;
    const keyLineEnd = this.#lines.lineEnd(colon);
    // A comment beside the key stays; only the lines of the old value go.
    return [
      { start: colon, end: colon, text: ` ${text}` },
      { start: Math.min(keyLineEnd, end), end, text: '' },
    ];
  }

  /** Puts a text in the place of a single value. */
  #overScalar(node: ScalarNode, text: string): readonly TextEdit[] {
    const { start, end } = node.alias ?? node.place;
    const mark = /^[|>][-+\d]*/.exec(this.#lines.text.slice(start, end));
    if (node.plain || node.alias !== undefined || mark === null) return [{ start, end, text }];
    // Of a block text the mark gives way and the lines go; a comment beside the mark stays.
    return [
      { start, end: start + mark[0].length, text },
      { start: Math.min(this.#lines.lineEnd(start), end), end, text: '' },
    ];
  }

  /** Writes where nothing is written: behind a colon, behind a dash, or in an empty text. */
  #fill(step: Step, at: Path, rest: Path, value: string, inFlow: boolean): readonly TextEdit[] | null {
    if (step.parent === null) {
      if (rest.length === 0 || typeof rest[0] !== 'string') return null;
      const end = this.#lines.text.length;
      const gap = end === 0 || /(?:^\uFEFF|\n)$/.test(this.#lines.text) ? '' : this.#lines.eol;
      return [
        { start: end, end, text: `${gap}${this.#writing.entryText(at, rest, value, 0, false)}${this.#lines.eol}` },
      ];
    }
    if (!('entry' in step)) {
      const start = step.node!.place.start;
      const gap = /[\s[,]/.test(this.#lines.text[start - 1] ?? ' ') ? '' : ' ';
      return [{ start, end: start, text: gap + this.#writing.flowText(at, rest, value) }];
    }
    const colon = this.#lines.colonEnd(step.entry);
    const inline =
      inFlow ||
      rest.length === 0 ||
      typeof rest[0] === 'number' ||
      (rest.length === 1 && rest[0] === this.#writing.shorthand(at));
    if (inline) {
      const text =
        rest.length === 0 ? this.#writing.valueText(value, inFlow) : this.#writing.flowText(at, rest, value, inFlow);
      if (colon !== null) return [{ start: colon, end: colon, text: ` ${text}` }];
      const end = step.entry.keyPlace.end;
      return inFlow ? [{ start: end, end, text: `: ${text}` }] : null;
    }
    if (colon === null) return null;
    const column = this.#lines.column(step.entry.keyPlace.start) + this.#writing.indent;
    const lineEnd = this.#lines.lineEnd(colon);
    return [
      {
        start: lineEnd,
        end: lineEnd,
        text: `${this.#lines.eol}${' '.repeat(column)}${this.#writing.entryText(at, rest, value, column, false)}`,
      },
    ];
  }

  /** Makes room in a single value for what the path asks for beside it. */
  #unfold(
    step: Step,
    node: ScalarNode,
    at: Path,
    rest: Path,
    value: string,
    inFlow: boolean,
  ): readonly TextEdit[] | null {
    const short = this.#writing.shorthand(at);
    const { start, end } = node.alias ?? node.place;
    if (rest[0] === 0) return this.#overScalar(node, this.#writing.flowText(at, rest, value));
    if (short === null || typeof rest[0] !== 'string') return null;
    if (rest[0] === short) return rest.length === 1 ? this.#replace(step, node, value, inFlow) : null;
    const own = this.#lines.text.slice(start, end);
    const kept =
      node.alias !== undefined || (!own.includes('\n') && (!node.plain || scalarText(own, true) === own))
        ? own
        : scalarText(node.text, true);
    const added = this.#writing.entryText(at, rest, value, 0, true);
    return kept === own
      ? [
          { start, end: start, text: `{ ${short}: ` },
          { start: end, end, text: `, ${added} }` },
        ]
      : this.#overScalar(node, `{ ${short}: ${kept}, ${added} }`);
  }

  #addEntry(map: MapNode, at: Path, rest: Path, value: string, inFlow: boolean): readonly TextEdit[] | null {
    const last = map.entries.at(-1);
    if (map.flow || last === undefined) {
      const end = last?.value === null ? (this.#lines.colonEnd(last) ?? last.place.end) : last?.place.end;
      return this.#addInBrackets(map, end, this.#writing.entryText(at, rest, value, 0, true), ' ');
    }
    if (inFlow) return null;
    const column = this.#lines.column(map.entries[0]!.keyPlace.start);
    const lines = this.#writing.entryText(at, rest, value, column, false);
    const indent = ' '.repeat(column);
    if (last.value === null) {
      // What an unfinished last key holds may be about to be written, or stand in the next part of the text.
      const start = last.keyPlace.start;
      return [{ start, end: start, text: `${lines}${this.#lines.eol}${indent}` }];
    }
    const end = this.#lines.lineEnd(last.place.end);
    return [{ start: end, end, text: `${this.#lines.eol}${indent}${lines}` }];
  }

  #addItem(list: ListNode, at: Path, rest: Path, value: string, inFlow: boolean): readonly TextEdit[] | null {
    const last = list.items.at(-1);
    const text = this.#writing.flowText([...at, rest[0]!], rest.slice(1), value, inFlow || list.flow);
    if (list.flow || last === undefined) return this.#addInBrackets(list, last && writtenEnd(last), text, '');
    const dash = this.#lines.dashOf(last);
    if (dash === null) return null;
    const end = this.#lines.lineEnd(writtenEnd(last));
    return [{ start: end, end, text: `${this.#lines.eol}${' '.repeat(this.#lines.column(dash))}- ${text}` }];
  }

  #addInBrackets(
    node: MapNode | ListNode,
    lastEnd: number | undefined,
    text: string,
    pad: string,
  ): readonly TextEdit[] {
    if (lastEnd !== undefined) return [{ start: lastEnd, end: lastEnd, text: `, ${text}` }];
    const start = node.place.start + 1;
    const inner = this.#lines.text.slice(start, node.place.end - 1);
    return [{ start, end: inner.trim() === '' ? node.place.end - 1 : start, text: pad + text + pad }];
  }
}
