/** What the catalogue says of these cautions, in German. */
import type { boxCautions } from '../../cautions/box.ts'

export const boxMeanings = {
  'box-clearance':
    'Zwei Dinge in oder am Gehäuse kommen sich näher, als sie sollten; die Zahl sagt, um wie viel. Eines davon versetzen.',
  'driver-hits-box':
    'Ein Lautsprecher, ein Kanal oder ein Einbauteil passt nicht ins Gehäuse: es nähme den Platz einer Wand oder eines anderen Teils ein, oder sein Loch passt nicht in seine Platte.',
  'no-way-in':
    'Keine gerade Bewegung bringt die genannten Teile an ihren Platz, was auch immer vorher sitzt: ein gebogenes Rohr durch das Fenster einer Strebe, ein Brett hinter etwas, das breiter ist als die Öffnung. Hineindrehen, wenn es geht, oder eines versetzen.',
  'out-of-reach':
    'Durch kein Loch eines Lautsprechers kommt ein gerader Arm an die genannten Teile, wenn das Gehäuse geschlossen ist: ein Schlitz, eine Strebe oder eine Trennwand steht im Weg, oder das Loch ist zu klein. Vorher befestigen, anschließen, abdichten und prüfen; ein Lautsprecher darunter kommt nur wieder heraus, wo eine Platte über einer Dichtung angeschraubt ist.',
  'cone-needs-room':
    'Ein Lautsprecher strahlt nicht aus der Front, und worauf er zielt, kann nahe stehen: Boden, Verkleidung, Ladung. Der freie Ring um die Membran soll nicht kleiner sein als die Membran; näher wird er gedrosselt, und seine Last ändert sich. Keine Grenze des Platzes lässt diesen Raum von selbst. Unter dem Boden des Gehäuses ist es `care`: es braucht Füße.',
  'driver-volume-missing':
    'Das Volumen eines Lautsprechers ist weder angegeben noch lässt es sich schätzen, also zählt es als nichts. Angeben, oder Membranfläche, Einbautiefe, Magnet und Ausschnitt angeben.',
  'driver-volume-estimated':
    'Das Volumen eines Lautsprechers wurde aus seinem Umriss geschätzt; das stimmt auf etwa 30 %.',
  'port-place-shift':
    'Die Wände um die innere Mündung eines Schlitzes verlängern sein Ende gegenüber einer freien Mündung, sodass das Gehäuse tiefer abstimmt, als die einfache Regel sagt. Die Zahl gilt für zwei Dimensionen; messen und kürzen.',
  'port-mouth-near-wall':
    'Eine Mündung, die einer Wand näher ist als ihr kleinstes Maß, wird gedrosselt; die Wand versetzen oder den Kanal kürzen.',
  'port-short-leg':
    'Die Länge eines Gehrungsknicks gilt für gerade Schenkel von mindestens einer Schlitzhöhe auf beiden Seiten.',
  'panel-in-band':
    'Eine Platte schwingt so tief, dass das Gehäuse mittönen würde. Verstreben, oder eine dickere oder zweite Platte nehmen; die Zahl gilt für drehbare Ränder, die untere Schranke.',
  'panels-move-air':
    'Die Platten biegen sich unter dem Druck im Gehäuse so stark, dass sie dem Bass etwas nehmen; verstreben oder die Platte doppeln.',
  'thick-plate':
    'Die Theorie der dünnen Platte überschätzt die Frequenz einer Platte, die dicker ist als etwa ein Achtel ihrer kürzeren Seite.',
  'standing-wave-near-band':
    'Eine stehende Welle längs des größten Innenmaßes liegt nicht weit über dem Band; beide Enden auskleiden oder das Gehäuse in dieser Richtung kürzer machen.',
  'inside-sizes-alike':
    'Zwei Innenmaße sind fast gleich, sodass ihre stehenden Wellen zusammenfallen. Im Bass spielt das keine Rolle.',
  'box-over-limit': 'Das Gehäuse ist größer als der angegebene Platz; die Zahl sagt, um wie viel.',
  'box-not-through-opening':
    'Keine Seite des Gehäuses geht durch die Öffnung, weder gerade noch gekippt. In zwei Teilen bauen oder eine andere Form verlangen.',
  'box-tilted-through-opening':
    'Das Gehäuse geht nur gekippt durch die Öffnung; ob es sich im Fahrzeug aufrichten lässt, ist nicht geprüft.',
  'box-hits-keep-out':
    'Das Gehäuse steht nirgends auf dem Boden des Kofferraums frei von Radkästen und anderen angegebenen Blöcken.',
  'heavy-box':
    'Ein Gehäuse über 16 kg verlangt mehr als eine Person an der Ladekante. Über 33 kg, dann `care`, ist es mehr, als zwei heben sollten: leer tragen, auf einem Brett schieben und die Lautsprecher einbauen, wenn es im Auto steht.'
} as const satisfies Record<keyof typeof boxCautions, string>
