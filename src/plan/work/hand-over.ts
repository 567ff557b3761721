/** The last tests, and what the next driver of the car must know. */
import { inDigits } from '../../domain/digits.ts'
import type { UnnumberedStep } from './first-start.ts'

/** What a parked car may give to the whole system [A]. Common practice, no source: a month or two of a sound battery. */
export const PARKED_A = 0.02

const noise: UnnumberedStep = {
  id: 'noise',
  text: 'In the open: engine or ready mode on, volume at its lowest; then lamps, fan and rear window heater on, one after the other.',
  passIf: 'At one metre no whine and no click; the radio receives and the key works as before.',
  cautions: ['engine-running']
}

const parkedCurrent: UnnumberedStep = {
  id: 'parked-current',
  text: 'Everything off, doors latched, the vehicle asleep after half an hour: a DC clamp meter round the positive cable of the amplifier, or millivolts across its fuse. Never the current range of a meter across a battery.',
  passIf: `At most ${inDigits(1000 * PARKED_A)} mA.`,
  cautions: []
}

const held: UnnumberedStep = {
  id: 'held',
  text: 'Box, amplifier, battery, lugs: by torque and by hand. Open the list of what must stay within reach.',
  passIf:
    'Nothing moves; spare wheel, towing eye and the release of the tailgate are reached as before, and the rear view is free.',
  cautions: []
}

const toOwner: UnnumberedStep = {
  id: 'to-owner',
  text: 'Show whoever drives the car: where the main fuse is and what to do at smoke (main fuse or negative terminal off, everybody out), a spare of the same rating only, how loud for how long. Hand over plan, readings and papers for inspection and insurer.',
  passIf: 'The main fuse was pulled and put back once by that person.',
  cautions: []
}

const firstDrive: UnnumberedStep = {
  id: 'first-drive',
  text: 'A short round with familiar music, hands off its controls; then feel fuse holder and lugs. After a month look at torque, straps and lugs again.',
  passIf: 'Sirens and horns are heard; nothing loose, nothing warm, no warning lamp.',
  cautions: []
}

export const handOver: readonly UnnumberedStep[] = [noise, parkedCurrent, held, toOwner, firstDrive]
