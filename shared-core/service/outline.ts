import { writtenSize } from '../carcass/outer-size.js';
import { tell } from '../words/message.js';
import { hint, UNNAMED } from './messages.js';
import type { Panel } from '../carcass/model.js';
import type { Span } from '../document/structure.js';
import type { MapEntry, TreeNode } from '../document/tree.js';
import type { CarcassAnalysis } from '../engine.js';
import { showSizes } from '../length/show.js';
import type { Reader } from '../length/reader.js';
import { inJob, type AnalysedFile, type JobFile, type ShopFile } from './file.js';

/** A thing that a file describes, and the things in it. */
export interface Outlined {
  readonly sort: 'carcass' | 'panel' | 'section' | 'thing';
  readonly name: string;
  readonly detail?: string;
  /** All of its text; holds `own`. */
  readonly whole: Span;
  /** Its name, or what it comes from. */
  readonly own: Span;
  readonly within: readonly Outlined[];
}

/** Of a job its carcasses and under each its panels; of a shop its sections and the things named in them. */
export function outlineOf(file: AnalysedFile): readonly Outlined[] {
  return file.kind === 'job' ? ofJob(file) : ofShop(file);
}

function ofJob({ analysis }: JobFile): readonly Outlined[] {
  const { reader } = analysis;
  return analysis.carcasses.map((carcass, index): Outlined => {
    const { start, end } = analysis.parts.carcasses[index]!;
    const text = analysis.text.slice(start, end);
    const from = start + text.search(/\S|$/);
    const whole = { start: from, end: Math.max(from, start + text.trimEnd().length) };
    const named = carcass.nameAt === null ? null : inJob(analysis, carcass.nameAt.place, index);
    const own = named ?? { start: from, end: from };
    return {
      sort: 'carcass',
      name: titled(carcass.name),
      detail: detailOf(carcass, reader),
      whole: around(whole, own),
      own,
      within: (carcass.carcass?.panels ?? []).map((panel): Outlined => {
        const place = inJob(analysis, panel.place, index) ?? own;
        return { sort: 'panel', name: panel.key, detail: sizeOf(panel, reader), whole: place, own: place, within: [] };
      }),
    };
  });
}

function titled(name: string): string {
  return name === '' ? UNNAMED.carcass : name;
}

function detailOf({ spec }: CarcassAnalysis, reader: Reader): string {
  if (spec === null) return '';
  const size = writtenSize(spec);
  return tell(hint.carcass({ count: spec.count.value, kind: spec.kind.value, size }), reader);
}

function sizeOf(panel: Panel, reader: Reader): string {
  return showSizes([panel.length, panel.width, panel.thickness], reader);
}

function ofShop({ analysis: { root } }: ShopFile): readonly Outlined[] {
  const entries = (node: TreeNode | null): readonly MapEntry[] => (node?.kind === 'map' ? node.entries : []);
  const outlined = (sort: 'section' | 'thing', { key, keyPlace, place, value }: MapEntry): Outlined => {
    const own = { start: keyPlace.start, end: keyPlace.end };
    return {
      sort,
      name: titled(key),
      whole: around(place, own),
      own,
      within:
        sort === 'section'
          ? entries(value)
              .filter(isThing)
              .map((entry) => outlined('thing', entry))
          : [],
    };
  };
  return entries(root).map((entry) => outlined('section', entry));
}

/** A machine or a board has keys of its own; a single value is nothing to be listed. */
function isThing({ value }: MapEntry): boolean {
  return value?.kind === 'map';
}

function around(whole: Span, own: Span): Span {
  return { start: Math.min(whole.start, own.start), end: Math.max(whole.end, own.end) };
}
