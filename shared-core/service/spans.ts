import { readTree } from '../document/read.js';
import { spansAround, type Span } from '../document/structure.js';
import type { AnalysedFile } from './file.js';

/** What stands around an offset: the whole file, the maps and lists, the entry, the word; each smaller, and in the one before. */
export function spansAt(file: AnalysedFile, offset: number): readonly Span[] {
  const whole: Span = { start: 0, end: file.analysis.text.length };
  return distinct([whole, ...spansOf(file, offset)]);
}

/** Of a job that can be cut only the carcass at the offset is read, or the head. */
function spansOf(file: AnalysedFile, offset: number): readonly Span[] {
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
