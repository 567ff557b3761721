/** How the chief figures of a response were reached, each as arithmetic that can be worked out again. */
import type { ResponseScalars } from '../../../contract/enclosures/response.ts'
import type { Basis } from '../../../contract/field/envelope.ts'
import type { SourceId } from '../../../contract/sources/source.ts'
import { REFERENCE_PRESSURE_PA } from '../../constants.ts'
import { explain } from '../../formula.ts'
import { helmholtzTuning, portLengthWithEnds } from '../../port/formulas.ts'
import type { ChamberParts } from '../model/chamber.ts'
import { radiatorTuning } from '../model/formulas.ts'
import type { ResponseSystem } from '../model/response-system.ts'
import { closedResonance, closedTotalQ, plateauLevel } from '../response/formulas.ts'

function tuningBasis(system: ResponseSystem, parts: ChamberParts | undefined, quantity: string): readonly Basis[] {
  if (parts?.port !== undefined) {
    const { count: n, areaM2: S, effectiveLengthM: Leff, tuningHz } = parts.port
    const c = system.air.soundSpeedMPerS
    return [explain(helmholtzTuning, quantity, tuningHz, { c, n, S, Leff, V: parts.volumeM3 })]
  }
  if (parts?.passiveRadiators === undefined) return []
  const { resonanceHz: fp, vasM3: Vap, tuningHz } = parts.passiveRadiators
  return [explain(radiatorTuning, quantity, tuningHz, { fp, Vap, V: parts.volumeM3 })]
}

function lengthBasis(parts: ChamberParts | undefined, quantity: string): readonly Basis[] {
  if (parts?.port === undefined) return []
  const { lengthM: L, endFactor: k, areaM2: S, effectiveLengthM } = parts.port
  return [explain(portLengthWithEnds, quantity, effectiveLengthM, { L, k, S })]
}

function closedBasis(system: ResponseSystem, { fcHz, qtc, qec, qmc }: ResponseScalars): readonly Basis[] {
  const { rear } = system.chambers
  if (rear === undefined || fcHz === undefined || qtc === undefined || qec === undefined || qmc === undefined) return []
  const { driver, wiring, sourceOhm } = system
  const Rg1 = (sourceOhm * wiring.count) / wiring.inSeries ** 2
  const box = { fs: driver.fsHz, Vas: wiring.vasM3, V: rear.volumeM3 }
  return [
    explain(closedResonance, 'scalars.fcHz', fcHz, box),
    explain(closedTotalQ, 'scalars.qtc', qtc, { Qmc: qmc, Qec: qec, Re: driver.coil.reOhm, Rg1 })
  ]
}

function plateauBasis(system: ResponseSystem, { referenceLevelDb }: ResponseScalars): readonly Basis[] {
  if (referenceLevelDb === undefined) return []
  const { air, driver, wiring, sourceOhm: Rg, voltageV: V } = system
  return [
    explain(plateauLevel, 'scalars.referenceLevelDb', referenceLevelDb, {
      rho: air.densityKgPerM3,
      Bl: driver.blTm,
      Sd: driver.sdM2,
      F: wiring.faces,
      N: wiring.count,
      S: wiring.inSeries,
      V,
      Re: driver.coil.reOhm,
      Rg,
      Mms: driver.mmsKg,
      pref: REFERENCE_PRESSURE_PA
    })
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
