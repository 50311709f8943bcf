import type { DocumentSymbol, Range } from 'vscode-languageserver';
import { SymbolKind } from 'vscode-languageserver';
import type { Panel } from '../../shared-core/carcass/model.js';
import type { MapEntry, TreeNode } from '../../shared-core/document/tree.js';
import type { CarcassAnalysis } from '../../shared-core/engine.js';
import { showSizes } from '../../shared-core/length/show.js';
import type { Unit } from '../../shared-core/length/units.js';
import { rangeOf } from '../text.js';
import type { OpenFile, OpenJob, OpenShop } from '../workspace.js';
import { JobPlaces } from './diagnostics.js';

/** Outline: of a job its carcasses and under each its panels; of a shop its sections and the things named in them. */
export function symbols(file: OpenFile): DocumentSymbol[] {
  return file.kind === 'job' ? jobSymbols(file) : shopSymbols(file);
}

function jobSymbols({ document, analysis }: OpenJob): DocumentSymbol[] {
  const places = new JobPlaces(document, analysis);
  const { unit } = analysis;
  return analysis.carcasses.map((carcass, index): DocumentSymbol => {
    const { start, end } = analysis.parts.carcasses[index]!;
    const text = analysis.text.slice(start, end);
    const from = start + text.search(/\S|$/);
    const range = rangeOf(document, from, Math.max(from, start + text.trimEnd().length));
    const own = carcass.nameAt === null ? null : places.location(carcass.nameAt.place, index);
    const selection = own === null ? { start: range.start, end: range.start } : own.range;
    return {
      name: carcass.name === '' ? '(no name)' : carcass.name,
      detail: detailOf(carcass, unit),
      kind: SymbolKind.Class,
      range: around(range, selection),
      selectionRange: selection,
      children: (carcass.carcass?.panels ?? []).map((panel): DocumentSymbol => {
        const location = places.location(panel.place, index);
        const place = location?.uri === document.uri ? location.range : selection;
        return {
          name: panel.key,
          detail: sizeOf(panel, unit),
          kind: SymbolKind.Field,
          range: place,
          selectionRange: place,
        };
      }),
    };
  });
}

function detailOf({ spec }: CarcassAnalysis, unit: Unit): string {
  if (spec === null) return '';
  return `${spec.count.value === 1 ? '' : `${spec.count.value} of `}${spec.kind.value} ${showSizes([spec.width.value, spec.height.value, spec.depth.value], unit)}`;
}

function sizeOf(panel: Panel, unit: Unit): string {
  return showSizes([panel.length, panel.width, panel.thickness], unit);
}

function shopSymbols({ document, analysis: { root } }: OpenShop): DocumentSymbol[] {
  const entries = (node: TreeNode | null): readonly MapEntry[] => (node?.kind === 'map' ? node.entries : []);
  const symbol = ({ key, keyPlace, place, value }: MapEntry, depth: number): DocumentSymbol => {
    const selectionRange = rangeOf(document, keyPlace.start, keyPlace.end);
    return {
      name: key === '' ? '(no name)' : key,
      kind: depth === 0 ? SymbolKind.Module : SymbolKind.Object,
      range: around(rangeOf(document, place.start, place.end), selectionRange),
      selectionRange,
      children:
        depth === 0
          ? entries(value)
              .filter(isThing)
              .map((entry) => symbol(entry, 1))
          : [],
    };
  };
  return entries(root).map((entry) => symbol(entry, 0));
}

/** A machine or a board has keys of its own; a single value is no symbol. */
function isThing({ value }: MapEntry): boolean {
  return value?.kind === 'map';
}

/** The protocol wants the selection inside the range. */
function around(range: Range, inner: Range): Range {
  const before = (a: Range['start'], b: Range['start']): boolean =>
    a.line < b.line || (a.line === b.line && a.character < b.character);
  return {
    start: before(inner.start, range.start) ? inner.start : range.start,
    end: before(range.end, inner.end) ? inner.end : range.end,
  };
}
