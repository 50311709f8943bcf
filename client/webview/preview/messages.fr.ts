import { counted } from '../../../shared-core/words/english.js';
import { labels, phrases } from '../../../shared-core/words/told.js';

export const LABELS = labels({
  carcass: 'Caisson',
  panel: 'Panneau',
  choosePanel: 'choisir un panneau',
  boreMap: 'Plan de perçage',
  boreMapMeaning: 'Un panneau avec ses cotes',
  allPanels: 'Tous les panneaux',
  allPanelsMeaning: 'Chaque panneau du caisson',
  drawing: 'Dessin',
  drawingAndLists: 'Dessin et listes',
  follow: 'Suivre le curseur',
  followMeaning: 'Dessine le panneau au curseur ; sinon, le dessin reste sur son panneau',
  more: 'Plus',
  moreMeaning: 'Autre aperçu, image, impression',
  another: 'Autre aperçu qui reste sur ce panneau',
  copy: 'Copier comme image',
  svg: 'Enregistrer en SVG',
  png: 'Enregistrer en PNG',
  print: 'Imprimer',
  papers: 'Écrire les documents d’atelier',
  copied: 'Copié comme image.',
  measure: 'Mesurer',
  measureMeaning: 'Mesurer d’un perçage à l’autre (M)',
  chooseFirst: 'Choisissez le premier perçage.',
  twoPanels: 'Ces perçages sont dans des panneaux différents. Choisissez-en deux du même panneau.',
  findings: 'Constats',
  noFindings: 'Aucun constat ici.',
  holeTable: 'Table des trous',
  holes: 'Trous',
  noBores: 'Aucun perçage dans ce panneau.',
  notes: 'Annotations',
  keys:
    'Tab parcourt les lignes de la table des trous, les flèches vont de perçage en perçage, Entrée mène au texte. ' +
    'M sur un perçage puis sur un autre mesure entre les deux. Plus et moins changent l’échelle, 0 montre tout.',
  keysForBores: 'Tab et flèches : perçages',
  keyForText: 'Entrée : texte',
  keyForMeasuring: 'M : mesurer',
  keysForZoom: '+ − 0 : échelle',
});

export const SEVERITIES = labels({
  error: 'Erreur',
  warning: 'Avertissement',
  info: 'Remarque',
});

export const PHRASES = phrases({
  measuredFrom: (from: string) => `De : ${from}.\nChoisissez le second perçage.`,
  measured: (from: string, to: string, figures: readonly string[]) =>
    `De : ${from}. À : ${to}.\n${figures.join(' · ')}`,
  findings: (count: number) => counted(count, 'constat'),
  line: (number: string) => `Ligne ${number} : montrer dans le texte`,
  holesOf: (title: string) => `Trous de ${title}`,
  looseShelf: (panel: string) => `Tablette mobile ${panel}`,
  shelfHole: (hole: number, holes: number) => `Trou ${hole} sur ${holes}`,
  openPanel: (panel: string) => `${panel} : afficher son plan de perçage`,
});
