/** Ce que veulent dire les clés des façades, des tiroirs et des coulisses, d’après la phrase anglaise. */
export const drawerKeys: Readonly<Record<string, string>> = {
  'What closes each bay, from the top down: each a word, or a map with more about it. How fronts stand to the carcass is said under `doors`.':
    'Ce qui ferme chaque travée, de haut en bas : chaque fois un mot, ou des clés qui en disent plus. La position des façades sur le caisson se dit sous `doors`.',
  'A front.': 'Une façade.',
  'One front, in its place among those before a bay.': 'Une façade, à sa place parmi celles d’une travée.',
  'What stands there.': 'Ce qui s’y trouve.',
  'A drawer with its front.': 'Un tiroir avec sa façade.',
  'A door hung on the left.': 'Une porte, montée à gauche.',
  'A door hung on the right.': 'Une porte, montée à droite.',
  'Two doors that meet in the middle.': 'Deux portes qui se joignent au milieu.',
  'A fixed front.': 'Une façade fixe.',
  'Nothing: the place stays open.': 'Rien : la place reste ouverte.',
  'Height of the front itself; those without one share what is left equally.':
    'Hauteur de la façade elle-même ; celles qui n’en ont pas se partagent également ce qui reste.',
  'The bay it stands before, counted from the left; all bays when left out.':
    'La travée devant laquelle elle est, comptée depuis la gauche ; toutes à défaut.',
  'How the drawers are made.': 'Comment les tiroirs sont faits.',
  'The slide that the drawers run on.': 'La coulisse des tiroirs.',
  'Board of the sides, the front and the back of the box.':
    'Panneau brut des côtés, du devant et de l’arrière de la caisse du tiroir.',
  'Band of the upper edges of the box; `none` leaves them bare.':
    'Bande des chants supérieurs de la caisse ; `none` les laisse nus.',
  'How the bottom of the box is held.': 'Comment le fond de la caisse est tenu.',
  'In grooves all round.': 'Dans des rainures, tout autour.',
  'Under the sides.': 'Sous les côtés.',
  'Board of the bottom.': 'Panneau brut du fond.',
  'The fitting that holds the corners of the box.': 'La ferrure qui tient les angles de la caisse.',
  'Height of the box; as high as its place allows when left out.':
    'Hauteur de la caisse ; à défaut aussi haute que sa place le permet.',
  'Slides for drawers.': 'Coulisses de tiroirs.',
  'A pair of slides for a drawer.': 'Une paire de coulisses de tiroir.',
  'The lengths that it comes in.': 'Les longueurs où elle existe.',
  'One length that a slide comes in, with its holes.': 'Une longueur de coulisse, avec ses trous.',
  'Length of the slide; the drawer’s box is as long.':
    'Longueur de la coulisse ; la caisse du tiroir est aussi longue.',
  'Where its screws stand in the sides of the carcass, from the front edge; behind an inset front by its thickness more.':
    'Où sont ses vis dans les côtés du caisson, depuis le chant avant ; derrière une façade encastrée, de son épaisseur en plus.',
  'Where its screws stand in the sides of the drawer, from their front end.':
    'Où sont ses vis dans les côtés du tiroir, depuis leur bout avant.',
  'From the front.': 'Depuis l’avant.',
  'Room that it takes at each side, from the upright to the side of the drawer.':
    'Place qu’elle prend de chaque côté, du montant au côté du tiroir.',
  'From the lower edge of the drawer’s box up to the line of the screws in the uprights.':
    'Du chant inférieur de la caisse à la ligne des vis dans les montants.',
  'From the lower edge of the drawer’s box up to the line of the screws in the sides of the drawer.':
    'Du chant inférieur de la caisse à la ligne des vis dans ses côtés.',
  'Minimum room under the drawer’s box.': 'Place minimale sous la caisse du tiroir.',
  'Minimum room over the drawer’s box, so that it can be lifted in.':
    'Place minimale au-dessus de la caisse du tiroir, pour la mettre en place.',
  'Minimum room behind the drawer’s box.': 'Place minimale derrière la caisse du tiroir.',
  'Height that it needs, half of it above the line of the screws.':
    'Hauteur qu’elle demande, dont la moitié au-dessus de la ligne des vis.',
  'Diameter of the bores in the uprights.': 'Diamètre des perçages dans les montants.',
  'Diameter of the bores in the sides of the drawer.': 'Diamètre des perçages dans les côtés du tiroir.',
  'What the pair of them carries, drawer and load, in kilograms.':
    'Ce que porte la paire, tiroir et contenu, en kilogrammes.',
  'The usual slide of drawers.': 'La coulisse habituelle des tiroirs.',
  'From the lower edge of a drawer’s sides up to the groove of its bottom, where that is grooved.':
    'Du chant inférieur des côtés d’un tiroir à la rainure de son fond, s’il est en rainure.',
  'The screws that hold the front of a drawer to its box.': 'Les vis qui tiennent la façade d’un tiroir à sa caisse.',
  'Diameter of the holes through the front of the box.': 'Diamètre des trous à travers le devant de la caisse.',
  'Diameter of the bores in the drawer front.': 'Diamètre des perçages dans la façade du tiroir.',
  'Depth of the bores in the drawer front.': 'Profondeur des perçages dans la façade du tiroir.',
  'From the ends of the front of the box to the screws.': 'Des bouts du devant de la caisse aux vis.',
  'From the upper edge of the box to the upper screws.': 'Du chant supérieur de la caisse aux vis du haut.',
};
