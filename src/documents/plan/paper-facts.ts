/** The figures of a computed plan by room, as they are looked up; and the six that stand on the first page. */
import type { CircuitLevel, EngineState } from '../../contract/supply/words.ts'
import type { PowerRun } from '../../contract/systems/plan-circuit.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import { tuningIn } from '../../domain/enclosure/response/tuning-in.ts'
import { told } from '../../domain/say.ts'
import { leastVoltage } from '../../plan/electric/graph/circuit-figures.ts'
import { sizeOfRun } from '../../plan/electric/plan-run.ts'
import type { SystemPlan } from '../../plan/plan-system.ts'
import {
  dimension,
  figure,
  lengthText,
  massText,
  type Reader,
  shortUnit,
  significant,
  sizeText,
  volumeText
} from '../draw/number-text.ts'
import { resultOf } from '../draw/part-result.ts'
import type { GreatFigure, PaperFact, PaperFacts } from './plan-paper.ts'

const row = (label: string, value: string | undefined): readonly PaperFact[] =>
  value === undefined ? [] : [{ label, value }]

const inUnit = (value: number | undefined, unit: string, paper: Reader, decimals = 1) =>
  value === undefined ? undefined : `${figure(value, decimals, paper)} ${unit}`

const inMm = (lengthM: number | undefined, paper: Reader) => inUnit(lengthM && lengthM * 1000, 'mm', paper)

export function soundFacts({ parts }: SystemPlan, paper: Reader): PaperFacts {
  const response = resultOf(parts.response)
  const sheet = resultOf(parts.driver)?.driver
  const { scalars, limits } = response ?? {}
  const { language } = paper
  return {
    title: told(language, 'paper.facts.sound'),
    rows: [
      ...row(told(language, 'paper.facts.half-power'), inUnit(scalars?.f3Hz, 'Hz', paper)),
      ...row(told(language, 'paper.tuning'), inUnit(scalars && tuningIn(scalars), 'Hz', paper)),
      ...row(told(language, 'paper.facts.highest-level'), inUnit(scalars?.peakLevelDb, 'dB', paper)),
      ...row(told(language, 'paper.facts.cone'), inMm(limits?.atDrive.coneExcursionM, paper)),
      ...row('Xmax', inMm(sheet?.xmaxM, paper)),
      ...row(told(language, 'paper.facts.port-air'), inUnit(limits?.atDrive.portAirSpeedMPerS, 'm/s', paper))
    ]
  }
}

export function boxFacts({ parts }: SystemPlan, paper: Reader): PaperFacts {
  const box = resultOf(parts.box)
  const port = resultOf(parts.port)?.recommended
  const { language } = paper
  const title = told(language, 'paper.facts.box')
  if (box === undefined) return { title, rows: [] }
  const { widthM, heightM, depthM, topDepthM } = box.outer
  const long = (found: NonNullable<typeof port>) =>
    told(language, 'paper.facts.port-long', {
      name: found.name,
      length: lengthText((box.port ?? found).lengthM, paper)
    })
  return {
    title,
    rows: [
      ...row(
        told(language, 'paper.facts.outside'),
        [widthM, heightM, depthM].map(size => lengthText(size, paper)).join(' × ')
      ),
      ...row(
        told(language, 'paper.facts.top-depth'),
        topDepthM === undefined ? undefined : lengthText(topDepthM, paper)
      ),
      ...row(told(language, 'paper.facts.net-volume'), volumeText(box.volume.netM3, paper)),
      ...(box.chambers ?? []).flatMap(({ name, netM3 }) =>
        row(told(language, `paper.facts.${name}-chamber`), volumeText(netM3, paper))
      ),
      ...row(told(language, 'paper.facts.mass'), massText(box.massKg, paper)),
      ...row(told(language, 'paper.facts.port'), port && long(port))
    ]
  }
}

export function powerFacts({ parts, cover }: SystemPlan, paper: Reader): PaperFacts {
  const best = resultOf(parts.matching)?.best
  const { gain, filters } = resultOf(parts.signal) ?? {}
  const { language } = paper
  const whole = (value: number) => figure(value, 0, paper)
  const corner = (filter: { readonly cornerHz: number; readonly order: number } | undefined) =>
    filter && told(language, 'paper.facts.corner', { frequency: whole(filter.cornerHz), order: filter.order })
  const set =
    gain &&
    told(language, 'paper.facts.gain-at', {
      voltage: figure(gain.meterVoltageV, 1, paper),
      frequency: whole(gain.toneHz)
    })
  return {
    title: told(language, 'paper.facts.amplifier'),
    rows: [
      ...row(told(language, 'paper.facts.load'), inUnit(best?.loadOhm, 'Ω', paper, 2)),
      ...row(told(language, 'paper.facts.power'), inUnit(cover.powerW, 'W RMS', paper, 0)),
      ...row(told(language, 'paper.facts.could-give'), inUnit(best?.totalPowerW, 'W RMS', paper, 0)),
      ...row(told(language, 'paper.facts.gain'), set),
      ...row(told(language, 'paper.facts.low-pass'), corner(filters?.lowPass)),
      ...row(told(language, 'paper.facts.high-pass'), corner(filters?.highPass))
    ]
  }
}

/** Of the amplifier that gets least. */
function atAmplifier(
  { circuit }: SystemPlan['parts'],
  level: CircuitLevel,
  engine: EngineState,
  paper: Reader
): string | undefined {
  if (!circuit.done) return undefined
  const least = leastVoltage(circuit, level, engine)
  if (least === undefined) return told(paper.language, 'paper.facts.collapses')
  return told(paper.language, 'paper.facts.at-amplifier', {
    voltage: figure(least.voltageV, 2, paper),
    lost: figure(least.lostV, 2, paper)
  })
}

export function supplyFacts({ parts, circuit: { trunk, branches } }: SystemPlan, paper: Reader): PaperFacts {
  const currents = resultOf(parts.current)?.currents
  const { language } = paper
  const rated = ({ runs, fuse }: PowerRun) =>
    fuse === undefined ? undefined : `${runs === 1 ? '' : `${runs} × `}${fuse.ratingA} A, ${fuse.form}`
  const sized = (run: PowerRun) => sizeText(sizeOfRun(run), paper)
  const branchText = (run: PowerRun) => {
    const fuse = rated(run)
    return fuse === undefined ? sized(run) : told(language, 'paper.facts.branch-fuse', { size: sized(run), fuse })
  }
  return {
    title: told(language, 'paper.facts.supply'),
    rows: [
      ...row(told(language, 'paper.facts.full-sine'), inUnit(currents?.fullSineA, 'A', paper)),
      ...row(told(language, 'paper.facts.music'), inUnit(currents?.averageA, 'A', paper)),
      ...row(told(language, 'paper.facts.cable'), trunk && sized(trunk)),
      ...row(told(language, 'paper.facts.fuse'), trunk && rated(trunk)),
      ...branches.flatMap(run =>
        row(told(language, 'paper.facts.branch', { amplifier: run.amplifier }), branchText(run))
      ),
      ...row(told(language, 'paper.facts.sine-idling'), atAmplifier(parts, 'full-sine', 'idling', paper)),
      ...row(told(language, 'paper.facts.sine-driving'), atAmplifier(parts, 'full-sine', 'driving', paper)),
      ...row(told(language, 'paper.facts.heavy-idling'), atAmplifier(parts, 'heavy', 'idling', paper)),
      ...row(told(language, 'paper.facts.heavy-driving'), atAmplifier(parts, 'heavy', 'driving', paper))
    ]
  }
}

function reach({ cover: { band } }: SystemPlan, paper: Reader): readonly GreatFigure[] {
  if (band === undefined) return []
  const { place, fromHz, loudestDb, uncertaintyDb } = band
  const { language } = paper
  const where = told(language, place === 'seat' ? 'paper.figure.seat' : 'paper.figure.half-space')
  const about = uncertaintyDb === undefined || uncertaintyDb === 0 ? '' : `, ± ${figure(uncertaintyDb, 0, paper)} dB`
  return [
    { value: significant(fromHz, 2, paper), unit: 'Hz', note: told(language, 'paper.figure.deepest', { where }) },
    { value: figure(loudestDb, 0, paper), unit: 'dB', note: told(language, 'paper.figure.loudest', { where, about }) }
  ]
}

function outside({ cover: { asked }, parts }: SystemPlan, paper: Reader): readonly GreatFigure[] {
  const box = resultOf(parts.box)
  if (asked === undefined || box === undefined) return []
  const { boxWidthM, boxHeightM, boxDepthM, coveringM } = asked.space
  const sizes = [boxWidthM, boxHeightM, boxDepthM].map(size => dimension(size, paper)).join(' × ')
  const id = coveringM > 0 ? 'paper.figure.covered' : 'paper.figure.outside'
  return [
    { value: sizes, unit: shortUnit(paper), note: told(paper.language, id, { mass: massText(box.massKg, paper) }) }
  ]
}

function power({ parts, cover: { powerW } }: SystemPlan, paper: Reader): readonly GreatFigure[] {
  const best = resultOf(parts.matching)?.best
  const gain = resultOf(parts.signal)?.gain
  if (best === undefined || powerW === undefined) return []
  const { language } = paper
  const note =
    gain === undefined
      ? told(language, 'paper.figure.in-all')
      : told(language, 'paper.figure.gain', { voltage: figure(gain.meterVoltageV, 1, paper) })
  const unit = told(language, 'paper.figure.watts', { load: figure(best.loadOhm, 2, paper) })
  return [{ value: figure(powerW, 0, paper), unit, note }]
}

function cable({ circuit: { trunk } }: SystemPlan, { supply }: PlanRequest, paper: Reader): readonly GreatFigure[] {
  if (trunk === undefined) return []
  const { fuse } = trunk
  const { language } = paper
  const size = sizeText(sizeOfRun(trunk), paper)
  if (fuse === undefined) return [{ value: size, unit: '', note: told(language, 'paper.figure.no-fuse') }]
  const at = (lengthM: number) => ({ distance: lengthText(lengthM, paper) })
  const note =
    supply.fuseDistanceM === undefined
      ? told(language, 'paper.figure.fuse-within', at(fuse.placement.idealM))
      : told(language, 'paper.figure.fuse-at', at(supply.fuseDistanceM))
  return [{ value: `${size}, ${fuse.ratingA}`, unit: 'A', note }]
}

function work({ buildOrder }: SystemPlan, paper: Reader): readonly GreatFigure[] {
  if (buildOrder === undefined) return []
  const { workMinutes, days } = buildOrder
  const { language } = paper
  const note = told(language, 'paper.figure.days', { dayCount: days.length })
  return [{ value: figure(workMinutes / 60, 0, paper), unit: told(language, 'paper.figure.hours'), note }]
}

/** The six figures of the first page, those that the plan came to. */
export const greatFigures = (plan: SystemPlan, request: PlanRequest, paper: Reader): readonly GreatFigure[] => [
  ...reach(plan, paper),
  ...outside(plan, paper),
  ...power(plan, paper),
  ...cable(plan, request, paper),
  ...work(plan, paper)
]
