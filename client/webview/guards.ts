import type { DrawingReply, FromPage, Subject, ToPage } from '../../shared-core/drawing/messages/drawing.js';

// What comes over a message channel or out of a kept state is not trusted to be what its type says. Knows no page and no
// editor: both sides check with it.

type Fields = Readonly<Record<string, unknown>>;

/** True for a map of fields, of which each is yet to be checked. */
export const isRecord = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
export const isTextOrNull = (value: unknown): value is string | null => value === null || typeof value === 'string';
/** The steps in which lettering gets smaller. */
export const NEARER: readonly number[] = [1, 2, 4, 8, 16];
export const isNearer = (value: unknown): value is number => typeof value === 'number' && NEARER.includes(value);
const isView = (value: unknown): boolean => value === 'panel' || value === 'all-panels';

export function isSubject(value: unknown): value is Subject {
  return (
    isRecord(value) &&
    typeof value.uri === 'string' &&
    isView(value.view) &&
    typeof value.follow === 'boolean' &&
    isTextOrNull(value.carcass) &&
    isTextOrNull(value.panel)
  );
}

export function isReply(value: unknown): value is DrawingReply {
  if (!isRecord(value) || typeof value.uri !== 'string' || typeof value.version !== 'number') return false;
  if (!Array.isArray(value.carcasses)) return false;
  if (value.kind === 'nothing') return typeof value.reason === 'string';
  return (
    value.kind === 'drawing' &&
    isTextOrNull(value.stale) &&
    isRecord(value.ranges) &&
    isRecord(value.scene) &&
    Array.isArray(value.scene.shapes) &&
    Array.isArray(value.scene.table) &&
    Array.isArray(value.scene.findings)
  );
}

/** Whether a message is one that the extension sends to the page. */
export function isToPage(value: unknown): value is ToPage {
  if (!isRecord(value)) return false;
  switch (value.type) {
    case 'reply':
      return isSubject(value.subject) && isNearer(value.nearer) && isReply(value.reply);
    case 'cursor':
      return Array.isArray(value.sources) && value.sources.every((source) => typeof source === 'string');
    case 'trouble':
      return typeof value.message === 'string';
    default:
      return false;
  }
}

/** Whether a message is one that the page sends to the extension. */
export function isFromPage(value: unknown): value is FromPage {
  if (!isRecord(value)) return false;
  switch (value.type) {
    case 'ready':
      return true;
    case 'subject':
      return (
        isView(value.view) &&
        typeof value.follow === 'boolean' &&
        isTextOrNull(value.carcass) &&
        isTextOrNull(value.panel)
      );
    case 'nearer':
      return isNearer(value.nearer);
    case 'reveal':
      return typeof value.source === 'string';
    default:
      return false;
  }
}
