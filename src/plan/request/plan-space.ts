/** The room for the box as it will be used: covered, and leaning where the seat leans. */
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import type { Assumptions } from '../../domain/assume.ts'
import { COVERING_M, type Finish } from './plan-finish.ts'

type Space = PlanRequest['car']['space']

/** From this lean on a box with upright faces wastes more of the boot than a wedge costs in sawing. Ours. */
const WEDGE_FROM_DEG = 10

type Shape = NonNullable<Space['shape']>

function usualShape({
  seatSlopeDeg = 0,
  acrossSlopeDeg,
  lidSlopeDeg,
  footprint,
  diameterM
}: Space): readonly [Shape, string] {
  if (diameterM !== undefined) return ['round', 'the room is a round well']
  if (footprint !== undefined) return ['prism', 'the room has a footprint of its own']
  if (acrossSlopeDeg !== undefined || lidSlopeDeg !== undefined) return ['wedge', 'the room slopes']
  return seatSlopeDeg >= WEDGE_FROM_DEG
    ? ['wedge', 'a wedge fills the room under a leaning seat back']
    : ['rectangular', 'the simplest to saw']
}

export function resolvedSpace({ space }: PlanRequest['car'], { covered }: Finish, assumed: Assumptions): Space {
  const shape = assumed.or(space.shape, 'car.space.shape', ...usualShape(space))
  return { ...space, shape, ...(covered && space.coveringM === undefined ? { coveringM: COVERING_M } : {}) }
}

type Faces = Pick<PlanRequest, 'driver' | 'car'>

/** Face of the drivers: a stave of a round well is narrower than any driver. */
export const driverFace = ({ driver, car }: Faces) =>
  driver.mounting?.face ?? (car.space.shape === 'round' ? 'top' : 'front')

/** Drivers of a round well, each with the face that nobody named. */
export function resolvedDriver({ driver, car }: Faces, assumed: Assumptions): PlanRequest['driver'] {
  if (car.space.shape !== 'round' || driver.mounting === undefined) return driver
  const face = assumed.or(
    driver.mounting.face,
    'driver.mounting.face',
    'top',
    'a stave of a round box is narrower than a driver'
  )
  return { ...driver, mounting: { ...driver.mounting, face } }
}
