import type { Show } from '../../words/show.js';
import type { Translations } from '../tables.js';
import { CIRCUMSTANCES } from './circumstances.js';
import { anzahl, FROM, HAND, LINE, oder, quoted, und, work, zahl } from './words.js';

/** Befunde über Platten, Böden, Reihen und Türen. */
/** '45°' */
const degrees = (angle: number): string => `${String(Math.round(angle * 10) / 10).replace('.', ',')}°`;

export const findingsOfPanels = {
  'band-missing': {
    bare: ({ panels }) =>
      `${zahl(panels.length, 'Die Vorderkante', 'Die Vorderkanten')} von ${und(panels)} ${zahl(panels.length, 'hat', 'haben')} kein Kantenband. Nennen Sie eines mit \`band\`.`,
    bandFront: ({ band, thickness }, show) =>
      `Die Vorderkante mit ${quoted(band)} bekanten (${show.length(thickness)})`,
    bandEvery: ({ band }) => `Jede unbekantete Vorderkante mit ${quoted(band)} bekanten`,
    removeNone: () => '`none` entfernen und das übliche Kantenband nehmen',
  },
  'band-too-narrow': {
    uncovered: ({ band, height, thickness, panels }, show) =>
      `${quoted(band)} ist ${show.length(height)} breit und deckt ${zahl(panels.length, 'eine Kante', 'Kanten')} von ${und(panels)} nicht, ${show.length(thickness)} dick. Wählen Sie ein breiteres Kantenband.`,
  },
  'clamp-misses-panel': {
    tooFarOut: ({ deep, side, across, most, ...loose }, show) =>
      `${comesDown(loose)}: ${zahl(loose.panels.length, 'Sie ist', 'Sie sind')} ${show.length(deep)} ${side === 'width' ? 'breit' : 'lang'}, und der nächste Niederhalter steht ${show.length(across)} ${side === 'width' ? 'vom Lineal' : 'vom Bohrkopf'}. Halten Sie sie in einer Vorrichtung, oder stellen Sie einen Niederhalter auf höchstens ${show.length(most)} (\`across\`).`,
    beside: (loose) =>
      `${comesDown(loose)}, wo sie am Anschlag ${zahl(loose.panels.length, 'liegt', 'liegen')}. Halten Sie sie in einer Vorrichtung, oder stellen Sie einen Niederhalter näher an die Spindeln (\`along\`).`,
  },
  'clamp-too-small': {
    outOfRange: ({ side, key, size, clamp, range }, show) =>
      `Der Korpus ist ${show.length(size)} ${{ width: 'breit', height: 'hoch', depth: 'tief' }[side]}; ${quoted(clamp)} fasst zwischen ${show.length(range.min)} und ${show.length(range.max)}. Ändern Sie \`${key}\`, oder wählen Sie eine andere Korpuspresse (\`machines: clamp\`).`,
  },
  'door-swing-meets': {
    meets: ({ door, hung, others, angle }) =>
      `${door}, ${HAND[hung]} angeschlagen, stößt an ${und(others)}, wenn sie ${angle}° offen steht. Machen Sie dort die Fuge oder die Luft zum Rand größer, schlagen Sie sie auf der anderen Seite an, oder nehmen Sie ein Topfband, das ihre Kante frei hält.`,
    byPull: ({ door, hung, pull, others, angle }) =>
      `${quoted(pull)} auf ${door}, ${HAND[hung]} angeschlagen, stößt an ${und(others)}, wenn die Tür ${angle}° offen steht. Setzen Sie den Griff näher an die Schließkante, nehmen Sie einen flacheren oder ein Topfband, das weniger weit öffnet.`,
    onPull: ({ door, hung, pull, others, angle }) =>
      `${door}, ${HAND[hung]} angeschlagen, stößt an ${quoted(pull)} auf ${und(others)}, wenn sie ${angle}° offen steht. Setzen Sie diesen Griff weiter von der Kante, nehmen Sie einen flacheren oder ein Topfband, das weniger weit öffnet.`,
  },
  'drawer-lower-than-slide': {
    low: ({ drawers, height, slide, needs }, show) =>
      `${zahl(drawers.length, 'Der Kasten', 'Die Kästen')} von ${und(drawers)} ${zahl(drawers.length, 'ist', 'sind')} ${show.length(height)} hoch, und ${quoted(slide)} reicht ${show.length(needs)} über die Unterkante. Machen Sie die Front oder den Kasten höher, oder nehmen Sie einen niedrigeren Auszug.`,
    asHigh: () => 'Die Kästen so hoch machen, wie ihr Platz es erlaubt',
  },
  'drawer-meets-shelf': {
    meets: ({ shelf, drawers }) =>
      `${shelf} liegt ${und(drawers)} im Weg, ${zahl(drawers.length, 'der', 'die')} durch denselben Raum ${zahl(drawers.length, 'läuft', 'laufen')}. Legen Sie den Boden dorthin, wo kein Schubkasten läuft, oder entfernen Sie ihn.`,
    remove: ({ shelf }) => `${shelf} entfernen`,
  },
  'fronts-leave-open': {
    open: ({ bay, open }, show) =>
      `Die Fronten${bay === null ? '' : ` vor Feld ${bay}`} lassen unten ${show.length(open)} offen, weil jede ihre eigene Höhe hat. Lassen Sie die Höhe einer Front weg, oder machen Sie eine um so viel höher.`,
    share: () => 'Die unterste Front nehmen lassen, was übrig ist',
    higher: ({ to }, show) => `Die unterste Front ${show.exact(to)} hoch machen`,
  },
  'appliance-without-air': {
    closed: ({ from, to }, show) =>
      `Die Rückwand ist hinter dem Gerät geschlossen; Wärme und Leitungen haben keinen Weg hinaus. Lassen Sie sie von ${show.length(from)} bis ${show.length(to)} offen, oder wie die Anleitung des Geräts sagt.`,
    open: ({ from, to }, show) => `Die Rückwand von ${show.exact(from)} bis ${show.exact(to)} offen lassen`,
  },
  'appliance-without-room': {
    meets: ({ shelves, high }, show) =>
      `${und(shelves)} ${zahl(shelves.length, 'steht', 'stehen')} im Platz des Geräts, der ${show.length(high)} hoch ist. Setzen Sie ${zahl(shelves.length, 'ihn', 'sie')} dorthin, wo das Gerät nicht steht, oder entfernen Sie ${zahl(shelves.length, 'ihn', 'sie')}.`,
  },
  'not-in-diagonal': {
    otherHand: () =>
      'Ein Korpus steht über einer Ecke, und `diagonal` nennt `left` und `right`. Entfernen Sie eines davon; es gilt `left`.',
    dividers: () =>
      'Ein Korpus über Eck wird ohne Mittelwände gebaut, da die Felder daneben keine eigene Front hätten. Entfernen Sie sie, oder stellen Sie einen anderen Korpus daneben.',
    fixedShelves: () =>
      'Ein Korpus über Eck wird ohne feste Böden gebaut, da eine seiner Seiten an ihre Vorderkante stieße, die nicht gebohrt wird. Machen Sie Einlegeböden daraus (`loose-shelves`).',
    drawer: () =>
      'Zwischen den Seiten eines Korpus über Eck, die rechtwinklig zueinander stehen, läuft kein Schubkasten. Setzen Sie dort eine Tür, und den Schubkasten in einen Korpus daneben.',
    appliance: () => 'Zwischen den Seiten eines Korpus über Eck steht kein Gerät. Geben Sie ihm einen eigenen Korpus.',
    blind: () => 'Ein Korpus über Eck hat kein blindes Ende. Entfernen Sie `blind`, oder entfernen Sie `diagonal`.',
    wardrobeRails: () =>
      'Zwischen den Seiten eines Korpus über Eck, die einander nicht gegenüberstehen, hängt keine Kleiderstange. Entfernen Sie sie.',
    plinth: () =>
      'Ein Korpus über Eck wird ohne eigenen Sockel gebaut. Führen Sie den Sockel der Zeile unter ihm durch, und sagen Sie mit `plinth: 0` und `place: { above-floor: … }`, wie hoch der ist.',
    endPanels: () =>
      'Ein Korpus über Eck wird ohne Wangen gebaut, da an beiden Seiten ein Nachbar steht. Geben Sie sie dem letzten Korpus jeder Zeile.',
    fillers: () =>
      'Ein Korpus über Eck wird ohne Passleisten gebaut, da seine Front nicht in der Ebene der Nachbarn liegt. Geben Sie sie den Nachbarn.',
    top: () => 'Beide Seiten eines Korpus über Eck stehen unter seinem Oberboden. Schreiben Sie `top: over`.',
    bottom: () => 'Beide Seiten eines Korpus über Eck stehen auf seinem Unterboden. Schreiben Sie `bottom: under`.',
    back: () =>
      'Die Rückwände eines Korpus über Eck liegen auf den Hinterkanten: Eine Nut oder ein Falz läuft nicht an beiden Wänden. Schreiben Sie `applied` oder `none`.',
    backOpen: () =>
      'Die Rückwände eines Korpus über Eck sind ganz. Entfernen Sie es, und schneiden Sie an der Wand aus, was nötig ist.',
    inset: () =>
      'Die Front über Eck liegt vor den Kanten: Zwischen Seiten, die rechtwinklig zueinander stehen, hat sie keinen Platz. Schreiben Sie `overlay`.',
    remove: ({ key }) => `\`${key}\` entfernen`,
    write: ({ key, word }) => `\`${key}: ${word}\` schreiben`,
  },
  'hinge-not-for-slant': {
    slants: ({ doors, hinge, slant, made }) =>
      `${und(doors)} ${zahl(doors.length, 'weicht', 'weichen')} um ${degrees(slant)} von einer Front ab, die rechtwinklig zur Seite steht, und ${quoted(hinge)} ist für ${made === 0 ? 'gerade Fronten' : degrees(made)} gemacht (\`slant\`). Wählen Sie ein Band, das dafür gemacht ist (\`doors: hinge\`).`,
    square: ({ doors, hinge, made }) =>
      `${und(doors)} ${zahl(doors.length, 'steht', 'stehen')} rechtwinklig zur Seite, und ${quoted(hinge)} ist für Fronten gemacht, die um ${degrees(made)} schräg stehen (\`slant\`). Wählen Sie ein anderes Band (\`doors: hinge\`).`,
    use: ({ hinge }) => `Mit ${quoted(hinge)} anschlagen`,
  },
  'door-hung-on-blind': {
    hung: ({ door, hand, at }, show) =>
      `${door} ist ${HAND[hand]} angeschlagen, neben der Blende, wo keine senkrechte Platte ihre Bänder trägt. Schlagen Sie sie ${HAND[hand === 'left' ? 'right' : 'left']} an, oder stellen Sie eine Mittelwand auf ${show.length(at)} (\`dividers\`), hinter die Kante der Blende.`,
    hang: ({ hand }) => `Sie ${HAND[hand]} anschlagen`,
  },
  'pull-meets-corner': {
    meets: ({ pull, front, projection, room }, show) =>
      `${quoted(pull)} auf ${front} steht ${show.length(projection)} vor, und zwischen der Zeile in der Ecke und der nächsten Front sind ${show.length(room)}: Mit solchen Griffen an beiden Zeilen öffnet keine an denen der anderen vorbei. Machen Sie den Streifen der Blende (\`strip\`) breiter, und die Passleiste der anderen Zeile ebenso breit.`,
    wider: ({ to }, show) => `${show.exact(to)} der Blende zu sehen lassen`,
  },
  'front-off-pitch': {
    off: ({ height, gap, over, pitches, to }, show) =>
      `Eine Höhe von ${show.length(height)} und die Fuge von ${show.length(gap)} darunter sind ${show.length(Math.abs(over))} ${over > 0 ? 'mehr' : 'weniger'} als ${anzahl(pitches, 'Teilung', 'Teilungen')}; so stehen Auszüge und Montageplatten hinter den Fronten darunter anders als hinter denen darüber. Machen Sie sie ${show.length(to)} hoch.`,
    few: ({ bay, fronts, step, pitches, wanted }) =>
      `${fronts} Fronten${bay === null ? '' : ` vor Feld ${bay}`} teilen sich ${anzahl(pitches, 'Teilung', 'Teilungen')}, und ${step === 0 ? 'in ganzen Teilungen' : `um je ${step} gestuft`} brauchen sie ${wanted}; so werden sie gleich hoch und stehen neben der Teilung. Machen Sie den Korpus höher, oder nehmen Sie ${step === 0 ? 'weniger Fronten' : 'eine kleinere Stufe'}.`,
    pitches: ({ pitches, to }, show) =>
      `Ihr ${anzahl(pitches, 'Teilung', 'Teilungen')} geben, womit sie ${show.exact(to)} hoch ist`,
    high: ({ to }, show) => `Sie ${show.exact(to)} hoch machen`,
    step: ({ step }) => `Die Fronten um ${step} stufen`,
    how: ({ word }) => `Die Fronten mit \`${word}\` teilen`,
    higher: ({ to }, show) => `Den Korpus ${show.exact(to)} hoch machen`,
  },
  'slide-beside-row': {
    beside: ({ count, panels, places }, show) =>
      `${anzahl(count, 'Schraube', 'Schrauben')} von Auszügen in ${und(panels)} ${zahl(count, 'findet', 'finden')} kein Loch einer Reihe und ${zahl(count, 'wird', 'werden')} eigens gebohrt, ${und(places.map(show.length))} von der Vorderkante. Setzen Sie die hintere Reihe dorthin, oder nehmen Sie einen Auszug, dessen Schrauben in den Reihen stehen.`,
    moveRow: ({ to }, show) => `Die hinteren Reihen ${show.exact(to)} von der Vorderkante setzen`,
  },
  'hinge-out-of-reach': {
    byPlate: ({ arm, plates, ...misses }, show) =>
      `${missed(misses, show)} Eine ${tall(plates, show)} hohe Montageplatte ginge mit dem Arm von ${show.exact(arm)}; nehmen Sie sie unter \`plates\` auf, wenn die Werkstatt sie hat, oder ändern Sie die Luft zum Rand oder die Fuge.`,
    byDistance: ({ distance, range, ...misses }, show) =>
      `${missed(misses, show)} Der Topf müsste ${show.length(distance)} von der Kante der Tür stehen, und seine \`distance\` ist ${show.span(range)}. Machen Sie die Luft zum Rand oder die Fuge größer, oder nehmen Sie ein anderes Topfband.`,
    use: ({ hinge }) => `Die Türen mit ${quoted(hinge)} anschlagen`,
  },
  'hinge-far-off': {
    fromEnd: ({ doors, end, distance, usual, others, room }, show) =>
      [
        `${zahl(doors.length, `Das ${OUTER[end]} Band`, `Die ${OUTER[end]}n Bänder`)} von ${und(doors)} ${zahl(doors.length, 'steht', 'stehen')} ${show.length(distance)} ${FROM[`${end} end`]}, üblich sind ${show.length(usual)} (\`hinge-end\`).`,
        others.length === 0
          ? 'Die Teilung hat keinen Platz, der näher liegt. Beginnen Sie die Reihen näher am Ende (`row-offset`).'
          : `Näher daran ${zahl(others.length, 'ist', 'sind')} ${und(others)} im Weg. Lassen Sie dort ${show.length(room)} in der Höhe frei: Darin hat ein Band Platz, wo immer die Teilung liegt.`,
      ].join(' '),
    apart: ({ doors, distance, usual, others, room, below }, show) =>
      [
        `Über dem Band, das ${show.length(below)} ${FROM['bottom end']} von ${und(doors)} steht, kommt das nächste nach ${show.length(distance)}, gleichmäßig wären ${show.length(usual)}.`,
        ...(others.length === 0 ? [] : [`Dazwischen ${zahl(others.length, 'ist', 'sind')} ${und(others)} im Weg.`]),
        `Lassen Sie dort ${show.length(room)} in der Höhe frei: Darin hat ein Band Platz, wo immer die Teilung liegt.`,
      ].join(' '),
  },
  'hinge-without-room': {
    meets: ({ hinges, door, others }) =>
      hinges.length === 1
        ? `Band ${hinges[0]!} von ${door}, von unten gezählt, hat keinen Platz für sich: Wo die Teilung es stehen lässt, ist etwas in seinem Raum, hier ${und(others)}. Versetzen Sie das, machen Sie die Tür höher, oder schlagen Sie sie auf der anderen Seite an.`
        : `Die Bänder ${und(hinges.map(String))} von ${door}, von unten gezählt, haben keinen Platz für sich: Wo die Teilung sie stehen lässt, ist etwas in ihrem Raum, hier ${und(others)}. Versetzen Sie das, machen Sie die Tür höher, oder schlagen Sie sie auf der anderen Seite an.`,
    tooFew: ({ door, hinge, wanted, height }, show) =>
      `${door} ist ${show.length(height)} hoch und braucht ${anzahl(wanted, 'Band', 'Bänder')}, aber die Teilung hat nicht so viele Plätze für ${quoted(hinge)}. Machen Sie die Tür höher, oder schreiben Sie \`hinge: none\` und schlagen Sie sie anders an.`,
  },
  'index-unbalanced': {
    uneven: ({ panels, holes, machine, spindles, instead, less }) =>
      `Die Reihen von ${und(panels)} lassen sich nicht gleichmäßig von beiden Enden bohren: Sie haben ${anzahl(holes, 'Loch', 'Löcher')}, eine ${parity(holes)} Zahl, und ${quoted(machine)} hat ${anzahl(spindles, 'Spindel', 'Spindeln')}, eine ${parity(spindles)} Zahl. Mit ${anzahl(instead, 'Loch', 'Löchern')} kosten sie ${work(less)} weniger. Geben Sie ihnen ein Loch mehr oder weniger, oder nehmen Sie die Kosten hin.`,
    startFurtherIn: ({ offset, holes, shelves }, show) =>
      `Die Reihen eine halbe Teilung weiter innen beginnen, ${show.exact(offset)} von den Enden (${anzahl(holes, 'Loch', 'Löcher')})${withThem(shelves)}`,
    makeLower: ({ height, holes }, show) =>
      `Den Korpus ${show.exact(height)} hoch machen, eine Teilung niedriger (${anzahl(holes, 'Loch', 'Löcher')})`,
    makeHigher: ({ height, holes }, show) =>
      `Den Korpus ${show.exact(height)} hoch machen, eine Teilung höher (${anzahl(holes, 'Loch', 'Löcher')})`,
  },
  'loose-shelf-without-row': {
    noRow: ({ choice, ...lack }) => `${lacks(lack)} (\`rows: ${choice}\`). Bohren Sie mit \`rows: both\` beide Reihen.`,
    noRoom: (lack) =>
      `${lacks(lack)}, weil hinter der vorderen Reihe kein Platz ist. Machen Sie den Korpus tiefer, oder den Boden zu einem festen.`,
    leftOut: (lack) =>
      `${lacks(lack)}, weil \`row-holes\` sie weglässt. Nehmen Sie die Felder und Höhen der Einlegeböden auf.`,
    takeIn: ({ key }) => `\`${key}\` entfernen und dafür kein Loch weglassen`,
    standsAt: ({ shelf, at }, show) => `${shelf} liegt bei ${show.length(at)}.`,
    boreBoth: () => 'An diesem Korpus beide Reihen bohren',
    boreBothOn: ({ panels }) => `An ${und(panels)} beide Reihen bohren`,
    removeOwn: ({ panels }) => `\`rows\` von ${und(panels)} entfernen und die des Korpus nehmen (beide)`,
    pastRow: ({ shelf, at, line, side, holes }, show) =>
      `${shelf} liegt bei ${show.length(at)}, und die ${LINE[line]} Reihe von ${side} hat Löcher nur von ${show.span(holes)}. Legen Sie den Boden auf eine Höhe dazwischen.`,
    moveToFirst: ({ shelf, at }, show) => `${shelf} auf ${show.exact(at)} hinauflegen (das erste Loch)`,
    moveToLast: ({ shelf, at }, show) => `${shelf} auf ${show.exact(at)} hinunterlegen (das letzte Loch)`,
    offFrontPins: (off, show) => `${offPins(off, show)} Machen Sie den Rücksprung des Bodens kleiner.`,
    offRearPins: (off, show) => `${offPins(off, show)} Rücken Sie die hintere Reihe nach vorn.`,
    leaveSetback: ({ shelf }) => `Den Rücksprung von ${shelf} der Werkstatt überlassen`,
    leaveRearRow: () => 'Den Platz der hinteren Reihe der Werkstatt überlassen',
  },
  'panel-out-of-range': {
    notToBore: (out, show) => `${outOfRange(out, show)} ${ELSEWHERE}`,
    notToBand: (out, show) => `${outOfRange(out, show)} ${ELSEWHERE}`,
    tooSmallToBore: (out, show) =>
      `${outOfRange(out, show)} Erzwingen Sie es nicht: Bohren Sie vor dem Zuschnitt, oder wählen Sie eine andere Maschine.`,
    tooSmallToBand: (out, show) =>
      `${outOfRange(out, show)} Erzwingen Sie es nicht: Bekanten Sie vor dem Zuschnitt, oder wählen Sie eine andere Maschine.`,
  },
  'panel-past-sheet': {
    pastSheet: ({ panels, cut, board, sheets, grainAlong }, show) =>
      `${und(panels)} ${zahl(panels.length, 'wird', 'werden')} auf ${by(cut, show)} geschnitten, und eine Rohplatte von ${quoted(board)} misst ${oder(sheets.map((sheet) => by(sheet, show)))}${grainAlong ? ', mit der Maserung längs' : ''}. Ändern Sie die Größe, oder wählen Sie einen anderen Plattenwerkstoff.`,
  },
  'row-distance': {
    setback: ({ machine, alone, setback, ...row }, show) =>
      `${theRow(row, show)}; der erste Kopf von ${quoted(machine)} steht zwischen ${show.length(setback.min)} und ${show.length(setback.max)} vom Lineal (\`setback\`). ${alone ? OWN_SET_UP : 'Ändern Sie `row-setback` des Korpus.'}`,
    'one-head': ({ machine, setback, ...row }, show) =>
      `${theRow(row, show)}; ${quoted(machine)} hat einen Kopf (\`heads\`), der zwischen ${show.length(setback.min)} und ${show.length(setback.max)} vom Lineal steht (\`setback\`). Lassen Sie die hintere Reihe weg (\`rows: front\`), oder wählen Sie eine Maschine mit zwei Köpfen (\`machines: rows\`).`,
    distance: ({ machine, alone, behind, heads, apart, ...row }, show) =>
      `${theRow(row, show)}, ${show.length(Math.abs(behind))} ${behind < 0 ? 'vor' : 'hinter'} der vorderen Reihe; die ${heads > 2 ? `${heads} Köpfe` : 'Köpfe'} von ${quoted(machine)} stehen ${apart === null ? 'hintereinander' : `zwischen ${show.length(apart.min)} und ${show.length(apart.max)} auseinander`} (\`head-distance\`). ${alone ? OWN_SET_UP : 'Rücken Sie die Reihe in diesen Bereich (`rear-row`).'}`,
  },
  'row-past-reach': {
    tooDeep: ({ line, panels, at, machine, throat }, show) =>
      `Die ${LINE[line]} Reihe von ${und(panels)} liegt ${show.length(at)} von der Vorderkante; ${quoted(machine)} reicht höchstens ${show.length(throat)} weit (\`throat\`). Rücken Sie die Reihe nach vorn, oder wählen Sie eine Maschine mit größerer Ausladung.`,
  },
  'row-reach': {
    set: ({ at }, show) => `Die vordere Reihe ${show.exact(at)} von der Vorderkante setzen`,
    setUsual: ({ at }, show) => `Die vordere Reihe ${show.exact(at)} von der Vorderkante setzen, den üblichen Abstand`,
    moveRear: ({ at, pitches }, show) =>
      `Die hintere Reihe auf ${show.exact(at)} von der Vorderkante rücken, ${anzahl(pitches, 'Teilung', 'Teilungen')} hinter die vordere`,
    leaveOut: () => 'Die hintere Reihe weglassen',
  },
  'row-unbalanced': {
    unbalanced: ({ panels, offset, rest, length, pitch, machine, more }, show) =>
      `Die Reihen von ${und(panels)} beginnen ${show.exact(offset)} vom unteren Ende und enden ${show.exact(rest)} vom oberen Ende (Länge ${show.exact(length)}, Teilung ${show.nominal(pitch)}), sodass eine Anschlagstellung nicht beiden Enden dient: Das kostet an ${quoted(machine)} ${work(more)} mehr als gleichmäßige Reihen. Ändern Sie \`row-offset\` oder \`height\`.`,
    startAt: ({ offset, instead, shelves }, show) =>
      `Die Reihen ${show.exact(offset)} von den Enden beginnen statt ${show.exact(instead)}${withThem(shelves)}`,
    makeLower: ({ height, by: less }, show) =>
      `Den Korpus ${show.exact(height)} hoch machen, ${show.exact(less)} niedriger`,
    makeHigher: ({ height, by: more }, show) =>
      `Den Korpus ${show.exact(height)} hoch machen, ${show.exact(more)} höher`,
  },
  'rows-not-opposite': {
    apart: ({ left, right }) =>
      `Die Reihen von ${left} und ${right} liegen nicht gegenüber, sodass ein Boden dazwischen nicht waagrecht läge. Der Fehler liegt bei Borewright, nicht bei Ihnen: Bohren Sie diese Platten nicht.`,
  },
  'shelf-off-grid': {
    offGrid: ({ shelf, at, panel, below, above, first, pitch }, show) =>
      `${shelf} liegt bei ${show.exact(at)}, zwischen den Löchern von ${panel} bei ${show.exact(below)} und ${show.exact(above)} (erstes Loch ${show.exact(first)}, Teilung ${show.nominal(pitch)}). Legen Sie den Boden auf eines von beiden.`,
    rowsStart: ({ offset }, show) => `Die Reihen beginnen ${show.exact(offset)} vom unteren Ende.`,
    moveDown: ({ shelf, at, hole }, show) => `${shelf} auf ${show.exact(at)} hinunterlegen (Loch ${hole})`,
    moveUp: ({ shelf, at, hole }, show) => `${shelf} auf ${show.exact(at)} hinauflegen (Loch ${hole})`,
    moveEvery: () => 'Jeden Boden, der neben dem Raster liegt, auf sein nächstes Loch legen',
    align: ({ panels }) => `Die Reihen von ${und(panels)} beginnen lassen, wo die des Korpus beginnen`,
    alignAndMove: ({ panels, shelf, at }, show) =>
      `Die Reihen von ${und(panels)} beginnen lassen, wo die des Korpus beginnen, und ${shelf} auf ${show.exact(at)} legen`,
  },
  'shelf-past-stop': {
    pastStop: ({ line, panels, ways: [near, far], machine, extension, move }, show) =>
      [
        `${line === null ? 'Eine Linie von Bohrungen' : `Die Linie von ${line}`} in ${und(panels)} liegt ${show.length(near.at)} ${FROM[near.end]} und ${show.length(far.at)} ${FROM[far.end]}.`,
        `An ${quoted(machine)} ${reaches(near, extension, show)}, und ${thenReaches(far, extension, show)}.`,
        remedy(near, extension, move, show),
      ].join(' '),
    moveDown: ({ shelf, at, hole }, show) =>
      `${shelf} auf ${show.exact(at)} hinuntersetzen (Loch ${hole}), wohin ein Anschlag reicht`,
    moveUp: ({ shelf, at, hole }, show) =>
      `${shelf} auf ${show.exact(at)} hinaufsetzen (Loch ${hole}), wohin ein Anschlag reicht`,
  },
  'shelf-shut-in': {
    shut: ({ shelf, size, open }, show) =>
      `${shelf} misst ${show.length(size[0])} × ${show.length(size[1])}, und neben der Blende sind ${show.length(open[0])} × ${show.length(open[1])} offen: Er geht weder flach hindurch noch an einer Kante oder einem Ende angehoben. Legen Sie ihn ein, bevor die Blende angeschraubt wird, oder lassen Sie über oder unter ihm mehr Platz.`,
  },
  'shelf-tips': {
    intoCorner: ({ shelves, behind, least }, show) =>
      `${und(shelves)} ${zahl(shelves.length, 'kippt', 'kippen')} in die Ecke: ${zahl(shelves.length, 'Seine', 'Ihre')} Mitte liegt ${show.length(behind)} hinter den Bodenträgern in den beiden Seiten. Geben Sie dem Korpus Rückwände, die mindestens ${show.length(least)} dick sind (\`back: board\`), damit dort eine Lochreihe für einen Bodenträger gebohrt wird.`,
    giveBack: ({ board }) => `Die Rückwände aus ${quoted(board)} machen`,
    tips: ({ shelves, deep, apart, front, rear }, show) =>
      `${und(shelves)} ${zahl(shelves.length, 'kippt', 'kippen')}: Die Bodenträger, ${show.length(front)} und ${show.length(rear)} von der Vorderkante, stehen ${show.length(apart)} auseinander, mindestens die halbe Tiefe von ${show.length(deep)} ist nötig. Rücken Sie die hintere Reihe nach hinten (\`rear-row\`), oder machen Sie den Boden zu einem festen.`,
  },
  reach: {
    only: ({ circumstance }) => `Es zählt nur ${CIRCUMSTANCES[circumstance]}.`,
  },
  'value-unused': {
    here: ({ key, circumstance }) =>
      `\`${key}\` bewirkt hier nichts: Es zählt nur ${CIRCUMSTANCES[circumstance]}. Entfernen Sie es, oder ändern Sie, wovon es abhängt.`,
    inDefaults: ({ key, circumstance }) =>
      `\`${key}\` bewirkt in keinem Korpus dieses Auftrags etwas: Es zählt nur ${CIRCUMSTANCES[circumstance]}. Entfernen Sie es, oder ändern Sie, wovon es abhängt.`,
    remove: ({ key }) => `\`${key}\` entfernen`,
  },
} satisfies Translations;

const OUTER = { top: 'obere', bottom: 'untere' } as const;

const ELSEWHERE = 'Ändern Sie die Größe, oder wählen Sie eine andere Maschine.';
const parity = (count: number): string => (count % 2 === 0 ? 'gerade' : 'ungerade');
const withThem = (shelves: readonly string[]): string =>
  shelves.length === 0 ? '' : `; ${und(shelves)} ${zahl(shelves.length, 'rückt', 'rücken')} mit`;

const OWN_SET_UP = 'Die Reihe lässt sich nur in einer eigenen Rüstung bohren.';
interface RowTold {
  readonly line: keyof typeof LINE;
  readonly panels: readonly string[];
  readonly at: number;
}
const theRow = ({ line, panels, at }: RowTold, show: Show): string =>
  `Die ${LINE[line]} Reihe von ${und(panels)} liegt ${show.length(at)} von der Vorderkante`;

const comesDown = ({
  panels,
  machine,
  held,
}: {
  readonly panels: readonly string[];
  readonly machine: string;
  readonly held: string;
}): string =>
  held === 'not'
    ? `Kein Niederhalter von ${quoted(machine)} kommt auf ${und(panels)} auf`
    : `Die Niederhalter von ${quoted(machine)} kommen auf ${und(panels)} nur zum Teil auf`;

interface Misses {
  readonly doors: readonly string[];
  readonly uprights: readonly string[];
  readonly overlay: number;
  readonly hinge: string;
  readonly reaches: { readonly min: number; readonly max: number };
}
const missed = ({ doors, uprights, overlay, hinge, reaches: { min, max } }: Misses, show: Show): string =>
  `${und(doors)} ${zahl(doors.length, 'soll', 'sollen')} ${overlay >= 0 ? `${und(uprights)} um ${show.length(overlay)} überdecken` : `${show.length(-overlay)} neben ${und(uprights)} hängen`}; ${quoted(hinge)} bringt mit den genannten Armen und Montageplatten eine Tür zwischen ${show.length(min)} und ${show.length(max)} darüber.`;
const tall = ({ min, max }: { readonly min: number; readonly max: number }, show: Show): string =>
  min === max ? show.length(min) : `zwischen ${show.length(min)} und ${show.length(max)}`;

const lacks = ({
  shelves,
  lines,
  sides,
}: {
  readonly shelves: readonly string[];
  readonly lines: readonly (keyof typeof LINE)[];
  readonly sides: readonly string[];
}): string =>
  `${und(shelves)} ${zahl(shelves.length, 'hat', 'haben')} an ${und(sides)} keine ${und(lines.map((line) => LINE[line]))} Lochreihe`;

interface OffPins {
  readonly shelf: string;
  readonly reach: { readonly min: number; readonly max: number };
  readonly line: keyof typeof LINE;
  readonly side: string;
  readonly at: number;
}
const offPins = ({ shelf, reach, line, side, at }: OffPins, show: Show): string =>
  `${shelf} reicht von ${show.span(reach)} hinter der Vorderseite und liegt nicht auf seinen ${LINE[line]}n Bodenträgern, die in ${side} bei ${show.length(at)} stehen.`;

interface OutOfRange {
  readonly panels: readonly string[];
  readonly size: number;
  readonly what: keyof typeof MEASURES;
  readonly machine: string;
  readonly range: { readonly min: number; readonly max: number };
}
const MEASURES = {
  length: 'Die Länge',
  width: 'Die Breite',
  thickness: 'Die Dicke',
  edge: 'Die Länge einer bekanteten Kante',
  across: 'Die Breite quer zu einer bekanteten Kante',
  band: 'Die Dicke eines Kantenbands',
} as const;
const outOfRange = ({ panels, size, what, machine, range: { min, max } }: OutOfRange, show: Show): string =>
  `${MEASURES[what]} von ${und(panels)} ist ${show.length(size)}; ${quoted(machine)} nimmt ${max === Infinity ? `mindestens ${show.length(min)}` : `${show.length(min)} bis ${show.length(max)}`}.`;

const by = (size: readonly (number | null)[], show: Show): string =>
  size
    .filter((side) => side !== null)
    .map((side) => show.length(side))
    .join(' × ');

interface Way {
  readonly at: number;
  readonly hand: keyof typeof HAND;
  readonly stops: number;
  readonly reach: number | null;
}
function reaches({ hand, stops, reach }: Way, extension: number, show: Show): string {
  if (reach === null) return `gibt es ${HAND[hand]} keinen Anschlag`;
  return `${zahl(stops, 'reicht', 'reichen')} ${theStops({ hand, stops })} ${far(reach, extension, show)}`;
}
/** Dasselbe als zweiter Hauptsatz. */
function thenReaches({ hand, stops, reach }: Way, extension: number, show: Show): string {
  if (reach === null) return `${HAND[hand]} gibt es keinen Anschlag`;
  return `${theStops({ hand, stops })} ${zahl(stops, 'reicht', 'reichen')} ${far(reach, extension, show)}`;
}
const theStops = ({ hand, stops }: Pick<Way, 'hand' | 'stops'>): string =>
  `${zahl(stops, 'der Anschlag', `die ${stops} Anschläge`)} ${HAND[hand]}`;
const far = (reach: number, extension: number, show: Show): string =>
  `${show.length(reach)} weit${extension === 0 ? '' : ` (${show.length(reach + extension)} mit der Verlängerung)`}`;
const GIVE = {
  nearer: 'Rücken Sie sie näher an ein Ende, oder geben Sie',
  farther: 'Rücken Sie sie weiter vom Ende weg, oder geben Sie',
  none: 'Geben Sie',
} as const;

function remedy({ at, hand, reach }: Way, extension: number, move: 'nearer' | 'farther' | null, show: Show): string {
  const past = reach === null ? 0 : at - reach;
  return past > extension
    ? `${GIVE[move ?? 'none']} der Maschine eine Verlängerung von ${show.length(past)} oder einen Anschlag, der ${show.length(at)} weit reicht.`
    : `${GIVE[move ?? 'none']} der Maschine ${HAND[hand]} einen Anschlag, dessen Bereich ${show.length(at)} enthält.`;
}
