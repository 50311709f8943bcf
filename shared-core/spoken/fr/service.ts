import { showSizes } from '../../length/show.js';
import type { Translations } from '../tables.js';
import { compte, et, fromEnd, holesTold, LINE, lineOf, nombre, noun, temps } from './words.js';

/** Ce qu’il y a à dire d’un endroit du fichier. */
export const service = {
  file: {
    titled: ({ paper, job }) => `${paper} : ${job}`,
    withErrors: ({ errors }) =>
      `Le travail a ${compte(errors, 'erreur')} : ne rien débiter ni percer avant de ${errors === 1 ? 'l’avoir corrigée' : 'les avoir corrigées'}. L’éditeur et borewright check ${errors === 1 ? 'la' : 'les'} signalent.`,
    findingTotals: ({ files, errors, warnings, infos }) =>
      `${[
        compte(files, 'fichier'),
        compte(errors, 'erreur'),
        compte(warnings, 'avertissement'),
        ...(infos > 0 ? [compte(infos, 'remarque')] : []),
      ].join(', ')}.`,
    noMachine: () => 'aucune machine',
    carcassTotals: ({ panels, bores, strokes, setUps }) =>
      [
        compte(panels, 'panneau', 'panneaux'),
        compte(bores, 'perçage'),
        compte(strokes, 'descente'),
        compte(setUps, 'réglage'),
      ].join(' · '),
    planTotals: ({ setUps, seconds }) => `${compte(setUps, 'réglage')} · changements ${temps(seconds)}`,
    shopHasNoBores: () =>
      'Un fichier d’atelier n’a pas de perçages à lui. Ouvrez un fichier de travail (NAME.carcass.yaml).',
    shopHasNoSetUps: () =>
      'Un fichier d’atelier n’a pas de réglages à lui. Ouvrez un fichier de travail (NAME.carcass.yaml).',
    notDrawnYet: ({ fault }, show) => `Rien ne peut encore être dessiné : ${show.tell(fault)}`,
    notPlannedYet: ({ fault }, show) => `Rien ne peut encore être prévu : ${show.tell(fault)}`,
    noCarcasses: () => 'Ce travail n’a pas encore de caisson. Écrivez-en un sous `carcasses:`, avec `kind` et `width`.',
    nothingBored: ({ carcasses }) => `Rien n’est percé dans ${et(carcasses)}.`,
    panelRefused: () => 'Ses perçages ont des erreurs ; corrigez-les d’abord.',
    noPanelNow: ({ carcass, panel }) => `Le travail n’a plus de panneau « ${panel} » dans un caisson « ${carcass} ».`,
    noStepNow: ({ setUp, carcass, panel, step }) =>
      `Le réglage ${setUp} n’a plus d’étape ${step} pour ${carcass}, ${panel}.`,
    placeBroken: ({ name }) => `Le texte est fautif là où se trouvait « ${name} » ; voici son dernier bon dessin.`,
    carcassBroken: ({ name }) =>
      `Le texte de « ${name} » ne peut être calculé tel quel ; voici son dernier bon dessin.`,
  },
  'shop-line': {
    faulty: ({ of }) => `${noun(of).bare} avec une erreur dans le fichier d’atelier`,
    board: ({ thickness, nominal, sheet, hasGrain }, show) =>
      [
        'panneau brut',
        `épais de ${show.exact(thickness)}${thickness === nominal ? '' : ` mesurés, ${show.exact(nominal)} nominal`}`,
        ...(sheet === null ? [] : [`panneau entier ${show.exact(sheet.length)} × ${show.exact(sheet.width)}`]),
        ...(hasGrain ? ['fil en long'] : []),
      ].join(', '),
    band: ({ thickness, height }, show) =>
      `bande de chant, épaisse de ${show.exact(thickness)}${height === null ? '' : `, achetée en ${show.exact(height)} de large`}`,
    slide: ({ lengths: long, rating }, show) =>
      `coulisse, longue de ${et(long.map((one) => show.nominal(one)))}, pour ${rating} kg`,
    hinge: ({ cupDiameter, distance }, show) =>
      `charnière, boîtier Ø ${show.nominal(cupDiameter)}, ${show.span(distance)} du chant`,
    pull: ({ spacing, diameter }, show) =>
      spacing === 0
        ? `bouton, perçage Ø ${show.nominal(diameter)}`
        : `poignée, perçages Ø ${show.nominal(diameter)}, entraxe ${show.nominal(spacing)}`,
    bracket: ({ diameter, holes, rating }, show) =>
      `ferrure de suspension, ${compte(holes.length, 'perçage')} Ø ${show.nominal(diameter)}${rating === null ? '' : `, une paire porte ${rating} kg`}`,
    wardrobeRail: ({ width, height }, show) => `tringle, ${show.exact(width)} × ${show.exact(height)}`,
    foot: ({ range, rating }, show) => `pied, ${show.span(range)}${rating === null ? '' : `, porte ${rating} kg`}`,
    angle: ({ diameter, spacing }, show) =>
      `équerre, ${spacing === 0 ? 'une vis' : `deux vis écartées de ${show.nominal(spacing)}`} par aile, perçages Ø ${show.nominal(diameter)}`,
    oneHead: ({ kind, spindles, pitch }, show) =>
      `${noun(kind).bare}, ${compte(spindles, 'broche')} tous les ${show.nominal(pitch)}`,
    manyHeads: ({ kind, heads, spindles, pitch }, show) =>
      `${noun(kind).bare}, ${compte(heads, 'tête')} de ${compte(spindles, 'broche')} tous les ${show.nominal(pitch)}`,
    cup: ({ kind, distance }, show) =>
      `${noun(kind).bare}, ${show.exact(distance.min)} à ${show.exact(distance.max)} du chant`,
    saw: ({ kind, kerf }, show) => `${noun(kind).bare}, trait de scie ${show.exact(kerf)}`,
    carcass: ({ kind, size }) => `caisson du genre ${kind}, ${size}`,
    carcassUnread: () => 'caisson qui a ses propres erreurs',
  },
  offer: {
    required: () => 'doit s’y trouver',
    withMore: ({ noun: of }) => `${noun(of).a} avec plus d’indications`,
    nextItem: () => 'encore un élément de cette liste',
    listBelow: () => 'une liste, chaque élément sur une ligne',
    listOnOneLine: () => 'une liste sur une seule ligne',
    panel: () => 'un panneau',
    anew: ({ noun: of }) => `nouveau : ${noun(of).bare}`,
    bare: () => 'le chant reste nu',
    unhung: () => 'aucun perçage de charnière',
    unbracketed: () => 'pas de perçages de suspension',
    unfooted: () => 'pas de perçages de pieds',
    unangled: () => 'pas de perçages d’équerres',
    unpulled: () => 'pas de poignée',
    onGrid: ({ hole, of }) => `trou ${hole} sur ${of}, sur la grille`,
  },
  hint: {
    holes: ({ numbers }) => `${nombre(numbers.length, 'trou', 'trous')} ${et(numbers)}`,
    counted: () => 'Compté depuis le bout inférieur du panneau qui porte la rangée.',
    carcass: ({ count, kind, size }, { reader }) =>
      `${count === 1 ? '' : `${count} × `}${kind} ${showSizes(size, reader)}`,
  },
  hover: {
    finished: (_, { unit }) => `Cote finie, ${unit}`,
    toCut: (_, { unit }) => `Cote de débit, ${unit}`,
    notWorkedOut: () =>
      'Les panneaux de ce caisson ne peuvent être calculés tant que son texte ou son fichier d’atelier a des erreurs.',
    pins: ({ holes }) => `Ses taquets sont dans ${holesTold(holes)}, compté depuis le bout inférieur.`,
    pinsOf: ({ panel, holes }) => `- ${panel} : ${holesTold(holes)}, compté depuis le bout inférieur.`,
    pinHoles: ({ holes }) => holesTold(holes),
    onMachines: ({ strokes, setUps }) =>
      `**Sur les machines :** ${compte(strokes, 'descente')} en ${compte(setUps, 'réglage')}.`,
    carcass: ({ name, count, kind, size, wings, plinth, panels, bores }, show) => {
      const many = count === 1 ? '' : `${count} pareils ; `;
      const across = wings === null ? '' : `, en angle avec des ailes profondes de ${show.exact(wings)}`;
      const on = plinth > 0 ? `, sur un socle de ${show.exact(plinth)}` : '';
      return `**${name}** : ${many}caisson de genre ${kind}, ${showSizes(size, show.reader)} hors tout, sans socle ni façades${across}${on} ; ${compte(panels, 'panneau', 'panneaux')}, ${compte(bores, 'perçage')}.`;
    },
    panel: ({ panel, board, size, cut, banded }, { reader }) =>
      `**${panel}** : ${board}, fini ${showSizes(size, reader)}, à débiter ${showSizes(cut, reader)}${banded === null ? ', aucun chant plaqué' : ` ; plaqué : ${banded}`}.`,
    nothingBored: () => 'Rien n’y est percé.',
    joined: ({ panels, fitting }) => `Assemblé à ${panels} par ${fitting}.`,
    row: ({ panel, line, count, diameter, pitch, u, first, last, balanced }, show) =>
      `- ${panel}, rangée ${LINE[line]} : ${compte(count, 'trou')} Ø ${show.nominal(diameter)} tous les ${show.nominal(pitch)}, à ${show.exact(u)} du chant avant ; premier trou à ${show.exact(first.at)} ${fromEnd(first.end)}, dernier à ${show.exact(last.at)} ${fromEnd(last.end)} : ${balanced ? 'égale' : 'inégale'}.`,
    more: ({ count }) => `… et ${count} de plus.`,
    stop: ({ stop, at }, show) => `${stop} ${show.exact(at)}`,
    layAt: ({ lay, at }, show) => `${lay}, ${show.exact(at)}`,
    depth: ({ depth, through, height }, show) =>
      `${through ? 'traversant, ' : ''}${show.exact(depth)}${height === null ? '' : ` à ${show.exact(height)} de hauteur`}`,
    rowStrokes: ({ panel, lines, strokes, machine, stops, depth, through, setUps, bits, moves, centred }, show) => {
      const rows = `${nombre(lines.length, 'rangée', 'rangées')} ${et(lines.map(lineOf))}`;
      const at = et([...new Set(stops.map((stop) => `${stop.name} à ${show.exact(stop.at)}`))]);
      const lengths = [...new Set(moves.map(show.exact))];
      const each = lengths.length < moves.length ? ' chacune' : '';
      const made = [
        `${compte(strokes, 'descente')} sur ${machine}, ${at}, ${depth}${through ? '' : ' de profondeur'}${setUps.length === 0 ? '' : ` (${setUps.join(', ')})`}`,
        bits.join(', puis '),
        moves.length === 0 ? 'aucune avance' : `${compte(moves.length, 'avance')} de ${et(lengths)}${each}`,
        centred ? 'centrée' : 'non centrée',
      ];
      return `- ${panel}, ${rows} : ${made.join(' ; ')}.`;
    },
    tolerance: ({ joints, worst, open }, { unit }) => {
      const names = { front: 'chant avant', step: 'face extérieure', gap: 'jour' };
      const parts = worst.map((one) => `${names[one.of]} ${one.likely} (${one.worst}) ${unit}`);
      const closing =
        open === 0
          ? ''
          : ` ${compte(open, 'assemblage peut', 'assemblages peuvent')} ne pas se fermer avec le jeu des tourillons.`;
      return `Avec les tolérances de l’atelier, ${joints === 1 ? 'l’assemblage reste' : `les ${joints} assemblages restent`} dans ces limites, d’ordinaire (au pire) : ${parts.join(', ')}.${closing}`;
    },
  },
} satisfies Translations;
