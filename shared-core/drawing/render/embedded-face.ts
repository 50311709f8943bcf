import type { SvgNode } from './svg-tree.js';

/** What a file calls the lettering that it brings along; no machine has a face of this name. */
export const EMBEDDED = 'Borewright Lettering';

/**
 * Cuts the face that drawings are measured with down to some letters, each as wide as in the whole.
 * @param letters in any order; each counts once
 * @param strong the bold face
 * @returns a TrueType file, in base 64
 */
export type FaceCutter = (letters: string, strong: boolean) => string;

/** The letters that drawings of one file have, of each face. */
export class LettersUsed {
  readonly #regular = new Set<string>();
  readonly #bold = new Set<string>();

  /** Adds what a drawing has. */
  add(node: SvgNode): void {
    if (node.tag === 'text' && node.text !== undefined) {
      const isStrong = (node.attributes['class'] ?? '').split(' ').includes('strong');
      for (const letter of node.text) (isStrong ? this.#bold : this.#regular).add(letter);
    }
    node.children.forEach((child) => this.add(child));
  }

  /** Rules of a style sheet that bring the letters along; '' where there are none. */
  style(cut: FaceCutter): string {
    return [rule(this.#regular, cut, false), rule(this.#bold, cut, true)].join('');
  }
}

function rule(letters: ReadonlySet<string>, cut: FaceCutter, strong: boolean): string {
  if (letters.size === 0) return '';
  const data = cut([...letters].sort().join(''), strong);
  return `@font-face{font-family:'${EMBEDDED}';font-weight:${strong ? 700 : 400};src:url(data:font/ttf;base64,${data}) format('truetype')}`;
}
