/** German: names of parts. */
import type { partSentences } from '../../english/electric/part.ts'
import { translation } from '../../form/translation.ts'

export const germanPart = translation<typeof partSentences>()({
  'part.beside.amplifier': 'am Verstärker',
  'part.chemistry.agm': 'AGM',
  'part.chemistry.flooded': 'Nassbatterie',
  'part.chemistry.gel': 'Gel',
  'part.chemistry.lithium': 'Lithium',
  'part.lead.screened': 'geschirmte Signalleitung',
  'part.lead.twisted': 'verdrilltes Paar {areaMm2} mm², ungeschirmt',
  'part.port-round': 'lichter Durchmesser {diameter}',
  'part.port-slot': 'Schlitz {width} × {height}',
  'part.ports': '{portCount, plural, one {Ein Kanal, {size}} other {# Kanäle, je {size}}}',
  'part.screw.machine': 'Maschinenschraube M5 mit Einschlagmutter',
  'part.screw.wood': 'Linsenkopf-Holzschraube 4,5 × 30 mm',
  'part.second-battery-name': '{capacityAh} A·h, {chemistry}'
})
