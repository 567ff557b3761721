/** German: steps before the first cut. */
import type { readySentences } from '../../english/work/ready.ts'
import { translation } from '../../form/translation.ts'

export const germanReady = translation<typeof readySentences>()({
  'ready.ask-your-insurer-and-your-inspection': 'Versicherung und Prüfstelle fragen, was sie sehen wollen.',
  'ready.coils-of-one-kind-agree-to': 'Spulen gleicher Art stimmen auf 10 % überein.',
  'ready.compare-with-the-plan-before-a': 'Mit dem Plan vergleichen, bevor Holz gekauft wird.',
  'ready.cut-out-and-flange-within-1': 'Ausschnitt und Korbrand innerhalb von 1 mm des Plans.',
  'ready.cut-out-flange-depth-and-screw':
    'Ausschnitt, Korbrand, Einbautiefe und Lochkreis jedes Lautsprechers, die Anschlüsse des Verstärkers, das Anschlussterminal.',
  'ready.every-figure-that-the-plan-took':
    'Jeder Wert, den der Plan statt des Handbuchs angenommen hat, ist durch den gefundenen ersetzt.',
  'ready.firm-trestles-at-the-height-of':
    'Feste Böcke in Hüfthöhe, Licht, Zwingen, Absaugung an der Maschine; niemand sonst im Staub.',
  'ready.first-aid-box-and-extinguisher-within': 'Verbandkasten und Feuerlöscher in Reichweite.',
  'ready.follow-it-with-hand-and-lamp':
    'Mit Hand und Lampe von der Batterie zum Verstärker: eine Tülle des Herstellers, ein Platz für die Sicherung, dickes Karosserieblech für einen Massepunkt.',
  'ready.follow-the-way-of-the-cable': 'Dem Weg des Kabels folgen',
  'ready.lay-a-string-along-it-and': 'Eine Schnur den Weg entlang legen und die Schnur messen.',
  'ready.look-for-what-this-plan-was':
    'Nach dem suchen, was diesem Plan nicht gesagt wurde: Gastank, Netzspannung an Bord, Batteriesensor, 48 V, zweite Batterie. Gibt es etwas davon, es dem Plan angeben oder die Werkstatt fragen, bevor etwas geöffnet wird.',
  'ready.look-up-how-the-battery-comes':
    'Nachschlagen, wie die Batterie abgenommen wird und was vorher zu notieren ist (Radiocode, Fenster), wie lange die Airbags zum Entladen brauchen, was die Zurrösen halten und wie viel das Fahrzeug laden darf.',
  'ready.measure-the-parts-before-the-wood': 'Die Teile vor dem Holz messen',
  'ready.measure-the-place': 'Den Platz messen',
  'ready.measure-the-resistance-of-each-voice':
    'Den Widerstand jeder Schwingspule messen. Was abweicht, kommt zuerst in den Plan.',
  'ready.out-of-doors-upwind-of-the': 'Im Freien, auf der Windseite der Säge, genügt eine Maske ohne Absaugung.',
  'ready.place-and-opening-take-the-outer':
    'Platz und Öffnung nehmen das Außenmaß des Plans auf; das Bandmaß zweimal ablesen.',
  'ready.read-the-handbook-of-the-vehicle': 'Das Fahrzeughandbuch lesen',
  'ready.set-up-the-bench': 'Den Arbeitsplatz einrichten',
  'ready.the-mask-fits-no-air-passes': 'Die Maske sitzt: neben der Nase strömt keine Luft vorbei.',
  'ready.the-string-is-no-longer-than':
    'Die Schnur ist nicht länger als das Kabel des Plans; sonst den Plan mit ihrer Länge neu anfordern.',
  'ready.width-height-and-depth-of-the':
    'Breite, Höhe und Tiefe des Platzes und die Öffnung an der engsten Stelle; Radkästen, Scharniere, Luken und Zurrösen.'
})
