import type { CodeLens } from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import { normalUri } from './files.js';

/** A lens and the line that it stood over. */
interface Kept {
  readonly lens: CodeLens;
  readonly line: number;
  readonly text: string;
}

/**
 * Remembers of each job the last lenses of its carcasses. While a carcass is typed at it has none of its own; if its last one
 * went, all text under it would move up by a line and down again.
 */
export class LastLenses {
  readonly #known = new Map<string, readonly Kept[]>();

  /**
   * The lenses of the present text, and for each line that had one and has none now, its last.
   * @param present known again by the arguments of their commands
   */
  of(document: TextDocument, present: readonly CodeLens[]): CodeLens[] {
    const key = normalUri(document.uri);
    const lines = document.getText().split(/\r?\n/);
    const fresh = present.map((lens): Kept => {
      const { line } = lens.range.start;
      return { lens, line, text: lines[line] ?? '' };
    });
    // Lines that have lenses now, and of the last ones the line that they were over.
    const taken = new Map(fresh.map(({ line }) => [line, -1]));
    const subjects = new Set(fresh.map(({ lens }) => subjectOf(lens)));
    const old = (this.#known.get(key) ?? []).flatMap((one): Kept[] => {
      if (subjects.has(subjectOf(one.lens))) return [];
      const line = lineNow(one, lines);
      // Lenses that stood over one line stay together.
      if (line === null || (taken.get(line) ?? one.line) !== one.line) return [];
      taken.set(line, one.line);
      const start = { line, character: 0 };
      const range = { start, end: { line, character: (lines[line] ?? '').length } };
      const data = one.lens.command === undefined ? { data: { uri: document.uri, version: document.version } } : {};
      return [{ ...one, line, lens: { ...one.lens, range, ...data } }];
    });
    this.#known.set(key, [...fresh, ...old]);
    return [...fresh, ...old].map(({ lens }) => lens);
  }

  forget(uri: string): void {
    this.#known.delete(normalUri(uri));
  }
}

/** What a lens is over: a carcass, or the file. */
function subjectOf({ command }: CodeLens): string {
  return command === undefined ? '' : JSON.stringify(command.arguments ?? []);
}

/** The line that reads as the one of a lens did, the nearest; else the same line, where it is being typed at. */
function lineNow({ line, text }: Kept, lines: readonly string[]): number | null {
  for (let off = 0; off < lines.length; off += 1) {
    for (const at of [line - off, line + off]) if (lines[at] === text) return at;
  }
  const now = lines[line];
  return now !== undefined && commonStart(now, text).trim().length >= 2 ? line : null;
}

function commonStart(a: string, b: string): string {
  let length = 0;
  while (length < a.length && a[length] === b[length]) length += 1;
  return a.slice(0, length);
}
