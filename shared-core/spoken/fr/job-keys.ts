/** Ce que veulent dire les clés d’un travail. D’après la phrase anglaise. */
export const jobKeys: Readonly<Record<string, string>> = {
  'A cabinet job.': 'Un travail de caissons.',
  'What the job is called on the shop papers.': 'Le nom du travail sur les documents d’atelier.',
  'Unit of every bare number in this file.': 'Unité de chaque nombre nu de ce fichier.',
  'Millimetres.': 'Millimètres.',
  'Inches, decimal or with fractions such as 23 5/8.': 'Pouces, décimaux ou en fractions comme 23 5/8.',
  'The shop file, in the same folder. Without one, a neutral built-in shop is used.':
    'Le fichier d’atelier, dans le même dossier. Sans lui, un atelier neutre intégré sert.',
  'Values for every carcass of this file that has none of its own.':
    'Valeurs de chaque caisson de ce fichier qui n’en a pas à lui.',
  'Overall height of the carcass, without the plinth. By default the rows come out balanced.':
    'Hauteur hors tout du caisson, sans le socle. Par défaut, les rangées sont égales.',
  'Overall depth of the carcass: from the front edges to the back of the box, without fronts.':
    'Profondeur hors tout du caisson : des chants avant au dos, sans les façades.',
  'Board of sides, horizontals, dividers and shelves.':
    'Panneau brut des côtés, horizontaux, séparations et tablettes.',
  'Band of all front edges; `none` leaves them bare.': 'Bande de tous les chants avant ; `none` les laisse nus.',
  'The fitting that holds the joints: a dowel, connector screw or cam fitting of the shop.':
    'La ferrure qui tient les assemblages : un tourillon, une vis d’assemblage ou une ferrure excentrique de l’atelier.',
  'How the carcass is closed at the top.': 'Comment le caisson est fermé en haut.',
  'A top between the sides.': 'Un dessus entre les côtés.',
  'A top lying over the sides.': 'Un dessus posé sur les côtés.',
  'A front and a back rail between the sides, instead of a top.':
    'Une traverse avant et une arrière entre les côtés, au lieu d’un dessus.',
  'Where the bottom stands.': 'Où se trouve le bas.',
  'A bottom between the sides.': 'Un bas entre les côtés.',
  'A bottom that the sides stand on.': 'Un bas sur lequel posent les côtés.',
  'Width of the rails that stand in for a top.': 'Largeur des traverses qui remplacent un dessus.',
  'Height of the plinth under the carcass; 0 for none.': 'Hauteur du socle sous le caisson ; 0 pour aucun.',
  'The back: a word, or a map with more about it.': 'Le fond : un mot, ou des clés qui en disent plus.',
  'How the back is held.': 'Comment le fond est tenu.',
  'In grooves, set in from the back edges.': 'Dans des rainures, en retrait des chants arrière.',
  'In rebates of the back edges.': 'Dans des feuillures des chants arrière.',
  'On the back edges of the carcass.': 'Sur les chants arrière du caisson.',
  'No back.': 'Pas de fond.',
  'Board of the back.': 'Panneau brut du fond.',
  'Depth of the groove, or width of the rebate, in the sides.':
    'Profondeur de la rainure, ou largeur de la feuillure, dans les côtés.',
  'Distance from the back edges of the sides to a back in a groove; the play of the groove is behind the back.':
    'Distance des chants arrière des côtés à un fond en rainure ; le jeu de la rainure est derrière le fond.',
  'The doors: a word, or a map with more about them.': 'Les portes : un mot, ou des clés qui en disent plus.',
  'What hangs before the whole front.': 'Ce qui est monté devant toute la façade.',
  'No door.': 'Pas de porte.',
  'One door, hung on the left.': 'Une porte, montée à gauche.',
  'One door, hung on the right.': 'Une porte, montée à droite.',
  'Two doors that meet in the middle, hung on the left and on the right.':
    'Deux portes qui se joignent au milieu, montées à gauche et à droite.',
  'The doors, and how they hang.': 'Les portes, et comment elles sont montées.',
  'What hangs before each bay, from the left.': 'Ce qui est devant chaque travée, depuis la gauche.',
  'What hangs before this bay.': 'Ce qui est devant cette travée.',
  'How doors stand to the carcass.': 'Comment les portes se placent sur le caisson.',
  'Before the front edges, which they cover.': 'Devant les chants avant, qu’elles couvrent.',
  'Between the panels, flush with the front edges.': 'Entre les panneaux, au ras des chants avant.',
  'Board of the doors.': 'Panneau brut des portes.',
  'Band of all edges of the doors; `none` leaves them bare.':
    'Bande de tous les chants des portes ; `none` les laisse nus.',
  'The hinge that the doors hang on; `none` bores for none.': 'La charnière des portes ; `none` ne perce pour aucune.',
  'Gap between two doors, and all round an inset door.': 'Jeu entre deux portes, et tout autour d’une porte encastrée.',
  'How much of each side an overlay door leaves to be seen: from the outside of the carcass to its edge.':
    'Ce qu’une porte en applique laisse voir de chaque côté : de l’extérieur du caisson à son chant.',
  'The same at the top: from the upper end of the carcass down to the door.':
    'De même en haut : du bout supérieur du caisson à la porte.',
  'The same at the bottom: from the lower end of the carcass up to the door.':
    'De même en bas : du bout inférieur du caisson à la porte.',
  'How far an overlay door stands off the front edges, on its buffers.':
    'De combien une porte en applique se tient devant les chants avant, sur ses butoirs.',
  'Which rows of holes are bored.': 'Quelles rangées de trous sont percées.',
  'No rows.': 'Aucune rangée.',
  'The front row only.': 'La rangée avant seulement.',
  'Front and rear rows.': 'Rangées avant et arrière.',
  'Distance from the bottom end of the side to the first hole of the rows.':
    'Distance du bout inférieur du côté au premier trou des rangées.',
  'Row setback: from the front edge to the front row.': 'Retrait des rangées : du chant avant à la rangée avant.',
  'Distance from the front edge to the rear row.': 'Distance du chant avant à la rangée arrière.',
  'Places of the construction bores, counted from the front edge.':
    'Places des perçages d’assemblage, comptées depuis le chant avant.',
  'From the front edge.': 'Depuis le chant avant.',
  'Machines for this carcass, where they are not the shop’s usual ones.':
    'Machines de ce caisson, où ce ne sont pas les habituelles de l’atelier.',
  'Vertical head for construction bores in faces.': 'Tête verticale pour les perçages d’assemblage dans les faces.',
  'Horizontal head for construction bores in ends.': 'Tête horizontale pour les perçages d’assemblage dans les bouts.',
  'Line drill for rows.': 'Perceuse en ligne pour les rangées.',
  'Case clamp that the box is pressed in.': 'Cadreuse où le caisson est serré.',
  'The carcasses, each under its name.': 'Les caissons, chacun sous son nom.',
  'One carcass: a box, with the doors and drawers that close it.':
    'Un caisson, avec les portes et les tiroirs qui le ferment.',
  'What kind of carcass it is; this chooses the defaults.': 'Le genre de caisson ; il choisit les valeurs par défaut.',
  'Stands on the floor, closed by rails under a worktop.':
    'Posé au sol, fermé par des traverses sous un plan de travail.',
  'Hangs on the wall.': 'Suspendu au mur.',
  'Stands on the floor, higher than a worktop.': 'Posé au sol, plus haut qu’un plan de travail.',
  'A base carcass that drawers go into.': 'Un caisson bas qui reçoit des tiroirs.',
  'Without fronts: rows only where a loose shelf needs them.':
    'Sans façades : des rangées seulement où une tablette mobile en demande.',
  'Overall width of the carcass.': 'Largeur hors tout du caisson.',
  'Another carcass of this file, which this one is like. What is written here takes the place of what is written there, maps key by key and lists as a whole; all else is as it is there, but for `place`, `count` and `note`.':
    'Un autre caisson de ce fichier, comme lequel est celui-ci. Ce qui est écrit ici prend la place de ce qui est écrit là-bas, les groupes clé par clé et les listes entières ; tout le reste est comme là-bas, sauf `place`, `count` et `note`.',
  'Whether left and right of the other carcass are changed over. What is written here counts as it is written.':
    'Si la gauche et la droite de l’autre caisson sont échangées. Ce qui est écrit ici vaut tel qu’il est écrit.',
  'How many equal ones are made. All are cut, banded and bored; they are drawn and checked once.':
    'Combien de pareils sont faits. Tous sont débités, plaqués et percés ; un seul est dessiné et contrôlé.',
  'Where it stands along a wall: from the left end of the wall, or a map with more about it.':
    'Où il se trouve le long d’un mur : depuis le bout gauche du mur, ou des clés qui en disent plus.',
  'From the left end of the wall to the outside of its left side.':
    'Du bout gauche du mur à l’extérieur de son côté gauche.',
  'Where the carcass stands along a wall.': 'Où le caisson se trouve le long d’un mur.',
  'The wall, counted as the owner likes.': 'Le mur, compté comme on veut.',
  'From the floor to its lower end; of one on a plinth, to the lower end of that.':
    'Du sol à son bout inférieur ; s’il a un socle, au bas de celui-ci.',
  'How many dividers, evenly spread, or a list of their places.':
    'Combien de séparations, également réparties, ou une liste de leurs places.',
  'How many.': 'Combien.',
  'Dividers.': 'Séparations.',
  'A divider.': 'Une séparation.',
  'Place of its centre line, from the outside of the left side.':
    'Place de son axe, depuis l’extérieur du côté gauche.',
  'One divider.': 'Une séparation.',
  'Board of this divider.': 'Panneau brut de cette séparation.',
  'How many fixed shelves, or a list of their heights.': 'Combien de tablettes fixes, ou une liste de leurs hauteurs.',
  'The fixed shelves.': 'Les tablettes fixes.',
  'A fixed shelf.': 'Une tablette fixe.',
  'Height of its centre line above the bottom end of the side.':
    'Hauteur de son axe au-dessus du bout inférieur du côté.',
  'One shelf.': 'Une tablette.',
  'Height of the shelf’s holes above the bottom end of the side: centre line of a fixed shelf, pin holes of a loose one.':
    'Hauteur des trous de la tablette au-dessus du bout inférieur du côté : axe d’une tablette fixe, trous de taquets d’une mobile.',
  'The bay it stands in, counted from the left; all bays when left out.':
    'La travée où elle est, comptée depuis la gauche ; toutes à défaut.',
  'Board of this shelf.': 'Panneau brut de cette tablette.',
  'Shelf setback: from the front of the carcass to the front edge of the shelf.':
    'Retrait de la tablette : de l’avant du caisson au chant avant de la tablette.',
  'How many loose shelves, or a list of their heights.':
    'Combien de tablettes mobiles, ou une liste de leurs hauteurs.',
  'The loose shelves.': 'Les tablettes mobiles.',
  'A loose shelf.': 'Une tablette mobile.',
  'Height of its pin holes above the bottom end of the side.':
    'Hauteur de ses trous de taquets au-dessus du bout inférieur du côté.',
  'What differs on single panels: left, right, top, bottom, rail-front, rail-back, divider-1, shelf-1, loose-1, door-1, drawer-1-left …':
    'Ce qui diffère sur certains panneaux : left, right, top, bottom, rail-front, rail-back, divider-1, shelf-1, loose-1, door-1, drawer-1-left …',
  'What differs on one panel of this carcass.': 'Ce qui diffère sur un panneau de ce caisson.',
  'Board of this panel.': 'Panneau brut de ce panneau.',
  'Distance from its bottom end to the first hole of its rows.':
    'Distance de son bout inférieur au premier trou de ses rangées.',
  'The fitting that holds the joints of this panel.': 'La ferrure qui tient les assemblages de ce panneau.',
  'Places of its construction bores, counted from its front edge.':
    'Places de ses perçages d’assemblage, comptées depuis son chant avant.',
  'The construction bores in its end joints, in both panels: how many, or their places from its front edge.':
    'Les perçages d’assemblage de ses bouts, dans les deux panneaux : combien, ou leurs places depuis son chant avant.',
  'How many, evenly spread over the spindles.': 'Combien, également répartis sur les broches.',
  'Their places, counted from its front edge.': 'Leurs places, comptées depuis son chant avant.',
  'The joint at its bottom or left end alone, in both panels that meet there.':
    'Le seul assemblage de son bout bas ou gauche, dans les deux panneaux qui s’y touchent.',
  'The joint at its top or right end alone, in both panels that meet there.':
    'Le seul assemblage de son bout haut ou droit, dans les deux panneaux qui s’y touchent.',
  'The fitting that holds this joint.': 'La ferrure de cet assemblage.',
  'Its construction bores: how many, or their places from the front edge of this panel.':
    'Ses perçages d’assemblage : combien, ou leurs places depuis le chant avant de ce panneau.',
  'Depth of its construction bores in the face.': 'Profondeur de ses perçages d’assemblage dans la face.',
  'Depth of its construction bores in the ends.': 'Profondeur de ses perçages d’assemblage dans les bouts.',
  'Edge bands of this panel, edge by edge; `none` leaves an edge bare.':
    'Bandes de ce panneau, chant par chant ; `none` laisse un chant nu.',
  'Band on the front edge, the reference of every bore.': 'Bande du chant avant, la référence de chaque perçage.',
  'Band on the back edge.': 'Bande du chant arrière.',
  'Band on the bottom end of an upright panel, or the left end of any other.':
    'Bande du bout inférieur d’un montant, ou du bout gauche de tout autre.',
  'Band on the top end of an upright panel, or the right end of any other.':
    'Bande du bout supérieur d’un montant, ou du bout droit de tout autre.',
  'A note for the shop papers.': 'Une note pour les documents d’atelier.',
  'The pulls: a name, or a map with more about them.': 'Les poignées : un nom, ou des clés qui en disent plus.',
  'The pulls or knobs of doors and drawer fronts, and where they stand.':
    'Poignées ou boutons des portes et façades de tiroirs, et où ils sont.',
  'The pull or the knob; `none` bores for none.': 'La poignée ou le bouton ; `none` ne perce pour aucun.',
  'That of drawer fronts, where it is another one.': 'Celle des façades de tiroirs, où c’en est une autre.',
  'How pulls lie on doors; on drawer fronts they lie level.':
    'Comment les poignées sont sur les portes ; sur les façades de tiroirs elles sont couchées.',
  'How the fronts before a bay that have no height of their own share it.':
    'Comment les façades devant une travée qui n’ont pas de hauteur à elles se la partagent.',
  'How they share it, from the top down.': 'Comment elles se la partagent, de haut en bas.',
  'All alike, to the tenth of a millimetre.': 'Toutes égales, au dixième de millimètre.',
  'Each a whole number of pitches with the gap under it, as alike as can be, the higher ones below. So slides and plates stand at one place behind all of them.':
    'Chacune haute de pas entiers avec le jeu dessous, aussi égales que possible, les plus hautes en bas. Ainsi coulisses et embases sont au même endroit derrière toutes.',
  'The same, but each higher than the one above it.': 'De même, mais chacune plus haute que celle du dessus.',
  'By how many pitches each is higher than the one above it.':
    'De combien de pas chacune est plus haute que celle du dessus.',
  'The same in pitches: so high that with the gap under it it comes to so many of them.':
    'La même en pas : si haute qu’avec le jeu dessous cela en fasse autant.',
  'How the fronts before a bay share its height: a word, or a map with more about it.':
    'Comment les façades devant une travée se partagent sa hauteur : un mot, ou des clés qui en disent plus.',
  'Stands the carcass in a corner of the room with its front across that: from the front edge of the one side to that of the other. Its `depth` is that of both wings, its `width` the reach along the first wall. Both sides stand between bottom and top, and of these and the shelves the front corner is cut off; what is said of their front band is said of that cut.':
    'Met le caisson dans un angle de la pièce, la façade en biais devant : du chant avant d’un côté à celui de l’autre. Sa profondeur (`depth`) est celle des deux ailes, sa largeur (`width`) ce qu’il prend le long du premier mur. Les deux côtés sont entre le bas et le dessus, et de ceux-ci et des tablettes le coin avant est coupé ; ce qui est dit de leur bande avant vaut pour cette coupe.',
  'How far it reaches along the other wall, with the corner of the room at its back left.':
    'Ce qu’il prend le long de l’autre mur, avec l’angle de la pièce derrière à gauche.',
  'How far it reaches along the other wall, with the corner of the room at its back right.':
    'Ce qu’il prend le long de l’autre mur, avec l’angle de la pièce derrière à droite.',
  'In a corner, what of the front lies behind the run along the other wall, and the panel that closes it.':
    'Dans un angle, ce qui de la façade est derrière les meubles de l’autre mur, et le panneau qui le ferme.',
  'How much of the front the run along the other wall covers on the left, from the outside of the side.':
    'Ce que les meubles de l’autre mur couvrent de la façade à gauche, depuis l’extérieur du côté.',
  'How much of the front the run along the other wall covers on the right, from the outside of the side.':
    'Ce que les meubles de l’autre mur couvrent de la façade à droite, depuis l’extérieur du côté.',
  'How much of the panel is left to be seen beside that run, so that pulls find room in the corner.':
    'Ce qui reste à voir du panneau à côté de ces meubles, pour que les poignées aient leur place dans l’angle.',
  'Board of the panel.': 'Panneau brut de ce panneau.',
  'Band of its edge toward the fronts; `none` leaves it bare.':
    'Bande de son chant vers les façades ; `none` le laisse nu.',
  'Height above the bottom end of the side from which on the back is left out, for pipes or for air; up to the top where `open-to` is left out.':
    'Hauteur au-dessus du bout bas du côté à partir de laquelle le fond est laissé de côté, pour des tuyaux ou de l’air ; jusqu’en haut sans `open-to`.',
  'Height up to which it is left out; from the bottom on where `open-from` is left out.':
    'Hauteur jusqu’à laquelle il est laissé de côté ; depuis le bas sans `open-from`.',
  'An appliance: the place stays open, and a fixed shelf is put in under it, unless one stands there.':
    'Un appareil : la place reste ouverte, et une tablette fixe se met dessous, sauf s’il y en a une.',
  'Its screws stand one over the other.': 'Ses vis sont l’une au-dessus de l’autre.',
  'Its screws stand side by side.': 'Ses vis sont côte à côte.',
  'Where in the height of a door its pull stands.': 'Où est la poignée dans la hauteur d’une porte.',
  'Near its top end.': 'Près de son bout supérieur.',
  'Near its bottom end.': 'Près de son bout inférieur.',
  'In the middle of its height.': 'Au milieu de sa hauteur.',
  'On doors: from the edge that opens to the nearest screw.':
    'Sur les portes : du chant qui s’ouvre à la vis la plus proche.',
  'On doors: from the top or the bottom end to the nearest screw.':
    'Sur les portes : du bout supérieur ou inférieur à la vis la plus proche.',
  'On drawer fronts: from the upper edge to the nearest screw.':
    'Sur les façades de tiroirs : du chant supérieur à la vis la plus proche.',
  'Its pull or its knob, where it is another one; `none` bores for none.':
    'Sa poignée ou son bouton, où c’en est un autre ; `none` ne perce pour aucun.',
  'The pull or the knob of this front; `none` bores for none.':
    'La poignée ou le bouton de cette façade ; `none` ne perce pour aucun.',
  'How the pull of this front lies.': 'Comment est la poignée de cette façade.',
  'Where in the height of this door its pull stands.': 'Où est la poignée dans la hauteur de cette porte.',
  'Of this door: from the edge that opens to the nearest screw of its pull.':
    'De cette porte : du chant qui s’ouvre à la vis la plus proche de sa poignée.',
  'Of this door: from the top or the bottom end to the nearest screw of its pull.':
    'De cette porte : du bout supérieur ou inférieur à la vis la plus proche de sa poignée.',
  'Of this front: from the upper edge to the nearest screw of its pull.':
    'De cette façade : du chant supérieur à la vis la plus proche de sa poignée.',
  'Which holes of the rows are bored, where not all of them are.':
    'Quels trous des rangées sont percés, s’ils ne le sont pas tous.',
  'Which holes of the rows are bored: how many over and under that of each loose shelf, or a map.':
    'Quels trous des rangées sont percés : combien au-dessus et au-dessous de celui de chaque tablette mobile, ou des clés.',
  'The bays that get rows, counted from the left. What is said of `rows` on a single panel comes first.':
    'Les travées qui ont des rangées, comptées depuis la gauche. Ce que dit `rows` d’un seul panneau passe avant.',
  'A bay.': 'Une travée.',
  'Height above the bottom end of the side from which on holes are bored.':
    'Hauteur au-dessus du bout inférieur du côté à partir de laquelle des trous sont percés.',
  'Height above the bottom end of the side up to which holes are bored.':
    'Hauteur au-dessus du bout inférieur du côté jusqu’à laquelle des trous sont percés.',
  'How many holes are bored over and under that of each loose shelf; no others are then bored.':
    'Combien de trous sont percés au-dessus et au-dessous de celui de chaque tablette mobile ; pas d’autres alors.',
  'Loose panels beside the carcass: a word, or a map with more about them.':
    'Panneaux rapportés à côté du caisson : un mot, ou des clés qui en disent plus.',
  'Loose panels beside the carcass, as deep as it is with its fronts.':
    'Panneaux rapportés à côté du caisson, aussi profonds que lui avec ses façades.',
  'Where there are end panels.': 'Où il y a des joues.',
  'Nowhere.': 'Nulle part.',
  'On the left.': 'À gauche.',
  'On the right.': 'À droite.',
  'On both hands.': 'Des deux côtés.',
  'Board of the end panels.': 'Panneau brut des joues.',
  'Band of their edges that are seen; `none` leaves them bare.':
    'Bande de leurs chants visibles ; `none` les laisse nus.',
  'Whether they reach down to the floor beside a plinth.': 'Si elles descendent jusqu’au sol à côté d’un socle.',
  'Strips that close what is left beside the carcass, flush with its fronts.':
    'Bandes qui ferment ce qui reste à côté du caisson, au ras de ses façades.',
  'Width of a strip on the left.': 'Largeur d’une bande à gauche.',
  'Width of a strip on the right.': 'Largeur d’une bande à droite.',
  'Board of the strips.': 'Panneau brut des bandes.',
  'Band of their edges toward the carcass; `none` leaves them bare.':
    'Bande de leurs chants vers le caisson ; `none` les laisse nus.',
  'The hanging brackets that both sides are bored for; `none` bores for none.':
    'Les ferrures de suspension pour lesquelles les deux côtés sont percés ; `none` ne perce pour aucune.',
};
