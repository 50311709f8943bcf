import * as fontkit from 'fontkit';
import type { PDFDocument, PDFFont } from '@cantoo/pdf-lib';

/** The font files that a document is lettered in. Their widths are those that drawings are laid out by. */
export interface FontFiles {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}

/** Points of type in a millimetre. */
export const POINTS_PER_MM = 72 / 25.4;

/** Where a line may be broken: at a space, unless it holds two words together, or a figure and its sign or unit. */
export const BREAKS = /(?<!Ø)(?!(?<=\d)\s(?:mm|in|m|m²|kg|h|min|s|%)(?![\p{L}²]))[^\S\u00a0\u202f]+/u;

/** Stands where the font has no letter. */
const UNKNOWN = '?';

/** The fonts of one document, measured in millimetres. */
export class Fonts {
  readonly #known: ReadonlySet<number>;
  /** Widths of letters of size 1, of each font. */
  readonly #widths = new Map<PDFFont, Map<string, number>>();

  private constructor(
    readonly regular: PDFFont,
    readonly bold: PDFFont,
  ) {
    this.#known = new Set(regular.getCharacterSet());
  }

  /** Embeds both; of each only the letters that the document uses go into the file. */
  static async embed(document: PDFDocument, files: FontFiles): Promise<Fonts> {
    document.registerFontkit(fontkit);
    const options = { subset: true, features: { liga: false } };
    return new Fonts(await document.embedFont(files.regular, options), await document.embedFont(files.bold, options));
  }

  of(strong: boolean): PDFFont {
    return strong ? this.bold : this.regular;
  }

  /** The text on one line, without what the font cannot show. */
  shown(text: string): string {
    let line = '';
    for (const letter of text.replace(/\s+/g, ' ')) line += this.#known.has(letter.codePointAt(0)!) ? letter : UNKNOWN;
    return line;
  }

  /** Width of a line of a font size, both in millimetres. Without ligatures it is the sum of its letters. */
  width(text: string, size: number, strong: boolean): number {
    const font = this.of(strong);
    let width = 0;
    for (const letter of this.shown(text)) width += this.#letter(font, letter);
    return width * size;
  }

  /** A font lays a text out at every asking, which takes longer than all else that a page needs. */
  #letter(font: PDFFont, letter: string): number {
    const widths = this.#widths.get(font) ?? new Map<string, number>();
    this.#widths.set(font, widths);
    const width = widths.get(letter) ?? font.widthOfTextAtSize(letter, 1);
    widths.set(letter, width);
    return width;
  }

  /** Breaks a text into lines of no more than `room` millimetres; a word that is longer is broken within. */
  wrapped(text: string, size: number, strong: boolean, room: number): readonly string[] {
    const fits = (line: string): boolean => this.width(line, size, strong) <= room;
    const lines: string[] = [];
    let line = '';
    for (const word of text.split(BREAKS)) {
      const longer = line === '' ? word : `${line} ${word}`;
      if (fits(longer)) {
        line = longer;
        continue;
      }
      if (line !== '') lines.push(line);
      const pieces = this.#pieces(word, fits);
      lines.push(...pieces.slice(0, -1));
      line = pieces.at(-1) ?? '';
    }
    return [...lines, line];
  }

  #pieces(word: string, fits: (line: string) => boolean): readonly string[] {
    const pieces: string[] = [];
    let piece = '';
    for (const letter of word) {
      if (piece !== '' && !fits(piece + letter)) {
        pieces.push(piece);
        piece = '';
      }
      piece += letter;
    }
    return [...pieces, piece];
  }
}
