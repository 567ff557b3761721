/** A leaflet that says what box to build and not what the driver is: volume and tuning, but no small-signal set. */
import type { DriverSheet } from '../../contract/drivers/driver-parameters.ts'
import type { PlanEnclosure } from '../../contract/systems/plan-enclosure.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import { type Caution, caution } from '../../domain/caution.ts'
import { DesignError } from '../../domain/design-error.ts'
import { inLitres, toDigits } from '../../domain/digits.ts'
import { completeDriverParameters } from '../../domain/driver/complete-driver-parameters.ts'
import { present } from '../../domain/present.ts'
import { say } from '../../domain/say.ts'

type Told = Pick<PlanRequest, 'driver' | 'enclosure' | 'air'>

/** The box as a leaflet gives it. */
export type GivenBox =
  | { readonly kind: 'closed'; readonly netVolumeM3: number }
  | { readonly kind: 'vented'; readonly netVolumeM3: number; readonly tuningHz: number }

function givenBox({ kind, netVolumeM3, tuningHz }: PlanEnclosure = {}): GivenBox | undefined {
  if (netVolumeM3 === undefined) return undefined
  if (kind === 'passive-radiator' || kind === 'band-pass-4') return undefined
  if (tuningHz !== undefined) return { kind: 'vented', netVolumeM3, tuningHz }
  return kind === 'closed' ? { kind, netVolumeM3 } : undefined
}

/** Whether figures are lacking that no rating stands in for; a sheet that contradicts itself says enough. */
function lacksSet({ sheet, coils }: PlanRequest['driver'], air: PlanRequest['air']): boolean {
  const rated: DriverSheet = { ratedImpedanceOhm: coils.ratedOhm, ...sheet }
  try {
    completeDriverParameters({ driver: rated, ...present({ air }) })
    return false
  } catch (error) {
    if (error instanceof DesignError) return error.code === 'missing-input'
    throw error
  }
}

/** @returns the box to build by the leaflet; none where the box is not given, or the sheet tells what the driver is */
export function leafletBox({ driver, enclosure, air }: Told): GivenBox | undefined {
  const box = givenBox(enclosure)
  return box !== undefined && lacksSet(driver, air) ? box : undefined
}

/** What cannot be said, before anything else. */
export function leafletCautions(box: GivenBox | undefined): readonly Caution[] {
  if (box === undefined) return []
  const volume = inLitres(box.netVolumeM3)
  const told =
    box.kind === 'closed'
      ? say('leaflet-box.closed', { volume })
      : say('leaflet-box.vented', { volume, tuningHz: toDigits(box.tuningHz) })
  const port = box.kind === 'closed' ? [] : say('leaflet-box.port')
  return [caution('leaflet-box', say('leaflet-box', { box: told, port }), { at: 'driver.sheet' })]
}
