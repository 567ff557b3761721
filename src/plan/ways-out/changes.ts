/** What can give way inside the space that there is: the wish, the face of the drivers, their number. */
import type { Said } from '../../contract/sentences/form/template.ts'
import { present } from '../../domain/present.ts'
import { say } from '../../domain/say.ts'
import { leafletBox } from '../request/plan-leaflet.ts'
import type { Change } from './way-out.ts'

const isOnFront = ({ request: { driver } }: Change) => (driver.mounting?.face ?? 'front') === 'front'

const after = ({ texts }: Change, next: Said) => [...texts, next]

/** Whatever was asked of the box, left open. */
export function opened(from: Change): readonly Change[] {
  const { enclosure, ...open } = from.request
  if (enclosure === undefined || Object.keys(enclosure).length === 0) return []
  const texts = after(from, say('way-out.open'))
  return [{ ...from, texts, request: open, patch: { ...from.patch, enclosure: null } }]
}

/** Bare wood is thinner by a cover on each side, which is often all that is missing. */
export function uncovered(from: Change): readonly Change[] {
  const { finish, car } = from.request
  const given = car.space.coveringM
  if (given === 0 || (given === undefined && finish?.covered === false)) return []
  const thin = present({ coveringM: given && 0 })
  const bare = { finish: { covered: false }, ...present({ car: given === undefined ? undefined : { space: thin } }) }
  const request = {
    ...from.request,
    finish: { ...finish, covered: false },
    car: { ...car, space: { ...car.space, ...thin } }
  }
  return [{ ...from, texts: after(from, say('way-out.uncovered')), request, patch: { ...from.patch, ...bare } }]
}

/** Drivers where most room is; the closed question knows no other place for them. */
export function frontwards(from: Change): readonly Change[] {
  if (isOnFront(from)) return []
  const { driver, ...request } = from.request
  const { face: _, ...mounting } = driver.mounting ?? {}
  const patch = { ...from.patch, driver: { mounting: { face: null } } }
  const texts = after(from, say('way-out.front'))
  return [{ ...from, texts, request: { ...request, driver: { ...driver, mounting } }, patch }]
}

/** Onto the top, where a room is too low to stand drivers up: under a seat, over a wheel well. */
export function upwards(from: Change): readonly Change[] {
  if (!isOnFront(from)) return []
  const { driver } = from.request
  const patch = { ...from.patch, driver: { mounting: { face: 'top' as const } } }
  const request = { ...from.request, driver: { ...driver, mounting: { ...driver.mounting, face: 'top' as const } } }
  return [{ ...from, texts: after(from, say('way-out.top')), request, patch }]
}

/** A box that a leaflet gives is for the drivers that it is given for. */
export function fewer(from: Change): readonly Change[] {
  if (leafletBox(from.request) !== undefined) return []
  const driverCount = from.request.driverCount - 1
  if (driverCount < 1) return []
  const texts = after(from, say('way-out.driver-count', { driverCount }))
  return [{ ...from, texts, request: { ...from.request, driverCount }, patch: { ...from.patch, driverCount } }]
}
