/** What the catalogue says of these cautions, in German. */
import type { acousticCautions } from '../../cautions/acoustic.ts'

export const acousticMeanings = {
  'cabin-model':
    'Der Pegel am Sitz stammt aus einem Modell des Innenraums, nicht aus dem Auto. Die Übertragungskurve messen und angeben.',
  'cabin-modes': 'Die Kurve am Sitz reicht über die tiefste stehende Welle des Innenraums, die das Modell weglässt.',
  'cabin-curve-held':
    'Frequenzen liegen jenseits der Enden der gemessenen Kurve des Innenraums; dort gelten ihre letzten Werte.',
  'excursion-above-xmax':
    'Bei dieser Aussteuerung soll die Membran weiter auslenken, als sie linear kann: Verzerrung, und weiter draußen Schaden. Weniger aussteuern, die tiefsten Frequenzen filtern oder das Gehäuse ändern. Die Kurven sind linear und zeigen es nicht.',
  'unprotected-below-tuning':
    'Unter der Abstimmung hält die Luft im Kanal oder die Passivmembran die Membran nicht mehr; bei dieser Leistung überschreitet sie dort Xmax. Den in `limits.protection` genannten Hochpass vor den Verstärker setzen.',
  'passive-radiator-excursion':
    'Eine Passivmembran soll weiter auslenken, als sie kann. Eine größere oder eine zweite nehmen, oder weniger aussteuern.',
  'passive-radiator-travel-unknown':
    'Der größte Pegel wurde ohne den Hub der Passivmembranen bestimmt, der oft die erste Grenze ist. `passiveRadiatorXmaxMm` angeben.',
  'air-spring-stiffens':
    'Bei dieser Aussteuerung wird die Luft einer Kammer so gestaucht, dass ihre Feder nicht mehr linear ist: sie verzerrt und drückt stark auf die Wände. Eine größere Kammer oder weniger Aussteuerung, und verstreben. `note` ab 8 % des Volumens, `care` ab 16 %.',
  'chamber-too-small':
    'Eine Kammer fasst weniger als ein paar Mal das, was ihre Membranen verdrängen, oder weniger, als diese selbst einnehmen: so ein Gehäuse lässt sich nicht bauen, und was dafür berechnet ist, sagt wenig.',
  'chamber-taken-as-tight':
    'Für eine offene Kammer wurde kein Leck angegeben, also wurde ohne gerechnet. Wirkliche Gehäuse lecken und sind bei ihrer Abstimmung leiser. `leakQ` angeben: 7 ist der übliche Anfang, gemessen werden 5 bis 10.',
  'drive-above-thermal-rating':
    'Die Aussteuerung bringt, lange bei der genannten Frequenz gehalten, mehr Wärme in die Spule, als ihre Belastbarkeit erlaubt. Weniger aussteuern, oder den Tastgrad wirklicher Musik angeben.',
  'coil-too-hot': 'Bei dieser Aussteuerung erreicht die Spule eine Temperatur, die ihr Kleber nicht übersteht.',
  'amplifier-out-of-reach':
    'Die Aussteuerung verlangt mit der Anhebung der Filter davor mehr Spannung oder Strom, als der Verstärker gibt: er übersteuert oder schaltet ab. Weniger anheben oder weniger aussteuern.',
  'level-lost-at-drive':
    'Bei dieser Aussteuerung kosten warme Spulen oder schnelle Luft in den Kanälen mehr als 3 dB Pegel. Der Verlust ist eine Schätzung: die Strahlen gelten als quasistationär, auf etwa ±50 %.',
  'port-jets-left-out':
    'Ein Gehäuse mit vielen einzelnen Kanälen wurde bei so vielen Frequenzen verlangt, dass die Verluste ihrer Strahlen bei voller Leistung außer Acht blieben.',
  'port-air-speed':
    'In einem Kanal wird die Luft so schnell, dass man sie hört und bei hoher Aussteuerung Pegel verloren geht. Mehr Kanalfläche nehmen. `note` ab 17 m/s (gerade Kanäle mit scharfen Enden hört man), `care` ab 25 m/s (auch gerundete), `stop` ab 34 m/s.',
  'no-box-suits':
    'Keines der gewünschten Gehäuse passt zu Lautsprecher und Platz. Jeder Kandidat sagt, was gegen ihn spricht: eine andere Art, mehr Platz oder ein anderer Lautsprecher.',
  'lining-in-opened-box':
    'Ein Gehäuse mit Kanal, Passivmembran oder Bandpass zu stopfen schwächt seine Öffnung. Die Wände auskleiden, die Öffnung frei halten.',
  'cone-unloaded-below-tuning':
    'Unter der Abstimmung bewegt sich die Luft in der Öffnung mit der Membran statt gegen sie, und die Auslenkung wächst wie in freier Luft. Ein Hochpass bei etwa dem 0,7- bis 0,9-Fachen der Abstimmung schützt den Lautsprecher.',
  'dimensions-held':
    'Ein Streuungslauf variiert Lautsprecher und Luft eines eigenen Gehäuses, hält aber die Maße seiner Teile.',
  'excursion-by-chance':
    'Bei der Streuung wirklicher Teile lenkt mehr als eine Anlage von zwanzig bei dieser Aussteuerung über Xmax aus. Reserve lassen.',
  'port-does-not-fit':
    'Kein Kanal der gewünschten Art hält Abstimmung, Luftgeschwindigkeit und Platz zugleich ein. Die Antwort nennt, was ginge: ein Knick, weniger Fläche bei mehr Geschwindigkeit, ein größeres Gehäuse, eine andere Abstimmung, Passivmembranen.',
  'port-speed-unchecked':
    'Ohne Lautsprecher und Aussteuerung, verdrängtes Volumen oder einen Volumenstrom ist die Luftgeschwindigkeit im Kanal nicht bekannt.',
  'port-pipe-resonance':
    'Ein Kanal schwingt als offene Pfeife, wo er eine halbe Welle lang ist, und lässt dort oberen Bass und Geräusche durch. Den Tiefpass deutlich darunter halten.',
  'port-large-for-box':
    'Die Luft im Kanal ist nicht mehr klein gegen die im Gehäuse: die einfache Formel stimmt bei einem Fünftel 3 %, bei der Hälfte 7 % zu hoch ab.',
  'slot-end-uncertain':
    'Die genaue Länge eines Schlitzes an einer Wand ist unsicher: er zieht mehr Luft mit als ein freier. Beide Zählweisen sind angegeben; lang schneiden, messen, kürzen.'
} as const satisfies Record<keyof typeof acousticCautions, string>
