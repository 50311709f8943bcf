import { percent } from '../../papers/joints/percent.js';
import { showSizes } from '../../length/show.js';
import type { Translations } from '../tables.js';
import { bare, compte, dans, et, holesTold, le, nombre, quoted, temps, unité, virgule } from './words.js';

const NOTICE = 'La notice de la machine et les règles locales font foi.';
const CÔTÉS = { width: 'largeur', height: 'hauteur', depth: 'profondeur' } as const;
const GRAVITÉ = { error: 'Erreur', warning: 'Avertissement', info: 'Remarque' } as const;
const montant = (amount: number): string => virgule(amount.toFixed(2));
const coût = ({ cost, priced }: { readonly cost: number; readonly priced: boolean }): string =>
  priced ? `coût ${montant(cost)}` : `${montant(cost)} m²`;
const pourCent = (part: number): string => virgule(percent(part));

/** Ce que disent les documents d’atelier, hors ceux des machines. */
export const papers = {
  assembly: {
    caution: () =>
      `Une cadreuse serre avec une grande force : garder les mains hors d’elle tant qu’elle bouge, et ne laisser personne d’autre atteindre les commandes. Lever les grands caissons à deux. Qui suspend un meuble répond du mur et de la fixation. ${NOTICE}`,
    dryFit: () => 'Monter d’abord à blanc : chaque assemblage doit fermer à la main avant d’encoller.',
    drawnApart: ({ carcass }) => `${carcass}, en vue éclatée ; les numéros sont les étapes`,
    drawnInOrder: ({ carcass, steps }) => `${carcass} en vue éclatée. Dans l’ordre : ${steps.map(et).join(' ; ')}.`,
    layDown: ({ panel }) => `${panel} : le poser à plat`,
    workIn: ({ panels }) =>
      `${et(panels)} : les engager ensemble ; un par un, aucun mouvement droit ne les met en place`,
    joint: ({ end, face }) => `${end} sur ${face}`,
    fixBack: () => 'Fixer le fond quand le caisson est d’équerre ; il l’y maintient.',
    layBack: () => 'Poser le fond dans ses feuillures et le fixer quand le caisson est d’équerre ; il l’y maintient.',
    plinth: () => 'Poser le socle quand le caisson est debout.',
    clipPlinth: () => 'Agrafer le socle sur les pieds quand le meuble est de niveau et qu’il ne reste rien à visser.',
    hangDoors: ({ count }) =>
      `Poser ${nombre(count, 'la porte (1)', `les ${count} portes`)} quand le caisson est debout et ne peut plus basculer ; une grande porte se tient à deux.`,
    drawers: ({ count, bottom }) =>
      `Monter ${nombre(count, 'le tiroir (1)', `les ${count} tiroirs`)} à côté du caisson : devant et arrière sur un côté${bottom === 'grooved' ? ', le fond dans leurs rainures' : ''}, puis l’autre côté${bottom === 'applied' ? ', et le fond par-dessous' : ''} ; les deux diagonales égales. Visser les coulisses au caisson et aux tiroirs, engager chaque tiroir, et visser sa façade de l’intérieur quand ses jeux sont bons. Ne pas en tirer plusieurs avant que le meuble soit fixé : il peut basculer.`,
    brackets: ({ count }) =>
      `Visser ${count === 1 ? 'la ferrure' : `les ${count} ferrures`} de suspension aux côtés avant de lever le caisson, et entailler le fond là où l’une le traverse. Faire juger le mur et la fixation par une personne compétente ; suspendre le caisson à deux, et ne le remplir qu’une fois fixé.`,
    wardrobeRails: ({ count }) =>
      `Visser les supports (${compte(count, 'tringle')}) et poser ${count === 1 ? 'la tringle' : 'les tringles'} ; mesurer l’ouverture avant de couper une tringle.`,
    feet: ({ count }) =>
      `Monter les ${count} pieds tant que le caisson est couché sur le dos, le redresser à deux et le mettre de niveau. Ne pas le pousser sur ses pieds.`,
    pulls: ({ count }) =>
      `Visser ${nombre(count, 'la poignée (1)', `les ${count} poignées`)} de l’intérieur quand les façades sont posées ; en essayer d’abord une à la main, car une vis trop longue ressort.`,
    endPanels: ({ count }) =>
      `Visser ${compte(count, 'joue')} de l’intérieur quand le meuble est d’aplomb, le chant avant au ras des façades.`,
    fillers: ({ count }) =>
      `Ajuster ${compte(count, 'fileur')} au mur en dernier : présenter, tracer le profil du mur et scier à l’extérieur du trait.`,
    fixedFronts: ({ count }) =>
      `Fixer ${nombre(count, 'la façade fixe (1)', `les ${count} façades fixes`)} en dernier, quand les voisines sont posées.`,
    looseShelves: ({ shelves }, show) => {
      const told = shelves.map(
        ({ panel, at, holes }) => `${panel} ${show.exact(at)}${holes.length === 0 ? '' : ` (${holesTold(holes)})`}`,
      );
      return `Poser ${nombre(shelves.length, 'la tablette mobile (1)', `les ${shelves.length} tablettes mobiles`)} en dernier. Les taquets sont à cette distance du bout inférieur des côtés, trous comptés de là : ${told.join(' ; ')}.`;
    },
    noClamp: () =>
      'Le fichier d’atelier ne nomme aucune cadreuse : serrer le caisson aux serre-joints, et le garder d’équerre.',
    clamp: ({ clamp, sides }, show) => {
      const told = sides.map(({ side, size, range }) => {
        if (range === null) return `${CÔTÉS[side]} ${show.exact(size)}`;
        const fits = size >= range.min && size <= range.max ? '' : ', NE PASSE PAS';
        return `${CÔTÉS[side]} ${show.exact(size)} (prend ${show.exact(range.min)} à ${show.exact(range.max)}${fits})`;
      });
      return `${quoted(clamp)} : ${told.join(' ; ')}.`;
    },
    diagonals: ({ diagonal }, show) =>
      `Mesurer dans la cadreuse les deux diagonales de l’avant : chacune fait ${show.exact(diagonal)}. Si elles diffèrent, décaler le caisson dans la cadreuse avant que la colle prenne.`,
  },
  'banding-list': {
    caution: () =>
      `Colle chaude, rouleaux et couteaux brûlent, happent et coupent : garder mains et manches loin de l’entraînement, et ne passer aucune pièce plus courte ou plus étroite que la plaqueuse n’en prend. ${NOTICE}`,
    order: () =>
      'Plaquer d’abord les bouts d’un panneau, puis le chant arrière, et le chant avant en dernier : sa bande couvre les autres.',
    cutLast: () => 'Un chant en biais n’est à plaquer qu’une fois son panneau percé et le coin scié.',
    nothingBanded: () => 'Aucun chant de ce travail n’est plaqué.',
    band: ({ band, thickness }, show) => `${band}, épaisse de ${show.exact(thickness)}`,
    tape: ({ edges, length, allowance }, show) =>
      `${compte(edges, 'chant')}, ${montant(length / 1e6)} m avec ${show.exact(allowance)} de plus par chant`,
  },
  'bore-maps': {
    bare: ({ panels }) => `Sans perçages : ${panels.map(({ title, size }) => `${title} (${size})`).join(' ; ')}.`,
    finding: ({ severity, message }) => `${GRAVITÉ[severity]} : ${message}`,
  },
  checking: {
    about: (_, { unit }) =>
      `En ${unité(unit)}. Les limites viennent des tolérances du fichier d’atelier. Corriger ce qui en sort avant l’étape suivante ; ne rien forcer.`,
    firstBore: ({ surface, edge, isRow }) =>
      `${isRow ? 'premier trou de rangée' : 'premier perçage'} ${dans(surface)}, depuis ${le(edge)}`,
  },
  cost: {
    total: ({ cost, seconds }) =>
      `En tout ${montant(cost)} dans la monnaie de l’atelier, et ${temps(seconds)} de travail.`,
    timeOnly: ({ seconds }) => `En tout ${temps(seconds)} de travail.`,
    about: () =>
      'D’après les prix et les temps du fichier d’atelier. Les panneaux comptent entiers, avec les chutes qui sont gardées ; les bandes avec leur surlongueur. Vis des fonds, colle et ce que le fichier de travail ne nomme pas ne sont pas comptés.',
    unpriced: ({ count }) =>
      count === 1
        ? 'Une ligne n’a pas de prix dans le fichier d’atelier et n’est pas dans la somme.'
        : `${count} lignes n’ont pas de prix dans le fichier d’atelier et ne sont pas dans la somme.`,
    noSaw: () =>
      'Les panneaux entiers et leur débit ne sont pas comptés : le fichier d’atelier n’a pas de scie à panneaux.',
    nothing: () => 'Il n’y a rien à fabriquer.',
    sheet: ({ board, stock }) =>
      board === stock ? `panneaux entiers ${board}` : `panneaux entiers ${board}, ${stock}`,
    unlaid: ({ board }) => `${board} sans panneau entier`,
    band: ({ band }) => `bande ${band}`,
    squareMetres: ({ amount }) => `${montant(amount)} m²`,
    metres: ({ amount }) => `${montant(amount)} m`,
    time: ({ seconds }) => temps(seconds),
  },
  'cut-list': {
    about: (_, { unit }) =>
      `Cotes en ${unité(unit)}, la longueur d’abord ; sur un panneau brut qui a un fil, elle suit le fil.`,
    milled: ({ bander, milled }, show) =>
      `${bander} fraise ${show.exact(milled)} de chaque chant avant de le plaquer ; les cotes de débit le comprennent.`,
    board: ({ board, thickness, hasGrain }, show) =>
      `${board}, épais de ${show.exact(thickness)}, ${hasGrain ? 'avec sens du fil' : 'sans sens du fil'}`,
    total: ({ pieces, squareMetres }) => `${compte(pieces, 'pièce')}, ${montant(squareMetres)} m²`,
    bands: ({ bands }) =>
      bands
        .map(({ band, edges }) => `${edges.length === 4 ? 'les quatre chants' : et(edges.map(bare))} ${band}`)
        .join(', '),
    noBand: () => 'aucun',
  },
  'hardware-list': {
    hinge: ({ arm, plate }, show) => `avec le bras de ${show.exact(arm)} et une embase haute de ${show.exact(plate)}`,
    slides: ({ long, rating }, show) => `paires, longues de ${show.exact(long)}, pour ${rating} kg chacune`,
    frontScrews: ({ pilot, depth }, show) =>
      `pour des avant-trous de ${show.nominal(pilot)}, profonds de ${show.exact(depth)}`,
    pulls: ({ screws, through }, show) => `avec ${compte(screws, 'vis', 'vis')} à travers ${show.exact(through)}`,
    brackets: ({ rating }) =>
      `une dans chaque côté${rating === null ? '' : `, une paire pour ${rating} kg`} ; ce qui les tient au mur n’est pas compté`,
    wardrobeRails: ({ long }, show) => `à couper à ${show.exact(long)}, avec deux supports`,
    feet: ({ high, hasClip }, show) =>
      `à régler à ${show.exact(high)}${hasClip ? ', avec une agrafe pour la plinthe' : ''}`,
    angles: ({ screws }) => `pour façades qui ne bougent pas, avec ${compte(screws, 'vis', 'vis')} chacune`,
    pullsBlind: ({ screws, depth }, show) =>
      `avec ${compte(screws, 'perçage', 'perçages')} de ${show.exact(depth)} de profondeur`,
    pins: ({ diameter }, show) => `pour des trous de ${show.nominal(diameter)}`,
  },
  joints: {
    how: (_, { unit }) =>
      `D’après les tolérances de l’atelier, en ${unité(unit)} : racine de la somme des carrés / non dépassé par 19 caissons sur 20 / pire cas.`,
    goesIn: ({ samples }) =>
      `Entre : dans combien de ${samples} caissons simulés chaque tourillon ou vis trouve ses perçages avec le jeu qu’il a. Cela ne dit rien des désaffleurs ni des jours.`,
    within: ({ limits }) =>
      `Dans les limites : dans combien tout entre, et chant avant, face extérieure et jour respectent aussi les limites de l’atelier (${et(limits)}). Les désaffleurs comptent où les panneaux sont dessinés affleurés.`,
    worstCase: () =>
      'Le pire cas a toutes les tolérances à leur borne à la fois ; il peut donc dépasser une limite que chaque caisson simulé respecte.',
    notMeasured: () =>
      'Rien ici n’est mesuré sur vos panneaux : les chiffres valent ce que valent les tolérances du fichier d’atelier.',
    box: ({ carcass, joints, samples, close, fit }) =>
      `${carcass} : ${compte(joints, 'assemblage')} ; sur ${samples} caissons, ${pourCent(close)} se montent, ${pourCent(fit)} dans les limites`,
    unknown: ({ joint, reason }, show) => `${joint} : pas de chiffres. ${show.tell(reason)}`,
  },
  'panel-labels': {
    about: ({ labels: count, sheets }) =>
      `${compte(count, 'étiquette')} sur ${compte(sheets, 'planche')}, dans l’ordre de la liste de débit. Coller chacune sur la face extérieure de son panneau dès qu’il sort de la scie, pour qu’elle ne soit jamais sur les perçages de la face intérieure ; la retirer avant de fermer le caisson. Imprimer en taille réelle : une impression ajustée à la page ne tombe pas sur les étiquettes.`,
    code: () => 'Le code porte le nom du fichier de travail et celui du panneau : kitchen.carcass.yaml#sink/left.',
    piece: ({ number, of }) => `${number} sur ${of}`,
    bands: ({ bands }) => `Chants : ${bands}`,
    noBands: () => 'Chants nus',
    next: ({ next, then }) => (then.length === 0 ? `Ensuite : ${next}` : `Ensuite : ${next} ; puis ${et(then)}`),
    described: ({ panel, size }) => `Étiquette de ${panel}, ${size}`,
  },
  'panel-list': {
    notWorkedOut: ({ carcass }) => `${carcass} : ne peut être calculé`,
    carcass: ({ carcass, kind, box, wings }, show) =>
      `${carcass} : genre ${kind}, ${showSizes(box, show.reader)}${wings === null ? '' : `, en angle avec des ailes profondes de ${show.exact(wings)}`}`,
    panel: ({ panel, size, cut, board }, { reader }) =>
      `${panel} : ${showSizes(size, reader)}, débit ${showSizes(cut, reader)}, ${board}`,
  },
  print: {
    picture: ({ name }) => `(image : ${name})`,
    contents: () => 'Sommaire',
    toScale: ({ name, scale }) => `${name} – échelle 1:${scale}`,
    notToScale: ({ name }) => `${name} – sans échelle`,
  },
  'sheet-layouts': {
    about: ({ saw, kerf, stages }, show) =>
      `Cotes de débit, bandes déduites, en ${unité(show.unit)}. Scie : ${saw}, trait de scie ${show.exact(kerf)}, ${compte(stages, 'niveau', 'niveaux')} de coupe.`,
    caution: () =>
      'Capot et couteau diviseur restent sur la scie ; garder les mains loin de la lame. La notice de la scie et les règles locales font foi.',
    noSize: () => 'Pas de plan de découpe : le fichier d’atelier ne donne aucune taille pour ce panneau brut.',
    misfit: ({ letter }) => `${letter} ne peut être coupé dans aucun panneau entier sur cette scie.`,
    lacking: ({ letter, count }) =>
      `${count} de ${letter} sans panneau entier : ceux qui conviennent sont épuisés. Ajouter des panneaux entiers de ce panneau brut au fichier d’atelier.`,
    tooFew: ({ sheets, ...cost }) =>
      `${compte(sheets, 'panneau entier', 'panneaux entiers')}, ${coût(cost)}, et des pièces sans panneau entier`,
    least: ({ sheets, ...cost }) =>
      `${compte(sheets, 'panneau entier', 'panneaux entiers')}, ${coût(cost)} : aucun plan ${cost.priced ? 'ne coûte' : 'n’en prend'} moins`,
    notLeast: ({ sheets, bound, ...cost }) =>
      `${compte(sheets, 'panneau entier', 'panneaux entiers')}, ${coût(cost)} ; aucun plan ${cost.priced ? `ne coûte moins de ${montant(bound)}` : `ne prend moins de ${montant(bound)} m²`}`,
    firstCuts: ({ first, last, sheets, stock, cuts }) =>
      `${first === last ? `Panneau entier ${first}` : `Panneaux entiers ${first} à ${last}`} sur ${sheets} : ${stock}, premières coupes en ${cuts === 'along' ? 'long' : 'travers'}`,
    sheet: ({ first, last, sheets, stock }) =>
      `${first === last ? `Panneau entier ${first}` : `Panneaux entiers ${first} à ${last}, coupés de même,`} sur ${sheets} : ${stock}`,
    picture: ({ stock }) => `${stock} avec ses pièces ; le tableau du dessous les donne dans l’ordre des coupes.`,
    offcut: ({ names }) => `chute ${names.join(', ')}`,
    keep: ({ board }) =>
      `Marquer ces chutes et les garder. Inscrites sous \`sheets\` de ${board} dans le fichier d’atelier, chacune avec un nom et un nombre, elles sont prises d’abord là où cela coûte le moins.`,
  },
} satisfies Translations;
