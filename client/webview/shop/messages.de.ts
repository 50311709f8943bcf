import { labels } from '../../../shared-core/words/told.js';

export const LABELS = labels({
  machines: 'Maschinen',
  showInText: 'Im Text zeigen',
});
