import { counted } from '../shared-core/words/english.js';
import { labels, phrases } from '../shared-core/words/told.js';

export const NAMES = labels({
  program: 'Borewright',
  millimetres: 'Millimeter',
  inches: 'Zoll',
  unitAsked: 'Einheit der bloßen Zahlen in der Datei',
  jobsOfShop: 'Aufträge, die diese Werkstattdatei nennen',
  statusItem: 'Borewright: Einheit, Werkstatt und Befunde',
  statusMeaning: 'Einheit bloßer Zahlen, Werkstatt und Befunde dieser Datei. Ein Klick zeigt die Befunde.',
  builtInShop: 'eingebaute Werkstatt',
  noFaults: 'keine Fehler oder Warnungen',
  checkAll: 'alle Dateien prüfen',
});

export const say = phrases({
  stopped: () => 'Der Sprachserver steht still. Führen Sie den Befehl „Borewright: Sprachserver neu starten“ aus.',
  startsAgain: () => 'Der Sprachserver ist zu Ende gegangen und wird wieder gestartet.',
  endsTooOften: () =>
    'Borewright: Der Sprachserver ist in drei Minuten fünfmal zu Ende gegangen und wird nicht wieder gestartet. Seine Ausgabe sagt, warum. Schließen Sie die Datei, an der er scheitert, und führen Sie dann den Befehl „Borewright: Sprachserver neu starten“ aus.',
  notStarted: (why: string) => `Borewright: Der Sprachserver ist nicht gestartet: ${why}`,
  restarted: () => 'Borewright: Der Sprachserver ist neu gestartet.',
  notRestarted: (why: string) => `Borewright: Der Sprachserver ließ sich nicht neu starten: ${why}`,
  noShop: () =>
    'Dieser Auftrag hat keine Werkstattdatei, die sich öffnen lässt. Nennen Sie eine mit `shop: NAME.shop.yaml`.',
  noJobOfShop: () => 'Kein Auftrag in diesem Arbeitsbereich nennt diese Werkstattdatei.',
  errors: (count: number) => counted(count, 'Fehler', 'Fehler'),
  warnings: (count: number) => counted(count, 'Warnung', 'Warnungen'),
  check: (path: string) => `${path} prüfen`,
});
