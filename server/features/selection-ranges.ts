import type { Position, SelectionRange } from 'vscode-languageserver';
import { readTree } from '../../shared-core/document/read.js';
import { spansAround, type Span } from '../../shared-core/document/structure.js';
import { offsetOf, rangeOf } from '../text.js';
import type { OpenFile } from '../workspace.js';

/** For each position what a growing selection takes in: the word, its entry, the map or list around it, up to the whole file. */
export function selectionRanges(file: OpenFile, positions: readonly Position[]): SelectionRange[] {
  const { document } = file;
  return positions.map((position) => {
    const offset = offsetOf(document, position);
    const whole: Span = { start: 0, end: document.getText().length };
    const spans = distinct([whole, ...spansOf(file, offset)]);
    let range: SelectionRange | undefined;
    for (const { start, end } of spans) {
      range = { range: rangeOf(document, start, end), ...(range !== undefined && { parent: range }) };
    }
    return range!;
  });
}

/** Of a job that can be cut only the carcass at the offset is read, or the head. */
function spansOf(file: OpenFile, offset: number): readonly Span[] {
  if (file.kind === 'shop') return spansAround(file.analysis.root, offset);
  const { parts } = file.analysis;
  if (parts.whole !== null) return spansAround(parts.whole.root, offset);
  const index = file.analysis.carcassAt(offset);
  const { start, end, text } = (index === null ? undefined : parts.carcasses[index]) ?? parts.head;
  const inside = spansAround(readTree(text, 'self').root, offset - start);
  return [{ start, end: start + text.slice(0, end - start).trimEnd().length }, ...shifted(inside, start)].filter(
    (span) => span.start <= offset && offset <= span.end,
  );
}

function shifted(spans: readonly Span[], by: number): readonly Span[] {
  return spans.map(({ start, end }) => ({ start: start + by, end: end + by }));
}

/** Each within the one before and smaller than it. */
function distinct(spans: readonly Span[]): readonly Span[] {
  return spans.filter((span, i) => {
    const before = spans[i - 1];
    return before === undefined || span.start > before.start || span.end < before.end;
  });
}
