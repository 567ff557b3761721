/** What a response costs in processor time; fitted to measurement, see scripts/bench/cost.ts. */
import type { Static } from 'typebox'
import type { EnclosureResponseRequest } from '../../../contract/enclosures/enclosure-response.ts'

type Request = Static<typeof EnclosureResponseRequest>

const USUAL_POINTS = 200

const partsByKind = {
  'infinite-baffle': 0,
  closed: 1,
  vented: 2,
  'passive-radiator': 2,
  'band-pass-4': 3,
  'band-pass-6-parallel': 4,
  'band-pass-6-series': 4
} as const

/** Chambers and what lies between them: unknowns of the network at each frequency. */
function partsOf({ enclosure }: Request): number {
  if (enclosure.kind !== 'custom') return partsByKind[enclosure.kind]
  const { chambers = [], ports = [], passiveRadiators = [], leaks = [] } = enclosure
  return chambers.length + ports.length + passiveRadiators.length + leaks.length
}

function pointsOf({ frequenciesHz }: Request): number {
  if (frequenciesHz === undefined) return USUAL_POINTS
  return Array.isArray(frequenciesHz) ? frequenciesHz.length : frequenciesHz.points
}

/** @source common practice, no source: a fit by eye to this service's own times on a busy machine, within a factor of two of all that was measured */
export function responseCostMs(request: Request): number {
  const points = pointsOf(request)
  const size = partsOf(request) ** 1.5
  const linear = 0.3 + 0.001 * points + size * (0.04 + 0.00016 * points)
  const openings = Math.floor(partsOf(request) / 2)
  const limits = request.limits === undefined ? 0 : 0.8 + 1.2 * linear + 0.005 * openings * points
  const time = request.timeResponse === undefined ? 0 : 0.3 + 0.01 * size
  return linear + limits + time
}
