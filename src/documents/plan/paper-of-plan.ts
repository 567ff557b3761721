/** Brings a computed plan onto paper: which figures, curves, drawings and lists it has to show. */
import { sources as sourceCatalogue } from '../../contract/sources/source.ts'
import type { CircuitLevel, EngineState } from '../../contract/supply/words.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import type { Assumption, Outcome } from '../../domain/outcome.ts'
import { present } from '../../domain/present.ts'
import { furtherCautions, placedCautions } from '../../plan/answer/step-cautions.ts'
import { leastVoltage } from '../../plan/electric/circuit-figures.ts'
import type { PowerRun } from '../../plan/electric/plan-run.ts'
import type { SystemPlan } from '../../plan/plan-system.ts'
import type { Part } from '../../plan/request/part.ts'
import type { ChartLimits } from '../charts/response-charts.ts'
import { figure, lengthText, massText, type PaperUnits, volumeText } from '../draw/number-text.ts'
import { resultOf } from '../draw/part-result.ts'
import { coilsOf, wiringOf } from '../wiring/wiring-of-plan.ts'
import type { PaperFact, PaperFacts, PlanPaper } from './plan-paper.ts'

const row = (label: string, value: string | undefined): readonly PaperFact[] =>
  value === undefined ? [] : [{ label, value }]

const unit = (value: number | undefined, text: string, decimals = 1) =>
  value === undefined ? undefined : `${figure(value, decimals)} ${text}`

function soundFacts({ parts }: SystemPlan): PaperFacts {
  const response = resultOf(parts.response)
  const sheet = resultOf(parts.driver)?.driver
  const { scalars, limits } = response ?? {}
  return {
    title: 'Sound',
    rows: [
      ...row('Half power at', unit(scalars?.f3Hz, 'Hz')),
      ...row('Tuning', unit(scalars?.tuningHz, 'Hz')),
      ...row('Highest level, half space, 1 m', unit(scalars?.peakLevelDb, 'dB')),
      ...row(
        'Cone at full drive, one way',
        limits === undefined ? undefined : `${figure(limits.atDrive.coneExcursionM * 1000, 1)} mm`
      ),
      ...row('Xmax', sheet?.xmaxM === undefined ? undefined : `${figure(sheet.xmaxM * 1000, 1)} mm`),
      ...row('Air in the port, peak', unit(limits?.atDrive.portAirSpeedMPerS, 'm/s'))
    ]
  }
}

function boxFacts({ parts }: SystemPlan, paper: PaperUnits): PaperFacts {
  const box = resultOf(parts.box)
  const port = resultOf(parts.port)?.recommended
  if (box === undefined) return { title: 'Box', rows: [] }
  const { widthM, heightM, depthM, topDepthM } = box.outer
  return {
    title: 'Box',
    rows: [
      ...row(
        'Outside, width × height × depth',
        [widthM, heightM, depthM].map(size => lengthText(size, paper)).join(' × ')
      ),
      ...row('Depth at the lid', topDepthM === undefined ? undefined : lengthText(topDepthM, paper)),
      ...row('Net volume', volumeText(box.volume.netM3, paper)),
      ...row('Mass with drivers', massText(box.massKg, paper)),
      ...row('Port', port === undefined ? undefined : `${port.name}, ${lengthText(port.lengthM, paper)} long`)
    ]
  }
}

function powerFacts({ parts }: SystemPlan): PaperFacts {
  const best = resultOf(parts.matching)?.best
  const gain = resultOf(parts.signal)?.gain
  const filters = resultOf(parts.signal)?.filters
  return {
    title: 'Amplifier',
    rows: [
      ...row('Load on an output', unit(best?.loadOhm, 'Ω', 2)),
      ...row('Power in all', unit(best?.totalPowerW, 'W RMS', 0)),
      ...row(
        'Set the gain to',
        gain === undefined
          ? undefined
          : `${figure(gain.meterVoltageV, 1)} V RMS at ${figure(gain.toneHz, 0)} Hz, filters off`
      ),
      ...row(
        'Low-pass',
        filters?.lowPass === undefined
          ? undefined
          : `${figure(filters.lowPass.cornerHz, 0)} Hz, order ${filters.lowPass.order}`
      ),
      ...row(
        'High-pass',
        filters?.highPass === undefined
          ? undefined
          : `${figure(filters.highPass.cornerHz, 0)} Hz, order ${filters.highPass.order}`
      )
    ]
  }
}

/** Of the amplifier that gets least. */
function atAmplifier({ circuit }: SystemPlan['parts'], level: CircuitLevel, engine: EngineState): string | undefined {
  if (!circuit.done) return undefined
  const least = leastVoltage(circuit, level, engine)
  if (least === undefined) return 'none: it collapses'
  return `${figure(least.voltageV, 2)} V, ${figure(least.lostV, 2)} V lost on the way`
}

function supplyFacts({ parts, circuit: { trunk, branches } }: SystemPlan): PaperFacts {
  const currents = resultOf(parts.current)?.currents
  const sized = ({ runs, designation }: PowerRun) => `${runs === 1 ? '' : `${runs} × `}${designation}`
  const rated = ({ runs, fuse }: PowerRun) =>
    fuse === undefined ? undefined : `${runs === 1 ? '' : `${runs} × `}${fuse.ratingA} A, ${fuse.form}`
  return {
    title: 'Supply',
    rows: [
      ...row('Current, full sine', unit(currents?.fullSineA, 'A')),
      ...row('Current, music on average', unit(currents?.averageA, 'A')),
      ...row('Power cable', trunk === undefined ? undefined : sized(trunk)),
      ...row('Fuse', trunk === undefined ? undefined : rated(trunk)),
      ...branches.flatMap(run =>
        row(`Branch to ${run.amplifier}`, [sized(run), rated(run)].filter(text => text !== undefined).join(', fuse '))
      ),
      ...row('At the amplifier, full sine, engine idling', atAmplifier(parts, 'full-sine', 'idling')),
      ...row('At the amplifier, full sine, driving', atAmplifier(parts, 'full-sine', 'driving')),
      ...row('At the amplifier, dense bass, engine idling', atAmplifier(parts, 'heavy', 'idling')),
      ...row('At the amplifier, dense bass, driving', atAmplifier(parts, 'heavy', 'driving'))
    ]
  }
}

function limitsOf({ parts }: SystemPlan): ChartLimits {
  const response = resultOf(parts.response)
  const driver = resultOf(parts.driver)?.driver
  const speed = parts.port?.request?.airSpeedLimitMPerS
  const best = resultOf(parts.matching)?.best
  return {
    ...present({ xmaxM: driver?.xmaxM }),
    ...present({ airSpeedMPerS: speed }),
    ...present({
      minimumOhm: best?.lowestOhm,
      tuningHz: response?.scalars.tuningHz,
      f3Hz: response?.scalars.f3Hz,
      cabinLevelDb: response?.curves.seatLevelDb
    })
  }
}

/** What the plan and its parts assumed: each once, with the part that was first to, since one name can mean two things. */
function assumptionsOf(parts: SystemPlan['parts'], own: readonly Assumption[]): readonly Assumption[] {
  const ofParts = Object.entries<Part<unknown, unknown> | undefined>({ ...parts }).flatMap(([name, part]) =>
    part?.done
      ? part.outcome.assumed.map(entry => ({ entry, shown: { ...entry, field: `${name}: ${entry.field}` } }))
      : []
  )
  const found = new Map<string, Assumption>()
  for (const { entry, shown } of [...own.map(entry => ({ entry, shown: entry })), ...ofParts]) {
    const key = JSON.stringify([entry.field, entry.value, entry.why])
    if (!found.has(key)) found.set(key, shown)
  }
  return [...found.values()]
}

/** @param request  for what the plan does not repeat: lengths, return path, names */
export function paperOfPlan(
  { result: plan, cautions, assumed, sources }: Outcome<SystemPlan>,
  request: PlanRequest,
  paper: PaperUnits
): PlanPaper {
  const fits = plan.buildOrder !== undefined
  const curves = fits ? resultOf(plan.parts.response)?.curves : undefined
  const box = fits ? resultOf(plan.parts.box) : undefined
  const cutPlan = resultOf(plan.parts.sheets)
  const wiring = wiringOf(plan, request, paper)
  const coils = coilsOf(plan)
  const placed = placedCautions(cautions, [...(plan.buildOrder?.steps ?? []), ...plan.commissioning])
  const further = furtherCautions(placed)
  return {
    title: plan.name ?? 'Bass system',
    ...plan.summary,
    cautions: placed.ahead,
    stepCautions: placed.atSteps,
    ...present({ furtherCautions: further }),
    facts: [...(fits ? [boxFacts(plan, paper), soundFacts(plan)] : []), powerFacts(plan), supplyFacts(plan)].filter(
      ({ rows }) => rows.length > 0
    ),
    ...(curves === undefined ? {} : { curves, limits: limitsOf(plan) }),
    ...present({ box, cutPlan, wiring, coils }),
    bill: plan.billOfMaterials,
    ...present({ buildOrder: plan.buildOrder, restraint: plan.restraint }),
    commissioning: plan.commissioning,
    assumed: assumptionsOf(plan.parts, assumed),
    sources: [...new Set(sources)].sort().map(id => ({ id, ...sourceCatalogue[id] }))
  }
}
