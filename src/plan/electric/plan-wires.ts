/** Loudspeaker wire: from each output to the box as the wiring part sized it, and inside by each driver's share of the current. */

import type { SpeakerWire } from '../../contract/systems/plan-circuit.ts'
import { assumptions } from '../../domain/assume.ts'
import { type Caution, caution } from '../../domain/caution.ts'
import { chooseSpeakerCable } from '../../domain/coils/speaker-cable.ts'
import { fixed } from '../../domain/digits.ts'
import { say } from '../../domain/say.ts'
import type { PlannedLoad } from '../load/plan-load.ts'
import { wiringDefaults } from './defaults.ts'

interface SpeakerWires {
  /** Absent where no size fits: then it is in no bill either. */
  readonly toBox?: SpeakerWire
  readonly inside?: SpeakerWire
  readonly cautions: readonly Caution[]
}

/**
 * Load and power of one of n like drivers that lie s in series in each string on one output.
 *
 *   Z = Zload·(n/s)/s,  P = Pout/n,  so that I = √(P/Z) = Iout·s/n
 *
 * @source Kirchhoff's laws: n/s strings share the current of the output
 * @check  38.73 A (1500 W, 1 Ω): two drivers in parallel 19.36 A each, in series 38.73 A
 */
function driverShare(loadOhm: number, powerW: number, drivers: number, inSeries: number) {
  return { loadOhm: (loadOhm * drivers) / inSeries ** 2, powerW: powerW / drivers }
}

function insideWire({ matching, wiring, joined }: PlannedLoad): Pick<SpeakerWires, 'inside' | 'cautions'> {
  const best = matching.done ? matching.outcome.result.best : undefined
  if (best?.outputPowerW === undefined || joined === undefined || !wiring.done) return { cautions: [] }
  const { driversPerOutput, outputs, loadOhm, outputPowerW } = best
  const share = driverShare(loadOhm, outputPowerW, driversPerOutput, joined.driversInSeries)
  const lengthM = wiringDefaults.wireInsideM.value
  // its defaults are those of the wire to the box, which the wiring part records
  const { cable } = chooseSpeakerCable({ lengthM }, share.loadOhm, share.powerW, assumptions())
  if (cable === undefined) {
    const currentA = Math.sqrt(share.powerW / share.loadOhm)
    const message = say('no-speaker-cable.inside', { currentA: fixed(currentA, 1) })
    return { cautions: [caution('no-speaker-cable', message, { figures: { currentA, lengthM } })] }
  }
  const { designation, areaM2, currentA } = cable
  return { inside: { designation, areaM2, currentA, lengthM, count: driversPerOutput * outputs }, cautions: [] }
}

export function planWires(load: PlannedLoad): SpeakerWires {
  const { wiring, joined } = load
  const cable = wiring.done ? wiring.outcome.result.cable : undefined
  const lengthM = wiring.done ? wiring.request.cable?.lengthM : undefined
  if (cable === undefined || lengthM === undefined) return insideWire(load)
  const { designation, areaM2, currentA } = cable
  return { toBox: { designation, areaM2, currentA, lengthM, count: joined?.outputs ?? 1 }, ...insideWire(load) }
}
