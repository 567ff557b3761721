/** What a box weighs and where its centre of gravity lies. */
import type { Panel, Point3 } from '../../../contract/boxes/panel.ts'
import { centroid } from '../../../numeric/geometry/polygon.ts'
import type { BoxTask } from '../request/box-task.ts'
import { moved, onFace } from '../shell/face.ts'
import type { Direction3 } from '../shell/panel.ts'
import type { BuiltBox } from './build-box.ts'

interface BoxMass {
  readonly massKg: number
  readonly boardMassKg: number
  readonly centreOfGravity: Point3
}

interface Lump {
  readonly massKg: number
  readonly at: Point3
}

/** Share of the mounting depth behind the baffle at which a driver balances: its motor is most of it. */
const DRIVER_BALANCE_SHARE = 0.7

function inwardsOf({ uAxis: u, vAxis: v }: NonNullable<Panel['place']>): Direction3 {
  return { x: -(u.y * v.z - u.z * v.y), y: -(u.z * v.x - u.x * v.z), z: -(u.x * v.y - u.y * v.x) }
}

function panelLump({ outline, place, thicknessM, massKg }: Panel): readonly Lump[] {
  if (place === undefined) return []
  const { x, y } = centroid(outline.map(({ uM, vM }) => ({ x: uM, y: vM })))
  return [{ massKg, at: moved(onFace(place, { uM: x, vM: y }), inwardsOf(place), thicknessM / 2) }]
}

/** Sum of the boards and of what has a given mass; the centre is their mean weighted by mass. */
export function boxMass(panels: readonly Panel[], { mounted }: BuiltBox, { request }: BoxTask): BoxMass {
  const boards = panels.flatMap(panelLump)
  const drivers = mounted.flatMap((each): readonly Lump[] => {
    if (each.kind !== 'driver' || each.driver.massKg === undefined) return []
    const depth = (each.driver.mountingDepthM ?? 0) * DRIVER_BALANCE_SHARE
    const sign = each.driver.mount === 'reversed' ? -1 : 1
    return [{ massKg: each.driver.massKg, at: moved(each.at, each.face.inwards, sign * depth) }]
  })
  const placed = [...boards, ...drivers]
  const placedKg = placed.reduce((sum, { massKg }) => sum + massKg, 0)
  const mean = (axis: keyof Point3) =>
    placed.reduce((sum, { massKg, at }) => sum + massKg * at[axis], 0) / Math.max(placedKg, Number.MIN_VALUE)
  const loose = (request.drivers ?? [])
    .filter(({ cutOutDiameterM }) => cutOutDiameterM === undefined)
    .reduce((sum, { massKg = 0, count = 1 }) => sum + massKg * count, 0)
  return {
    massKg: placedKg + loose + (request.fittings?.amplifier?.massKg ?? 0),
    boardMassKg: panels.reduce((sum, { massKg, quantity }) => sum + massKg * quantity, 0),
    centreOfGravity: { xM: mean('xM'), yM: mean('yM'), zM: mean('zM') }
  }
}
