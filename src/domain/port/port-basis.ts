/** How the figures of the recommended port were reached. */
import type { Basis } from '../outcome.ts'
import type { PortSetting } from './port-design.ts'
import { equivalentRadiusM, mitreExtraM } from './port-length.ts'
import type { PortSizing } from './port-sizing.ts'

export function portBasis({ recommended, demand }: PortSizing, setting: PortSetting): readonly Basis[] {
  const { count, areaM2, lengthM, effectiveLengthM, endFactor, bends, pipeResonanceHz } = recommended
  const c = { symbol: 'c', value: setting.air.soundSpeedMPerS, unit: 'm/s' }
  const effective = { symbol: 'Leff', value: effectiveLengthM, unit: 'm' }
  const source = 'helmholtz-resonator' as const
  const depth = recommended.diameterM ?? recommended.heightM ?? 0
  const figures: Basis[] = [
    {
      quantity: 'recommended.effectiveLengthM',
      formula: 'c^2*n*S/((2*pi*fB)^2*V)',
      inputs: [
        c,
        { symbol: 'n', value: count, unit: '1' },
        { symbol: 'S', value: areaM2, unit: 'm2' },
        { symbol: 'fB', value: setting.tuningHz, unit: 'Hz' },
        { symbol: 'V', value: setting.volumeM3, unit: 'm3' }
      ],
      value: effectiveLengthM,
      unit: 'm',
      source
    },
    {
      quantity: 'recommended.lengthM',
      formula: 'Leff-k*r+b*m',
      inputs: [
        effective,
        { symbol: 'k', value: endFactor, unit: '1' },
        { symbol: 'r', value: equivalentRadiusM(areaM2), unit: 'm' },
        { symbol: 'b', value: bends, unit: '1' },
        { symbol: 'm', value: mitreExtraM(depth), unit: 'm' }
      ],
      value: lengthM,
      unit: 'm',
      source: bends > 0 ? 'mitred-bend' : source
    },
    {
      quantity: 'recommended.pipeResonanceHz',
      formula: 'c/(2*Leff)',
      inputs: [c, effective],
      value: pipeResonanceHz,
      unit: 'Hz',
      source
    }
  ]
  if (demand === undefined) return figures
  const inputs = [
    { symbol: 'U', value: demand.peakFlowM3PerS, unit: 'm3/s' },
    { symbol: 'v', value: demand.limitMPerS, unit: 'm/s' }
  ]
  const area: Basis = {
    quantity: 'demand.areaM2',
    formula: 'U/v',
    inputs,
    value: demand.areaM2,
    unit: 'm2',
    source: 'practice-port-speed'
  }
  return [...figures, area]
}
