import { refactorsAt } from '../engine/refactors.js';
import type { TextEdit } from '../document/pieces.js';
import { shopRefactorsAt } from '../engine/shop-refactors.js';
import { tell } from '../words/message.js';
import type { AnalysedFile } from './file.js';

/** What can be made of what stands at an offset of a file, in words, with edits of its text. */
export function refactorsIn(
  file: AnalysedFile,
  offset: number,
): readonly { readonly title: string; readonly edits: readonly TextEdit[] }[] {
  const isShop = file.kind === 'shop';
  const unit = isShop ? file.analysis.shop.unit : file.analysis.unit;
  const found = isShop ? shopRefactorsAt(file.analysis, offset) : refactorsAt(file.analysis, offset);
  return found.map(({ title, edits }) => ({ title: tell(title, unit), edits }));
}
