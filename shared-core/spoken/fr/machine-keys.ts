/** Ce que veulent dire les clés des machines, d’après la phrase anglaise. */
export const machineKeys: Readonly<Record<string, string>> = {
  'Heads for bores in faces.': 'Têtes pour les perçages dans les faces.',
  'A spindle line across the table, square to the fence, for bores in faces.':
    'Une ligne de broches en travers de la table, d’équerre avec le guide, pour les perçages dans les faces.',
  'Heads with the same body are one machine whose head is turned; turning it costs time.':
    'Les têtes d’un même bâti sont une machine dont on tourne la tête ; cela prend du temps.',
  'Number of spindles in the line.': 'Nombre de broches de la ligne.',
  'From spindle to spindle.': 'De broche à broche.',
  'Minimum to maximum boring depth; one length alone is the maximum, and the minimum is 0.':
    'Profondeur de perçage minimale à maximale ; une seule mesure est la maximale, et la minimale est 0.',
  'Number of places on the depth turret.': 'Nombre de places de la tourelle de profondeur.',
  'The panels that the machine takes.': 'Les panneaux que prend la machine.',
  'Minimum to maximum length, along the fence.': 'Longueur minimale à maximale, le long du guide.',
  'Minimum to maximum width, away from the fence.': 'Largeur minimale à maximale, en s’éloignant du guide.',
  'Minimum to maximum thickness.': 'Épaisseur minimale à maximale.',
  'Where the machine holds the panel down.': 'Où la machine tient le panneau.',
  'A holding-down clamp.': 'Un presseur.',
  'Along the fence from the first spindle; to the left is negative.':
    'Le long du guide depuis la première broche ; négatif vers la gauche.',
  'From the fence, or from the plate of a horizontal head.':
    'Depuis le guide, ou depuis la plaque d’une tête horizontale.',
  'Diameter of its pad. A panel that lies under only a part of it is not held.':
    'Diamètre de son patin. Un panneau qui n’est que sous une partie du patin n’est pas tenu.',
  'What stays in the machine between jobs, so that only what differs is changed.':
    'Ce qui reste sur la machine entre les travaux, pour ne changer que ce qui diffère.',
  'Diameter of the bits that stay in its spindles.': 'Diamètre des mèches qui restent sur ses broches.',
  'Which spindles carry them, counted from 1, on every head; all when left out.':
    'Quelles broches les portent, comptées depuis 1, sur chaque tête ; toutes à défaut.',
  'A spindle.': 'Une broche.',
  'What the depth stop is set to.': 'Le réglage de la butée de profondeur.',
  'From the fence to the first spindle, or to each head.': 'Du guide à la première broche, ou à chaque tête.',
  'From the fence.': 'Depuis le guide.',
  'Thickness of the boards that it is set for, where the bits come from above.':
    'Épaisseur des panneaux pour laquelle elle est réglée, où les mèches viennent par-dessus.',
  'Where the fence lies, as seen by the operator.': 'Où est le guide, vu par l’opérateur.',
  'At the far side of the table.': 'Au fond de la table.',
  'At the near side.': 'Du côté de l’opérateur.',
  'Where the bits come from.': 'D’où viennent les mèches.',
  'From above: the face that is bored lies up.': 'Par-dessus : la face percée est dessus.',
  'From below: the face that is bored lies down.': 'Par-dessous : la face percée est dessous.',
  'From the fence, where the front edge lies, to the first spindle.':
    'Du guide, où est le chant avant, à la première broche.',
  'The end stops along the fence.': 'Les butées le long du guide.',
  'A stop, under the name that the shop uses for it.': 'Une butée, sous le nom que l’atelier lui donne.',
  'On which side of the spindles, as seen by the operator.': 'De quel côté des broches, vu par l’opérateur.',
  'To the left.': 'À gauche.',
  'To the right.': 'À droite.',
  'Where it can be set: from the face of the stop to the nearest spindle on its side. Stops on the same side cannot pass each other.':
    'Où elle se règle : de sa face à la broche la plus proche de son côté. Les butées d’un même côté ne peuvent se dépasser.',
  'Whether it can be lowered out of the way.': 'Si elle peut être abaissée hors du passage.',
  'Where it stands when a job begins, if it is left set between jobs.':
    'Où elle se trouve au début d’un travail, si elle reste réglée entre les travaux.',
  'How far the fence extension widens the range of the outermost stop on each side, outward; the other stops keep their ranges.':
    'De combien la rallonge du guide étend vers l’extérieur la plage de la butée extrême de chaque côté ; les autres gardent la leur.',
  'Heads for bores in ends.': 'Têtes pour les perçages dans les bouts.',
  'A spindle line turned level, for bores in ends.': 'Une ligne de broches couchée, pour les perçages dans les bouts.',
  'Spindle centres above the table.': 'Axe des broches au-dessus de la table.',
  'The squaring stops that the front edge lies against.':
    'Les butées d’équerre contre lesquelles repose le chant avant.',
  'Heads for rows.': 'Têtes pour les rangées.',
  'Heads of spindles along the fence, for rows.': 'Têtes de broches le long du guide, pour les rangées.',
  'Number of heads.': 'Nombre de têtes.',
  'Head setback: from the fence to the first head.': 'Retrait de tête : du guide à la première tête.',
  'From one head to the next.': 'D’une tête à la suivante.',
  'Maximum distance from the fence to a row.': 'Distance maximale du guide à une rangée.',
  'What a panel registers on when it is moved along for the next stroke.':
    'Sur quoi un panneau se cale quand il avance pour la descente suivante.',
  'A pin in a hole of the row.': 'Un pion dans un trou de la rangée.',
  'Pins in the fence.': 'Des pions dans le guide.',
  'No index move.': 'Pas d’avance.',
  'Maximum distance that a panel can be moved along in all.': 'Distance totale maximale dont un panneau peut avancer.',
  'Whether a spindle may enter a hole that is already bored.': 'Si une broche peut entrer dans un trou déjà percé.',
  'Borers for hinge cups.': 'Perceuses de boîtiers de charnières.',
  'A borer for hinge cups.': 'Une perceuse de boîtiers de charnières.',
  'Heads with the same body are one machine.': 'Les têtes d’un même bâti sont une machine.',
  'From the fence to the centre of the cup.': 'Du guide au centre du boîtier.',
  'The end stops along the fence: without one no cup can be set out.':
    'Les butées le long du guide : sans butée, aucun boîtier ne peut être placé.',
  'Panel saws.': 'Scies à panneaux.',
  'A panel saw.': 'Une scie à panneaux.',
  'Width of the cut.': 'Largeur du trait.',
  'Maximum width of a strip, between fence and blade.': 'Largeur maximale d’une bande, entre guide et lame.',
  'Maximum length that is cut off a strip, between stop and blade.':
    'Longueur maximale coupée d’une bande, entre butée et lame.',
  'What is cut off each edge of a sheet first.': 'Ce qui est d’abord coupé de chaque bord d’un panneau entier.',
  '2: strips, and pieces as wide as the strip. 3: what is cut off a strip may be cut once more.':
    '2 : des bandes, et des pièces larges comme la bande. 3 : ce qui est coupé d’une bande peut l’être encore une fois.',
  'Which way the first cuts run.': 'Le sens des premières coupes.',
  'Across the sheet.': 'En travers du panneau.',
  'Whichever is cheaper.': 'Selon ce qui coûte le moins.',
  'Edge banders.': 'Plaqueuses de chants.',
  'An edge bander.': 'Une plaqueuse de chants.',
  'Minimum to maximum band thickness.': 'Épaisseur de bande minimale à maximale.',
  'Minimum to maximum panel thickness.': 'Épaisseur de panneau minimale à maximale.',
  'What it mills off an edge before the band is glued on. Panels are cut so much larger.':
    'Ce qu’elle fraise d’un chant avant de coller la bande. Les panneaux sont débités d’autant plus grands.',
  'Shortest edge that it takes.': 'Chant le plus court qu’elle prend.',
  'Narrowest panel that it takes.': 'Panneau le plus étroit qu’elle prend.',
  'Case clamps.': 'Cadreuses.',
  'A clamp that the box is pressed in.': 'Une presse où le caisson est serré.',
  'Minimum to maximum width of the box.': 'Largeur minimale à maximale du caisson.',
  'Minimum to maximum height of the box.': 'Hauteur minimale à maximale du caisson.',
  'Minimum to maximum depth of the box.': 'Profondeur minimale à maximale du caisson.',
};
