import { labels } from '../../../shared-core/words/told.js';

/** What the page of a shop’s machines has. */
export const LABELS = labels({
  machines: 'Machines',
  showInText: 'Show in the text',
});
