/** Whether anything of a network reaches the listener. */
import { DesignError } from '../../design-error.ts'
import { type Branch, type DriverGroup, OUTSIDE, type Place } from '../../network/network.ts'
import { say } from '../../say.ts'

const isChamber = (place: Place) => place >= 0

/** Chambers that a cone moves, directly or through what joins them; nothing passes a place of constant pressure. */
function drivenChambers(drivers: readonly DriverGroup[], branches: readonly Branch[]): ReadonlySet<Place> {
  const driven = new Set(drivers.flatMap(({ front, rear }) => [front, rear]).filter(isChamber))
  for (let known = -1; known < driven.size; ) {
    known = driven.size
    for (const { from, to } of branches) {
      if (driven.has(from) && isChamber(to)) driven.add(to)
      if (driven.has(to) && isChamber(from)) driven.add(from)
    }
  }
  return driven
}

/** @throws DesignError `conflicting-input` where both faces of a cone look at one place, or no way leads outside */
export function requireRadiating(drivers: readonly DriverGroup[], branches: readonly Branch[]): void {
  const idle = drivers.findIndex(({ front, rear }) => front === rear)
  if (idle >= 0) {
    const detail = say('refused.both-faces-of-the-cone-look')
    throw new DesignError('conflicting-input', { field: `enclosure.driverGroups[${idle}].rear`, detail })
  }
  const driven = drivenChambers(drivers, branches)
  const leads = ({ from, to }: Branch) => (from === OUTSIDE && driven.has(to)) || (to === OUTSIDE && driven.has(from))
  if (drivers.some(({ front, rear }) => front === OUTSIDE || rear === OUTSIDE) || branches.some(leads)) return
  const detail = say('refused.nothing-that-these-cones-move-leads')
  throw new DesignError('conflicting-input', { field: 'enclosure.driverGroups', detail })
}
