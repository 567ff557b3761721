/** The supply of an invented car as the electric rooms of a plan read it: 12 V, 5 m of cable, a lead of half a metre to the body. */
import type { SupplyBrief } from '../../src/plan/request/supply-brief.ts'

const base = {
  supply: { systemVoltageV: 12, positiveLengthM: 5, return: { kind: 'chassis', leadLengthM: 0.5 } },
  bass: { onboardFusesA: [40, 40] },
  amplifierV: 12,
  dropAllowedV: 0.36,
  onTheWay: {},
  inTheBoot: {},
  branchM: 1,
  branchReturnM: 0.5,
  returnBy: 'body',
  starter: {},
  second: {}
}
/** @param supply  what a caller says otherwise of the supply; @param more  what follows from it */
export const brief = (supply: object = {}, more: object = {}) =>
  ({ ...base, ...more, supply: { ...base.supply, ...supply } }) as unknown as SupplyBrief
