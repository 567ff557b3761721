/** What always holds for a port. */
import type { Static } from 'typebox'
import type { PortSizingRequest, PortSizingResultBody } from '../../../contract/ports/port-sizing.ts'
import { firstBroken, isAtMost, isNear, type Law } from '../../wire/law.ts'

export const portLaws: readonly Law<Static<typeof PortSizingRequest>, Static<typeof PortSizingResultBody>>[] = [
  {
    id: 'areas-of-ports-add-up',
    sentence: 'The total area is that of one port times their number.',
    broken: ({ result: { candidates } }) =>
      firstBroken(candidates, ({ name, areaCm2, count, totalAreaCm2 }) =>
        isNear(areaCm2 * count, totalAreaCm2) ? undefined : `${name}: ${count} × ${areaCm2} is not ${totalAreaCm2} cm²`
      )
  },
  {
    id: 'looser-air-speed-never-costs',
    sentence: 'A higher limit of the air speed never asks for more area.',
    varied: ({ request }, chance) =>
      request.airSpeedLimitMPerS === undefined
        ? undefined
        : { ...request, airSpeedLimitMPerS: Math.min(100, request.airSpeedLimitMPerS * (1 + chance())) },
    broken: ({ result: { demand: before } }, { result: { demand: after } }) =>
      before === undefined || after === undefined || isAtMost(after.areaCm2, before.areaCm2)
        ? undefined
        : `${before.areaCm2} cm², with the higher limit ${after.areaCm2} cm²`
  },
  {
    id: 'recommended-is-a-candidate',
    sentence: 'The recommended port is one of the candidates.',
    broken: ({ result: { recommended, candidates } }) =>
      candidates.some(({ name, lengthMm }) => name === recommended.name && lengthMm === recommended.lengthMm)
        ? undefined
        : `${recommended.name} of ${recommended.lengthMm} mm is not among them`
  }
]
