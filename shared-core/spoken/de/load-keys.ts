/** Was die Schlüssel von Lasten und Gewichten bedeuten, nach dem englischen Satz. */
export const loadKeys: Readonly<Record<string, string>> = {
  'What stands on each shelf: kilograms spread evenly, or a map with more about it.':
    'Was auf jedem Boden steht: gleichmäßig verteilte Kilogramm, oder Schlüssel mit mehr Angaben.',
  'What stands on each shelf and on the bottom, and how shelves are held.':
    'Was auf jedem Boden und auf dem unteren Boden steht, und wie Böden gehalten sind.',
  'Kilograms, spread evenly over each shelf.': 'Kilogramm, gleichmäßig über jeden Boden verteilt.',
  'Kilograms that stand at the middle of each shelf.': 'Kilogramm, die in der Mitte jedes Bodens stehen.',
  'A load that has a name, spread evenly; it is added to the kilograms.':
    'Eine Last mit Namen, gleichmäßig verteilt; sie kommt zu den Kilogramm hinzu.',
  'None.': 'Keine.',
  'Books: 59.5 kg for each metre (40 lb a running foot; common practice).':
    'Bücher: 59,5 kg je Meter (40 lb je laufenden Fuß; gängige Praxis).',
  'The test load of ANSI/KCMA A161.1 for shelves: 73.2 kg for each square metre (15 lb/sq ft). No design load.':
    'Die Prüflast der ANSI/KCMA A161.1 für Böden: 73,2 kg je Quadratmeter (15 lb/sq ft). Keine Bemessungslast.',
  'How the ends of shelves are reckoned.': 'Wie die Enden der Böden in der Rechnung gelagert sind.',
  'They lie on their supports, and turn as the shelf sags.':
    'Sie liegen frei auf und drehen sich, wenn der Boden durchhängt.',
  'They cannot turn. Few joints are that stiff.': 'Sie können sich nicht drehen. So steif sind wenige Verbindungen.',
  'How the back edges of shelves are reckoned.': 'Wie die Hinterkanten der Böden in der Rechnung gelagert sind.',
  'Nothing holds them.': 'Nichts hält sie.',
  'They are held along their whole length, as by screws through a back.':
    'Sie sind auf ganzer Länge gehalten, etwa mit Schrauben durch eine Rückwand.',
  'Height of a strip of solid wood along the front edge, as thick as the shelf and flush with its upper face.':
    'Höhe eines Anleimers aus Massivholz an der Vorderkante, so dick wie der Boden und oben bündig mit ihm.',
  'What it is made of; says how heavy and how stiff it is where `density` and `modulus` do not.':
    'Woraus er besteht; sagt, wie schwer und wie steif er ist, wo `density` und `modulus` es nicht tun.',
  'Particleboard: 680 kg/m³; modulus by thickness as EN 312 P2 has it.':
    'Spanplatte: 680 kg/m³; E-Modul nach der Dicke wie in EN 312 P2.',
  'Medium-density fibreboard: 750 kg/m³; modulus by thickness as EN 622-5 has it.':
    'Mitteldichte Faserplatte: 750 kg/m³; E-Modul nach der Dicke wie in EN 622-5.',
  'Plywood: 600 kg/m³; 6960 N/mm², the least of the Wood Handbook.':
    'Sperrholz: 600 kg/m³; 6960 N/mm², der kleinste Wert des Wood Handbook.',
  'Solid wood: 600 kg/m³; 8500 N/mm², that of a soft pine.':
    'Massivholz: 600 kg/m³; 8500 N/mm², der Wert einer weichen Kiefer.',
  'Density in kilograms per cubic metre; by its material when left out.':
    'Rohdichte in Kilogramm je Kubikmeter; ohne Angabe nach dem Material.',
  'Modulus of elasticity in bending, in newtons per square millimetre; by its material when left out.':
    'Biege-E-Modul in Newton je Quadratmillimeter; ohne Angabe nach dem Material.',
  'How heavy a door may be for each hinge that it hangs on, in kilograms; not checked when left out.':
    'Wie schwer eine Tür je Band sein darf, an dem sie hängt, in Kilogramm; ohne Angabe nicht geprüft.',
  'Weights of doors in kilograms, in rising order: up to the first a door has two hinges, up to the next three, and so on. Of this and the height the one that asks for more counts.':
    'Gewichte von Türen in Kilogramm, aufsteigend: Bis zum ersten hat eine Tür zwei Bänder, bis zum nächsten drei, und so weiter. Von Gewicht und Höhe zählt, was mehr verlangt.',
  'Weight of a door, in kilograms.': 'Gewicht einer Tür, in Kilogramm.',
  'How many times its first sag a shelf comes to under a load that stays for years.':
    'Auf das Wievielfache seiner ersten Durchbiegung ein Boden unter einer Last kommt, die Jahre bleibt.',
  'The greatest sag of a shelf that is accepted, for each metre of its length.':
    'Die größte Durchbiegung eines Bodens, die hingenommen wird, je Meter seiner Länge.',
  'What the brackets of one wall carcass carry together, in kilograms, where the bracket does not say it; not checked when left out.':
    'Was die Aufhänger eines Hängeschranks zusammen tragen, in Kilogramm; ohne Angabe nicht geprüft.',
  'A rail for clothes, between two sockets that are screwed to uprights.':
    'Eine Kleiderstange zwischen zwei Lagern, die an Seiten oder Mittelwände geschraubt werden.',
  'Size of the rail from front to back.': 'Maß der Stange von vorn nach hinten.',
  'Height of the rail itself.': 'Höhe der Stange selbst.',
  'From the one screw of a socket to the other; 0 where it has but one.':
    'Von der einen Schraube eines Lagers zur anderen; 0, wo es nur eine hat.',
  'How the two screws of a socket stand.': 'Wie die zwei Schrauben eines Lagers stehen.',
  'One over the other.': 'Übereinander.',
  'One behind the other.': 'Hintereinander.',
  'Diameter of the bores for these screws.': 'Durchmesser der Bohrungen für diese Schrauben.',
  'How much shorter than the opening the rail is at each end, for the floor of its socket.':
    'Um wie viel die Stange an jedem Ende kürzer als die Öffnung ist, für den Boden ihres Lagers.',
  'Room over the rail that is needed to lift a coat hanger off it.':
    'Platz über der Stange, den ein Kleiderbügel zum Abheben braucht.',
  'Width of the coat hangers, across which the carcass must be deep.':
    'Breite der Kleiderbügel, für die der Korpus tief genug sein muss.',
  'Rails for clothes, with their sockets.': 'Kleiderstangen mit ihren Lagern.',
  'The usual rail for clothes, where a job asks for one.': 'Die übliche Kleiderstange, wo ein Auftrag eine verlangt.',
  'One rail for clothes.': 'Eine Kleiderstange.',
  'From the front of the carcass to its centre line; in the middle of the depth when left out.':
    'Von der Vorderseite des Korpus zu ihrer Mittellinie; ohne Angabe in der Mitte der Tiefe.',
  'The rail, where it is another one.': 'Die Stange, wo es eine andere ist.',
  'Rails for clothes, each between the two uprights of a bay.':
    'Kleiderstangen, jede zwischen den beiden Seiten oder Mittelwänden eines Feldes.',
  'A rail for clothes.': 'Eine Kleiderstange.',
  'What holds the plinth to the front feet.': 'Was den Sockel an den vorderen Füßen hält.',
  'From the upper edge of the plinth to its screws.': 'Von der Oberkante des Sockels zu ihren Schrauben.',
  'From the one screw to the other, side by side; 0 where it has but one.':
    'Von der einen Schraube zur anderen, nebeneinander; 0, wo sie nur eine hat.',
  'A foot under the bottom of carcasses that have a plinth.': 'Ein Fuß unter dem Unterboden von Korpussen mit Sockel.',
  'Least and greatest height that it can be set to.': 'Kleinste und größte Höhe, auf die er sich stellen lässt.',
  'From the front of the carcass to the centres of the front feet.':
    'Von der Vorderseite des Korpus zur Mitte der vorderen Füße.',
  'From the back of the carcass to the centres of the rear feet.':
    'Von der Rückseite des Korpus zur Mitte der hinteren Füße.',
  'From the outside of the carcass to the centres of the outer feet.':
    'Von außen am Korpus zur Mitte der äußeren Füße.',
  'Greatest distance between two feet of a row; wider carcasses have more of them.':
    'Größter Abstand zweier Füße einer Reihe; breitere Korpusse haben mehr davon.',
  'From screw to screw of a foot, which has four in a square; 0 where it has one bore.':
    'Von Schraube zu Schraube eines Fußes, der vier im Quadrat hat; 0, wo er eine Bohrung hat.',
  'Diameter of its bores in the bottom.': 'Durchmesser seiner Bohrungen im Unterboden.',
  'Diameter of the room that it takes under the bottom.':
    'Durchmesser des Platzes, den er unter dem Unterboden braucht.',
  'What one foot carries, in kilograms; not checked when left out.':
    'Was ein Fuß trägt, in Kilogramm; ohne Angabe nicht geprüft.',
  'Feet of carcasses on a plinth, and the clips of the plinth.':
    'Füße von Korpussen auf einem Sockel, und die Klammern des Sockels.',
  'The usual foot of carcasses on a plinth; `none` bores for none.':
    'Der übliche Fuß von Korpussen auf einem Sockel; `none` bohrt für keinen.',
  'The feet that the bottom and the plinth are bored for; `none` bores for none.':
    'Die Füße, für die Unterboden und Sockel gebohrt werden; `none` bohrt für keine.',
  'An angle that a front which does not move is screwed on with, from inside.':
    'Ein Winkel, mit dem eine Front, die sich nicht bewegt, von innen angeschraubt wird.',
  'From the face of the upright, or of the bottom or top, to its screws in the front.':
    'Von der Fläche der Seite oder Mittelwand, des Unter- oder Oberbodens, zu seinen Schrauben in der Front.',
  'From the inside face of the front to its screws in the upright, or in the bottom or top.':
    'Von der Innenfläche der Front zu seinen Schrauben in der Seite oder Mittelwand, im Unter- oder Oberboden.',
  'From screw to screw of one leg, along the corner; 0 where it has but one.':
    'Von Schraube zu Schraube eines Schenkels, die Ecke entlang; 0, wo er nur eine hat.',
  'From an end of the front to the middle of the next one, or a little more.':
    'Von einem Ende der Front zur Mitte des nächsten, oder etwas mehr.',
  'Greatest distance between two of them; higher fronts have more of them.':
    'Größter Abstand zweier davon; höhere Fronten haben mehr.',
  'Diameter of its bores in the upright, or in the bottom or top.':
    'Durchmesser seiner Bohrungen in der Seite oder Mittelwand, im Unter- oder Oberboden.',
  'Diameter of its bores in the front.': 'Durchmesser seiner Bohrungen in der Front.',
  'Depth of its bores in the front.': 'Tiefe seiner Bohrungen in der Front.',
  'Overall size along the corner, its screws in the middle of it.':
    'Gesamtmaß die Ecke entlang, die Schrauben in seiner Mitte.',
  'How far its legs reach from the corner.': 'Wie weit seine Schenkel von der Ecke reichen.',
  'The usual angle that fixed fronts, blind panels and fillers are screwed on with; `none` bores for none.':
    'Der übliche Winkel, mit dem feste Fronten, Blenden und Passleisten angeschraubt werden; `none` bohrt für keinen.',
  'Angles that fixed fronts, blind panels and fillers are screwed on with.':
    'Winkel, mit denen feste Fronten, Blenden und Passleisten angeschraubt werden.',
  'The angles that fixed fronts, blind panels and fillers are screwed on with; `none` bores for none.':
    'Die Winkel, mit denen feste Fronten, Blenden und Passleisten angeschraubt werden; `none` bohrt für keine.',
};
