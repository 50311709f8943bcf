import type { Show } from '../../words/show.js';
import type { Translations } from '../tables.js';
import { FITTINGS, MACHINES } from './text.js';
import { et, nombre, noun, ofBores, ou, OUR_FAULT, quoted, temps } from './words.js';

/** Ce qu’il y a à dire du travail, de ses caissons et de ses ferrures. */
export const job = {
  size: {
    noBoards: () => 'L’atelier n’a pas de panneau brut. Ajoutez-en un au fichier d’atelier.',
    noFittings: () =>
      'L’atelier n’a rien pour assembler des panneaux. Ajoutez un tourillon, une vis d’assemblage ou une ferrure excentrique au fichier d’atelier.',
    noWidth: ({ thick: [left, right], size, least }, show) =>
      `Les côtés, épais de ${show.length(left)} et ${show.length(right)}, ne laissent pas de place dans un caisson large de ${show.length(size)}. Faites-le plus large que ${show.length(least)}.`,
    noHeight: ({ thick: [bottom, top], size, least }, show) =>
      `Le bas et le dessus, épais de ${show.length(bottom)} et ${show.length(top)}, ne laissent pas de place dans un caisson haut de ${show.length(size)}. Faites-le plus haut que ${show.length(least)}.`,
    noDepth: ({ behind, size }, show) =>
      `Le fond prend ${show.length(behind)} et ne laisse pas de place dans un caisson profond de ${show.length(size)}. Faites-le plus profond que ${show.length(behind)}.`,
    grooveThrough: ({ panel, groove, thickness }, show) =>
      `La rainure du fond est profonde de ${show.length(groove)} et traverse ${panel}, épais de ${show.length(thickness)}. Faites-la moins profonde.`,
    dividersNoBay: ({ count, thickness, clear }, show) =>
      `${count} séparations de ${show.length(thickness)} ne laissent pas de travée dans ${show.length(clear)} de largeur libre. Prenez moins de séparations, ou faites le caisson plus large.`,
    shelvesTooMany: ({ count, kind, pitch, most }, show) =>
      `${count} tablettes ${kind === 'fixed' ? 'fixes' : 'mobiles'} ne tiennent pas sur le pas de ${show.nominal(pitch)} ; ${most === 0 ? 'pas même une seule' : `le maximum est ${most}`}. Prenez moins de tablettes, ou faites le caisson plus haut.`,
    bayMissing: ({ shelf, bay, bays }) =>
      bays === 1
        ? `${shelf} ne peut être dans la travée ${bay}, car le caisson n’a pas de séparation. Prenez la travée 1, ou ajoutez une séparation.`
        : `${shelf} ne peut être dans la travée ${bay}, car le caisson a ${bays} travées. Prenez une travée entre 1 et ${bays}.`,
    shelfOutside: ({ shelf, at, above, room }, show) =>
      `${shelf} à ${show.length(at)} ne tient pas entre le bas et ${ABOVE[above]}. Mettez-la entre ${show.length(room[0])} et ${show.length(room[1])}.`,
    shelfNowhere: ({ shelf, at, above }, show) =>
      `${shelf} à ${show.length(at)} ne tient pas entre le bas et ${ABOVE[above]}. Retirez-la, ou faites le caisson plus haut.`,
    shelfRunsInto: ({ shelf, at, other, free: [down, up] }, show) =>
      `${shelf} à ${show.length(at)} heurte ${other}. Mettez-la à ${show.length(down)} ou plus bas, ou à ${show.length(up)} ou plus haut.`,
    shelfNoLength: ({ shelf, bay, play }, show) =>
      `${shelf} n’a plus de longueur : la travée est large de ${show.length(bay)}, et le jeu aux deux bouts prend ${show.length(play)}. Faites la travée plus large.`,
    shelfNoWidth: ({ shelf, clear, setback }, show) =>
      `${shelf} n’a plus de largeur : la profondeur libre est ${show.length(clear)}, et le retrait de la tablette prend ${show.length(setback)}. Réduisez le retrait.`,
    noDiagonal: ({ size, depth, least }, show) =>
      `Un caisson profond de ${show.length(depth)} qui va sur ${show.length(size)} le long d’un mur n’a pas de façade en biais. Faites-le aller sur plus de ${show.length(least)}, ou moins profond.`,
    shelfAllCut: ({ shelf, setback }, show) =>
      `Le retrait de ${show.length(setback)} ne laisse à ${shelf} aucun bord droit près des côtés. Faites-le plus petit.`,
    shelfInDoor: ({ shelf, setback, inset }, show) =>
      `${shelf} est en retrait de ${show.length(setback)} et heurte une porte encastrée, qui entre de ${show.length(inset)}. Donnez-lui un retrait d’au moins ${show.length(inset)}.`,
    doorsBeforeDividers: ({ bays }) =>
      `Une porte encastrée ne peut être devant les séparations de ${bays} travées, car elles vont jusqu’à l’avant. Dites avec \`bays\` ce qui est devant chaque travée, ou prenez des portes en applique.`,
    doorBayMissing: ({ asked, bays }) =>
      `Les portes de ${asked} travées sont indiquées, mais le caisson en a ${bays}. N’en indiquez pas plus, ou ajoutez une séparation.`,
    frontBayMissing: ({ bay, bays }) =>
      bays === 1
        ? `Une façade ne peut pas être devant la travée ${bay}, car le caisson n’a pas de séparation. Prenez la travée 1, ou ajoutez une séparation.`
        : `Une façade ne peut pas être devant la travée ${bay}, car le caisson a ${bays} travées. Prenez une travée entre 1 et ${bays}.`,
    backAllOpen: () => 'Ce qui reste ouvert prend tout le fond. Écrivez `back: none`, ou laissez-en moins ouvert.',
    blindTooWide: ({ reach, width }, show) =>
      `Le panneau aveugle irait avec sa bande jusqu’à ${show.length(reach)} du côté, et ne laisse rien à ouvrir dans un caisson large de ${show.length(width)}. Faites le caisson plus large, ou moins aveugle.`,
    frontBehindBlind: ({ front }) =>
      `${front} serait tout entière derrière le panneau aveugle. Dites avec \`bay\` devant quelle travée elle est, ou faites le caisson moins aveugle.`,
    drawerBehindBlind: ({ drawer, from, to, box }, show) =>
      `La caisse de ${drawer} serait entre ${show.length(box[0])} et ${show.length(box[1])} depuis la gauche, et ne peut passer le panneau aveugle, à côté duquel la façade est ouverte de ${show.length(from)} à ${show.length(to)}. Partagez là le caisson par une séparation, et mettez le tiroir devant l’autre travée.`,
    frontsTooHigh: ({ fronts, given, room, left }, show) =>
      `Les hauteurs de ${fronts} façades font ${show.length(given)} sans leurs jeux, et la place pour elles a ${show.length(room)} de haut : il reste ${show.length(Math.max(0, left))} pour les autres. Faites-en une plus basse, ou ne donnez pas sa hauteur.`,
    noSlides: () => 'L’atelier n’a pas de coulisses. Ajoutez-en une au fichier d’atelier.',
    drawerNoDepth: ({ drawer, slide, least, room }, show) =>
      `${drawer} ne trouve pas de coulisse : la plus courte de ${quoted(slide)} a ${show.length(least)} de long, et la place derrière sa façade est de ${show.length(room)}. Faites le caisson plus profond, ou prenez une autre coulisse.`,
    drawerNoWidth: ({ drawer, bay, taken }, show) =>
      `${drawer} ne trouve pas de place entre des montants écartés de ${show.length(bay)}, dont les coulisses prennent ${show.length(taken)}. Faites la travée plus large.`,
    drawerNoHeight: ({ drawer, height, most, canBeLower }, show) =>
      `La caisse de ${drawer} devrait avoir ${show.length(height)} de haut, et derrière sa façade, sur le pas, il y a place pour ${show.length(Math.max(0, most))}. Faites la façade plus haute${canBeLower ? ', ou la caisse plus basse' : ''}.`,
    doorNoSize: ({ door, width, height }, show) =>
      `${door} aurait ${show.length(width)} de large et ${show.length(height)} de haut. Réduisez les marges et les jeux, ou agrandissez le caisson.`,
    doorTooThick: ({ door, thickness, clear }, show) =>
      `${door} est épaisse de ${show.length(thickness)} et ne trouve pas de place dans ${show.length(clear)} de profondeur libre. Prenez un panneau plus mince, ou une porte en applique.`,
    dividerUnderRails: ({ thick: [front, back] }, show) =>
      `Une séparation ne peut finir sous les deux traverses, car celle de devant est épaisse de ${show.length(front)} et celle de derrière de ${show.length(back)}. Donnez aux deux le même panneau brut.`,
    dividerOutside: ({ divider, run, beside, room }, show) =>
      `${divider} irait de ${show.length(run[0])} à ${show.length(run[1])}, mais la place libre à côté de ${beside} va de ${show.length(room[0])} à ${show.length(room[1])}. Déplacez-la, ou retirez-la.`,
    plinthTooThick: ({ thickness, clear }, show) =>
      `Le socle est épais de ${show.length(thickness)} et ne tient pas sous ${show.length(clear)} de profondeur libre. Prenez un panneau plus mince.`,
    railsTooWide: ({ width, clear, pitch }, show) =>
      `Deux traverses larges de ${show.length(width)} ne tiennent pas dans ${show.length(clear)} de profondeur libre, celle de derrière sur le pas de ${show.nominal(pitch)}. Faites-les plus étroites, ou le caisson plus profond.`,
    nothingToCut: ({ panel, length, width }, show) =>
      `Les bandes de ${panel} ne laissent rien à débiter de ses ${show.length(length)} × ${show.length(width)}. Faites le panneau plus grand, ou ses bandes plus minces.`,
    panelMisspelt: ({ panel, near }) =>
      `Le caisson n’a pas de panneau ${quoted(panel)}. Vouliez-vous dire \`${near}\` ?`,
    panelUnknown: ({ panel, panels }) =>
      `Le caisson n’a pas de panneau ${quoted(panel)}. ${nombre(panels.length, 'Son panneau est', 'Ses panneaux sont')} ${et(panels)}.`,
    rename: ({ panel }) => `Renommer en ${panel}`,
  },
  job: {
    neutralShop: () =>
      'L’atelier intégré sert, car le travail ne nomme pas de fichier d’atelier. Ses machines sont inventées : nommez le vôtre avec `shop: NAME.shop.yaml`.',
    brokenShop: ({ errors, line, first }, show) =>
      `${faulty(errors, line)} ${show.tell(first)} Ce qui est dit de ce travail peut être faux tant que le fichier d’atelier n’est pas corrigé.`,
    brokenShopNames: ({ errors, line, first, names }, show) =>
      `${faulty(errors, line)} ${show.tell(first)} Rien n’est calculé ni prévu avec ${et(names.map(unread))} tant que le fichier d’atelier n’est pas corrigé.`,
    unusableShop: ({ errors, line, first }, show) =>
      `${faulty(errors, line)} ${show.tell(first)} Rien n’est calculé pour ce travail tant que le fichier d’atelier n’est pas corrigé.`,
    incompleteShop: ({ list, names, sections, carcasses, more }) =>
      `Le fichier d’atelier n’a pas ${list === 'angles' ? 'd’' : 'de '}${LISTS[list]} ; ${et(names.map(quoted))} de l’atelier intégré ${nombre(names.length, 'sert', 'servent')} donc dans ${et([...carcasses.map(quoted), ...(more > 0 ? [`${more} autres`] : [])])}. ${nombre(names.length, 'Ses cotes ne sont pas celles', 'Leurs cotes ne sont pas celles')} de votre atelier : écrivez les vôtres sous ${et(sections.map((key) => `\`${key}\``))}.`,
    usedHere: ({ names }) => `${et(names.map(quoted))} ${nombre(names.length, 'sert', 'servent')} ici.`,
    writeBuiltIn: ({ list }) =>
      `Écrire les ${LISTS[list]} de l’atelier intégré dans le fichier d’atelier, pour les corriger`,
    useShop: ({ file }) => `Prendre ${quoted(file)}`,
    internalFault: ({ words }) =>
      `Borewright a échoué en contrôlant ce caisson (${words}) ; tout n’y est donc pas contrôlé. ${OUR_FAULT} : signalez-la avec le fichier de travail et le fichier d’atelier.`,
    ofLikes: ({ carcasses, message }, show) =>
      `Dans ${et(carcasses.map(quoted))}, qui ${carcasses.length === 1 ? 'est' : 'sont'} comme celui-ci : ${show.tell(message)}`,
    batchInCarcass: ({ title }, show) => `${show.tell(title)} (ce caisson)`,
    batchInFile: ({ title }, show) => `${show.tell(title)} (tout le fichier)`,
  },
  like: {
    unknown: ({ name, carcasses }) =>
      carcasses.length === 0
        ? `Aucun autre caisson de ce fichier n’a de nom, donc aucun ne s’appelle ${quoted(name)}. Écrivez plutôt le genre et la largeur de celui-ci.`
        : `Aucun caisson de ce fichier ne s’appelle ${quoted(name)}. Prenez-en un autre, par exemple ${ou(carcasses)}.`,
    misspelt: ({ name, near }) => `Aucun caisson de ce fichier ne s’appelle ${quoted(name)}. Prenez ${quoted(near)}.`,
    use: ({ name }) => `Prendre ${quoted(name)}`,
    itself: () =>
      'Le caisson est comme lui-même, donc rien ne dit ce qu’il est. Nommez-en un autre, ou écrivez son genre et sa largeur.',
    circular: ({ names }) =>
      `${quoted(names[0]!)} est comme ${[...names.slice(1), names[0]!].map(quoted).join(', et celui-ci comme ')}, donc rien ne dit ce qu’ils sont. Retirez \`like\` de l’un d’eux, et écrivez son genre et sa largeur.`,
    standAlone: () => 'Retirer `like` : ce caisson a un genre et une largeur à lui',
    far: ({ most }) =>
      `Plus de ${most} caissons de suite sont chacun comme un autre. Nommez-en un qui vient plus tôt dans la suite.`,
    unread: ({ name }) =>
      `${quoted(name)}, que ce caisson prend pour modèle, a lui-même des erreurs. Corrigez-les d’abord.`,
    unreadHere: ({ name }) => `${quoted(name)} est ici.`,
  },
  moves: {
    variant: ({ name, hand }) =>
      hand === 'same'
        ? `Écrire comme variante de ${quoted(name)} (\`like\`)`
        : `Écrire comme variante en miroir de ${quoted(name)} (\`like\`, \`mirrored\`)`,
    writtenOut: ({ name }) => `Écrire en entier, sans ${quoted(name)}`,
    mirrored: () => 'Échanger la gauche et la droite',
    evenly: ({ key, at }, show) => `Donner ${SPREAD[key]} des ouvertures égales : ${et(at.map(show.exact))}`,
    pitches: ({ size, pitches }, show) =>
      `Étirer à ${show.exact(size)}, un pas de ${pitches > 0 ? 'plus' : 'moins'}, avec ce qu’il y a dedans`,
    asOther: ({ size, name }, show) => `Étirer à ${show.exact(size)}, comme ${quoted(name)}, avec ce qu’il y a dedans`,
  },
  refactors: {
    duplicate: ({ name, free }) => `Dupliquer ${name} en ${free}`,
    inUnit: ({ text }) => `L’écrire ${text}`,
    spread: ({ count }) =>
      count === 1 ? 'Laisser Borewright placer la tablette' : `Répartir également les ${count} tablettes`,
  },
  'set-up-for-one': {
    saved: ({ machine, panel, seconds, other, difference, line }, show) =>
      `${panel} a sur ${machine} un réglage pour lui seul, qui prend ${temps(seconds)} de plus que celui de ${quoted(other)}. Seule ${DIFFERS[difference.in]} diffère : ${show.exact(difference.is)} au lieu de ${show.exact(difference.instead)}. Avec ${instead(difference, line, show)}, le panneau pourrait être percé avec ${quoted(other)}.`,
  },
  'carcasses-overlap': {
    overlap: ({ name, other, wall, own, others, by }, show) =>
      `${quoted(name)} va de ${show.length(own.from)} à ${show.length(own.to)} le long du mur ${wall}, et ${quoted(other)}, à la même hauteur, de ${show.length(others.from)} à ${show.length(others.to)} : ils sont l’un dans l’autre de ${show.length(by)}. Déplacez l’un des deux (\`place\`).`,
  },
  'past-wall-end': {
    corner: ({ name, other, wall, hand }) =>
      `${quoted(name)} est à ${hand === 'left' ? 'gauche' : 'droite'} de ${quoted(other)} le long du mur ${wall}, et le bout ${hand === 'left' ? 'gauche' : 'droit'} de celui-ci est dans l’angle de la pièce. Dites contre quel autre mur il est (\`place: wall\`), ou déplacez-le.`,
    end: ({ name, wall, by }, show) =>
      `${quoted(name)} dépasse de ${show.length(by)} le bout gauche du mur ${wall} avec ce qui est à côté de son côté gauche. Décalez-le d’autant vers la droite (\`place\`).`,
  },
  'worktop-uneven': {
    uneven: ({ name, other, top, beside }, show) =>
      `Le dessus de ${quoted(name)} est à ${show.length(top)} du sol, et celui de ${quoted(other)} à côté à ${show.length(beside)} : un plan de travail sur les deux ne serait pas de niveau. Donnez-leur la même hauteur (\`height\`, \`plinth\`).`,
  },
  'to-defaults': {
    move: ({ path, text, carcasses }) =>
      `Déplacer ${written(path, text)} de ${carcasses} caissons dans les valeurs par défaut`,
    drop: ({ path, text, carcasses }) =>
      carcasses === 1
        ? `Retirer ${written(path, text)}, que les valeurs par défaut disent aussi`
        : `Retirer ${written(path, text)} de ${carcasses} caissons, car les valeurs par défaut le disent aussi`,
  },
  'left-out': {
    byKind: () => 'À défaut : ce qui convient au genre.',
    byLooseShelves: ({ some, none }) => `À défaut : \`${some}\` avec des tablettes mobiles, sinon \`${none}\`.`,
    length: ({ length }, show) => `À défaut : ${show.exact(length)}.`,
    word: ({ word }) => `À défaut : \`${word}\`.`,
    none: () => 'À défaut : aucun.',
    one: () => 'À défaut : un.',
    rightOfLast: () =>
      'À défaut : à droite du caisson précédent du fichier qui est au même mur et, comme lui, au sol ou au-dessus.',
    onFloor: () => 'À défaut : au sol.',
    usualHeight: ({ length, kind }, show) =>
      `À défaut : ${show.exact(length)}, la hauteur habituelle de l’atelier pour \`kind: ${kind}\`.`,
    balancedHeight: ({ pitches, pitch }, show) =>
      `À défaut : ${pitches} pas de ${show.nominal(pitch)} et l’épaisseur du côté, pour des rangées égales.`,
    usualDepth: ({ length, kind }, show) =>
      `À défaut : ${show.exact(length)}, la profondeur habituelle de l’atelier pour \`kind: ${kind}\`.`,
    usualBoard: ({ name }) => `À défaut : ${quoted(name)}, le panneau brut habituel de l’atelier.`,
    usualBackBoard: ({ name }) => `À défaut : ${quoted(name)}, le panneau brut habituel des fonds.`,
    usualBand: ({ name }) => `À défaut : ${quoted(name)}, la bande habituelle de l’atelier.`,
    usualFitting: ({ name }) => `À défaut : ${quoted(name)}, la ferrure habituelle de l’atelier.`,
    usualHinge: ({ name }) => `À défaut : ${quoted(name)}, la charnière habituelle de l’atelier.`,
    everyRowBay: () => 'À défaut : toutes les travées.',
    wholeBack: () => 'Sans indication : le fond est entier, ou ce que dit l’autre des deux.',
    wholeRow: () => 'À défaut : aussi loin que va la rangée.',
    everyHole: () => 'À défaut : tous les trous.',
    usualPull: ({ name }) => `À défaut : ${quoted(name)}, la poignée habituelle de l’atelier.`,
    usualBracket: ({ name }) => `À défaut : ${quoted(name)}, la ferrure de suspension usuelle de l’atelier.`,
    usualFoot: ({ name }) => `À défaut : ${quoted(name)}, le pied usuel de l’atelier.`,
    usualAngle: ({ name }) => `À défaut : ${quoted(name)}, l’équerre usuelle de l’atelier.`,
    pullOfDoors: () => 'À défaut : celle des portes.',
    pullByHand: ({ height, kind }, show) =>
      kind === 'wall'
        ? 'À défaut : près du bout inférieur.'
        : `À défaut : à ${show.exact(height)} du sol où cela tombe dans le tiers médian de la porte, sinon près du bout qui en est le plus proche.`,
    centred: () => 'À défaut : au milieu de la hauteur.',
    usualMachine: ({ name }) => `À défaut : ${quoted(name)}, la machine habituelle de l’atelier.`,
    usualMachines: () => 'À défaut : les machines habituelles de l’atelier.',
    halfSide: () => 'À défaut : la moitié de l’épaisseur nominale du côté.',
    asFarBack: () => 'À défaut : aussi loin au fond que le pas et la marge arrière de l’atelier le permettent.',
    bySpindles: () => 'À défaut : les places que donnent les broches de la tête verticale de l’atelier.',
    everyBay: () => 'À défaut : une dans chaque travée.',
    usualSlide: ({ name }) => `À défaut : ${quoted(name)}, la coulisse habituelle de l’atelier.`,
    asDoorsSay: () => 'À défaut : ce que dit `doors`.',
    asHighAsFits: () => 'À défaut : aussi haut que la place le permet.',
    usualDrawers: () =>
      'À défaut : la coulisse habituelle de l’atelier, et le panneau brut, la bande de chant et la ferrure du caisson.',
    fittingOfCarcass: () => 'À défaut : la ferrure du caisson.',
    hungBefore: () => 'À défaut : ce que dit `hung`, devant toute la façade.',
    bandOfCarcass: () => 'À défaut : la bande du caisson.',
    downToFloor: () => 'Sans indication : oui.',
    boardOfFronts: () => 'Sans indication : le panneau brut des portes.',
    bandOfFronts: () => 'Sans indication : la bande de chant des portes.',
    boardOfCarcass: () => 'À défaut : le panneau brut du caisson.',
    asCarcass: () => 'À défaut : comme dans le reste du caisson.',
  },
  dowel: {
    described: (one, show) =>
      `tourillon, Ø ${show.nominal(one.diameter)}, long de ${show.nominal(one.length)}, ${show.nominal(one.inFace)} dans la face`,
    nothingForEnd: ({ inFace, long }, show) =>
      `Un perçage profond de ${show.exact(inFace)} dans la face ne laisse rien pour le bout d’un tourillon long de ${show.exact(long)}. Écrivez un plus petit \`in-face\`.`,
  },
  cam: {
    described: ({ camDiameter, distance, guide }, show) =>
      `ferrure excentrique, Ø ${show.nominal(camDiameter)}, à ${show.nominal(distance)} du bout${guide === null ? '' : `, avec ${guide}`}`,
    shortBolt: ({ name, depth, least, distance, ...bores }, show) =>
      `${shallow('cam-bolt', depth, least, bores, show)}, pour déboucher dans l’excentrique de ${quoted(name)} à ${show.length(distance)} du bout. Percez plus profond, ou laissez la profondeur à la ferrure.`,
    shortCam: ({ name, depth, least, under, board, ...bores }, show) =>
      `${shallow('cam', depth, least, bores, show)} dans un panneau épais de ${show.length(board)}, où le boulon de ${quoted(name)} est à ${show.length(under)} sous la face. Prenez une ferrure faite pour cette épaisseur, ou un panneau plus mince.`,
    shortStud: ({ name, depth, least, ...bores }, show) =>
      `${shallow('cam-stud', depth, least, bores, show)}, ce dont entre le goujon de ${quoted(name)}. Percez plus profond, ou laissez la profondeur à la ferrure.`,
  },
  screw: {
    described: ({ length: long, clearance, pilot, head }, show) =>
      `vis d’assemblage, longue de ${show.nominal(long)}, passage Ø ${show.nominal(clearance)}, avant-trou Ø ${show.nominal(pilot)}${head === null ? '' : `, tête Ø ${show.nominal(head.diameter)} dans un fraisage de ${show.nominal(head.recess)}`}`,
    noRecess: ({ key }) =>
      key === 'head'
        ? 'Une tête noyée dans un fraisage demande sa profondeur. Écrivez aussi `recess`.'
        : 'Un fraisage demande son diamètre. Écrivez aussi `head`.',
    narrowHead: ({ head, clearance }, show) =>
      `Une tête de ${show.exact(head)} ne tient pas sur un trou de passage de ${show.exact(clearance)}. Écrivez un plus grand \`head\`, ou un plus petit \`clearance\`.`,
    headThrough: ({ name, recess, least, board, ...bores }, show) =>
      `${ofBores('clearance', bores)} ${nombre(bores.count, 'a', 'ont')} trop peu de matière sous la tête de ${quoted(name)} : son fraisage a ${show.exact(recess)} de profondeur dans un panneau de ${show.exact(board)}, et ${show.exact(least)} doivent rester. Prenez un panneau plus épais, ou une vis à tête plus plate.`,
    outOfReach: ({ name, long, passed, ...bores }, show) =>
      `${ofBores('pilot', bores)} ${nombre(bores.count, 'est', 'sont')} hors d’atteinte : ${quoted(name)} est longue de ${show.length(long)} et traverse ${show.length(passed)} de panneau. Prenez une vis plus longue.`,
    holdsLittle: ({ name, long, passed, reach, hold, ...bores }, show) =>
      `${ofBores('pilot', bores)} ne ${nombre(bores.count, 'prend', 'prennent')} que ${show.length(reach)} de ${quoted(name)}, longue de ${show.length(long)} et qui traverse ${show.length(passed)} de panneau ; le minimum est ${show.length(hold)}, le double de sa grosseur. Prenez une vis plus longue.`,
    shallow: ({ name, long, passed, depth, reach, ...bores }, show) =>
      `${ofBores('pilot', bores)} ${nombre(bores.count, 'a', 'ont')} ${show.exact(depth)} de profondeur ; le minimum est ${show.exact(reach)}, car ${quoted(name)} est longue de ${show.length(long)} et traverse ${show.length(passed)} de panneau. Percez plus profond, ou laissez la profondeur à la ferrure.`,
  },
} satisfies Translations;

const ABOVE = { top: 'le dessus', rails: 'les traverses' } as const;

const LISTS = {
  boards: 'panneaux bruts',
  bands: 'bandes de chant',
  fittings: 'ferrures d’assemblage',
  hinges: 'charnières',
  slides: 'coulisses',
  pulls: 'poignées',
  brackets: 'ferrures de suspension',
  wardrobeRails: 'tringles',
  feet: 'pieds',
  angles: 'équerres',
  machines: 'machines',
} as const;

const faulty = (errors: number, line: number): string =>
  errors === 1
    ? `Le fichier d’atelier a une erreur à la ligne ${line}.`
    : `Le fichier d’atelier a ${errors} erreurs, la première à la ligne ${line}.`;

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
  fence: 'la distance au guide',
  height: 'la hauteur des broches',
  depth: 'la profondeur',
  thickness: 'l’épaisseur du panneau',
} as const;
function instead(difference: Difference, line: 'front' | 'rear' | null, show: Show): string {
  const { is, instead: other } = difference;
  switch (difference.in) {
    case 'fence':
      if (line === null)
        return `des perçages ${show.exact(Math.abs(other - is))} plus ${other > is ? 'au fond' : 'en avant'} (\`dowels\`)`;
      return line === 'front'
        ? `la rangée avant à ${show.exact(other)} du chant avant (\`row-setback\`)`
        : `la rangée arrière à ${show.exact(other)} du chant avant (\`rear-row\`)`;
    case 'height':
      return 'un panneau aussi épais que les autres (`board`)';
    case 'depth':
      return `des perçages profonds de ${show.exact(other)}`;
    case 'thickness':
      return `un panneau épais de ${show.exact(other)} (\`board\`)`;
  }
}

const written = (path: readonly string[], text: string): string => quoted([...path, text].join(': '));

interface Told {
  readonly count: number;
  readonly panels: readonly string[];
}
const shallow = (
  purpose: Parameters<typeof ofBores>[0],
  depth: number,
  least: number,
  told: Told,
  show: Show,
): string =>
  `${ofBores(purpose, told)} ${nombre(told.count, 'a', 'ont')} ${show.exact(depth)} de profondeur ; le minimum est ${show.exact(least)}`;

const SPREAD = {
  dividers: 'aux séparations',
  'fixed-shelves': 'aux tablettes fixes',
  'loose-shelves': 'aux tablettes mobiles',
} as const;
