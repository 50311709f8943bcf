import { labels } from '../../../shared-core/words/told.js';

export const LABELS = labels({
  machines: 'Les machines',
  showInText: 'Montrer dans le texte',
});
