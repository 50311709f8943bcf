import type { DrawnDocument } from '../../../shared-core/service.js';
import { lineAndColumn } from './flat.js';

/** A file as whoever draws it knows it. */
export function shown({ uri, text }: { readonly uri: string; readonly text: string }): DrawnDocument {
  const at = (offset: number): { line: number; character: number } => {
    const [line, column] = lineAndColumn(text, offset).split(':').map(Number) as [number, number];
    return { line: line - 1, character: column - 1 };
  };
  return { uri, version: 1, toRange: (start, end) => ({ start: at(start), end: at(end) }) };
}
