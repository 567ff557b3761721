/** German: steps from loose panels to the closed box. */
import type { assemblySentences } from '../../english/work/assembly.ts'
import { translation } from '../../form/translation.ts'

export const germanAssembly = translation<typeof assemblySentences>()({
  'assembly.a-bolt-runs-by-hand-through':
    'Die Schraube läuft von Hand durch Holz, Stahlplatte und Mutter; danach werden die Fugen und ihr Loch abgedichtet.',
  'assembly.assemble-all-but-the-last-panel': 'Alle Platten bis auf die letzte zusammenbauen',
  'assembly.assemble-the-first-panels': 'Die ersten Platten zusammenbauen',
  'assembly.bolts-instead-of-straps-need-a':
    'Schrauben statt Gurte brauchen hinter der Platte je eine Stahlplatte von mindestens 50 × 50 mm: jetzt anschrauben, mit gesicherter Mutter, denn später kommt niemand mehr hin.',
  'assembly.close-the-box-with': 'Das Gehäuse schließen: „{name}“',
  'assembly.contact-adhesive-is-extremely-flammable-let':
    'Kontaktkleber ist extrem entzündbar: ganz ablüften lassen, bevor das Gehäuse geschlossen wird.',
  'assembly.diagonals-of-the-opening-agree-to':
    'Die Diagonalen der Öffnung stimmen auf 1 mm überein, bevor der Leim anzieht.',
  'assembly.fit': 'Jetzt {named} einsetzen',
  'assembly.fit-the-load-plates-where-the': 'Die Lastplatten setzen, wo das Gehäuse verschraubt wird',
  'assembly.corners-with-fingers-have-no-screws':
    'Gezinkte Ecken haben keine Schrauben: mit Zwingen oder Gurten über die Ecken zusammenziehen, bis der Leim fest ist.',
  'assembly.glue-and-screw-the-last-panel': 'Die letzte Platte leimen und schrauben.',
  'assembly.glue-and-screw-to-the-marks': 'Nun {named} an den Anrissen leimen und schrauben.',
  'assembly.glue-one-edge-at-a-time':
    'Eine Kante nach der anderen leimen, von der Mitte nach außen schrauben, austretenden Leim abwischen.',
  'assembly.glue-the-lining-to-the-walls': 'Die Auskleidung auf die Wände des Plans kleben.',
  'assembly.in-this-order-for-what-is': 'In dieser Reihenfolge, denn was hinten liegt, kommt zuerst hinein: {join}.',
  'assembly.in-this-order-leave-off': 'In dieser Reihenfolge: {join}; {leftOff} noch weglassen.',
  'assembly.keep-it-away-from-the-mouth':
    'Von der Mündung des Kanals um dessen eigene Breite fernhalten, und von den Leimflächen auch.',
  'assembly.lay-a-full-bead-of-sealant':
    'Vor dem Aufsetzen der letzten Platte einen vollen Strang Dichtstoff auf die letzten Fugen legen: kein Loch ist groß und nahe genug, sie danach zu erreichen.',
  'assembly.lay-the-wires-inside': 'Die Leitungen innen verlegen',
  'assembly.lead-the-wires-from-the-place':
    'Die Leitungen vom Platz des Anschlussterminals zum Lautsprecherloch führen, gegen Klappern befestigen, Plus kennzeichnen.',
  'assembly.line-the-walls': 'Die Wände auskleiden',
  'assembly.no-light-shows-through-any-seam': 'Mit einer Lampe im Gehäuse scheint durch keine Fuge Licht.',
  'assembly.paint-the-port-dark-inside': 'Den Kanal innen dunkel streichen',
  'assembly.reach-in-through-the-hole-and':
    'Durch das Loch von {opening} hineingreifen und die letzten Fugen dichten; sie sind höchstens {reach} entfernt.',
  'assembly.run-a-fillet-of-sealant-along':
    'Eine Kehle aus Dichtstoff in jede innere Fuge legen und mit dem Finger glätten.',
  'assembly.sand-the-channel-and-spray-it':
    'Den Kanal schleifen und von beiden Enden mattschwarz sprühen; Leimflächen abkleben.',
  'assembly.seal-the-inner-seams': 'Die inneren Fugen dichten',
  'assembly.the-brace': 'die Strebe',
  'assembly.the-braces': 'die Streben',
  'assembly.the-clear-way-at-the-inner': 'Der freie Weg am inneren Ende des Kanals ist mindestens so groß wie im Plan.',
  'assembly.the-driver-still-clears': 'Der Lautsprecher geht noch hinein, ohne {named} zu berühren.',
  'assembly.the-last-panel-will-cover-them': 'Die letzte Platte verdeckt sie: keine auslassen.',
  'assembly.the-port': 'den Kanal',
  'assembly.with-straps-go-on': 'Mit Gurten geht es gleich weiter.',
  'assembly.the-divider': 'die Trennwand',
  'assembly.screw-the-front-on': 'Die Front auf ihrem Dichtband anschrauben',
  'assembly.drill-front-and-strips-in-one':
    'Die Front anklemmen und mit 5,5 mm durch sie und die Leisten dahinter bohren, {screwCount} Löcher in der Mitte der Leisten; die Einschlagmuttern von hinten einschlagen. Das Dichtband auflegen, an den Ecken gestoßen, und die Front über Kreuz und von Hand anschrauben, ohne Leim.',
  'assembly.the-front-comes-off-again':
    'Sie kommt wieder ab, wenn ein Lautsprecher eingesetzt, angesehen oder getauscht wird.'
})
