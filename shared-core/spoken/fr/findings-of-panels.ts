import type { Show } from '../../words/show.js';
import type { Translations } from '../tables.js';
import { CIRCUMSTANCES } from './circumstances.js';
import { compte, et, FROM, HAND, LINE, nombre, ou, OUR_FAULT, quoted, work } from './words.js';

/** Constats sur les panneaux, les tablettes, les rangées et les portes. */
/** '45°' */
const degrees = (angle: number): string => `${String(Math.round(angle * 10) / 10).replace('.', ',')}°`;

export const findingsOfPanels = {
  'band-missing': {
    bare: ({ panels }) =>
      `${nombre(panels.length, 'Le chant avant', 'Les chants avant')} de ${et(panels)} ${nombre(panels.length, 'n’a', 'n’ont')} pas de bande. Nommez-en une avec \`band\`.`,
    bandFront: ({ band, thickness }, show) => `Plaquer le chant avant avec ${quoted(band)} (${show.length(thickness)})`,
    bandEvery: ({ band }) => `Plaquer chaque chant avant nu avec ${quoted(band)}`,
    removeNone: () => 'Retirer `none` et prendre la bande habituelle',
  },
  'band-too-narrow': {
    uncovered: ({ band, height, thickness, panels }, show) =>
      `${quoted(band)} est large de ${show.length(height)} et ne couvre pas ${nombre(panels.length, 'un chant', 'les chants')} de ${et(panels)}, épais de ${show.length(thickness)}. Choisissez une bande plus large.`,
  },
  'clamp-misses-panel': {
    tooFarOut: ({ deep, side, across, most, ...loose }, show) =>
      `${comesDown(loose)} : ${nombre(loose.panels.length, 'il mesure', 'ils mesurent')} ${show.length(deep)} de ${side === 'width' ? 'largeur' : 'longueur'}, et le presseur le plus proche est à ${show.length(across)} ${side === 'width' ? 'du guide' : 'de la tête'}. ${nombre(loose.panels.length, 'Tenez-le', 'Tenez-les')} dans un gabarit, ou réglez un presseur à ${show.length(most)} au plus (\`across\`).`,
    beside: (loose) =>
      `${comesDown(loose)} là où ${nombre(loose.panels.length, 'il repose', 'ils reposent')} contre la butée. ${nombre(loose.panels.length, 'Tenez-le', 'Tenez-les')} dans un gabarit, ou réglez un presseur plus près des broches (\`along\`).`,
  },
  'clamp-too-small': {
    outOfRange: ({ side, key, size, clamp, range }, show) =>
      `Le caisson mesure ${show.length(size)} ${{ width: 'de largeur', height: 'de hauteur', depth: 'de profondeur' }[side]} ; ${quoted(clamp)} tient entre ${show.length(range.min)} et ${show.length(range.max)}. Changez \`${key}\`, ou choisissez une autre cadreuse (\`machines: clamp\`).`,
  },
  'door-swing-meets': {
    meets: ({ door, hung, others, angle }) =>
      `${door}, montée ${HAND[hung]}, touche ${et(others)} quand elle est ouverte de ${angle}°. Agrandissez le jeu ou la marge à cet endroit, montez-la de l’autre côté, ou prenez une charnière qui dégage son chant.`,
    byPull: ({ door, hung, pull, others, angle }) =>
      `${quoted(pull)} sur ${door}, montée ${HAND[hung]}, touche ${et(others)} quand la porte est ouverte de ${angle}°. Placez la poignée plus près du chant de fermeture, prenez-en une plus plate, ou une charnière qui ouvre moins.`,
    onPull: ({ door, hung, pull, others, angle }) =>
      `${door}, montée ${HAND[hung]}, touche ${quoted(pull)} sur ${et(others)} quand elle est ouverte de ${angle}°. Placez cette poignée plus loin du chant, prenez-en une plus plate, ou une charnière qui ouvre moins.`,
  },
  'drawer-lower-than-slide': {
    low: ({ drawers, height, slide, needs }, show) =>
      `${nombre(drawers.length, 'La caisse', 'Les caisses')} de ${et(drawers)} ${nombre(drawers.length, 'a', 'ont')} ${show.length(height)} de haut, et ${quoted(slide)} monte à ${show.length(needs)} au-dessus du chant inférieur. Faites la façade ou la caisse plus haute, ou prenez une coulisse plus basse.`,
    asHigh: () => 'Faire les caisses aussi hautes que leur place le permet',
  },
  'drawer-meets-shelf': {
    meets: ({ shelf, drawers }) =>
      `${shelf} est sur la course de ${et(drawers)}, qui ${nombre(drawers.length, 'passe', 'passent')} par la même place. Mettez la tablette où aucun tiroir ne passe, ou retirez-la.`,
    remove: ({ shelf }) => `Retirer ${shelf}`,
  },
  'fronts-leave-open': {
    open: ({ bay, open }, show) =>
      `Les façades${bay === null ? '' : ` devant la travée ${bay}`} laissent ${show.length(open)} ouverts en bas, car chacune a sa propre hauteur. Ne donnez pas la hauteur de l’une, ou faites-en une plus haute d’autant.`,
    share: () => 'Laisser la façade du bas prendre ce qui reste',
    higher: ({ to }, show) => `Faire la façade du bas haute de ${show.exact(to)}`,
  },
  'appliance-without-air': {
    closed: ({ from, to }, show) =>
      `Le fond est fermé derrière l’appareil ; sa chaleur et ses conduites n’ont pas d’issue. Laissez-le ouvert de ${show.length(from)} à ${show.length(to)}, ou comme le dit la notice de l’appareil.`,
    open: ({ from, to }, show) => `Laisser le fond ouvert de ${show.exact(from)} à ${show.exact(to)}`,
  },
  'appliance-without-room': {
    meets: ({ shelves, high }, show) =>
      `${et(shelves)} ${nombre(shelves.length, 'est', 'sont')} à la place de l’appareil, haute de ${show.length(high)}. ${nombre(shelves.length, 'Mettez-la', 'Mettez-les')} là où l’appareil n’est pas, ou ${nombre(shelves.length, 'enlevez-la', 'enlevez-les')}.`,
  },
  'not-in-diagonal': {
    otherHand: () =>
      'Un caisson est en biais dans un seul angle, et `diagonal` dit `left` et `right`. Enlevez l’un des deux ; c’est `left` qui compte.',
    dividers: () =>
      'Un caisson en biais dans un angle se fait sans séparations, car les travées n’auraient pas de façade à elles. Enlevez-les, ou mettez un autre caisson à côté.',
    fixedShelves: () =>
      'Un caisson en biais dans un angle se fait sans tablettes fixes, car un de ses côtés en toucherait le chant avant, qui n’est pas percé. Faites-en des tablettes mobiles (`loose-shelves`).',
    drawer: () =>
      'Un tiroir ne coulisse pas entre les côtés d’un caisson en biais, qui sont d’équerre l’un à l’autre. Mettez-y une porte, et le tiroir dans un caisson à côté.',
    appliance: () => 'Un appareil ne tient pas entre les côtés d’un caisson en biais. Donnez-lui un caisson à lui.',
    blind: () => 'Un caisson en biais n’a pas de bout aveugle. Enlevez `blind`, ou enlevez `diagonal`.',
    wardrobeRails: () =>
      'Aucune tringle ne tient entre les côtés d’un caisson en biais, qui ne se font pas face. Enlevez-la.',
    plinth: () =>
      'Un caisson en biais se fait sans plinthe à lui. Faites passer dessous celle des meubles voisins, et dites sa hauteur avec `plinth: 0` et `place: { above-floor: … }`.',
    endPanels: () =>
      'Un caisson en biais se fait sans joues, car il a un voisin de chaque côté. Donnez-les au dernier caisson de chaque mur.',
    fillers: () =>
      'Un caisson en biais se fait sans fileurs, car sa façade n’est pas dans le plan de ses voisins. Donnez-les aux voisins.',
    top: () => 'Les deux côtés d’un caisson en biais sont sous son dessus. Écrivez `top: over`.',
    bottom: () => 'Les deux côtés d’un caisson en biais sont sur son bas. Écrivez `bottom: under`.',
    back: () =>
      'Les fonds d’un caisson en biais sont sur les chants arrière : une rainure ou une feuillure ne court pas le long des deux murs. Écrivez `applied`, ou `none`.',
    backOpen: () => 'Les fonds d’un caisson en biais sont entiers. Enlevez-le, et découpez au mur ce qu’il faut.',
    inset: () =>
      'La façade en biais est devant les chants : entre des côtés d’équerre l’un à l’autre elle n’a pas de place. Écrivez `overlay`.',
    remove: ({ key }) => `Enlever \`${key}\``,
    write: ({ key, word }) => `Écrire \`${key}: ${word}\``,
  },
  'hinge-not-for-slant': {
    slants: ({ doors, hinge, slant, made }) =>
      `${et(doors)} ${nombre(doors.length, 's’écarte', 's’écartent')} de ${degrees(slant)} d’une façade d’équerre au côté, et ${quoted(hinge)} est faite pour ${made === 0 ? 'des façades droites' : degrees(made)} (\`slant\`). Choisissez une charnière faite pour cela (\`doors: hinge\`).`,
    square: ({ doors, hinge, made }) =>
      `${et(doors)} ${nombre(doors.length, 'est', 'sont')} d’équerre au côté, et ${quoted(hinge)} est faite pour des façades en biais de ${degrees(made)} (\`slant\`). Choisissez une autre charnière (\`doors: hinge\`).`,
    use: ({ hinge }) => `Ferrer sur ${quoted(hinge)}`,
  },
  'door-hung-on-blind': {
    hung: ({ door, hand, at }, show) =>
      `${door} est ferrée à ${hand === 'left' ? 'gauche' : 'droite'}, près du panneau aveugle, où aucun montant ne porte ses charnières. Ferrez-la à ${hand === 'left' ? 'droite' : 'gauche'}, ou mettez une séparation à ${show.length(at)} (\`dividers\`), derrière le bord du panneau aveugle.`,
    hang: ({ hand }) => `La ferrer à ${hand === 'left' ? 'gauche' : 'droite'}`,
  },
  'pull-meets-corner': {
    meets: ({ pull, front, projection, room }, show) =>
      `${quoted(pull)} sur ${front} avance de ${show.length(projection)}, et entre les meubles de l’angle et la façade suivante il y a ${show.length(room)} : avec de telles poignées des deux côtés, rien ne s’ouvre devant celles de l’autre. Faites la bande (\`strip\`) du panneau aveugle plus large, et le fileur de l’autre côté aussi large.`,
    wider: ({ to }, show) => `Laisser voir ${show.exact(to)} du panneau aveugle`,
  },
  'front-off-pitch': {
    off: ({ height, gap, over, pitches, to }, show) =>
      `Une hauteur de ${show.length(height)} et le jeu de ${show.length(gap)} dessous font ${show.length(Math.abs(over))} de ${over > 0 ? 'plus' : 'moins'} que ${pitches} pas ; coulisses et embases sont donc autrement derrière les façades du dessous que derrière celles du dessus. Faites-la haute de ${show.length(to)}.`,
    few: ({ bay, fronts, step, pitches, wanted }) =>
      `${fronts} façades${bay === null ? '' : ` devant la travée ${bay}`} se partagent ${pitches} pas, et ${step === 0 ? 'en pas entiers' : `étagées de ${step}`} il leur en faut ${wanted} ; elles sont donc égales et hors du pas. Faites le caisson plus haut, ou prenez ${step === 0 ? 'moins de façades' : 'un étage plus petit'}.`,
    pitches: ({ pitches, to }, show) => `Lui donner ${pitches} pas, soit une hauteur de ${show.exact(to)}`,
    high: ({ to }, show) => `La faire haute de ${show.exact(to)}`,
    step: ({ step }) => `Étager les façades de ${step}`,
    how: ({ word }) => `Partager les façades avec \`${word}\``,
    higher: ({ to }, show) => `Faire le caisson haut de ${show.exact(to)}`,
  },
  'slide-beside-row': {
    beside: ({ count, panels, places }, show) =>
      `${count} ${nombre(count, 'vis', 'vis')} de coulisses dans ${et(panels)} ne ${nombre(count, 'trouve', 'trouvent')} pas de trou de rangée et ${nombre(count, 'est percée', 'sont percées')} à part, à ${et(places.map(show.length))} du chant avant. Mettez la rangée arrière là, ou prenez une coulisse dont les vis sont dans les rangées.`,
    moveRow: ({ to }, show) => `Mettre les rangées arrière à ${show.exact(to)} du chant avant`,
  },
  'hinge-out-of-reach': {
    byPlate: ({ arm, plates, ...misses }, show) =>
      `${missed(misses, show)} Une embase haute de ${tall(plates, show)} irait avec le bras de ${show.exact(arm)} ; ajoutez-la à \`plates\` si l’atelier l’a, ou changez la marge ou le jeu.`,
    byDistance: ({ distance, range, ...misses }, show) =>
      `${missed(misses, show)} Le boîtier devrait être à ${show.length(distance)} du chant de la porte, et sa \`distance\` est ${show.span(range)}. Agrandissez la marge ou le jeu, ou prenez une autre charnière.`,
    use: ({ hinge }) => `Monter les portes sur ${quoted(hinge)}`,
  },
  'hinge-far-off': {
    fromEnd: ({ doors, end, distance, usual, others, room }, show) =>
      [
        `${nombre(doors.length, `La charnière ${OUTER[end]}`, `Les charnières ${OUTER[end]}s`)} de ${et(doors)} ${nombre(doors.length, 'est', 'sont')} à ${show.length(distance)} ${FROM[`${end} end`]}, l’usage étant ${show.length(usual)} (\`hinge-end\`).`,
        others.length === 0
          ? 'Le pas n’a pas de place plus près. Commencez les rangées plus près du bout (`row-offset`).'
          : `Plus près, ${et(others)} ${nombre(others.length, 'gêne', 'gênent')}. Laissez-y ${show.length(room)} de hauteur libre : une charnière y tient où que tombe le pas.`,
      ].join(' '),
    apart: ({ doors, distance, usual, others, room, below }, show) =>
      [
        `Au-dessus de la charnière à ${show.length(below)} ${FROM['bottom end']} de ${et(doors)}, la suivante vient après ${show.length(distance)}, quand ${show.length(usual)} serait régulier.`,
        ...(others.length === 0 ? [] : [`Entre elles, ${et(others)} ${nombre(others.length, 'gêne', 'gênent')}.`]),
        `Laissez-y ${show.length(room)} de hauteur libre : une charnière y tient où que tombe le pas.`,
      ].join(' '),
  },
  'hinge-without-room': {
    meets: ({ hinges, door, others }) =>
      hinges.length === 1
        ? `La charnière ${hinges[0]!} de ${door}, comptée depuis le bas, n’a pas de place à elle : partout où le pas la permet, quelque chose occupe sa place, ici ${et(others)}. Déplacez cela, faites la porte plus haute, ou montez-la de l’autre côté.`
        : `Les charnières ${et(hinges.map(String))} de ${door}, comptées depuis le bas, n’ont pas de place à elles : partout où le pas les permet, quelque chose occupe leur place, ici ${et(others)}. Déplacez cela, faites la porte plus haute, ou montez-la de l’autre côté.`,
    tooFew: ({ door, hinge, wanted, height }, show) =>
      `${door} est haute de ${show.length(height)} et demande ${compte(wanted, 'charnière')}, mais le pas n’a pas de places pour autant de ${quoted(hinge)}. Faites la porte plus haute, ou écrivez \`hinge: none\` et montez-la autrement.`,
  },
  'index-unbalanced': {
    uneven: ({ panels, holes, machine, spindles, instead, less }) =>
      `Les rangées de ${et(panels)} ne peuvent être percées également depuis les deux bouts : elles ont ${compte(holes, 'trou')}, un nombre ${parity(holes)}, et ${quoted(machine)} a ${compte(spindles, 'broche')}, un nombre ${parity(spindles)}. Avec ${compte(instead, 'trou')}, elles coûtent ${work(less)} de moins. Donnez-leur un trou de plus ou de moins, ou acceptez le coût.`,
    startFurtherIn: ({ offset, holes, shelves }, show) =>
      `Commencer les rangées un demi-pas plus loin, à ${show.exact(offset)} des bouts (${compte(holes, 'trou')})${withThem(shelves)}`,
    makeLower: ({ height, holes }, show) =>
      `Faire le caisson haut de ${show.exact(height)}, un pas plus bas (${compte(holes, 'trou')})`,
    makeHigher: ({ height, holes }, show) =>
      `Faire le caisson haut de ${show.exact(height)}, un pas plus haut (${compte(holes, 'trou')})`,
  },
  'loose-shelf-without-row': {
    noRow: ({ choice, ...lack }) =>
      `${lacks(lack)} (\`rows: ${choice}\`). Percez les deux rangées avec \`rows: both\`.`,
    noRoom: (lack) =>
      `${lacks(lack)}, car il n’y a pas de place derrière la rangée avant. Faites le caisson plus profond, ou la tablette fixe.`,
    leftOut: (lack) =>
      `${lacks(lack)}, car \`row-holes\` les omet. Incluez les travées et les hauteurs des tablettes mobiles.`,
    takeIn: ({ key }) => `Retirer \`${key}\` et n’omettre aucun trou pour lui`,
    standsAt: ({ shelf, at }, show) => `${shelf} est à ${show.length(at)}.`,
    boreBoth: () => 'Percer les deux rangées sur ce caisson',
    boreBothOn: ({ panels }) => `Percer les deux rangées sur ${et(panels)}`,
    removeOwn: ({ panels }) => `Retirer \`rows\` de ${et(panels)} et prendre celles du caisson (les deux)`,
    pastRow: ({ shelf, at, line, side, holes }, show) =>
      `${shelf} est à ${show.length(at)}, et la rangée ${LINE[line]} de ${side} n’a de trous que de ${show.span(holes)}. Mettez la tablette à une hauteur entre les deux.`,
    moveToFirst: ({ shelf, at }, show) => `Monter ${shelf} à ${show.exact(at)} (le premier trou)`,
    moveToLast: ({ shelf, at }, show) => `Descendre ${shelf} à ${show.exact(at)} (le dernier trou)`,
    offFrontPins: (off, show) => `${offPins(off, show)} Réduisez le retrait de la tablette.`,
    offRearPins: (off, show) => `${offPins(off, show)} Déplacez la rangée arrière vers l’avant.`,
    leaveSetback: ({ shelf }) => `Laisser le retrait de ${shelf} à l’atelier`,
    leaveRearRow: () => 'Laisser la place de la rangée arrière à l’atelier',
  },
  'panel-out-of-range': {
    notToBore: (out, show) => `${outOfRange(out, show)} ${ELSEWHERE}`,
    notToBand: (out, show) => `${outOfRange(out, show)} ${ELSEWHERE}`,
    tooSmallToBore: (out, show) =>
      `${outOfRange(out, show)} Ne forcez pas : percez avant de mettre à la cote, ou choisissez une autre machine.`,
    tooSmallToBand: (out, show) =>
      `${outOfRange(out, show)} Ne forcez pas : plaquez avant de mettre à la cote, ou choisissez une autre machine.`,
  },
  'panel-past-sheet': {
    pastSheet: ({ panels, cut, board, sheets, grainAlong }, show) =>
      `${et(panels)} ${nombre(panels.length, 'est débité', 'sont débités')} à ${by(cut, show)}, et un panneau entier de ${quoted(board)} mesure ${ou(sheets.map((sheet) => by(sheet, show)))}${grainAlong ? ', le fil dans la longueur' : ''}. Changez la taille, ou choisissez un autre panneau brut.`,
  },
  'row-distance': {
    setback: ({ machine, alone, setback, ...row }, show) =>
      `${theRow(row, show)} ; la première tête de ${quoted(machine)} est entre ${show.length(setback.min)} et ${show.length(setback.max)} du guide (\`setback\`). ${alone ? OWN_SET_UP : 'Changez `row-setback` du caisson.'}`,
    'one-head': ({ machine, setback, ...row }, show) =>
      `${theRow(row, show)} ; ${quoted(machine)} a une tête (\`heads\`), entre ${show.length(setback.min)} et ${show.length(setback.max)} du guide (\`setback\`). Supprimez la rangée arrière (\`rows: front\`), ou choisissez une perceuse à deux têtes (\`machines: rows\`).`,
    distance: ({ machine, alone, behind, heads, apart, ...row }, show) =>
      `${theRow(row, show)}, ${show.length(Math.abs(behind))} ${behind < 0 ? 'devant' : 'derrière'} la rangée avant ; les ${heads > 2 ? `${heads} têtes` : 'têtes'} de ${quoted(machine)} sont ${apart === null ? 'l’une derrière l’autre' : `écartées de ${show.length(apart.min)} à ${show.length(apart.max)}`} (\`head-distance\`). ${alone ? OWN_SET_UP : 'Déplacez la rangée dans cette plage (`rear-row`).'}`,
  },
  'row-past-reach': {
    tooDeep: ({ line, panels, at, machine, throat }, show) =>
      `La rangée ${LINE[line]} de ${et(panels)} est à ${show.length(at)} du chant avant ; ${quoted(machine)} atteint ${show.length(throat)} au plus (\`throat\`). Déplacez la rangée vers l’avant, ou choisissez une perceuse à plus grand col de cygne.`,
  },
  'row-reach': {
    set: ({ at }, show) => `Mettre la rangée avant à ${show.exact(at)} du chant avant`,
    setUsual: ({ at }, show) => `Mettre la rangée avant à ${show.exact(at)} du chant avant, le retrait habituel`,
    moveRear: ({ at, pitches }, show) =>
      `Déplacer la rangée arrière à ${show.exact(at)} du chant avant, ${compte(pitches, 'pas', 'pas')} derrière la rangée avant`,
    leaveOut: () => 'Supprimer la rangée arrière',
  },
  'row-unbalanced': {
    unbalanced: ({ panels, offset, rest, length, pitch, machine, more }, show) =>
      `Les rangées de ${et(panels)} commencent à ${show.exact(offset)} du bout inférieur et finissent à ${show.exact(rest)} du bout supérieur (longueur ${show.exact(length)}, pas ${show.nominal(pitch)}), si bien qu’une même position de butée ne sert pas aux deux bouts : sur ${quoted(machine)}, cela coûte ${work(more)} de plus que des rangées égales. Changez \`row-offset\` ou \`height\`.`,
    startAt: ({ offset, instead, shelves }, show) =>
      `Commencer les rangées à ${show.exact(offset)} des bouts au lieu de ${show.exact(instead)}${withThem(shelves)}`,
    makeLower: ({ height, by: less }, show) =>
      `Faire le caisson haut de ${show.exact(height)}, ${show.exact(less)} plus bas`,
    makeHigher: ({ height, by: more }, show) =>
      `Faire le caisson haut de ${show.exact(height)}, ${show.exact(more)} plus haut`,
  },
  'rows-not-opposite': {
    apart: ({ left, right }) =>
      `Les rangées de ${left} et ${right} ne se font pas face : une tablette entre elles ne serait pas de niveau. ${OUR_FAULT} : ne percez pas ces panneaux.`,
  },
  'shelf-off-grid': {
    offGrid: ({ shelf, at, panel, below, above, first, pitch }, show) =>
      `${shelf} est à ${show.exact(at)}, entre les trous de ${panel} à ${show.exact(below)} et ${show.exact(above)} (premier trou ${show.exact(first)}, pas ${show.nominal(pitch)}). Mettez la tablette sur l’un des deux.`,
    rowsStart: ({ offset }, show) => `Les rangées commencent à ${show.exact(offset)} du bout inférieur.`,
    moveDown: ({ shelf, at, hole }, show) => `Descendre ${shelf} à ${show.exact(at)} (trou ${hole})`,
    moveUp: ({ shelf, at, hole }, show) => `Monter ${shelf} à ${show.exact(at)} (trou ${hole})`,
    moveEvery: () => 'Mettre chaque tablette hors grille sur son trou le plus proche',
    align: ({ panels }) => `Commencer les rangées de ${et(panels)} là où commencent celles du caisson`,
    alignAndMove: ({ panels, shelf, at }, show) =>
      `Commencer les rangées de ${et(panels)} là où commencent celles du caisson, et mettre ${shelf} à ${show.exact(at)}`,
  },
  'shelf-past-stop': {
    pastStop: ({ line, panels, ways: [near, far], machine, extension, move }, show) =>
      [
        `${line === null ? 'Une ligne de perçages' : `La ligne de ${line}`} dans ${et(panels)} est à ${show.length(near.at)} ${FROM[near.end]} et à ${show.length(far.at)} ${FROM[far.end]}.`,
        `Sur ${quoted(machine)}, ${reaches(near, extension, show)}, et ${reaches(far, extension, show)}.`,
        remedy(near, extension, move, show),
      ].join(' '),
    moveDown: ({ shelf, at, hole }, show) =>
      `Descendre ${shelf} à ${show.exact(at)} (trou ${hole}), où une butée atteint`,
    moveUp: ({ shelf, at, hole }, show) => `Monter ${shelf} à ${show.exact(at)} (trou ${hole}), où une butée atteint`,
  },
  'shelf-shut-in': {
    shut: ({ shelf, size, open }, show) =>
      `${shelf} mesure ${show.length(size[0])} × ${show.length(size[1])}, et à côté du panneau aveugle ${show.length(open[0])} × ${show.length(open[1])} sont ouverts : elle ne passe ni à plat ni levée par un chant ou un bout. Posez-la avant de visser le panneau aveugle, ou laissez plus de place au-dessus ou au-dessous d’elle.`,
  },
  'shelf-tips': {
    intoCorner: ({ shelves, behind, least }, show) =>
      `${et(shelves)} ${nombre(shelves.length, 'bascule', 'basculent')} dans l’angle : ${nombre(shelves.length, 'son', 'leur')} milieu est ${show.length(behind)} derrière les taquets des deux côtés. Donnez au caisson des fonds épais d’au moins ${show.length(least)} (\`back: board\`), pour qu’une rangée y soit percée pour un taquet.`,
    giveBack: ({ board }) => `Faire les fonds en ${quoted(board)}`,
    tips: ({ shelves, deep, apart, front, rear }, show) =>
      `${et(shelves)} ${nombre(shelves.length, 'bascule', 'basculent')} : les taquets, à ${show.length(front)} et ${show.length(rear)} du chant avant, sont écartés de ${show.length(apart)}, et il faut au moins la moitié de la profondeur de ${show.length(deep)}. Déplacez la rangée arrière vers le fond (\`rear-row\`), ou faites la tablette fixe.`,
  },
  reach: {
    only: ({ circumstance }) => `Ne compte que ${CIRCUMSTANCES[circumstance]}.`,
  },
  'value-unused': {
    here: ({ key, circumstance }) =>
      `\`${key}\` est sans effet ici : il ne compte que ${CIRCUMSTANCES[circumstance]}. Retirez-le, ou changez ce dont il dépend.`,
    inDefaults: ({ key, circumstance }) =>
      `\`${key}\` est sans effet dans tous les caissons de ce travail : il ne compte que ${CIRCUMSTANCES[circumstance]}. Retirez-le, ou changez ce dont il dépend.`,
    remove: ({ key }) => `Retirer \`${key}\``,
  },
} satisfies Translations;

const OUTER = { top: 'supérieure', bottom: 'inférieure' } as const;

const ELSEWHERE = 'Changez la taille, ou choisissez une autre machine.';
const parity = (count: number): string => (count % 2 === 0 ? 'pair' : 'impair');
const withThem = (shelves: readonly string[]): string =>
  shelves.length === 0 ? '' : ` ; ${et(shelves)} ${nombre(shelves.length, 'suit', 'suivent')}`;

const OWN_SET_UP = 'La rangée ne peut être percée que dans un réglage à elle.';
interface RowTold {
  readonly line: keyof typeof LINE;
  readonly panels: readonly string[];
  readonly at: number;
}
const theRow = ({ line, panels, at }: RowTold, show: Show): string =>
  `La rangée ${LINE[line]} de ${et(panels)} est à ${show.length(at)} du chant avant`;

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
    ? `Aucun presseur de ${quoted(machine)} n’appuie sur ${et(panels)}`
    : `Les presseurs de ${quoted(machine)} n’appuient qu’en partie sur ${et(panels)}`;

interface Misses {
  readonly doors: readonly string[];
  readonly uprights: readonly string[];
  readonly overlay: number;
  readonly hinge: string;
  readonly reaches: { readonly min: number; readonly max: number };
}
const missed = ({ doors, uprights, overlay, hinge, reaches: { min, max } }: Misses, show: Show): string =>
  `${et(doors)} ${nombre(doors.length, 'doit', 'doivent')} ${overlay >= 0 ? `couvrir ${show.length(overlay)} de ${et(uprights)}` : `pendre à ${show.length(-overlay)} à côté de ${et(uprights)}`} ; ${quoted(hinge)}, avec les bras et embases cités, amène une porte entre ${show.length(min)} et ${show.length(max)} dessus.`;
const tall = ({ min, max }: { readonly min: number; readonly max: number }, show: Show): string =>
  min === max ? show.length(min) : `${show.length(min)} à ${show.length(max)}`;

const lacks = ({
  shelves,
  lines,
  sides,
}: {
  readonly shelves: readonly string[];
  readonly lines: readonly (keyof typeof LINE)[];
  readonly sides: readonly string[];
}): string =>
  `${et(shelves)} ${nombre(shelves.length, 'n’a', 'n’ont')} pas de rangée de trous ${et(lines.map((line) => LINE[line]))} sur ${et(sides)}`;

interface OffPins {
  readonly shelf: string;
  readonly reach: { readonly min: number; readonly max: number };
  readonly line: keyof typeof LINE;
  readonly side: string;
  readonly at: number;
}
const offPins = ({ shelf, reach, line, side, at }: OffPins, show: Show): string =>
  `${shelf} va de ${show.span(reach)} derrière l’avant et ne repose pas sur ses taquets ${LINE[line]}, qui sont à ${show.length(at)} dans ${side}.`;

interface OutOfRange {
  readonly panels: readonly string[];
  readonly size: number;
  readonly what: keyof typeof MEASURES;
  readonly machine: string;
  readonly range: { readonly min: number; readonly max: number };
}
const MEASURES = {
  length: 'La longueur',
  width: 'La largeur',
  thickness: 'L’épaisseur',
  edge: 'La longueur d’un chant plaqué',
  across: 'La largeur en travers d’un chant plaqué',
  band: 'L’épaisseur d’une bande',
} as const;
const outOfRange = ({ panels, size, what, machine, range: { min, max } }: OutOfRange, show: Show): string =>
  `${MEASURES[what]} de ${et(panels)} est ${show.length(size)} ; ${quoted(machine)} prend ${max === Infinity ? `au moins ${show.length(min)}` : `de ${show.length(min)} à ${show.length(max)}`}.`;

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
  if (reach === null) return `il n’y a pas de butée ${HAND[hand]}`;
  const longer = extension === 0 ? '' : ` (${show.length(reach + extension)} avec la rallonge)`;
  return `${stops === 1 ? 'la butée' : `les ${compte(stops, 'butée')}`} ${HAND[hand]} ${nombre(stops, 'atteint', 'atteignent')} ${show.length(reach)}${longer}`;
}
const GIVE = {
  nearer: 'Rapprochez-la d’un bout, ou donnez',
  farther: 'Éloignez-la du bout, ou donnez',
  none: 'Donnez',
} as const;

function remedy({ at, hand, reach }: Way, extension: number, move: 'nearer' | 'farther' | null, show: Show): string {
  const past = reach === null ? 0 : at - reach;
  return past > extension
    ? `${GIVE[move ?? 'none']} à la machine une rallonge de ${show.length(past)} ou une butée qui atteigne ${show.length(at)}.`
    : `${GIVE[move ?? 'none']} à la machine ${HAND[hand]} une butée dont la plage contienne ${show.length(at)}.`;
}
