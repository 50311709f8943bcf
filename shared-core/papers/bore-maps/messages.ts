import type { Severity } from '../../document/finding.js';
import { sentence } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { labels } from '../../words/told.js';

export const WORDS = labels('bore-map-words', { title: 'Bore maps', noFindings: 'No findings.' });

/** What bore maps on paper say beside their drawings. */
export const say = messages('bore-maps', {
  bare: ({ panels }: { readonly panels: readonly { readonly title: string; readonly size: string }[] }) =>
    `Without bores: ${panels.map(({ title, size }) => `${title} (${size})`).join('; ')}.`,
  finding: ({ severity, message }: { readonly severity: Severity; readonly message: string }) =>
    `${sentence(severity)}: ${message}`,
});
