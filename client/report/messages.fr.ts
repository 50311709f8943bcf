import { counted } from '../../shared-core/words/english.js';
import { labels, phrases } from '../../shared-core/words/told.js';

export const NAMES = labels({
  program: 'Borewright',
  title: 'Rapport sur Borewright',
  readFirst:
    'Lisez-le avant de l’envoyer à quelqu’un. D’ici là, il n’est que sur cette machine ; rien n’a été envoyé. Il ne contient ni texte, ni noms, ni chemins de vos fichiers.',
  versions: 'Numéros de version',
  editor: 'éditeur',
  window: 'Fenêtre',
  trusted: 'approuvée',
  restricted: 'restreinte',
  settings: 'Réglages modifiés',
  notShown: 'modifié, non montré ici',
  files: 'Fichiers ouverts',
  jobs: 'fichiers de travail',
  shops: 'fichiers d’atelier',
  findings: 'Constats de tous les fichiers, par règle',
  waits: 'De la frappe à tous les constats',
  server: 'Serveur de langage',
  ended: 's’est arrêté de lui-même',
  stuck: 'n’a plus donné signe de vie',
  failed: 'une réponse a échoué',
  none: 'aucun',
});

export const say = phrases({
  files: (sort: string, count: number, lines: string) => `${sort} : ${count}, avec ${lines || 'aucune'} lignes`,
  waits: (count: number, middle: number, longest: number) =>
    `${counted(count, 'fois', 'fois')}, ${middle} ms au milieu, ${longest} ms au plus`,
  starts: (count: number) => counted(count, 'démarrage'),
  fault: (what: string, seconds: number) => `${what}, ${seconds} s avant ce rapport`,
});
