/** German: steps at the boards. */
import type { boardSentences } from '../../english/work/board.ts'
import { translation } from '../../form/translation.ts'

export const germanBoard = translation<typeof boardSentences>()({
  'board.a-circular-saw-along-a-clamped': 'Eine Handkreissäge an einer geklemmten Leiste erspart das halbe Hobeln.',
  'board.a-cutting-service-saws-from-the': 'Ein Zuschnittdienst sägt nach der Zuschnittliste: die Maße dort prüfen.',
  'board.a-damp-cloth-over-a-flat':
    'Ein feuchter Lappen über einer flachen Leiste verteilt den Leim; schwere Bücher pressen.',
  'board.a-plane-alone-takes-a-bevel':
    'Ein Hobel allein genügt: die Schräge auf beiden Seiten anreißen und bis zu den Rissen abnehmen.',
  'board.a-rebate-takes-a-router':
    'Ein Falz braucht eine Oberfräse: eine leihen, oder den Plan mit aufliegendem Korbrand neu anfordern.',
  'board.a-router-on-a-circle-jig':
    'Eine Oberfräse am Zirkel hinterlässt eine sauberere Kante; der Werkzeugverleih hat beides.',
  'board.another-service-or-a-joiner': 'Eine Tischlerei sägt auch, und auch schräge Kanten.',
  'board.ask-how-narrow-a-strip-they':
    'Fragen, wie schmale Streifen gesägt werden: schmalere kommen als ein breites Stück und werden zu Hause gesägt.',
  'board.at-this-angle-the-edges-of': '{angle}: {panels}.',
  'board.both-diagonals-of-each-panel-agree': 'Beide Diagonalen jeder Platte stimmen auf {off} überein.',
  'board.break-their-edges': 'Die Kanten brechen',
  'board.circular-saw-or-jigsaw-with-a':
    'Hand- oder Stichsäge mit feinem Blatt an einer festgeklemmten Leiste: 0,5 mm länger sägen und auf den Riss hobeln.',
  'board.circular-saw-with-a-tilting-shoe':
    'Handkreissäge mit neigbarer Grundplatte an einer geklemmten Schiene; ein Hobel nimmt den Rest.',
  'board.clamp-equal-panels-together': 'Gleiche Platten zusammenklemmen und gemeinsam hobeln.',
  'board.cut-and-glue-in-the-port': 'Die Kanalrohre ablängen und einleimen',
  'board.cut-each-tube-to-its-length': 'Jedes Rohr ablängen, entgraten und in seine Platte leimen.',
  'board.cut-holes-and-rebates-in-the': 'Löcher und Falze in die flachen Platten fräsen',
  'board.cut-the-panels': 'Die Platten zuschneiden',
  'board.cut-the-joints': 'Die Verbindungen fräsen und sägen',
  'board.rout-each-groove-and-rebate':
    'Jede Nut und jeden Falz {depth} tief an einer geklemmten Leiste fräsen, in zwei Durchgängen, mit einem Nutfräser nicht breiter als die Platte dick: alle mit einer Einstellung, auf den Innenseiten.',
  'board.square-what-a-tongue-does-not':
    'Eine Nut, die vor einer Kante endet, mit dem Stechbeitel eckig stechen, oder die Ecke der Feder wegnehmen.',
  'board.a-groove-takes-a-router':
    'Eine Nut braucht eine Oberfräse: eine leihen, oder den Plan mit stumpfen Verbindungen neu anfordern.',
  'board.mark-the-fingers-from-one-corner':
    'Die Zinken nach den Zeichnungen anreißen, von einer Ecke aus, beide Platten einer Ecke zusammen; schraffieren, was wegfällt.',
  'board.cut-the-gaps-at-the-table':
    'Die Lücken mit der Oberfräse in einer Zinkenlehre ausfräsen, oder neben den Rissen sägen und mit dem Stechbeitel ausstechen.',
  'board.saw-the-gaps-beside-the-line':
    'Die Lücken neben dem Riss sägen, zwei gleiche Platten aufeinander geklemmt, und mit dem Stechbeitel bis zum Riss stechen.',
  'board.try-each-joint-on-an-offcut':
    'Jede Verbindung zuerst an Resten eben dieser Platte probieren: sie geht von Hand zusammen und wackelt nicht.',
  'board.a-service-with-a-router-cuts-joints':
    'Ein Dienst mit CNC-Fräse schneidet alle Verbindungen nach der DXF-Datei: die gemessene Plattendicke nennen und 0,1 bis 0,2 mm Spiel verlangen.',
  'board.each-groove-has-its-depth': 'Jede Nut ist auf ihrer ganzen Länge auf 0,3 mm genau {depth} tief.',
  'board.the-fingers-go-together-by-hand': 'Die Zinken gehen von Hand zusammen und stehen auf 0,5 mm bündig.',
  'board.cut-their-windows-round-the-edges': 'Die Fenster ausschneiden, Kanten abrunden',
  'board.draw-the-panels-from-a-straight':
    'Die Platten wie auf den Zuschnittplänen anreißen, von einer geraden Werkskante aus, zwischen den Rissen der Spalt für Säge und Hobel.',
  'board.drill-clearance-and-pilot-holes': 'Durchgangs- und Vorbohrungen',
  'board.drill-for-the-driver': 'Schraubenlöcher des Lautsprechers bohren',
  'board.drill-the-circle-of-the-driver': 'Die angezeichneten Schraubenlöcher des Lautsprechers bohren, {pilot}.',
  'board.drill-the-corners-of-a-window': 'Die Ecken eines Fensters bohren, dazwischen mit der Stichsäge.',
  'board.equal-panels-are-equal-to': 'Gleiche Platten sind auf {off} gleich.',
  'board.fit-t-nuts': 'Einschlagmuttern für den Lautsprecher setzen',
  'board.follow-the-cut-sheets-trim-first':
    'Nach den Zuschnittplänen: erst besäumen, dann die Schnitte in der Reihenfolge ihrer Nummern.',
  'board.glue-the-layers-of-the-front': 'Die Lagen der Front verleimen',
  'board.glue-the-port-together': 'Den Kanal verleimen',
  'board.have-the-panels-cut': 'Die Platten zuschneiden lassen',
  'board.if-it-differs-by-more-than':
    'Weicht sie um mehr als 0,3 mm vom Plan ab, den Plan mit der gemessenen Dicke neu anfordern.',
  'board.into-the-edge-behind-pilot-holes':
    'In die Kante dahinter: Vorbohrungen von {pilot}, 1 mm tiefer als die Schraube.',
  'board.join-the-port-walls-to-one':
    'Die Kanalwände mit Leim und Schrauben zu einem Teil verbinden, rechtwinklig zur Fläche.',
  'board.lay-driver-port-and-terminal-on':
    'Den Lautsprecher und alles andere, was durch eine Platte geht, an seinen Platz legen.',
  'board.lay-the-board-on-a-table':
    'Die Platte auf einen Tisch mit Leisten beiderseits des Risses legen, eine gerade Leiste festklemmen, 1 mm neben dem Riss sägen und auf ihn hobeln.',
  'board.length-from-the-outer-face-agrees': 'Die Länge ab der Außenfläche stimmt auf 1 mm mit dem Plan überein.',
  'board.open-them-to-the-barrel-of':
    'Sie auf den Schaft der Einschlagmutter aufbohren, diese mit Leim von hinten ansetzen und mit Schraube und Scheibe einziehen.',
  'board.mark-centres-from-the-drawings-and':
    'Die Mitten nach den Zeichnungen anreißen und jedes Loch vor dem Leimen schneiden.',
  'board.mark-their-places-on-the-panels': '{more}, ihre Plätze auf den Platten anreißen.',
  'board.measure-the-board': 'Die Platte messen',
  'board.measure-the-real-thickness-of-every': 'Die wirkliche Dicke jeder Tafel an mehreren Stellen messen.',
  'board.measure-what-you-get-before-you': 'Vor dem Bezahlen nachmessen, jede Platte beschriften.',
  'board.no-gap-is-wider-than': 'Kein Spalt ist breiter als {gap}.',
  'board.outer-size-both-diagonals-of-the':
    'Außenmaß, beide Diagonalen der Öffnung und die Kofferraumöffnung stimmen mit dem Plan überein.',
  'board.pilot-hole-jigsaw-on-the-waste':
    'Loch vorbohren, mit der Stichsäge auf der Abfallseite des Risses, dann bis zum Riss raspeln; der Korbrand verdeckt 2 mm.',
  'board.plane-what-stands-proud-a-gap':
    'Was übersteht, abhobeln; ein Spalt nimmt Leim mit Holzstaub, der Dichtstoff innen macht ihn dicht.',
  'board.prepare-the-braces': 'Die Streben vorbereiten',
  'board.put-the-box-together-dry': 'Das Gehäuse trocken zusammenstellen',
  'board.round-both-mouths-by-hand':
    'Beide Mündungen des Kanals mit Raspel und Schleifpapier abrunden, auf etwa 10 mm.',
  'board.round-over-both-mouths-of-the': 'Beide Mündungen des Kanals abrunden.',
  'board.run-a-fillet-of-sealant-round': 'Innen rundum eine Kehle aus Dichtstoff legen.',
  'board.saw-beside-the-line-and-plane': '1 mm neben dem Riss an einer geklemmten Leiste sägen und auf ihn hobeln.',
  'board.saw-the-sloped-edges': 'Die schrägen Kanten sägen',
  'board.round-the-mouths-of-the-slot':
    'Die Mündungen runden, bevor sie eingeleimt sind: die Kante der Front über dem Kanal und das freie Ende der letzten Platte auf der Seite des Kanals, auf {radius}.',
  'board.seal-its-corners-from-the-side': 'Die Ecken von der Seite her dichten, auf der die Luft strömt.',
  'board.some-services-tilt-their-blade':
    'Manche Dienste und jede Tischlerei neigen das Blatt: die schrägen Kanten gleich dort sägen lassen.',
  'board.spread-glue-over-the-whole-face':
    'Leim auf die ganze Fläche geben, die Löcher ausrichten, von hinten verschrauben.',
  'board.stand-the-panels-up-without-glue': 'Die Platten ohne Leim aufstellen und die Ecken mit Klebeband halten.',
  'board.take-the-cut-list-along':
    'Die Zuschnittliste mitnehmen: die dort gemessene Dicke, jedes Maß auf einen halben Millimeter, gleiche Platten mit einer Einstellung des Anschlags.',
  'board.take-the-screws-that-the-bill':
    'Die Schrauben nehmen, die die Stückliste für die Lagen nennt: jene der Verbindungen kämen vorn heraus.',
  'board.the-channel-has-the-height-of': 'Der Kanal hat an beiden Enden die Höhe des Plans, auf 0,5 mm.',
  'board.the-drawing-says-which-face-stays':
    'Die Zeichnung sagt, welche Seite die längere bleibt: diese Seite so legen, dass sich das Blatt über den Abfall neigt, und einen Anschlag klemmen.',
  'board.the-driver-still-drops-into-its': 'Der Lautsprecher fällt noch in sein Loch.',
  'board.the-edge-of-each-hole-keeps': 'Der Rand jedes Lochs liegt auf {off} genau am Anriss.',
  'board.the-screws-draw-each-joint-together':
    'Die Schrauben ziehen jede Verbindung zusammen und ersetzen die Zwingen, bis der Leim abgebunden hat.',
  'board.through-the-outer-panel-clearance-holes':
    'Durch die äußere Platte: Durchgangslöcher mit kleiner Senkung entlang jeder Verbindung.',
  'board.tilt-the-blade-to-the-angle':
    'Das Blatt auf den Winkel neigen, alle Kanten eines Winkels in einem Zug, vorher an einem Reststück probieren.',
  'board.try-the-driver-in-its-hole':
    'Den Lautsprecher in seinem Loch probieren: einsetzen, Schraubenlöcher anzeichnen, herausnehmen.',
  'board.two-offcuts-of-one-angle-laid': 'Zwei Reststücke eines Winkels ergeben aneinandergelegt den doppelten Winkel.',
  'board.write-the-name-on-each-panel': 'Jede Platte gleich nach dem Schnitt beschriften.'
})
