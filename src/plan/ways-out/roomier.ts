/** The least by which sides of the space must grow, asked of the closed question and then planned. */
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import { toDigits } from '../../domain/digits.ts'
import { listed, say } from '../../domain/say.ts'
import { wayOutDefaults } from './defaults.ts'
import { standsIn } from './stands-in.ts'
import { type Change, wayOut } from './way-out.ts'

const grows = { heightM: 'way-out.room-height', depthM: 'way-out.room-depth', widthM: 'way-out.room-width' } as const
type Side = keyof typeof grows
export const sides = ['heightM', 'depthM', 'widthM'] as const satisfies readonly Side[]

type Sizes = Partial<Record<Side, number>>

function grownSizes({ car }: PlanRequest, along: readonly Side[], steps: number): Sizes {
  const larger = (side: Side) =>
    Math.round(((car.space[side] ?? 0) + steps * wayOutDefaults.roomStepM.value) * 1e4) / 1e4
  return Object.fromEntries(along.map(side => [side, larger(side)]))
}

const grown = (request: PlanRequest, sizes: Sizes): PlanRequest => ({
  ...request,
  car: { ...request.car, space: { ...request.car.space, ...sizes } }
})

/** The closed question knows drivers in the front only. */
function canGrow({ car: { space }, driver }: PlanRequest, along: readonly Side[]): boolean {
  return along.every(side => space[side] !== undefined) && (driver.mounting?.face ?? 'front') === 'front'
}

export function roomier({ texts, request, patch, run }: Change, along: readonly Side[]): ReturnType<typeof wayOut> {
  const stands = (steps: number) => standsIn(grown(request, grownSizes(request, along, steps)))
  if (!canGrow(request, along) || !stands(wayOutDefaults.mostRoomSteps.value)) return []
  let [low, high]: [number, number] = [0, wayOutDefaults.mostRoomSteps.value]
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if (stands(middle)) high = middle
    else low = middle
  }
  for (const further of wayOutDefaults.furtherSteps.value) {
    const steps = high + further
    const space = grownSizes(request, along, steps)
    const by = along.map(side => say(grows[side], { byMm: toDigits(steps * wayOutDefaults.roomStepM.value * 1e3) }))
    const larger = say('way-out.room', { by: listed(by, 'list.and') })
    const change = { texts: [...texts, larger], request: grown(request, space), run }
    const found = wayOut({ ...change, patch: { ...patch, car: { space } } })
    if (found.length > 0) return found
  }
  return []
}
