/** POST /v1/supply/fuses */
import { FuseRequest, FuseResult } from '../../../contract/supply/supply-fuses.ts'
import { rateFuse as compute } from '../../../domain/circuit/fuse/rate-fuse.ts'
import { defineOperation } from '../../wire/operation.ts'
import { fuseLaws } from './feeder-laws.ts'

export const supplyFuses = defineOperation({
  path: '/v1/supply/fuses',
  operationId: 'rateFuse',
  tag: 'Supply',
  summary: 'Fuse rating, family and place for a cable',
  description:
    'The next standard rating above the load that the cable still carries, of a family that breaks the fault at this voltage; its place, operating times and selectivity. Refused where no rating lies between load and cable, with the size that would do.',
  body: FuseRequest,
  result: FuseResult,
  costMs: () => 0.05,
  laws: fuseLaws,
  compute,
  examples: {
    mainFuse: {
      summary: '63 A through 4 AWG, 105 °C insulation, 50 °C surroundings',
      request: {
        currentA: 63,
        cable: { designation: '4 AWG', insulationC: 105, ambientC: 50 },
        systemVoltageV: 12,
        distanceMm: 300,
        overcurrentA: 100
      }
    },
    mainOverBranches: {
      summary: 'Main fuse of a trunk to two branches, the maker of one amplifier asking for more',
      request: {
        currentA: 133.99,
        cable: { designation: '1/0 AWG', conductor: 'copper', insulationC: 105, ambientC: 50 },
        systemVoltageV: 12,
        branchFusesA: [80, 60],
        makerFuseA: 250,
        source: { coldCrankingA: 680 }
      }
    }
  }
})
