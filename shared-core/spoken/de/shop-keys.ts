/** Was die Schlüssel einer Werkstatt bedeuten, nach dem englischen Satz. */
export const shopKeys: Readonly<Record<string, string>> = {
  'A workshop: its machines, materials and habits.': 'Eine Werkstatt: ihre Maschinen, Werkstoffe und Gewohnheiten.',
  'What the shop is called on its papers.': 'Wie die Werkstatt auf ihren Papieren heißt.',
  'Sheet materials.': 'Plattenwerkstoffe.',
  'A sheet material.': 'Ein Plattenwerkstoff.',
  'Nominal thickness.': 'Nenndicke.',
  'Thickness as measured on the present batch. Panels and their joints are set out by it, rows and heights by the nominal thickness.':
    'Dicke, wie an der jetzigen Lieferung gemessen. Platten und ihre Verbindungen richten sich danach, Reihen und Höhen nach der Nenndicke.',
  'Length of a sheet.': 'Länge einer Rohplatte.',
  'Width of a sheet.': 'Breite einer Rohplatte.',
  'Price of one sheet, in the shop’s own money.': 'Preis einer Rohplatte, im Geld der Werkstatt.',
  'Further sizes of sheet, and offcuts in stock, each under its name.':
    'Weitere Plattengrößen und Reste im Lager, jede unter ihrem Namen.',
  'A size of sheet, bought or left over from another job.':
    'Eine Plattengröße, gekauft oder von einem anderen Auftrag übrig.',
  'Length, along the grain where there is one.': 'Länge, längs der Maserung, wo es eine gibt.',
  'Width.': 'Breite.',
  'Price of one sheet, in the shop’s own money; by its area when left out.':
    'Preis einer Rohplatte, im Geld der Werkstatt; ohne Angabe nach ihrer Fläche.',
  'How many there are; any number when left out.': 'Wie viele es gibt; ohne Angabe beliebig viele.',
  'Direction of the grain.': 'Richtung der Maserung.',
  'No grain: panels may be turned.': 'Keine Maserung: Platten dürfen gedreht werden.',
  'Along the sheet.': 'Längs der Rohplatte.',
  'Edge bands.': 'Kantenbänder.',
  'An edge band.': 'Ein Kantenband.',
  'Thickness.': 'Dicke.',
  'Width of the tape as bought.': 'Breite des Bands, wie gekauft.',
  'Price of one metre, in the shop’s own money.': 'Preis eines Meters, im Geld der Werkstatt.',
  'Dowels.': 'Dübel.',
  'A dowel.': 'Ein Dübel.',
  'Diameter of the dowel and of its bores.': 'Durchmesser des Dübels und seiner Bohrungen.',
  'Length.': 'Länge.',
  'Depth of the bore in the face; the end takes the rest of the dowel and the glue gap.':
    'Tiefe der Bohrung in der Fläche; die Stirn nimmt den Rest des Dübels und die Leimluft.',
  'Price of one, in the shop’s own money.': 'Preis eines Stücks, im Geld der Werkstatt.',
  'Connector screws.': 'Verbindungsschrauben.',
  'A connector screw.': 'Eine Verbindungsschraube.',
  'Diameter of the clearance hole through the face.': 'Durchmesser der Durchgangsbohrung durch die Fläche.',
  'Diameter of the pilot hole in the end.': 'Durchmesser der Vorbohrung in der Stirn.',
  'Length of the screw under its head.': 'Länge der Schraube unter dem Kopf.',
  'Diameter of the recess that its head goes into; leave it out for a head that stays proud.':
    'Durchmesser der Senkung für ihren Kopf; ohne Angabe steht der Kopf vor.',
  'Depth of that recess, from the face that the screw enters.':
    'Tiefe dieser Senkung, von der Fläche, in die die Schraube geht.',
  'Cam fittings.': 'Exzenterverbinder.',
  'A cam fitting.': 'Ein Exzenterverbinder.',
  'Diameter of the bore for the cam.': 'Durchmesser der Bohrung für den Exzenter.',
  'Depth of the bore for the cam.': 'Tiefe der Bohrung für den Exzenter.',
  'From the end of the panel to the centre of the cam.': 'Vom Ende der Platte zur Mitte des Exzenters.',
  'Diameter of the bore in the end for the bolt.': 'Durchmesser der Bohrung in der Stirn für den Bolzen.',
  'Diameter of the bore in the face that the bolt is screwed into.':
    'Durchmesser der Bohrung in der Fläche, in die der Bolzen geschraubt wird.',
  'Depth of that bore.': 'Tiefe dieser Bohrung.',
  'Dowel that stands at the places between the cams.': 'Dübel an den Stellen zwischen den Exzentern.',
  'Hinges for doors.': 'Topfbänder für Türen.',
  'A hinge with a cup in the door and a plate on the side.':
    'Ein Band mit Topf in der Tür und Montageplatte an der Seite.',
  'Diameter of the cup.': 'Durchmesser des Topfs.',
  'Depth of the cup’s bore.': 'Tiefe der Topfbohrung.',
  'Minimum to maximum distance from the edge of the door to the centre of the cup.':
    'Kleinster bis größter Abstand der Topfmitte von der Kante der Tür.',
  'The distance that is taken unless the overlay asks for another one.':
    'Der Abstand, wenn die Auflage keinen anderen verlangt.',
  'For each arm that the hinge comes with: how far the centre of the cup stands from the face under the plate, with a plate of height 0; of a front that slants, along that.':
    'Für jeden Arm des Bands: wie weit die Topfmitte von der Fläche unter der Montageplatte steht, bei einer Platte der Höhe 0; bei einer schrägen Front dieser entlang.',
  'By how many degrees the fronts that it is made for slant away from one square to the side, as across a corner; 0 for those that do not.':
    'Um wie viel Grad die Fronten, für die es gemacht ist, von einer abweichen, die rechtwinklig zur Seite steht, wie über Eck; 0 für gerade.',
  'From the face under the plate to the centre of the cup.': 'Von der Fläche unter der Montageplatte zur Topfmitte.',
  'Heights of the plates that the shop has.': 'Höhen der Montageplatten, die die Werkstatt hat.',
  'Height of a plate.': 'Höhe einer Montageplatte.',
  'From the front edge to the screws of the plate; behind an inset door by its thickness more.':
    'Von der Vorderkante zu den Schrauben der Montageplatte; hinter einer einliegenden Tür um deren Dicke mehr.',
  'How many pitches the two screws of the plate stand apart.':
    'Wie viele Teilungen die zwei Schrauben der Montageplatte auseinander stehen.',
  'Diameter of the bores for the screws of the plate.':
    'Durchmesser der Bohrungen für die Schrauben der Montageplatte.',
  'Depth of these bores.': 'Tiefe dieser Bohrungen.',
  'Height that hinge and plate need, half of it above the centre of the cup.':
    'Höhe, die Band und Montageplatte brauchen, zur Hälfte über der Topfmitte.',
  'How far hinge and plate reach back from the door.':
    'Wie weit Band und Montageplatte von der Tür nach hinten reichen.',
  'How far the door opens, in degrees.': 'Wie weit die Tür aufgeht, in Grad.',
  'From the hinge edge of the door to the line that it turns about; negative beyond the edge.':
    'Von der Bandkante der Tür zu der Linie, um die sie dreht; negativ jenseits der Kante.',
  'From the outside face of the door to the line that it turns about; negative in front of the door.':
    'Von der Außenfläche der Tür zu der Linie, um die sie dreht; negativ vor der Tür.',
  'Diameters of the bits that the shop has.': 'Durchmesser der Bohrer, die die Werkstatt hat.',
  'Diameter.': 'Durchmesser.',
  'What the shop does unless a job says otherwise.': 'Was die Werkstatt tut, wenn ein Auftrag nichts anderes sagt.',
  'Usual board.': 'Üblicher Plattenwerkstoff.',
  'Usual board of backs.': 'Üblicher Plattenwerkstoff der Rückwände.',
  'Usual band of front edges.': 'Übliches Kantenband der Vorderkanten.',
  'The usual fitting that holds joints.': 'Der übliche Verbinder der Verbindungen.',
  'Usual sizes by kind.': 'Übliche Größen nach Art.',
  'Usual size of this kind of carcass.': 'Übliche Größe dieser Art Korpus.',
  'Height, without plinth.': 'Höhe, ohne Sockel.',
  'Number of pitches in the height. To them come the thicknesses that balance the row.':
    'Zahl der Teilungen in der Höhe. Dazu kommen die Dicken, die die Reihe ausgleichen.',
  'Depth.': 'Tiefe.',
  'Usual machines.': 'Übliche Maschinen.',
  'Cup borer.': 'Topfbandbohrmaschine.',
  'Case clamp.': 'Korpuspresse.',
  'Panel saw.': 'Plattensäge.',
  'Pitch of rows.': 'Teilung der Reihen.',
  'Usual row setback: from the front edge to the front row.':
    'Üblicher Abstand der vorderen Reihe von der Vorderkante.',
  'Diameter of row holes.': 'Durchmesser der Reihenbohrungen.',
  'Depth of row holes.': 'Tiefe der Reihenbohrungen.',
  'First hole of a row, from the bottom end; half the nominal thickness of the board when left out.':
    'Erstes Loch einer Reihe, vom unteren Ende; ohne Angabe die halbe Nenndicke der Platte.',
  'Minimum distance from the groove of the back to the rear row, from the back edge where there is none; with `share-places` every back counts as the usual one. The row stands whole pitches behind the front row.':
    'Kleinster Abstand der hinteren Reihe von der Nut der Rückwand, ohne Nut von der Hinterkante; mit `share-places` zählt jede Rückwand als die übliche. Die Reihe steht ganze Teilungen hinter der vorderen.',
  'Distance from the front edge to the first construction bore.':
    'Abstand der ersten Konstruktionsbohrung von der Vorderkante.',
  'Maximum distance between neighbouring construction bores.': 'Größter Abstand benachbarter Konstruktionsbohrungen.',
  'How many of this kind are usually bored in one go. Where it is said of any kind, dowels are weighed against changed bits by the shop’s own times, and the load of bits that joints share is the one that takes the least time for such a batch; else it is the one with the fewest set-ups. It counts with `share-places: yes`.':
    'Wie viele dieser Art üblicherweise in einem Zug gebohrt werden. Wo das von irgendeiner Art gesagt ist, werden Dübel gegen Bohrerwechsel nach den Zeiten der Werkstatt abgewogen, und die gemeinsame Bestückung der Verbindungen ist die, die für so ein Los am wenigsten Zeit braucht; sonst ist es die mit den wenigsten Rüstungen. Es zählt mit `share-places: yes`.',
  'Whether joints of all depths take their construction bores from one load of bits, which reads the same from both ends of the heads. Fewer set-ups then serve them, at the price of a few more dowels; rear rows stand as with the usual back.':
    'Ob Verbindungen aller Tiefen ihre Konstruktionsbohrungen aus einer Bestückung nehmen, die von beiden Enden der Köpfe gleich aussieht. Dann reichen weniger Rüstungen, um den Preis einiger Dübel mehr; hintere Reihen liegen wie bei der üblichen Rückwand.',
  'The load of bits that joints share, where the owner has chosen one; worked out when left out. It counts with `share-places: yes`.':
    'Die gemeinsame Bestückung der Verbindungen, wo der Besitzer eine gewählt hat; ohne Angabe berechnet. Es zählt mit `share-places: yes`.',
  'Whether, where places are shared, a side is bored between two rails as under a full panel, so that rails need no load of their own. Nothing enters these bores.':
    'Ob bei geteilten Stellen eine Seite zwischen zwei Traversen gebohrt wird wie unter einem vollen Boden, sodass Traversen keine eigene Bestückung brauchen. In diese Bohrungen kommt nichts.',
  'A spindle that carries a bit, counted from 1 at the front edge.':
    'Eine Spindel mit Bohrer, ab 1 von der Vorderkante gezählt.',
  'How much deeper the two bores of a dowel are than the dowel is long.':
    'Wie viel die zwei Bohrungen eines Dübels tiefer sind, als er lang ist.',
  'Minimum thickness of wood under a bore, beside it, and between two bores.':
    'Kleinste Holzdicke unter einer Bohrung, neben ihr und zwischen zwei Bohrungen.',
  'How far a bit that bores through goes on into the board under the panel.':
    'Wie weit ein durchgehender Bohrer in die Platte darunter weitergeht.',
  'Usual width of rails.': 'Übliche Breite der Traversen.',
  'Depth of the groove of a back.': 'Tiefe der Nut einer Rückwand.',
  'How much wider the groove of a back is than the back is thick.':
    'Wie viel die Nut einer Rückwand breiter ist, als diese dick ist.',
  'How much shorter and narrower a back is than the room in its grooves or rebates.':
    'Wie viel kürzer und schmaler eine Rückwand ist als der Raum in ihren Nuten oder Falzen.',
  'Distance from the back edges to a back in a groove; the play of the groove is behind the back.':
    'Abstand einer eingenuteten Rückwand von den Hinterkanten; die Luft der Nut liegt hinter der Rückwand.',
  'Minimum length of an offcut that is kept.': 'Kleinste Länge eines Rests, der aufgehoben wird.',
  'Minimum width of an offcut that is kept.': 'Kleinste Breite eines Rests, der aufgehoben wird.',
  'Band that is counted beyond the length of each edge, as it overhangs at both ends.':
    'Kantenband, das über die Länge jeder Kante hinaus gerechnet wird, da es an beiden Enden übersteht.',
  'Play of a loose shelf at each end.': 'Spiel eines Einlegebodens an jedem Ende.',
  'Usual shelf setback of a loose shelf: from the front of the carcass to its front edge.':
    'Üblicher Rücksprung eines Einlegebodens: von der Vorderseite des Korpus zu seiner Vorderkante.',
  'The usual hinge of doors; `none` bores for none.':
    'Das übliche Topfband der Türen; mit `none` wird für keines gebohrt.',
  'Usual distance from the upper and the lower end of a door to the centre of its next hinge.':
    'Üblicher Abstand der nächsten Bandmitte vom oberen und vom unteren Ende einer Tür.',
  'Heights of doors, in rising order: up to the first a door has two hinges, up to the next three, and so on.':
    'Höhen von Türen, aufsteigend: Bis zur ersten hat eine Tür zwei Bänder, bis zur nächsten drei, und so weiter.',
  'Height of a door.': 'Höhe einer Tür.',
  'Usual gap between two doors, and all round an inset door.':
    'Übliche Fuge zwischen zwei Türen, und rings um eine einliegende Tür.',
  'How much of each side an overlay door usually leaves to be seen: from the outside of the carcass to its edge.':
    'Wie viel eine aufliegende Tür üblicherweise von jeder Seite sehen lässt: von der Außenseite des Korpus bis zu ihrer Kante.',
  'Usual height of the lower end of a wall carcass above the floor; it shows where carcasses stand along a wall.':
    'Übliche Höhe des unteren Endes eines Hängeschranks über dem Boden; sie zeigt, wo Korpusse an einer Wand stehen.',
  'Thickness of the worktop that is drawn over base carcasses along a wall; 0 for none.':
    'Dicke der Arbeitsplatte, die über Unterschränken an einer Wand gezeichnet wird; 0 für keine.',
  'How far an overlay door usually stands off the front edges, on its buffers.':
    'Wie weit eine aufliegende Tür üblicherweise auf ihren Puffern vor den Vorderkanten steht.',
  'What a change costs, in seconds.': 'Was eine Umstellung kostet, in Sekunden.',
  'To set one stop.': 'Einen Anschlag stellen.',
  'To set a fence, a head or its height.': 'Ein Lineal, einen Kopf oder seine Höhe stellen.',
  'To put in or take out one bit.': 'Einen Bohrer einsetzen oder herausnehmen.',
  'To change the depth stop.': 'Den Tiefenanschlag umstellen.',
  'To turn a head level or upright.': 'Einen Kopf waagrecht oder senkrecht schwenken.',
  'To put on or take off the fence extension.': 'Die Verlängerung des Lineals anbringen oder abnehmen.',
  'To go to another machine.': 'Zu einer anderen Maschine gehen.',
  'How long the boring of panels takes, in seconds.': 'Wie lange das Bohren von Platten dauert, in Sekunden.',
  'To pick up a panel, lay it against the stop for the first time, and put it away.':
    'Eine Platte aufnehmen, zum ersten Mal an den Anschlag legen und weglegen.',
  'To lay it again: turned, or slid to another stop.':
    'Sie neu anlegen: gedreht oder an einen anderen Anschlag geschoben.',
  'For one stroke, with clamping.': 'Für einen Hub, mit Spannen.',
  'To move a panel along by an index move.': 'Eine Platte weiterrücken.',
  'How far real panels and machines deviate, plus or minus.':
    'Wie weit wirkliche Platten und Maschinen abweichen, plus oder minus.',
  'Thickness of a board.': 'Dicke einer Platte.',
  'Width of a cut panel.': 'Breite einer zugeschnittenen Platte.',
  'Length of a cut panel.': 'Länge einer zugeschnittenen Platte.',
  'Out of square, over one metre.': 'Aus dem Winkel, auf einen Meter.',
  'Repeatability of a stop or fence.': 'Wiederholgenauigkeit eines Anschlags oder Lineals.',
  'How far a bit wanders from the centre of its spindle.': 'Wie weit ein Bohrer von der Mitte seiner Spindel verläuft.',
  'Play of a dowel in its bores.': 'Spiel eines Dübels in seinen Bohrungen.',
  'Maximum offset allowed at a front edge.': 'Größter erlaubter Versatz an einer Vorderkante.',
  'Maximum step allowed at an outside face.': 'Größte erlaubte Stufe an einer Außenfläche.',
  'Maximum gap allowed in a joint.': 'Größte erlaubte Fuge in einer Verbindung.',
  'The sheets of labels that panel labels are printed on.':
    'Die Etikettenbogen, auf die Plattenetiketten gedruckt werden.',
  'Size of a sheet.': 'Größe eines Bogens.',
  '210 by 297 mm.': '210 mal 297 mm.',
  '8 1/2 by 11 in.': '8 1/2 mal 11 in.',
  'Labels side by side.': 'Etiketten nebeneinander.',
  'Labels one under the other.': 'Etiketten untereinander.',
  'Width of a label.': 'Breite eines Etiketts.',
  'Height of a label.': 'Höhe eines Etiketts.',
  'From the left edge of the sheet to the first label; as much as on the right when left out.':
    'Vom linken Rand des Bogens zum ersten Etikett; ohne Angabe so viel wie rechts.',
  'From the top edge of the sheet to the first label; as much as at the foot when left out.':
    'Vom oberen Rand des Bogens zum ersten Etikett; ohne Angabe so viel wie unten.',
  'Between two labels side by side.': 'Zwischen zwei Etiketten nebeneinander.',
  'Between two labels one under the other.': 'Zwischen zwei Etiketten untereinander.',
  'What work takes and costs beside boring, for the paper of cost and time. Prices are in the shop’s own money.':
    'Was Arbeit außer dem Bohren braucht und kostet, für das Papier über Kosten und Zeit. Preise sind im Geld der Werkstatt.',
  'Price of an hour of work.': 'Preis einer Arbeitsstunde.',
  'Price of one screw that holds the front of a drawer.':
    'Preis einer Schraube, die die Front eines Schubkastens hält.',
  'Price of one shelf pin.': 'Preis eines Bodenträgers.',
  'Seconds to lay a sheet on the panel saw and to clear away what is left of it.':
    'Sekunden, um eine Rohplatte auf die Plattensäge zu legen und ihren Rest wegzuräumen.',
  'Seconds for one cut on the panel saw.': 'Sekunden für einen Schnitt auf der Plattensäge.',
  'Seconds to bring one edge to the edge bander and to look it over.':
    'Sekunden, um eine Kante zur Kantenanleimmaschine zu bringen und zu prüfen.',
  'Seconds that one metre of edge takes on the edge bander.':
    'Sekunden, die ein Meter Kante auf der Kantenanleimmaschine braucht.',
  'Seconds to lay out one carcass, to close it in the clamp and to take it out.':
    'Sekunden, um einen Korpus auszulegen, in der Presse zu schließen und herauszunehmen.',
  'Seconds to put in one fitting while a carcass is put together.':
    'Sekunden, um beim Zusammenbau einen Verbinder einzusetzen.',
  'Pulls and knobs of doors and drawer fronts.': 'Griffe und Knöpfe von Türen und Schubkastenfronten.',
  'A pull, or a knob, of doors and drawer fronts.': 'Ein Griff oder Knopf von Türen und Schubkastenfronten.',
  'From the one screw to the other; 0 for a knob, which has but one.':
    'Von der einen Schraube zur anderen; 0 für einen Knopf, der nur eine hat.',
  'Diameter of the bores for its screws.': 'Durchmesser der Bohrungen für seine Schrauben.',
  'Depth of these bores; they go through when left out.': 'Tiefe dieser Bohrungen; ohne Angabe gehen sie durch.',
  'The face that they are bored from.': 'Die Fläche, von der aus sie gebohrt werden.',
  'The outside face, so that it stays clean.': 'Die Außenfläche, damit sie sauber bleibt.',
  'The inside face.': 'Die Innenfläche.',
  'Whether its screws go through the front of a drawer’s box too, so that this is bored with the drawer front.':
    'Ob seine Schrauben auch durch das Vorderstück eines Schubkastens gehen, sodass dieses mit der Front gebohrt wird.',
  'Overall length; as far as its screws stand apart, and its width more, when left out.':
    'Gesamtlänge; ohne Angabe so viel, wie seine Schrauben auseinanderstehen, und seine Breite dazu.',
  'Overall width.': 'Gesamtbreite.',
  'How far it stands out from the front.': 'Wie weit er vor der Front steht.',
  'Diameter of the heads of its screws.': 'Durchmesser der Köpfe seiner Schrauben.',
  'How high these heads are.': 'Wie hoch diese Köpfe sind.',
  'The usual pull of doors and drawer fronts; `none` bores for none.':
    'Der übliche Griff der Türen und Schubkastenfronten; mit `none` wird für keinen gebohrt.',
  'Usual distance from the edge of a door that opens to the nearest screw of its pull.':
    'Üblicher Abstand der nächsten Griffschraube von der Kante einer Tür, die aufgeht.',
  'Usual distance from the top or the bottom end of a door to the nearest screw of its pull.':
    'Üblicher Abstand der nächsten Griffschraube vom oberen oder unteren Ende einer Tür.',
  'Height above the floor at which a door is taken hold of: where that is in its middle third, its pull stands there, else near the end that is nearer to it.':
    'Höhe über dem Boden, in der man eine Tür fasst: Wo das in ihrem mittleren Drittel ist, steht der Griff dort, sonst nahe dem Ende, das näher daran ist.',
  'Width of a drawer front from which on it has two pulls; always one when left out.':
    'Breite einer Schubkastenfront, ab der sie zwei Griffe hat; ohne Angabe immer einen.',
  'The two screws beside the cup that hold the hinge to the door.':
    'Die zwei Schrauben neben dem Topf, die das Band an der Tür halten.',
  'From the one to the other, along the edge of the door; half of it to each side of the cup.':
    'Von der einen zur anderen, längs der Kante der Tür; zur Hälfte auf jeder Seite des Topfs.',
  'How much further from the edge of the door than the centre of the cup.':
    'Wie viel weiter von der Kante der Tür als die Topfmitte.',
  'Diameter of their bores.': 'Durchmesser ihrer Bohrungen.',
  'A hanging bracket of wall carcasses: one in each side.': 'Ein Aufhänger von Hängekorpussen: einer in jeder Seite.',
  'One bore of a hanging bracket in the inside face of a side.':
    'Eine Bohrung eines Aufhängers in der Innenfläche einer Seite.',
  'From the upper end of the side.': 'Vom oberen Ende der Seite.',
  'From the back edge of the side.': 'Von der Hinterkante der Seite.',
  'Its bores in the side.': 'Seine Bohrungen in der Seite.',
  'Diameter of these bores.': 'Durchmesser dieser Bohrungen.',
  'What a pair of them carries, in kilograms; not checked when left out.':
    'Was ein Paar davon trägt, in Kilogramm; ohne Angabe nicht geprüft.',
  'Overall height, its bores in the middle of it.': 'Gesamte Höhe, mit den Bohrungen in ihrer Mitte.',
  'Overall size from front to back, its bores in the middle of it.':
    'Gesamtes Maß von vorn nach hinten, mit den Bohrungen in seiner Mitte.',
  'How far it stands out from the side into the carcass.': 'Wie weit er von der Seite in den Korpus vorsteht.',
  'Hanging brackets of wall carcasses.': 'Aufhänger von Hängekorpussen.',
  'The usual hanging bracket of wall carcasses; `none` bores for none.':
    'Der übliche Aufhänger von Hängekorpussen; `none` bohrt für keinen.',
};
