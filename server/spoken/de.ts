import { de } from '../../shared-core/spoken/de.js';
import { quoted } from '../../shared-core/words/english.js';
import type { TranslationOf } from '../../shared-core/words/message.js';
import type { Spoken } from '../../shared-core/words/spoken.js';
import type { FileFault, say } from '../messages.js';
import type { say as sayOfWriting } from '../papers/messages.js';

const q = (text: string): string => `„${quoted(text).slice(1, -1)}“`;
const NOUNS: Readonly<Record<string, string>> = {
  board: 'Plattenwerkstoff',
  band: 'Kantenband',
  fitting: 'Verbinder',
  hinge: 'Topfband',
  machine: 'Maschine',
  stop: 'Anschlag',
  carcass: 'Korpus',
  panel: 'Platte',
};
const bare = (of: string): string => NOUNS[of] ?? of;

const server: TranslationOf<typeof say> = {
  notSaved: ({ reference }) =>
    `Die Werkstattdatei ${q(reference)} liegt neben dem Auftrag, und der Auftrag ist noch nicht gespeichert. Speichern Sie ihn; bis dahin gilt die eingebaute Werkstatt.`,
  noShopFile: ({ reference }) =>
    `${q(reference)} ist keine Werkstattdatei. Schreiben Sie den Namen einer Datei neben dieser, der auf .shop.yaml endet.`,
  unreadable: ({ reference, fault }) =>
    `Die Werkstattdatei ${q(reference)} lässt sich nicht lesen: ${because(fault)}. An ihrer Stelle gilt die eingebaute Werkstatt.`,
  createShop: ({ reference }) => `${reference} aus der eingebauten Werkstatt anlegen`,
  checkingFiles: () => 'Aufträge und Werkstattdateien werden geprüft',
  stopped: ({ seconds }) =>
    `Diese Datei zu prüfen hat länger als ${seconds} s gedauert und wurde abgebrochen; darum ist nichts darin geprüft. Nehmen Sie die letzte Änderung zurück; bei der nächsten wird die Datei wieder versucht.`,
  takeRepairs: () => 'Jede Korrektur übernehmen, die keine Wahl verlangt',
  inReference: () => 'Mehr im Nachschlagewerk',
  openShop: () => 'Die Werkstattdatei öffnen',
  textBroken: () => 'Der Text lässt sich so nicht berechnen; dies ist der letzte gute Plan.',
  carcassBroken: ({ name }) => `Der Text von ${q(name)} lässt sich so nicht berechnen; dies ist der letzte gute Plan.`,
  fixedName: ({ name }) => `${q(name)} sagt, welche Platte gemeint ist, und kann darum nicht anders heißen.`,
  renameFile: ({ name }) => `Benennen Sie die Datei ${q(name)} selbst um; die Aufträge, die sie nennen, folgen.`,
  describedElsewhere: ({ name }) => `${q(name)} ist nicht in einer Datei beschrieben, die sich ändern lässt.`,
  notDescribed: ({ of, name }) => `${q(name)} gibt es nicht (${bare(of)}).`,
  nameEmpty: ({ of }) => `Hier fehlt ein Name (${bare(of)}).`,
  nameOfLines: () => 'Ein Name steht auf einer Zeile.',
  nameNone: () => '„none“ heißt: gar nichts, und kann darum kein Name sein.',
  nameTaken: ({ of, name }) => `${q(name)} gibt es schon (${bare(of)}).`,
  writePapers: () => 'Werkstattpapiere schreiben',
  noCode: () =>
    'Das ist nicht der Code eines Plattenetiketts. Scannen Sie den quadratischen Code eines Etiketts, oder fügen Sie seinen Text ein: FILE#CARCASS/PANEL.',
  noCodedJob: ({ file, near }) =>
    near === null
      ? `Keine Auftragsdatei ${q(file)} ist offen oder liegt in den Ordnern dieses Arbeitsbereichs. Öffnen Sie den Ordner, der sie hat.`
      : `Keine Auftragsdatei ${q(file)} ist offen oder liegt in den Ordnern dieses Arbeitsbereichs; es gibt ${q(near)}. Öffnen Sie den Ordner, der sie hat.`,
  noCodedPanel: ({ file, carcass, panel }) =>
    `${q(file)} hat keine Platte ${q(panel)} in einem Korpus ${q(carcass)} mehr. Das Etikett ist von einem früheren Text des Auftrags.`,
  notInitialized: () => 'Die Sitzung hat noch nicht begonnen. Zuerst `initialize` senden.',
  initializedTwice: () =>
    'Die Sitzung hat bereits begonnen. `initialize` nur einmal senden, oder einen weiteren Server starten.',
  shutDown: () => 'Die Sitzung ist beendet. `exit` senden und einen neuen Server starten.',
  paramsMissing: ({ method }) => `Die Anfrage \`${method}\` hat keine Parameter. Sie als Objekt senden.`,
  startedAnew: () => 'Der Server wurde neu gestartet, weil eine Datei ihn am Antworten gehindert hat.',
};

/** Was beim Schreiben von Papieren zu sagen ist. */
const writingPapers: TranslationOf<typeof sayOfWriting> = {
  notOurs: ({ path }) =>
    `${path} ist nicht von Borewright geschrieben oder seither geändert worden. Verschieben Sie die Datei, oder nennen Sie einen anderen Ordner.`,
  fault: ({ path, fault }) => `${path}: ${because(fault)}.`,
  noFont: ({ font }) => `Die Schrift ${font} fehlt neben dem Programm; installieren Sie es neu.`,
  noDisk: () =>
    'Hier gibt es keine Festplatte für Papiere. Nehmen Sie den Editor auf dem Rechner oder die Befehlszeile.',
  stopped: () => 'Abgebrochen; nichts wurde geschrieben.',
  boards: ({ board, place, boards }) =>
    boards === 1 ? `Rohplatten ${board}` : `Rohplatten ${board}, ${place} von ${boards} Plattenwerkstoffen`,
  found: ({ what, cost, bound, priced }) => {
    const amount = priced ? `Kosten ${money(cost)}` : `${money(cost)} m²`;
    return cost <= bound
      ? `${what}: ${amount}, keine Aufteilung ${priced ? 'kostet' : 'braucht'} weniger`
      : `${what}: ${amount}, mindestens ${money(bound)}${priced ? '' : ' m²'}`;
  },
  paper: ({ name, place, papers }) =>
    `${de.labels['paper-titles']?.[name.replaceAll(' ', '-')] ?? name}, ${place} von ${papers}`,
};
const money = (cost: number): string => cost.toFixed(2).replace('.', ',');

function because(fault: FileFault): string {
  if (typeof fault !== 'string') return fault.words;
  return {
    missing: 'Es gibt sie nicht',
    forbidden: 'Sie darf nicht gelesen werden',
    folder: 'Sie ist ein Ordner',
    'not-a-file': 'Sie ist keine Datei',
    'too-large': 'Sie ist größer als 20 MB',
    'name-too-long': 'Ihr Name ist zu lang',
    outside:
      'Sie liegt außerhalb des Ordners, und dieses Fenster ist eingeschränkt; vertrauen Sie dem Ordner, damit sie gelesen wird',
    'link-loop': 'Sie ist ein Verweis, der auf sich selbst zurückführt',
    'disk-full': 'Der Datenträger ist voll',
    'no-disk': 'Hier gibt es keine Festplatte; sie muss im Editor geöffnet sein',
  }[fault];
}

/** What core and server say, in German. */
export const spoken: Spoken = { ...de, messages: { ...de.messages, server, 'writing-papers': writingPapers } };
