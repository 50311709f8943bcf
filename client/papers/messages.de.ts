import { counted, listed } from '../../shared-core/words/english.js';
import { labels, phrases } from '../../shared-core/words/told.js';

export const LABELS = labels({
  whichPapers: 'Zu schreibende Papiere',
  codeAsked: 'Code eines Plattenetiketts scannen oder seinen Text einfügen',
  codeExample: 'kueche.carcass.yaml#spuele/left',
  whichJob: 'Auftragsdateien dieses Namens',
  showFolder: 'Ordner zeigen',
});

export const say = phrases({
  openJob: () => 'Öffnen Sie eine Auftragsdatei (NAME.carcass.yaml), um ihre Papiere zu schreiben.',
  saveFirst: () => 'Speichern Sie zuerst den Auftrag. Seine Papiere kommen in einen Ordner daneben.',
  writing: (file: string) => `Werkstattpapiere zu ${file}`,
  written: (files: number, folder: string) =>
    `Borewright: ${counted(files, 'Datei', 'Dateien')} nach ${folder} geschrieben.`,
  without: (files: number, folder: string, broken: readonly string[]) =>
    `Borewright: ${counted(files, 'Datei', 'Dateien')} nach ${folder} geschrieben, ohne ${listed(broken, 'und')}. Dort hat der Text Fehler.`,
  withErrors: (files: number, folder: string, errors: number) =>
    `Borewright: ${counted(files, 'Datei', 'Dateien')} nach ${folder} geschrieben. Der Auftrag hat ${errors} Fehler: nicht zuschneiden und nicht bohren, bevor ${errors === 1 ? 'er behoben ist' : 'sie behoben sind'}.`,
  failed: (why: string) => `Die Papiere konnten nicht geschrieben werden: ${why}`,
});
