import type { Translations } from '../tables.js';
import { anzahl, noun, oder, quoted, und, zahl } from './words.js';

const columns = (count: number): string => anzahl(count, 'Spalte', 'Spalten');
const millions = (length: number): string => String(Math.round(length / 100_000) / 10);
const HOW =
  'Schreiben Sie `carcasses:` und darunter, zwei Leerzeichen eingerückt, einen Namen mit Doppelpunkt und die Schlüssel `kind` und `width`.';

/** Was am Text einer Datei zu sagen ist, ehe ihre Werte gelesen werden. */
export const text = {
  text: {
    fileTooLong: ({ length, most }) =>
      `Die Datei ist ${millions(length)} Millionen Zeichen lang; höchstens ${millions(most)} Millionen sind möglich. Teilen Sie sie in mehrere Aufträge.`,
    partTooLong: ({ length, most }) =>
      `Dieser Text ist ${millions(length)} Millionen Zeichen lang; höchstens ${millions(most)} Millionen sind möglich. Teilen Sie die Datei.`,
    tooManyCarcasses: ({ carcasses, most, isUnlike }) =>
      `Der Auftrag hat ${carcasses} ${isUnlike ? 'verschiedene ' : ''}Korpusse; höchstens ${most} sind möglich. Teilen Sie die Datei: Ab hier wird kein Korpus gelesen.`,
    beyondMeasure: () =>
      'Dieser Text lässt sich nicht als YAML lesen, weil er zu viel verschachtelt oder wiederholt. Schreiben Sie ihn schlicht.',
    tooDeep: ({ most }) =>
      `Listen und Schlüssel sind hier mehr als ${most} Ebenen tief verschachtelt. Entfernen Sie einige Ebenen.`,
    tooManyMarks: ({ most }) =>
      `Die Datei hat mehr als ${most} Werte mit &, * oder !. Schreiben Sie die Werte aus, und setzen Sie Texte in Anführungszeichen.`,
    tooManyAliases: ({ most }) =>
      `Mit diesem Verweis steht die Datei für mehr als ${most} Werte. Nehmen Sie weniger Verweise.`,
    aliasUnknown: ({ name }) =>
      `*${name} benennt nichts. Schreiben Sie &${name} vor den Wert, für den es steht, über dieser Zeile.`,
    aliasInItself: ({ name }) =>
      `*${name} steht in dem Wert, den es benennt, und käme nie zu einem Ende. Schreiben Sie den Wert aus.`,
    carcassNameless: () =>
      'Der Korpus hat keinen Namen. Schreiben Sie einen Namen und einen Doppelpunkt, etwa `sink:`.',
    keyNotPlain: () =>
      'Ein Schlüssel ist ein Wort oder einige Wörter auf einer Zeile. Schreiben Sie ihn wie `width: 600`, ohne Klammern, & oder *.',
    tabIndent: () => 'Diese Zeile ist mit einem Tabulator eingerückt. Nehmen Sie für jede Stufe zwei Leerzeichen.',
    spaceMissing: ({ key, value }) => `Nach dem Doppelpunkt fehlt ein Leerzeichen. Schreiben Sie \`${key}: ${value}\`.`,
    colonMissing: ({ key, value }) => `Nach \`${key}\` fehlt ein Doppelpunkt. Schreiben Sie \`${key}: ${value}\`.`,
    twoColons: ({ key }) =>
      `Diese Zeile hat zwei Doppelpunkte. Setzen Sie den Wert von \`${key}\` in Anführungszeichen, oder das innere \`key: value\` auf eine eigene Zeile.`,
    dashAmongKeys: ({ key }) =>
      `Diese Zeile beginnt mit einem Strich wie ein Eintrag einer Liste, steht aber neben dem Schlüssel \`${key}\`. Beginnen Sie sie mit einem Namen oder einem Schlüssel und einem Doppelpunkt, etwa \`name:\`.`,
    tooFarIn: ({ columns: by, key }) =>
      `Diese Zeile ist weiter eingerückt als die darüber, die schon einen Wert hat. Beginnen Sie sie ${columns(by)} weiter links, unter \`${key}\`.`,
    belowValue: ({ columns: by, key, value, kindKey }) =>
      [
        `\`${key}\` hat auf seiner Zeile schon den Wert ${quoted(value)}, darum kann kein Schlüssel darunter stehen.`,
        key === kindKey
          ? `Beginnen Sie diese Zeile ${columns(by)} weiter links.`
          : `Schreiben Sie \`${kindKey}: ${value}\` auf eine Zeile darunter, wenn \`${key}\` ein Korpus ist, oder beginnen Sie diese Zeile ${columns(by)} weiter links.`,
      ].join(' '),
    betweenColumns: ({ columns: by, deeper, outer }) =>
      `Diese Zeile beginnt ${columns(by)} links von \`${deeper}\`, aber rechts von \`${outer}\`, gehört also zu keinem von beiden. Beginnen Sie sie unter \`${deeper}\`, oder unter \`${outer}\`, wenn sie für sich steht.`,
    quoteOpen: () => 'Ein schließendes Anführungszeichen fehlt. Setzen Sie es, wo der Text endet.',
    bracketOpen: () =>
      'Eine Klammer, die vorher geöffnet wurde, ist nicht geschlossen. Setzen Sie die fehlende ] oder }.',
    commaBetween: () => 'Zwischen zwei Werten fehlt hier ein Komma.',
    colonUnspaced: () => 'Nach dem Doppelpunkt fehlt ein Leerzeichen.',
    commaOrColon: () => 'Hier fehlt ein Komma oder ein Doppelpunkt.',
    remarkUnspaced: () =>
      'Vor einem #, das einen Kommentar beginnt, steht ein Leerzeichen. Setzen Sie den Wert in Anführungszeichen, wenn das # zu ihm gehört.',
    colonAfterKey: () => 'Nach einem Schlüssel steht ein Doppelpunkt. Schreiben Sie ihn wie `width: 600`.',
    dashMissing: () => 'Diese Zeile hat keinen Strich, oder sie ist anders eingerückt als die Einträge darüber.',
    markUnspaced: () => 'Nach einem Namen mit & oder einer Marke mit ! fehlt ein Leerzeichen.',
    instruction: () =>
      'Eine Zeile, die mit % beginnt, ist eine Anweisung an den YAML-Leser und wird hier nicht gebraucht. Entfernen Sie sie.',
    blockLine: () =>
      'Auf der Zeile eines | oder > kann nichts weiter stehen. Schreiben Sie den Text eingerückt auf die Zeilen darunter.',
    valueBetween: () => 'Zwischen zwei Kommas fehlt ein Wert.',
    commaTooMany: () => 'Hier steht ein Komma zu viel.',
    aliasUnnamed: () =>
      'Ein Verweis ist ein * und ein Name ohne Leerzeichen. Schreiben Sie den Wert aus, oder setzen Sie ihn in Anführungszeichen.',
    escapeUnknown: () =>
      'Ein umgekehrter Schrägstrich zwischen doppelten Anführungszeichen leitet ein Sonderzeichen ein, aber dieses gibt es nicht. Schreiben Sie ihn zweimal, oder nehmen Sie einfache Anführungszeichen.',
    notAligned: () =>
      'Diese Zeile ist nicht wie die neben ihr eingerückt. Beginnen Sie zusammengehörige Schlüssel in derselben Spalte.',
    startsOddly: () => 'Ein Wert kann nicht mit diesem Zeichen beginnen. Setzen Sie ihn in Anführungszeichen.',
    blockInValue: () =>
      'In diesem Wert beginnt ein Schlüssel, ein Listenpunkt oder ein Fragezeichen. Setzen Sie ihn auf eine eigene Zeile, oder den Wert in Anführungszeichen.',
    blockInBrackets: () =>
      'Eine Liste mit Strichen oder eingerückte Schlüssel können nicht in [ ] oder { } stehen. Trennen Sie die Werte mit Kommas.',
    keyTooLong: () =>
      'Dieser Schlüssel ist viel zu lang. Suchen Sie nach einem fehlenden Anführungszeichen oder Doppelpunkt.',
    signMissing: () =>
      'Hier fehlt ein Doppelpunkt, ein Komma, ein Leerzeichen, ein schließendes Anführungszeichen oder eine Klammer.',
    keyOverLines: () =>
      'Ein Schlüssel steht auf einer Zeile, mit einem Doppelpunkt danach. Schreiben Sie ihn wie `width: 600`.',
    twoAnchors: () => 'Ein Wert kann nur einen Namen mit & haben.',
    twoDocuments: () => 'Nach --- beginnt hier ein zweites Dokument. Lassen Sie in einer Datei nur eines.',
    twoTags: () => 'Ein Wert kann nur eine Marke mit ! haben, und hier braucht er keine.',
    tabForSpaces: () => 'Ein Tabulator kann keine Zeile einrücken. Nehmen Sie Leerzeichen.',
    unexpected: () =>
      'Das kann hier nicht stehen. Prüfen Sie die Einrückung, und suchen Sie nach einem fehlenden Doppelpunkt, Anführungszeichen oder einer Klammer.',
    notYaml: () => 'Das ist kein richtiges YAML. Prüfen Sie Einrückung, Doppelpunkte, Anführungszeichen und Klammern.',
    withoutTabs: () => 'Mit Leerzeichen einrücken, zwei für jeden Tabulator',
    addSpace: () => 'Ein Leerzeichen nach dem Doppelpunkt setzen',
    addColon: () => 'Einen Doppelpunkt nach dem Schlüssel setzen',
    addQuotes: () => 'Den Wert in Anführungszeichen setzen',
    indentLikeAbove: () => 'Wie die Zeile darüber einrücken',
    indentLike: ({ key }) => `Wie \`${key}\` einrücken`,
    writeBelow: ({ text: words, key }) => `${words} unter ${key} schreiben`,
  },
  'nothing-yet': {
    nothing: () => `Hier steht noch nichts. ${HOW} Eine Schnellkorrektur schreibt einen Auftrag zum Anfangen.`,
    noCarcasses: () => `Der Auftrag hat noch keinen Korpus. ${HOW}`,
    beginMm: () => 'Mit einem Auftrag in Millimetern anfangen',
    beginIn: () => 'Mit einem Auftrag in Zoll anfangen',
    beginCarcass: () => 'Mit einem Unterschrank anfangen',
  },
  'job-text': {
    carcassesNotNamed: () => `Jeder Korpus braucht einen Namen. ${HOW}`,
    keyTwice: ({ key }) => `${quoted(key)} steht zweimal da; nur das erste zählt. Entfernen Sie dieses.`,
    keyFirst: ({ key }) => `${quoted(key)} steht zuerst hier.`,
    removeThisKey: ({ key }) => `Dieses ${quoted(key)} entfernen`,
    nameTwice: ({ name }) =>
      `Zwei Korpusse heißen ${quoted(name)}, sodass ihre Platten nicht zu unterscheiden sind. Geben Sie diesem einen anderen Namen.`,
    nameFirst: ({ name }) => `${quoted(name)} ist zuerst hier vergeben.`,
    placeTwice: ({ place }, show) =>
      `${show.exact(place)} steht schon in dieser Liste, und dort wird nur einmal gebohrt. Entfernen Sie es, oder schreiben Sie eine andere Stelle.`,
    removeSecond: ({ place }, show) => `Das zweite ${show.exact(place)} entfernen`,
    outsideOwner: ({ key, owner }) =>
      `\`${key}\` beginnt in derselben Spalte wie \`${owner}\`, wo die Namen der Korpusse stehen. Schreiben Sie es in \`${owner}\` hinein.`,
    notIndented: ({ key, owner, lines, by }) =>
      `${zahl(lines, `Die Zeile von \`${key}\` gehört zu \`${owner}\`, beginnt aber`, `Die ${lines} Zeilen ab \`${key}\` gehören zu \`${owner}\`, beginnen aber`)} in derselben Spalte. Rücken Sie sie um ${columns(by)} weiter ein.`,
    indent: ({ by }) => `Um ${columns(by)} weiter einrücken`,
    noNameAbove: ({ key, name }) =>
      `\`${key}\` steht, wo der Name eines Korpus hingehört. Schreiben Sie einen Namen und einen Doppelpunkt, etwa \`${name}:\`, auf eine Zeile darüber, und rücken Sie die Schlüssel des Korpus um zwei Spalten ein.`,
    nameThem: ({ names }) => `Mit ${und(names)} benennen`,
    nameIt: ({ name }) => `Mit ${name} benennen`,
    kindBesideName: (below) =>
      `${besideName(below)} Schreiben Sie \`kind: ${below.value}\` unter den Namen, und rücken Sie das und ${those(below)} um zwei Spalten ein.`,
    kindBelow: ({ key, value }) => `kind: ${value} unter ${key} schreiben`,
    valueBesideName: (below) =>
      `${besideName(below)} Entfernen Sie den Wert, und rücken Sie ${those(below)} um zwei Spalten ein.`,
    removeValue: ({ value, lines }) => `${value} entfernen und ${those({ lines })} einrücken`,
  },
  'shop-empty': {
    nothing: () =>
      'Hier steht noch nichts; ein Auftrag bekommt also alles von der eingebauten Werkstatt. Beschreiben Sie Ihre Plattenwerkstoffe, Kantenbänder, Verbinder und Maschinen. Eine Schnellkorrektur schreibt eine Werkstatt zum Anfangen.',
    beginMm: () => 'Mit einer kleinen Werkstatt in Millimetern anfangen',
    beginIn: () => 'Mit einer kleinen Werkstatt in Zoll anfangen',
    beginNeutral: () => 'Mit der eingebauten Werkstatt anfangen, ausgeschrieben',
  },
  'label-sheet': {
    beyondPage: ({ labels, along, reach, page }, show) =>
      `${labels} Etiketten reichen ${along === 'across' ? 'quer' : 'längs'} ${show.exact(reach)} weit, und das Blatt ist ${show.exact(page)} ${along === 'across' ? 'breit' : 'hoch'}. Schreiben Sie die Maße Ihrer Etikettenbogen; bis dahin gilt der eingebaute Bogen.`,
  },
  shop: {
    unknown: (one) => `${quoted(one.name)} gibt es in der Werkstatt nicht (${sort(one.sort)}). ${known(one)}`,
    usualUnknown: (one) =>
      `Das in der Werkstatt Übliche (${sort(one.sort)}), ${quoted(one.name)}, steht nicht in der Werkstattdatei. ${known(one)}`,
    otherKind: ({ kind, ...one }) =>
      `${quoted(one.name)} ist ${noun(MACHINES[kind]).a}; gebraucht wird: ${sort(one.sort)}. ${known(one)}`,
    usualMissing: ({ habit, taken }) =>
      `Die Werkstattdatei sagt nicht, was üblich ist (${HABITS[habit]}); genommen wird ${quoted(taken)}. Schreiben Sie \`${habit}\` unter \`habits\`.`,
    twice: ({ name, sort: of }) =>
      `${quoted(name)} heißt hier schon etwas (${noun(of).bare}). Geben Sie diesem einen anderen Namen.`,
    sheetLikeBoard: ({ name }) =>
      `So heißt schon die übliche Rohplatte von ${quoted(name)}; diese wird nicht gezählt. Geben Sie ihr einen anderen Namen.`,
    first: ({ name }) => `${quoted(name)} ist zuerst hier vergeben.`,
    use: ({ name }) => `${quoted(name)} nehmen`,
    addHabit: ({ habit, name }) => `${habit}: ${name} zu den Gewohnheiten hinzufügen`,
  },
  'value-unused-in-shop': {
    nothing: ({ key }) => `\`${key}\` bewirkt noch nichts: Jede Rüstung hat eine Tiefe, was der Revolver auch fasst.`,
    nothingYet: () => 'Das bewirkt noch nichts: Jede Rüstung hat eine Tiefe, was der Revolver auch fasst.',
    notShared: ({ key }) =>
      `\`${key}\` bewirkt hier nichts: Es zählt nur mit \`share-places: yes\`. Schreiben Sie auch das, oder entfernen Sie \`${key}\`.`,
    share: () => 'Stellen mit `share-places: yes` teilen',
    remove: ({ key }) => `\`${key}\` entfernen`,
  },
} satisfies Translations;

interface Below {
  readonly key: string;
  readonly value: string;
  readonly lines: number;
}
const besideName = ({ key, value, lines }: Below): string =>
  `\`${key}\` hat auf seiner Zeile den Wert ${quoted(value)} und ${zahl(lines, 'seinen Schlüssel', 'seine Schlüssel')} in derselben Spalte.`;
const those = ({ lines }: Pick<Below, 'lines'>): string =>
  zahl(lines, 'die Zeile darunter', `die ${lines} Zeilen darunter`);

export const MACHINES = {
  vertical: 'vertical head',
  horizontal: 'horizontal head',
  line: 'line drill',
  cup: 'cup borer',
  saw: 'panel saw',
  bander: 'edge bander',
  clamp: 'case clamp',
} as const;
export const FITTINGS = { dowel: 'dowel', screw: 'connector screw', cam: 'cam fitting' } as const;
const HABITS = {
  board: 'Plattenwerkstoff',
  'back-board': 'Plattenwerkstoff der Rückwände',
  band: 'Kantenband',
  joint: 'Verbinder',
  hinge: 'Topfband',
  slide: 'Auszug',
  pull: 'Griff',
  bracket: 'Aufhänger',
  'wardrobe-rail': 'Kleiderstange',
  foot: 'Fuß',
  angle: 'Winkel',
} as const;

type Sort = string | { readonly fitting: keyof typeof FITTINGS } | { readonly machine: keyof typeof MACHINES };
const englishOf = (one: Sort): string =>
  typeof one === 'string' ? one : 'machine' in one ? MACHINES[one.machine] : FITTINGS[one.fitting];
const sort = (one: Sort): string => noun(englishOf(one)).bare;
const known = ({ sort: of, known: names }: { readonly sort: Sort; readonly known: readonly string[] }): string =>
  names.length === 0
    ? `Nehmen Sie es in die Werkstattdatei auf: ${sort(of)}.`
    : `Nehmen Sie ${oder(names.map(quoted))}.`;
