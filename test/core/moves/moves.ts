import { applyEdits } from '../../../shared-core/document/pieces.js';
import type { CarcassAnalysis } from '../../../shared-core/engine.js';
import { refactorsAt } from '../../../shared-core/engine/refactors.js';
import { inWords } from '../../in-words.js';
import { opened } from '../findings/jobs.js';

const read = opened();

/** The text after the first refactor at a piece of it whose title begins so; null where none is offered. */
export function after(text: string, piece: string, title: string, on = 1): string | null {
  const analysis = read(text);
  const found = refactorsAt(analysis, text.lastIndexOf(piece) + on).find((one) => inWords(one.title).startsWith(title));
  return found === undefined ? null : applyEdits(text, found.edits);
}

/** The titles of what is offered at a piece of a text. */
export function offered(text: string, piece: string): readonly string[] {
  return refactorsAt(read(text), text.lastIndexOf(piece) + 1).map(({ title }) => inWords(title));
}

/** Every panel and bore of a carcass, without where in the text they come from. */
export function made({ carcass, boring }: CarcassAnalysis): unknown {
  return [
    carcass?.panels.map(({ key, length, width, thickness, pose, board, bands }) => [
      key,
      [length, width, thickness],
      pose,
      board.name,
      bands,
    ]),
    boring?.bores.map(({ id, u, v, face, diameter, depth }) => [id, u, v, face, diameter, depth]),
  ];
}

export function carcassOf(text: string, name: string): CarcassAnalysis {
  return read(text).carcasses.find((one) => one.name === name)!;
}

export const comments = (text: string): readonly string[] => (text.match(/#.*$/gm) ?? []).toSorted();
