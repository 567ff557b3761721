/** German: what the page of a region of drivers says. */
import type { regionSentences } from '../../english/plan/region.ts'
import { translation } from '../../form/translation.ts'

export const germanRegion = translation<typeof regionSentences>()({
  'region.title': 'Welche Lautsprecher passen würden',
  'region.wish': 'Der Wunsch: {goal}.',
  'region.part.shelf': 'Regal',
  'region.part.boxes': 'Gehäuse',
  'region.part.assumed': 'Annahmen',
  'region.look-for': 'Wonach zu suchen ist',
  'region.figure': 'Auf dem Datenblatt',
  'region.from': 'von',
  'region.to': 'bis',
  'region.resonance': 'fs, Hz',
  'region.total-q': 'Qts',
  'region.compliance': 'Vas, L',
  'region.travel': 'Xmax in eine Richtung, mm',
  'region.power': 'Nennbelastbarkeit eines Lautsprechers, W',
  'region.together':
    'Die drei Bereiche gehören zusammen: Ein Lautsprecher, der in allen liegt, gibt gegenüber dem besten höchstens {toleranceDb} dB her, so wie die Suche eines Plans Gehäuse wägt. Mehr Auslenkung und mehr Belastbarkeit schaden nicht.',
  'region.built': 'Was dafür gebaut wurde',
  'region.built-text':
    'Für den besten Lautsprecher, der zuerst kommt, und für die an den Ecken der Bereiche wurde ein Gehäuse ausgelegt; die letzten Spalten sind Pegel in dB {heard} bei so vielen Hz, alle Grenzen eingehalten.',
  'region.driver': 'fs / Qts / Vas',
  'region.box': 'Gehäuse',
  'region.closed': '{netVolumeL} L, geschlossen',
  'region.vented': '{netVolumeL} L bei {tuningHz} Hz',
  'region.room': 'Platz, L',
  'region.taken': 'Was sonst für einen solchen Lautsprecher angenommen ist',
  'region.piston': 'Sd, cm²',
  'region.coil': 'Re, Ω, Spulen verbunden',
  'region.rated': 'Nennimpedanz, Ω',
  'region.inductance': 'Le, mH',
  'region.mechanical-q': 'Qms',
  'region.flange': 'Korbrand, mm',
  'region.hole': 'Ausschnitt, mm',
  'region.depth': 'Tiefe hinter der Front, mm',
  'region.next':
    'Mit dem Datenblatt eines Lautsprechers in der Hand den Plan verlangen: Er rechnet mit all dessen Werten, mit dem Verstärker und dem Fahrzeug.'
})
