import type { InlayHint, Range } from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import { hintsIn, type HintChoice, type JobAnalysis } from '../shared-core/service.js';
import { asHint, inlayHints } from './features/inlay-hints.js';
import { normalUri } from './files.js';
import { offsetOf } from './text.js';
import type { OpenFile } from './workspace.js';

/**
 * Remembers of each job the last text whose set-ups were known. While those of a long job are worked out anew, its hints stay
 * where they stand now: nobody waits for them, and they do not go and come back.
 */
export class LastHints {
  readonly #known = new Map<string, JobAnalysis>();

  /** The hints of a file whose set-ups are known. */
  of(file: OpenFile, range: Range, choice: HintChoice): InlayHint[] {
    if (file.kind === 'job') this.#known.set(normalUri(file.document.uri), file.analysis);
    return inlayHints(file, range, choice);
  }

  /** The last hints, but for those in what was changed since; null where there were none yet. */
  meanwhile(document: TextDocument, range: Range, choice: HintChoice): InlayHint[] | null {
    const analysis = this.#known.get(normalUri(document.uri));
    if (analysis === undefined) return null;
    const change = changeBetween(analysis.text, document.getText());
    const from = offsetBefore(change, offsetOf(document, range.start));
    const to = offsetBefore(change, offsetOf(document, range.end));
    return hintsIn({ kind: 'job', analysis }, from, to, choice).flatMap((hint) => {
      const at = offsetNow(change, hint.at);
      return at === null ? [] : [asHint(document, { ...hint, at })];
    });
  }

  forget(uri: string): void {
    this.#known.delete(normalUri(uri));
  }
}

/** One stretch of a text that another took the place of. */
interface Change {
  readonly start: number;
  readonly oldEnd: number;
  readonly newEnd: number;
}

function changeBetween(before: string, now: string): Change {
  const most = Math.min(before.length, now.length);
  let start = 0;
  while (start < most && before[start] === now[start]) start += 1;
  let same = 0;
  while (same < most - start && before[before.length - 1 - same] === now[now.length - 1 - same]) same += 1;
  return { start, oldEnd: before.length - same, newEnd: now.length - same };
}

function offsetNow({ start, oldEnd, newEnd }: Change, old: number): number | null {
  if (old <= start) return old;
  return old >= oldEnd ? old - oldEnd + newEnd : null;
}

function offsetBefore({ start, oldEnd, newEnd }: Change, now: number): number {
  if (now <= start) return now;
  return now >= newEnd ? now - newEnd + oldEnd : oldEnd;
}
