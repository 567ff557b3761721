/** German for what the room `box` says. */
import type { boxSentences } from '../../english/box/box.ts'
import { translation } from '../../form/translation.ts'

export const germanBox = translation<typeof boxSentences>()({
  'axis.depth': 'Tiefe',
  'axis.height': 'Höhe',
  'axis.width': 'Breite',
  'box-clearance': '{between}: {availableMm} mm, gewünscht {neededMm} mm: {why}.',
  'box-hits-keep-out': 'Das Gehäuse steht nirgends frei von den angegebenen Blöcken.',
  'box-not-through-opening': 'Keine Seite des Gehäuses geht durch die Öffnung, weder gerade noch gekippt.',
  'box-over-limit': 'Die {axis} ist {sizeMm} mm, frei sind {limitMm} mm: {spareMm} mm zu viel.',
  'box-tilted-through-opening': 'Das Gehäuse geht nur gekippt durch die Öffnung, zuerst mit: {face}.',
  'cone-needs-room':
    'Membranen an dieser Seite des Gehäuses ({face}) brauchen ringsum {gapMm} mm freien Raum vor sich.',
  'cone-needs-room.feet':
    'Membranen unter dem Gehäuse brauchen ringsum {gapMm} mm freien Raum: auf so hohe Füße stellen und sie vom Platz abziehen.',
  'driver-hits-box': '{between}: {availableMm} mm zu wenig Platz, selbst zum Berühren.',
  'driver-volume-estimated': 'Der Lautsprecher nimmt etwa {volumeL} L ein, auf etwa 30 % genau.',
  'driver-volume-missing': 'Nichts sagt, wie viel Luft dieser Lautsprecher verdrängt; er zählt als nichts.',
  'heavy-box': 'Das Gehäuse wiegt {massKg} kg: {people} über die Ladekante, auf einem Brett geschoben.',
  'heavy-box.empty':
    'ohne seine Lautsprecher tragen ({emptyKg} kg, {people}), auf einem Brett schieben und sie einbauen, wenn es im Auto steht.',
  'heavy-box.more': 'Das Gehäuse wiegt {massKg} kg, mehr als zwei Personen über eine Ladekante heben sollten: {way}',
  'heavy-box.slide': '{people}, auf einem Brett geschoben.',
  'inside-sizes-alike':
    '{along} und {otherAlong} innen unterscheiden sich um weniger als ein Zehntel, sodass ihre stehenden Wellen nahe {frequencyHz} Hz zusammenfallen, weit über dem Bass.',
  'no-way-in': 'Kein gerader Weg führt diese Teile an ihren Platz: {stuck}.',
  'out-of-reach':
    'Ist das Gehäuse geschlossen, kommt kein Arm mehr an diese Teile: {parts}. Vorher befestigen, anschließen, abdichten und prüfen, oder eine Platte über einer Dichtung anschrauben.',
  'panel-in-band': '{faces}: unter den {wantedHz} Hz, die Platten aus dem Band halten. {remedy}',
  'panel-in-band.braced':
    'Streben allein erreichen es nicht: eine dickere oder zweite Front, ein kleineres Gehäuse oder ein tieferes oberes Bandende nehmen.',
  'panel-in-band.face': '{face} {faceHz} Hz',
  'panel-in-band.panel':
    'Die Platte schwingt bei {lowHz} Hz oder darüber; {wantedHz} Hz halten sie aus dem Band. {spanCount} gleiche Felder ihrer längeren Seite würden genügen.',
  'panel-in-band.plain': 'Streben, eine dickere oder eine zweite Front heben sie an.',
  'panels-move-air':
    'Die Platten biegen sich: bei voller Leistung bewegen sie {movedSharePercent} % so viel Luft wie die Membranen, das kostet bis zu {lossDb} dB Bass. Unter {sharePercent} % anstreben: eine Strebe oder eine zweite Lage.',
  'people.four': 'vier Personen, oder zwei mit einem Hebezeug',
  'people.more': '{peopleCount} Personen',
  'people.one': 'eine Person',
  'people.three': 'drei Personen',
  'people.two': 'zwei Personen',
  'port-mouth-near-wall':
    'Die innere Mündung hat {gapMm} mm bis zur Wand gegenüber; mindestens ihre Höhe, {heightMm} mm, sollten es sein.',
  'port-place-shift':
    'Wände um die innere Mündung verschieben die Abstimmung von {plainHz} auf etwa {placedTuningHz} Hz ({shiftPercent} %); vor der letzten Platte messen und das Brett kürzen.',
  'port-short-leg':
    'Der letzte Schenkel des Schlitzes ist kürzer als der Schlitz hoch, sodass Knick und Mündung eins sind; die Länge ist weniger sicher.',
  'standing-wave-near-band':
    'Eine stehende Welle längs {insideMm} mm ({along} innen) liegt bei {frequencyHz} Hz, nahe am Band (bis {upperHz} Hz). Beide Enden auskleiden.',
  'thick-plate': 'Die Platte ist für ihre Größe so dick, dass die Zahlen der dünnen Platte zu hoch sind.'
})
