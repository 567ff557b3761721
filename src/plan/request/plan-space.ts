/** The room for the box as it will be used: covered, and leaning where the seat leans. */
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import type { Assumptions } from '../../domain/assume.ts'
import { COVERING_M, type Finish } from './plan-finish.ts'

type Space = PlanRequest['car']['space']

/** From this lean on a box with upright faces wastes more of the boot than a wedge costs in sawing. Ours. */
const WEDGE_FROM_DEG = 10

export function resolvedSpace({ space }: PlanRequest['car'], { covered }: Finish, assumed: Assumptions): Space {
  const { seatSlopeDeg = 0 } = space
  const shape = assumed.or(
    space.shape,
    'car.space.shape',
    seatSlopeDeg >= WEDGE_FROM_DEG ? 'wedge' : 'rectangular',
    seatSlopeDeg >= WEDGE_FROM_DEG ? 'a wedge fills the room under a leaning seat back' : 'the simplest to saw'
  )
  return { ...space, shape, ...(covered && space.coveringM === undefined ? { coveringM: COVERING_M } : {}) }
}
