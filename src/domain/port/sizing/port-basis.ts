/** How the figures of the recommended port were reached. */

import type { Basis } from '../../../contract/field/envelope.ts'
import type { PortDesign, PortSizing } from '../../../contract/ports/port-sizing.ts'
import { explain } from '../../formula.ts'
import { mitreExtraM } from '../bends.ts'
import {
  bentPortLength,
  pipeResonance,
  portAreaForSpeed,
  portEffectiveLength,
  straightPortLength
} from '../formulas.ts'
import { equivalentRadiusM } from '../port-length.ts'
import type { PortSetting } from './port-design.ts'

function lengthBasis(port: PortDesign): Basis {
  const { areaM2, lengthM, effectiveLengthM, endFactor, bends: b } = port
  const straight = { Leff: effectiveLengthM, k: endFactor, r: equivalentRadiusM(areaM2) }
  const quantity = 'recommended.lengthM'
  if (b === 0) return explain(straightPortLength, quantity, lengthM, straight)
  const m = mitreExtraM(port.diameterM ?? port.heightM ?? 0)
  return explain(bentPortLength, quantity, lengthM, { ...straight, b, m })
}

export function portBasis(
  { recommended, demand }: PortSizing,
  { air, tuningHz, volumeM3 }: PortSetting
): readonly Basis[] {
  const { count: n, areaM2: S, effectiveLengthM: Leff, pipeResonanceHz } = recommended
  const c = air.soundSpeedMPerS
  const tuned = { c, n, S, fB: tuningHz, V: volumeM3 }
  const speed = demand && { U: demand.peakFlowM3PerS, v: demand.limitMPerS }
  return [
    explain(portEffectiveLength, 'recommended.effectiveLengthM', Leff, tuned),
    lengthBasis(recommended),
    explain(pipeResonance, 'recommended.pipeResonanceHz', pipeResonanceHz, { c, Leff }),
    ...(speed === undefined ? [] : [explain(portAreaForSpeed, 'demand.areaM2', demand?.areaM2 ?? 0, speed)])
  ]
}
