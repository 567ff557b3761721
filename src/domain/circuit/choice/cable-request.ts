import type { CableChoiceRequest } from '../../../contract/supply/supply-cables.ts'
import type { bodies, CableLimit } from '../../../contract/supply/words.ts'
import { cableLimits, type GaugeSystem, type InsulationMaterial } from '../../../contract/supply/words.ts'
import type { Assumptions } from '../../assume.ts'
import { DesignError } from '../../design-error.ts'
import { say } from '../../say.ts'
import type { Surroundings } from '../cable/ampacity.ts'
import { type CableSize, cableSize, namesItsSeries } from '../cable/cable-size.ts'
import { type ConductorLaw, conductorLaw } from '../cable/conductor-resistance.ts'
import { cableDefaults } from '../cable/defaults.ts'
import { insulationMaterialOf } from '../cable/insulation-material.ts'
import { surroundings } from '../fuse/protected-cable.ts'
import { supplyDefaults } from '../source/defaults.ts'

export type ReturnPath =
  | { readonly kind: 'cable'; readonly lengthM: number }
  | {
      readonly kind: 'chassis'
      readonly leadLengthM?: number
      readonly resistanceOhm?: number
      readonly body?: (typeof bodies)[number]
    }

export interface CableTask {
  readonly loadPowerW: number
  /** Current of fuse and ampacity: the load at nominal voltage, or at the lowest voltage a constant power may fall to. */
  readonly currentA: number
  readonly constantPower: boolean
  readonly sourceV: number
  readonly conductorLengthM: number
  readonly contactOhm: number
  readonly dropLimitV: number
  readonly temperatureC: number
  readonly checks: readonly CableLimit[]
  readonly sizes: readonly CableSize[]
  readonly law: ConductorLaw
  readonly surroundings: Surroundings
  readonly insulationMaterial: InsulationMaterial
}

function loadOf(request: CableChoiceRequest): { readonly powerW: number; readonly amperes: number } {
  const { loadPowerW, currentA, systemVoltageV } = request
  if (loadPowerW !== undefined && currentA !== undefined) {
    throw new DesignError('conflicting-input', {
      field: 'currentA',
      detail: say('refused.give-the-power-drawn-or-the')
    })
  }
  if (loadPowerW !== undefined) return { powerW: loadPowerW, amperes: loadPowerW / systemVoltageV }
  if (currentA !== undefined) return { powerW: currentA * systemVoltageV, amperes: currentA }
  throw new DesignError('missing-input', {
    field: 'loadPowerW',
    detail: say('refused.give-the-power-drawn-at-full')
  })
}

function dropLimit({ dropLimitPercent, dropLimitV, systemVoltageV }: CableChoiceRequest, assumed: Assumptions): number {
  if (dropLimitV !== undefined && dropLimitPercent !== undefined) {
    throw new DesignError('conflicting-input', {
      field: 'dropLimitV',
      detail: say('refused.give-the-drop-limit-in-volts')
    })
  }
  if (dropLimitV !== undefined) return dropLimitV
  return (assumed.take(dropLimitPercent, 'dropLimitPercent', supplyDefaults.dropLimitPercent) / 100) * systemVoltageV
}

/** The series of the request; one that every size names itself is neither asked for nor assumed. */
function seriesOf({ gaugeSystem, sizes }: CableChoiceRequest, assumed: Assumptions): GaugeSystem | undefined {
  if (gaugeSystem === undefined && sizes?.every(namesItsSeries)) return undefined
  return assumed.take<GaugeSystem>(gaugeSystem, 'gaugeSystem', cableDefaults.gaugeSystem)
}

function sizesOf(request: CableChoiceRequest, law: ConductorLaw, assumed: Assumptions): readonly CableSize[] {
  const system = seriesOf(request, assumed)
  const { awgSizes, saeSizes, metricSizes, metricAluminiumSizes, sizes } = cableDefaults
  const metric = law.material === 'aluminium' ? metricAluminiumSizes : metricSizes
  const usual = { awg: awgSizes, sae: saeSizes, mm2: metric }[system ?? 'awg'].value
  const texts = request.sizes ?? assumed.work(undefined, 'sizes', usual.join(', '), sizes).split(', ')
  const read = (text: string, index: number) =>
    cableSize(text, request.gaugeSystem ?? (namesItsSeries(text) ? undefined : system), `sizes[${index}]`)
  return texts.map(read).toSorted((a, b) => a.areaM2 - b.areaM2)
}

function returnLength(path: ReturnPath, assumed: Assumptions): number {
  if (path.kind === 'cable') return path.lengthM
  return assumed.take(path.leadLengthM, 'return.leadLengthM', supplyDefaults.groundLeadM)
}

/** @throws DesignError `missing-input`, `conflicting-input`, `unknown-designation`, `out-of-range` */
export function cableTask(request: CableChoiceRequest, assumed: Assumptions): CableTask {
  const { powerW, amperes } = loadOf(request)
  const { dropTemperatureC, sourceVoltageV } = cableDefaults
  const sourceV = assumed.work(request.sourceVoltageV, 'sourceVoltageV', request.systemVoltageV, sourceVoltageV)
  const constantPower = request.loadModel === 'constant-power'
  const dropLimitV = dropLimit(request, assumed)
  if (dropLimitV >= (constantPower ? sourceV / 2 : sourceV)) {
    throw new DesignError('out-of-range', {
      field: request.dropLimitV === undefined ? 'dropLimitPercent' : 'dropLimitV',
      value: request.dropLimitV ?? request.dropLimitPercent ?? dropLimitV,
      detail: say('refused.a-drop-limit-of-v-reaches', {
        dropLimitV,
        share: constantPower ? 'half' : 'whole',
        sourceV
      })
    })
  }
  const law = conductorLaw(request, assumed)
  const around = surroundings(request, assumed, '')
  return {
    loadPowerW: powerW,
    currentA: constantPower ? powerW / (sourceV - dropLimitV) : amperes,
    constantPower,
    sourceV,
    conductorLengthM: request.positiveLengthM + returnLength(request.return, assumed),
    contactOhm: request.contactOhm ?? 0,
    dropLimitV,
    temperatureC: assumed.take(request.conductorTemperatureC, 'conductorTemperatureC', dropTemperatureC),
    checks: request.checks ?? cableLimits,
    sizes: sizesOf(request, law, assumed),
    law,
    surroundings: around,
    insulationMaterial: insulationMaterialOf(request.insulationMaterial, around.insulationC, assumed)
  }
}
