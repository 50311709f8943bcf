import { labels, phrases } from '../../shared-core/words/told.js';

export const TITLES = labels({
  boreMap: 'Bohrbild',
  allPanels: 'Alle Platten',
  boxView: 'Schrankansicht',
  machineView: 'Maschinenansicht',
  setUpList: 'Rüstliste',
  machines: 'Maschinen',
});

export const say = phrases({
  titled: (what: string, kept: string, file: string) => `${what} ${kept === '' ? '' : `${kept} · `}${file}`,
  openJobForBores: () => 'Öffnen Sie eine Auftragsdatei (NAME.carcass.yaml), um ihre Bohrungen zu sehen.',
  openJobForBox: () => 'Öffnen Sie eine Auftragsdatei (NAME.carcass.yaml), um ihre Schränke zu sehen.',
  openJobForSetUps: () => 'Öffnen Sie eine Auftragsdatei (NAME.carcass.yaml), um ihre Rüstungen zu sehen.',
  openShop: () => 'Öffnen Sie eine Werkstattdatei (NAME.shop.yaml), um ihre Maschinen zu sehen.',
  noBoreMap: () => 'Klicken Sie zuerst in ein Bohrbild. Der Befehl gilt seiner Zeichnung.',
  drawingFailed: (why: string) => `Die Zeichnung ließ sich nicht machen: ${why}`,
  pictureFailed: (why: string) => `Das Bild ließ sich nicht machen: ${why}`,
  saveFailed: (why: string) => `Das Bild ließ sich nicht speichern: ${why}`,
  setUpsFailed: (why: string) => `Die Rüstungen ließen sich nicht berechnen: ${why}`,
  machineFailed: (why: string) => `Die Maschine ließ sich nicht zeichnen: ${why}`,
  machinesFailed: (why: string) => `Die Maschinen ließen sich nicht zeichnen: ${why}`,
  boreElsewhere: () => 'Borewright: Das kommt aus der Werkstattdatei oder aus gelöschtem Text.',
  panelElsewhere: () => 'Borewright: Diese Platte hat in der Auftragsdatei keine eigene Zeile.',
  saved: (file: string) => `Borewright: ${file} ist gespeichert.`,
  noBrowser: (file: string) =>
    `Es ließ sich kein Browser öffnen. Öffnen Sie ${file} in einem, um die Zeichnung zu drucken.`,
});
