/** What can give way inside the space that there is: the wish, the face of the drivers, their number. */
import type { Change } from './way-out.ts'

const isOnFront = ({ request: { driver } }: Change) => (driver.mounting?.face ?? 'front') === 'front'

const after = ({ text }: Change, next: string) => (text === '' ? next : `${text} ${next}`)

/** Whatever was asked of the box, left open. */
export function opened(from: Change): readonly Change[] {
  const { enclosure, ...open } = from.request
  if (enclosure === undefined || Object.keys(enclosure).length === 0) return []
  const text = after(from, 'Leave open what the box shall be.')
  return [{ text, request: open, patch: { ...from.patch, enclosure: null } }]
}

/** Drivers where most room is; the closed question knows no other place for them. */
export function frontwards(from: Change): readonly Change[] {
  if (isOnFront(from)) return []
  const { driver, ...request } = from.request
  const { face: _, ...mounting } = driver.mounting ?? {}
  const patch = { ...from.patch, driver: { mounting: { face: null } } }
  const text = after(from, 'Set the drivers into the front.')
  return [{ text, request: { ...request, driver: { ...driver, mounting } }, patch }]
}

export function fewer(from: Change): readonly Change[] {
  const driverCount = from.request.driverCount - 1
  if (driverCount < 1) return []
  const text = after(from, driverCount === 1 ? 'Take one driver.' : `Take ${driverCount} drivers.`)
  return [{ text, request: { ...from.request, driverCount }, patch: { ...from.patch, driverCount } }]
}
