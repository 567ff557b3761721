/** How a driver is held to its board: one rule for the holes that are drawn and the screws that are bought. */

export interface DriverFixing {
  readonly kind: 'wood-screw' | 'machine-screw'
  /** The sentence by which drawings and bill name it. */
  readonly screw: 'part.screw.wood' | 'part.screw.machine'
  /** Pilot of a wood screw; of a machine screw the pilot that is opened to the barrel of its T-nut [m]. */
  readonly pilotM: number
}

/** Holes in the flange of a driver whose sheet does not count them. */
export const USUAL_SCREW_COUNT = 8

/** A driver heavier than this [kg] hangs on machine screws: wood screws work loose in board. */
export const HEAVY_DRIVER_KG = 5

const woodScrew: DriverFixing = { kind: 'wood-screw', screw: 'part.screw.wood', pilotM: 3e-3 }
const machineScrew: DriverFixing = { kind: 'machine-screw', screw: 'part.screw.machine', pilotM: 3e-3 }

/** @param massKg  a driver of unknown mass counts as light */
export const driverFixing = (massKg = 0): DriverFixing => (massKg > HEAVY_DRIVER_KG ? machineScrew : woodScrew)
