/** By how much a box and its port fail to fit, so that the nearest miss can be told from the others. */
import type { Fault } from '../../domain/design-error.ts'
import { enclosurePlanDefaults } from './defaults.ts'
import type { TriedBoxPart } from './parts/plan-box.ts'
import type { PortPart } from './parts/plan-port.ts'

interface Attempted {
  readonly port?: PortPart
  readonly box: TriedBoxPart
}

function faultShare({ value, minimum, maximum }: Fault): number {
  if (typeof value !== 'number' || value <= 0) return enclosurePlanDefaults.unmeasured.value
  if (maximum !== undefined) return maximum <= 0 ? enclosurePlanDefaults.unmeasured.value : value / maximum - 1
  return minimum === undefined ? enclosurePlanDefaults.unmeasured.value : minimum / value - 1
}

export function portMiss(port: PortPart | undefined): number {
  if (port === undefined) return 0
  if (!port.done) return enclosurePlanDefaults.unmeasured.value
  const { fits, recommended, demand } = port.outcome.result
  if (fits) return 0
  const { lengthM, airSpeedMPerS = 0, why } = recommended
  const roomM = port.request.space?.straightM ?? Number.POSITIVE_INFINITY
  const shares = [lengthM / roomM - 1, airSpeedMPerS / (demand?.limitMPerS ?? Number.POSITIVE_INFINITY) - 1]
  const worst = Math.max(...shares)
  return worst > 0 ? worst : why.length
}

/** Room that is lacking round the parts, over the smallest side of the box. */
export function boxMiss(box: TriedBoxPart): number {
  if (!box.done) return box.refusal.waiting ? 0 : Math.max(...box.refusal.faults.map(faultShare))
  const { clearances, outer } = box.outcome.result
  const least = Math.min(outer.widthM, outer.heightM, outer.depthM)
  const lacking = clearances.filter(({ passes }) => !passes).map(({ neededM, availableM }) => neededM - availableM)
  return lacking.reduce((sum, each) => sum + each, 0) / least
}

/** @returns share by which it misses; 0 where everything fits */
export const missOf = ({ port, box }: Attempted): number => Math.max(portMiss(port), boxMiss(box))
