import { counted, listed, sentence } from '../../../shared-core/words/english.js';
import { labels, phrases } from '../../../shared-core/words/told.js';
import { nameOf, type Lay, type Named } from './named.js';

export const LABELS = labels({
  machines: 'Maschinen',
  machineView: 'Maschinenansicht',
  machineViewMeaning: 'Ein Hub nach dem anderen, wie ihn der Bediener sieht',
  setUpList: 'Rüstliste',
  setUpListMeaning: 'Der ganze Auftrag in der Reihenfolge der Arbeit',
  atMachine: 'An der Maschine',
  atMachineMeaning: 'Eine Aufgabe nach der anderen, groß geschrieben, zum Arbeiten an der Maschine',
  steps: 'Schritte',
  stepsOf: 'Schritte von',
  stepsOfCarcass: 'Schritte welches Korpus',
  stepsOfPanel: 'Schritte welcher Platte',
  wholeJob: 'der ganze Auftrag',
  allPanels: 'alle seine Platten',
  waiting: 'Warten auf die Rüstungen.',
  cautions: 'Warnhinweise',

  goToText: 'Zum Text',
  goToTextMeaning: 'Zu der Zeile gehen, aus der die Platte kommt (Eingabe)',
  settings: 'Einstellungen der Maschine',
  notes: 'Darauf achten',
  machineSet: 'Maschine gerüstet',
  machineSetMeaning: 'Die Maschine steht wie aufgeführt',
  panelBored: 'Platte gebohrt',
  panelBoredMeaning: 'Diese Platte ist in dieser Rüstung gebohrt (Leertaste)',
  first: 'Erster Schritt (Pos1)',
  setUpBefore: 'Vorige Rüstung (Bild auf)',
  before: 'Voriger Schritt (links)',
  after: 'Nächster Schritt (rechts)',
  setUpAfter: 'Nächste Rüstung (Bild ab)',
  last: 'Letzter Schritt (Ende)',

  back: 'Zurück',
  backMeaning: 'Voriger Schritt (links)',
  done: 'Fertig',
  isDone: 'Fertig ✓',
  doneMeaning: 'Abhaken und weiter (Leertaste)',
  next: 'Weiter',
  nextMeaning: 'Nächster Schritt ohne Abhaken (rechts)',
  leave: 'Verlassen',
  leaveMeaning: 'Zurück zur Maschinenansicht (Esc)',
  screenStaysOn: 'Der Bildschirm bleibt an',
  screenMayGoOff: 'Der Bildschirm kann ausgehen; hier kann eine Seite ihn nicht anlassen',
  checkFirst:
    'Messen Sie dieses Stück, bevor Sie die anderen bohren. Stimmt ein Maß nicht, gehen Sie zurück und rüsten neu.',

  panelsBored: 'Gebohrte Platten',
  showSteps: 'Seine Schritte an der Maschine zeigen',
  goToPanelText: 'Zu der Zeile gehen, aus der die Platte kommt',
  text: 'Zeile',
  allBored: 'Alle gebohrt',
  allBoredMeaning: 'Jede Platte dieser Rüstung abhaken',
  setUpDone: 'fertig',
  nothingToChange: 'Nichts umzustellen',
  papers: 'Werkstattpapiere schreiben',
  papersMeaning: 'Zuschnittliste, Etiketten, Rüstliste und die anderen Papiere des Auftrags, zum Drucken',

  signsAndKeys: 'Zeichen und Tasten',
  keys:
    'Pfeil links und rechts: Schritte. Bild auf und ab: Rüstungen. Leertaste: Platte gebohrt. Eingabe: zum Text. ' +
    'Plus, Minus und 0: Größe. Pfeile mit Umschalttaste: Zeichnung verschieben.',
});

export const PHRASES = phrases({
  stepOf: (step: number, steps: number) => `Schritt ${step} von ${steps}`,
  setUpOf: (setUp: number, setUps: number, name: string) => `Rüstung ${setUp} von ${setUps}: ${name}`,
  setUpAt: (setUp: number, setUps: number, machine: string) => `Rüstung ${setUp} von ${setUps} · ${machine}`,
  next: (what: string) => `Dann: ${what}`,
  sizeAndStroke: (size: string, stroke: number, strokes: number) =>
    strokes > 1 ? `${size}, Hub ${stroke} von ${strokes} in dieser Rüstung` : size,
  figuresIn: (unit: 'mm' | 'in') => `Maße in ${unit === 'mm' ? 'Millimetern' : 'Zoll'}`,
  nextSetUp: (setUp: number, machine: string, of: Named) => `Rüstung ${setUp} an ${machine}, ${nameOf(of)}.`,
  nextStroke: (lay: string) => `${lay}.`,
  nextPanel: (of: Named, lay: string) => `${nameOf(of)}. ${sentence(lay)}.`,

  set: (machine: string) => `${machine} rüsten`,
  leaveSet: (machine: string) => `${machine} bleibt, wie sie steht`,
  check: (of: Named) => `Das erste Stück prüfen: ${nameOf(of)}`,
  bore: (of: Named, pieces: number, stroke: number, strokes: number) =>
    [
      `${nameOf(of)} bohren`,
      ...(pieces > 1 ? [counted(pieces, 'Stück', 'Stück')] : []),
      ...(strokes > 1 ? [`Hub ${stroke} von ${strokes}`] : []),
    ].join(', '),

  kindAndSetUps: (kind: string, setUps: number) => `${kind}, ${counted(setUps, 'Rüstung', 'Rüstungen')}`,
  runBored: (of: Named) => `${nameOf(of)} gebohrt`,
  runName: (of: Named, pieces: number) => (pieces > 1 ? `${pieces} Stück ${nameOf(of)}` : nameOf(of)),
  runText: (of: Named) => `${nameOf(of)}: im Text zeigen`,
  toBore: (panels: number, strokes: number, holes: number) =>
    [counted(panels, 'Platte', 'Platten'), counted(strokes, 'Hub', 'Hübe'), counted(holes, 'Loch', 'Löcher')].join(
      ', ',
    ),
  bored: (bored: number, panels: number) => `${bored} von ${counted(panels, 'Platte', 'Platten')} gebohrt`,
  ticked: (bored: number, runs: number) => `${bored} von ${counted(runs, 'Durchgang', 'Durchgängen')} abgehakt`,
  eachStop: (measured: string) => `Jeder Anschlag: ${measured}.`,
  lay: ({ words, lowered, held }: Lay) =>
    sentence(
      [
        words,
        ...(lowered.length > 0 ? [`${listed(lowered, 'und')} absenken`] : []),
        ...(held ? [] : ['in einer Vorrichtung halten, da kein Niederhalter hinreicht']),
      ].join('; '),
    ),
  broken: (carcasses: readonly string[]) =>
    carcasses.length === 1
      ? `${carcasses[0]!} fehlt in dieser Liste, weil sein Text Fehler hat.`
      : `${listed(carcasses, 'und')} fehlen in dieser Liste, weil ihr Text Fehler hat.`,
  unbored: (holes: number, panels: readonly Named[], reason: string) =>
    `Keine Rüstung bohrt ${counted(holes, 'Loch', 'Löcher')} von ${counted(panels.length, 'Platte', 'Platten')} (${panels.map(nameOf).join('; ')}). ${reason}`,
});
