import type { Repair, Rewrite } from './finding.js';
import { columnOf, lineEnd, nextLineStart } from './lines.js';
import type { Part, Place } from './place.js';
import type { ReadTree } from './read.js';
import { readTree } from './read.js';
import type { MapEntry, TextProblem, TreeNode } from './tree.js';

/** A job beyond either figure is no workshop's, and would only keep the editor busy. */
const LONGEST_JOB = 2_000_000;
const MOST_CARCASSES = 2_000;

/** The key under which a job holds its carcasses. */
export const CARCASSES_KEY = 'carcasses';

/** A job text cut apart so that an edit inside one carcass leaves the texts of all the others as they are. */
export interface JobParts {
  /** All that stands before the first carcass, the line `carcasses:` included; the whole text where `whole`. */
  readonly head: TextPart;
  readonly carcasses: readonly CarcassPart[];
  /** What stands after the carcasses, from the next key at the margin on; empty where nothing does. */
  readonly tail: TextPart;
  /**
   * True where the text could not be cut safely (anchors, flow style, odd layout). Head and carcasses are then all read
   * from the whole text, and every `origin` is 0.
   */
  readonly whole: boolean;
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
  /** Where `text` is the whole job: which of its carcasses this is. Together with `text` it decides all that is read. */
  readonly entry: number | null;
}

/** The map entry `name: {...}` of a carcass and the faults of its text. */
export interface CarcassTree {
  readonly entry: MapEntry | null;
  readonly problems: readonly TextProblem[];
}

/**
 * Cuts a job text by lines, at the indentation of the first key under `carcasses:`. Only layouts that mean the same
 * before and after the cut are cut; everything else comes back whole. Linear in the text; never throws.
 */
export function cutJob(text: string): JobParts {
  if (text.length > LONGEST_JOB) {
    const message = `This file is ${(text.length / 1_000_000).toFixed(1)} million characters long; at most ${LONGEST_JOB / 1_000_000} million are read. Split it into several jobs.`;
    const place: Place = { part: 'head', start: 0, end: Math.min(80, text.search(/[\r\n]|$/)) };
    const nothing = part(text, 0, 0);
    return { head: nothing, carcasses: [], tail: nothing, whole: false, problems: [{ message, place }] };
  }
  const parts = cutByLines(text) ?? leaveWhole(text);
  const beyond = parts.carcasses[MOST_CARCASSES];
  if (beyond === undefined) return parts;
  const message = `The job has ${parts.carcasses.length} carcasses; the first ${MOST_CARCASSES} are read, and those from here on are not. Split the file.`;
  const place: Place = { part: 'head', start: beyond.start, end: beyond.start + 1 };
  return { ...parts, carcasses: parts.carcasses.slice(0, MOST_CARCASSES), problems: [{ message, place }] };
}

/** The entry of one carcass, read from its part. */
export function readCarcassTree(part: CarcassPart): CarcassTree {
  const { root, problems } = part.entry === null ? readTree(part.text, 'self') : readWhole(part.text, 'self');
  if (part.entry === null) {
    const entry = root?.kind === 'map' && root.entries.length === 1 ? root.entries[0]! : null;
    if (entry === null && problems.length === 0) return { entry: null, problems: [noName(part.text, 0)] };
    return { entry, problems };
  }
  const entry = carcassEntries(root)[part.entry] ?? null;
  if (entry?.key.trim() === '') return { entry: null, problems: [noName(part.text, part.start)] };
  // A fault elsewhere in the text is told once, with the head.
  const own = problems.filter((problem) => problem.place.start >= part.start && problem.place.start < part.end);
  if (entry === null || own.length > 0) return { entry, problems: own };
  const outside = carcassEntries(root).filter(({ place }) => place.start > entry.place.start && place.start < part.end);
  return { entry, problems: outside.length === 0 ? own : [notIndented(part.text, entry, outside)] };
}

/** The head's tree, and the tail's. Of an uncut text the faults that lie in carcasses are left to these. */
export function readHeadTrees(parts: JobParts): { readonly head: ReadTree; readonly tail: ReadTree } {
  const { root, problems: own } = parts.whole ? readWhole(parts.head.text, 'head') : readTree(parts.head.text, 'head');
  const problems = [...parts.problems, ...own];
  const tail = parts.tail.text.trim() === '' ? NOTHING : readTree(parts.tail.text, 'tail');
  if (!parts.whole) return { head: { root, problems }, tail };
  const outside = problems.filter(
    ({ place }) => !parts.carcasses.some((part) => place.start >= part.start && place.start < part.end),
  );
  return { head: { root, problems: outside }, tail };
}

const KEPT = 4;
const kept: { readonly text: string; readonly part: Part; readonly tree: ReadTree }[] = [];

/** The tree of an uncut text, kept for a while: each of its carcasses asks for it. */
function readWhole(text: string, part: Part): ReadTree {
  const known = kept.find((one) => one.part === part && one.text === text);
  if (known !== undefined) return known.tree;
  const tree = readTree(text, part);
  kept.unshift({ text, part, tree });
  kept.length = Math.min(kept.length, KEPT);
  return tree;
}

const NOTHING: ReadTree = { root: null, problems: [] };

function carcassEntries(root: TreeNode | null): readonly MapEntry[] {
  if (root?.kind !== 'map') return [];
  const value = root.entries.find((entry) => entry.key === CARCASSES_KEY)?.value;
  return value?.kind === 'map' ? value.entries : [];
}

/** The key by which a map under a carcass's name shows itself to be a carcass. */
const KIND_KEY = 'kind';

/**
 * Entries that stand where carcasses do and are keys of the carcass above them: a carcass is never a single value on the
 * line of its name, and what follows such a key belongs with it until the next carcass.
 */
function keysAstray(text: string, entries: readonly MapEntry[]): ReadonlySet<number> {
  const astray = new Set<number>();
  entries.forEach(({ keyPlace, value }, index) => {
    if (index === 0) return;
    const follows = astray.has(index - 1);
    const onLine = value?.kind === 'scalar' && !text.slice(keyPlace.end, value.place.end).includes('\n');
    const isCarcass = value?.kind === 'map' && value.entries.some(({ key }) => key === KIND_KEY);
    if (onLine || (follows && value !== null && !isCarcass)) astray.add(index);
  });
  return astray;
}

function notIndented(text: string, owner: MapEntry, keys: readonly MapEntry[]): TextProblem {
  const first = keys[0]!;
  const name = columnOf(text, owner.keyPlace.start);
  const own = owner.value?.kind === 'map' && !owner.value.flow ? owner.value.entries[0] : undefined;
  const wanted = own === undefined ? name + 2 : columnOf(text, own.keyPlace.start);
  const rewrites: Rewrite[] = [];
  const last = Math.max(first.place.end, keys.at(-1)!.place.end);
  for (let at = first.keyPlace.start - name; at >= 0 && at < last;) {
    const next = nextLineStart(text, at);
    if (text.slice(at, next).trim() !== '')
      rewrites.push({ part: 'self', start: at, end: at, text: ' '.repeat(Math.max(0, wanted - name)) });
    at = next;
  }
  const by = wanted - name;
  const spaces = by === 2 ? 'two' : String(by);
  const [these, lines] = rewrites.length === 1 ? ['This line', 'it'] : [`These ${rewrites.length} lines`, 'them'];
  const message = `${these} from \`${first.key}\` on ${rewrites.length === 1 ? 'belongs' : 'belong'} to \`${owner.key}\` but ${rewrites.length === 1 ? 'starts' : 'start'} in its column: indent ${lines} by ${spaces} more.`;
  const repairs: Repair[] =
    by > 0 ? [{ title: `Indent ${lines} by ${spaces} more`, changes: [], rewrites, preferred: true }] : [];
  return { message, place: { part: 'self', start: first.place.start, end: first.place.end }, repairs };
}

/** `from` is where the carcass stands in the text. */
function noName(text: string, from: number): TextProblem {
  const start = Math.min(from + text.slice(from).search(/\S|$/), text.length);
  const length = /^[^\r\n]*/.exec(text.slice(start))![0].trimEnd().length;
  const place: Place = { part: 'self', start, end: start + length };
  return {
    message: 'A carcass starts with its name and a colon, such as `sink:`. Its name or the colon is missing.',
    place,
  };
}

function part(text: string, start: number, end: number): TextPart {
  return { start, end, text: text.slice(start, end) };
}

/** Parts for carcasses that start at the given offsets and end at `end`. */
function partsOf(text: string, end: number, starts: readonly number[]): JobParts {
  const carcasses = starts.map((start, index): CarcassPart => {
    const stop = starts[index + 1] ?? end;
    return { start, end: stop, origin: start, text: text.slice(start, stop), entry: null };
  });
  return {
    head: part(text, 0, starts[0] ?? end),
    carcasses,
    tail: part(text, end, text.length),
    whole: false,
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

/** Null where cutting is not safe. */
function cutByLines(text: string): JobParts | null {
  let inside = false;
  let indent = 0;
  let end: number | null = null;
  let afterHead = text.length;
  const starts: number[] = [];
  for (let start = text.startsWith('\uFEFF') ? 1 : 0; start < text.length;) {
    const next = nextLineStart(text, start);
    const line = text.slice(start, lineEnd(text, start)).replace(/\r$/, '');
    const here = start;
    start = next;
    const content = line.search(/[^ ]/);
    if (content === -1 || line[content] === '#') continue;
    if (TIED.test(line)) return null;
    if (content === 0 && line[0] !== '\t') {
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

function leaveWhole(text: string): JobParts {
  const { root } = readWhole(text, 'self');
  const entries = carcassEntries(root);
  const after =
    root?.kind === 'map'
      ? root.entries.find(({ place }) => place.start > (entries.at(-1)?.place.start ?? 0))
      : undefined;
  const astray = keysAstray(text, entries);
  const owners = entries.map((entry, index) => ({ entry, index })).filter(({ index }) => !astray.has(index));
  const carcasses = owners.map(({ entry, index }, i): CarcassPart => {
    const end = owners[i + 1]?.entry.place.start ?? after?.place.start ?? text.length;
    return { start: entry.place.start, end, origin: 0, text, entry: index };
  });
  return {
    head: part(text, 0, text.length),
    carcasses,
    tail: part(text, text.length, text.length),
    whole: true,
    problems: [],
  };
}
