import type { YAMLError } from 'yaml';
import type { Message } from '../words/message.js';
import type { Repair, Rewrite } from './finding.js';
import { lineStart, nextLineStart } from './lines.js';
import { say } from './messages.js';
import { CARCASSES_KEY, KIND_KEY } from './outline.js';
import type { Part } from './place.js';

/** What is wrong with the layout of a line, where the reader's own error names only what came of it. */
export interface LayoutFault {
  readonly start: number;
  readonly end: number;
  readonly message: Message;
  readonly repairs: readonly Repair[];
  /** Errors before this offset follow from the fault. */
  readonly muteTo: number;
}

interface Line {
  readonly start: number;
  /** End of what is written, without a remark or blanks behind it. */
  readonly end: number;
  readonly next: number;
  /** Column of the first sign that is no blank and no dash of a list item. */
  readonly column: number;
  readonly content: string;
}

/** What the reader calls a key over several lines, or one without a value. */
const KEY_ERRORS: ReadonlySet<string> = new Set(['MULTILINE_IMPLICIT_KEY', 'MISSING_CHAR', 'BLOCK_AS_IMPLICIT_KEY']);
const KEY = String.raw`[\p{L}_][\p{L}\p{N}_-]*`;
const NO_SPACE = new RegExp(`^(?<key>${KEY}):(?<value>[^\\s:/].*)$`, 'u');
const NO_COLON = new RegExp(`^(?<key>${KEY})\\s+(?<value>[^\\s:#][^:]*)$`, 'u');
const KEY_AND_VALUE = new RegExp(`^(?<key>${KEY}): +(?<value>[^\\s"'&*!|>{[].*)$`, 'u');
const STARTS_WITH_KEY = new RegExp(`^(?:${KEY}|"[^"]*"|'[^']*'):(?:\\s|$)`, 'u');
const COLON = /:(?=\s|$)/;

/** The fault of layout behind an error of the YAML reader; null where none is plain to see. */
export function layoutFault(text: string, part: Part, error: YAMLError): LayoutFault | null {
  if (error.code === 'BAD_INDENT') return betweenColumns(text, part, error.pos[0]);
  if (!KEY_ERRORS.has(error.code)) return null;
  const line = lineAt(text, error.pos[0]);
  const start = line.start + line.column;
  const below = nextLine(text, line);
  const dash = dashAmongKeys(text, line);
  if (dash !== null) return dash;

  const glued = NO_SPACE.exec(line.content)?.groups;
  if (glued !== undefined && !COLON.test(line.content)) {
    const { key = '', value = '' } = glued;
    const at = start + key.length + 1;
    return {
      start,
      end: line.end,
      message: say.spaceMissing({ key, value }),
      repairs: [repair(say.addSpace(), [{ part, start: at, end: at, text: ' ' }])],
      muteTo: below?.next ?? line.next,
    };
  }

  const bare = NO_COLON.exec(line.content)?.groups;
  if (bare !== undefined && error.code !== 'BLOCK_AS_IMPLICIT_KEY') {
    const { key = '', value = '' } = bare;
    const at = start + key.length;
    return {
      start,
      end: line.end,
      message: say.colonMissing({ key, value }),
      repairs: [repair(say.addColon(), [{ part, start: at, end: at, text: ':' }])],
      muteTo: below?.next ?? line.next,
    };
  }

  const pair = KEY_AND_VALUE.exec(line.content)?.groups;
  if (error.code !== 'BLOCK_AS_IMPLICIT_KEY' || pair === undefined) return null;
  if (COLON.test(pair.value!)) return twoColons(part, line, pair.key!, pair.value!);
  return below === null ? null : tooFarIn(text, part, line, below);
}

function twoColons(part: Part, line: Line, key: string, value: string): LayoutFault {
  const start = line.end - value.length;
  return {
    start,
    end: line.end,
    message: say.twoColons({ key }),
    repairs: [repair(say.addQuotes(), [{ part, start, end: line.end, text: `'${value.replaceAll("'", "''")}'` }])],
    muteTo: line.next,
  };
}

/** A list item where keys stand: the line above that is no further in is a key with things of its own. */
function dashAmongKeys(text: string, line: Line): LayoutFault | null {
  const dash = dashOf(text, line);
  if (dash === null) return null;
  let above = lineAbove(text, line);
  const isFirst = above?.content.endsWith(':') === true && dashOf(text, above) === null;
  while (above !== null && indentOf(text, above) > dash) above = lineAbove(text, above);
  if (isFirst || above === null || indentOf(text, above) < dash || dashOf(text, above) !== null) return null;
  const key = above.content.split(':')[0]!;
  return {
    start: line.start + dash,
    end: line.end,
    message: say.dashAmongKeys({ key }),
    repairs: [],
    muteTo: withBelow(text, line, dash).at(-1)!.next,
  };
}

/** Column of the dash that a line begins with; null where it begins with none. */
function dashOf(text: string, { start, end }: Line): number | null {
  return /^[ ]*(?=-(?:[ ]|$))/.exec(text.slice(start, end))?.[0].length ?? null;
}

function indentOf(text: string, { start, end }: Line): number {
  return /^[ ]*/.exec(text.slice(start, end))![0].length;
}

/** The next line above that holds more than blanks or a remark. */
function lineAbove(text: string, { start }: Line): Line | null {
  for (let from = start; from > 0;) {
    const line = lineAt(text, from - 1);
    from = line.start;
    if (line.content !== '') return line;
  }
  return null;
}

/** A key below `key: value` that is indented further, as if it belonged to the value. */
function tooFarIn(text: string, part: Part, line: Line, below: Line): LayoutFault | null {
  if (below.column <= line.column || !STARTS_WITH_KEY.test(below.content)) return null;
  const rewrites: Rewrite[] = [];
  let last = below;
  for (let one: Line | null = below; one !== null && one.column >= below.column; one = nextLine(text, one)) {
    rewrites.push({ part, start: one.start, end: one.start + below.column - line.column, text: '' });
    last = one;
  }
  const more = below.column - line.column;
  const place = { start: below.start + below.column, end: below.end, muteTo: last.next };
  const { key = '', value = '' } = KEY_AND_VALUE.exec(line.content)?.groups ?? {};
  if (!isUnderCarcasses(text, line)) {
    const message = say.tooFarIn({ columns: more, key });
    return { ...place, message, repairs: [repair(say.indentLikeAbove(), rewrites)] };
  }
  // The value may be meant as one of the keys below; whoever would move these under the name again would go in a circle.
  const start = line.start + line.column + key.length;
  const lower: Rewrite = {
    part,
    start,
    end: line.end,
    text: `:${/\r?\n/.exec(text)![0]}${' '.repeat(below.column)}${KIND_KEY}: ${value}`,
  };
  return {
    ...place,
    message: say.belowValue({ columns: more, key, value, kindKey: KIND_KEY }),
    repairs: [
      // What is written under the kind of a carcass is meant beside it: no carcass is called so.
      ...(key !== KIND_KEY && /^\p{L}+$/u.test(value)
        ? [{ ...repair(say.writeBelow({ text: `${KIND_KEY}: ${value}`, key }), [lower]), preferred: false }]
        : []),
      { ...repair(say.indentLikeAbove(), rewrites), preferred: false },
    ],
  };
}

/** True for a line in the column where the names of carcasses stand. */
function isUnderCarcasses(text: string, line: Line): boolean {
  let above = lineAbove(text, line);
  while (above !== null && above.column >= line.column) above = lineAbove(text, above);
  return above?.column === 0 && above.content === `${CARCASSES_KEY}:`;
}

/** A key that starts further left than those above it, and further right than what holds them. */
function betweenColumns(text: string, part: Part, offset: number): LayoutFault | null {
  const at = lineAt(text, offset);
  const line = at.content === '' ? nextLine(text, at) : at;
  if (line === null || !STARTS_WITH_KEY.test(line.content)) return null;
  let beside: Line | null = null;
  let holder: Line | null = null;
  for (let above = lineAbove(text, line); above !== null && holder === null; above = lineAbove(text, above)) {
    if (above.column <= line.column) holder = above;
    else if (beside === null || above.column <= beside.column) beside = above;
  }
  if (beside === null || holder === null || beside.column === line.column || holder.column === line.column) return null;
  const nameOf = ({ content }: Line): string => content.split(':')[0]!;
  // A name alone may be the next thing of the outer map; a key with its value is none.
  const isValue = KEY_AND_VALUE.test(line.content);
  const own = isValue ? [line] : withBelow(text, line, line.column);
  const move = (by: number): readonly Rewrite[] =>
    own.map(({ start }) =>
      by > 0 ? { part, start, end: start, text: ' '.repeat(by) } : { part, start, end: start - by, text: '' },
    );
  const more = beside.column - line.column;
  const [deeper, outer] = [nameOf(beside), nameOf(holder)];
  const indent = {
    title: say.indentLike({ key: deeper }),
    changes: [],
    rewrites: move(more),
    preferred: isValue,
  };
  const outdent = {
    title: say.indentLike({ key: outer }),
    changes: [],
    rewrites: move(holder.column - line.column),
    preferred: false,
  };
  return {
    start: line.start + line.column,
    end: line.end,
    message: say.betweenColumns({ columns: more, deeper, outer }),
    repairs: isValue ? [indent] : [indent, outdent],
    // The lines beside it are wrong to the reader only because this one is not.
    muteTo: withBelow(text, line, holder.column).at(-1)!.next,
  };
}

/** A line and those below it that are further in than a column. */
function withBelow(text: string, line: Line, column: number): readonly Line[] {
  const lines = [line];
  for (let one = nextLine(text, line); one !== null && one.column > column; one = nextLine(text, one)) lines.push(one);
  return lines;
}

function repair(title: Message, rewrites: readonly Rewrite[]): Repair {
  return { title, changes: [], rewrites, preferred: true };
}

function lineAt(text: string, offset: number): Line {
  const start = lineStart(text, offset);
  const next = nextLineStart(text, start);
  const written = text
    .slice(start, next)
    .replace(/(?:^|[ \t])#[^\n]*\n?$/, '')
    .trimEnd();
  const column = /^\uFEFF?[ ]*(?:-[ ]+)*/.exec(written)![0].length;
  return { start, end: start + written.length, next, column, content: written.slice(column) };
}

/** The next line that holds more than blanks or a remark. */
function nextLine(text: string, { next }: Line): Line | null {
  let from = next;
  while (from < text.length) {
    const line = lineAt(text, from);
    if (line.content !== '') return line;
    from = line.next;
  }
  return null;
}
