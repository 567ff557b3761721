/** What the rooms of the box work from: their part of the request, and once each what several of them need of it. */
import type { AirRequest } from '../../contract/acoustics/air.ts'
import type { BoxDriver } from '../../contract/boxes/box-hardware.ts'
import type { FaceName, shellFaces } from '../../contract/boxes/words.ts'
import type { DriverSheet } from '../../contract/drivers/driver-parameters.ts'
import type { PlanEnclosure } from '../../contract/systems/plan-enclosure.ts'
import type { PlanRadiators } from '../../contract/systems/plan-radiators.ts'
import type { PlanCar, PlanRequest } from '../../contract/systems/plan-request.ts'
import { portShapes } from '../../contract/systems/words.ts'
import { airOf } from '../../domain/air/air.ts'
import { assumptions } from '../../domain/assume.ts'
import { type RadiatorUnit, radiatorUnit } from '../../domain/enclosure/alignment/radiator-sheet.ts'
import { present } from '../../domain/present.ts'
import { planDefaults } from './defaults.ts'
import type { RunPart } from './part.ts'
import { sawStep } from './plan-imperial.ts'
import { type GivenBox, leafletBox } from './plan-leaflet.ts'
import { driverFace } from './plan-space.ts'
import type { ResolvedPlan } from './resolved-plan.ts'

type Face = (typeof shellFaces)[number]
type PortShape = (typeof portShapes)[number]

/** What hangs on the box that was asked for. */
interface AskedBox {
  /** What the caller fixed of the box, or wishes of it. */
  readonly enclosure: PlanEnclosure
  /** Of the tubes: in a round well nothing else is left than the face of the drivers. */
  readonly portFace: Face
  /** What a port may be: a slot starts in the front and follows four walls. */
  readonly portShapes: readonly PortShape[]
  /** Peak speed of the air in the port up to which boxes are searched and levels held. */
  readonly airSpeedMPerS: number
}

/** Passive radiators that the box may have. */
export interface RadiatorsAtHand {
  readonly name?: string
  readonly unit: RadiatorUnit
  readonly mounting: PlanRadiators['mounting']
}

export interface BoxBrief extends AskedBox {
  /** Of the plan this box is part of. */
  readonly run: RunPart
  readonly space: PlanCar['space']
  readonly board: PlanRequest['board']
  readonly lined: boolean
  readonly driverFace: Face
  readonly drivers: BoxDriver & { readonly count: number }
  readonly radiators?: RadiatorsAtHand
  /** Of one driver. */
  readonly sheet: DriverSheet
  /** The box, where a leaflet gives it and nothing tells what the driver is. */
  readonly leaflet?: GivenBox
  readonly crossoverHz: number
  /** Of all outputs, as asked. */
  readonly gainPowerW?: number
  readonly cabin?: PlanCar['cabin']
  readonly air?: AirRequest
  /** Of one driver and of the amplifier, where they are given. */
  readonly prices: { readonly driver?: number; readonly amplifier?: number }
  /** How the boards are worked, where that is said: its saw cuts a width. */
  readonly workshop?: NonNullable<PlanRequest['workshop']>
  /** What the saw is set by; the millimetre where it is absent. */
  readonly sawStepM?: number
}

function askedBox(
  enclosure: PlanEnclosure,
  { space: { shape }, driverFace }: Pick<BoxBrief, 'space' | 'driverFace'>
): AskedBox {
  const usualFace = shape === 'round' ? driverFace : 'front'
  // across the chamber before the drivers a tube finds its length; from the front it ends at their cones
  const portFace = enclosure.portFace ?? (isDivided({ enclosure }) ? 'right' : usualFace)
  const onlyTubes = isDivided({ enclosure }) || portFace !== 'front' || shape === 'prism' || shape === 'round'
  const usualShapes = onlyTubes ? (['round'] as const) : portShapes
  return {
    enclosure,
    portFace,
    portShapes: enclosure.portShape === undefined ? usualShapes : [enclosure.portShape],
    airSpeedMPerS: enclosure.airSpeedMPerS ?? planDefaults.airSpeedMPerS.value
  }
}

/** The same brief for another box. */
export const withEnclosure = (brief: BoxBrief, enclosure: PlanEnclosure): BoxBrief => ({
  ...brief,
  ...askedBox(enclosure, brief)
})

/** A box of two chambers, its drivers on the board between them. */
export const isDivided = ({ enclosure }: Pick<BoxBrief, 'enclosure'>): boolean => enclosure.kind === 'band-pass-4'

function boxDrivers({ driver, driverCount }: ResolvedPlan, face: FaceName): BoxBrief['drivers'] {
  const { sdM2, xmaxM } = driver.sheet
  return {
    ...present({ label: driver.name?.slice(0, planDefaults.labelLetters.value) }),
    count: driverCount,
    ...driver.mounting,
    ...present({ face: face === 'front' ? undefined : face, sdM2, xmaxM })
  }
}

function radiatorsOf({ passiveRadiators, air }: ResolvedPlan): RadiatorsAtHand | undefined {
  if (passiveRadiators === undefined) return undefined
  const { name, sheet, mounting } = passiveRadiators
  const { stiffnessPa } = airOf(air, assumptions())
  return { ...present({ name }), unit: radiatorUnit(sheet, stiffnessPa), mounting }
}

export function boxBrief(resolved: ResolvedPlan): BoxBrief {
  const { enclosure = {}, car, board, finish, crossoverHz, signal, air, workshop, run } = resolved
  const { space, cabin } = car
  const face = driverFace(resolved)
  return {
    ...askedBox(enclosure, { space, driverFace: face }),
    run,
    space,
    board,
    lined: finish.lined,
    driverFace: face,
    drivers: boxDrivers(resolved, isDivided({ enclosure }) ? 'divider' : face),
    sheet: resolved.driver.sheet,
    crossoverHz,
    prices: present({ driver: resolved.driver.price, amplifier: resolved.amplifier.price }),
    ...present({
      radiators: radiatorsOf(resolved),
      leaflet: leafletBox(resolved),
      gainPowerW: signal.gainPowerW,
      cabin,
      air,
      workshop
    }),
    ...sawStep(resolved)
  }
}
