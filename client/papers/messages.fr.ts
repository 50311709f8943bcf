import { counted, listed } from '../../shared-core/words/english.js';
import { labels, phrases } from '../../shared-core/words/told.js';

export const LABELS = labels({
  whichPapers: 'Documents à écrire',
  codeAsked: 'Scannez le code d’une étiquette de panneau, ou collez son texte',
  codeExample: 'cuisine.carcass.yaml#evier/left',
  whichJob: 'Fichiers de travail de ce nom',
  showFolder: 'Afficher le dossier',
});

export const say = phrases({
  openJob: () => 'Ouvrez un fichier de travail (NOM.carcass.yaml) pour écrire ses documents.',
  saveFirst: () => 'Enregistrez d’abord le travail. Ses documents sont écrits dans un dossier voisin.',
  writing: (file: string) => `Documents d’atelier de ${file}`,
  written: (files: number, folder: string) =>
    `Borewright : ${counted(files, 'fichier écrit', 'fichiers écrits')} dans ${folder}.`,
  without: (files: number, folder: string, broken: readonly string[]) =>
    `Borewright : ${counted(files, 'fichier écrit', 'fichiers écrits')} dans ${folder}, sans ${listed(broken, 'et')}. Le texte y a des erreurs.`,
  withErrors: (files: number, folder: string, errors: number) =>
    `Borewright : ${counted(files, 'fichier écrit', 'fichiers écrits')} dans ${folder}. Le travail a ${counted(errors, 'erreur', 'erreurs')} : ne rien débiter ni percer avant de ${errors === 1 ? 'l’avoir corrigée' : 'les avoir corrigées'}.`,
  failed: (why: string) => `Les documents n’ont pas pu être écrits : ${why}`,
});
