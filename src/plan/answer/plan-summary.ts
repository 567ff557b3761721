/** The plan in a few lines: what it is, what it does, and whether to go on. */

import type { Said } from '../../contract/sentences/form/template.ts'
import type { PlanCircuit } from '../../contract/systems/plan-circuit.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import type { PlanSummary } from '../../contract/systems/plan-summary.ts'
import type { PlannedKind } from '../../contract/systems/words.ts'
import type { Caution } from '../../domain/caution.ts'
import { inDigits, toDigits } from '../../domain/digits.ts'
import { present } from '../../domain/present.ts'
import { listed, saidOf, say, worded } from '../../domain/say.ts'
import type { FittedRadiators } from '../enclosure/parts/fitted-radiators.ts'
import type { PlannedBox } from '../enclosure/parts/plan-candidates.ts'
import type { SheetSaving } from '../enclosure/sheet-saving.ts'
import type { JoinedDrivers } from '../load/joined-drivers.ts'
import type { Part } from '../request/part.ts'
import { chamberLines } from './chamber-lines.ts'
import { answerDefaults } from './defaults.ts'
import { builtTuningHz, planFigures } from './plan-figures.ts'
import type { PlanParts } from './plan-parts.ts'
import { supplyLine } from './supply-lines.ts'

export interface PlanReason {
  readonly code: string
  readonly part?: string
  /** Path in the request of the plan. */
  readonly at?: string
  readonly detail: string
}

const whole = (value: number) => value.toFixed(0)
const mm = (lengthM: number) => whole(lengthM * 1000)

interface Outcomes {
  readonly joined: JoinedDrivers | undefined
  readonly chosen: PlannedBox | undefined
  readonly radiators: FittedRadiators | undefined
  /** Whether the box is built by a leaflet, without knowing the driver. */
  readonly leaflet: boolean
  /** Why no enclosure fits. */
  readonly misfit: Said | undefined
  /** What was asked for and is not built, or is built and not known. */
  readonly unkept: readonly Caution[]
  readonly cautions: readonly Caution[]
  readonly saving: SheetSaving | undefined
}

/** Each cause once: what waits for another part is only named. Parts of an enclosure that does not fit say no more than it does. */
function refusals(parts: PlanParts, { misfit, leaflet }: Pick<Outcomes, 'misfit' | 'leaflet'>): readonly PlanReason[] {
  const refused = Object.entries<Part<unknown, unknown>>({ ...parts }).flatMap(([name, part]) =>
    part.done || (leaflet && ofDriver.includes(name))
      ? []
      : [{ name, asked: part.request !== undefined, ...part.refusal }]
  )
  const causes = refused.filter(
    ({ waiting, name }) => !waiting && !(misfit !== undefined && ofEnclosure.includes(name))
  )
  const waiting = refused.filter(({ waiting: waits }) => waits).map(({ name }) => name)
  return [
    ...causes.map(({ name, asked, code, message, faults }) => ({
      code,
      part: name,
      // A part that was asked something points into that, not into what the plan was asked.
      ...present({ at: asked ? undefined : faults[0]?.field || undefined }),
      detail: `${name}: ${message}`
    })),
    ...(waiting.length === 0
      ? []
      : [{ code: 'waiting', ...worded({ detail: say('answer.waiting', { parts: listed(waiting) }) }) }])
  ]
}

const ofEnclosure: readonly string[] = ['port', 'box', 'response']
/** What a leaflet cannot tell; a caution says so. */
const ofDriver: readonly string[] = ['driver', 'sizing', 'response']

const cautionReason = ({ code, at, said }: Caution): PlanReason => ({
  code,
  ...present({ at }),
  ...worded({ detail: said.message })
})

/** The worst of all parts. */
function verdictOf(parts: PlanParts, outcomes: Outcomes): Pick<PlanSummary, 'verdict' | 'reasons'> {
  const { misfit, unkept, cautions } = outcomes
  const stops = cautions.filter(({ level }) => level === 'stop').map(cautionReason)
  const refused = refusals(parts, outcomes)
  const misfits = misfit === undefined ? [] : [{ code: 'no-box-fits', ...worded({ detail: misfit }) }]
  const reasons = [...misfits, ...unkept.map(cautionReason), ...stops, ...refused]
  if (stops.length > 0) return { verdict: 'stop', reasons }
  if (refused.length + misfits.length > 0) return { verdict: 'incomplete', reasons }
  return { verdict: cautions.some(({ level }) => level === 'care') ? 'take-care' : 'ready', reasons }
}

/** Why the gain is set for less than it could be. */
function gainLine({ signal }: PlanRequest, { gainPowerW, powerW, usablePowerW }: JoinedDrivers): readonly Said[] {
  if (gainPowerW === undefined) return []
  const why = signal.gainPowerW === undefined ? say('answer.for-more-the-box-would-need') : say('answer.as-asked')
  return [say('answer.gain-set-for-w-of-the', { power: whole(powerW), bornePower: whole(usablePowerW), why })]
}

function loadLine(request: PlanRequest, joined: JoinedDrivers | undefined): readonly Said[] {
  if (joined === undefined) return []
  const { driverCount, driver } = request
  const { loadOhm, powerW, targetVoltageV, outputs, bridged } = joined
  const drivers = say('answer.drivers', { driverCount, name: driver.name === undefined ? '' : `(${driver.name})` })
  const each = outputs === 1 ? '' : say('answer.on-each-of-outputs', { outputs })
  return [
    say('answer.wired-to-w-rms-in-all', {
      drivers,
      load: inDigits(loadOhm),
      each,
      more: bridged ? say('answer.bridged') : '',
      power: whole(powerW),
      toFixed: targetVoltageV.toFixed(1)
    }),
    ...gainLine(request, joined)
  ]
}

const boxOf = {
  closed: 'answer.closed-box',
  vented: 'answer.vented-box',
  'passive-radiator': 'answer.radiator-box',
  'band-pass-4': 'answer.band-pass-box'
} as const satisfies Record<PlannedKind, unknown>

function boxLine({ box }: PlanParts, chosen: PlannedBox | undefined): readonly Said[] {
  if (!box.done || chosen === undefined) return []
  const { outer, volume, massKg } = box.outcome.result
  // a box that volume and tuning name by themselves has no alignment to be called by
  const alignment = chosen.alignment === 'as-asked' ? '' : say('answer.alignment', { name: saidOf(chosen, 'name') })
  const kind = say(boxOf[chosen.kind], { alignment })
  return [
    say('answer.l-net-outside-mm-kg-with', {
      kind,
      toFixed: (volume.netM3 * 1000).toFixed(1),
      width: mm(outer.widthM),
      height: mm(outer.heightM),
      depth: mm(outer.depthM),
      toFixed2: massKg.toFixed(1)
    })
  ]
}

const sizesOf = ({ widthM, heightM, depthM }: SheetSaving['instead']) =>
  say('answer.mm', { width: mm(widthM), height: mm(heightM), depth: mm(depthM) })

/** Why the box has just these sizes, where another set was at hand. */
function savingLine({ box, sheets }: PlanParts, saving: SheetSaving | undefined): readonly Said[] {
  if (saving === undefined || !box.done || !sheets.done) return []
  const { sheets: used, sheetsInstead, instead } = saving
  const saved = sheetsInstead - used
  return [
    say('answer.saving', {
      sheetCount: used,
      size: sizesOf(instead),
      within: inDigits(
        Math.max(answerDefaults.leastMissPercent.value, Math.abs(box.outcome.result.volume.errorPercent ?? 0)),
        1
      ),
      savedCount: saved
    })
  ]
}

/** The length is that along the centre line, as it is built: the air cuts the corners of a folded slot. */
function portLine({ port, box, response }: PlanParts): readonly Said[] {
  if (port === undefined || !port.done) return []
  const { recommended } = port.outcome.result
  const { lengthM } = (box.done ? box.outcome.result.port : undefined) ?? recommended
  const name = saidOf(recommended, 'name')
  const tuning = builtTuningHz({ port, response })
  const heard = response.done ? response.outcome.result : undefined
  const airSpeedMPerS = heard?.limits?.atDrive.portAirSpeedMPerS ?? recommended.airSpeedMPerS
  const speed = airSpeedMPerS === undefined ? '' : say('answer.air-at-most-m-s', { airSpeed: whole(airSpeedMPerS) })
  return [
    say('answer.port-mm-long', {
      name,
      length: mm(lengthM),
      more: tuning === undefined ? '' : say('answer.tuned-to-hz', { toFixed: tuning.toFixed(1) }),
      speed
    })
  ]
}

function radiatorLine({ response }: PlanParts, { radiators }: Outcomes): readonly Said[] {
  if (radiators === undefined || !response.done) return []
  const { count, face, name, addedKg, massKg, travelM } = radiators
  const { scalars, limits } = response.outcome.result
  return [
    say('answer.radiators', {
      count,
      name: name === undefined ? '' : say('answer.radiators-named', { name }),
      face: say(`answer.radiators-on-${face}`),
      added:
        addedKg > 0
          ? say('answer.radiators-add', { addedG: inDigits(addedKg * 1e3, 3), massG: inDigits(massKg * 1e3, 3) })
          : say('answer.radiators-bare'),
      tuningHz: toDigits(scalars.tuningHz ?? 0, 3),
      peakMm: toDigits((limits?.atDrive.passiveRadiatorExcursionM ?? 0) * 1e3, 3),
      travelMm: toDigits(travelM * 1e3, 3)
    })
  ]
}

function soundLine({ response }: PlanParts): readonly Said[] {
  if (!response.done) return []
  const { scalars, limits } = response.outcome.result
  const half = scalars.f3Hz === undefined ? '' : say('answer.half-power-at-hz', { f3: whole(scalars.f3Hz) })
  const peak =
    limits === undefined
      ? ''
      : say('answer.cone-mm-one-way-at-most', { toFixed: (limits.atDrive.coneExcursionM * 1000).toFixed(1) })
  return [say('answer.up-to-db-in-half-space', { half, peakLevel: whole(scalars.peakLevelDb), peak })]
}

export function planSummary(
  request: PlanRequest,
  parts: PlanParts,
  outcomes: Outcomes,
  circuit: PlanCircuit
): PlanSummary {
  const { joined, chosen, misfit, saving } = outcomes
  const enclosure =
    misfit === undefined
      ? [
          ...boxLine(parts, chosen),
          ...savingLine(parts, saving),
          ...portLine(parts),
          ...radiatorLine(parts, outcomes),
          ...chamberLines(parts),
          ...soundLine(parts)
        ]
      : []
  return {
    ...verdictOf(parts, outcomes),
    ...worded({ lines: [...loadLine(request, joined), ...enclosure, ...supplyLine(parts, circuit)] }),
    figures: planFigures(parts, circuit, joined, misfit === undefined)
  }
}
