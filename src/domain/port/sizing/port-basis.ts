/** How the figures of the recommended port were reached. */
import type { PortSizing } from '../../../contract/ports/port-sizing.ts'
import type { Basis } from '../../outcome.ts'
import { equivalentRadiusM, mitreExtraM } from '../port-length.ts'
import type { PortSetting } from './port-design.ts'
import type { PortDemand, PortDesign } from './port-sizing.ts'

const source = 'helmholtz-resonator'

function effectiveLengthBasis({ count, areaM2, effectiveLengthM }: PortDesign, setting: PortSetting): Basis {
  return {
    quantity: 'recommended.effectiveLengthM',
    formula: 'c^2*n*S/((2*pi*fB)^2*V)',
    inputs: [
      { symbol: 'c', value: setting.air.soundSpeedMPerS, unit: 'm/s' },
      { symbol: 'n', value: count, unit: '1' },
      { symbol: 'S', value: areaM2, unit: 'm2' },
      { symbol: 'fB', value: setting.tuningHz, unit: 'Hz' },
      { symbol: 'V', value: setting.volumeM3, unit: 'm3' }
    ],
    value: effectiveLengthM,
    unit: 'm',
    source
  }
}

function lengthBasis(port: PortDesign): Basis {
  const { areaM2, lengthM, effectiveLengthM, endFactor, bends } = port
  return {
    quantity: 'recommended.lengthM',
    formula: 'Leff-k*r+b*m',
    inputs: [
      { symbol: 'Leff', value: effectiveLengthM, unit: 'm' },
      { symbol: 'k', value: endFactor, unit: '1' },
      { symbol: 'r', value: equivalentRadiusM(areaM2), unit: 'm' },
      { symbol: 'b', value: bends, unit: '1' },
      { symbol: 'm', value: mitreExtraM(port.diameterM ?? port.heightM ?? 0), unit: 'm' }
    ],
    value: lengthM,
    unit: 'm',
    source: bends > 0 ? 'mitred-bend' : source
  }
}

function pipeBasis({ effectiveLengthM, pipeResonanceHz }: PortDesign, { air }: PortSetting): Basis {
  return {
    quantity: 'recommended.pipeResonanceHz',
    formula: 'c/(2*Leff)',
    inputs: [
      { symbol: 'c', value: air.soundSpeedMPerS, unit: 'm/s' },
      { symbol: 'Leff', value: effectiveLengthM, unit: 'm' }
    ],
    value: pipeResonanceHz,
    unit: 'Hz',
    source
  }
}

function areaBasis({ peakFlowM3PerS, limitMPerS, areaM2 }: PortDemand): Basis {
  return {
    quantity: 'demand.areaM2',
    formula: 'U/v',
    inputs: [
      { symbol: 'U', value: peakFlowM3PerS, unit: 'm3/s' },
      { symbol: 'v', value: limitMPerS, unit: 'm/s' }
    ],
    value: areaM2,
    unit: 'm2',
    source: 'practice-port-speed'
  }
}

export function portBasis({ recommended, demand }: PortSizing, setting: PortSetting): readonly Basis[] {
  return [
    effectiveLengthBasis(recommended, setting),
    lengthBasis(recommended),
    pipeBasis(recommended, setting),
    ...(demand === undefined ? [] : [areaBasis(demand)])
  ]
}
