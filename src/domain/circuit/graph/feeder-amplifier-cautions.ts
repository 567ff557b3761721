/** What is to be said of the amplifiers of a feeder as their sheets describe them. */
import type { FeederRequest } from '../../../contract/supply/supply-feeder.ts'
import { assumptions } from '../../assume.ts'
import type { Caution } from '../../caution.ts'
import { amplifierDraw } from '../load/amplifier-draw.ts'
import { claimCautions } from '../load/claim-cautions.ts'
import { drainCaution } from '../load/supply-cautions.ts'
import { voltageClassCautions } from '../load/voltage-class.ts'
import { resolveLoad } from './feeder-loads.ts'

/** The defaults met again here were told when the loads were resolved. */
export function feederAmplifierCautions(request: FeederRequest): readonly Caution[] {
  const { systemVoltageV } = request
  return request.amplifiers.flatMap((amplifier, index) => {
    const at = `amplifiers[${index}]`
    const { nominalA } = resolveLoad(amplifier, { ...request, level: 'full-sine' }, assumptions(), `${at}.`)
    const inputW = nominalA * systemVoltageV
    const { powerW, ratings } = amplifier
    return [
      ...voltageClassCautions(amplifier, systemVoltageV, inputW, `${at}.`),
      ...drainCaution(amplifier, at),
      ...(powerW === undefined && ratings === undefined
        ? []
        : claimCautions(amplifier, amplifierDraw(amplifier, systemVoltageV, assumptions(), `${at}.`), at))
    ]
  })
}
