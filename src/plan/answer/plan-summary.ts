/** The plan in a few lines: what it is, what it does, and whether to go on. */
import type { CircuitLevel, EngineState } from '../../contract/supply/words.ts'
import type { PlanCircuit } from '../../contract/systems/plan-circuit.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import type { PlanFigures, planVerdicts } from '../../contract/systems/plan-summary.ts'
import type { Caution } from '../../domain/caution.ts'
import { inDigits } from '../../domain/digits.ts'
import type { EnclosureCandidate } from '../../domain/enclosure/sizing/sizing.ts'
import { present } from '../../domain/present.ts'
import { leastVoltage } from '../electric/graph/circuit-figures.ts'
import { sizeOfRun } from '../electric/plan-run.ts'
import type { SheetSaving } from '../enclosure/sheet-saving.ts'
import type { JoinedDrivers } from '../load/joined-drivers.ts'
import type { Part } from '../request/part.ts'
import { planFigures } from './plan-figures.ts'
import type { PlanParts } from './plan-parts.ts'

/** `incomplete`: a part was refused. `stop`: a caution says do not build or switch this on. */
type Verdict = (typeof planVerdicts)[number]

export interface PlanReason {
  readonly code: string
  readonly part?: string
  /** Path in the request of the plan. */
  readonly at?: string
  readonly detail: string
}

export interface PlanSummary {
  readonly verdict: Verdict
  /** Why not `ready`, the gravest first. */
  readonly reasons: readonly PlanReason[]
  /** What will be built, a sentence a part. */
  readonly lines: readonly string[]
  readonly figures: PlanFigures
}

const whole = (value: number) => value.toFixed(0)
const mm = (lengthM: number) => whole(lengthM * 1000)

interface Outcomes {
  readonly joined: JoinedDrivers | undefined
  readonly chosen: EnclosureCandidate | undefined
  /** Why no enclosure fits. */
  readonly misfit: string | undefined
  /** What was asked for and is not built. */
  readonly unkept: readonly Caution[]
  readonly cautions: readonly Caution[]
  readonly saving: SheetSaving | undefined
}

/** Each cause once: what waits for another part is only named. Parts of an enclosure that does not fit say no more than it does. */
function refusals(parts: PlanParts, misfit: string | undefined): readonly PlanReason[] {
  const refused = Object.entries<Part<unknown, unknown>>({ ...parts }).flatMap(([name, part]) =>
    part.done ? [] : [{ name, asked: part.request !== undefined, ...part.refusal }]
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
    ...(waiting.length === 0 ? [] : [{ code: 'waiting', detail: `Waiting for this: ${waiting.join(', ')}.` }])
  ]
}

const ofEnclosure: readonly string[] = ['port', 'box', 'response']

const cautionReason = ({ code, at, message }: Caution): PlanReason => ({ code, ...present({ at }), detail: message })

/** The worst of all parts. */
function verdictOf(parts: PlanParts, { misfit, unkept, cautions }: Outcomes): Pick<PlanSummary, 'verdict' | 'reasons'> {
  const stops = cautions.filter(({ level }) => level === 'stop').map(cautionReason)
  const refused = refusals(parts, misfit)
  const misfits = misfit === undefined ? [] : [{ code: 'no-box-fits', detail: misfit }]
  const reasons = [...misfits, ...unkept.map(cautionReason), ...stops, ...refused]
  if (stops.length > 0) return { verdict: 'stop', reasons }
  if (refused.length + misfits.length > 0) return { verdict: 'incomplete', reasons }
  return { verdict: cautions.some(({ level }) => level === 'care') ? 'take-care' : 'ready', reasons }
}

/** Why the gain is set for less than it could be. */
function gainLine({ signal }: PlanRequest, { gainPowerW, powerW, bornePowerW }: JoinedDrivers): readonly string[] {
  if (gainPowerW === undefined) return []
  const why =
    signal.gainPowerW === undefined
      ? 'for more the box would need a filter that takes the bass this wish is for'
      : 'as asked'
  return [`Gain set for ${whole(powerW)} W of the ${whole(bornePowerW)} W that amplifier and drivers bear: ${why}.`]
}

function loadLine(request: PlanRequest, joined: JoinedDrivers | undefined): readonly string[] {
  if (joined === undefined) return []
  const { driverCount, driver } = request
  const { loadOhm, powerW, targetVoltageV, outputs, bridged } = joined
  const drivers = `${driverCount} ${driverCount === 1 ? 'driver' : 'drivers'}${driver.name === undefined ? '' : ` (${driver.name})`}`
  const each = outputs === 1 ? '' : ` on each of ${outputs} outputs`
  return [
    `${drivers} wired to ${inDigits(loadOhm)} Ω${each}${bridged ? ', bridged' : ''}; ${whole(powerW)} W RMS in all, gain set to ${targetVoltageV.toFixed(1)} V RMS.`,
    ...gainLine(request, joined)
  ]
}

function boxLine({ box }: PlanParts, chosen: EnclosureCandidate | undefined): readonly string[] {
  if (!box.done || chosen === undefined) return []
  const { outer, volume, massKg } = box.outcome.result
  const kind = `${chosen.kind === 'vented' ? 'Vented' : 'Closed'} box (${chosen.name})`
  return [
    `${kind}, ${(volume.netM3 * 1000).toFixed(1)} L net, outside ${mm(outer.widthM)} × ${mm(outer.heightM)} × ${mm(outer.depthM)} mm, ${massKg.toFixed(1)} kg with its drivers.`
  ]
}

const sizesOf = ({ widthM, heightM, depthM }: SheetSaving['instead']) =>
  `${mm(widthM)} × ${mm(heightM)} × ${mm(depthM)} mm`

/** Why the box has just these sizes, where another set was at hand. */
function savingLine({ box, sheets }: PlanParts, saving: SheetSaving | undefined): readonly string[] {
  if (saving === undefined || !box.done || !sheets.done) return []
  const { sheets: used, sheetsInstead, instead } = saving
  const saved = sheetsInstead - used
  return [
    `Cut from ${used} ${used === 1 ? 'sheet' : 'sheets'}: ${sizesOf(instead)} would hold the same air within ${inDigits(
      Math.max(0.1, Math.abs(box.outcome.result.volume.errorPercent ?? 0)),
      1
    )} % and need ${saved === 1 ? 'one' : saved} more, nearly empty.`
  ]
}

function portLine({ port, response }: PlanParts): readonly string[] {
  if (port === undefined || !port.done) return []
  const { name, lengthM, airSpeedMPerS } = port.outcome.result.recommended
  const tuning = response.done ? response.outcome.result.scalars.tuningHz : undefined
  const speed = airSpeedMPerS === undefined ? '' : `, air at most ${whole(airSpeedMPerS)} m/s`
  return [
    `Port: ${name}, ${mm(lengthM)} mm long${tuning === undefined ? '' : `, tuned to ${tuning.toFixed(1)} Hz`}${speed}.`
  ]
}

function soundLine({ response }: PlanParts): readonly string[] {
  if (!response.done) return []
  const { scalars, limits } = response.outcome.result
  const half = scalars.f3Hz === undefined ? '' : `Half power at ${whole(scalars.f3Hz)} Hz; `
  const peak =
    limits === undefined ? '' : `, cone ${(limits.atDrive.coneExcursionM * 1000).toFixed(1)} mm one way at most`
  return [`${half}up to ${whole(scalars.peakLevelDb)} dB in half space at 1 m${peak}.`]
}

function runLines({ trunk, branches }: PlanCircuit, governedBy: string | undefined): readonly string[] {
  if (trunk === undefined) return []
  const { runs, fuse } = trunk
  const guard =
    fuse === undefined ? '' : `, ${fuse.ratingA} A fuse (${fuse.form})${runs === 1 ? '' : ' in each of them'}`
  const why = governedBy === undefined ? '' : `; ${governedBy} decided the size`
  const behind = branches.map(
    ({ amplifier, ...run }) =>
      `${run.designation} to ${amplifier}${run.fuse === undefined ? '' : `, ${run.fuse.ratingA} A fuse`}`
  )
  return [
    `Power cable ${sizeOfRun(trunk)}${guard}${why}.`,
    ...(behind.length === 0 ? [] : [`Behind the distribution block: ${behind.join('; ')}.`])
  ]
}

/** Lowest voltage at an amplifier, at the test tone and with music, from the sources the caller described. */
function voltageLine({ circuit }: PlanParts): readonly string[] {
  if (!circuit.done) return []
  const left = (level: CircuitLevel, engine: EngineState) => {
    const least = leastVoltage(circuit, level, engine)
    if (least === undefined) return 'no steady voltage'
    return `${least.voltageV.toFixed(1)} V${least.batteryGives ? ' (the battery helps)' : ''}`
  }
  const both = (level: CircuitLevel) => `${left(level, 'idling')} idling, ${left(level, 'driving')} driving`
  return [`Left at the amplifier: at full sine ${both('full-sine')}; with dense bass ${both('heavy')}.`]
}

function supplyLine(parts: PlanParts, circuit: PlanCircuit): readonly string[] {
  const { current, cable } = parts
  const currents = current.done ? current.outcome.result.currents : undefined
  const governedBy = cable.done ? cable.outcome.result.cable?.governedBy : undefined
  return [
    ...(currents === undefined
      ? []
      : [`${currents.fullSineA.toFixed(1)} A at full sine, ${currents.averageA.toFixed(1)} A on average with music.`]),
    ...runLines(circuit, governedBy),
    ...voltageLine(parts)
  ]
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
      ? [...boxLine(parts, chosen), ...savingLine(parts, saving), ...portLine(parts), ...soundLine(parts)]
      : []
  return {
    ...verdictOf(parts, outcomes),
    lines: [...loadLine(request, joined), ...enclosure, ...supplyLine(parts, circuit)],
    figures: planFigures(parts, circuit, joined, misfit === undefined)
  }
}
