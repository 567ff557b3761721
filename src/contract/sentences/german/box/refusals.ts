/** German for what the room `refusals-box` says. */
import type { refusalsBoxSentences } from '../../english/box/refusals.ts'
import { translation } from '../../form/translation.ts'

export const germanRefusalsBox = translation<typeof refusalsBoxSentences>()({
  'refused.a-board-is-rounded-no-further': 'Ein Brett von {maximumMm} mm wird nicht weiter gerundet, als es dick ist.',
  'refused.a-flange-of-a-tube-needs': 'Der Flansch eines Rohrs braucht Durchmesser und Dicke.',
  'refused.a-flange-of-falls-through-a':
    'Ein Flansch von {flangeDiameterMm} mm fällt durch ein Loch von {cutOutDiameterMm} mm.',
  'refused.a-footprint-belongs-to-a-prism':
    'Ein Grundriss gehört zu einem Prisma, nicht zu einem Gehäuse der Form {shape}.',
  'refused.a-mitre-needs-walls-of-one':
    'Eine Gehrung braucht Wände einer Dicke, die sich an der Außenkante treffen; bei doppelter oder versenkter Front stumpf fügen.',
  'refused.a-mitred-front-leaves-a-loose':
    'Eine Front auf Gehrung lässt vor der Mündung eines Schlitzes einen losen Streifen; stumpf fügen.',
  'refused.a-prism-needs-its-footprint': 'Ein Prisma braucht seinen Grundriss.',
  'refused.a-passive-radiator-has-no-motor': 'Eine Passivmembran hat keinen Antrieb.',
  'refused.a-rebate-is-as-wide-as': 'Ein Falz ist so breit wie der Flansch: dessen Durchmesser angeben.',
  'refused.a-rebate-of-leaves-too-little':
    'Ein Falz von {rebateDepthMm} mm lässt zu wenig von der Platte: höchstens {maximumMm} mm, damit {underRebateMm} mm unter dem Flansch bleiben.',
  'refused.a-groove-would-run-into-the':
    'Eine Nut liefe in die Fingerzinken einer Ecke: Innenteile stumpf stoßen oder Falze nehmen.',
  'refused.round-corners-take-a-rectangular-box':
    'Viertelrunde Ecken eines Schlitzes brauchen ein rechteckiges Gehäuse: dann sind seine Umlenkungen rechtwinklig.',
  'refused.rebates-and-fingers-take-a-rectangular':
    'Falze und Fingerzinken brauchen ein rechteckiges Gehäuse, dessen Front nicht zurückgesetzt ist.',
  'refused.a-slope-belongs-to-a-wedge': 'Eine Neigung gehört zu einem Keil, nicht zu einem Gehäuse der Form {shape}.',
  'refused.a-slot-along-a-side-splits':
    'Ein Schlitz an einer Seite teilt eine Front, die die Seiten deckt; joints.sides auf over setzen.',
  'refused.a-slot-along-the-walls-would': 'Ein Schlitz an den Wänden würde die Trennwand kreuzen; Rohre nehmen.',
  'refused.a-slot-of-does-not-fit':
    'Ein Schlitz von {lengthMm} mm passt nicht in dieses Gehäuse. Längen, die passen: {some}. Die Fläche des Kanals, seine Abstimmung oder die Tiefe des Gehäuses ändern.',
  'refused.a-slot-passes-the-whole-front':
    'Ein Schlitz geht durch die ganze Front: mindestens {leastMm} mm von ihrer Außenseite bis zur inneren Mündung.',
  'refused.a-tube-ends-in-a-flange':
    'Ein Rohr endet in einem Flansch oder in einem Trichter: Geben Sie eines davon an.',
  'refused.a-tube-there-opens-from-the':
    'Ein Rohr dort geht von der Kammer „{stands}“ ab, nicht von „{asked}“: so angeben, oder ihm eine andere Seite oder Mitte geben.',
  'refused.a-wedge-with-two-slopes-is':
    'Ein Keil mit zwei Schrägen wird durch seine Winkel beschrieben: Geben Sie slopeDeg statt der Tiefe am Deckel an.',
  'refused.a-wedge-needs-the-depth-at': 'Ein Keil braucht die Tiefe am Deckel oder die Neigung seiner Front.',
  'refused.along-the-side-of-a-wedge':
    'An der Seite eines Keils behielte ein Schlitz seine Höhe nicht; am Boden oder Deckel führen.',
  'refused.blocks-in-the-boot-need-its': 'Blöcke im Kofferraum brauchen dessen freie Breite und Tiefe.',
  'refused.caps-meet': 'Boden und Deckel treffen sich',
  'refused.do-not-fit-the-largest-box':
    '{targetL} L passen nicht: das größte erlaubte Gehäuse, {sizes} mm, fasst netto {netL} L, {lessL} L zu wenig. Im Weg: {inTheWay}. Dieses Volumen, eine andere Abstimmung oder eine dünnere Platte verlangen.',
  'refused.from-to': '{fromMm} bis {toMm} mm',
  'refused.give-either-the-clear-depth-or':
    'Entweder die lichte Tiefe oder das Nettovolumen der vorderen Kammer angeben.',
  'refused.give-either-the-slope-or-the': 'Entweder die Neigung oder die Tiefe am Deckel angeben.',
  'refused.give-every-outer-size-or-a': 'Jedes Außenmaß angeben, oder ein Nettovolumen, aus dem die fehlenden folgen.',
  'refused.give-exactly-one-of-the-length':
    'Genau eines angeben: die Länge des Kanals, ihren Teil innen oder seine Abstimmung.',
  'refused.give-the-diameter-of-a-round':
    'Den Durchmesser eines runden Ausschnitts angeben, oder Breite und Höhe eines rechteckigen.',
  'refused.give-the-length-of-the-tube': 'Die Länge des Rohrs entweder ganz oder als Teil im Gehäuse angeben.',
  'refused.in-a-prism-a-slot-runs': 'In einem Prisma läuft ein Schlitz an der Wand links oder rechts der Front.',
  'refused.inset.crosses-itself': 'die Platten sind so dick, dass sich der Innenraum selbst kreuzt',
  'refused.inset.edge-vanished': 'die Platten sind so dick, dass einer Wand keine Innenseite bleibt',
  'refused.inset.no-corner':
    'zwei Nachbarwände liegen in einer Linie, sind aber verschieden dick; sie verbinden oder gleich dick machen',
  'refused.is-too-little-for-this-box':
    '{targetL} L sind zu wenig für dieses Gehäuse: das kleinste, das Platten, Lautsprecher und Kanal fasst, {sizes} mm, hat netto {netL} L, {moreL} L zu viel. Im Weg: {inTheWay}. Dieses Volumen verlangen, kleinere Maße angeben oder einen kleineren Lautsprecher nehmen.',
  'refused.least-axis': '{axis} mindestens {leastMm} mm',
  'refused.less-around': ', wovon {aroundMm} mm je Seite für Spiel und Bezug schon abgehen',
  'refused.longest-board': 'die längste Platte',
  'refused.no-air-is-left-what-stands':
    'Es bleibt keine Luft: was in den {grossL} L innen steht, nimmt alles ein und {overL} L mehr.',
  'refused.no-box-of-this-volume-stands':
    'Kein Gehäuse dieses Volumens steht frei von den {keepOuts} Blöcken im Kofferraum; weniger Volumen verlangen, oder die Maße eines Gehäuses angeben, das vor oder zwischen ihnen steht.',
  'refused.no-inside': '{wall}: {why}',
  'refused.none-at-this-height': 'keine bei dieser Höhe, ein niedrigerer Schlitz findet welche',
  'refused.panel-against-its-grain': 'passt auf keine Tafel in der Richtung ihrer Maserung',
  'refused.panel-larger-than-any-sheet': 'ist größer als jede Tafel',
  'refused.panel-mm-the-largest-offers-mm':
    'Die Platte „{name}“, {lengthMm} × {widthMm} mm, {why}; die größte bietet nach dem Besäumen {sheetLengthMm} × {sheetWidthMm} mm.',
  'refused.panel-names-no-material':
    'Die Platte „{name}“ nennt kein Material, und die Tafeln von {board} sind aus mehreren: {materials}.',
  'refused.panel-needs-board-and-no-sheet': 'Die Platte „{name}“ braucht {board}, und keine Tafel davon ist angegeben.',
  'refused.sheets.least': 'mindestens {leastCount} Tafeln sind nötig',
  'refused.sheets.none-found': 'kein Zuschnitt wurde gefunden, der sie fasst',
  'refused.sizes-given': 'die angegebenen Maße',
  'refused.the-boards-leave-no-room-for': 'Die Platten lassen keinen Platz für die Seiten.',
  'refused.the-box-has-no-inside': 'Das Gehäuse hat kein Inneres: {wall}.',
  'refused.the-box-is-mm-wide-inside':
    'Das Gehäuse ist innen {insideMm} mm breit; ein Schlitz nimmt alles davon oder lässt Platz für eine Wange von {wallMm} mm.',
  'refused.the-box-would-have-to-be':
    'Das Gehäuse müsste für Lautsprecher und Platten in der {axis} mindestens {leastMm} mm haben; die Grenze ist {limitMm} mm{around}.',
  'refused.the-divider-finds-no-place-the':
    'Die Trennwand findet keinen Platz: das Gehäuse ist innen {depthMm} mm tief.',
  'refused.the-footprint-must-be-a-polygon':
    'Der Grundriss muss ein Vieleck mit mindestens drei Ecken sein, dessen Kanten sich weder kreuzen noch berühren.',
  'refused.the-front-is-high-inside-where':
    'Die Front ist innen {roomMm} mm hoch, wo der Schlitz läuft; mit seinem Brett von {wallMm} mm kann er höchstens {maximumMm} mm hoch sein.',
  'refused.the-last-plate-of-the-slot':
    'Die letzte Platte des Schlitzes ist {plateMm} mm lang, zu kurz für eine Rundung von {flareMm} mm.',
  'refused.the-panels-need-kinds-of-board':
    'Die Platten brauchen {kinds} Arten von Tafeln; höchstens {maximum} werden zugleich geplant.',
  'refused.the-port-would-fill-the-box': 'Der Kanal würde das Gehäuse füllen.',
  'refused.the-screws-on-find-no-wood':
    'Die Schrauben auf {circleMm} mm finden kein Holz: ihre Vorbohrungen von {pilotMm} mm brechen in das Loch von {cutOutDiameterMm} mm.',
  'refused.the-screws-on-miss-the-flange':
    'Die Schrauben auf {circleMm} mm verfehlen den Flansch von {flangeDiameterMm} mm.',
  'refused.the-sheets-given-leave-out': 'Die {stockCount} angegebenen Tafeln lassen {panels} {more} aus: {proof}.',
  'refused.the-sheets-given-leave-out.more': 'und weitere',
  'refused.there-are-drivers-of-this-kind': 'Es gibt {count} Lautsprecher dieser Art, aber {centres} Mitten.',
  'refused.there-are-tubes-but-centres': 'Es gibt {count} Rohre, aber {centres} Mitten.',
  'refused.this-box-has-no-its-faces': 'Dieses Gehäuse hat keine Seite „{name}“; seine Seiten sind {names}.',
  'refused.two-flares-are-longer-than-their': 'Zwei Trichter sind länger als ihr Rohr von {lengthMm} mm.',
  'refused.this-opening-tunes-the-box-below':
    'Diese Öffnung stimmt das Gehäuse auch ohne Rohr unter {wantedHz} Hz ab: die Platte allein ist lang genug. Mehr Fläche oder eine tiefere Abstimmung nehmen.',
  'refused.unnamed': 'ohne Namen',
  'refused.width-and-depth-of-a-prism':
    'Breite und Tiefe eines Prismas folgen aus seinem Grundriss; nur die Höhe angeben.',
  'refused.a-front-that-comes-off-is-upright':
    'Eine abnehmbare Front gibt es für Gehäuse aus vier Wänden, aufrecht: ihre Neigungen oder `screwedFront` weglassen.'
})
