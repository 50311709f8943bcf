import type { Show } from '../../words/show.js';
import type { Translations } from '../tables.js';
import { FITTINGS, MACHINES } from './text.js';
import { anzahl, BORES, noun, oder, OUR_FAULT, quoted, und, zahl, zeit } from './words.js';

/** Was vom Auftrag, seinen Korpussen und Verbindern zu sagen ist. */
export const job = {
  size: {
    noBoards: () => 'Die Werkstatt hat keinen Plattenwerkstoff. Nehmen Sie einen in die Werkstattdatei auf.',
    noFittings: () =>
      'Die Werkstatt hat nichts, womit sich Platten verbinden lassen. Nehmen Sie einen Dübel, eine Verbindungsschraube oder einen Exzenterverbinder in die Werkstattdatei auf.',
    noWidth: ({ thick: [left, right], size, least }, show) =>
      `Die Seiten, ${show.length(left)} und ${show.length(right)} dick, lassen in einem ${show.length(size)} breiten Korpus keinen Raum. Machen Sie ihn breiter als ${show.length(least)}.`,
    noHeight: ({ thick: [bottom, top], size, least }, show) =>
      `Unterer und oberer Boden, ${show.length(bottom)} und ${show.length(top)} dick, lassen in einem ${show.length(size)} hohen Korpus keinen Raum. Machen Sie ihn höher als ${show.length(least)}.`,
    noDepth: ({ behind, size }, show) =>
      `Die Rückwand nimmt ${show.length(behind)} und lässt in einem ${show.length(size)} tiefen Korpus keinen Raum. Machen Sie ihn tiefer als ${show.length(behind)}.`,
    grooveThrough: ({ panel, groove, thickness }, show) =>
      `Die Nut der Rückwand ist ${show.length(groove)} tief und geht durch ${panel} hindurch, ${show.length(thickness)} dick. Machen Sie sie flacher.`,
    dividersNoBay: ({ count, thickness, clear }, show) =>
      `${count} Mittelwände von ${show.length(thickness)} lassen bei ${show.length(clear)} lichter Breite kein Feld. Nehmen Sie weniger Mittelwände, oder machen Sie den Korpus breiter.`,
    shelvesTooMany: ({ count, kind, pitch, most }, show) =>
      `${count} ${kind === 'fixed' ? 'feste Böden' : 'Einlegeböden'} passen nicht auf die Teilung von ${show.nominal(pitch)}; ${most === 0 ? 'nicht einmal einer passt' : `höchstens ${most} passen`}. Nehmen Sie weniger Böden, oder machen Sie den Korpus höher.`,
    bayMissing: ({ shelf, bay, bays }) =>
      bays === 1
        ? `${shelf} kann nicht in Feld ${bay} liegen, weil der Korpus keine Mittelwände hat. Nehmen Sie Feld 1, oder fügen Sie eine Mittelwand hinzu.`
        : `${shelf} kann nicht in Feld ${bay} liegen, weil der Korpus ${bays} Felder hat. Nehmen Sie ein Feld zwischen 1 und ${bays}.`,
    shelfOutside: ({ shelf, at, above, room }, show) =>
      `${shelf} bei ${show.length(at)} passt nicht zwischen ${BELOW} und ${ABOVE[above]}. Legen Sie ihn zwischen ${show.length(room[0])} und ${show.length(room[1])}.`,
    shelfNowhere: ({ shelf, at, above }, show) =>
      `${shelf} bei ${show.length(at)} passt nicht zwischen ${BELOW} und ${ABOVE[above]}. Entfernen Sie ihn, oder machen Sie den Korpus höher.`,
    shelfRunsInto: ({ shelf, at, other, free: [down, up] }, show) =>
      `${shelf} bei ${show.length(at)} stößt an ${other}. Legen Sie ihn auf ${show.length(down)} oder tiefer, oder auf ${show.length(up)} oder höher.`,
    shelfNoLength: ({ shelf, bay, play }, show) =>
      `Von ${shelf} bleibt keine Länge: Das Feld ist ${show.length(bay)} breit, und das Spiel an beiden Enden nimmt ${show.length(play)}. Machen Sie das Feld breiter.`,
    shelfNoWidth: ({ shelf, clear, setback }, show) =>
      `Von ${shelf} bleibt keine Breite: Die lichte Tiefe ist ${show.length(clear)}, und der Rücksprung des Bodens nimmt ${show.length(setback)}. Machen Sie den Rücksprung kleiner.`,
    noDiagonal: ({ size, depth, least }, show) =>
      `Ein Korpus, der ${show.length(depth)} tief ist und ${show.length(size)} an einer Wand entlang reicht, hat keine Front über Eck. Lassen Sie ihn mehr als ${show.length(least)} weit reichen, oder machen Sie ihn weniger tief.`,
    shelfAllCut: ({ shelf, setback }, show) =>
      `Der Rücksprung von ${show.length(setback)} lässt ${shelf} an den Seiten keine geraden Kanten. Machen Sie ihn kleiner.`,
    shelfInDoor: ({ shelf, setback, inset }, show) =>
      `${shelf} liegt ${show.length(setback)} hinter der Vorderseite und stößt an eine einliegende Tür, die ${show.length(inset)} weit hineinreicht. Machen Sie seinen Rücksprung mindestens ${show.length(inset)} groß.`,
    doorsBeforeDividers: ({ bays }) =>
      `Eine einliegende Tür kann nicht vor den Mittelwänden zwischen ${bays} Feldern hängen, weil diese bis vorn reichen. Sagen Sie mit \`bays\`, was vor jedem Feld hängt, oder nehmen Sie aufliegende Türen.`,
    doorBayMissing: ({ asked, bays }) =>
      `Die Türen von ${asked} Feldern sind aufgeführt, aber der Korpus hat ${bays}. Führen Sie nicht mehr auf, als er hat, oder fügen Sie eine Mittelwand hinzu.`,
    frontBayMissing: ({ bay, bays }) =>
      bays === 1
        ? `Vor Feld ${bay} kann keine Front stehen, weil der Korpus keine Mittelwände hat. Nehmen Sie Feld 1, oder fügen Sie eine Mittelwand hinzu.`
        : `Vor Feld ${bay} kann keine Front stehen, weil der Korpus ${bays} Felder hat. Nehmen Sie ein Feld zwischen 1 und ${bays}.`,
    backAllOpen: () =>
      'Was offen bleibt, nimmt die ganze Rückwand ein. Schreiben Sie `back: none`, oder lassen Sie weniger offen.',
    blindTooWide: ({ reach, width }, show) =>
      `Die Blende der blinden Ecke reichte mit ihrem Streifen ${show.length(reach)} von der Seite her und ließe in einem ${show.length(width)} breiten Korpus nichts zu öffnen. Machen Sie den Korpus breiter, oder weniger davon blind.`,
    frontBehindBlind: ({ front }) =>
      `${front} läge ganz hinter der Blende. Sagen Sie mit \`bay\`, vor welchem Feld sie steht, oder machen Sie weniger vom Korpus blind.`,
    drawerBehindBlind: ({ drawer, from, to, box }, show) =>
      `Der Kasten von ${drawer} stünde zwischen ${show.length(box[0])} und ${show.length(box[1])} von links und kommt nicht an der Blende vorbei, neben der die Front von ${show.length(from)} bis ${show.length(to)} offen ist. Teilen Sie den Korpus dort mit einer Mittelwand, und stellen Sie den Schubkasten vor das andere Feld.`,
    frontsTooHigh: ({ fronts, given, room, left }, show) =>
      `Die Höhen von ${fronts} Fronten ergeben ohne ihre Fugen ${show.length(given)}, und der Raum für sie ist ${show.length(room)} hoch: ${show.length(Math.max(0, left))} bleiben für die anderen. Machen Sie eine niedriger, oder lassen Sie ihre Höhe weg.`,
    noSlides: () => 'Die Werkstatt hat keine Auszüge. Nehmen Sie einen in die Werkstattdatei auf.',
    drawerNoDepth: ({ drawer, slide, least, room }, show) =>
      `${drawer} findet keinen Auszug: Der kürzeste von ${quoted(slide)} ist ${show.length(least)} lang, und der Raum hinter der Front ist ${show.length(room)}. Machen Sie den Korpus tiefer, oder nehmen Sie einen anderen Auszug.`,
    drawerNoWidth: ({ drawer, bay, taken }, show) =>
      `${drawer} findet keinen Raum zwischen Seiten, die ${show.length(bay)} auseinander stehen und von denen die Auszüge ${show.length(taken)} nehmen. Machen Sie das Feld breiter.`,
    drawerNoHeight: ({ drawer, height, most, canBeLower }, show) =>
      `Der Kasten von ${drawer} müsste ${show.length(height)} hoch sein, und hinter der Front ist auf der Teilung Raum für ${show.length(Math.max(0, most))}. Machen Sie die Front höher${canBeLower ? ', oder den Kasten niedriger' : ''}.`,
    doorNoSize: ({ door, width, height }, show) =>
      `${door} würde ${show.length(width)} breit und ${show.length(height)} hoch. Machen Sie Luft und Fugen kleiner, oder den Korpus größer.`,
    doorTooThick: ({ door, thickness, clear }, show) =>
      `${door} ist ${show.length(thickness)} dick und findet in ${show.length(clear)} lichter Tiefe keinen Raum. Nehmen Sie eine dünnere Platte, oder eine aufliegende Tür.`,
    dividerUnderRails: ({ thick: [front, back] }, show) =>
      `Eine Mittelwand kann nicht unter beiden Traversen enden, weil die vordere ${show.length(front)} dick ist und die hintere ${show.length(back)}. Geben Sie beiden denselben Plattenwerkstoff.`,
    dividerOutside: ({ divider, run, beside, room }, show) =>
      `${divider} stünde von ${show.length(run[0])} bis ${show.length(run[1])}, aber neben ${beside} ist nur von ${show.length(room[0])} bis ${show.length(room[1])} Raum. Versetzen Sie sie, oder entfernen Sie sie.`,
    plinthTooThick: ({ thickness, clear }, show) =>
      `Der Sockel ist ${show.length(thickness)} dick und passt nicht unter ${show.length(clear)} lichte Tiefe. Nehmen Sie eine dünnere Platte.`,
    railsTooWide: ({ width, clear, pitch }, show) =>
      `Zwei ${show.length(width)} breite Traversen passen nicht in ${show.length(clear)} lichte Tiefe, wenn die hintere auf der Teilung von ${show.nominal(pitch)} liegt. Machen Sie sie schmaler, oder den Korpus tiefer.`,
    nothingToCut: ({ panel, length, width }, show) =>
      `Die Kantenbänder von ${panel} lassen von ${show.length(length)} × ${show.length(width)} nichts zuzuschneiden. Machen Sie die Platte größer, oder die Kantenbänder dünner.`,
    panelMisspelt: ({ panel, near }) => `Der Korpus hat keine Platte ${quoted(panel)}. Meinen Sie \`${near}\`?`,
    panelUnknown: ({ panel, panels }) =>
      `Der Korpus hat keine Platte ${quoted(panel)}. ${zahl(panels.length, 'Seine Platte ist', 'Seine Platten sind')} ${und(panels)}.`,
    rename: ({ panel }) => `In ${panel} umbenennen`,
  },
  job: {
    neutralShop: () =>
      'Die eingebaute Werkstatt gilt, weil der Auftrag keine Werkstattdatei nennt. Ihre Maschinen sind erfunden: Nennen Sie mit `shop: NAME.shop.yaml` Ihre eigene.',
    brokenShop: ({ errors, line, first }, show) =>
      `${faulty(errors, line)} ${show.tell(first)} Was zu diesem Auftrag gesagt wird, kann falsch sein, bis die Werkstattdatei berichtigt ist.`,
    brokenShopNames: ({ errors, line, first, names }, show) =>
      `${faulty(errors, line)} ${show.tell(first)} Mit ${und(names.map(unread))} wird nichts berechnet oder geplant, bis die Werkstattdatei berichtigt ist.`,
    unusableShop: ({ errors, line, first }, show) =>
      `${faulty(errors, line)} ${show.tell(first)} Für diesen Auftrag wird nichts berechnet, bis die Werkstattdatei berichtigt ist.`,
    incompleteShop: ({ list, names, sections, carcasses, more }) =>
      `Die Werkstattdatei hat keine ${LISTS[list]}; darum ${zahl(names.length, 'gilt', 'gelten')} in ${und([...carcasses.map(quoted), ...(more > 0 ? [`${more} weiteren`] : [])])} ${und(names.map(quoted))} der eingebauten Werkstatt. Deren Maße sind nicht die Ihrer Werkstatt: Schreiben Sie Ihre eigenen unter ${und(sections.map((key) => `\`${key}\``))}.`,
    usedHere: ({ names }) => `Hier ${zahl(names.length, 'gilt', 'gelten')} ${und(names.map(quoted))}.`,
    writeBuiltIn: ({ list }) =>
      `Die ${LISTS[list]} der eingebauten Werkstatt in die Werkstattdatei schreiben, um sie zu berichtigen`,
    useShop: ({ file }) => `${quoted(file)} nehmen`,
    internalFault: ({ words }) =>
      `Borewright ist beim Prüfen dieses Korpus gescheitert (${words}); darum ist nicht alles daran geprüft. ${OUR_FAULT}: Melden Sie ihn mit Auftrag und Werkstattdatei.`,
    ofLikes: ({ carcasses, message }, show) =>
      `In ${und(carcasses.map(quoted))}, ${carcasses.length === 1 ? 'der' : 'die'} wie dieser ${carcasses.length === 1 ? 'ist' : 'sind'}: ${show.tell(message)}`,
    batchInCarcass: ({ title }, show) => `${show.tell(title)} (dieser Korpus)`,
    batchInFile: ({ title }, show) => `${show.tell(title)} (ganze Datei)`,
  },
  like: {
    unknown: ({ name, carcasses }) =>
      carcasses.length === 0
        ? `Kein anderer Korpus dieser Datei hat einen Namen, also heißt keiner ${quoted(name)}. Schreiben Sie stattdessen Art und Breite von diesem.`
        : `Kein Korpus dieser Datei heißt ${quoted(name)}. Nehmen Sie einen anderen, etwa ${oder(carcasses)}.`,
    misspelt: ({ name, near }) => `Kein Korpus dieser Datei heißt ${quoted(name)}. Nehmen Sie ${quoted(near)}.`,
    use: ({ name }) => `${quoted(name)} nehmen`,
    itself: () =>
      'Der Korpus ist wie er selbst, also sagt nichts, was er ist. Nennen Sie einen anderen, oder schreiben Sie seine Art und Breite.',
    circular: ({ names }) =>
      `${quoted(names[0]!)} ist wie ${[...names.slice(1), names[0]!].map(quoted).join(', und der wie ')}, also sagt nichts, was sie sind. Nehmen Sie \`like\` aus einem von ihnen heraus, und schreiben Sie seine Art und Breite.`,
    standAlone: () => '`like` herausnehmen: dieser Korpus hat selbst eine Art und eine Breite',
    far: ({ most }) =>
      `Mehr als ${most} Korpusse sind der Reihe nach einer wie der andere. Nennen Sie einen, der in der Reihe früher kommt.`,
    unread: ({ name }) =>
      `${quoted(name)}, dem dieser Korpus gleicht, hat selbst Fehler. Berichtigen Sie zuerst diese.`,
    unreadHere: ({ name }) => `${quoted(name)} steht hier.`,
  },
  moves: {
    variant: ({ name, hand }) =>
      hand === 'same'
        ? `Als Abwandlung von ${quoted(name)} schreiben (\`like\`)`
        : `Als gespiegelte Abwandlung von ${quoted(name)} schreiben (\`like\`, \`mirrored\`)`,
    writtenOut: ({ name }) => `Ganz ausschreiben, ohne ${quoted(name)}`,
    mirrored: () => 'Links und rechts vertauschen',
    evenly: ({ key, at }, show) => `${SPREAD[key]} gleiche Öffnungen geben: ${und(at.map(show.exact))}`,
    pitches: ({ size, pitches }, show) =>
      `Auf ${show.exact(size)} strecken, eine Teilung ${pitches > 0 ? 'mehr' : 'weniger'}, mit allem darin`,
    asOther: ({ size, name }, show) => `Auf ${show.exact(size)} strecken, wie ${quoted(name)}, mit allem darin`,
  },
  refactors: {
    duplicate: ({ name, free }) => `${name} als ${free} verdoppeln`,
    inUnit: ({ text }) => `Als ${text} schreiben`,
    spread: ({ count }) =>
      count === 1 ? 'Borewright den Boden legen lassen' : `Die ${count} Böden gleichmäßig verteilen`,
  },
  'set-up-for-one': {
    saved: ({ machine, panel, seconds, other, difference, line }, show) =>
      `${panel} hat an ${machine} eine Rüstung für sich, die ${zeit(seconds)} mehr kostet als die von ${quoted(other)}. Nur ${DIFFERS[difference.in]} ist anders: ${show.exact(difference.is)} statt ${show.exact(difference.instead)}. Mit ${instead(difference, line, show)} ließe sich die Platte mit ${quoted(other)} bohren.`,
  },
  'carcasses-overlap': {
    overlap: ({ name, other, wall, own, others, by }, show) =>
      `${quoted(name)} steht an Wand ${wall} von ${show.length(own.from)} bis ${show.length(own.to)} und ${quoted(other)} auf gleicher Höhe von ${show.length(others.from)} bis ${show.length(others.to)}: Sie stehen ${show.length(by)} ineinander. Versetzen Sie einen von beiden (\`place\`).`,
  },
  'past-wall-end': {
    corner: ({ name, other, wall, hand }) =>
      `${quoted(name)} steht an Wand ${wall} ${hand === 'left' ? 'links' : 'rechts'} von ${quoted(other)}, dessen ${hand === 'left' ? 'linkes' : 'rechtes'} Ende in der Ecke des Raums steht. Geben Sie an, an welcher anderen Wand er steht (\`place: wall\`), oder versetzen Sie ihn.`,
    end: ({ name, wall, by }, show) =>
      `${quoted(name)} steht mit dem, was neben seiner linken Seite steht, ${show.length(by)} über das linke Ende von Wand ${wall} hinaus. Rücken Sie ihn so weit nach rechts (\`place\`).`,
  },
  'worktop-uneven': {
    uneven: ({ name, other, top, beside }, show) =>
      `Die Oberkante von ${quoted(name)} liegt ${show.length(top)} über dem Boden und die von ${quoted(other)} daneben ${show.length(beside)}: Eine Arbeitsplatte über beiden läge nicht waagerecht. Machen Sie beide gleich hoch (\`height\`, \`plinth\`).`,
  },
  'to-defaults': {
    move: ({ path, text, carcasses }) =>
      `${written(path, text)} von ${carcasses} Korpussen in die Vorgaben verschieben`,
    drop: ({ path, text, carcasses }) =>
      carcasses === 1
        ? `${written(path, text)} entfernen, das auch die Vorgaben sagen`
        : `${written(path, text)} aus ${carcasses} Korpussen entfernen, da es auch die Vorgaben sagen`,
  },
  'left-out': {
    byKind: () => 'Ohne Angabe: was zur Art passt.',
    byLooseShelves: ({ some, none }) => `Ohne Angabe: \`${some}\` mit Einlegeböden, sonst \`${none}\`.`,
    length: ({ length }, show) => `Ohne Angabe: ${show.exact(length)}.`,
    word: ({ word }) => `Ohne Angabe: \`${word}\`.`,
    none: () => 'Ohne Angabe: keine.',
    one: () => 'Ohne Angabe: eines.',
    rightOfLast: () =>
      'Ohne Angabe: rechts vom Korpus davor in der Datei, der an derselben Wand und wie dieser am Boden oder darüber steht.',
    onFloor: () => 'Ohne Angabe: am Boden.',
    usualHeight: ({ length, kind }, show) =>
      `Ohne Angabe: ${show.exact(length)}, die übliche Höhe der Werkstatt für \`kind: ${kind}\`.`,
    balancedHeight: ({ pitches, pitch }, show) =>
      `Ohne Angabe: ${pitches} Teilungen von ${show.nominal(pitch)} und die Dicke der Seite, sodass Reihen gleichmäßig liegen.`,
    usualDepth: ({ length, kind }, show) =>
      `Ohne Angabe: ${show.exact(length)}, die übliche Tiefe der Werkstatt für \`kind: ${kind}\`.`,
    usualBoard: ({ name }) => `Ohne Angabe: ${quoted(name)}, der übliche Plattenwerkstoff der Werkstatt.`,
    usualBackBoard: ({ name }) => `Ohne Angabe: ${quoted(name)}, der übliche Plattenwerkstoff der Rückwände.`,
    usualBand: ({ name }) => `Ohne Angabe: ${quoted(name)}, das übliche Kantenband der Werkstatt.`,
    usualFitting: ({ name }) => `Ohne Angabe: ${quoted(name)}, der übliche Verbinder der Werkstatt.`,
    usualHinge: ({ name }) => `Ohne Angabe: ${quoted(name)}, das übliche Topfband der Werkstatt.`,
    everyRowBay: () => 'Ohne Angabe: jedes Feld.',
    wholeBack: () => 'Ohne Angabe: die Rückwand ist ganz, oder was der andere der beiden sagt.',
    wholeRow: () => 'Ohne Angabe: so weit die Reihe geht.',
    everyHole: () => 'Ohne Angabe: jedes Loch.',
    usualPull: ({ name }) => `Ohne Angabe: ${quoted(name)}, der übliche Griff der Werkstatt.`,
    usualBracket: ({ name }) => `Ohne Angabe: ${quoted(name)}, der übliche Aufhänger der Werkstatt.`,
    usualFoot: ({ name }) => `Ohne Angabe: ${quoted(name)}, der übliche Fuß der Werkstatt.`,
    usualAngle: ({ name }) => `Ohne Angabe: ${quoted(name)}, der übliche Winkel der Werkstatt.`,
    pullOfDoors: () => 'Ohne Angabe: der der Türen.',
    pullByHand: ({ height, kind }, show) =>
      kind === 'wall'
        ? 'Ohne Angabe: nahe dem unteren Ende.'
        : `Ohne Angabe: ${show.exact(height)} über dem Boden, wo das im mittleren Drittel der Tür ist, sonst nahe dem Ende, das näher daran ist.`,
    centred: () => 'Ohne Angabe: in der Mitte der Höhe.',
    usualMachine: ({ name }) => `Ohne Angabe: ${quoted(name)}, die übliche Maschine der Werkstatt.`,
    usualMachines: () => 'Ohne Angabe: die üblichen Maschinen der Werkstatt.',
    halfSide: () => 'Ohne Angabe: die halbe Nenndicke der Seite.',
    asFarBack: () => 'Ohne Angabe: so weit hinten, wie die Teilung und der hintere Rand der Werkstatt erlauben.',
    bySpindles: () => 'Ohne Angabe: die Stellen, die die Spindeln des Vertikalbohrkopfs der Werkstatt ergeben.',
    everyBay: () => 'Ohne Angabe: einer in jedem Feld.',
    usualSlide: ({ name }) => `Ohne Angabe: ${quoted(name)}, der übliche Auszug der Werkstatt.`,
    asDoorsSay: () => 'Ohne Angabe: was `doors` sagt.',
    asHighAsFits: () => 'Ohne Angabe: so hoch, wie der Platz es erlaubt.',
    usualDrawers: () =>
      'Ohne Angabe: der übliche Auszug der Werkstatt, und Plattenwerkstoff, Kantenband und Verbinder des Korpus.',
    fittingOfCarcass: () => 'Ohne Angabe: der Verbinder des Korpus.',
    hungBefore: () => 'Ohne Angabe: was `hung` sagt, vor der ganzen Front.',
    bandOfCarcass: () => 'Ohne Angabe: das Kantenband des Korpus.',
    downToFloor: () => 'Ohne Angabe: ja.',
    boardOfFronts: () => 'Ohne Angabe: der Plattenwerkstoff der Türen.',
    bandOfFronts: () => 'Ohne Angabe: das Kantenband der Türen.',
    boardOfCarcass: () => 'Ohne Angabe: der Plattenwerkstoff des Korpus.',
    asCarcass: () => 'Ohne Angabe: wie im übrigen Korpus.',
  },
  dowel: {
    described: (one, show) =>
      `Dübel, Ø ${show.nominal(one.diameter)}, ${show.nominal(one.length)} lang, ${show.nominal(one.inFace)} tief in der Fläche`,
    nothingForEnd: ({ inFace, long }, show) =>
      `Eine ${show.exact(inFace)} tiefe Bohrung in der Fläche lässt von einem ${show.exact(long)} langen Dübel nichts für die Stirn. Schreiben Sie ein kleineres \`in-face\`.`,
  },
  cam: {
    described: ({ camDiameter, distance, guide }, show) =>
      `Exzenterverbinder, Ø ${show.nominal(camDiameter)}, ${show.nominal(distance)} vom Ende${guide === null ? '' : `, dazu ${guide}`}`,
    shortBolt: ({ name, depth, least, distance, ...bores }, show) =>
      `${shallow('cam-bolt', depth, least, bores, show)}, um ${show.length(distance)} vom Ende in den Exzenter von ${quoted(name)} zu münden. Bohren Sie tiefer, oder überlassen Sie die Tiefe dem Verbinder.`,
    shortCam: ({ name, depth, least, under, board, ...bores }, show) =>
      `${shallow('cam', depth, least, bores, show)} in einer ${show.length(board)} dicken Platte, wo der Bolzen von ${quoted(name)} ${show.length(under)} unter der Fläche liegt. Nehmen Sie einen Verbinder für diese Dicke, oder eine dünnere Platte.`,
    shortStud: ({ name, depth, least, ...bores }, show) =>
      `${shallow('cam-stud', depth, least, bores, show)}, so tief geht der Zapfen von ${quoted(name)} hinein. Bohren Sie tiefer, oder überlassen Sie die Tiefe dem Verbinder.`,
  },
  screw: {
    described: ({ length: long, clearance, pilot, head }, show) =>
      `Verbindungsschraube, ${show.nominal(long)} lang, Durchgang Ø ${show.nominal(clearance)}, Vorbohrung Ø ${show.nominal(pilot)}${head === null ? '' : `, Kopf Ø ${show.nominal(head.diameter)} in einer Senkung von ${show.nominal(head.recess)}`}`,
    noRecess: ({ key }) =>
      key === 'head'
        ? 'Ein Kopf, der in eine Senkung geht, braucht deren Tiefe. Schreiben Sie auch `recess`.'
        : 'Eine Senkung braucht ihren Durchmesser. Schreiben Sie auch `head`.',
    narrowHead: ({ head, clearance }, show) =>
      `Ein Kopf von ${show.exact(head)} findet über einer Durchgangsbohrung von ${show.exact(clearance)} keinen Halt. Schreiben Sie einen größeren \`head\`, oder ein kleineres \`clearance\`.`,
    headThrough: ({ name, recess, least, board, ...bores }, show) =>
      `${ofBores('clearance', bores)} ${zahl(bores.count, 'hat', 'haben')} unter dem Kopf von ${quoted(name)} zu wenig Holz: Seine Senkung ist in einer Platte von ${show.exact(board)} ${show.exact(recess)} tief, und ${show.exact(least)} müssen bleiben. Nehmen Sie eine dickere Platte, oder eine Schraube mit flacherem Kopf.`,
    outOfReach: ({ name, long, passed, ...bores }, show) =>
      `${ofBores('pilot', bores)} ${zahl(bores.count, 'liegt', 'liegen')} außer Reichweite: ${quoted(name)} ist ${show.length(long)} lang und geht durch ${show.length(passed)} Platte. Nehmen Sie eine längere Schraube.`,
    holdsLittle: ({ name, long, passed, reach, hold, ...bores }, show) =>
      `${ofBores('pilot', bores)} ${zahl(bores.count, 'fasst', 'fassen')} nur ${show.length(reach)} von ${quoted(name)}, ${show.length(long)} lang und durch ${show.length(passed)} Platte geführt; mindestens ${show.length(hold)} sind nötig, das Doppelte ihrer Dicke. Nehmen Sie eine längere Schraube.`,
    shallow: ({ name, long, passed, depth, reach, ...bores }, show) =>
      `${ofBores('pilot', bores)} ${zahl(bores.count, 'ist', 'sind')} ${show.exact(depth)} tief; mindestens ${show.exact(reach)} sind nötig, da ${quoted(name)} ${show.length(long)} lang ist und durch ${show.length(passed)} Platte geht. Bohren Sie tiefer, oder überlassen Sie die Tiefe dem Verbinder.`,
  },
} satisfies Translations;

const BELOW = 'unteren Boden';
const ABOVE = { top: 'oberen Boden', rails: 'Traversen' } as const;

const LISTS = {
  boards: 'Plattenwerkstoffe',
  bands: 'Kantenbänder',
  fittings: 'Verbinder',
  hinges: 'Topfbänder',
  slides: 'Auszüge',
  pulls: 'Griffe',
  brackets: 'Aufhänger',
  wardrobeRails: 'Kleiderstangen',
  feet: 'Füße',
  angles: 'Winkel',
  machines: 'Maschinen',
} as const;

const faulty = (errors: number, line: number): string =>
  errors === 1
    ? `Die Werkstattdatei hat in Zeile ${line} einen Fehler.`
    : `Die Werkstattdatei hat ${errors} Fehler, den ersten in Zeile ${line}.`;

type Unread =
  | {
      readonly sort: 'board' | 'band' | 'hinge' | 'slide' | 'pull' | 'bracket' | 'wardrobe-rail' | 'foot' | 'angle';
      readonly name: string;
    }
  | { readonly sort: 'fitting'; readonly kind: keyof typeof FITTINGS; readonly name: string }
  | { readonly sort: 'machine'; readonly kind: keyof typeof MACHINES; readonly name: string };
function unread(one: Unread): string {
  const of = one.sort === 'fitting' ? FITTINGS[one.kind] : one.sort === 'machine' ? MACHINES[one.kind] : one.sort;
  return `${quoted(one.name)} (${noun(of).bare})`;
}

interface Difference {
  readonly in: keyof typeof DIFFERS;
  readonly is: number;
  readonly instead: number;
}
const DIFFERS = {
  fence: 'der Abstand vom Lineal',
  height: 'die Höhe der Spindeln',
  depth: 'die Tiefe',
  thickness: 'die Dicke der Platte',
} as const;
function instead(difference: Difference, line: 'front' | 'rear' | null, show: Show): string {
  const { is, instead: other } = difference;
  switch (difference.in) {
    case 'fence':
      if (line === null)
        return `Bohrungen ${show.exact(Math.abs(other - is))} weiter ${other > is ? 'hinten' : 'vorn'} (\`dowels\`)`;
      return line === 'front'
        ? `der vorderen Reihe ${show.exact(other)} von der Vorderkante (\`row-setback\`)`
        : `der hinteren Reihe ${show.exact(other)} von der Vorderkante (\`rear-row\`)`;
    case 'height':
      return 'einer Platte so dick wie die der anderen (`board`)';
    case 'depth':
      return `${show.exact(other)} tiefen Bohrungen`;
    case 'thickness':
      return `einer ${show.exact(other)} dicken Platte (\`board\`)`;
  }
}

const written = (path: readonly string[], text: string): string => quoted([...path, text].join(': '));

interface Told {
  readonly count: number;
  readonly panels: readonly string[];
}
const ofBores = (purpose: keyof typeof BORES, { count, panels }: Told): string =>
  `Die ${count === 1 ? BORES[purpose][0] : anzahl(count, ...BORES[purpose])} in ${und(panels)}`;
const shallow = (purpose: keyof typeof BORES, depth: number, least: number, told: Told, show: Show): string =>
  `${ofBores(purpose, told)} ${zahl(told.count, 'ist', 'sind')} ${show.exact(depth)} tief; mindestens ${show.exact(least)} sind nötig`;

const SPREAD = {
  dividers: 'Den Mittelwänden',
  'fixed-shelves': 'Den festen Böden',
  'loose-shelves': 'Den Einlegeböden',
} as const;
