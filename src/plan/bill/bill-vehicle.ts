/** Small things of the work in the vehicle: what bolts the amplifier, makes a ground point, guards bare metal and the piece before the fuse. */
import type { PlanCircuit } from '../../contract/systems/plan-circuit.ts'
import type { BillRow } from '../../contract/systems/workshop.ts'
import { inMm } from '../../domain/digits.ts'
import { offTheReel, wiringPieces } from './bill-wiring.ts'

/** Common practice, no source. */
const BOLTS_AN_AMPLIFIER = 4

/** A bolt for each lead that goes to the body. */
function groundPoints({ trunk, branches, converter }: PlanCircuit): number {
  const own = converter?.ground !== undefined || converter?.lead?.returnBy === 'body' ? 1 : 0
  const leads = [...(trunk === undefined ? [] : [trunk]), ...branches]
  return leads
    .filter(({ returnBy, returnLengthM }) => returnBy === 'body' && returnLengthM > 0)
    .reduce((sum, { runs }) => sum + runs, own)
}

/** @param tailM  cable before the fuse that lies in a sheath; 0 where none does */
export function vehicleRows(circuit: PlanCircuit, tailM: number): readonly BillRow[] {
  const { amplifiers, trunk } = circuit
  const runs = trunk?.runs ?? 1
  const points = groundPoints(circuit)
  return [
    ...wiringPieces(
      'amplifier-bolt',
      'bolt M5 with two washers and self-locking nut, for an amplifier',
      BOLTS_AN_AMPLIFIER * amplifiers.length,
      'four an amplifier, through the board or bracket that is bolted to the body (common practice, no source)',
      { thread: 'M5' }
    ),
    ...wiringPieces(
      'ground-bolt',
      'bolt M8 with toothed washer and nut, for a ground point',
      points,
      'one for each lead to the body; not where a ground stud of the maker is taken',
      { thread: 'M8' }
    ),
    ...wiringPieces(
      'metal-guard',
      'primer in a small tin, and contact grease',
      trunk === undefined ? 0 : 1,
      points > 0 ? 'edge of the hole in the bulkhead, scraped ground points' : 'edge of the hole in the bulkhead'
    ),
    ...offTheReel(
      'sheath',
      'sheath (slit conduit) for the cable before its fuse',
      tailM * runs,
      `${inMm(tailM)} from the post to the fuse${runs === 1 ? '' : `, ${runs} cables`}`
    ),
    ...wiringPieces(
      'cable-label',
      'label for a fuse holder or cable',
      trunk === undefined ? 0 : runs + circuit.branches.length + 1,
      'the rating beside each fuse, and one where the cable enters the cabin'
    )
  ]
}
