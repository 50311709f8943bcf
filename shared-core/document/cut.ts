import { lineEnd, nextLineStart } from './lines.js';
import { say } from './messages.js';
import { CARCASSES_KEY, KIND_KEY } from './outline.js';
import type { Place } from './place.js';
import { readTree, writtenEnd, type ReadTree } from './read.js';
import type { MapEntry, TextProblem, TreeNode } from './tree.js';

/** A job beyond any of these figures is no workshop's, and would only keep the editor busy. */
const LONGEST_JOB = 5_000_000;
const MOST_CARCASSES = 50_000;
/** What says something of its own is worked out and kept by itself. */
const MOST_UNLIKE = 5_000;

/** A job text cut apart so that an edit inside one carcass leaves the texts of all the others as they are. */
export interface JobParts {
  /** All that stands before the first carcass, the line `carcasses:` included; the whole text where `whole`. */
  readonly head: TextPart;
  readonly carcasses: readonly CarcassPart[];
  /** What stands after the carcasses, from the next key at the margin on; empty where nothing does. */
  readonly tail: TextPart;
  /**
   * The tree of the whole text (places are of part 'self') where it could not be cut safely: anchors, flow style, odd
   * layout. Head and carcasses are then all read from it, and every `origin` is 0. Null where the job is cut.
   */
  readonly whole: ReadTree | null;
  /** Faults of the file as a whole; part 'head', and places count from the start of the file. */
  readonly problems: readonly TextProblem[];
}

export interface TextPart {
  /** What `text` covers of the file: [start, end). */
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

export interface CarcassPart {
  /** Where the carcass stands in the file: [start, end), from its name to the next carcass. The parts never overlap. */
  readonly start: number;
  readonly end: number;
  /** Offset in the file that places of part 'self' are counted from: `start` where the job is cut, 0 where it is not. */
  readonly origin: number;
  /** The text that its places are counted in. */
  readonly text: string;
  /** Where `text` is the whole job: its tree, and what of it is this carcass; null where the job is cut. */
  readonly whole: WholePart | null;
}

/** A carcass in the tree of its whole job. */
export interface WholePart {
  readonly tree: ReadTree;
  /** Which of the entries under `carcasses:` it is. */
  readonly index: number;
  /** Null where an edit has taken it away. */
  readonly entry: MapEntry | null;
  /** Keys of the carcass that stand in the column of its name, so that YAML takes them for carcasses. */
  readonly astray: readonly MapEntry[];
}

/**
 * Cuts a job text by lines, at the indentation of the first key under `carcasses:`. Only layouts that mean the same
 * before and after the cut are cut; everything else comes back whole. Linear in the text; never throws.
 */
export function cutJob(text: string): JobParts {
  if (text.length > LONGEST_JOB) {
    const message = say.fileTooLong({ length: text.length, most: LONGEST_JOB });
    const place: Place = { part: 'head', start: 0, end: Math.min(80, text.search(/[\r\n]|$/)) };
    const nothing = part(text, 0, 0);
    return { head: nothing, carcasses: [], tail: nothing, whole: null, problems: [{ message, place }] };
  }
  const parts = cutByLines(text) ?? leaveWhole(text);
  const { carcasses } = parts;
  const { unlike, read } = countUnlike(carcasses);
  const beyond = carcasses[read];
  if (beyond === undefined) return parts;
  const isUnlike = read < MOST_CARCASSES;
  const message = say.tooManyCarcasses({
    carcasses: isUnlike ? unlike : carcasses.length,
    most: isUnlike ? MOST_UNLIKE : MOST_CARCASSES,
    isUnlike,
  });
  const place: Place = { part: 'head', start: beyond.start, end: beyond.start + 1 };
  return { ...parts, carcasses: carcasses.slice(0, read), problems: [{ message, place }] };
}

/** How many carcasses say something else than all others, and how many of all can be read. */
function countUnlike(carcasses: readonly CarcassPart[]): { readonly unlike: number; readonly read: number } {
  const most = Math.min(carcasses.length, MOST_CARCASSES);
  if (carcasses.length <= MOST_UNLIKE) return { unlike: carcasses.length, read: most };
  const said = new Set<string>();
  let read = most;
  for (const [index, { text, whole }] of carcasses.entries()) {
    said.add(whole === null ? text.slice(text.indexOf(':')) : String(index));
    if (said.size > MOST_UNLIKE) read = Math.min(read, index);
  }
  return { unlike: said.size, read };
}

/** An entry among the carcasses that has its value on its line, as a carcass never has: a key that stands in their column. */
export function isOnLine(text: string, { keyPlace, value }: MapEntry): boolean {
  return value?.kind === 'scalar' && !text.slice(keyPlace.end, writtenEnd(value)).includes('\n');
}

/**
 * Entries that stand where carcasses do, by the carcass above them that they are keys of: those with a value on their line,
 * and what follows such a key up to the next carcass. A second `kind` is of a carcass whose name was forgotten.
 */
function ownersOf(text: string, entries: readonly MapEntry[]): readonly Owner[] {
  const owners: { readonly entry: number; readonly astray: number[]; hasKind: boolean }[] = [];
  entries.forEach((entry, index) => {
    const owner = owners.at(-1);
    const { key, value } = entry;
    const isKind = key === KIND_KEY && isOnLine(text, entry);
    const hasKind = value?.kind === 'map' && value.entries.some((inner) => inner.key === KIND_KEY);
    const follows = owner !== undefined && owner.astray.length > 0 && value !== null && !hasKind;
    if (owner !== undefined && (isOnLine(text, entry) || follows) && !(isKind && owner.hasKind)) {
      owner.astray.push(index);
      owner.hasKind ||= isKind;
    } else owners.push({ entry: index, astray: [], hasKind: hasKind || isKind });
  });
  return owners;
}

interface Owner {
  readonly entry: number;
  readonly astray: readonly number[];
}

function part(text: string, start: number, end: number): TextPart {
  return { start, end, text: text.slice(start, end) };
}

/** Parts for carcasses that start at the given offsets and end at `end`. */
function partsOf(text: string, end: number, starts: readonly number[]): JobParts {
  const carcasses = starts.map((start, index): CarcassPart => {
    const stop = starts[index + 1] ?? end;
    return { start, end: stop, origin: start, text: text.slice(start, stop), whole: null };
  });
  return {
    head: part(text, 0, starts[0] ?? end),
    carcasses,
    tail: part(text, end, text.length),
    whole: null,
    problems: [],
  };
}

/** A block starts with a name and its colon; what follows on the line must end on it. */
const BLOCK_START = /^ +(?:[\p{L}\p{N}_][^:#'"&*!|>{}[\],]*|"[^"\\]*"|'[^']*')(?<rest>:(?:[ \t].*)?)?$/u;

/** True where nothing stands behind a name's colon but a remark, or one bracketed map that closes again. */
function endsOnLine(rest: string): boolean {
  let depth = 0;
  let before = ':';
  for (let i = 1; i < rest.length; i += 1) {
    const char = rest[i]!;
    if (char === ' ' || char === '\t') continue;
    if (char === '#' && /[ \t]/.test(rest[i - 1]!)) return depth === 0;
    if (depth === 0 && (char !== '{' || before !== ':')) return false;
    if ((char === "'" || char === '"') && /[{[,:]/.test(before)) {
      const close = closingQuote(rest, i);
      if (close === null) return false;
      i = close;
    } else if (char === '{' || char === '[') depth += 1;
    else if (char === '}' || char === ']') depth -= 1;
    before = char;
  }
  return depth === 0;
}

function closingQuote(text: string, open: number): number | null {
  const quoted = text[open] === '"' ? /"(?:[^"\\]|\\.)*"/y : /'(?:[^']|'')*'/y;
  quoted.lastIndex = open;
  return quoted.test(text) ? quoted.lastIndex - 1 : null;
}
const KEY_LINE = new RegExp(String.raw`^${CARCASSES_KEY}:[ \t]*(?:[ \t]#.*)?$`);
/** An anchor, an alias, or the mark of another document: the meaning of one line may lie in another. */
const TIED = /(?:^|[\s[{,:])[&*][^\s,\]}]|^---|^\.\.\.|^%/;
/** What any such line has; most texts have it nowhere, and their lines need not be looked at one by one. */
const MAY_BE_TIED = /[&*]|^(?:---|\.\.\.|%)/m;
const [SPACE, REMARK, TAB, RETURN] = [' ', '#', '\t', '\r'].map((char) => char.charCodeAt(0));

/** Null where cutting is not safe. */
function cutByLines(text: string): JobParts | null {
  let inside = false;
  let indent = 0;
  let end: number | null = null;
  let afterHead = text.length;
  const starts: number[] = [];
  const mayBeTied = MAY_BE_TIED.test(text);
  for (let start = text.startsWith('\uFEFF') ? 1 : 0; start < text.length;) {
    const next = nextLineStart(text, start);
    const here = start;
    start = next;
    const content = indentAt(text, here);
    const last = contentEnd(text, here);
    const first = text.charCodeAt(here + content);
    if (here + content >= last || first === REMARK) continue;
    const isKey = content === 0 && first !== TAB;
    // Such a line begins no carcass, whatever it says.
    if (!isKey && !mayBeTied && (!inside || (starts.length > 0 && content !== indent))) continue;
    const line = text.slice(here, last);
    if (TIED.test(line)) return null;
    if (isKey) {
      if (KEY_LINE.test(line)) {
        if (inside || end !== null) return null;
        inside = true;
        afterHead = next;
      } else if (line.startsWith(CARCASSES_KEY) || line.startsWith('-')) return null;
      else if (inside) {
        inside = false;
        end = here;
      }
      continue;
    }
    if (!inside) continue;
    if (indent === 0) indent = content;
    if (content !== indent || line[content] === '\t') {
      // Wrongly indented lines go with the carcass above them, so that the fault stays with it.
      if (starts.length === 0) return null;
      continue;
    }
    const block = BLOCK_START.exec(line);
    if (block === null || !endsOnLine(block.groups?.rest ?? ':')) return null;
    starts.push(here);
  }
  if (!inside && end === null) return null;
  const parts = partsOf(text, end ?? text.length, starts);
  return starts.length > 0
    ? parts
    : { ...parts, head: part(text, 0, end ?? afterHead), tail: part(text, end ?? text.length, text.length) };
}

/** How many spaces stand before anything else in the line that starts there. */
function indentAt(text: string, start: number): number {
  let at = start;
  while (text.charCodeAt(at) === SPACE) at += 1;
  return at - start;
}

/** Where the line that starts there ends, before its line feed and a carriage return. */
function contentEnd(text: string, start: number): number {
  const end = lineEnd(text, start);
  return end > start && text.charCodeAt(end - 1) === RETURN ? end - 1 : end;
}

function leaveWhole(text: string): JobParts {
  const tree = readTree(text, 'self');
  const { root } = tree;
  const entries = carcassEntries(root);
  const after =
    root?.kind === 'map'
      ? root.entries.find(({ place }) => place.start > (entries.at(-1)?.place.start ?? 0))
      : undefined;
  const owners = ownersOf(text, entries);
  const carcasses = owners.map(({ entry: index, astray }, i): CarcassPart => {
    const entry = entries[index]!;
    const next = owners[i + 1];
    const end = next === undefined ? (after?.place.start ?? text.length) : entries[next.entry]!.place.start;
    const whole = { tree, index, entry, astray: astray.map((one) => entries[one]!) };
    return { start: entry.place.start, end, origin: 0, text, whole };
  });
  return {
    head: part(text, 0, text.length),
    carcasses,
    tail: part(text, text.length, text.length),
    whole: tree,
    problems: [],
  };
}

/** The entries of the carcasses, in a tree of a whole job. */
function carcassEntries(root: TreeNode | null): readonly MapEntry[] {
  if (root?.kind !== 'map') return [];
  const value = root.entries.find((entry) => entry.key === CARCASSES_KEY)?.value;
  return value?.kind === 'map' ? value.entries : [];
}

/** The same carcass after an edit inside it: `text` takes the place of the part's own. */
export function withText(part: CarcassPart, text: string): CarcassPart {
  const end = part.end + text.length - part.text.length;
  if (part.whole === null) return { ...part, text, end };
  const tree = readTree(text, 'self');
  const entries = carcassEntries(tree.root);
  const { index } = part.whole;
  const astray = ownersOf(text, entries).find((owner) => owner.entry === index)?.astray ?? [];
  const whole = { tree, index, entry: entries[index] ?? null, astray: astray.map((one) => entries[one]!) };
  return { ...part, text, end, whole };
}
