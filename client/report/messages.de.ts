import { counted } from '../../shared-core/words/english.js';
import { labels, phrases } from '../../shared-core/words/told.js';

export const NAMES = labels({
  program: 'Borewright',
  title: 'Bericht über Borewright',
  readFirst:
    'Lesen Sie ihn, bevor Sie ihn jemandem schicken. Bis dahin ist er allein auf diesem Rechner; gesendet wurde nichts. Er enthält weder Text noch Namen oder Pfade Ihrer Dateien.',
  versions: 'Versionen',
  editor: 'Bearbeitungsprogramm',
  window: 'Fenster',
  trusted: 'vertraut',
  restricted: 'eingeschränkt',
  settings: 'Geänderte Einstellungen',
  notShown: 'geändert, hier nicht gezeigt',
  files: 'Offene Dateien',
  jobs: 'Auftragsdateien',
  shops: 'Werkstattdateien',
  findings: 'Befunde in allen Dateien, nach Regel',
  waits: 'Vom Tastendruck bis zu allen Befunden',
  server: 'Sprachserver',
  ended: 'von selbst zu Ende gegangen',
  stuck: 'gab kein Lebenszeichen',
  failed: 'eine Antwort ist misslungen',
  none: 'keine',
});

export const say = phrases({
  files: (sort: string, count: number, lines: string) => `${sort}: ${count}, mit ${lines || 'keinen'} Zeilen`,
  waits: (count: number, middle: number, longest: number) =>
    `${count}-mal, ${middle} ms in der Mitte, höchstens ${longest} ms`,
  starts: (count: number) => counted(count, 'Start', 'Starts'),
  fault: (what: string, seconds: number) => `${what}, ${seconds} s vor diesem Bericht`,
});
