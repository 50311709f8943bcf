import { counted, listed, sentence } from '../../../shared-core/words/english.js';
import { labels, phrases } from '../../../shared-core/words/told.js';
import { nameOf, type Lay, type Named } from './named.js';

export const LABELS = labels({
  machines: 'Les machines',
  machineView: 'Vue de la machine',
  machineViewMeaning: 'Une descente après l’autre, comme l’opérateur la voit',
  setUpList: 'Liste des réglages',
  setUpListMeaning: 'Tout le travail dans l’ordre d’exécution',
  atMachine: 'À la machine',
  atMachineMeaning: 'Une tâche à la fois, en grandes lettres, pour travailler à la machine',
  steps: 'Étapes',
  stepsOf: 'Étapes de',
  stepsOfCarcass: 'Étapes de quel caisson',
  stepsOfPanel: 'Étapes de quel panneau',
  wholeJob: 'tout le travail',
  allPanels: 'tous ses panneaux',
  waiting: 'En attente des réglages.',
  cautions: 'Précautions',

  goToText: 'Aller au texte',
  goToTextMeaning: 'Aller à la ligne dont vient le panneau (Entrée)',
  settings: 'Réglages de la machine',
  notes: 'Points à surveiller',
  machineSet: 'Machine réglée',
  machineSetMeaning: 'La machine est réglée comme indiqué',
  panelBored: 'Panneau percé',
  panelBoredMeaning: 'Ce panneau est percé dans ce réglage (Espace)',
  first: 'Première étape (Début)',
  setUpBefore: 'Réglage précédent (Page préc.)',
  before: 'Étape précédente (gauche)',
  after: 'Étape suivante (droite)',
  setUpAfter: 'Réglage suivant (Page suiv.)',
  last: 'Dernière étape (Fin)',

  back: 'Retour',
  backMeaning: 'Étape précédente (gauche)',
  done: 'Fait',
  isDone: 'Fait ✓',
  doneMeaning: 'Cocher et continuer (Espace)',
  next: 'Suivant',
  nextMeaning: 'Étape suivante sans cocher (droite)',
  leave: 'Quitter',
  leaveMeaning: 'Retour à la vue de la machine (Échap)',
  screenStaysOn: 'L’écran reste allumé',
  screenMayGoOff: 'L’écran peut s’éteindre ; ici, une page ne peut pas le garder allumé',
  checkFirst:
    'Mesurez cette pièce avant de percer les autres. Si une cote est fausse, revenez en arrière et réglez à nouveau la machine.',

  panelsBored: 'Panneaux percés',
  showSteps: 'Montrer ses étapes sur la machine',
  goToPanelText: 'Aller à la ligne dont vient le panneau',
  text: 'Texte',
  allBored: 'Tous percés',
  allBoredMeaning: 'Cocher chaque panneau de ce réglage',
  setUpDone: 'fait',
  nothingToChange: 'Rien à changer',
  papers: 'Écrire les documents d’atelier',
  papersMeaning: 'Liste de débit, étiquettes, liste des réglages et les autres documents du travail, à imprimer',

  signsAndKeys: 'Signes et touches',
  keys:
    'Flèches gauche et droite : étapes. Page préc. et Page suiv. : réglages. Espace : panneau percé. Entrée : texte. ' +
    'Plus, moins et 0 : échelle. Flèches avec Maj : déplacer le dessin.',
});

export const PHRASES = phrases({
  stepOf: (step: number, steps: number) => `Étape ${step} sur ${steps}`,
  setUpOf: (setUp: number, setUps: number, name: string) => `Réglage ${setUp} sur ${setUps} : ${name}`,
  setUpAt: (setUp: number, setUps: number, machine: string) => `Réglage ${setUp} sur ${setUps} · ${machine}`,
  next: (what: string) => `Ensuite : ${what}`,
  sizeAndStroke: (size: string, stroke: number, strokes: number) =>
    strokes > 1 ? `${size}, descente ${stroke} sur ${strokes} dans ce réglage` : size,
  figuresIn: (unit: 'mm' | 'in') => `cotes en ${unit === 'mm' ? 'millimètres' : 'pouces'}`,
  nextSetUp: (setUp: number, machine: string, of: Named) => `réglage ${setUp} sur ${machine}, ${nameOf(of)}.`,
  nextStroke: (lay: string) => `${lay}.`,
  nextPanel: (of: Named, lay: string) => `${nameOf(of)}. ${sentence(lay)}.`,

  set: (machine: string) => `Régler ${machine}`,
  leaveSet: (machine: string) => `Laisser ${machine} telle quelle`,
  check: (of: Named) => `Contrôler la première pièce : ${nameOf(of)}`,
  bore: (of: Named, pieces: number, stroke: number, strokes: number) =>
    [
      `Percer ${nameOf(of)}`,
      ...(pieces > 1 ? [counted(pieces, 'pièce')] : []),
      ...(strokes > 1 ? [`descente ${stroke} sur ${strokes}`] : []),
    ].join(', '),

  kindAndSetUps: (kind: string, setUps: number) => `${kind}, ${counted(setUps, 'réglage')}`,
  runBored: (of: Named) => `${nameOf(of)} percé`,
  runName: (of: Named, pieces: number) => (pieces > 1 ? `${pieces} × ${nameOf(of)}` : nameOf(of)),
  runText: (of: Named) => `${nameOf(of)} : montrer dans le texte`,
  toBore: (panels: number, strokes: number, holes: number) =>
    [counted(panels, 'panneau', 'panneaux'), counted(strokes, 'descente'), counted(holes, 'trou')].join(', '),
  bored: (bored: number, panels: number) => `${bored} sur ${counted(panels, 'panneau percé', 'panneaux percés')}`,
  ticked: (bored: number, runs: number) => `${bored} sur ${counted(runs, 'passage coché', 'passages cochés')}`,
  eachStop: (measured: string) => `Chaque butée : ${measured}.`,
  lay: ({ words, lowered, held }: Lay) =>
    sentence(
      [
        words,
        ...(lowered.length > 0 ? [`abaisser ${listed(lowered, 'et')}`] : []),
        ...(held ? [] : ['tenir dans un gabarit, car aucun presseur n’y arrive']),
      ].join(' ; '),
    ),
  broken: (carcasses: readonly string[]) =>
    carcasses.length === 1
      ? `${carcasses[0]!} n’est pas dans cette liste, car son texte a des erreurs.`
      : `${listed(carcasses, 'et')} ne sont pas dans cette liste, car leur texte a des erreurs.`,
  unbored: (holes: number, panels: readonly Named[], reason: string) =>
    `Aucun réglage ne perce ${counted(holes, 'trou')} de ${counted(panels.length, 'panneau', 'panneaux')} (${panels.map(nameOf).join(' ; ')}). ${reason}`,
});
