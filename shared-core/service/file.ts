import type { Span } from '../document/structure.js';
import type { TextRange } from '../drawing/messages/drawing.js';
import type { JobAnalysis, ShopAnalysis } from '../engine.js';
import type { Place } from '../document/place.js';

/** A file of the owner's, with all that is known of its text. */
export interface JobFile {
  readonly kind: 'job';
  readonly analysis: JobAnalysis;
}
export interface ShopFile {
  readonly kind: 'shop';
  readonly analysis: ShopAnalysis;
}
export type AnalysedFile = JobFile | ShopFile;

/** A run of the file's text as lines and columns. */
export type ToRange = (start: number, end: number) => TextRange;

/** Where a place of a carcass stands in the job file; null where it stands in another file. */
export function inJob(analysis: JobAnalysis, place: Place, carcass: number | null): Span | null {
  const { file, start, end } = analysis.locate(place, carcass);
  return file === 'job' ? { start, end } : null;
}
