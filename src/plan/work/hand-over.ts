/** The last tests, and what the next driver of the car must know. */
import { inDigits } from '../../domain/digits.ts'
import { say } from '../../domain/say.ts'
import { workDefaults } from './defaults.ts'
import { startStep, type UnnumberedStep } from './first-start.ts'

const noise = startStep({
  id: 'noise',
  text: say('start.in-the-open-engine-or-ready'),
  passIf: say('start.at-one-metre-no-whine-and'),
  cautions: ['engine-running']
})

const parkedCurrent = startStep({
  id: 'parked-current',
  text: say('start.everything-off-doors-latched-the-vehicle'),
  passIf: say('start.at-most-ma', { value: inDigits(1000 * workDefaults.parkedA.value) }),
  cautions: []
})

const held = startStep({
  id: 'held',
  text: say('start.box-amplifier-battery-lugs-by-torque'),
  passIf: say('start.nothing-moves-spare-wheel-towing-eye'),
  cautions: []
})

const toOwner = startStep({
  id: 'to-owner',
  text: say('start.show-whoever-drives-the-car-where'),
  passIf: say('start.the-main-fuse-was-pulled-and'),
  cautions: []
})

const firstDrive = startStep({
  id: 'first-drive',
  text: say('start.a-short-round-with-familiar-music'),
  passIf: say('start.sirens-and-horns-are-heard-nothing'),
  cautions: []
})

export const handOver: readonly UnnumberedStep[] = [noise, parkedCurrent, held, toOwner, firstDrive]
