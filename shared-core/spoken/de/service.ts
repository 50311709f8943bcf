import { showSizes } from '../../length/show.js';
import type { Translations } from '../tables.js';
import { anzahl, fromEnd, holesTold, LINE, lineOf, noun, und, zahl, zeit } from './words.js';

/** Was auf Fragen nach einer Stelle der Datei zu sagen ist. */
export const service = {
  file: {
    titled: ({ paper, job }) => `${paper}: ${job}`,
    withErrors: ({ errors }) =>
      `Der Auftrag hat ${errors} Fehler: nicht zuschneiden und nicht bohren, bevor ${errors === 1 ? 'er behoben ist' : 'sie behoben sind'}. Der Editor und borewright check führen ${errors === 1 ? 'ihn' : 'sie'} auf.`,
    findingTotals: ({ files, errors, warnings, infos }) =>
      `${[
        anzahl(files, 'Datei', 'Dateien'),
        `${errors} Fehler`,
        anzahl(warnings, 'Warnung', 'Warnungen'),
        ...(infos > 0 ? [anzahl(infos, 'Hinweis', 'Hinweise')] : []),
      ].join(', ')}.`,
    noMachine: () => 'keine Maschine',
    carcassTotals: ({ panels, bores, strokes, setUps }) =>
      [
        anzahl(panels, 'Platte', 'Platten'),
        anzahl(bores, 'Bohrung', 'Bohrungen'),
        anzahl(strokes, 'Hub', 'Hübe'),
        anzahl(setUps, 'Rüstung', 'Rüstungen'),
      ].join(' · '),
    planTotals: ({ setUps, seconds }) => `${anzahl(setUps, 'Rüstung', 'Rüstungen')} · Umstellungen ${zeit(seconds)}`,
    shopHasNoBores: () =>
      'Eine Werkstattdatei hat selbst keine Bohrungen. Öffnen Sie eine Auftragsdatei (NAME.carcass.yaml).',
    shopHasNoSetUps: () =>
      'Eine Werkstattdatei hat selbst keine Rüstungen. Öffnen Sie eine Auftragsdatei (NAME.carcass.yaml).',
    notDrawnYet: ({ fault }, show) => `Noch lässt sich nichts zeichnen: ${show.tell(fault)}`,
    notPlannedYet: ({ fault }, show) => `Noch lässt sich nichts planen: ${show.tell(fault)}`,
    noCarcasses: () =>
      'Dieser Auftrag hat noch keinen Korpus. Schreiben Sie einen unter `carcasses:`, mit `kind` und `width`.',
    nothingBored: ({ carcasses }) => `In ${und(carcasses)} wird nichts gebohrt.`,
    panelRefused: () => 'Ihre Bohrungen haben Fehler; berichtigen Sie diese zuerst.',
    noPanelNow: ({ carcass, panel }) => `Der Auftrag hat keine Platte „${panel}“ in einem Korpus „${carcass}“ mehr.`,
    noStepNow: ({ setUp, carcass, panel, step }) =>
      `Rüstung ${setUp} hat keinen Schritt ${step} für ${carcass}, ${panel} mehr.`,
    placeBroken: ({ name }) =>
      `Der Text ist dort fehlerhaft, wo „${name}“ stand; dies ist die letzte gute Zeichnung davon.`,
    carcassBroken: ({ name }) =>
      `Der Text von „${name}“ lässt sich so nicht berechnen; dies ist die letzte gute Zeichnung davon.`,
  },
  'shop-line': {
    faulty: ({ of }) => `${noun(of).bare} mit einem Fehler in der Werkstattdatei`,
    board: ({ thickness, nominal, sheet, hasGrain }, show) =>
      [
        'Plattenwerkstoff',
        `${show.exact(thickness)} dick${thickness === nominal ? '' : ` gemessen, ${show.exact(nominal)} Nennmaß`}`,
        ...(sheet === null ? [] : [`Rohplatte ${show.exact(sheet.length)} × ${show.exact(sheet.width)}`]),
        ...(hasGrain ? ['Maserung längs'] : []),
      ].join(', '),
    band: ({ thickness, height }, show) =>
      `Kantenband, ${show.exact(thickness)} dick${height === null ? '' : `, ${show.exact(height)} breit gekauft`}`,
    slide: ({ lengths: long, rating }, show) =>
      `Auszug, ${und(long.map((one) => show.nominal(one)))} lang, für ${rating} kg`,
    hinge: ({ cupDiameter, distance }, show) =>
      `Topfband, Topf Ø ${show.nominal(cupDiameter)}, ${show.span(distance)} von der Kante`,
    pull: ({ spacing, diameter }, show) =>
      spacing === 0
        ? `Knopf, Bohrung Ø ${show.nominal(diameter)}`
        : `Griff, Bohrungen Ø ${show.nominal(diameter)}, ${show.nominal(spacing)} auseinander`,
    bracket: ({ diameter, holes, rating }, show) =>
      `Aufhänger, ${anzahl(holes.length, 'Bohrung', 'Bohrungen')} Ø ${show.nominal(diameter)}${rating === null ? '' : `, ein Paar trägt ${rating} kg`}`,
    wardrobeRail: ({ width, height }, show) => `Kleiderstange, ${show.exact(width)} × ${show.exact(height)}`,
    foot: ({ range, rating }, show) => `Fuß, ${show.span(range)}${rating === null ? '' : `, trägt ${rating} kg`}`,
    angle: ({ diameter, spacing }, show) =>
      `Winkel, ${spacing === 0 ? 'eine Schraube' : `zwei Schrauben im Abstand von ${show.nominal(spacing)}`} je Schenkel, Bohrungen Ø ${show.nominal(diameter)}`,
    oneHead: ({ kind, spindles, pitch }, show) =>
      `${noun(kind).bare}, ${anzahl(spindles, 'Spindel', 'Spindeln')} alle ${show.nominal(pitch)}`,
    manyHeads: ({ kind, heads, spindles, pitch }, show) =>
      `${noun(kind).bare}, ${anzahl(heads, 'Kopf', 'Köpfe')} mit ${anzahl(spindles, 'Spindel', 'Spindeln')} alle ${show.nominal(pitch)}`,
    cup: ({ kind, distance }, show) =>
      `${noun(kind).bare}, ${show.exact(distance.min)} bis ${show.exact(distance.max)} von der Kante`,
    saw: ({ kind, kerf }, show) => `${noun(kind).bare}, Schnittfuge ${show.exact(kerf)}`,
    carcass: ({ kind, size }) => `Korpus der Art ${kind}, ${size}`,
    carcassUnread: () => 'Korpus mit eigenen Fehlern',
  },
  offer: {
    required: () => 'muss dastehen',
    withMore: ({ noun: of }) => `${noun(of).a} mit mehr Angaben`,
    nextItem: () => 'noch ein Eintrag dieser Liste',
    listBelow: () => 'eine Liste, jeder Eintrag auf einer Zeile',
    listOnOneLine: () => 'eine Liste auf einer Zeile',
    panel: () => 'eine Platte',
    anew: ({ noun: of }) => `neu: ${noun(of).bare}`,
    bare: () => 'die Kante bleibt unbekantet',
    unhung: () => 'keine Bohrungen für Bänder',
    unbracketed: () => 'keine Bohrungen für Aufhänger',
    unfooted: () => 'keine Bohrungen für Füße',
    unangled: () => 'keine Bohrungen für Winkel',
    unpulled: () => 'kein Griff',
    onGrid: ({ hole, of }) => `Loch ${hole} von ${of}, auf dem Raster`,
  },
  hint: {
    holes: ({ numbers }) => `${zahl(numbers.length, 'Loch', 'Löcher')} ${und(numbers)}`,
    counted: () => 'Vom unteren Ende der Platte gezählt, die die Reihe hat.',
    carcass: ({ count, kind, size }, { reader }) =>
      `${count === 1 ? '' : `${count} × `}${kind} ${showSizes(size, reader)}`,
  },
  hover: {
    finished: (_, { unit }) => `Fertigmaß, ${unit}`,
    toCut: (_, { unit }) => `Zuschnitt, ${unit}`,
    notWorkedOut: () =>
      'Die Platten dieses Korpus lassen sich nicht berechnen, solange sein Text oder seine Werkstattdatei Fehler hat.',
    pins: ({ holes }) => `Seine Bodenträger stecken in ${holesTold(holes)}, vom unteren Ende gezählt.`,
    pinsOf: ({ panel, holes }) => `- ${panel}: ${holesTold(holes)}, vom unteren Ende gezählt.`,
    pinHoles: ({ holes }) => holesTold(holes),
    onMachines: ({ strokes, setUps }) =>
      `**An den Maschinen:** ${anzahl(strokes, 'Hub', 'Hübe')} in ${anzahl(setUps, 'Rüstung', 'Rüstungen')}.`,
    carcass: ({ name, count, kind, size, wings, plinth, panels, bores }, show) => {
      const many = count === 1 ? '' : `${count} gleiche davon; `;
      const across = wings === null ? '' : `, über Eck mit ${show.exact(wings)} tiefen Flügeln`;
      const on = plinth > 0 ? `, auf einem Sockel von ${show.exact(plinth)}` : '';
      return `**${name}**: ${many}Korpus der Art ${kind}, außen ${showSizes(size, show.reader)}, ohne Sockel und Fronten${across}${on}; ${anzahl(panels, 'Platte', 'Platten')}, ${anzahl(bores, 'Bohrung', 'Bohrungen')}.`;
    },
    panel: ({ panel, board, size, cut, banded }, { reader }) =>
      `**${panel}**: ${board}, Fertigmaß ${showSizes(size, reader)}, Zuschnitt ${showSizes(cut, reader)}${banded === null ? ', keine Kante bekantet' : `; bekantet: ${banded}`}.`,
    nothingBored: () => 'Darin wird nichts gebohrt.',
    joined: ({ panels, fitting }) => `Mit ${panels} durch ${fitting} verbunden.`,
    row: ({ panel, line, count, diameter, pitch, u, first, last, balanced }, show) =>
      `- ${panel}, ${LINE[line]} Reihe: ${anzahl(count, 'Loch', 'Löcher')} Ø ${show.nominal(diameter)} alle ${show.nominal(pitch)}, ${show.exact(u)} von der Vorderkante; erstes Loch ${show.exact(first.at)} ${fromEnd(first.end)}, letztes ${show.exact(last.at)} ${fromEnd(last.end)}: ${balanced ? 'gleichmäßig' : 'nicht gleichmäßig'}.`,
    more: ({ count }) => `… und ${count} weitere.`,
    stop: ({ stop, at }, show) => `${stop} ${show.exact(at)}`,
    layAt: ({ lay, at }, show) => `${lay}, ${show.exact(at)}`,
    depth: ({ depth, through, height }, show) =>
      `${through ? 'durch, ' : ''}${show.exact(depth)}${height === null ? '' : ` in ${show.exact(height)} Höhe`}`,
    rowStrokes: ({ panel, lines, strokes, machine, stops, depth, through, setUps, bits, moves, centred }, show) => {
      const rows = `${und(lines.map(lineOf))} Reihe`;
      const at = und([...new Set(stops.map((stop) => `${stop.name} auf ${show.exact(stop.at)}`))]);
      const lengths = [...new Set(moves.map(show.exact))];
      const each = lengths.length < moves.length ? 'je ' : '';
      const made = [
        `${anzahl(strokes, 'Hub', 'Hübe')} an ${machine}, ${at}, ${depth}${through ? '' : ' tief'}${setUps.length === 0 ? '' : ` (${setUps.join(', ')})`}`,
        bits.join(', dann '),
        moves.length === 0
          ? 'kein Weiterrücken'
          : `${anzahl(moves.length, 'Weiterrücken', 'Weiterrücken')} um ${each}${und(lengths)}`,
        centred ? 'mittig' : 'nicht mittig',
      ];
      return `- ${panel}, ${rows}: ${made.join('; ')}.`;
    },
    tolerance: ({ joints, worst, open }, { unit }) => {
      const names = { front: 'Vorderkante', step: 'Außenfläche', gap: 'Fuge' };
      const parts = worst.map((one) => `${names[one.of]} ${one.likely} (${one.worst}) ${unit}`);
      const closing =
        open === 0
          ? ''
          : ` ${anzahl(open, 'Verbindung schließt', 'Verbindungen schließen')} mit dem Spiel der Dübel vielleicht nicht.`;
      return `Mit den Toleranzen der Werkstatt ${joints === 1 ? 'fällt die Verbindung' : `fallen die ${joints} Verbindungen`} in diese Grenzen, meist (schlimmstenfalls): ${parts.join(', ')}.${closing}`;
    },
  },
} satisfies Translations;
