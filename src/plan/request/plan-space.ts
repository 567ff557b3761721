/** The room for the box as it will be used: covered, and leaning where the seat leans. */
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import type { Assumptions } from '../../domain/assume.ts'
import type { Rule } from '../../domain/default.ts'
import { present } from '../../domain/present.ts'
import { planDefaults } from './defaults.ts'
import type { Finish } from './plan-finish.ts'

type Space = PlanRequest['car']['space']

type Shape = NonNullable<Space['shape']>

function usualShape({
  seatSlopeDeg = 0,
  acrossSlopeDeg,
  lidSlopeDeg,
  footprint,
  diameterM
}: Space): readonly [Shape, Rule] {
  const { roundShape, prismShape, slopingShape, wedgeFromDeg, wedgeShape, plainShape } = planDefaults
  if (diameterM !== undefined) return ['round', roundShape]
  if (footprint !== undefined) return ['prism', prismShape]
  if (acrossSlopeDeg !== undefined || lidSlopeDeg !== undefined) return ['wedge', slopingShape]
  return seatSlopeDeg >= wedgeFromDeg.value ? ['wedge', wedgeShape] : ['rectangular', plainShape]
}

export function resolvedSpace({ space }: PlanRequest['car'], { covered }: Finish, assumed: Assumptions): Space {
  const shape = assumed.work(space.shape, 'car.space.shape', ...usualShape(space))
  const coveringM = space.coveringM ?? (covered ? planDefaults.coveringM.value : undefined)
  return { ...space, shape, ...present({ coveringM }) }
}

type Faces = Pick<PlanRequest, 'driver' | 'car'>

/** Face of the drivers: a stave of a round well is narrower than any driver. */
export const driverFace = ({ driver, car }: Faces) =>
  driver.mounting?.face ?? (car.space.shape === 'round' ? planDefaults.faceOfStaves.value : 'front')

/** Drivers of a round well, each with the face that nobody named. */
export function resolvedDriver({ driver, car }: Faces, assumed: Assumptions): PlanRequest['driver'] {
  if (car.space.shape !== 'round' || driver.mounting === undefined) return driver
  const face = assumed.take(driver.mounting.face, 'driver.mounting.face', planDefaults.faceOfStaves)
  return { ...driver, mounting: { ...driver.mounting, face } }
}
