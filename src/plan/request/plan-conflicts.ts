/** What a plan cannot use of what it is told is refused at its door, so that nothing is dropped. */
import type { Said } from '../../contract/sentences/form/template.ts'
import type { PlanEnclosure } from '../../contract/systems/plan-enclosure.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import { DesignError, type FoundFault } from '../../domain/design-error.ts'
import { toDigits, toMm } from '../../domain/digits.ts'
import { say } from '../../domain/say.ts'
import { planDefaults } from './defaults.ts'
import { contradictions } from './plan-amplifier.ts'
import { hasBranches } from './resolved-plan.ts'

const closedOnly = ['qtc'] as const
/** What only a box with a port can be asked for, and what only one with passive radiators; both are tuned. */
export const portOnly = ['portShape', 'portFace', 'portAreaM2', 'portFlareM', 'airSpeedMPerS'] as const
export const radiatorOnly = ['radiatorCount', 'radiatorFace'] as const
const openedOnly = ['tuningHz', 'frontVolumeM3', ...portOnly, ...radiatorOnly] as const

function given<Field extends keyof PlanEnclosure>(
  enclosure: PlanEnclosure,
  fields: readonly Field[]
): readonly Field[] {
  return fields.filter(field => enclosure[field] !== undefined)
}

function unusable(fields: readonly string[], detail: Said): readonly FoundFault[] {
  return fields.map(field => ({ field: `enclosure.${field}`, detail }))
}

/** A wish is searched for; what it cannot move, or what it rules out, contradicts it. */
function goalFaults(enclosure: PlanEnclosure): readonly FoundFault[] {
  if (enclosure.goal === undefined) return []
  const fixed = given(enclosure, ['netVolumeM3', 'frontVolumeM3', 'qtc'])
  if (fixed.length > 0) return unusable(['goal', ...fixed], say('refused.a-volume-or-qtc-that-is'))
  const isOpened = enclosure.kind !== undefined && enclosure.kind !== 'closed'
  const ported = [...given(enclosure, openedOnly), ...(isOpened ? ['kind'] : [])]
  return enclosure.goal === 'tight' && ported.length > 0
    ? unusable(['goal', ...ported], say('refused.a-tight-box-is-closed-leave'))
    : []
}

function enclosureFaults(enclosure: PlanEnclosure): readonly FoundFault[] {
  const [closed, opened] = [given(enclosure, closedOnly), given(enclosure, openedOnly)]
  const [ports, radiators] = [given(enclosure, portOnly), given(enclosure, radiatorOnly)]
  const { kind, radiatorCount, radiatorFace } = enclosure
  if (kind !== undefined && kind !== 'closed' && closed.length > 0) {
    return unusable(closed, say('refused.a-vented-box-has-no-qtc'))
  }
  if (kind === 'closed' && opened.length > 0) return unusable(opened, say('refused.a-closed-box-has-no-port.vented'))
  if (closed.length > 0 && opened.length > 0) {
    return unusable([...closed, ...opened], say('refused.qtc-belongs-to-a-closed-box'))
  }
  const idle = kind === 'passive-radiator' ? ports : kind === 'vented' || kind === 'band-pass-4' ? radiators : []
  const mixed = ports.length > 0 && radiators.length > 0 ? [...ports, ...radiators] : idle
  if (mixed.length > 0) return unusable(mixed, say('refused.a-box-has-a-port-or-radiators'))
  if (radiatorFace === 'sides' && radiatorCount !== undefined && radiatorCount % 2 === 1) {
    return unusable(['radiatorCount', 'radiatorFace'], say('refused.radiators-on-both-sides-come-in-pairs'))
  }
  return closed.length > 0 && enclosure.netVolumeM3 !== undefined
    ? unusable(['qtc', 'netVolumeM3'], say('refused.volume-and-qtc-of-a-closed'))
    : []
}

const isUpright = ({ acrossSlopeDeg = 0, lidSlopeDeg = 0 }: PlanRequest['car']['space']) =>
  acrossSlopeDeg === 0 && lidSlopeDeg === 0

/** Two chambers with tubes, between four walls. */
function dividedFaults({ enclosure = {}, driver, car }: PlanRequest): readonly FoundFault[] {
  const { kind, portShape, portFace } = enclosure
  if (kind !== 'band-pass-4') {
    return unusable(given(enclosure, ['frontVolumeM3']), say('refused.a-front-chamber-belongs-to-a-band-pass'))
  }
  const wrong = [...(portShape === 'slot' ? ['portShape'] : []), ...(portFace === 'back' ? ['portFace'] : [])]
  const face = driver.mounting?.face
  const between = say('refused.a-band-pass-has-its-drivers-between')
  const walls = say('refused.a-band-pass-has-four-walls')
  return [
    ...unusable(wrong, say('refused.a-band-pass-has-tubes')),
    ...(face === undefined || face === 'front' ? [] : [{ field: 'driver.mounting.face', detail: between }]),
    ...(isFourWalled(car.space) && isUpright(car.space) ? [] : unusable(['kind'], walls))
  ]
}

function supplyFaults({ supply }: PlanRequest): readonly FoundFault[] {
  const detail = say('refused.one-amplifier-on-one-battery-has')
  return supply.branchLengthM !== undefined && !hasBranches(supply) ? [{ field: 'supply.branchLengthM', detail }] : []
}

/** A battery behind a converter would need a charger of its own kind, which is not planned. */
function converterFaults({ supply: { converter, secondBattery } }: PlanRequest): readonly FoundFault[] {
  if (converter === undefined || secondBattery === undefined) return []
  const detail = say('refused.a-second-battery-behind-a-converter')
  return ['converter', 'secondBattery'].map(field => ({ field: `supply.${field}`, detail }))
}

/** Only the front carries a slot: it follows the walls of a box of four. */
function slotFaults({ enclosure: { portShape, portFace } = {}, car }: PlanRequest): readonly FoundFault[] {
  if (portShape !== 'slot') return []
  const isFreeForm = !isFourWalled(car.space)
  const faults = unusable(['portShape'], say('refused.a-slot-follows-four-walls'))
  return isFreeForm || (portFace !== undefined && portFace !== 'front') ? faults : []
}

const isFourWalled = ({ footprint, diameterM }: PlanRequest['car']['space']) =>
  footprint === undefined && diameterM === undefined

/** Rebates and fingers take six square boards. */
function jointFaults({ board: { joints, recessM = 0 }, car: { space } }: PlanRequest): readonly FoundFault[] {
  if (joints !== 'rebate' && joints !== 'finger') return []
  const { shape, seatSlopeDeg = 0, acrossSlopeDeg, lidSlopeDeg } = space
  const leans = seatSlopeDeg >= planDefaults.wedgeFromDeg.value || (acrossSlopeDeg ?? lidSlopeDeg) !== undefined
  const isSquare = shape === 'rectangular' || (shape === undefined && !leans && isFourWalled(space))
  if (isSquare && recessM === 0) return []
  return [{ field: 'board.joints', detail: say('refused.rebates-and-fingers-take-a-rectangular') }]
}

/** A slot is rounded no further than its board is thick; tubes have flares of their own. */
function flareFaults({ enclosure: { portFlareM = 0, portShape } = {}, board }: PlanRequest): readonly FoundFault[] {
  if (portShape === 'round' || portFlareM <= board.thicknessM + 1e-9) return []
  return unusable(
    ['portFlareM'],
    say('refused.a-board-is-rounded-no-further', { maximumMm: toMm(board.thicknessM, 1) })
  )
}

/** A shape and what describes it come together. */
function spaceFaults({ car: { space }, board }: PlanRequest): readonly FoundFault[] {
  const { shape, footprint, diameterM } = space
  const belongs = { footprint: 'prism', diameterM: 'round' } as const
  const idle = (['footprint', 'diameterM'] as const).filter(
    field => space[field] !== undefined && shape !== undefined && shape !== belongs[field]
  )
  const skew = (['acrossSlopeDeg', 'lidSlopeDeg'] as const).filter(
    field => space[field] !== undefined && ((shape !== undefined && shape !== 'wedge') || !isFourWalled(space))
  )
  const lacking = (['footprint', 'diameterM'] as const).filter(
    field => space[field] === undefined && shape === belongs[field]
  )
  const doubled = footprint !== undefined && diameterM !== undefined && shape === undefined ? ['diameterM'] : []
  const told = (fields: readonly string[], detail: Said) =>
    fields.map(field => ({ field: `car.space.${field}`, detail }))
  const mitred = diameterM === undefined ? [] : (['frontLayers', 'recessM'] as const).filter(field => board[field])
  return [
    ...told([...idle, ...skew], say('refused.the-shape-asked-has-no-use')),
    ...told(lacking, say('refused.the-shape-asked-needs-its-outline')),
    ...told(doubled, say('refused.a-room-is-round-or-free')),
    ...mitred.map(field => ({ field: `board.${field}`, detail: say('refused.staves-are-mitred-all-round') }))
  ]
}

/** Radiators that nobody told of: what to look for, since they have to move twice the air of the cones. */
function requireRadiators({ enclosure = {}, passiveRadiators, driver, driverCount }: PlanRequest): void {
  const asked = enclosure.kind === 'passive-radiator' ? (['kind'] as const) : given(enclosure, radiatorOnly)
  if (asked.length === 0 || passiveRadiators !== undefined) return
  const { sdM2, xmaxM } = driver.sheet
  const sweptM3 = sdM2 === undefined || xmaxM === undefined ? undefined : 2 * driverCount * sdM2 * xmaxM
  const region = sweptM3 === undefined ? '' : say('refused.radiators-sweep', { volumeL: toDigits(sweptM3 * 1e3, 2) })
  throw new DesignError('missing-input', {
    field: 'passiveRadiators',
    detail: say('refused.a-box-with-radiators-needs-theirs', { region })
  })
}

/** @throws DesignError `missing-input` without the radiators that are asked for, `conflicting-input` naming every field that contradicts another or that this plan cannot use */
export function requireUsable(request: PlanRequest): void {
  const [first, ...others] = [
    ...contradictions(request.amplifier, 'amplifier.'),
    ...goalFaults(request.enclosure ?? {}),
    ...enclosureFaults(request.enclosure ?? {}),
    ...dividedFaults(request),
    ...slotFaults(request),
    ...flareFaults(request),
    ...jointFaults(request),
    ...spaceFaults(request),
    ...supplyFaults(request),
    ...converterFaults(request)
  ]
  if (first !== undefined) throw new DesignError('conflicting-input', first, ...others)
  requireRadiators(request)
}
