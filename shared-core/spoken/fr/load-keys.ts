/** Ce que veulent dire les clés des charges et des poids, d’après la phrase anglaise. */
export const loadKeys: Readonly<Record<string, string>> = {
  'What stands on each shelf: kilograms spread evenly, or a map with more about it.':
    'Ce qui est posé sur chaque tablette : des kilogrammes également répartis, ou des clés qui en disent plus.',
  'What stands on each shelf and on the bottom, and how shelves are held.':
    'Ce qui est posé sur chaque tablette et sur le bas, et comment les tablettes sont tenues.',
  'Kilograms, spread evenly over each shelf.': 'Kilogrammes, également répartis sur chaque tablette.',
  'Kilograms that stand at the middle of each shelf.': 'Kilogrammes posés au milieu de chaque tablette.',
  'A load that has a name, spread evenly; it is added to the kilograms.':
    'Une charge qui a un nom, également répartie ; elle s’ajoute aux kilogrammes.',
  'None.': 'Aucune.',
  'Books: 59.5 kg for each metre (40 lb a running foot; common practice).':
    'Livres : 59,5 kg par mètre (40 lb par pied courant ; usage courant).',
  'The test load of ANSI/KCMA A161.1 for shelves: 73.2 kg for each square metre (15 lb/sq ft). No design load.':
    'La charge d’essai de l’ANSI/KCMA A161.1 pour les tablettes : 73,2 kg par mètre carré (15 lb/sq ft). Ce n’est pas une charge de calcul.',
  'How the ends of shelves are reckoned.': 'Comment les bouts des tablettes comptent dans le calcul.',
  'They lie on their supports, and turn as the shelf sags.':
    'Ils reposent sur leurs appuis, et tournent quand la tablette fléchit.',
  'They cannot turn. Few joints are that stiff.': 'Ils ne peuvent tourner. Peu d’assemblages sont aussi raides.',
  'How the back edges of shelves are reckoned.': 'Comment les chants arrière des tablettes comptent dans le calcul.',
  'Nothing holds them.': 'Rien ne les tient.',
  'They are held along their whole length, as by screws through a back.':
    'Ils sont tenus sur toute leur longueur, comme par des vis à travers un fond.',
  'Height of a strip of solid wood along the front edge, as thick as the shelf and flush with its upper face.':
    'Hauteur d’une alaise de bois massif le long du chant avant, épaisse comme la tablette et au ras de sa face supérieure.',
  'What it is made of; says how heavy and how stiff it is where `density` and `modulus` do not.':
    'De quoi il est fait ; dit son poids et sa raideur où `density` et `modulus` ne le disent pas.',
  'Particleboard: 680 kg/m³; modulus by thickness as EN 312 P2 has it.':
    'Panneau de particules : 680 kg/m³ ; module selon l’épaisseur, d’après EN 312 P2.',
  'Medium-density fibreboard: 750 kg/m³; modulus by thickness as EN 622-5 has it.':
    'Panneau de fibres de moyenne densité : 750 kg/m³ ; module selon l’épaisseur, d’après EN 622-5.',
  'Plywood: 600 kg/m³; 6960 N/mm², the least of the Wood Handbook.':
    'Contreplaqué : 600 kg/m³ ; 6960 N/mm², la plus petite valeur du Wood Handbook.',
  'Solid wood: 600 kg/m³; 8500 N/mm², that of a soft pine.':
    'Bois massif : 600 kg/m³ ; 8500 N/mm², la valeur d’un pin tendre.',
  'Density in kilograms per cubic metre; by its material when left out.':
    'Masse volumique en kilogrammes par mètre cube ; à défaut d’après la matière.',
  'Modulus of elasticity in bending, in newtons per square millimetre; by its material when left out.':
    'Module d’élasticité en flexion, en newtons par millimètre carré ; à défaut d’après la matière.',
  'How heavy a door may be for each hinge that it hangs on, in kilograms; not checked when left out.':
    'Ce qu’une porte peut peser par charnière, en kilogrammes ; à défaut, non contrôlé.',
  'Weights of doors in kilograms, in rising order: up to the first a door has two hinges, up to the next three, and so on. Of this and the height the one that asks for more counts.':
    'Poids de portes en kilogrammes, en ordre croissant : jusqu’au premier une porte a deux charnières, jusqu’au suivant trois, et ainsi de suite. Du poids et de la hauteur compte celui qui en demande le plus.',
  'Weight of a door, in kilograms.': 'Poids d’une porte, en kilogrammes.',
  'How many times its first sag a shelf comes to under a load that stays for years.':
    'À combien de fois sa première flèche arrive une tablette sous une charge qui reste des années.',
  'The greatest sag of a shelf that is accepted, for each metre of its length.':
    'La plus grande flèche admise d’une tablette, par mètre de sa longueur.',
  'What the brackets of one wall carcass carry together, in kilograms, where the bracket does not say it; not checked when left out.':
    'Ce que portent ensemble les ferrures de suspension d’un caisson mural, en kilogrammes ; à défaut, non contrôlé.',
  'A rail for clothes, between two sockets that are screwed to uprights.':
    'Une tringle entre deux supports vissés à des montants.',
  'Size of the rail from front to back.': 'Dimension de la tringle d’avant en arrière.',
  'Height of the rail itself.': 'Hauteur de la tringle elle-même.',
  'From the one screw of a socket to the other; 0 where it has but one.':
    'D’une vis d’un support à l’autre ; 0 s’il n’en a qu’une.',
  'How the two screws of a socket stand.': 'Comment se placent les deux vis d’un support.',
  'One over the other.': 'L’une au-dessus de l’autre.',
  'One behind the other.': 'L’une derrière l’autre.',
  'Diameter of the bores for these screws.': 'Diamètre des perçages pour ces vis.',
  'How much shorter than the opening the rail is at each end, for the floor of its socket.':
    'De combien la tringle est plus courte que l’ouverture à chaque bout, pour le fond de son support.',
  'Room over the rail that is needed to lift a coat hanger off it.':
    'Place au-dessus de la tringle qu’il faut pour décrocher un cintre.',
  'Width of the coat hangers, across which the carcass must be deep.':
    'Largeur des cintres, pour laquelle le caisson doit être assez profond.',
  'Rails for clothes, with their sockets.': 'Tringles avec leurs supports.',
  'The usual rail for clothes, where a job asks for one.': 'La tringle usuelle, quand un travail en demande une.',
  'One rail for clothes.': 'Une tringle.',
  'From the front of the carcass to its centre line; in the middle of the depth when left out.':
    'De l’avant du caisson à son axe ; au milieu de la profondeur à défaut.',
  'The rail, where it is another one.': 'La tringle, si c’en est une autre.',
  'Rails for clothes, each between the two uprights of a bay.':
    'Tringles, chacune entre les deux montants d’une travée.',
  'A rail for clothes.': 'Une tringle.',
  'What holds the plinth to the front feet.': 'Ce qui tient la plinthe aux pieds avant.',
  'From the upper edge of the plinth to its screws.': 'Du chant haut de la plinthe à ses vis.',
  'From the one screw to the other, side by side; 0 where it has but one.':
    'D’une vis à l’autre, côte à côte ; 0 si elle n’en a qu’une.',
  'A foot under the bottom of carcasses that have a plinth.': 'Un pied sous le dessous des caissons à plinthe.',
  'Least and greatest height that it can be set to.': 'Plus petite et plus grande hauteur à laquelle il se règle.',
  'From the front of the carcass to the centres of the front feet.': 'De l’avant du caisson au centre des pieds avant.',
  'From the back of the carcass to the centres of the rear feet.':
    'De l’arrière du caisson au centre des pieds arrière.',
  'From the outside of the carcass to the centres of the outer feet.':
    'De l’extérieur du caisson au centre des pieds extérieurs.',
  'Greatest distance between two feet of a row; wider carcasses have more of them.':
    'Plus grande distance entre deux pieds d’une rangée ; les caissons plus larges en ont davantage.',
  'From screw to screw of a foot, which has four in a square; 0 where it has one bore.':
    'De vis à vis d’un pied, qui en a quatre en carré ; 0 s’il a un seul perçage.',
  'Diameter of its bores in the bottom.': 'Diamètre de ses perçages dans le dessous.',
  'Diameter of the room that it takes under the bottom.': 'Diamètre de la place qu’il prend sous le dessous.',
  'What one foot carries, in kilograms; not checked when left out.':
    'Ce que porte un pied, en kilogrammes ; non vérifié à défaut.',
  'Feet of carcasses on a plinth, and the clips of the plinth.':
    'Pieds des caissons à plinthe, et agrafes de la plinthe.',
  'The usual foot of carcasses on a plinth; `none` bores for none.':
    'Le pied usuel des caissons à plinthe ; `none` ne perce pour aucun.',
  'The feet that the bottom and the plinth are bored for; `none` bores for none.':
    'Les pieds pour lesquels le dessous et la plinthe sont percés ; `none` ne perce pour aucun.',
  'An angle that a front which does not move is screwed on with, from inside.':
    'Une équerre par laquelle une façade qui ne bouge pas est vissée de l’intérieur.',
  'From the face of the upright, or of the bottom or top, to its screws in the front.':
    'De la face du montant, du dessous ou du dessus, à ses vis dans la façade.',
  'From the inside face of the front to its screws in the upright, or in the bottom or top.':
    'De la face intérieure de la façade à ses vis dans le montant, le dessous ou le dessus.',
  'From screw to screw of one leg, along the corner; 0 where it has but one.':
    'De vis à vis d’une aile, le long du coin ; 0 là où elle n’en a qu’une.',
  'From an end of the front to the middle of the next one, or a little more.':
    'D’un bout de la façade au milieu de la plus proche, ou un peu plus.',
  'Greatest distance between two of them; higher fronts have more of them.':
    'Plus grande distance entre deux d’entre elles ; les façades plus hautes en ont davantage.',
  'Diameter of its bores in the upright, or in the bottom or top.':
    'Diamètre de ses perçages dans le montant, le dessous ou le dessus.',
  'Diameter of its bores in the front.': 'Diamètre de ses perçages dans la façade.',
  'Depth of its bores in the front.': 'Profondeur de ses perçages dans la façade.',
  'Overall size along the corner, its screws in the middle of it.': 'Encombrement le long du coin, ses vis au milieu.',
  'How far its legs reach from the corner.': 'Jusqu’où ses ailes vont depuis le coin.',
  'The usual angle that fixed fronts, blind panels and fillers are screwed on with; `none` bores for none.':
    'L’équerre usuelle par laquelle façades fixes, panneaux aveugles et fileurs sont vissés ; `none` ne perce pour aucune.',
  'Angles that fixed fronts, blind panels and fillers are screwed on with.':
    'Équerres par lesquelles façades fixes, panneaux aveugles et fileurs sont vissés.',
  'The angles that fixed fronts, blind panels and fillers are screwed on with; `none` bores for none.':
    'Les équerres par lesquelles façades fixes, panneaux aveugles et fileurs sont vissés ; `none` ne perce pour aucune.',
};
