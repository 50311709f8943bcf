import type { Alias, CST, ParsedNode, Scalar, YAMLError, YAMLMap, YAMLSeq } from 'yaml';
import { Composer, isAlias, isMap, isScalar, isSeq, Lexer, Parser } from 'yaml';
import { explain } from './explain.js';
import type { Repair } from './finding.js';
import { layoutFault, type LayoutFault } from './layout-fault.js';
import { isBlank, lineEnd, lineStart } from './lines.js';
import { say } from './messages.js';
import type { Part, Place } from './place.js';
import type { MapEntry, TextProblem, TreeNode } from './tree.js';
import type { Message } from '../words/message.js';

/** Text of one part beyond this many UTF-16 code units is not read; a thousand carcasses in one part are still below. */
const LONGEST_PART = 400_000;
/** Aliases can make a short text stand for a huge tree; no workshop's file has so many values. */
const MOST_NODES = 200_000;
/** Anchors, aliases and tags; each costs the reader more than a value does. */
const MOST_MARKS = 5_000;
const DEEPEST = 64;
const MOST_PROBLEMS = 20;
/** A dash stands no farther before its item. */
const FARTHEST_DASH = 20;

export interface ReadTree {
  /** null where the text holds nothing, or nothing that could be read. */
  readonly root: TreeNode | null;
  /** In the order of the text. Empty exactly when the text is sound. */
  readonly problems: readonly TextProblem[];
}

/**
 * Reads YAML as a located tree. Every value stays text: what `600` or `yes` means is for the schema to say. Aliases are
 * followed. Never throws; the time is bounded by the length of the text.
 */
export function readTree(text: string, part: Part): ReadTree {
  if (text.length > LONGEST_PART) {
    const message = say.partTooLong({ length: text.length, most: LONGEST_PART });
    return { root: null, problems: [{ message, place: firstLine(text, part) }] };
  }
  const reader = new Reader(text, part);
  try {
    const root = reader.read();
    return { root, problems: reader.problems() };
  } catch {
    // The YAML reader may run out of stack on a text that nobody would write.
    return { root: null, problems: [{ message: say.beyondMeasure(), place: firstLine(text, part) }] };
  }
}

class Reader {
  readonly #text: string;
  readonly #part: Part;
  readonly #found: TextProblem[] = [];
  /** Faults of layout that are told: what stands oddly in them follows from them. */
  readonly #faulty: LayoutFault[] = [];
  readonly #anchors = new Map<string, { node: TreeNode | null; size: number } | 'open'>();
  #nodes = 0;
  #full = false;

  constructor(text: string, part: Part) {
    this.#text = text;
    this.#part = part;
  }

  problems(): readonly TextProblem[] {
    return this.#found.toSorted((a, b) => a.place.start - b.place.start).slice(0, MOST_PROBLEMS);
  }

  read(): TreeNode | null {
    const tokens = this.#tokens();
    if (tokens === null) return null;
    const composer = new Composer({ uniqueKeys: false, schema: 'failsafe', merge: false, logLevel: 'silent' });
    const [document, second] = withoutStacks(() => [...composer.compose(tokens, true, this.#text.length)]);
    if (document === undefined) return null;
    this.#sayErrors(document.errors);
    if (second !== undefined) {
      const at = second.contents?.range?.[0] ?? second.range[0];
      this.#say(at, at + 1, say.twoDocuments());
    }
    return document.contents === null ? null : this.#node(document.contents);
  }

  /** The syntax tree; null, with a problem, where reading it on would cost too much. */
  #tokens(): CST.Token[] | null {
    const parser = new Parser();
    const tokens: CST.Token[] = [];
    let offset = 0;
    let marks = 0;
    for (const lexeme of new Lexer().lex(this.#text)) {
      for (const token of parser.next(lexeme)) tokens.push(token);
      if (parser.stack.length > DEEPEST) {
        this.#say(offset, offset + 1, say.tooDeep({ most: DEEPEST }));
        return null;
      }
      if (/^[&*!]/.test(lexeme)) marks += 1;
      if (marks > MOST_MARKS) {
        this.#say(offset, offset + 1, say.tooManyMarks({ most: MOST_MARKS }));
        return null;
      }
      // The lexer's own marks of structure stand for no text.
      if (!/^[\x02\x18\x1f]/.test(lexeme)) offset += lexeme.length;
    }
    for (const token of parser.end()) tokens.push(token);
    return tokens;
  }

  /** The tree of one YAML node; null for a value that is not written. */
  #node(node: ParsedNode | null): TreeNode | null {
    if (node === null || this.#full) return null;
    this.#nodes += 1;
    if (isAlias(node)) return this.#follow(node);
    const before = this.#nodes;
    const anchor = (node as { anchor?: string }).anchor;
    if (anchor !== undefined) this.#anchors.set(anchor, 'open');
    const tree = this.#plainNode(node);
    if (anchor !== undefined) this.#anchors.set(anchor, { node: tree, size: this.#nodes - before + 1 });
    return tree;
  }

  #plainNode(node: Exclude<ParsedNode, Alias.Parsed>): TreeNode | null {
    if (isScalar(node)) return this.#scalar(node);
    if (isMap(node)) return this.#map(node);
    if (isSeq(node)) return this.#list(node);
    return null;
  }

  #scalar(node: Scalar.Parsed): TreeNode | null {
    const text = typeof node.value === 'string' ? node.value : node.source;
    const plain = node.type === 'PLAIN' || node.type === undefined;
    if (plain && text === '') return null;
    const [start, end] = node.range;
    // A block scalar runs to the start of the next line; the tree ends it with its last line.
    const trimmed = this.#text.slice(start, end).replace(/[\r\n]+$/, '').length;
    return { kind: 'scalar', place: this.#place(start, start + trimmed), text, plain };
  }

  #map(node: YAMLMap.Parsed): TreeNode {
    const entries: MapEntry[] = [];
    for (const pair of node.items) {
      const entry = this.#entry(pair.key, pair.value);
      if (entry !== null) entries.push(entry);
    }
    const flow = node.flow === true;
    const last = node.items.at(-1);
    // A last key with nothing behind it ends the map with its colon.
    const end = Math.max(entries.at(-1)?.place.end ?? 0, last?.value?.range[0] ?? 0);
    const written = node.range[0] + this.#text.slice(node.range[0], end).trimEnd().length;
    const place = this.#place(node.range[0], flow || entries.length === 0 ? node.range[1] : written);
    return { kind: 'map', place, entries, flow };
  }

  #entry(keyNode: ParsedNode | null, valueNode: ParsedNode | null): MapEntry | null {
    if (keyNode === null || !isScalar(keyNode)) {
      const [start, end] = keyNode?.range ?? valueNode?.range ?? [0, 1];
      const isTold = this.#faulty.some((fault) => fault.start <= start && start < fault.muteTo);
      if (!isTold) this.#say(start, end, say.keyNotPlain());
      return null;
    }
    const range = keyNode.range;
    const key = typeof keyNode.value === 'string' ? keyNode.value : '';
    const keyPlace = this.#place(range[0], range[1]);
    if ((keyNode as { anchor?: string }).anchor !== undefined) this.#node(keyNode);
    const value = this.#node(valueNode);
    return { key, keyPlace, place: this.#place(range[0], Math.max(range[1], writtenEnd(value))), value };
  }

  #list(node: YAMLSeq.Parsed): TreeNode {
    const items: TreeNode[] = [];
    for (const item of node.items) {
      const tree = this.#node(item);
      if (tree !== null) items.push(tree);
      else if (!this.#full && !isAlias(item)) {
        const [start] = (item as ParsedNode).range;
        items.push({ kind: 'scalar', place: this.#place(start, start), text: '', plain: true });
      }
    }
    const flow = node.flow === true;
    const end = Math.max(node.range[0], writtenEnd(items.at(-1) ?? null));
    const place = this.#place(node.range[0], flow || items.length === 0 ? node.range[1] : end);
    return { kind: 'list', place, items, flow, dashes: flow ? null : this.#dashesOf(items) };
  }

  #dashesOf(items: readonly TreeNode[]): readonly number[] | null {
    const dashes = items.flatMap(({ place: { start }, alias }) => {
      const before = this.#text.slice(Math.max(0, start - FARTHEST_DASH), start);
      const blanks = alias === undefined ? /- +$/.exec(before)?.[0].length : undefined;
      return blanks === undefined ? [] : [start - blanks];
    });
    return dashes.length === items.length ? dashes : null;
  }

  #follow(node: Alias.Parsed): TreeNode | null {
    const [start, end] = node.range;
    const target = this.#anchors.get(node.source);
    if (target === undefined) {
      this.#say(start, end, say.aliasUnknown({ name: node.source }));
      return null;
    }
    if (target === 'open') {
      this.#say(start, end, say.aliasInItself({ name: node.source }));
      return null;
    }
    this.#nodes += target.size;
    if (this.#nodes > MOST_NODES) {
      this.#full = true;
      this.#say(start, end, say.tooManyAliases({ most: MOST_NODES }));
      return null;
    }
    return target.node === null ? null : { ...target.node, alias: this.#place(start, end) };
  }

  /** Keeps one error a line, and nothing after a tab, which breaks all that follows it. */
  #sayErrors(errors: readonly YAMLError[]): void {
    /** What stands before it follows from what is told, or is on a line of it. */
    let toldTo = -1;
    const ordered = errors.toSorted((a, b) => a.pos[0] - b.pos[0]);
    for (const error of ordered) {
      if (error.pos[0] < toldTo) continue;
      const line = lineStart(this.#text, error.pos[0]);
      toldTo = lineEnd(this.#text, line) + 1;
      const indent = /^[ \t]*/.exec(this.#text.slice(line, line + 1000))![0];
      if (indent.includes('\t')) {
        this.#say(line, line + indent.length, say.tabIndent(), [this.#withoutTabs()]);
        return;
      }
      const fault = layoutFault(this.#text, this.#part, error);
      if (fault === null) this.#say(error.pos[0], error.pos[1], explain(error));
      else {
        this.#say(fault.start, fault.end, fault.message, fault.repairs);
        toldTo = Math.max(toldTo, fault.muteTo);
        this.#faulty.push(fault);
      }
      if (this.#found.length >= MOST_PROBLEMS) return;
    }
  }

  /** Every tab that a line is indented with becomes two spaces. */
  #withoutTabs(): Repair {
    const rewrites = [...this.#text.matchAll(/^ *\t[ \t]*/gm)].map(({ index, 0: blanks }) => ({
      part: this.#part,
      start: index,
      end: index + blanks.length,
      text: blanks.replaceAll('\t', '  '),
    }));
    return { title: say.withoutTabs(), changes: [], rewrites, preferred: true };
  }

  #place(start: number, end: number): Place {
    return { part: this.#part, start, end };
  }

  /** Records a problem; an empty or overlong place becomes what of its line can be seen. */
  #say(start: number, end: number, message: Message, repairs: readonly Repair[] = []): void {
    const length = this.#text.length;
    let from = Math.min(Math.max(0, start), length);
    let to = Math.min(end, lineEnd(this.#text, from));
    if (to <= from) {
      to = Math.min(from + 1, length);
      // At the end of a line or of the text there is nothing to underline but what stands before.
      if (isBlank(this.#text.slice(from, to))) {
        const before = this.#text.slice(0, from).trimEnd().length;
        from = Math.max(0, before - 1);
        to = Math.max(from, before);
      }
    }
    this.#found.push({ message, place: this.#place(from, to), ...(repairs.length > 0 && { repairs }) });
  }
}

/**
 * The YAML reader makes an error object for every fault, a hundred thousand of them in a text of quotes alone. Nobody throws
 * them, and without their stacks they cost next to nothing.
 */
function withoutStacks<T>(work: () => T): T {
  const errors = Error as { stackTraceLimit?: number };
  const before = errors.stackTraceLimit;
  errors.stackTraceLimit = 0;
  try {
    return work();
  } finally {
    if (before === undefined) delete errors.stackTraceLimit;
    else errors.stackTraceLimit = before;
  }
}

/** Where the written text of a node ends: that of the alias where there is one. */
export function writtenEnd(node: TreeNode | null): number {
  return node === null ? 0 : (node.alias ?? node.place).end;
}

function firstLine(text: string, part: Part): Place {
  return { part, start: 0, end: Math.min(lineEnd(text, 0), 80) };
}
