import { percent } from '../../papers/joints/percent.js';
import { showSizes } from '../../length/show.js';
import type { Translations } from '../tables.js';
import { anzahl, bare, holesTold, im, komma, maßeinheit, quoted, und, zahl, zeit } from './words.js';

const ANLEITUNG = 'Es gelten die Anleitung der Maschine und die örtlichen Vorschriften.';
const SEITEN = { width: 'Breite', height: 'Höhe', depth: 'Tiefe' } as const;
const SCHWERE = { error: 'Fehler', warning: 'Warnung', info: 'Hinweis' } as const;
const geld = (amount: number): string => komma(amount.toFixed(2));
const betrag = ({ cost, priced }: { readonly cost: number; readonly priced: boolean }): string =>
  priced ? `Kosten ${geld(cost)}` : `${geld(cost)} m²`;
const prozent = (part: number): string => komma(percent(part));

/** Was die Werkstattpapiere sagen, außer denen der Maschinen. */
export const papers = {
  assembly: {
    caution: () =>
      `Eine Korpuspresse drückt mit großer Kraft: Hände weg, solange sie sich bewegt, und niemand sonst kommt an die Bedienung. Große Korpusse zu zweit heben. Wer einen Schrank aufhängt, steht für Wand und Befestigung ein. ${ANLEITUNG}`,
    dryFit: () => 'Zuerst trocken zusammenstecken: Jede Verbindung schließt von Hand, ehe Leim aufgetragen wird.',
    drawnApart: ({ carcass }) => `${carcass}, auseinandergezogen; die Zahlen sind die Schritte`,
    drawnInOrder: ({ carcass, steps }) =>
      `${carcass} auseinandergezogen. Der Reihe nach: ${steps.map(und).join('; ')}.`,
    layDown: ({ panel }) => `${panel}: hinlegen`,
    workIn: ({ panels }) =>
      `${und(panels)}: gemeinsam einführen; einzeln kommen sie in gerader Bewegung nicht an ihren Platz`,
    joint: ({ end, face }) => `${end} an ${face}`,
    fixBack: () => 'Die Rückwand befestigen, wenn der Korpus im Winkel steht; sie hält ihn im Winkel.',
    layBack: () =>
      'Die Rückwand in ihre Falze legen und befestigen, wenn der Korpus im Winkel steht; sie hält ihn im Winkel.',
    plinth: () => 'Den Sockel anbringen, wenn der Korpus steht.',
    clipPlinth: () =>
      'Den Sockel an die Füße klammern, sobald der Schrank waagrecht steht und nichts mehr anzuschrauben ist.',
    hangDoors: ({ count }) =>
      `${anzahl(count, 'Tür', 'Türen')} einhängen, wenn der Korpus steht und nicht mehr kippen kann; eine große hält eine zweite Person.`,
    drawers: ({ count, bottom }) =>
      `${anzahl(count, 'Schubkasten', 'Schubkästen')} neben dem Korpus zusammenbauen: Vorderstück und Rückwand an eine Seite${bottom === 'grooved' ? ', den Boden in ihre Nuten' : ''}, dann die andere Seite${bottom === 'applied' ? ', und den Boden von unten' : ''}; beide Diagonalen gleich. Die Auszüge an Korpus und Schubkästen schrauben, jeden Schubkasten einschieben und seine Front von innen anschrauben, wenn die Fugen stimmen. Nicht mehrere herausziehen, ehe der Schrank befestigt ist: Er kann kippen.`,
    brackets: ({ count }) =>
      `Die ${anzahl(count, 'Aufhänger', 'Aufhänger')} an die Seiten schrauben, bevor der Korpus gehoben wird, und die Rückwand ausklinken, wo einer hindurchreicht. Wand und Befestigung von jemand Sachkundigem beurteilen lassen; den Korpus zu zweit hängen und erst füllen, wenn er fest ist.`,
    wardrobeRails: ({ count }) =>
      `Die Lager der ${anzahl(count, 'Kleiderstange', 'Kleiderstangen')} anschrauben und ${count === 1 ? 'sie' : 'die Stangen'} einlegen; die Öffnung messen, bevor eine Stange geschnitten wird.`,
    feet: ({ count }) =>
      `Die ${count} Füße ansetzen, solange der Korpus auf dem Rücken liegt, ihn zu zweit aufrichten und ausrichten. Nicht auf den Füßen schieben.`,
    pulls: ({ count }) =>
      `${anzahl(count, 'Griff', 'Griffe')} von innen anschrauben, wenn die Fronten hängen; einen zuerst von Hand probieren, da eine zu lange Schraube durchkommt.`,
    endPanels: ({ count }) =>
      `${anzahl(count, 'Wange', 'Wangen')} von innen anschrauben, wenn der Schrank waagrecht steht, die Vorderkante bündig mit den Fronten.`,
    fillers: ({ count }) =>
      `${anzahl(count, 'Passleiste', 'Passleisten')} zuletzt der Wand anpassen: hinhalten, den Verlauf der Wand anreißen und außerhalb davon sägen.`,
    fixedFronts: ({ count }) =>
      `${anzahl(count, 'feste Front', 'feste Fronten')} zuletzt befestigen, wenn die Fronten daneben hängen.`,
    looseShelves: ({ shelves }, show) => {
      const told = shelves.map(
        ({ panel, at, holes }) => `${panel} ${show.exact(at)}${holes.length === 0 ? '' : ` (${holesTold(holes)})`}`,
      );
      return `${anzahl(shelves.length, 'Einlegeboden', 'Einlegeböden')} zuletzt einlegen. So weit vom unteren Ende der Seiten stecken die Bodenträger, Löcher von dort gezählt: ${told.join('; ')}.`;
    },
    noClamp: () =>
      'Die Werkstattdatei nennt keine Korpuspresse: Den Korpus mit Zwingen pressen, und dabei im Winkel halten.',
    clamp: ({ clamp, sides }, show) => {
      const told = sides.map(({ side, size, range }) => {
        if (range === null) return `${SEITEN[side]} ${show.exact(size)}`;
        const fits = size >= range.min && size <= range.max ? '' : ', PASST NICHT';
        return `${SEITEN[side]} ${show.exact(size)} (fasst ${show.exact(range.min)} bis ${show.exact(range.max)}${fits})`;
      });
      return `${quoted(clamp)}: ${told.join('; ')}.`;
    },
    diagonals: ({ diagonal }, show) =>
      `In der Presse beide Diagonalen vorn messen: Jede ist ${show.exact(diagonal)} lang. Sind sie verschieden, den Korpus in der Presse verschieben, ehe der Leim anzieht.`,
  },
  'banding-list': {
    caution: () =>
      `Heißer Leim, Rollen und Messer verbrennen, ziehen ein und schneiden: Hände und Ärmel vom Einzug fernhalten, und kein Stück durchlassen, das kürzer oder schmaler ist, als die Maschine nimmt. ${ANLEITUNG}`,
    order: () =>
      'Zuerst die Enden einer Platte bekanten, dann die Hinterkante, zuletzt die Vorderkante: Deren Kantenband deckt die anderen.',
    cutLast: () => 'Eine Schrägkante gibt es erst zu bekanten, wenn ihre Platte gebohrt und die Ecke abgesägt ist.',
    nothingBanded: () => 'In diesem Auftrag wird keine Kante bekantet.',
    band: ({ band, thickness }, show) => `${band}, ${show.exact(thickness)} dick`,
    tape: ({ edges, length, allowance }, show) =>
      `${anzahl(edges, 'Kante', 'Kanten')}, ${geld(length / 1e6)} m mit je ${show.exact(allowance)} Zugabe`,
  },
  'bore-maps': {
    bare: ({ panels }) => `Ohne Bohrungen: ${panels.map(({ title, size }) => `${title} (${size})`).join('; ')}.`,
    finding: ({ severity, message }) => `${SCHWERE[severity]}: ${message}`,
  },
  checking: {
    about: (_, { unit }) =>
      `In ${maßeinheit(unit)}. Die Grenzen folgen aus den Toleranzen der Werkstattdatei. Was außerhalb liegt, vor dem nächsten Schritt in Ordnung bringen; nichts erzwingen.`,
    firstBore: ({ surface, edge, isRow }) =>
      `${isRow ? 'erste Reihenbohrung' : 'erste Bohrung'} ${im(surface)}, ab ${bare(edge)}`,
  },
  cost: {
    total: ({ cost, seconds }) => `Im Ganzen ${geld(cost)} im Geld der Werkstatt, und ${zeit(seconds)} Arbeit.`,
    timeOnly: ({ seconds }) => `Im Ganzen ${zeit(seconds)} Arbeit.`,
    about: () =>
      'Nach den Preisen und Zeiten der Werkstattdatei. Rohplatten zählen ganz, mit den Resten, die aufgehoben werden; Kantenbänder mit ihrer Zugabe. Schrauben der Rückwände, Leim und was die Auftragsdatei nicht nennt, sind nicht gerechnet.',
    unpriced: ({ count }) =>
      count === 1
        ? 'Eine Zeile hat in der Werkstattdatei keinen Preis und ist nicht in der Summe.'
        : `${count} Zeilen haben in der Werkstattdatei keinen Preis und sind nicht in der Summe.`,
    noSaw: () => 'Rohplatten und ihr Zuschnitt sind nicht gerechnet: Die Werkstattdatei hat keine Plattensäge.',
    nothing: () => 'Es gibt nichts zu fertigen.',
    sheet: ({ board, stock }) => (board === stock ? `Rohplatten ${board}` : `Rohplatten ${board}, ${stock}`),
    unlaid: ({ board }) => `${board} ohne Rohplatte`,
    band: ({ band }) => `Kantenband ${band}`,
    squareMetres: ({ amount }) => `${geld(amount)} m²`,
    metres: ({ amount }) => `${geld(amount)} m`,
    time: ({ seconds }) => zeit(seconds),
  },
  'cut-list': {
    about: (_, { unit }) =>
      `Maße in ${maßeinheit(unit)}, die Länge zuerst; bei Plattenwerkstoffen mit Maserung läuft sie längs der Maserung.`,
    milled: ({ bander, milled }, show) =>
      `${bander} fräst ${show.exact(milled)} von jeder Kante, ehe sie bekantet wird; in den Zuschnittmaßen ist das enthalten.`,
    board: ({ board, thickness, hasGrain }, show) =>
      `${board}, ${show.exact(thickness)} dick, ${hasGrain ? 'mit Maserung' : 'ohne Maserung'}`,
    total: ({ pieces, squareMetres }) => `${pieces} Stück, ${geld(squareMetres)} m²`,
    bands: ({ bands }) =>
      bands.map(({ band, edges }) => `${edges.length === 4 ? 'umlaufend' : und(edges.map(bare))} ${band}`).join(', '),
    noBand: () => 'keine',
  },
  'hardware-list': {
    hinge: ({ arm, plate }, show) =>
      `mit dem Arm von ${show.exact(arm)} und einer ${show.exact(plate)} hohen Montageplatte`,
    slides: ({ long, rating }, show) => `Paare, ${show.exact(long)} lang, für je ${rating} kg`,
    frontScrews: ({ pilot, depth }, show) => `für Vorbohrungen von ${show.nominal(pilot)}, ${show.exact(depth)} tief`,
    pulls: ({ screws, through }, show) => `mit ${anzahl(screws, 'Schraube', 'Schrauben')} durch ${show.exact(through)}`,
    brackets: ({ rating }) =>
      `einer in jeder Seite${rating === null ? '' : `, ein Paar für ${rating} kg`}; was sie an der Wand hält, ist nicht mitgezählt`,
    wardrobeRails: ({ long }, show) => `auf ${show.exact(long)} geschnitten, mit zwei Lagern`,
    feet: ({ high, hasClip }, show) =>
      `auf ${show.exact(high)} zu stellen${hasClip ? ', mit einer Klammer für den Sockel' : ''}`,
    angles: ({ screws }) => `für feste Fronten, mit je ${anzahl(screws, 'Schraube', 'Schrauben')}`,
    pullsBlind: ({ screws, depth }, show) => `mit ${anzahl(screws, 'Bohrung', 'Bohrungen')}, ${show.exact(depth)} tief`,
    pins: ({ diameter }, show) => `für Löcher von ${show.nominal(diameter)}`,
  },
  joints: {
    how: (_, { unit }) =>
      `Nach den Toleranzen der Werkstatt, in ${maßeinheit(unit)}: Wurzel aus der Summe der Quadrate / von 19 unter 20 Korpussen nicht überschritten / schlimmster Fall.`,
    goesIn: ({ samples }) =>
      `Geht hinein: bei wie vielen von ${samples} durchgespielten Korpussen jeder Dübel oder jede Schraube mit dem vorhandenen Spiel in die Bohrungen findet. Über Versätze und Fugen sagt das nichts.`,
    within: ({ limits }) =>
      `In den Grenzen: bei wie vielen alles hineingeht und auch Vorderkante, Außenfläche und Fuge die Grenzen der Werkstatt einhalten (${und(limits)}). Versätze zählen, wo die Platten bündig gezeichnet sind.`,
    worstCase: () =>
      'Im schlimmsten Fall liegt jede Toleranz zugleich an ihrer Grenze; darum kann er eine Grenze überschreiten, die jeder durchgespielte Korpus einhält.',
    notMeasured: () =>
      'Nichts davon ist an Ihren Platten gemessen: Die Zahlen sind so gut wie die Toleranzen der Werkstattdatei.',
    box: ({ carcass, joints, samples, close, fit }) =>
      `${carcass}: ${anzahl(joints, 'Verbindung', 'Verbindungen')}; von ${samples} Korpussen gehen ${prozent(close)} zusammen, ${prozent(fit)} innerhalb der Grenzen`,
    unknown: ({ joint, reason }, show) => `${joint}: keine Zahlen. ${show.tell(reason)}`,
  },
  'panel-labels': {
    about: ({ labels: count, sheets }) =>
      `${anzahl(count, 'Etikett', 'Etiketten')} auf ${zahl(sheets, '1 Bogen', `${sheets} Bogen`)}, in der Reihenfolge der Zuschnittliste. Jedes auf die Außenfläche seiner Platte kleben, sobald sie von der Säge kommt, damit es nie auf den Bohrungen der Innenfläche sitzt; abziehen, ehe der Korpus geschlossen wird. In voller Größe drucken: Ein Druck, der an die Seite angepasst wird, trifft die Etiketten nicht.`,
    code: () => 'Der Code enthält den Namen der Auftragsdatei und den der Platte: kitchen.carcass.yaml#sink/left.',
    piece: ({ number, of }) => `${number} von ${of}`,
    bands: ({ bands }) => `Bekantung: ${bands}`,
    noBands: () => 'Unbekantet',
    next: ({ next, then }) =>
      then.length === 0 ? `Als Nächstes: ${next}` : `Als Nächstes: ${next}; dann ${und(then)}`,
    described: ({ panel, size }) => `Etikett von ${panel}, ${size}`,
  },
  'panel-list': {
    notWorkedOut: ({ carcass }) => `${carcass}: lässt sich nicht berechnen`,
    carcass: ({ carcass, kind, box, wings }, show) =>
      `${carcass}: Art ${kind}, ${showSizes(box, show.reader)}${wings === null ? '' : `, über Eck mit ${show.exact(wings)} tiefen Flügeln`}`,
    panel: ({ panel, size, cut, board }, { reader }) =>
      `${panel}: ${showSizes(size, reader)}, Zuschnitt ${showSizes(cut, reader)}, ${board}`,
  },
  print: {
    picture: ({ name }) => `(Bild: ${name})`,
    contents: () => 'Inhalt',
    toScale: ({ name, scale }) => `${name} – Maßstab 1:${scale}`,
    notToScale: ({ name }) => `${name} – nicht maßstäblich`,
  },
  'sheet-layouts': {
    about: ({ saw, kerf, stages }, show) =>
      `Maße wie zugeschnitten, Kantenbänder abgezogen, in ${maßeinheit(show.unit)}. Säge: ${saw}, Schnittfuge ${show.exact(kerf)}, ${anzahl(stages, 'Stufe', 'Stufen')}.`,
    caution: () =>
      'Schutzhaube und Spaltkeil bleiben an der Säge; Hände weg vom Blatt. Es gelten die Anleitung der Säge und die örtlichen Vorschriften.',
    noSize: () => 'Keine Aufteilung: Die Werkstattdatei nennt für diesen Plattenwerkstoff keine Plattengröße.',
    misfit: ({ letter }) => `${letter} lässt sich auf dieser Säge aus keiner Rohplatte schneiden.`,
    lacking: ({ letter, count }) =>
      `Für ${count} von ${letter} fehlt die Rohplatte: Die passenden sind aufgebraucht. Rohplatten dieses Plattenwerkstoffs in der Werkstattdatei ergänzen.`,
    tooFew: ({ sheets, ...cost }) =>
      `${anzahl(sheets, 'Rohplatte', 'Rohplatten')}, ${betrag(cost)}, und Teile ohne Rohplatte`,
    least: ({ sheets, ...cost }) =>
      `${anzahl(sheets, 'Rohplatte', 'Rohplatten')}, ${betrag(cost)}: Keine Aufteilung ${cost.priced ? 'kostet' : 'braucht'} weniger`,
    notLeast: ({ sheets, bound, ...cost }) =>
      `${anzahl(sheets, 'Rohplatte', 'Rohplatten')}, ${betrag(cost)}; keine Aufteilung ${cost.priced ? `kostet weniger als ${geld(bound)}` : `braucht weniger als ${geld(bound)} m²`}`,
    firstCuts: ({ first, last, sheets, stock, cuts }) =>
      `${first === last ? `Rohplatte ${first}` : `Rohplatten ${first} bis ${last}`} von ${sheets}: ${stock}, erste Schnitte ${cuts === 'along' ? 'längs' : 'quer'}`,
    sheet: ({ first, last, sheets, stock }) =>
      `${first === last ? `Rohplatte ${first}` : `Rohplatten ${first} bis ${last}, gleich geschnitten,`} von ${sheets}: ${stock}`,
    picture: ({ stock }) =>
      `${stock} mit ihren Teilen; die Tabelle darunter führt sie in der Reihenfolge der Schnitte auf.`,
    offcut: ({ names }) => `Rest ${names.join(', ')}`,
    keep: ({ board }) =>
      `Diese Reste beschriften und aufheben. Stehen sie in der Werkstattdatei unter \`sheets\` von ${board}, jeder mit Namen und Anzahl, so werden sie zuerst genommen, wo das am wenigsten kostet.`,
  },
} satisfies Translations;
