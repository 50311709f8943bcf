import { labels, phrases } from '../../../shared-core/words/told.js';

export const LABELS = labels({
  splitter: 'Faites glisser pour redimensionner les listes, double-cliquez pour les rétablir',
  showWhole: 'Afficher tout le dessin (0)',
  zoomOut: 'Réduire (−)',
  zoomIn: 'Agrandir (+)',
  waiting: 'En attente du dessin.',
  change: '(à changer)',
});

export const PHRASES = phrases({
  stale: (why: string) => `Pas à jour. ${why}`,
  zoom: (percent: number) => `${percent} %`,
  zoomed: (percent: number) => `${percent} pour cent du dessin entier ; afficher tout (0)`,
  pictureFailed: (why: string) => `L’image n’a pas pu être faite : ${why}`,
});
