/** Ports of a clear area: what the search asks for and the plan builds, by the same rule. */
import { slotEndM } from '../../../domain/port/end-correction.ts'
import { portSizingDefaults } from '../../../domain/port/sizing/defaults.ts'
import { roomDefaults } from './defaults.ts'

interface TubesOfArea {
  readonly count: number
  readonly diameterM: number
}

export interface SlotOfArea {
  readonly heightM: number
  readonly widthM: number
}

/** One pipe of the usual widths, or two where none is wide enough; none beyond that. */
export function tubesOfArea(areaM2: number): TubesOfArea | undefined {
  for (let count = 1; count <= roomDefaults.mostTubes.value; count++) {
    const diameterM = portSizingDefaults.roundDiametersM.value.find(
      each => (count * Math.PI * each ** 2) / 4 >= areaM2 * roomDefaults.sameArea.value
    )
    if (diameterM !== undefined) return { count, diameterM }
  }
  return undefined
}

const millimetres = (lengthM: number) => Math.round(lengthM * 1000) / 1000

/** A slot closed by a cheek, as wide as {@link portSizingDefaults.cheekedSlot} times its height, no lower than a slot should be. */
export function slotOfArea(areaM2: number): SlotOfArea {
  const { lowestSlotM, cheekedSlot, slotStepM } = portSizingDefaults
  const steps = Math.ceil(Math.sqrt(areaM2 / cheekedSlot.value) / slotStepM.value - 1e-9)
  const heightM = Math.max(lowestSlotM.value, millimetres(steps * slotStepM.value))
  return { heightM, widthM: millimetres(areaM2 / heightM) }
}

/** Both ends of such a slot, its inner mouth along a wall [m]. */
export const slotEndsM = (size: SlotOfArea): number =>
  slotEndM({ ...size, situation: 'flanged', alongWall: false }) +
  slotEndM({ ...size, situation: 'free', alongWall: true })
