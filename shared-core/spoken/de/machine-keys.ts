/** Was die Schlüssel von Maschinen bedeuten, nach dem englischen Satz. */
export const machineKeys: Readonly<Record<string, string>> = {
  'Heads for bores in faces.': 'Bohrköpfe für Bohrungen in Flächen.',
  'A spindle line across the table, square to the fence, for bores in faces.':
    'Eine Spindelreihe quer über den Tisch, rechtwinklig zum Lineal, für Bohrungen in Flächen.',
  'Heads with the same body are one machine whose head is turned; turning it costs time.':
    'Köpfe mit demselben Gestell sind eine Maschine, deren Kopf geschwenkt wird; das kostet Zeit.',
  'Number of spindles in the line.': 'Zahl der Spindeln in der Reihe.',
  'From spindle to spindle.': 'Von Spindel zu Spindel.',
  'Minimum to maximum boring depth; one length alone is the maximum, and the minimum is 0.':
    'Kleinste bis größte Bohrtiefe; ein Maß allein ist die größte, und die kleinste ist 0.',
  'Number of places on the depth turret.': 'Zahl der Stellen am Tiefenrevolver.',
  'The panels that the machine takes.': 'Die Platten, die die Maschine nimmt.',
  'Minimum to maximum length, along the fence.': 'Kleinste bis größte Länge, längs des Lineals.',
  'Minimum to maximum width, away from the fence.': 'Kleinste bis größte Breite, vom Lineal weg.',
  'Minimum to maximum thickness.': 'Kleinste bis größte Dicke.',
  'Where the machine holds the panel down.': 'Wo die Maschine die Platte niederhält.',
  'A holding-down clamp.': 'Ein Niederhalter.',
  'Along the fence from the first spindle; to the left is negative.':
    'Längs des Lineals von der ersten Spindel; nach links negativ.',
  'From the fence, or from the plate of a horizontal head.':
    'Vom Lineal, oder von der Platte eines Horizontalbohrkopfs.',
  'Diameter of its pad. A panel that lies under only a part of it is not held.':
    'Durchmesser seines Tellers. Eine Platte, die nur unter einem Teil davon liegt, ist nicht gehalten.',
  'What stays in the machine between jobs, so that only what differs is changed.':
    'Was zwischen Aufträgen in der Maschine bleibt, sodass nur umgestellt wird, was anders ist.',
  'Diameter of the bits that stay in its spindles.': 'Durchmesser der Bohrer, die in ihren Spindeln bleiben.',
  'Which spindles carry them, counted from 1, on every head; all when left out.':
    'Welche Spindeln sie tragen, ab 1 gezählt, an jedem Kopf; ohne Angabe alle.',
  'A spindle.': 'Eine Spindel.',
  'What the depth stop is set to.': 'Worauf der Tiefenanschlag steht.',
  'From the fence to the first spindle, or to each head.': 'Vom Lineal zur ersten Spindel, oder zu jedem Kopf.',
  'From the fence.': 'Vom Lineal.',
  'Thickness of the boards that it is set for, where the bits come from above.':
    'Dicke der Platten, für die sie steht, wo die Bohrer von oben kommen.',
  'Where the fence lies, as seen by the operator.': 'Wo das Lineal liegt, vom Bediener gesehen.',
  'At the far side of the table.': 'An der fernen Seite des Tischs.',
  'At the near side.': 'An der nahen Seite.',
  'Where the bits come from.': 'Woher die Bohrer kommen.',
  'From above: the face that is bored lies up.': 'Von oben: Die gebohrte Fläche liegt oben.',
  'From below: the face that is bored lies down.': 'Von unten: Die gebohrte Fläche liegt unten.',
  'From the fence, where the front edge lies, to the first spindle.':
    'Vom Lineal, an dem die Vorderkante liegt, zur ersten Spindel.',
  'The end stops along the fence.': 'Die Anschläge längs des Lineals.',
  'A stop, under the name that the shop uses for it.': 'Ein Anschlag, unter dem Namen, den die Werkstatt ihm gibt.',
  'On which side of the spindles, as seen by the operator.': 'Auf welcher Seite der Spindeln, vom Bediener gesehen.',
  'To the left.': 'Links.',
  'To the right.': 'Rechts.',
  'Where it can be set: from the face of the stop to the nearest spindle on its side. Stops on the same side cannot pass each other.':
    'Wo er sich stellen lässt: von seiner Fläche zur nächsten Spindel auf seiner Seite. Anschläge derselben Seite kommen nicht aneinander vorbei.',
  'Whether it can be lowered out of the way.': 'Ob er sich aus dem Weg absenken lässt.',
  'Where it stands when a job begins, if it is left set between jobs.':
    'Wo er steht, wenn ein Auftrag beginnt, falls er zwischen Aufträgen stehen bleibt.',
  'How far the fence extension widens the range of the outermost stop on each side, outward; the other stops keep their ranges.':
    'Wie weit die Verlängerung des Lineals den Bereich des äußersten Anschlags jeder Seite nach außen erweitert; die anderen behalten ihre Bereiche.',
  'Heads for bores in ends.': 'Bohrköpfe für Bohrungen in Stirnen.',
  'A spindle line turned level, for bores in ends.':
    'Eine waagrecht geschwenkte Spindelreihe, für Bohrungen in Stirnen.',
  'Spindle centres above the table.': 'Spindelmitten über dem Tisch.',
  'The squaring stops that the front edge lies against.': 'Die Winkelanschläge, an denen die Vorderkante liegt.',
  'Heads for rows.': 'Köpfe für Lochreihen.',
  'Heads of spindles along the fence, for rows.': 'Spindelköpfe längs des Lineals, für Lochreihen.',
  'Number of heads.': 'Zahl der Köpfe.',
  'Head setback: from the fence to the first head.': 'Kopfabstand: vom Lineal zum ersten Kopf.',
  'From one head to the next.': 'Von einem Kopf zum nächsten.',
  'Maximum distance from the fence to a row.': 'Größter Abstand einer Reihe vom Lineal.',
  'What a panel registers on when it is moved along for the next stroke.':
    'Woran sich eine Platte ausrichtet, wenn sie zum nächsten Hub weitergerückt wird.',
  'A pin in a hole of the row.': 'Ein Stift in einem Loch der Reihe.',
  'Pins in the fence.': 'Stifte im Lineal.',
  'No index move.': 'Kein Weiterrücken.',
  'Maximum distance that a panel can be moved along in all.':
    'Größte Strecke, um die eine Platte im Ganzen weitergerückt werden kann.',
  'Whether a spindle may enter a hole that is already bored.':
    'Ob eine Spindel in ein schon gebohrtes Loch fahren darf.',
  'Borers for hinge cups.': 'Bohrmaschinen für Topfbänder.',
  'A borer for hinge cups.': 'Eine Bohrmaschine für Topfbänder.',
  'Heads with the same body are one machine.': 'Köpfe mit demselben Gestell sind eine Maschine.',
  'From the fence to the centre of the cup.': 'Vom Lineal zur Topfmitte.',
  'The end stops along the fence: without one no cup can be set out.':
    'Die Anschläge längs des Lineals: Ohne einen lässt sich kein Topf anreißen.',
  'Panel saws.': 'Plattensägen.',
  'A panel saw.': 'Eine Plattensäge.',
  'Width of the cut.': 'Breite des Schnitts.',
  'Maximum width of a strip, between fence and blade.': 'Größte Breite eines Streifens, zwischen Lineal und Blatt.',
  'Maximum length that is cut off a strip, between stop and blade.':
    'Größte Länge, die von einem Streifen geschnitten wird, zwischen Anschlag und Blatt.',
  'What is cut off each edge of a sheet first.': 'Was zuerst von jeder Kante einer Rohplatte abgeschnitten wird.',
  '2: strips, and pieces as wide as the strip. 3: what is cut off a strip may be cut once more.':
    '2: Streifen, und Stücke so breit wie der Streifen. 3: Was von einem Streifen geschnitten wird, darf noch einmal geschnitten werden.',
  'Which way the first cuts run.': 'Wie die ersten Schnitte laufen.',
  'Across the sheet.': 'Quer zur Rohplatte.',
  'Whichever is cheaper.': 'Wie es günstiger ist.',
  'Edge banders.': 'Kantenanleimmaschinen.',
  'An edge bander.': 'Eine Kantenanleimmaschine.',
  'Minimum to maximum band thickness.': 'Kleinste bis größte Dicke des Kantenbands.',
  'Minimum to maximum panel thickness.': 'Kleinste bis größte Plattendicke.',
  'What it mills off an edge before the band is glued on. Panels are cut so much larger.':
    'Was sie von einer Kante fräst, ehe das Kantenband aufgeleimt wird. Platten werden um so viel größer zugeschnitten.',
  'Shortest edge that it takes.': 'Kürzeste Kante, die sie nimmt.',
  'Narrowest panel that it takes.': 'Schmalste Platte, die sie nimmt.',
  'Case clamps.': 'Korpuspressen.',
  'A clamp that the box is pressed in.': 'Eine Presse, in der der Korpus verpresst wird.',
  'Minimum to maximum width of the box.': 'Kleinste bis größte Breite des Korpus.',
  'Minimum to maximum height of the box.': 'Kleinste bis größte Höhe des Korpus.',
  'Minimum to maximum depth of the box.': 'Kleinste bis größte Tiefe des Korpus.',
};
