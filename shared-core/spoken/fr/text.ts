import type { Translations } from '../tables.js';
import { compte, et, nombre, noun, ou, quoted } from './words.js';

const columns = (count: number): string => compte(count, 'colonne');
const millions = (length: number): string => String(Math.round(length / 100_000) / 10);
const HOW =
  'Écrivez `carcasses:` et dessous, en retrait de deux espaces, un nom suivi d’un deux-points et les clés `kind` et `width`.';

/** Ce qu’il y a à dire du texte d’un fichier, avant que ses valeurs soient lues. */
export const text = {
  text: {
    fileTooLong: ({ length, most }) =>
      `Le fichier a ${millions(length)} millions de caractères ; le maximum est ${millions(most)} millions. Partagez-le en plusieurs travaux.`,
    partTooLong: ({ length, most }) =>
      `Ce texte a ${millions(length)} millions de caractères ; le maximum est ${millions(most)} millions. Partagez le fichier.`,
    tooManyCarcasses: ({ carcasses, most, isUnlike }) =>
      `Le travail a ${carcasses} caissons${isUnlike ? ' différents' : ''} ; le maximum est ${most}. Partagez le fichier : les caissons à partir d’ici ne sont pas lus.`,
    beyondMeasure: () =>
      'Ce texte ne peut être lu comme YAML, car il s’imbrique ou se répète trop. Écrivez-le simplement.',
    tooDeep: ({ most }) => `Ici, listes et clés s’imbriquent à plus de ${most} niveaux. Retirez quelques niveaux.`,
    tooManyMarks: ({ most }) =>
      `Le fichier a plus de ${most} valeurs avec &, * ou !. Écrivez les valeurs en entier, et mettez les textes entre guillemets.`,
    tooManyAliases: ({ most }) =>
      `Avec ce renvoi, le fichier représente plus de ${most} valeurs. Prenez moins de renvois.`,
    aliasUnknown: ({ name }) =>
      `*${name} ne nomme rien. Écrivez &${name} devant la valeur dont il tient lieu, au-dessus de cette ligne.`,
    aliasInItself: ({ name }) =>
      `*${name} est dans la valeur qu’il nomme et n’en finirait pas. Écrivez la valeur en entier.`,
    carcassNameless: () => 'Le caisson n’a pas de nom. Écrivez un nom et un deux-points, par exemple `sink:`.',
    keyNotPlain: () =>
      'Une clé est un mot ou quelques mots sur une ligne. Écrivez-la comme `width: 600`, sans crochets, & ni *.',
    tabIndent: () => 'Cette ligne est mise en retrait par une tabulation. Prenez deux espaces pour chaque niveau.',
    spaceMissing: ({ key, value }) => `Il manque une espace après le deux-points. Écrivez \`${key}: ${value}\`.`,
    colonMissing: ({ key, value }) => `Il manque un deux-points après \`${key}\`. Écrivez \`${key}: ${value}\`.`,
    twoColons: ({ key }) =>
      `Cette ligne a deux deux-points. Mettez la valeur de \`${key}\` entre guillemets, ou le \`key: value\` intérieur sur sa propre ligne.`,
    dashAmongKeys: ({ key }) =>
      `Cette ligne commence par un tiret, comme un élément de liste, mais se trouve à côté de la clé \`${key}\`. Commencez-la par un nom ou une clé et un deux-points, par exemple \`name:\`.`,
    tooFarIn: ({ columns: by, key }) =>
      `Cette ligne est plus en retrait que celle du dessus, qui a déjà une valeur. Commencez-la ${columns(by)} plus à gauche, sous \`${key}\`.`,
    belowValue: ({ columns: by, key, value, kindKey }) =>
      [
        `\`${key}\` a déjà la valeur ${quoted(value)} sur sa ligne ; aucune clé ne peut donc se trouver dessous.`,
        key === kindKey
          ? `Commencez cette ligne ${columns(by)} plus à gauche.`
          : `Écrivez \`${kindKey}: ${value}\` sur une ligne dessous si \`${key}\` est un caisson, ou commencez cette ligne ${columns(by)} plus à gauche.`,
      ].join(' '),
    betweenColumns: ({ columns: by, deeper, outer }) =>
      `Cette ligne commence ${columns(by)} à gauche de \`${deeper}\` mais à droite de \`${outer}\` ; elle n’appartient donc à aucun des deux. Commencez-la sous \`${deeper}\`, ou sous \`${outer}\` si elle est à part.`,
    quoteOpen: () => 'Il manque un guillemet fermant. Écrivez-le où le texte finit.',
    bracketOpen: () => 'Un crochet ouvert plus haut n’est pas fermé. Écrivez le ] ou la } qui manque.',
    commaBetween: () => 'Il manque ici une virgule entre deux valeurs.',
    colonUnspaced: () => 'Il manque une espace après le deux-points.',
    commaOrColon: () => 'Il manque ici une virgule ou un deux-points.',
    remarkUnspaced: () =>
      'Un # qui commence un commentaire demande une espace devant lui. Mettez la valeur entre guillemets si le # en fait partie.',
    colonAfterKey: () => 'Une clé est suivie d’un deux-points. Écrivez-la comme `width: 600`.',
    dashMissing: () => 'Cette ligne n’a pas de tiret, ou son retrait n’est pas celui des éléments du dessus.',
    markUnspaced: () => 'Il manque une espace après un nom en & ou une marque en !.',
    instruction: () =>
      'Une ligne qui commence par % est une instruction au lecteur YAML et ne sert pas ici. Retirez-la.',
    blockLine: () =>
      'Rien d’autre ne peut se trouver sur la ligne d’un | ou d’un >. Écrivez le texte en retrait sur les lignes du dessous.',
    valueBetween: () => 'Il manque une valeur entre deux virgules.',
    commaTooMany: () => 'Il y a ici une virgule de trop.',
    aliasUnnamed: () =>
      'Un renvoi est un * et un nom sans espaces. Écrivez la valeur en entier, ou mettez-la entre guillemets.',
    escapeUnknown: () =>
      'Une barre oblique inverse entre guillemets doubles annonce un caractère spécial, mais celui-ci n’existe pas. Écrivez-la deux fois, ou prenez des guillemets simples.',
    notAligned: () =>
      'Le retrait de cette ligne n’est pas celui de ses voisines. Commencez les clés d’un même ensemble dans la même colonne.',
    startsOddly: () => 'Une valeur ne peut commencer par ce caractère. Mettez-la entre guillemets.',
    blockInValue: () =>
      'Une clé, un élément de liste ou un point d’interrogation commence dans cette valeur. Mettez-le sur sa propre ligne, ou la valeur entre guillemets.',
    blockInBrackets: () =>
      'Une liste à tirets ou des clés en retrait ne peuvent se trouver dans [ ] ou { }. Séparez les valeurs par des virgules.',
    keyTooLong: () => 'Cette clé est bien trop longue. Cherchez un guillemet fermant ou un deux-points qui manque.',
    signMissing: () => 'Il manque ici un deux-points, une virgule, une espace, un guillemet fermant ou un crochet.',
    keyOverLines: () => 'Une clé tient sur une ligne, suivie d’un deux-points. Écrivez-la comme `width: 600`.',
    twoAnchors: () => 'Une valeur ne peut avoir qu’un nom en &.',
    twoDocuments: () => 'Un second document commence ici, après ---. N’en gardez qu’un par fichier.',
    twoTags: () => 'Une valeur ne peut avoir qu’une marque en !, et il n’en faut pas ici.',
    tabForSpaces: () => 'Une tabulation ne peut mettre une ligne en retrait. Prenez des espaces.',
    unexpected: () =>
      'Ceci ne peut se trouver ici. Contrôlez le retrait, et cherchez un deux-points, un guillemet ou un crochet qui manque.',
    notYaml: () => 'Ceci n’est pas du YAML bien formé. Contrôlez retrait, deux-points, guillemets et crochets.',
    withoutTabs: () => 'Mettre en retrait par des espaces, deux pour chaque tabulation',
    addSpace: () => 'Mettre une espace après le deux-points',
    addColon: () => 'Mettre un deux-points après la clé',
    addQuotes: () => 'Mettre la valeur entre guillemets',
    indentLikeAbove: () => 'Mettre en retrait comme la ligne du dessus',
    indentLike: ({ key }) => `Mettre en retrait comme \`${key}\``,
    writeBelow: ({ text: words, key }) => `Écrire ${words} sous ${key}`,
  },
  'nothing-yet': {
    nothing: () => `Rien n’est encore écrit ici. ${HOW} Une correction rapide écrit un travail pour commencer.`,
    noCarcasses: () => `Le travail n’a pas encore de caisson. ${HOW}`,
    beginMm: () => 'Commencer par un travail en millimètres',
    beginIn: () => 'Commencer par un travail en pouces',
    beginCarcass: () => 'Commencer par un caisson bas',
  },
  'job-text': {
    carcassesNotNamed: () => `Chaque caisson demande un nom. ${HOW}`,
    keyTwice: ({ key }) => `${quoted(key)} est écrit deux fois ; seul le premier compte. Retirez celui-ci.`,
    keyFirst: ({ key }) => `${quoted(key)} est d’abord écrit ici.`,
    removeThisKey: ({ key }) => `Retirer ce ${quoted(key)}`,
    nameTwice: ({ name }) =>
      `Deux caissons s’appellent ${quoted(name)} ; on ne peut donc distinguer leurs panneaux. Donnez à celui-ci un autre nom.`,
    nameFirst: ({ name }) => `${quoted(name)} est d’abord employé ici.`,
    placeTwice: ({ place }, show) =>
      `${show.exact(place)} est déjà dans cette liste, et on n’y perce qu’une fois. Retirez-le, ou écrivez une autre place.`,
    removeSecond: ({ place }, show) => `Retirer le second ${show.exact(place)}`,
    outsideOwner: ({ key, owner }) =>
      `\`${key}\` commence dans la même colonne que \`${owner}\`, où se trouvent les noms des caissons. Écrivez-le dans \`${owner}\`.`,
    notIndented: ({ key, owner, lines, by }) =>
      `${nombre(lines, `La ligne de \`${key}\` appartient à \`${owner}\` mais commence`, `Les ${lines} lignes à partir de \`${key}\` appartiennent à \`${owner}\` mais commencent`)} dans la même colonne. Mettez-${nombre(lines, 'la', 'les')} en retrait de ${columns(by)} de plus.`,
    indent: ({ by }) => `Mettre en retrait de ${columns(by)} de plus`,
    noNameAbove: ({ key, name }) =>
      `\`${key}\` se trouve où il faut le nom d’un caisson. Écrivez un nom et un deux-points, par exemple \`${name}:\`, sur une ligne au-dessus, et mettez les clés du caisson en retrait de deux colonnes.`,
    nameThem: ({ names }) => `${nombre(names.length, 'Le nommer', 'Les nommer')} ${et(names)}`,
    nameIt: ({ name }) => `Le nommer ${name}`,
    kindBesideName: (below) =>
      `${besideName(below)} Écrivez \`kind: ${below.value}\` sous le nom, et mettez cela et ${those(below)} en retrait de deux colonnes.`,
    kindBelow: ({ key, value }) => `Écrire kind: ${value} sous ${key}`,
    valueBesideName: (below) =>
      `${besideName(below)} Retirez la valeur, et mettez ${those(below)} en retrait de deux colonnes.`,
    removeValue: ({ value, lines }) => `Retirer ${value} et mettre ${those({ lines })} en retrait`,
  },
  'shop-empty': {
    nothing: () =>
      'Rien n’est encore écrit ici ; un travail reçoit donc tout de l’atelier intégré. Décrivez vos panneaux bruts, bandes, ferrures et machines. Une correction rapide écrit un atelier pour commencer.',
    beginMm: () => 'Commencer par un petit atelier en millimètres',
    beginIn: () => 'Commencer par un petit atelier en pouces',
    beginNeutral: () => 'Commencer par l’atelier intégré, écrit en entier',
  },
  'label-sheet': {
    beyondPage: ({ labels, along, reach, page }, show) =>
      `${labels} étiquettes vont jusqu’à ${show.exact(reach)} ${along === 'across' ? 'en largeur' : 'en hauteur'}, et la page mesure ${show.exact(page)}. Écrivez les cotes de vos planches d’étiquettes ; d’ici là, la planche intégrée sert.`,
  },
  shop: {
    unknown: (one) => `${quoted(one.name)} n’est pas dans l’atelier (${sort(one.sort)}). ${known(one)}`,
    usualUnknown: (one) =>
      `Ce qui est habituel dans l’atelier (${sort(one.sort)}), ${quoted(one.name)}, n’est pas dans le fichier d’atelier. ${known(one)}`,
    otherKind: ({ kind, ...one }) =>
      `${quoted(one.name)} est ${noun(MACHINES[kind]).a}, et il faut ${noun(englishOf(one.sort)).a}. ${known(one)}`,
    usualMissing: ({ habit, taken }) =>
      `Le fichier d’atelier ne dit pas ce qui est habituel (${HABITS[habit]}) ; ${quoted(taken)} sert donc. Écrivez \`${habit}\` sous \`habits\`.`,
    twice: ({ name, sort: of }) =>
      `${quoted(name)} désigne déjà autre chose (${noun(of).bare}). Donnez à celui-ci un autre nom.`,
    sheetLikeBoard: ({ name }) =>
      `Le panneau entier usuel de ${quoted(name)} s’appelle déjà ainsi ; celui-ci n’est pas compté. Donnez-lui un autre nom.`,
    first: ({ name }) => `${quoted(name)} est d’abord employé ici.`,
    use: ({ name }) => `Prendre ${quoted(name)}`,
    addHabit: ({ habit, name }) => `Ajouter ${habit}: ${name} aux habitudes`,
  },
  'value-unused-in-shop': {
    nothing: ({ key }) =>
      `\`${key}\` est encore sans effet : chaque réglage a une profondeur, quoi que porte la tourelle.`,
    nothingYet: () => 'Encore sans effet : chaque réglage a une profondeur, quoi que porte la tourelle.',
    notShared: ({ key }) =>
      `\`${key}\` est sans effet ici : il ne compte qu’avec \`share-places: yes\`. Écrivez cela aussi, ou retirez \`${key}\`.`,
    share: () => 'Partager les places avec `share-places: yes`',
    remove: ({ key }) => `Retirer \`${key}\``,
  },
} satisfies Translations;

interface Below {
  readonly key: string;
  readonly value: string;
  readonly lines: number;
}
const besideName = ({ key, value, lines }: Below): string =>
  `\`${key}\` a la valeur ${quoted(value)} sur sa ligne et ${nombre(lines, 'sa clé', 'ses clés')} dans la même colonne.`;
const those = ({ lines }: Pick<Below, 'lines'>): string =>
  nombre(lines, 'la ligne du dessous', `les ${lines} lignes du dessous`);

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
  board: 'panneau brut',
  'back-board': 'panneau brut des fonds',
  band: 'bande de chant',
  joint: 'ferrure',
  hinge: 'charnière',
  slide: 'coulisse',
  pull: 'poignée',
  bracket: 'ferrure de suspension',
  'wardrobe-rail': 'tringle',
  foot: 'pied',
  angle: 'équerre',
} as const;

type Sort = string | { readonly fitting: keyof typeof FITTINGS } | { readonly machine: keyof typeof MACHINES };
const englishOf = (one: Sort): string =>
  typeof one === 'string' ? one : 'machine' in one ? MACHINES[one.machine] : FITTINGS[one.fitting];
const sort = (one: Sort): string => noun(englishOf(one)).bare;
const known = ({ sort: of, known: names }: { readonly sort: Sort; readonly known: readonly string[] }): string =>
  names.length === 0 ? `Ajoutez ${noun(englishOf(of)).a} au fichier d’atelier.` : `Prenez ${ou(names.map(quoted))}.`;
