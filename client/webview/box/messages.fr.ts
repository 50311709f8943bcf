import { labels, phrases } from '../../../shared-core/words/told.js';

export const LABELS = labels({
  view: 'Vue',
  cabinet: 'Meuble',
  cabinetMeaning: 'Un caisson avec ses portes',
  wall: 'Mur',
  wallMeaning: 'Tous les caissons le long du même mur, avec le plan de travail',
  from: 'Vu de',
  corner: 'Coin',
  front: 'Face',
  side: 'Côté',
  above: 'Dessus',
  apart: 'Éclaté',
  open: 'Ouvert',
  copy: 'Copier',
  copyMeaning: 'Copier comme image',
  save: 'Enregistrer PNG',
  saveMeaning: 'Enregistrer comme image',
  panels: 'Panneaux',
  viewAndLists: 'Vue et listes',
  keys:
    'Les flèches tournent le meuble, plus et moins l’approchent et l’éloignent, 0 montre le tout. ' +
    'Page précédente et Page suivante vont d’un panneau à l’autre, Entrée va à son texte. O ouvre et ferme, A éclate et rassemble.',
  keysInShort:
    'Flèches : tourner · + − 0 : taille · Page préc., Page suiv. : panneaux · Entrée : texte · O : ouvrir · A : éclater',
  noDepth:
    'Cet ordinateur ou cette fenêtre ne dessine rien en trois dimensions (WebGL est absent ou désactivé), il n’y a donc pas d’image ici. ' +
    'Les listes ci-dessous disent ce qui s’y trouve. Essayez d’activer l’accélération matérielle dans les réglages de l’éditeur ou du navigateur.',
});

export const PHRASES = phrases({
  boresOf: (panel: string) => `Perçages de ${panel}`,
});
