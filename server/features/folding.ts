import { FoldingRangeKind, type FoldingRange } from 'vscode-languageserver';
import { foldsOf } from '../../shared-core/service.js';
import type { OpenFile } from '../workspace.js';

/** What can be folded: blocks, items, and remarks of several lines. */
export function folding({ document }: OpenFile): FoldingRange[] {
  return foldsOf(document.getText()).map(({ from, to, kind }) => ({
    startLine: from,
    endLine: to,
    ...(kind === 'remark' && { kind: FoldingRangeKind.Comment }),
  }));
}
