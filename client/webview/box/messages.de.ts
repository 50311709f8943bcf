import { labels, phrases } from '../../../shared-core/words/told.js';

export const LABELS = labels({
  view: 'Ansicht',
  cabinet: 'Schrank',
  cabinetMeaning: 'Ein Korpus mit seinen Türen',
  wall: 'Wand',
  wallMeaning: 'Alle Korpusse, die an derselben Wand stehen, mit der Arbeitsplatte',
  from: 'Gesehen von',
  corner: 'Ecke',
  front: 'Vorn',
  side: 'Seite',
  above: 'Oben',
  apart: 'Zerlegt',
  open: 'Offen',
  copy: 'Kopieren',
  copyMeaning: 'Als Bild kopieren',
  save: 'PNG speichern',
  saveMeaning: 'Als Bild speichern',
  panels: 'Platten',
  viewAndLists: 'Ansicht und Listen',
  keys:
    'Pfeiltasten drehen den Schrank, Plus und Minus holen ihn näher und weiter weg, 0 zeigt das Ganze. ' +
    'Bild auf und Bild ab gehen von Platte zu Platte, die Eingabetaste geht zu ihrem Text. O öffnet und schließt, A zerlegt und fügt zusammen.',
  keysInShort: 'Pfeile: drehen · + − 0: Größe · Bild auf, Bild ab: Platten · Eingabe: Text · O: öffnen · A: zerlegen',
  noDepth:
    'Dieser Rechner oder dieses Fenster zeichnet nichts räumlich (WebGL ist aus oder fehlt), darum steht hier kein Bild. ' +
    'Die Listen darunter sagen, was darin steht. Versuchen Sie, die Hardwarebeschleunigung in den Einstellungen des Editors oder des Browsers einzuschalten.',
});

export const PHRASES = phrases({
  boresOf: (panel: string) => `Bohrungen von ${panel}`,
});
