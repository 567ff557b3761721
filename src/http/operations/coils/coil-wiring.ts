/** POST /v1/coils/wiring */
import type { Static } from 'typebox'
import {
  CoilWiringRequest,
  CoilWiringResult,
  type CoilWiringRequest as Wiring
} from '../../../contract/coils/coil-wiring.ts'
import type { LanguageCode } from '../../../contract/sentences/words.ts'
import { wiringDiagram } from '../../../documents/wiring/wiring-diagram.ts'
import { ohmNumber } from '../../../domain/coils/coil-loads.ts'
import { chosenNetwork, wireCoils as compute } from '../../../domain/coils/wire-coils.ts'
import { DesignError } from '../../../domain/design-error.ts'
import { languages } from '../../../domain/languages.ts'
import { say, spoken } from '../../../domain/say.ts'
import { defineOperation } from '../../wire/operation.ts'
import { coilLaws } from './coil-laws.ts'

function drawing(request: Wiring, code: LanguageCode = 'en'): string {
  const chosen = chosenNetwork(request)
  if (chosen === undefined) {
    throw new DesignError('no-solution', {
      field: 'minimumOhm',
      detail: say('refused.nothing-to-draw')
    })
  }
  const { driverCount, coilsPerDriver } = request
  return wiringDiagram({
    language: languages[code],
    network: chosen.network,
    driverCount,
    coilsPerDriver,
    loadOhm: ohmNumber(chosen),
    join: spoken(chosen.join, languages[code])
  })
}

/** Networks of unlike coils are gone through one by one: a table by their count. */
const unlikeCoilsMs = [0.1, 0.1, 0.1, 0.2, 0.9, 4.2, 55] as const

function coilCostMs({ coilsOhm, driverCount, coilsPerDriver }: Static<typeof CoilWiringRequest>): number {
  if (coilsOhm === undefined || new Set(coilsOhm).size < 2) return 0.05 + 0.04 * driverCount * coilsPerDriver
  return unlikeCoilsMs[coilsOhm.length] ?? 0.1
}

export const wireCoils = defineOperation({
  path: '/v1/coils/wiring',
  operationId: 'wireCoils',
  tag: 'Coils and amplifier',
  summary: 'Loads that drivers and coils can present, and how to join them',
  description:
    'Every balanced way of joining coils and, for up to six coils, every series-parallel way, with the load the amplifier sees, the share of each coil, the limit of the amplifier, and the wiring of the chosen load terminal by terminal.',
  body: CoilWiringRequest,
  result: CoilWiringResult,
  costMs: coilCostMs,
  laws: coilLaws,
  compute,
  forms: [
    {
      mediaType: 'image/svg+xml',
      description: 'The chosen wiring as a drawing of terminals, links and joints',
      render: (_, request, { language }) => drawing(request, language)
    }
  ],
  examples: {
    twoDrivers: {
      summary: 'Two single-coil drivers on an amplifier for 2 Ω and more',
      request: { driverCount: 2, coilsPerDriver: 1, coilOhm: 4, totalPowerW: 800, minimumOhm: 2, targetOhm: 2 }
    },
    dualCoils: {
      summary: 'Two drivers with two 2 Ω coils each, on a bridged pair whose channels take 1 Ω',
      request: {
        driverCount: 2,
        coilsPerDriver: 2,
        coilOhm: 2,
        channelMinimumOhm: 1,
        coilReOhm: 1.7,
        totalPowerW: 1000,
        cable: { lengthM: 3 }
      }
    },
    unlikeCoils: {
      summary: 'A 4 Ω and a 2 Ω coil',
      request: { driverCount: 2, coilsPerDriver: 1, coilsOhm: [4, 2], totalPowerW: 300 }
    }
  }
})
