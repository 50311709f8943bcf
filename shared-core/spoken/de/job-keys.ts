/** Was die Schlüssel eines Auftrags bedeuten. Nach dem englischen Satz. */
export const jobKeys: Readonly<Record<string, string>> = {
  'A cabinet job.': 'Ein Korpusauftrag.',
  'What the job is called on the shop papers.': 'Wie der Auftrag auf den Werkstattpapieren heißt.',
  'Unit of every bare number in this file.': 'Einheit jeder bloßen Zahl in dieser Datei.',
  'Millimetres.': 'Millimeter.',
  'Inches, decimal or with fractions such as 23 5/8.': 'Zoll, dezimal oder mit Brüchen wie 23 5/8.',
  'The shop file, in the same folder. Without one, a neutral built-in shop is used.':
    'Die Werkstattdatei, im selben Ordner. Ohne sie gilt eine neutrale, eingebaute Werkstatt.',
  'Values for every carcass of this file that has none of its own.':
    'Werte für jeden Korpus dieser Datei, der keine eigenen hat.',
  'Overall height of the carcass, without the plinth. By default the rows come out balanced.':
    'Gesamthöhe des Korpus, ohne Sockel. Ohne Angabe liegen die Reihen gleichmäßig.',
  'Overall depth of the carcass: from the front edges to the back of the box, without fronts.':
    'Gesamttiefe des Korpus: von den Vorderkanten bis hinten, ohne Fronten.',
  'Board of sides, horizontals, dividers and shelves.': 'Plattenwerkstoff von Seiten, Böden und Mittelwänden.',
  'Band of all front edges; `none` leaves them bare.': 'Kantenband aller Vorderkanten; `none` lässt sie unbekantet.',
  'The fitting that holds the joints: a dowel, connector screw or cam fitting of the shop.':
    'Der Verbinder der Verbindungen: ein Dübel, eine Verbindungsschraube oder ein Exzenterverbinder der Werkstatt.',
  'How the carcass is closed at the top.': 'Wie der Korpus oben geschlossen ist.',
  'A top between the sides.': 'Ein oberer Boden zwischen den Seiten.',
  'A top lying over the sides.': 'Ein oberer Boden, der über den Seiten liegt.',
  'A front and a back rail between the sides, instead of a top.':
    'Eine vordere und eine hintere Traverse zwischen den Seiten statt eines oberen Bodens.',
  'Where the bottom stands.': 'Wo der untere Boden liegt.',
  'A bottom between the sides.': 'Ein unterer Boden zwischen den Seiten.',
  'A bottom that the sides stand on.': 'Ein unterer Boden, auf dem die Seiten stehen.',
  'Width of the rails that stand in for a top.': 'Breite der Traversen, die einen oberen Boden ersetzen.',
  'Height of the plinth under the carcass; 0 for none.': 'Höhe des Sockels unter dem Korpus; 0 für keinen.',
  'The back: a word, or a map with more about it.': 'Die Rückwand: ein Wort, oder Schlüssel mit mehr Angaben.',
  'How the back is held.': 'Wie die Rückwand gehalten ist.',
  'In grooves, set in from the back edges.': 'In Nuten, von den Hinterkanten eingerückt.',
  'In rebates of the back edges.': 'In Falzen der Hinterkanten.',
  'On the back edges of the carcass.': 'Auf den Hinterkanten des Korpus.',
  'No back.': 'Keine Rückwand.',
  'Board of the back.': 'Plattenwerkstoff der Rückwand.',
  'Depth of the groove, or width of the rebate, in the sides.': 'Tiefe der Nut oder Breite des Falzes in den Seiten.',
  'Distance from the back edges of the sides to a back in a groove; the play of the groove is behind the back.':
    'Abstand einer eingenuteten Rückwand von den Hinterkanten der Seiten; die Luft der Nut liegt hinter der Rückwand.',
  'The doors: a word, or a map with more about them.': 'Die Türen: ein Wort, oder Schlüssel mit mehr Angaben.',
  'What hangs before the whole front.': 'Was vor der ganzen Front hängt.',
  'No door.': 'Keine Tür.',
  'One door, hung on the left.': 'Eine Tür, links angeschlagen.',
  'One door, hung on the right.': 'Eine Tür, rechts angeschlagen.',
  'Two doors that meet in the middle, hung on the left and on the right.':
    'Zwei Türen, die sich in der Mitte treffen, links und rechts angeschlagen.',
  'The doors, and how they hang.': 'Die Türen, und wie sie hängen.',
  'What hangs before each bay, from the left.': 'Was vor jedem Feld hängt, von links.',
  'What hangs before this bay.': 'Was vor diesem Feld hängt.',
  'How doors stand to the carcass.': 'Wie Türen zum Korpus stehen.',
  'Before the front edges, which they cover.': 'Vor den Vorderkanten, die sie verdecken.',
  'Between the panels, flush with the front edges.': 'Zwischen den Platten, bündig mit den Vorderkanten.',
  'Board of the doors.': 'Plattenwerkstoff der Türen.',
  'Band of all edges of the doors; `none` leaves them bare.':
    'Kantenband aller Kanten der Türen; `none` lässt sie unbekantet.',
  'The hinge that the doors hang on; `none` bores for none.':
    'Das Topfband der Türen; mit `none` wird für keines gebohrt.',
  'Gap between two doors, and all round an inset door.': 'Fuge zwischen zwei Türen, und rings um eine einliegende Tür.',
  'How much of each side an overlay door leaves to be seen: from the outside of the carcass to its edge.':
    'Wie viel eine aufliegende Tür von jeder Seite sehen lässt: von der Außenseite des Korpus bis zu ihrer Kante.',
  'The same at the top: from the upper end of the carcass down to the door.':
    'Dasselbe oben: vom oberen Ende des Korpus hinab zur Tür.',
  'The same at the bottom: from the lower end of the carcass up to the door.':
    'Dasselbe unten: vom unteren Ende des Korpus hinauf zur Tür.',
  'How far an overlay door stands off the front edges, on its buffers.':
    'Wie weit eine aufliegende Tür auf ihren Puffern vor den Vorderkanten steht.',
  'Which rows of holes are bored.': 'Welche Lochreihen gebohrt werden.',
  'No rows.': 'Keine Reihen.',
  'The front row only.': 'Nur die vordere Reihe.',
  'Front and rear rows.': 'Vordere und hintere Reihen.',
  'Distance from the bottom end of the side to the first hole of the rows.':
    'Abstand des ersten Lochs der Reihen vom unteren Ende der Seite.',
  'Row setback: from the front edge to the front row.': 'Abstand der vorderen Reihe von der Vorderkante.',
  'Distance from the front edge to the rear row.': 'Abstand der hinteren Reihe von der Vorderkante.',
  'Places of the construction bores, counted from the front edge.':
    'Stellen der Konstruktionsbohrungen, von der Vorderkante gezählt.',
  'From the front edge.': 'Von der Vorderkante.',
  'Machines for this carcass, where they are not the shop’s usual ones.':
    'Maschinen für diesen Korpus, wo es nicht die üblichen der Werkstatt sind.',
  'Vertical head for construction bores in faces.': 'Vertikalbohrkopf für Konstruktionsbohrungen in Flächen.',
  'Horizontal head for construction bores in ends.': 'Horizontalbohrkopf für Konstruktionsbohrungen in Stirnen.',
  'Line drill for rows.': 'Reihenbohrmaschine für Lochreihen.',
  'Case clamp that the box is pressed in.': 'Korpuspresse, in der der Korpus verpresst wird.',
  'The carcasses, each under its name.': 'Die Korpusse, jeder unter seinem Namen.',
  'One carcass: a box, with the doors and drawers that close it.':
    'Ein Korpus mit den Türen und Schubkästen, die ihn schließen.',
  'What kind of carcass it is; this chooses the defaults.': 'Welche Art Korpus es ist; das bestimmt die Vorgaben.',
  'Stands on the floor, closed by rails under a worktop.':
    'Steht am Boden, unter einer Arbeitsplatte mit Traversen geschlossen.',
  'Hangs on the wall.': 'Hängt an der Wand.',
  'Stands on the floor, higher than a worktop.': 'Steht am Boden, höher als eine Arbeitsplatte.',
  'A base carcass that drawers go into.': 'Ein Unterschrank für Schubkästen.',
  'Without fronts: rows only where a loose shelf needs them.':
    'Ohne Fronten: Reihen nur, wo ein Einlegeboden sie braucht.',
  'Overall width of the carcass.': 'Gesamtbreite des Korpus.',
  'Another carcass of this file, which this one is like. What is written here takes the place of what is written there, maps key by key and lists as a whole; all else is as it is there, but for `place`, `count` and `note`.':
    'Ein anderer Korpus dieser Datei, wie der dieser ist. Was hier steht, tritt an die Stelle dessen, was dort steht, in Gruppen Schlüssel für Schlüssel und Listen als Ganzes; alles andere ist wie dort, außer `place`, `count` und `note`.',
  'Whether left and right of the other carcass are changed over. What is written here counts as it is written.':
    'Ob links und rechts des anderen Korpus vertauscht sind. Was hier steht, gilt so, wie es da steht.',
  'How many equal ones are made. All are cut, banded and bored; they are drawn and checked once.':
    'Wie viele gleiche gemacht werden. Alle werden zugeschnitten, bekantet und gebohrt; gezeichnet und geprüft wird einer.',
  'Where it stands along a wall: from the left end of the wall, or a map with more about it.':
    'Wo er an einer Wand steht: vom linken Ende der Wand, oder Schlüssel mit mehr Angaben.',
  'From the left end of the wall to the outside of its left side.':
    'Vom linken Ende der Wand zur Außenseite seiner linken Seite.',
  'Where the carcass stands along a wall.': 'Wo der Korpus an einer Wand steht.',
  'The wall, counted as the owner likes.': 'Die Wand, gezählt, wie es der Besitzer mag.',
  'From the floor to its lower end; of one on a plinth, to the lower end of that.':
    'Vom Boden zu seinem unteren Ende; bei einem Sockel zu dessen unterem Ende.',
  'How many dividers, evenly spread, or a list of their places.':
    'Wie viele Mittelwände, gleichmäßig verteilt, oder eine Liste ihrer Stellen.',
  'How many.': 'Wie viele.',
  'Dividers.': 'Mittelwände.',
  'A divider.': 'Eine Mittelwand.',
  'Place of its centre line, from the outside of the left side.':
    'Stelle ihrer Mittellinie, von der Außenseite der linken Seite.',
  'One divider.': 'Eine Mittelwand.',
  'Board of this divider.': 'Plattenwerkstoff dieser Mittelwand.',
  'How many fixed shelves, or a list of their heights.': 'Wie viele feste Böden, oder eine Liste ihrer Höhen.',
  'The fixed shelves.': 'Die festen Böden.',
  'A fixed shelf.': 'Ein fester Boden.',
  'Height of its centre line above the bottom end of the side.':
    'Höhe seiner Mittellinie über dem unteren Ende der Seite.',
  'One shelf.': 'Ein Boden.',
  'Height of the shelf’s holes above the bottom end of the side: centre line of a fixed shelf, pin holes of a loose one.':
    'Höhe der Löcher des Bodens über dem unteren Ende der Seite: Mittellinie eines festen Bodens, Bodenträgerlöcher eines Einlegebodens.',
  'The bay it stands in, counted from the left; all bays when left out.':
    'Das Feld, in dem er liegt, von links gezählt; ohne Angabe alle Felder.',
  'Board of this shelf.': 'Plattenwerkstoff dieses Bodens.',
  'Shelf setback: from the front of the carcass to the front edge of the shelf.':
    'Rücksprung des Bodens: von der Vorderseite des Korpus zur Vorderkante des Bodens.',
  'How many loose shelves, or a list of their heights.': 'Wie viele Einlegeböden, oder eine Liste ihrer Höhen.',
  'The loose shelves.': 'Die Einlegeböden.',
  'A loose shelf.': 'Ein Einlegeboden.',
  'Height of its pin holes above the bottom end of the side.':
    'Höhe seiner Bodenträgerlöcher über dem unteren Ende der Seite.',
  'What differs on single panels: left, right, top, bottom, rail-front, rail-back, divider-1, shelf-1, loose-1, door-1, drawer-1-left …':
    'Was an einzelnen Platten anders ist: left, right, top, bottom, rail-front, rail-back, divider-1, shelf-1, loose-1, door-1, drawer-1-left …',
  'What differs on one panel of this carcass.': 'Was an einer Platte dieses Korpus anders ist.',
  'Board of this panel.': 'Plattenwerkstoff dieser Platte.',
  'Distance from its bottom end to the first hole of its rows.':
    'Abstand des ersten Lochs ihrer Reihen von ihrem unteren Ende.',
  'The fitting that holds the joints of this panel.': 'Der Verbinder der Verbindungen dieser Platte.',
  'Places of its construction bores, counted from its front edge.':
    'Stellen ihrer Konstruktionsbohrungen, von ihrer Vorderkante gezählt.',
  'The construction bores in its end joints, in both panels: how many, or their places from its front edge.':
    'Die Konstruktionsbohrungen ihrer Stirnverbindungen, in beiden Platten: wie viele, oder ihre Stellen von ihrer Vorderkante.',
  'How many, evenly spread over the spindles.': 'Wie viele, gleichmäßig auf die Spindeln verteilt.',
  'Their places, counted from its front edge.': 'Ihre Stellen, von ihrer Vorderkante gezählt.',
  'The joint at its bottom or left end alone, in both panels that meet there.':
    'Nur die Verbindung an ihrem unteren oder linken Ende, in beiden Platten, die sich dort treffen.',
  'The joint at its top or right end alone, in both panels that meet there.':
    'Nur die Verbindung an ihrem oberen oder rechten Ende, in beiden Platten, die sich dort treffen.',
  'The fitting that holds this joint.': 'Der Verbinder dieser Verbindung.',
  'Its construction bores: how many, or their places from the front edge of this panel.':
    'Ihre Konstruktionsbohrungen: wie viele, oder ihre Stellen von der Vorderkante dieser Platte.',
  'Depth of its construction bores in the face.': 'Tiefe ihrer Konstruktionsbohrungen in der Fläche.',
  'Depth of its construction bores in the ends.': 'Tiefe ihrer Konstruktionsbohrungen in den Stirnen.',
  'Edge bands of this panel, edge by edge; `none` leaves an edge bare.':
    'Kantenbänder dieser Platte, Kante für Kante; `none` lässt eine Kante unbekantet.',
  'Band on the front edge, the reference of every bore.': 'Kantenband der Vorderkante, des Bezugs jeder Bohrung.',
  'Band on the back edge.': 'Kantenband der Hinterkante.',
  'Band on the bottom end of an upright panel, or the left end of any other.':
    'Kantenband am unteren Ende einer aufrechten Platte oder am linken jeder anderen.',
  'Band on the top end of an upright panel, or the right end of any other.':
    'Kantenband am oberen Ende einer aufrechten Platte oder am rechten jeder anderen.',
  'A note for the shop papers.': 'Eine Bemerkung für die Werkstattpapiere.',
  'The pulls: a name, or a map with more about them.': 'Die Griffe: ein Name, oder Schlüssel mit mehr Angaben.',
  'The pulls or knobs of doors and drawer fronts, and where they stand.':
    'Griffe oder Knöpfe der Türen und Schubkastenfronten, und wo sie stehen.',
  'The pull or the knob; `none` bores for none.': 'Der Griff oder Knopf; mit `none` wird für keinen gebohrt.',
  'That of drawer fronts, where it is another one.': 'Der von Schubkastenfronten, wo es ein anderer ist.',
  'How pulls lie on doors; on drawer fronts they lie level.':
    'Wie Griffe auf Türen liegen; auf Schubkastenfronten liegen sie waagrecht.',
  'How the fronts before a bay that have no height of their own share it.':
    'Wie sich die Fronten vor einem Feld, die keine eigene Höhe haben, dessen Höhe teilen.',
  'How they share it, from the top down.': 'Wie sie sie teilen, von oben nach unten.',
  'All alike, to the tenth of a millimetre.': 'Alle gleich, auf den Zehntelmillimeter.',
  'Each a whole number of pitches with the gap under it, as alike as can be, the higher ones below. So slides and plates stand at one place behind all of them.':
    'Jede mit der Fuge darunter ganze Teilungen hoch, so gleich es geht, die höheren unten. So stehen Auszüge und Montageplatten hinter allen an einer Stelle.',
  'The same, but each higher than the one above it.': 'Ebenso, aber jede höher als die darüber.',
  'By how many pitches each is higher than the one above it.': 'Um wie viele Teilungen jede höher ist als die darüber.',
  'The same in pitches: so high that with the gap under it it comes to so many of them.':
    'Dasselbe in Teilungen: so hoch, dass es mit der Fuge darunter so viele sind.',
  'How the fronts before a bay share its height: a word, or a map with more about it.':
    'Wie sich die Fronten vor einem Feld dessen Höhe teilen: ein Wort, oder Schlüssel mit mehr Angaben.',
  'Stands the carcass in a corner of the room with its front across that: from the front edge of the one side to that of the other. Its `depth` is that of both wings, its `width` the reach along the first wall. Both sides stand between bottom and top, and of these and the shelves the front corner is cut off; what is said of their front band is said of that cut.':
    'Stellt den Korpus in eine Ecke des Raums, die Front quer davor: von der Vorderkante der einen Seite zu der der anderen. Seine Tiefe (`depth`) ist die beider Flügel, seine Breite (`width`) die Reichweite an der ersten Wand. Beide Seiten stehen zwischen Unterboden und Oberboden, und von diesen und den Einlegeböden ist die vordere Ecke abgeschnitten; was vom Kantenband ihrer Vorderkante gesagt ist, gilt für diesen Schnitt.',
  'How far it reaches along the other wall, with the corner of the room at its back left.':
    'Wie weit er an der anderen Wand reicht, mit der Ecke des Raums hinten links.',
  'How far it reaches along the other wall, with the corner of the room at its back right.':
    'Wie weit er an der anderen Wand reicht, mit der Ecke des Raums hinten rechts.',
  'In a corner, what of the front lies behind the run along the other wall, and the panel that closes it.':
    'In einer Ecke: was von der Front hinter der Zeile an der anderen Wand liegt, und die Blende, die es schließt.',
  'How much of the front the run along the other wall covers on the left, from the outside of the side.':
    'Wie viel der Front die Zeile an der anderen Wand links verdeckt, von der Außenfläche der Seite.',
  'How much of the front the run along the other wall covers on the right, from the outside of the side.':
    'Wie viel der Front die Zeile an der anderen Wand rechts verdeckt, von der Außenfläche der Seite.',
  'How much of the panel is left to be seen beside that run, so that pulls find room in the corner.':
    'Wie viel der Blende neben jener Zeile zu sehen bleibt, damit Griffe in der Ecke Platz finden.',
  'Board of the panel.': 'Plattenwerkstoff der Blende.',
  'Band of its edge toward the fronts; `none` leaves it bare.':
    'Kantenband ihrer Kante zu den Fronten hin; `none` lässt sie unbekantet.',
  'Height above the bottom end of the side from which on the back is left out, for pipes or for air; up to the top where `open-to` is left out.':
    'Höhe über dem unteren Ende der Seite, ab der die Rückwand wegbleibt, für Rohre oder Luft; bis oben, wo `open-to` fehlt.',
  'Height up to which it is left out; from the bottom on where `open-from` is left out.':
    'Höhe, bis zu der sie wegbleibt; von unten an, wo `open-from` fehlt.',
  'An appliance: the place stays open, and a fixed shelf is put in under it, unless one stands there.':
    'Ein Gerät: Der Platz bleibt offen, und darunter kommt ein fester Boden, wo keiner steht.',
  'Its screws stand one over the other.': 'Seine Schrauben stehen übereinander.',
  'Its screws stand side by side.': 'Seine Schrauben stehen nebeneinander.',
  'Where in the height of a door its pull stands.': 'Wo in der Höhe einer Tür ihr Griff steht.',
  'Near its top end.': 'Nahe ihrem oberen Ende.',
  'Near its bottom end.': 'Nahe ihrem unteren Ende.',
  'In the middle of its height.': 'In der Mitte ihrer Höhe.',
  'On doors: from the edge that opens to the nearest screw.':
    'An Türen: von der Kante, die aufgeht, zur nächsten Schraube.',
  'On doors: from the top or the bottom end to the nearest screw.':
    'An Türen: vom oberen oder unteren Ende zur nächsten Schraube.',
  'On drawer fronts: from the upper edge to the nearest screw.':
    'An Schubkastenfronten: von der Oberkante zur nächsten Schraube.',
  'Its pull or its knob, where it is another one; `none` bores for none.':
    'Ihr Griff oder Knopf, wo es ein anderer ist; mit `none` wird für keinen gebohrt.',
  'The pull or the knob of this front; `none` bores for none.':
    'Der Griff oder Knopf dieser Front; mit `none` wird für keinen gebohrt.',
  'How the pull of this front lies.': 'Wie der Griff dieser Front liegt.',
  'Where in the height of this door its pull stands.': 'Wo in der Höhe dieser Tür ihr Griff steht.',
  'Of this door: from the edge that opens to the nearest screw of its pull.':
    'An dieser Tür: von der Kante, die aufgeht, zur nächsten Schraube ihres Griffs.',
  'Of this door: from the top or the bottom end to the nearest screw of its pull.':
    'An dieser Tür: vom oberen oder unteren Ende zur nächsten Schraube ihres Griffs.',
  'Of this front: from the upper edge to the nearest screw of its pull.':
    'An dieser Front: von der Oberkante zur nächsten Schraube ihres Griffs.',
  'Which holes of the rows are bored, where not all of them are.':
    'Welche Löcher der Reihen gebohrt werden, wo es nicht alle sind.',
  'Which holes of the rows are bored: how many over and under that of each loose shelf, or a map.':
    'Welche Löcher der Reihen gebohrt werden: wie viele über und unter dem jedes Einlegebodens, oder Schlüssel.',
  'The bays that get rows, counted from the left. What is said of `rows` on a single panel comes first.':
    'Die Felder, die Reihen bekommen, von links gezählt. Was unter `rows` an einer einzelnen Platte steht, geht vor.',
  'A bay.': 'Ein Feld.',
  'Height above the bottom end of the side from which on holes are bored.':
    'Höhe über dem unteren Ende der Seite, ab der Löcher gebohrt werden.',
  'Height above the bottom end of the side up to which holes are bored.':
    'Höhe über dem unteren Ende der Seite, bis zu der Löcher gebohrt werden.',
  'How many holes are bored over and under that of each loose shelf; no others are then bored.':
    'Wie viele Löcher über und unter dem jedes Einlegebodens gebohrt werden; andere dann nicht.',
  'Loose panels beside the carcass: a word, or a map with more about them.':
    'Lose Platten neben dem Korpus: ein Wort, oder Schlüssel mit mehr Angaben.',
  'Loose panels beside the carcass, as deep as it is with its fronts.':
    'Lose Platten neben dem Korpus, so tief wie er mit seinen Fronten.',
  'Where there are end panels.': 'Wo es Wangen gibt.',
  'Nowhere.': 'Nirgends.',
  'On the left.': 'Links.',
  'On the right.': 'Rechts.',
  'On both hands.': 'Auf beiden Seiten.',
  'Board of the end panels.': 'Plattenwerkstoff der Wangen.',
  'Band of their edges that are seen; `none` leaves them bare.':
    'Kantenband ihrer sichtbaren Kanten; `none` lässt sie unbekantet.',
  'Whether they reach down to the floor beside a plinth.': 'Ob sie neben einem Sockel bis zum Boden reichen.',
  'Strips that close what is left beside the carcass, flush with its fronts.':
    'Leisten, die neben dem Korpus schließen, was offen bleibt, bündig mit seinen Fronten.',
  'Width of a strip on the left.': 'Breite einer Leiste links.',
  'Width of a strip on the right.': 'Breite einer Leiste rechts.',
  'Board of the strips.': 'Plattenwerkstoff der Leisten.',
  'Band of their edges toward the carcass; `none` leaves them bare.':
    'Kantenband ihrer Kanten zum Korpus hin; `none` lässt sie unbekantet.',
  'The hanging brackets that both sides are bored for; `none` bores for none.':
    'Die Aufhänger, für die beide Seiten gebohrt werden; `none` bohrt für keine.',
};
