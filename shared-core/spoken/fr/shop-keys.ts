/** Ce que veulent dire les clés d’un atelier, d’après la phrase anglaise. */
export const shopKeys: Readonly<Record<string, string>> = {
  'A workshop: its machines, materials and habits.': 'Un atelier : ses machines, ses matériaux et ses habitudes.',
  'What the shop is called on its papers.': 'Le nom de l’atelier sur ses papiers.',
  'Sheet materials.': 'Panneaux bruts.',
  'A sheet material.': 'Un panneau brut.',
  'Nominal thickness.': 'Épaisseur nominale.',
  'Thickness as measured on the present batch. Panels and their joints are set out by it, rows and heights by the nominal thickness.':
    'Épaisseur mesurée sur le lot présent. Panneaux et assemblages la suivent, rangées et hauteurs suivent l’épaisseur nominale.',
  'Length of a sheet.': 'Longueur d’un panneau entier.',
  'Width of a sheet.': 'Largeur d’un panneau entier.',
  'Price of one sheet, in the shop’s own money.': 'Prix d’un panneau entier, dans la monnaie de l’atelier.',
  'Further sizes of sheet, and offcuts in stock, each under its name.':
    'Autres tailles de panneau, et chutes en stock, chacune sous son nom.',
  'A size of sheet, bought or left over from another job.':
    'Une taille de panneau, achetée ou restée d’un autre travail.',
  'Length, along the grain where there is one.': 'Longueur, dans le sens du fil s’il y en a un.',
  'Width.': 'Largeur.',
  'Price of one sheet, in the shop’s own money; by its area when left out.':
    'Prix d’un panneau entier, dans la monnaie de l’atelier ; à défaut d’après sa surface.',
  'How many there are; any number when left out.': 'Combien il y en a ; autant qu’on veut à défaut.',
  'Direction of the grain.': 'Sens du fil.',
  'No grain: panels may be turned.': 'Pas de fil : les panneaux peuvent être tournés.',
  'Along the sheet.': 'Dans la longueur du panneau.',
  'Edge bands.': 'Bandes de chant.',
  'An edge band.': 'Une bande de chant.',
  'Thickness.': 'Épaisseur.',
  'Width of the tape as bought.': 'Largeur de la bande achetée.',
  'Price of one metre, in the shop’s own money.': 'Prix d’un mètre, dans la monnaie de l’atelier.',
  'Dowels.': 'Tourillons.',
  'A dowel.': 'Un tourillon.',
  'Diameter of the dowel and of its bores.': 'Diamètre du tourillon et de ses perçages.',
  'Length.': 'Longueur.',
  'Depth of the bore in the face; the end takes the rest of the dowel and the glue gap.':
    'Profondeur du perçage dans la face ; le bout prend le reste du tourillon et le jeu de colle.',
  'Price of one, in the shop’s own money.': 'Prix d’une pièce, dans la monnaie de l’atelier.',
  'Connector screws.': 'Vis d’assemblage.',
  'A connector screw.': 'Une vis d’assemblage.',
  'Diameter of the clearance hole through the face.': 'Diamètre du trou de passage à travers la face.',
  'Diameter of the pilot hole in the end.': 'Diamètre de l’avant-trou dans le bout.',
  'Length of the screw under its head.': 'Longueur de la vis sous la tête.',
  'Diameter of the recess that its head goes into; leave it out for a head that stays proud.':
    'Diamètre du fraisage où entre sa tête ; à omettre pour une tête qui dépasse.',
  'Depth of that recess, from the face that the screw enters.':
    'Profondeur de ce fraisage, depuis la face où entre la vis.',
  'Cam fittings.': 'Ferrures excentriques.',
  'A cam fitting.': 'Une ferrure excentrique.',
  'Diameter of the bore for the cam.': 'Diamètre du perçage de l’excentrique.',
  'Depth of the bore for the cam.': 'Profondeur du perçage de l’excentrique.',
  'From the end of the panel to the centre of the cam.': 'Du bout du panneau au centre de l’excentrique.',
  'Diameter of the bore in the end for the bolt.': 'Diamètre du perçage dans le bout pour le boulon.',
  'Diameter of the bore in the face that the bolt is screwed into.':
    'Diamètre du perçage dans la face où se visse le boulon.',
  'Depth of that bore.': 'Profondeur de ce perçage.',
  'Dowel that stands at the places between the cams.': 'Tourillon aux places entre les excentriques.',
  'Hinges for doors.': 'Charnières de portes.',
  'A hinge with a cup in the door and a plate on the side.':
    'Une charnière à boîtier dans la porte et à embase sur le côté.',
  'Diameter of the cup.': 'Diamètre du boîtier.',
  'Depth of the cup’s bore.': 'Profondeur du perçage du boîtier.',
  'Minimum to maximum distance from the edge of the door to the centre of the cup.':
    'Distance minimale à maximale du chant de la porte au centre du boîtier.',
  'The distance that is taken unless the overlay asks for another one.':
    'La distance prise si le recouvrement n’en demande pas une autre.',
  'For each arm that the hinge comes with: how far the centre of the cup stands from the face under the plate, with a plate of height 0.':
    'Pour chaque bras de la charnière : distance du centre du boîtier à la face sous l’embase, avec une embase de hauteur 0.',
  'From the face under the plate to the centre of the cup.': 'De la face sous l’embase au centre du boîtier.',
  'Heights of the plates that the shop has.': 'Hauteurs des embases que l’atelier a.',
  'Height of a plate.': 'Hauteur d’une embase.',
  'From the front edge to the screws of the plate; behind an inset door by its thickness more.':
    'Du chant avant aux vis de l’embase ; derrière une porte encastrée, de son épaisseur en plus.',
  'How many pitches the two screws of the plate stand apart.':
    'De combien de pas les deux vis de l’embase sont écartées.',
  'Diameter of the bores for the screws of the plate.': 'Diamètre des perçages des vis de l’embase.',
  'Depth of these bores.': 'Profondeur de ces perçages.',
  'Height that hinge and plate need, half of it above the centre of the cup.':
    'Hauteur que demandent charnière et embase, dont la moitié au-dessus du centre du boîtier.',
  'How far hinge and plate reach back from the door.': 'De combien charnière et embase s’étendent derrière la porte.',
  'How far the door opens, in degrees.': 'Ouverture de la porte, en degrés.',
  'From the hinge edge of the door to the line that it turns about; negative beyond the edge.':
    'Du chant des charnières à la ligne autour de laquelle la porte tourne ; négatif au-delà du chant.',
  'From the outside face of the door to the line that it turns about; negative in front of the door.':
    'De la face extérieure de la porte à la ligne autour de laquelle elle tourne ; négatif devant la porte.',
  'Diameters of the bits that the shop has.': 'Diamètres des mèches que l’atelier a.',
  'Diameter.': 'Diamètre.',
  'Heads for bores in faces.': 'Têtes pour les perçages dans les faces.',
  'A spindle line across the table, square to the fence, for bores in faces.':
    'Une ligne de broches en travers de la table, d’équerre avec le guide, pour les perçages dans les faces.',
  'Heads with the same body are one machine whose head is turned; turning it costs time.':
    'Les têtes d’un même bâti sont une machine dont on tourne la tête ; cela prend du temps.',
  'Number of spindles in the line.': 'Nombre de broches de la ligne.',
  'From spindle to spindle.': 'De broche à broche.',
  'Minimum to maximum boring depth.': 'Profondeur de perçage minimale à maximale.',
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
  'What the shop does unless a job says otherwise.': 'Ce que fait l’atelier si un travail ne dit rien d’autre.',
  'Usual board.': 'Panneau brut habituel.',
  'Usual board of backs.': 'Panneau brut habituel des fonds.',
  'Usual band of front edges.': 'Bande habituelle des chants avant.',
  'The usual fitting that holds joints.': 'La ferrure habituelle des assemblages.',
  'Usual sizes by kind.': 'Tailles habituelles par genre.',
  'Usual size of this kind of carcass.': 'Taille habituelle de ce genre de caisson.',
  'Height, without plinth.': 'Hauteur, sans socle.',
  'Number of pitches in the height. To them come the thicknesses that balance the row.':
    'Nombre de pas dans la hauteur. S’y ajoutent les épaisseurs qui équilibrent la rangée.',
  'Depth.': 'Profondeur.',
  'Usual machines.': 'Machines habituelles.',
  'Cup borer.': 'Perceuse de charnières.',
  'Case clamp.': 'Cadreuse.',
  'Panel saw.': 'Scie à panneaux.',
  'Pitch of rows.': 'Pas des rangées.',
  'Usual row setback: from the front edge to the front row.':
    'Retrait habituel des rangées : du chant avant à la rangée avant.',
  'Diameter of row holes.': 'Diamètre des trous de rangée.',
  'Depth of row holes.': 'Profondeur des trous de rangée.',
  'First hole of a row, from the bottom end; half the nominal thickness of the board when left out.':
    'Premier trou d’une rangée, depuis le bout inférieur ; à défaut la moitié de l’épaisseur nominale.',
  'Minimum distance from the back edge to the rear row.': 'Distance minimale du chant arrière à la rangée arrière.',
  'Distance from the front edge to the first construction bore.':
    'Distance du chant avant au premier perçage d’assemblage.',
  'Maximum distance between neighbouring construction bores.': 'Distance maximale entre perçages d’assemblage voisins.',
  'A spindle that carries a bit, counted from 1 at the front edge.':
    'Une broche garnie, comptée depuis 1 au chant avant.',
  'How much deeper the two bores of a dowel are than the dowel is long.':
    'De combien les deux perçages d’un tourillon dépassent sa longueur.',
  'Minimum thickness of wood under a bore, beside it, and between two bores.':
    'Épaisseur minimale de matière sous un perçage, à côté de lui, et entre deux perçages.',
  'How far a bit that bores through goes on into the board under the panel.':
    'De combien une mèche qui traverse entre dans le panneau de dessous.',
  'Usual width of rails.': 'Largeur habituelle des traverses.',
  'Depth of the groove of a back.': 'Profondeur de la rainure d’un fond.',
  'How much wider the groove of a back is than the back is thick.':
    'De combien la rainure d’un fond est plus large que le fond n’est épais.',
  'How much shorter and narrower a back is than the room in its grooves or rebates.':
    'De combien un fond est plus court et plus étroit que la place dans ses rainures ou feuillures.',
  'Distance from the back edges to the groove of a back.': 'Distance des chants arrière à la rainure d’un fond.',
  'Minimum length of an offcut that is kept.': 'Longueur minimale d’une chute gardée.',
  'Minimum width of an offcut that is kept.': 'Largeur minimale d’une chute gardée.',
  'Band that is counted beyond the length of each edge, as it overhangs at both ends.':
    'Bande comptée au-delà de la longueur de chaque chant, car elle dépasse aux deux bouts.',
  'Play of a loose shelf at each end.': 'Jeu d’une tablette mobile à chaque bout.',
  'Usual shelf setback of a loose shelf: from the front of the carcass to its front edge.':
    'Retrait habituel d’une tablette mobile : de l’avant du caisson à son chant avant.',
  'The usual hinge of doors; `none` bores for none.':
    'La charnière habituelle des portes ; `none` ne perce pour aucune.',
  'Usual distance from the upper and the lower end of a door to the centre of its next hinge.':
    'Distance habituelle des bouts supérieur et inférieur d’une porte au centre de la charnière voisine.',
  'Heights of doors, in rising order: up to the first a door has two hinges, up to the next three, and so on.':
    'Hauteurs de portes, en ordre croissant : jusqu’à la première une porte a deux charnières, jusqu’à la suivante trois, et ainsi de suite.',
  'Height of a door.': 'Hauteur d’une porte.',
  'Usual gap between two doors, and all round an inset door.':
    'Jeu habituel entre deux portes, et tout autour d’une porte encastrée.',
  'How much of each side an overlay door usually leaves to be seen: from the outside of the carcass to its edge.':
    'Ce qu’une porte en applique laisse d’ordinaire voir de chaque côté : de l’extérieur du caisson à son chant.',
  'Usual height of the lower end of a wall carcass above the floor; it shows where carcasses stand along a wall.':
    'Hauteur habituelle du bas d’un caisson haut au-dessus du sol ; elle montre où les caissons se trouvent le long d’un mur.',
  'Thickness of the worktop that is drawn over base carcasses along a wall; 0 for none.':
    'Épaisseur du plan de travail dessiné sur les caissons bas le long d’un mur ; 0 pour aucun.',
  'How far an overlay door usually stands off the front edges, on its buffers.':
    'De combien une porte en applique se tient d’ordinaire devant les chants avant, sur ses butoirs.',
  'What a change costs, in seconds.': 'Ce que coûte un changement, en secondes.',
  'To set one stop.': 'Régler une butée.',
  'To set a fence, a head or its height.': 'Régler un guide, une tête ou sa hauteur.',
  'To put in or take out one bit.': 'Mettre ou retirer une mèche.',
  'To change the depth stop.': 'Changer la butée de profondeur.',
  'To turn a head level or upright.': 'Coucher ou redresser une tête.',
  'To put on or take off the fence extension.': 'Mettre ou retirer la rallonge du guide.',
  'To go to another machine.': 'Passer à une autre machine.',
  'How long the boring of panels takes, in seconds.': 'Le temps que prend le perçage des panneaux, en secondes.',
  'To pick up a panel, lay it against the stop for the first time, and put it away.':
    'Prendre un panneau, le mettre une première fois contre la butée, et le ranger.',
  'To lay it again: turned, or slid to another stop.': 'Le reposer : tourné, ou glissé contre une autre butée.',
  'For one stroke, with clamping.': 'Pour une descente, serrage compris.',
  'To move a panel along by an index move.': 'Avancer un panneau.',
  'How far real panels and machines deviate, plus or minus.':
    'De combien panneaux et machines réels s’écartent, en plus ou en moins.',
  'Thickness of a board.': 'Épaisseur d’un panneau.',
  'Width of a cut panel.': 'Largeur d’un panneau débité.',
  'Length of a cut panel.': 'Longueur d’un panneau débité.',
  'Out of square, over one metre.': 'Faux équerre, sur un mètre.',
  'Repeatability of a stop or fence.': 'Répétabilité d’une butée ou d’un guide.',
  'How far a bit wanders from the centre of its spindle.': 'De combien une mèche dérive du centre de sa broche.',
  'Play of a dowel in its bores.': 'Jeu d’un tourillon dans ses perçages.',
  'Maximum offset allowed at a front edge.': 'Désaffleur maximal admis à un chant avant.',
  'Maximum step allowed at an outside face.': 'Ressaut maximal admis à une face extérieure.',
  'Maximum gap allowed in a joint.': 'Jour maximal admis dans un assemblage.',
  'The sheets of labels that panel labels are printed on.': 'Les planches où s’impriment les étiquettes de panneaux.',
  'Size of a sheet.': 'Taille d’une planche.',
  '210 by 297 mm.': '210 sur 297 mm.',
  '8 1/2 by 11 in.': '8 1/2 sur 11 in.',
  'Labels side by side.': 'Étiquettes côte à côte.',
  'Labels one under the other.': 'Étiquettes l’une sous l’autre.',
  'Width of a label.': 'Largeur d’une étiquette.',
  'Height of a label.': 'Hauteur d’une étiquette.',
  'From the left edge of the sheet to the first label; as much as on the right when left out.':
    'Du bord gauche de la planche à la première étiquette ; à défaut autant qu’à droite.',
  'From the top edge of the sheet to the first label; as much as at the foot when left out.':
    'Du bord supérieur de la planche à la première étiquette ; à défaut autant qu’en bas.',
  'Between two labels side by side.': 'Entre deux étiquettes côte à côte.',
  'Between two labels one under the other.': 'Entre deux étiquettes l’une sous l’autre.',
  'What work takes and costs beside boring, for the paper of cost and time. Prices are in the shop’s own money.':
    'Ce que le travail prend et coûte hors perçage, pour le papier des coûts et des temps. Les prix sont dans la monnaie de l’atelier.',
  'Price of an hour of work.': 'Prix d’une heure de travail.',
  'Price of one shelf pin.': 'Prix d’un taquet.',
  'Seconds to lay a sheet on the panel saw and to clear away what is left of it.':
    'Secondes pour poser un panneau entier sur la scie et en ranger les restes.',
  'Seconds for one cut on the panel saw.': 'Secondes pour une coupe à la scie.',
  'Seconds to bring one edge to the edge bander and to look it over.':
    'Secondes pour présenter un chant à la plaqueuse et le contrôler.',
  'Seconds that one metre of edge takes on the edge bander.': 'Secondes que prend un mètre de chant à la plaqueuse.',
  'Seconds to lay out one carcass, to close it in the clamp and to take it out.':
    'Secondes pour présenter un caisson, le serrer dans la presse et l’en sortir.',
  'Seconds to put in one fitting while a carcass is put together.':
    'Secondes pour poser une ferrure pendant le montage d’un caisson.',
};
