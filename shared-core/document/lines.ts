// Lines of a text. Offsets are UTF-16 code units from 0 to the length of the text; a line ends behind its line feed.

/** Where the line that an offset is in begins. */
export function lineStart(text: string, offset: number): number {
  // Asked from -1 on, `lastIndexOf` looks at 0 all the same, and would take a line feed there for one above.
  return offset <= 0 ? 0 : text.lastIndexOf('\n', offset - 1) + 1;
}

/** Where the line below begins; the end of the text where there is none. */
export function nextLineStart(text: string, offset: number): number {
  const newline = text.indexOf('\n', offset);
  return newline === -1 ? text.length : newline + 1;
}

/** Where the line that an offset is in ends, before its line feed. */
export function lineEnd(text: string, offset: number): number {
  const newline = text.indexOf('\n', offset);
  return newline === -1 ? text.length : newline;
}

/** How far an offset stands from the beginning of its line. */
export function columnOf(text: string, offset: number): number {
  return offset - lineStart(text, offset);
}

/** Whether there is nothing but what YAML takes for blank: other white signs, such as a vertical tab, are none. */
export const isBlank = (text: string): boolean => !/[^ \t\r\n]/.test(text);

/** Where the lines begin that begin in [from, to) and are not blank; `from` is where one begins. */
export function writtenLines(text: string, from: number, to: number): readonly number[] {
  const lines: number[] = [];
  for (let at = from; at < to;) {
    const next = nextLineStart(text, at);
    if (!isBlank(text.slice(at, next))) lines.push(at);
    at = next;
  }
  return lines;
}
