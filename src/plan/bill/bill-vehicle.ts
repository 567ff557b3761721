/** Small things of the work in the vehicle: what bolts the amplifier, makes a ground point, guards bare metal and the piece before the fuse. */
import type { PlanCircuit } from '../../contract/systems/plan-circuit.ts'
import type { BillRow } from '../../contract/systems/workshop.ts'
import { inMm } from '../../domain/digits.ts'
import { say } from '../../domain/say.ts'
import { offTheReel, wiringPieces } from './bill-wiring.ts'
import { billDefaults } from './defaults.ts'

/** A bolt for each lead that goes to the body. */
function groundPoints({ trunk, branches, converter }: PlanCircuit): number {
  const own = converter?.ground !== undefined || converter?.lead?.returnBy === 'body' ? 1 : 0
  const leads = [...(trunk === undefined ? [] : [trunk]), ...branches]
  return leads
    .filter(({ returnBy, returnLengthM }) => returnBy === 'body' && returnLengthM > 0)
    .reduce((sum, { runs }) => sum + runs, own)
}

/** Every fuse of a power cable, each cable for itself. */
function fuseHolders({ trunk, branches, converter, secondBattery }: PlanCircuit): number {
  const leads = [trunk, ...branches, converter?.lead, secondBattery?.lead, secondBattery?.charger?.lead]
  return leads
    .flatMap(lead => (lead === undefined ? [] : [lead]))
    .reduce((sum, { runs, fuse, endFuse }) => sum + runs * [fuse, endFuse].filter(each => each !== undefined).length, 0)
}

/** @param tailM  cable before the fuse that lies in a sheath; 0 where none does */
export function vehicleRows(circuit: PlanCircuit, tailM: number): readonly BillRow[] {
  const { amplifiers, trunk } = circuit
  const runs = trunk?.runs ?? 1
  const points = groundPoints(circuit)
  return [
    ...wiringPieces(
      'amplifier-bolt',
      say('bill.bolt-m5-with-two-washers-and'),
      billDefaults.boltsAnAmplifier.value * amplifiers.length,
      say('bill.four-an-amplifier-through-the-board'),
      { thread: 'M5' }
    ),
    ...wiringPieces(
      'amplifier-bolt',
      say('bill.bolt-for-converter'),
      circuit.converter === undefined && circuit.secondBattery?.charger === undefined
        ? 0
        : billDefaults.boltsAnAmplifier.value,
      say('bill.four-through-the-board'),
      { thread: 'M5' }
    ),
    ...wiringPieces(
      'ground-bolt',
      say('bill.bolt-m8-with-toothed-washer-and'),
      points,
      say('bill.one-for-each-lead-to-the'),
      { thread: 'M8' }
    ),
    ...wiringPieces(
      'metal-guard',
      say('bill.primer-in-a-small-tin-and'),
      trunk === undefined ? 0 : 1,
      points > 0 ? say('bill.edge-of-the-hole-in-the') : say('bill.edge-of-the-hole-in-the-2')
    ),
    ...offTheReel(
      'sheath',
      say('bill.sheath-slit-conduit-for-the-cable'),
      tailM * runs,
      say('bill.from-the-post-to-the-fuse', { tail: inMm(tailM), more: runs === 1 ? '' : say('bill.cables', { runs }) })
    ),
    ...wiringPieces(
      'cable-label',
      say('bill.label-for-a-fuse-holder-or'),
      trunk === undefined ? 0 : fuseHolders(circuit) + 1,
      say('bill.the-rating-beside-each-fuse-and')
    )
  ]
}
