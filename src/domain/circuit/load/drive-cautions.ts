/** What the drive of a vehicle adds to the work on its 12 V side. A plain engine adds nothing. */
import type { Drive } from '../../../contract/supply/words.ts'
import { type Caution, caution } from '../../caution.ts'
import { say } from './supply-cautions.ts'

/** A converter alone proves nothing: it may hang on the 24 V of a truck. */
const unknownDrive = (): Caution =>
  caution(
    'high-voltage-orange',
    'If the vehicle has orange cables, leave them alone; whether it is a combustion, hybrid or electric vehicle was not told.',
    { at: 'drive', level: 'note' }
  )

export function driveCautions(drive: Drive | undefined): readonly Caution[] {
  if (drive === undefined) return [unknownDrive()]
  if (drive === 'combustion') return []
  if (drive === 'mild-hybrid') return [say('ready-mode', 'drive'), say('forty-eight-volt', 'drive')]
  return [say('high-voltage-orange', 'drive'), say('ready-mode', 'drive')]
}
