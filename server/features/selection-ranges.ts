import type { Position, SelectionRange } from 'vscode-languageserver';
import { spansAt } from '../../shared-core/service.js';
import { offsetOf, rangeOf } from '../text.js';
import type { OpenFile } from '../workspace.js';

/** For each position what a growing selection takes in: the word, its entry, the map or list around it, up to the whole file. */
export function selectionRanges(file: OpenFile, positions: readonly Position[]): SelectionRange[] {
  const { document } = file;
  return positions.map((position) => {
    let range: SelectionRange | undefined;
    for (const { start, end } of spansAt(file, offsetOf(document, position))) {
      range = { range: rangeOf(document, start, end), ...(range !== undefined && { parent: range }) };
    }
    return range!;
  });
}
