import { labels, phrases } from '../../shared-core/words/told.js';

export const TITLES = labels({
  boreMap: 'Plan de perçage',
  allPanels: 'Tous les panneaux',
  boxView: 'Vue du meuble',
  machineView: 'Vue de la machine',
  setUpList: 'Liste des réglages',
  machines: 'Les machines',
});

export const say = phrases({
  titled: (what: string, kept: string, file: string) => `${what} ${kept === '' ? '' : `${kept} · `}${file}`,
  openJobForBores: () => 'Ouvrez un fichier de travail (NAME.carcass.yaml) pour voir ses perçages.',
  openJobForBox: () => 'Ouvrez un fichier de travail (NAME.carcass.yaml) pour voir ses meubles.',
  openJobForSetUps: () => 'Ouvrez un fichier de travail (NAME.carcass.yaml) pour voir ses réglages.',
  openShop: () => 'Ouvrez un fichier d’atelier (NAME.shop.yaml) pour voir ses machines.',
  noBoreMap: () => 'Cliquez d’abord dans un plan de perçage. La commande porte sur son dessin.',
  drawingFailed: (why: string) => `Le dessin n’a pas pu être fait : ${why}`,
  pictureFailed: (why: string) => `L’image n’a pas pu être faite : ${why}`,
  saveFailed: (why: string) => `L’image n’a pas pu être enregistrée : ${why}`,
  setUpsFailed: (why: string) => `Les réglages n’ont pas pu être calculés : ${why}`,
  machineFailed: (why: string) => `La machine n’a pas pu être dessinée : ${why}`,
  machinesFailed: (why: string) => `Les machines n’ont pas pu être dessinées : ${why}`,
  boreElsewhere: () => 'Borewright : ceci vient du fichier d’atelier, ou d’un texte qui a été supprimé.',
  panelElsewhere: () => 'Borewright : ce panneau n’a pas de ligne à lui dans le fichier de travail.',
  saved: (file: string) => `Borewright : ${file} est enregistré.`,
  noBrowser: (file: string) =>
    `Aucun navigateur n’a pu être ouvert. Ouvrez-y ${file} vous-même pour imprimer le dessin.`,
});
