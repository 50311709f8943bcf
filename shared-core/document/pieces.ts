/** Replaces [start, end) of a text by `text`. Offsets are UTF-16 code units. */
export interface TextEdit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

type Piece =
  { readonly old: true; readonly start: number; readonly end: number } | { readonly old: false; readonly text: string };

/** Edits made one after the other, each on the result of those before, gathered as edits of the first text. */
export class Pieces {
  readonly #source: string;
  #pieces: Piece[];

  constructor(source: string) {
    this.#source = source;
    this.#pieces = [{ old: true, start: 0, end: source.length }];
  }

  text(): string {
    return this.#pieces.map((piece) => this.#textOf(piece)).join('');
  }

  /** `edits` are of the present text, and do not overlap. */
  apply(edits: readonly TextEdit[]): void {
    for (const edit of edits.toSorted(fromTheEnd)) this.#replace(edit);
  }

  /** Edits of the source, in its order, none touching another, without what they would leave as it is. */
  edits(): readonly TextEdit[] {
    const edits: TextEdit[] = [];
    let from = 0;
    let text = '';
    const flush = (to: number): void => {
      edits.push(this.#trimmed({ start: from, end: to, text }));
      text = '';
    };
    for (const piece of this.#pieces) {
      if (!piece.old) {
        text += piece.text;
        continue;
      }
      if (piece.start === piece.end) continue;
      flush(piece.start);
      from = piece.end;
    }
    flush(this.#source.length);
    return edits.filter((edit) => edit.end > edit.start || edit.text !== '');
  }

  #textOf(piece: Piece): string {
    return piece.old ? this.#source.slice(piece.start, piece.end) : piece.text;
  }

  #replace(edit: TextEdit): void {
    const next: Piece[] = [];
    let at = 0;
    let placed = false;
    const place = (): void => {
      if (!placed) next.push({ old: false, text: edit.text });
      placed = true;
    };
    for (const piece of this.#pieces) {
      const length = piece.old ? piece.end - piece.start : piece.text.length;
      const before = Math.min(Math.max(edit.start - at, 0), length);
      const after = Math.min(Math.max(edit.end - at, 0), length);
      if (before > 0) next.push(part(piece, 0, before));
      if (at + length >= edit.start && before < length) place();
      if (after < length) next.push(part(piece, after, length));
      at += length;
    }
    place();
    this.#pieces = next;
  }

  /** Leaves out the beginning and the end that old and new text have in common. */
  #trimmed(edit: TextEdit): TextEdit {
    const before = this.#source.slice(edit.start, edit.end);
    const most = Math.min(before.length, edit.text.length);
    let head = 0;
    while (head < most && before[head] === edit.text[head]) head += 1;
    if (splitsPair(before, head) || splitsPair(edit.text, head)) head -= 1;
    let tail = 0;
    while (tail < most - head && before.at(-1 - tail) === edit.text.at(-1 - tail)) tail += 1;
    if (splitsPair(before, before.length - tail) || splitsPair(edit.text, edit.text.length - tail)) tail -= 1;
    return { start: edit.start + head, end: edit.end - tail, text: edit.text.slice(head, edit.text.length - tail) };
  }
}

/** The order in which edits can be made one after the other, each where it is said to be. */
const fromTheEnd = (a: TextEdit, b: TextEdit): number => b.start - a.start || b.end - a.end;

function part(piece: Piece, from: number, to: number): Piece {
  return piece.old
    ? { old: true, start: piece.start + from, end: piece.start + to }
    : { old: false, text: piece.text.slice(from, to) };
}

/** True where an offset falls between the halves of a surrogate pair. */
function splitsPair(text: string, at: number): boolean {
  return /[\uD800-\uDBFF]/.test(text[at - 1] ?? '') && /[\uDC00-\uDFFF]/.test(text[at] ?? '');
}

/** The text with the edits done; they do not overlap. */
export function applyEdits(text: string, edits: readonly TextEdit[]): string {
  let done = '';
  let at = 0;
  for (const { start, end, text: by } of edits.toSorted(fromTheEnd).reverse()) {
    done += text.slice(at, start) + by;
    at = end;
  }
  return done + text.slice(at);
}

/** The edits in the order of the text, without those that meet one before them that is kept. One may begin where another ends. */
export function withoutOverlaps(edits: readonly TextEdit[]): readonly TextEdit[] {
  const kept: TextEdit[] = [];
  for (const edit of [...edits].sort((a, b) => a.start - b.start || a.end - b.end)) {
    const before = kept.at(-1);
    // Two that only put something in at one place would have no order.
    const follows =
      before === undefined || edit.start > before.end || (edit.start === before.end && before.start < before.end);
    if (follows) kept.push(edit);
  }
  return kept;
}
