/** What the catalogue says of these cautions, in German. */
import type { wholePlanCautions } from '../../cautions/plan.ts'

export const planMeanings = {
  'not-as-asked':
    'Etwas, das als Wunsch, Art, Volumen, Abstimmung oder Qtc verlangt wurde, wird so nicht gebaut; die Meldung nennt beide Zahlen, wo es Zahlen gibt. Verlangen, was passt, oder mehr Platz geben.',
  'leaflet-box':
    'Das Gehäuse wird nach Volumen und Abstimmung eines Merkblatts gebaut, und das Datenblatt sagt nicht, was der Lautsprecher ist: von Pegel, Tiefgang, Auslenkung und Eignung ist nichts berechnet. Vor dem Sägen fs, Q, Vas und Sd schicken, vom Hersteller oder gemessen.',
  'closed-box-high-pass':
    'Ein Hochpass vor einem geschlossenen Gehäuse hält die Membran in ihrem Hub und nimmt Bass weg, den der Innenraum gegeben hätte; die Meldung sagt, bei welcher Leistung das Gehäuse keinen braucht. Ab der halben Resonanz des Gehäuses ist es `care`: ein kleineres Gehäuse oder weniger Leistung gibt dann mehr Bass.',
  'cones-out-of-sight':
    'Die Lautsprecher eines Bandpasses spielen in ein geschlossenes Gehäuse: eine Membran, die anschlägt, sieht man nicht und hört sie kaum, eine verbrennende Spule riecht man spät. Bei Pegel und Filtern des Plans bleiben und beim ersten veränderten Klang die Front abnehmen.'
} as const satisfies Record<keyof typeof wholePlanCautions, string>
