import type { Diagnostic, TextDocumentContentChangeEvent } from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import type { DiagnosticData } from './features/diagnostics.js';
import type { OpenFile } from './workspace.js';

/** Lines of a text, both counted. */
export interface Lines {
  readonly first: number;
  readonly last: number;
}

/** An edit of more lines than this was not typed: what it brings is not in the making. */
const MOST_LINES = 8;

/**
 * The lines that an edit leaves in the making: those that its text stands in, or the new line where it only made one. Null
 * for what nobody types.
 */
export function writtenLines(changes: readonly TextDocumentContentChangeEvent[]): Lines | null {
  let lines: Lines | null = null;
  for (const change of changes) {
    if (!('range' in change)) return null;
    const { start, end } = change.range;
    const last = start.line + newlines(change.text);
    if (last - start.line > MOST_LINES || end.line - start.line > MOST_LINES) return null;
    const written = change.text.search(/\S/);
    const first = written === -1 ? last : start.line + newlines(change.text.slice(0, written));
    // Beside what is typed an editor clears up the lines around it: the lowest change is the one with the cursor.
    if (lines === null || last > lines.last) lines = { first, last };
  }
  return lines;
}

/** How findings are told apart from one text to the next. */
export const identityOf = ({ code, message }: Diagnostic): string => `${String(code)}|${JSON.stringify(message)}`;

/** What findings are of: the same one with other figures has the same matter. */
export const matterOf = ({ code, data }: Diagnostic): string => {
  const { carcass = null, panel = null } = (data ?? {}) as Partial<DiagnosticData>;
  return JSON.stringify([code, carcass, panel]);
};

/** The findings of a text that is being written in. */
export interface WhileWriting {
  readonly shown: Diagnostic[];
  /** What waits because it follows from the lines in the making, and stands elsewhere. */
  readonly following: readonly Diagnostic[];
}

/**
 * The findings without those that the lines in the making bring: what touches these lines, the lines of the keys that they
 * stand under, or whatever else follows from them, and was not shown before. What was shown elsewhere goes on with its figures.
 */
export function withoutUnfinished(
  found: readonly Diagnostic[],
  lines: Lines,
  file: OpenFile,
  shown: ReadonlySet<string>,
): WhileWriting {
  const owners = ownersOf(file.document, lines.first);
  const follows = followingFrom(file, lines);
  const touches = ({ range: { start, end } }: Diagnostic): boolean =>
    (start.line <= lines.last && end.line >= lines.first) || (start.line === end.line && owners.has(start.line));
  const wanted: Diagnostic[] = [];
  const following: Diagnostic[] = [];
  for (const one of found) {
    if (shown.has(identityOf(one))) wanted.push(one);
    else if (touches(one)) continue;
    else if (follows(one) && !shown.has(matterOf(one))) following.push(one);
    else wanted.push(one);
  }
  return { shown: wanted, following };
}

/** Those that were shown before, with the figures of the moment: all others follow from what is being written. */
export function toldAlready(found: readonly Diagnostic[], shown: ReadonlySet<string>): WhileWriting {
  const isTold = (one: Diagnostic): boolean => shown.has(identityOf(one)) || shown.has(matterOf(one));
  return { shown: found.filter(isTold), following: found.filter((one) => !isTold(one)) };
}

/**
 * What can follow from what is being written elsewhere than there: of a carcass, all that is said in it and in those that are
 * like it; of what stands before and behind the carcasses of a job, whatever is said of the file. From a blank line nothing
 * follows.
 */
function followingFrom(file: OpenFile, { first, last }: Lines): (found: Diagnostic) => boolean {
  const { document } = file;
  const written = document.getText({ start: { line: first, character: 0 }, end: { line: last + 1, character: 0 } });
  if (file.kind === 'shop' || /^[\s-]*(?:#.*)?$/.test(written)) return () => false;
  const { analysis } = file;
  const carcassOf = (offset: number): number | null => analysis.carcassAt(offset);
  const own = carcassOf(document.offsetAt({ line: first, character: 0 }) + written.search(/\S/));
  if (own === null) return () => true;
  return ({ range }) => {
    const other = carcassOf(document.offsetAt(range.start));
    return other !== null && (other === own || analysis.lineageOf(other).bases.includes(own));
  };
}

/** The lines of the keys that a line stands under. A blank line stands where its own blanks say. */
function ownersOf(document: TextDocument, line: number): ReadonlySet<number> {
  const owners = new Set<number>();
  const lines = document
    .getText({ start: { line: 0, character: 0 }, end: { line: line + 1, character: 0 } })
    .split('\n');
  let column = (lines[line] ?? '').search(/[^\s-]|$/);
  for (let above = Math.min(line, lines.length) - 1; above >= 0 && column > 0; above -= 1) {
    const text = lines[above]!;
    const own = text.search(/[^\s-]/);
    if (own === -1 || own >= column || text[own] === '#') continue;
    owners.add(above);
    column = own;
  }
  return owners;
}

function newlines(text: string): number {
  return text.split('\n').length - 1;
}
