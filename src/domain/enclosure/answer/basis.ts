/** How the chief figures of a response were reached, each as arithmetic that can be worked out again. */
import type { ResponseScalars } from '../../../contract/enclosures/response.ts'
import type { SourceId } from '../../../contract/sources/source.ts'
import type { Basis } from '../../outcome.ts'
import type { ChamberParts } from '../model/chamber.ts'
import type { ResponseSystem } from '../model/response-system.ts'

const input = (symbol: string, value: number, unit: string) => ({ symbol, value, unit })

function tuningBasis(system: ResponseSystem, parts: ChamberParts | undefined, quantity: string): readonly Basis[] {
  if (parts?.port !== undefined) {
    const { count, areaM2, effectiveLengthM, tuningHz } = parts.port
    return [
      {
        quantity,
        formula: 'c/(2*pi)*sqrt(n*S/(Leff*V))',
        inputs: [
          input('c', system.air.soundSpeedMPerS, 'm/s'),
          input('n', count, '1'),
          input('S', areaM2, 'm²'),
          input('Leff', effectiveLengthM, 'm'),
          input('V', parts.volumeM3, 'm³')
        ],
        value: tuningHz,
        unit: 'Hz',
        source: 'helmholtz-resonator'
      }
    ]
  }
  if (parts?.passiveRadiators === undefined) return []
  const { resonanceHz, vasM3, tuningHz } = parts.passiveRadiators
  return [
    {
      quantity,
      formula: 'fp*sqrt(1+Vap/V)',
      inputs: [input('fp', resonanceHz, 'Hz'), input('Vap', vasM3, 'm³'), input('V', parts.volumeM3, 'm³')],
      value: tuningHz,
      unit: 'Hz',
      source: 'small-1974-passive-radiator'
    }
  ]
}

function lengthBasis(parts: ChamberParts | undefined, quantity: string): readonly Basis[] {
  if (parts?.port === undefined) return []
  const { lengthM, endFactor, areaM2, effectiveLengthM } = parts.port
  return [
    {
      quantity,
      formula: 'L+k*sqrt(S/pi)',
      inputs: [input('L', lengthM, 'm'), input('k', endFactor, '1'), input('S', areaM2, 'm²')],
      value: effectiveLengthM,
      unit: 'm',
      source: 'levine-schwinger-1948'
    }
  ]
}

function closedBasis(system: ResponseSystem, { fcHz, qtc, qec, qmc }: ResponseScalars): readonly Basis[] {
  const { rear } = system.chambers
  if (rear === undefined || fcHz === undefined || qtc === undefined || qec === undefined || qmc === undefined) return []
  const { driver, wiring, sourceOhm } = system
  const box = [input('Vas', wiring.vasM3, 'm³'), input('V', rear.volumeM3, 'm³')]
  const re = input('Re', driver.coil.reOhm, 'Ω')
  const rg = input('Rg1', (sourceOhm * wiring.count) / wiring.inSeries ** 2, 'Ω')
  return [
    {
      quantity: 'scalars.fcHz',
      formula: 'fs*sqrt(1+Vas/V)',
      inputs: [input('fs', driver.fsHz, 'Hz'), ...box],
      value: fcHz,
      unit: 'Hz',
      source: 'small-1972-closed-box'
    },
    {
      quantity: 'scalars.qtc',
      formula: '1/(1/Qmc+1/(Qec*(Re+Rg1)/Re))',
      inputs: [input('Qmc', qmc, '1'), input('Qec', qec, '1'), re, rg],
      value: qtc,
      unit: '1',
      source: 'small-1972-closed-box'
    }
  ]
}

function plateauBasis(system: ResponseSystem, { referenceLevelDb }: ResponseScalars): readonly Basis[] {
  if (referenceLevelDb === undefined) return []
  const { air, driver, wiring, sourceOhm, voltageV } = system
  return [
    {
      quantity: 'scalars.referenceLevelDb',
      formula: '20*log10(rho*Bl*Sd*F*V/S/(2*pi*(Re+Rg*N/S^2)*Mms)/pref)',
      inputs: [
        input('rho', air.densityKgPerM3, 'kg/m³'),
        input('Bl', driver.blTm, 'T·m'),
        input('Sd', driver.sdM2, 'm²'),
        input('F', wiring.faces, '1'),
        input('N', wiring.count, '1'),
        input('S', wiring.inSeries, '1'),
        input('V', voltageV, 'V'),
        input('Re', driver.coil.reOhm, 'Ω'),
        input('Rg', sourceOhm, 'Ω'),
        input('Mms', driver.mmsKg, 'kg'),
        input('pref', 20e-6, 'Pa')
      ],
      value: referenceLevelDb,
      unit: 'dB',
      source: 'small-1972-direct-radiator'
    }
  ]
}

export function responseBasis(system: ResponseSystem, scalars: ResponseScalars): readonly Basis[] {
  const { rear, front } = system.chambers
  return [
    ...tuningBasis(system, rear, 'scalars.tuningHz'),
    ...tuningBasis(system, front, 'scalars.frontTuningHz'),
    ...lengthBasis(rear, 'scalars.portEffectiveLengthM'),
    ...lengthBasis(front, 'scalars.frontPortEffectiveLengthM'),
    ...closedBasis(system, scalars),
    ...plateauBasis(system, scalars)
  ]
}

export function responseSources({ chambers, driver, highPass }: ResponseSystem): readonly SourceId[] {
  const parts = [chambers.rear, chambers.front].filter(chamber => chamber !== undefined)
  const ids: SourceId[] = ['acoustic-network', 'small-1972-direct-radiator']
  if (parts.some(({ port }) => port !== undefined)) ids.push('helmholtz-resonator', 'levine-schwinger-1948')
  if (parts.some(({ passiveRadiators }) => passiveRadiators !== undefined)) ids.push('small-1974-passive-radiator')
  if (parts.some(({ leak, chamber }) => leak !== undefined || chamber.absorptionPaSPerM3 > 0)) {
    ids.push('small-1973-vented-box')
  }
  if (highPass && parts.length === 1 && parts[0]?.opening === undefined) ids.push('small-1972-closed-box')
  if (driver.coil.powerLaw !== undefined) ids.push('leach-2002-inductance')
  return ids
}
