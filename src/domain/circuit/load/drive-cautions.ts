/** What the drive of a vehicle adds to the work on its 12 V side. A plain engine adds nothing. */
import type { Drive } from '../../../contract/supply/words.ts'
import { type Caution, catalogued, caution } from '../../caution.ts'
import { say } from '../../say.ts'

/** A converter alone proves nothing: it may hang on the 24 V of a truck. */
const unknownDrive = (): Caution =>
  caution('high-voltage-orange', say('high-voltage-orange'), { at: 'drive', level: 'note' })

export function driveCautions(drive: Drive | undefined): readonly Caution[] {
  if (drive === undefined) return [unknownDrive()]
  if (drive === 'combustion') return []
  if (drive === 'mild-hybrid') return [catalogued('ready-mode', 'drive'), catalogued('forty-eight-volt', 'drive')]
  return [catalogued('high-voltage-orange', 'drive'), catalogued('ready-mode', 'drive')]
}
