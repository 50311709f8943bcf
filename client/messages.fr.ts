import { counted } from '../shared-core/words/english.js';
import { labels, phrases } from '../shared-core/words/told.js';

export const NAMES = labels({
  program: 'Borewright',
  millimetres: 'Millimètres',
  inches: 'Pouces',
  unitAsked: 'Unité des nombres nus du fichier',
  jobsOfShop: 'Travaux qui nomment ce fichier d’atelier',
  statusItem: 'Borewright : unité, atelier et constats',
  statusMeaning: 'Unité des nombres nus, atelier et constats de ce fichier. Cliquez pour afficher les constats.',
  builtInShop: 'atelier intégré',
  noFaults: 'ni erreur ni avertissement',
  checkAll: 'contrôler tous les fichiers',
});

export const say = phrases({
  stopped: () =>
    'Le serveur de langage s’est arrêté. Lancez la commande « Borewright : Redémarrer le serveur de langage ».',
  startsAgain: () => 'Le serveur de langage s’est arrêté et il est relancé.',
  endsTooOften: () =>
    'Borewright : le serveur de langage s’est arrêté cinq fois en trois minutes et n’est plus relancé. Sa sortie dit pourquoi. Fermez le fichier sur lequel il échoue, puis lancez la commande « Borewright : Redémarrer le serveur de langage ».',
  notStarted: (why: string) => `Borewright : le serveur de langage n’a pas démarré : ${why}`,
  restarted: () => 'Borewright : le serveur de langage a redémarré.',
  notRestarted: (why: string) => `Borewright : le serveur de langage n’a pas pu redémarrer : ${why}`,
  noShop: () =>
    'Ce travail n’a pas de fichier d’atelier qui puisse être ouvert. Nommez-en un avec `shop: NAME.shop.yaml`.',
  noJobOfShop: () => 'Aucun travail de cet espace ne nomme ce fichier d’atelier.',
  errors: (count: number) => counted(count, 'erreur'),
  warnings: (count: number) => counted(count, 'avertissement'),
  check: (path: string) => `contrôler ${path}`,
});
