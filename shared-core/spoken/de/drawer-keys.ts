/** Was die Schlüssel von Fronten, Schubkästen und Auszügen bedeuten, nach dem englischen Satz. */
export const drawerKeys: Readonly<Record<string, string>> = {
  'What closes each bay, from the top down: each a word, or a map with more about it. How fronts stand to the carcass is said under `doors`.':
    'Was jedes Feld schließt, von oben nach unten: jeweils ein Wort, oder Schlüssel mit mehr Angaben. Wie Fronten zum Korpus stehen, steht unter `doors`.',
  'A front.': 'Eine Front.',
  'One front, in its place among those before a bay.': 'Eine Front an ihrem Platz unter denen vor einem Feld.',
  'What stands there.': 'Was dort ist.',
  'A drawer with its front.': 'Ein Schubkasten mit seiner Front.',
  'A door hung on the left.': 'Eine Tür, links angeschlagen.',
  'A door hung on the right.': 'Eine Tür, rechts angeschlagen.',
  'Two doors that meet in the middle.': 'Zwei Türen, die sich in der Mitte treffen.',
  'A fixed front.': 'Eine feste Front.',
  'Nothing: the place stays open.': 'Nichts: Der Platz bleibt offen.',
  'Height of the front itself; those without one share what is left equally.':
    'Höhe der Front selbst; Fronten ohne Höhe teilen sich gleichmäßig, was übrig bleibt.',
  'The bay it stands before, counted from the left; all bays when left out.':
    'Das Feld, vor dem sie steht, von links gezählt; ohne Angabe alle Felder.',
  'How the drawers are made.': 'Wie die Schubkästen gebaut sind.',
  'The slide that the drawers run on.': 'Der Auszug, auf dem die Schubkästen laufen.',
  'Board of the sides, the front and the back of the box.':
    'Plattenwerkstoff der Seiten, des Vorderstücks und der Rückwand des Schubkastens.',
  'Band of the upper edges of the box; `none` leaves them bare.':
    'Kantenband der Oberkanten des Schubkastens; `none` lässt sie unbekantet.',
  'How the bottom of the box is held.': 'Wie der Boden des Schubkastens gehalten ist.',
  'In grooves all round.': 'Ringsum in Nuten.',
  'Under the sides.': 'Unter den Seiten.',
  'Board of the bottom.': 'Plattenwerkstoff des Bodens.',
  'The fitting that holds the corners of the box.': 'Der Verbinder, der die Ecken des Schubkastens hält.',
  'Height of the box; as high as its place allows when left out.':
    'Höhe des Schubkastens; ohne Angabe so hoch, wie sein Platz es erlaubt.',
  'Slides for drawers.': 'Auszüge für Schubkästen.',
  'A pair of slides for a drawer.': 'Ein Paar Auszüge für einen Schubkasten.',
  'The lengths that it comes in.': 'Die Längen, in denen es ihn gibt.',
  'One length that a slide comes in, with its holes.': 'Eine Länge, in der es einen Auszug gibt, mit ihren Löchern.',
  'Length of the slide; the drawer’s box is as long.': 'Länge des Auszugs; der Schubkasten ist ebenso lang.',
  'Where its screws stand in the sides of the carcass, from the front edge; behind an inset front by its thickness more.':
    'Wo seine Schrauben in den Seiten des Korpus sitzen, von der Vorderkante; hinter einer einliegenden Front um deren Dicke mehr.',
  'Where its screws stand in the sides of the drawer, from their front end.':
    'Wo seine Schrauben in den Seiten des Schubkastens sitzen, von deren vorderem Ende.',
  'From the front.': 'Von vorn.',
  'Room that it takes at each side, from the upright to the side of the drawer.':
    'Platz, den er auf jeder Seite braucht, von Korpusseite oder Mittelwand zur Seite des Schubkastens.',
  'From the lower edge of the drawer’s box up to the line of the screws in the uprights.':
    'Von der Unterkante des Schubkastens hinauf zur Schraubenlinie in Korpusseite oder Mittelwand.',
  'From the lower edge of the drawer’s box up to the line of the screws in the sides of the drawer.':
    'Von der Unterkante des Schubkastens hinauf zur Schraubenlinie in seinen Seiten.',
  'Minimum room under the drawer’s box.': 'Kleinster Freiraum unter dem Schubkasten.',
  'Minimum room over the drawer’s box, so that it can be lifted in.':
    'Kleinster Freiraum über dem Schubkasten, damit er sich einheben lässt.',
  'Minimum room behind the drawer’s box.': 'Kleinster Freiraum hinter dem Schubkasten.',
  'Height that it needs, half of it above the line of the screws.':
    'Höhe, die er braucht, zur Hälfte über der Schraubenlinie.',
  'Diameter of the bores in the uprights.': 'Durchmesser der Bohrungen in Korpusseite und Mittelwand.',
  'Diameter of the bores in the sides of the drawer.': 'Durchmesser der Bohrungen in den Seiten des Schubkastens.',
  'What the pair of them carries, drawer and load, in kilograms.':
    'Was das Paar trägt, Schubkasten und Inhalt, in Kilogramm.',
  'The usual slide of drawers.': 'Der übliche Auszug der Schubkästen.',
  'From the lower edge of a drawer’s sides up to the groove of its bottom, where that is grooved.':
    'Von der Unterkante der Schubkastenseiten hinauf zur Nut des Bodens, wo er in Nuten liegt.',
  'The screws that hold the front of a drawer to its box.':
    'Die Schrauben, die die Front eines Schubkastens an seinem Vorderstück halten.',
  'Diameter of the holes through the front of the box.': 'Durchmesser der Löcher durch das Vorderstück.',
  'Diameter of the bores in the drawer front.': 'Durchmesser der Bohrungen in der Schubkastenfront.',
  'Depth of the bores in the drawer front.': 'Tiefe der Bohrungen in der Schubkastenfront.',
  'From the ends of the front of the box to the screws.': 'Von den Enden des Vorderstücks zu den Schrauben.',
  'From the upper edge of the box to the upper screws.': 'Von der Oberkante des Schubkastens zu den oberen Schrauben.',
};
