import { fr } from '../../shared-core/spoken/fr.js';
import { inType } from '../../shared-core/spoken/fr/type.js';
import { quoted } from '../../shared-core/words/english.js';
import type { TranslationOf } from '../../shared-core/words/message.js';
import type { Spoken } from '../../shared-core/words/spoken.js';
import type { FileFault, say } from '../messages.js';
import type { say as sayOfWriting } from '../papers/messages.js';

const q = (text: string): string => `« ${quoted(text).slice(1, -1)} »`;
const NOUNS: Readonly<Record<string, string>> = {
  board: 'panneau brut',
  band: 'bande de chant',
  fitting: 'ferrure',
  hinge: 'charnière',
  machine: 'machine',
  stop: 'butée',
  carcass: 'caisson',
  panel: 'panneau',
};
const bare = (of: string): string => NOUNS[of] ?? of;

const server: TranslationOf<typeof say> = {
  notSaved: ({ reference }) =>
    `Le fichier d’atelier ${q(reference)} est à côté du travail, et le travail n’est pas encore enregistré. Enregistrez-le ; d’ici là, l’atelier intégré sert.`,
  noShopFile: ({ reference }) =>
    `${q(reference)} n’est pas un fichier d’atelier. Écrivez le nom d’un fichier voisin qui finit par .shop.yaml.`,
  unreadable: ({ reference, fault }) =>
    `Le fichier d’atelier ${q(reference)} ne peut être lu : ${because(fault)}. L’atelier intégré sert à sa place.`,
  createShop: ({ reference }) => `Créer ${reference} à partir de l’atelier intégré`,
  checkingFiles: () => 'Contrôle des travaux et des fichiers d’atelier',
  stopped: ({ seconds }) =>
    `Le contrôle de ce fichier a pris plus de ${seconds} s et a été arrêté ; rien n’y est donc contrôlé. Annulez le dernier changement ; le fichier sera repris au prochain.`,
  takeRepairs: () => 'Faire toutes les corrections qui ne demandent pas de choix',
  inReference: () => 'Plus dans la référence',
  openShop: () => 'Ouvrir le fichier d’atelier',
  textBroken: () => 'Le texte ne peut être calculé tel quel ; voici le dernier bon plan.',
  carcassBroken: ({ name }) => `Le texte de ${q(name)} ne peut être calculé tel quel ; voici le dernier bon plan.`,
  fixedName: ({ name }) => `${q(name)} dit de quel panneau il s’agit et ne peut donc s’appeler autrement.`,
  renameFile: ({ name }) => `Renommez le fichier ${q(name)} lui-même ; les travaux qui le nomment suivent.`,
  describedElsewhere: ({ name }) => `${q(name)} n’est pas décrit dans un fichier qui puisse être changé.`,
  notDescribed: ({ of, name }) => `Il n’y a pas de ${q(name)} (${bare(of)}).`,
  nameEmpty: ({ of }) => `Il manque un nom (${bare(of)}).`,
  nameOfLines: () => 'Un nom tient sur une ligne.',
  nameNone: () => '« none » veut dire : rien du tout, et ne peut donc être un nom.',
  nameTaken: ({ of, name }) => `Il y a déjà ${q(name)} (${bare(of)}).`,
  writePapers: () => 'Écrire les documents d’atelier',
  noCode: () =>
    'Ce n’est pas le code d’une étiquette de panneau. Scannez le code carré d’une étiquette, ou collez son texte : FILE#CARCASS/PANEL.',
  noCodedJob: ({ file, near }) =>
    near === null
      ? `Aucun fichier de travail ${q(file)} n’est ouvert ni dans les dossiers de cet espace. Ouvrez le dossier qui le contient.`
      : `Aucun fichier de travail ${q(file)} n’est ouvert ni dans les dossiers de cet espace ; il y a ${q(near)}. Ouvrez le dossier qui le contient.`,
  noCodedPanel: ({ file, carcass, panel }) =>
    `${q(file)} n’a plus de panneau ${q(panel)} dans un caisson ${q(carcass)}. L’étiquette vient d’un texte antérieur du travail.`,
  notInitialized: () => 'La session n’a pas commencé. Envoyer d’abord `initialize`.',
  initializedTwice: () =>
    'La session a déjà commencé. Envoyer `initialize` une seule fois, ou démarrer un autre serveur.',
  shutDown: () => 'La session est terminée. Envoyer `exit` et démarrer un nouveau serveur.',
  paramsMissing: ({ method }) => `La requête \`${method}\` n’a pas de paramètres. Les envoyer comme objet.`,
  startedAnew: () => 'Le serveur a été redémarré, car un fichier l’empêchait de répondre.',
};

/** Ce qu’il y a à dire en écrivant des documents. */
const writingPapers: TranslationOf<typeof sayOfWriting> = {
  notOurs: ({ path }) =>
    `${path} n’a pas été écrit par Borewright, ou a été changé depuis. Déplacez-le, ou indiquez un autre dossier.`,
  fault: ({ path, fault }) => `${path} : ${because(fault)}.`,
  noFont: ({ font }) => `La police ${font} manque à côté du programme ; réinstallez-le.`,
  noDisk: () =>
    'Il n’y a pas de disque ici pour écrire des documents. Prenez l’éditeur de bureau ou la ligne de commande.',
  stopped: () => 'Arrêté ; rien n’a été écrit.',
  boards: ({ board, place, boards }) =>
    boards === 1 ? `panneaux entiers ${board}` : `panneaux entiers ${board}, ${place} sur ${boards} panneaux bruts`,
  found: ({ what, cost, bound, priced }) => {
    const amount = priced ? `coût ${money(cost)}` : `${money(cost)} m²`;
    return cost <= bound
      ? `${what} : ${amount}, aucun plan ${priced ? 'ne coûte' : 'n’en prend'} moins`
      : `${what} : ${amount}, au moins ${money(bound)}${priced ? '' : ' m²'}`;
  },
  paper: ({ name, place, papers }) =>
    `${fr.labels['paper-titles']?.[name.replaceAll(' ', '-')] ?? name}, ${place} sur ${papers}`,
};
const money = (cost: number): string => cost.toFixed(2).replace('.', ',');

function because(fault: FileFault): string {
  if (typeof fault !== 'string') return fault.words;
  return {
    missing: 'il n’existe pas',
    forbidden: 'il ne peut être lu',
    folder: 'c’est un dossier',
    'not-a-file': 'ce n’est pas un fichier',
    'too-large': 'il dépasse 20 MB',
    'name-too-long': 'son nom est trop long',
    outside:
      'il est hors du dossier, et cette fenêtre est restreinte ; accordez votre confiance au dossier pour qu’il soit lu',
    'link-loop': 'c’est un lien qui mène à lui-même',
    'disk-full': 'le disque est plein',
    'no-disk': 'il n’y a pas de disque ici ; il doit être ouvert dans l’éditeur',
  }[fault];
}

/** What core and server say, in French. */
export const spoken: Spoken = {
  ...fr,
  messages: { ...fr.messages, server: inType(server), 'writing-papers': inType(writingPapers) },
};
