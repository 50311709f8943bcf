import type { Show } from '../../words/show.js';
import type { Translations } from '../tables.js';
import {
  BORES,
  compte,
  et,
  FROM,
  joints,
  lengths,
  LINE,
  nombre,
  noun,
  OUR_FAULT,
  quoted,
  SIDES,
  temps,
  theBores,
} from './words.js';

interface KeyOfFitting {
  readonly key: string;
  readonly fitting: string;
}
const inKey = (key: KeyOfFitting | null): string => (key === null ? '' : ` (\`${key.key}\` de ${quoted(key.fitting)})`);
const GROOVE_OF = { back: 'du fond', 'drawer bottom': 'du fond du tiroir' };
const SAME = 'Donnez aux deux les mêmes places et la même ferrure.';
const named = (fitting: string | null): string => (fitting === null ? 'rien' : quoted(fitting));

/** Constats sur les perçages et les assemblages. */
export const findings = {
  causes: {
    removeRowOffset: () => 'Retirer `row-offset` et prendre le départ de rangée habituel',
    removeRearRow: () => 'Retirer `rear-row` et prendre la place habituelle de la rangée arrière',
    removeRowSetback: () => 'Retirer `row-setback` et prendre le retrait habituel de la rangée avant',
    removeDowels: () => 'Retirer `dowels` et prendre les places habituelles',
    removeDowelsOf: ({ panel }) => `Retirer \`dowels\` de ${panel} et prendre celles du caisson`,
    removeEndDowelsOf: ({ panel }) => `Retirer \`end-dowels\` de ${panel} et prendre celles du caisson`,
    removeJointDowels: ({ panel }) =>
      `Retirer \`dowels\` de cet assemblage de ${panel} et le percer comme les autres du panneau`,
  },
  'bit-missing': {
    ofFitting: ({ bit, bits, ...bores }, show) =>
      `${theBores(bores)} ${nombre(bores.count, 'demande', 'demandent')} une mèche de ${show.exact(bit)}, que l’atelier n’a pas (il a ${et(bits.map(show.exact))}). Choisissez une autre ferrure, ou ajoutez la mèche à \`bits\`.`,
    ofRows: ({ bit, bits, ...bores }, show) =>
      `${theBores(bores)} ${nombre(bores.count, 'demande', 'demandent')} une mèche de ${show.exact(bit)}, que l’atelier n’a pas (il a ${et(bits.map(show.exact))}). Choisissez un autre \`row-diameter\`, ou ajoutez la mèche à \`bits\`.`,
  },
  'bore-in-groove': {
    meet: ({ at, edge, holds, key, groove, ...bores }, show) =>
      `${theBores(bores)}, à ${show.length(at)} ${FROM[edge]}, ${nombre(bores.count, 'rencontre', 'rencontrent')} la rainure ${GROOVE_OF[holds]}, qui va de ${show.span(groove)}. Déplacez ${nombre(bores.count, 'le perçage', 'les perçages')} plus près ${FROM[edge]}${inKey(key)}.`,
    thin: ({ at, edge, holds, key, groove, wall, least, ...bores }, show) =>
      `${theBores(bores)}, à ${show.length(at)} ${FROM[edge]}, ${nombre(bores.count, 'laisse', 'laissent')} ${show.length(wall)} de matière devant la rainure ${GROOVE_OF[holds]}, qui va de ${show.span(groove)} ; il en faut au moins ${show.length(least)} (\`least-wall\`). Déplacez ${nombre(bores.count, 'le perçage', 'les perçages')} plus près ${FROM[edge]}${inKey(key)}.`,
    grooveHere: () => 'La place de la rainure est fixée ici.',
  },
  'bore-too-short': { leaveDepth: ({ panel }) => `Laisser la profondeur dans ${panel} à la ferrure` },
  'bore-without-mate': {
    alone: ({ panel, fromFront }, show) =>
      `Un perçage dans ${panel}, à ${show.length(fromFront)} du chant avant, donne contre le plein, et aucun autre constat ne le dit. ${OUR_FAULT} : ne percez pas ce panneau.`,
  },
  'bores-collide': {
    meet: ({ panels, first, second, more }, show) =>
      [`Dans ${et(panels)}, ${placed(first, show)} rencontre ${placed(second, show)}.`, ...alike(more), MOVE].join(' '),
    notTaken: ({ panels, bore, hole, more, differs, own, ofRow, key, fitting }, show) =>
      [
        `Dans ${et(panels)}, ${placed(bore, show)} et ${placed(hole, show)} sont à la même place, mais avec ${show.length(own)} et ${show.length(ofRow)} de ${differs === 'depth' ? 'profondeur' : 'diamètre'}.`,
        ...alike(more),
        `Écrivez ${differs === 'depth' ? 'au plus ' : ''}${show.length(ofRow)} pour \`${key}\` de ${quoted(fitting)}, pour que les vis aillent dans les trous de la rangée, ou déplacez l’un des deux.`,
      ].join(' '),
    thin: ({ panels, first, second, more, wall, least }, show) =>
      [
        `Dans ${et(panels)}, ${placed(first, show)} et ${placed(second, show)} ne laissent que ${show.length(wall)} de matière entre eux ; il en faut au moins ${show.length(least)} (\`least-wall\`).`,
        ...alike(more),
        MOVE,
      ].join(' '),
    setHere: (bore, show) => `C’est ce qui place ${placed(bore, show)}.`,
  },
  'boring-depth-out-of-range': {
    ofRows: (out, show) => `${depthOut(out, show)} Changez \`row-depth\`, ou choisissez une autre machine.`,
    ofJoint: (out, show) =>
      `${depthOut(out, show)} Choisissez une autre profondeur, une autre ferrure ou une autre machine.`,
  },
  'break-through': {
    through: ({ depth, size, into, ...bores }, show) =>
      `${theBores(bores)}, ${nombre(bores.count, 'profond', 'profonds')} de ${show.length(depth)} dans un panneau de ${show.length(size)} ${into === 'face' ? 'd’épaisseur' : 'de longueur'}, ${nombre(bores.count, 'ressort', 'ressortent')} de l’autre côté. ${shallower(bores)}, ou prenez un panneau plus épais.`,
    thin: ({ depth, size, into, under, least, ...bores }, show) =>
      `${theBores(bores)}, ${nombre(bores.count, 'profond', 'profonds')} de ${show.length(depth)} dans un panneau de ${show.length(size)} ${into === 'face' ? 'd’épaisseur' : 'de longueur'}, ${nombre(bores.count, 'laisse', 'laissent')} ${show.length(under)} de matière ; il en faut au moins ${show.length(least)} (\`least-wall\`). ${shallower(bores)}, ou prenez un panneau plus épais.`,
    groove: ({ depth, panels, thickness, least }, show) =>
      `La rainure du fond, profonde de ${show.length(depth)}, laisse ${show.length(thickness - depth)} de matière dans ${et(panels)}, épais de ${show.length(thickness)} ; il en faut au moins ${show.length(least)} (\`least-wall\`). Faites la rainure moins profonde.`,
    leaveDepth: ({ panel }) => `Laisser la profondeur dans ${panel} à la ferrure`,
    leaveGroove: () => 'Laisser la profondeur de la rainure à l’atelier',
  },
  'cannot-be-bored': {
    noSetUp: ({ reason, ...bores }, show) =>
      `${theBores(bores)} ne ${nombre(bores.count, 'peut être percé', 'peuvent être percés')}. ${show.tell(reason)}`,
  },
  'dowel-depths': {
    tooShallow: (sum, show) =>
      `${added(sum, show)}, mais ${quoted(sum.dowel.name)} est plus long de ${show.length(-sum.gap)}. ${together(sum, show)}`,
    tooLittle: (sum, show) =>
      `${added(sum, show)}, ce qui ne laisse que ${show.length(sum.gap)} à la colle de ${quoted(sum.dowel.name)}. ${together(sum, show)}`,
    tooMuch: (sum, show) =>
      `${added(sum, show)}, ce qui laisse ${show.length(sum.gap)} à la colle de ${quoted(sum.dowel.name)}. ${together(sum, show)}`,
    boredDeep: ({ mate, depth, panel }, show) => `${mate} est percé de ${show.length(depth)} pour ${panel}.`,
    removeFitting: ({ panel }) => `Retirer la ferrure de ${panel}, pour que les deux perçages suivent une même ferrure`,
    removeDepth: ({ panel }) =>
      `Retirer la profondeur de ${panel}, pour que les deux perçages suivent une même ferrure`,
    holdWhole: ({ fitting }) => `Assembler tout le caisson avec ${quoted(fitting)}`,
    bore: ({ panels, depth, total, mates }, show) =>
      `Percer ${et(panels)} de ${show.exact(depth)}, soit ${show.exact(total)} avec ${et(mates)}`,
  },
  'dowel-place-unused': {
    nowhere: ({ at }, show) =>
      `La place à ${show.length(at)} du chant avant n’est pas percée, car aucun panneau n’y en rencontre un autre. Déplacez-la, ou retirez-la de la liste.`,
    notOnPanel: ({ at, panel }, show) =>
      `La place à ${show.length(at)} du chant avant de ${panel} n’est pas percée, car aucun autre panneau ne l’y rencontre. Déplacez-la, ou retirez-la de la liste.`,
    remove: ({ at }, show) => `Retirer ${show.exact(at)} de la liste`,
  },
  'joint-crowded': {
    fewer: ({ joints, count, room }) =>
      `${compte(count, 'place')} de ${joints.join(', ')} ${count > 1 ? 'sont demandées' : 'est demandée'}, et les broches ${room === 0 ? 'n’ont de place pour aucune' : `n’ont de place que pour ${room}`}. Demandez-en moins, ou élargissez le panneau.`,
    take: ({ room }) => `Percer ${compte(room, 'place')}`,
    remove: () => 'Retirer le nombre et prendre les places usuelles',
  },
  'dowels-unmatched': {
    blind: ({ panel, mates, depth, face, thickness }, show) =>
      `Les perçages de ${et([panel, ...mates])} ne se répondent pas : dans ${face}, épais de ${show.length(thickness)}, les trous de vis n’ont que ${show.length(depth)} de profondeur et ne traversent pas. Laissez leur profondeur à la ferrure.`,
    lonely: ({ panel, mates, mate, counts: [own, others], ...places }, show) =>
      `Les perçages de ${et([panel, ...mates])} ne se répondent pas. À ${mate}, ${panel} a ${compte(own, 'perçage')} et ${mate} en a ${others}. Aucun perçage ne fait face à ${[...at(panel, places.own, show), ...at(mate, places.others, show)].join(' ou à ')}, compté depuis l’avant du caisson. ${SAME}`,
    diameters: ({ panel, mates, face, end, wide }, show) =>
      `Les perçages de ${et([panel, ...mates])} ne se répondent pas : ceux de la face de ${face} ont un diamètre de ${show.length(wide[0])}, ceux du bout de ${end} de ${show.length(wide[1])}. ${SAME}`,
    fittings: ({ panel, mates, face, end, fittings: [inFace, inEnd] }) =>
      `Les perçages de ${et([panel, ...mates])} ne se répondent pas : ${face} est percé pour ${named(inFace)} et ${end} pour ${named(inEnd)}. ${SAME}`,
    purposes: ({ panel, mates, face, end, boredFor }) =>
      `Les perçages de ${et([panel, ...mates])} ne se répondent pas : ${face} est percé pour ${noun(boredFor[0]).a} et ${end} pour ${noun(boredFor[1]).a}. ${SAME}`,
    boredAt: ({ mate, panel, places }, show) =>
      places.length === 0
        ? `${mate} n’est percé pour ${panel} à aucune place.`
        : `${mate} est percé pour ${panel} à ${lengths(places, show)} de l’avant du caisson.`,
    leaveDepth: ({ panel }) => `Laisser la profondeur dans ${panel} à la ferrure`,
    removeDowels: ({ panel, mates }) => `Retirer \`dowels\` de ${panel}, pour qu’il soit percé comme ${et(mates)}`,
    removeFitting: ({ panel, mates }) => `Retirer la ferrure de ${panel}, pour qu’il soit percé comme ${et(mates)}`,
    boreLike: ({ panels, places, like }, show) => `Percer ${et(panels)} à ${lengths(places, show)}, comme ${et(like)}`,
    endDowels: ({ panel, mates }) => `Percer ${et(mates)} pour ${panel} aux mêmes places (\`end-dowels\`)`,
    boreAll: ({ places }, show) => `Percer chaque panneau de ce caisson à ${lengths(places, show)}`,
    holdToo: ({ panels, fitting }) => `Assembler aussi ${et(panels)} avec ${quoted(fitting)}`,
    holdWhole: ({ fitting }) => `Assembler tout le caisson avec ${quoted(fitting)}`,
  },
  'joint-not-held': {
    none: ({ joints: of, open, isListed }, show) =>
      `${joints(of)}, sur ${show.length(open)} de profondeur, ${nombre(of.length, 'n’a', 'n’ont')} aucun perçage. Ajoutez des places ${avecPlaces(isListed)}, ou faites le panneau plus large.`,
    one: ({ joints: of, open, from, isListed }, show) =>
      `${joints(of)}, sur ${show.length(open)} de profondeur, ${nombre(of.length, 'n’a', 'n’ont')} qu’un perçage, à ${show.length(from)}, autour duquel le panneau peut tourner. Donnez deux places ${avecPlaces(isListed)}, ou faites le panneau plus large.`,
    gap: ({ joints: of, open, from, limit, isListed }, show) =>
      `${joints(of)} ${nombre(of.length, 'n’a', 'n’ont')} aucun perçage sur ${show.length(open)} derrière celui à ${show.length(from)} (limite ${show.length(limit)}, \`dowel-spacing\`). Ajoutez des places ${avecPlaces(isListed)}, ou choisissez une tête à plus de broches.`,
  },
  'joint-off-load': {
    own: ({ panels, spindles, setUps, seconds }) =>
      `La garniture de mèches que partagent les assemblages habituels (broches ${et(spindles.map(String))}, comptées depuis le chant avant) ne tient pas ${et(panels)} ; leurs assemblages ont donc leurs propres places et leur propre garniture : ${compte(setUps, 'réglage')}, ${temps(seconds)}.`,
    deep: ({ size, instead }, show) =>
      `Faire le caisson profond de ${show.exact(size)} au lieu de ${show.exact(instead)}`,
    wide: ({ size, instead }, show) =>
      `Faire les traverses larges de ${show.exact(size)} au lieu de ${show.exact(instead)}`,
    back: ({ shelf, size, instead }, show) =>
      `Mettre ${shelf} en retrait de ${show.exact(size)} au lieu de ${show.exact(instead)}`,
  },
  'misfit-past-limit': {
    past: ({ figure, joints: [joint, ...others], likely, worst, limit, causes }, show) =>
      [
        `${MISFITS[figure].name} de l’assemblage de ${et(joint!)} atteindra sans doute ${show.length(likely)} (au pire ${show.length(worst)}) ; la limite de l’atelier est ${show.length(limit)} (\`${MISFITS[figure].key}\`).`,
        ...(others.length === 0
          ? []
          : [`Il en va de même de ${compte(others.length, 'autre assemblage', 'autres assemblages')}.`]),
        `${nombre(causes.length, 'Cause principale', 'Causes principales')} : ${et(causes.map((cause) => STRAYS[cause]))}.`,
      ].join(' '),
  },
  'near-edge': {
    beyond: ({ border, key, fromEdge, ...bores }, show) =>
      `${theBores(bores)} ${nombre(bores.count, 'se trouve', 'se trouvent')} à ${show.length(fromEdge)} au-delà ${FROM[border]}, où il n’y a pas de panneau. ${inward(bores.count, key)}`,
    opens: ({ border, key, fromEdge, diameter, ...bores }, show) =>
      `${theBores(bores)} ${nombre(bores.count, 'ouvre', 'ouvrent')} ${SIDES[border]} : ${nombre(bores.count, 'il en est', 'ils en sont')} à ${show.length(fromEdge)}, pour un diamètre de ${show.length(diameter)}. ${inward(bores.count, key)}`,
    thin: ({ border, key, fromEdge, diameter, wall, least, ...bores }, show) =>
      `${theBores(bores)}, à ${show.length(fromEdge)} ${FROM[border]} et d’un diamètre de ${show.length(diameter)}, ${nombre(bores.count, 'laisse', 'laissent')} ${show.length(wall)} de matière ; il en faut au moins ${show.length(least)} (\`least-wall\`). ${inward(bores.count, key)}`,
  },
  'plan-replay-differs': {
    differs: ({ panel, fault }, show) =>
      `Les réglages ne donnent pas le plan de perçage de ${panel}. ${show.tell(fault)} ${OUR_FAULT} : ne percez pas ce panneau d’après eux.`,
  },
  'screws-hidden': {
    hidden: ({ count, shelves, dividers, pitch, panel }, show) =>
      `Les ${compte(count, 'vis', 'vis')} de ${et(shelves)} traversent ${et(dividers)} depuis les deux faces à la même hauteur, si bien que chaque tablette cache les vis de l’autre. Décalez l’une des deux d’un pas de ${show.length(pitch)}, ou tenez-la par une autre ferrure (\`joint\` de ${panel}).`,
    otherFace: ({ shelf, divider }) => `${shelf} est sur l’autre face de ${divider}.`,
  },
} satisfies Translations;

const MOVE = 'Déplacez l’un des deux.';
const inward = (count: number, key: KeyOfFitting | null): string =>
  `${nombre(count, 'Déplacez-le', 'Déplacez-les')} vers l’intérieur${inKey(key)}.`;

interface Bore {
  readonly purpose: keyof typeof BORES;
  readonly hole: number | null;
  readonly line: 'front' | 'rear' | null;
  readonly mate: string | null;
  readonly fromFront: number;
  readonly edge: keyof typeof FROM;
  readonly across: number;
  readonly from: keyof typeof FROM;
}

/** 'le perçage de tourillon pour bottom (à 37 mm du chant avant et 328 mm du bout inférieur)' */
function placed({ purpose, hole, line, mate, fromFront, edge, across, from }: Bore, show: Show): string {
  const [one] = BORES[purpose];
  const what =
    hole !== null && line !== null
      ? `le trou ${hole} de la rangée ${LINE[line]}`
      : `${one.startsWith('a') ? 'l’' : 'le '}${one}${mate === null ? '' : ` pour ${mate}`}`;
  return `${what} (à ${show.length(fromFront)} ${FROM[edge]} et ${show.length(across)} ${FROM[from]})`;
}

const alike = (more: number): readonly string[] =>
  more === 0 ? [] : [`Il en va de même de ${compte(more, 'autre paire', 'autres paires')}, pour la même raison.`];

interface Depth {
  readonly purpose: keyof typeof BORES;
  readonly count: number;
  readonly panels: readonly string[];
  readonly depth: number;
  readonly through: boolean;
  readonly machine: string;
  readonly range: { readonly min: number; readonly max: number };
}
const depthOut = ({ depth, through, machine, range, ...bores }: Depth, show: Show): string =>
  `${theBores(bores)} ${through ? `${nombre(bores.count, 'traverse', 'traversent')}, et les mèches descendent pour cela de ${show.length(depth)}` : `${nombre(bores.count, 'a', 'ont')} ${show.length(depth)} de profondeur`} ; ${quoted(machine)} perce entre ${show.length(range.min)} et ${show.length(range.max)} de profondeur.`;

const shallower = ({ purpose }: { readonly purpose: string }): string =>
  purpose === 'row' ? 'Choisissez un plus petit `row-depth` dans le fichier d’atelier' : 'Percez moins profond';

interface Sum {
  readonly panel: string;
  readonly mates: readonly string[];
  readonly face: readonly [panel: string, depth: number];
  readonly end: readonly [panel: string, depth: number];
  readonly dowel: { readonly name: string; readonly noun: string; readonly length: number };
  readonly habit: number;
}
const added = ({ panel, mates, face, end }: Sum, show: Show): string =>
  `Les perçages de ${et([panel, ...mates])} font ensemble ${show.length(face[1] + end[1])} (${show.length(face[1])} dans la face de ${face[0]}, ${show.length(end[1])} dans le bout de ${end[0]})`;
/** Ce que les deux perçages peuvent avoir de plus que le tourillon ; voir la règle. */
const GLUE = [500, 2000] as const;
const together = ({ dowel, habit }: Sum, show: Show): string =>
  `Changez une profondeur pour que les deux fassent ensemble ${show.length(dowel.length + habit)} : ${show.length(dowel.length)} pour le ${noun(dowel.noun).bare} et ${show.length(habit)} pour la colle (entre ${show.length(GLUE[0])} et ${show.length(GLUE[1])}).`;

const at = (panel: string, places: readonly number[], show: Show): readonly string[] =>
  places.length === 0 ? [] : [`${lengths(places, show)} dans ${panel}`];

const STRAYS = {
  thickness: 'épaisseur du panneau',
  width: 'largeur du panneau',
  length: 'longueur du panneau',
  squareness: 'équerrage',
  stop: 'position de la butée',
  drill: 'dérive de la mèche',
  dowelPlay: 'jeu des tourillons',
} as const;
const MISFITS = {
  front: { name: 'Le désaffleur au chant avant', key: 'front-limit' },
  step: { name: 'Le ressaut à la face extérieure', key: 'step-limit' },
  gap: { name: 'Le jour', key: 'gap-limit' },
  play: { name: 'L’écart des places de tourillons', key: 'dowel-play' },
} as const;

function avecPlaces(isListed: boolean): string {
  return isListed ? 'avec `dowels`' : 'avec `end-dowels` du panneau (sous `panels`)';
}
