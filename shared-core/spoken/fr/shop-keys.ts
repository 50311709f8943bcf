/** Ce que veulent dire les clés d’un atelier, d’après la phrase anglaise. */
export const shopKeys: Readonly<Record<string, string>> = {
  'A workshop: its machines, materials and habits.': 'Un atelier : ses machines, ses matériaux et ses habitudes.',
  'What the shop is called on its papers.': 'Le nom de l’atelier sur ses documents.',
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
  'For each arm that the hinge comes with: how far the centre of the cup stands from the face under the plate, with a plate of height 0; of a front that slants, along that.':
    'Pour chaque bras de la charnière : distance du centre du boîtier à la face sous l’embase, avec une embase de hauteur 0 ; d’une façade en biais, le long de celle-ci.',
  'By how many degrees the fronts that it is made for slant away from one square to the side, as across a corner; 0 for those that do not.':
    'De combien de degrés les façades pour lesquelles elle est faite s’écartent de l’équerre au côté, comme en biais dans un angle ; 0 pour les droites.',
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
  'Minimum distance from the groove of the back to the rear row, from the back edge where there is none; with `share-places` every back counts as the usual one. The row stands whole pitches behind the front row.':
    'Distance minimale de la rainure du fond à la rangée arrière, du chant arrière sans rainure ; avec `share-places`, tout fond compte comme le fond usuel. La rangée est à un nombre entier de pas derrière la rangée avant.',
  'Distance from the front edge to the first construction bore.':
    'Distance du chant avant au premier perçage d’assemblage.',
  'Maximum distance between neighbouring construction bores.': 'Distance maximale entre perçages d’assemblage voisins.',
  'How many of this kind are usually bored in one go. Where it is said of any kind, dowels are weighed against changed bits by the shop’s own times, and the load of bits that joints share is the one that takes the least time for such a batch; else it is the one with the fewest set-ups. It counts with `share-places: yes`.':
    'Combien de ce genre sont percés d’ordinaire en une fois. Où c’est dit d’un genre au moins, les tourillons sont pesés contre les changements de mèches selon les temps de l’atelier, et la garniture commune des assemblages est celle qui prend le moins de temps pour un tel lot ; sinon, celle qui a le moins de réglages. Compte avec `share-places: yes`.',
  'Whether joints of all depths take their construction bores from one load of bits, which reads the same from both ends of the heads. Fewer set-ups then serve them, at the price of a few more dowels; rear rows stand as with the usual back.':
    'Si les assemblages de toutes profondeurs prennent leurs perçages dans une seule garniture, la même vue des deux bouts des têtes. Il faut alors moins de réglages, au prix de quelques tourillons de plus ; les rangées arrière sont placées comme avec le fond habituel.',
  'The load of bits that joints share, where the owner has chosen one; worked out when left out. It counts with `share-places: yes`.':
    'La garniture commune des assemblages, si l’atelier en a choisi une ; calculée à défaut. Compte avec `share-places: yes`.',
  'Whether, where places are shared, a side is bored between two rails as under a full panel, so that rails need no load of their own. Nothing enters these bores.':
    'Si, quand les places sont partagées, un côté est percé entre deux traverses comme sous un panneau entier, pour que les traverses n’aient pas besoin de leur propre garniture. Rien n’entre dans ces perçages.',
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
  'Distance from the back edges to a back in a groove; the play of the groove is behind the back.':
    'Distance des chants arrière à un fond en rainure ; le jeu de la rainure est derrière le fond.',
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
    'Hauteur habituelle du bas d’un caisson mural au-dessus du sol ; elle montre où les caissons se trouvent le long d’un mur.',
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
    'Ce que le travail prend et coûte hors perçage, pour le document des coûts et des temps. Les prix sont dans la monnaie de l’atelier.',
  'Price of an hour of work.': 'Prix d’une heure de travail.',
  'Price of one screw that holds the front of a drawer.': 'Prix d’une vis qui tient la façade d’un tiroir.',
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
  'Pulls and knobs of doors and drawer fronts.': 'Poignées et boutons de portes et de façades de tiroirs.',
  'A pull, or a knob, of doors and drawer fronts.': 'Une poignée ou un bouton de portes et de façades de tiroirs.',
  'From the one screw to the other; 0 for a knob, which has but one.':
    'D’une vis à l’autre ; 0 pour un bouton, qui n’en a qu’une.',
  'Diameter of the bores for its screws.': 'Diamètre des perçages de ses vis.',
  'Depth of these bores; they go through when left out.':
    'Profondeur de ces perçages ; sans indication ils traversent.',
  'The face that they are bored from.': 'La face d’où ils sont percés.',
  'The outside face, so that it stays clean.': 'La face extérieure, pour qu’elle reste nette.',
  'The inside face.': 'La face intérieure.',
  'Whether its screws go through the front of a drawer’s box too, so that this is bored with the drawer front.':
    'Si ses vis traversent aussi le devant d’un tiroir, qui est alors percé avec la façade.',
  'Overall length; as far as its screws stand apart, and its width more, when left out.':
    'Longueur hors tout ; sans indication, son entraxe et sa largeur en plus.',
  'Overall width.': 'Largeur hors tout.',
  'How far it stands out from the front.': 'De combien elle dépasse de la façade.',
  'Diameter of the heads of its screws.': 'Diamètre des têtes de ses vis.',
  'How high these heads are.': 'Hauteur de ces têtes.',
  'The usual pull of doors and drawer fronts; `none` bores for none.':
    'La poignée habituelle des portes et façades de tiroirs ; `none` ne perce pour aucune.',
  'Usual distance from the edge of a door that opens to the nearest screw of its pull.':
    'Distance habituelle du chant d’une porte qui s’ouvre à la vis la plus proche de sa poignée.',
  'Usual distance from the top or the bottom end of a door to the nearest screw of its pull.':
    'Distance habituelle du bout supérieur ou inférieur d’une porte à la vis la plus proche de sa poignée.',
  'Height above the floor at which a door is taken hold of: where that is in its middle third, its pull stands there, else near the end that is nearer to it.':
    'Hauteur au-dessus du sol où l’on prend une porte : si elle tombe dans son tiers médian, la poignée y est, sinon près du bout qui en est le plus proche.',
  'Width of a drawer front from which on it has two pulls; always one when left out.':
    'Largeur d’une façade de tiroir à partir de laquelle elle a deux poignées ; sans indication toujours une.',
  'The two screws beside the cup that hold the hinge to the door.':
    'Les deux vis près du boîtier qui tiennent la charnière à la porte.',
  'From the one to the other, along the edge of the door; half of it to each side of the cup.':
    'De l’une à l’autre, le long du chant de la porte ; la moitié de chaque côté du boîtier.',
  'How much further from the edge of the door than the centre of the cup.':
    'De combien plus loin du chant de la porte que le centre du boîtier.',
  'Diameter of their bores.': 'Diamètre de leurs perçages.',
  'A hanging bracket of wall carcasses: one in each side.':
    'Une ferrure de suspension de caissons muraux : une dans chaque côté.',
  'One bore of a hanging bracket in the inside face of a side.':
    'Un perçage d’une ferrure de suspension dans la face intérieure d’un côté.',
  'From the upper end of the side.': 'Depuis le bout haut du côté.',
  'From the back edge of the side.': 'Depuis le chant arrière du côté.',
  'Its bores in the side.': 'Ses perçages dans le côté.',
  'Diameter of these bores.': 'Diamètre de ces perçages.',
  'What a pair of them carries, in kilograms; not checked when left out.':
    'Ce qu’en porte une paire, en kilogrammes ; non vérifié à défaut.',
  'Overall height, its bores in the middle of it.': 'Hauteur hors tout, ses perçages en son milieu.',
  'Overall size from front to back, its bores in the middle of it.':
    'Dimension hors tout d’avant en arrière, ses perçages en son milieu.',
  'How far it stands out from the side into the carcass.': 'De combien elle dépasse du côté dans le caisson.',
  'Hanging brackets of wall carcasses.': 'Ferrures de suspension de caissons muraux.',
  'The usual hanging bracket of wall carcasses; `none` bores for none.':
    'La ferrure de suspension usuelle des caissons muraux ; `none` ne perce pour aucune.',
};
