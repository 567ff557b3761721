/** German for what the room `contract` says. */
import type { contractSentences } from '../english/contract.ts'
import { translation } from '../form/translation.ts'

export const germanContract = translation<typeof contractSentences>()({
  'contract.above': 'Muss über {limit} liegen.',
  'contract.below': 'Muss unter {limit} liegen.',
  'contract.const': 'Muss {value} sein.',
  'contract.faults.call': 'Der Aufruf hat {faults} Fehler.',
  'contract.faults.query': 'Die Abfrage hat {faults} Fehler.',
  'contract.faults.request': 'Die Anfrage hat {faults} Fehler.',
  'contract.least': 'Muss mindestens {limit} sein.',
  'contract.least-characters': 'Braucht mindestens {characters} Zeichen.',
  'contract.least-entries': 'Braucht mindestens {entries, plural, one {# Eintrag} other {# Einträge}}.',
  'contract.meant': 'Ist {name} gemeint?',
  'contract.most': 'Darf höchstens {limit} sein.',
  'contract.most-characters': 'Nimmt höchstens {characters} Zeichen.',
  'contract.most-entries': 'Nimmt höchstens {entries, plural, one {# Eintrag} other {# Einträge}}.',
  'contract.no-field': 'Der Vertrag hat kein solches Feld. {meant}',
  'contract.one-of': 'Muss eines sein von: {allowed}.',
  'contract.pattern': 'Hat eine Form oder ein Zeichen, das hier nicht erlaubt ist.',
  'contract.required': 'Dieses Feld ist nötig.',
  'contract.type': 'Muss vom Typ {types} sein; nichts wird umgewandelt.',
  'contract.unfit': 'Passt nicht zum Vertrag.'
})
