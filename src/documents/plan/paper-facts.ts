/** The figures of a computed plan by room, as they are looked up; and the six that stand on the first page. */
import type { CircuitLevel, EngineState } from '../../contract/supply/words.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import { leastVoltage } from '../../plan/electric/graph/circuit-figures.ts'
import { type PowerRun, sizeOfRun } from '../../plan/electric/plan-run.ts'
import type { SystemPlan } from '../../plan/plan-system.ts'
import {
  dimension,
  figure,
  lengthText,
  massText,
  type PaperUnits,
  significant,
  volumeText
} from '../draw/number-text.ts'
import { resultOf } from '../draw/part-result.ts'
import type { GreatFigure, PaperFact, PaperFacts } from './plan-paper.ts'

const row = (label: string, value: string | undefined): readonly PaperFact[] =>
  value === undefined ? [] : [{ label, value }]

const unit = (value: number | undefined, text: string, decimals = 1) =>
  value === undefined ? undefined : `${figure(value, decimals)} ${text}`

export function soundFacts({ parts }: SystemPlan): PaperFacts {
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

export function boxFacts({ parts }: SystemPlan, paper: PaperUnits): PaperFacts {
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

export function powerFacts({ parts, cover }: SystemPlan): PaperFacts {
  const best = resultOf(parts.matching)?.best
  const gain = resultOf(parts.signal)?.gain
  const filters = resultOf(parts.signal)?.filters
  return {
    title: 'Amplifier',
    rows: [
      ...row('Load on an output', unit(best?.loadOhm, 'Ω', 2)),
      ...row('Power in all, at this gain', unit(cover.powerW, 'W RMS', 0)),
      ...row('Power that it could give', unit(best?.totalPowerW, 'W RMS', 0)),
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

export function supplyFacts({ parts, circuit: { trunk, branches } }: SystemPlan): PaperFacts {
  const currents = resultOf(parts.current)?.currents
  const rated = ({ runs, fuse }: PowerRun) =>
    fuse === undefined ? undefined : `${runs === 1 ? '' : `${runs} × `}${fuse.ratingA} A, ${fuse.form}`
  return {
    title: 'Supply',
    rows: [
      ...row('Current, full sine', unit(currents?.fullSineA, 'A')),
      ...row('Current, music on average', unit(currents?.averageA, 'A')),
      ...row('Power cable', trunk === undefined ? undefined : sizeOfRun(trunk)),
      ...row('Fuse', trunk === undefined ? undefined : rated(trunk)),
      ...branches.flatMap(run =>
        row(
          `Branch to ${run.amplifier}`,
          [sizeOfRun(run), rated(run)].filter(text => text !== undefined).join(', fuse ')
        )
      ),
      ...row('At the amplifier, full sine, engine idling', atAmplifier(parts, 'full-sine', 'idling')),
      ...row('At the amplifier, full sine, driving', atAmplifier(parts, 'full-sine', 'driving')),
      ...row('At the amplifier, dense bass, engine idling', atAmplifier(parts, 'heavy', 'idling')),
      ...row('At the amplifier, dense bass, driving', atAmplifier(parts, 'heavy', 'driving'))
    ]
  }
}

function reach({ cover: { band } }: SystemPlan): readonly GreatFigure[] {
  if (band === undefined) return []
  const { place, fromHz, loudestDb, uncertaintyDb } = band
  const where = place === 'seat' ? 'at the seat' : 'in half space at 1 m'
  const about = uncertaintyDb === undefined || uncertaintyDb === 0 ? '' : `, ± ${figure(uncertaintyDb, 0)} dB`
  return [
    { value: significant(fromHz, 2), unit: 'Hz', note: `deepest full bass ${where}` },
    { value: figure(loudestDb, 0), unit: 'dB', note: `loudest ${where}${about}` }
  ]
}

function outside({ cover: { asked }, parts }: SystemPlan, paper: PaperUnits): readonly GreatFigure[] {
  const box = resultOf(parts.box)
  if (asked === undefined || box === undefined) return []
  const { boxWidthM, boxHeightM, boxDepthM, coveringM } = asked.space
  const sizes = [boxWidthM, boxHeightM, boxDepthM].map(size => dimension(size, paper)).join(' × ')
  const covered = coveringM > 0 ? 'outside, with carpet' : 'outside'
  return [
    { value: sizes, unit: paper.units === 'metric' ? 'mm' : 'in', note: `${covered}; ${massText(box.massKg, paper)}` }
  ]
}

function power({ parts, cover: { powerW } }: SystemPlan): readonly GreatFigure[] {
  const best = resultOf(parts.matching)?.best
  const gain = resultOf(parts.signal)?.gain
  if (best === undefined || powerW === undefined) return []
  const note = gain === undefined ? 'in all' : `set the gain to ${figure(gain.meterVoltageV, 1)} V`
  return [{ value: figure(powerW, 0), unit: `W at ${figure(best.loadOhm, 2)} Ω`, note }]
}

function cable({ circuit: { trunk } }: SystemPlan, { supply }: PlanRequest, paper: PaperUnits): readonly GreatFigure[] {
  if (trunk === undefined) return []
  const { fuse } = trunk
  if (fuse === undefined) return [{ value: sizeOfRun(trunk), unit: '', note: 'no fuse could be rated' }]
  const place =
    supply.fuseDistanceM === undefined
      ? `within ${lengthText(fuse.placement.idealM, paper)} of the battery`
      : `${lengthText(supply.fuseDistanceM, paper)} from the battery`
  return [{ value: `${sizeOfRun(trunk)}, ${fuse.ratingA}`, unit: 'A', note: `fuse ${place}` }]
}

function work({ buildOrder }: SystemPlan): readonly GreatFigure[] {
  if (buildOrder === undefined) return []
  const { workMinutes, days } = buildOrder
  const over = `over ${days.length} ${days.length === 1 ? 'day' : 'days'} of work, drying not counted`
  return [{ value: figure(workMinutes / 60, 0), unit: 'h of work', note: over }]
}

/** The six figures of the first page, those that the plan came to. */
export const greatFigures = (plan: SystemPlan, request: PlanRequest, paper: PaperUnits): readonly GreatFigure[] => [
  ...reach(plan),
  ...outside(plan, paper),
  ...power(plan),
  ...cable(plan, request, paper),
  ...work(plan)
]
