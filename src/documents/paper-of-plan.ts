/** Brings a computed plan onto paper: which figures, curves, drawings and lists it has to show. */
import { ohmNumber } from '../domain/coils/coil-loads.ts'
import { chosenNetwork } from '../domain/coils/wire-coils.ts'
import type { Assumption, Outcome } from '../domain/outcome.ts'
import { sources as sourceCatalogue } from '../domain/source.ts'
import type { Part } from '../plan/part.ts'
import type { PlanRequest } from '../plan/plan-request.ts'
import type { SystemPlan } from '../plan/plan-system.ts'
import { figure, lengthText, massText, type PaperUnits, runText, volumeText } from './number-text.ts'
import type { PaperFact, PaperFacts, PlanPaper } from './plan-paper.ts'
import type { ChartLimits } from './response-charts.ts'
import type { SystemWiring } from './system-wiring.ts'
import type { DrawnWiring } from './wiring-diagram.ts'

const done = <Result>(part: Part<unknown, Result> | undefined): Result | undefined =>
  part?.done ? part.outcome.result : undefined

const row = (label: string, value: string | undefined): readonly PaperFact[] =>
  value === undefined ? [] : [{ label, value }]

const unit = (value: number | undefined, text: string, decimals = 1) =>
  value === undefined ? undefined : `${figure(value, decimals)} ${text}`

function soundFacts({ parts }: SystemPlan): PaperFacts {
  const response = done(parts.response)
  const sheet = done(parts.driver)?.driver
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
  const box = done(parts.box)
  const port = done(parts.port)?.recommended
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
  const best = done(parts.matching)?.best
  const gain = done(parts.signal)?.gain
  const filters = done(parts.signal)?.filters
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

function supplyFacts({ parts }: SystemPlan): PaperFacts {
  const currents = done(parts.current)?.currents
  const choice = done(parts.cable)
  const fuse = done(parts.fuse)?.fuse
  return {
    title: 'Supply',
    rows: [
      ...row('Current, full sine', unit(currents?.fullSineA, 'A')),
      ...row('Current, music on average', unit(currents?.averageA, 'A')),
      ...row('Power cable', choice?.cable?.designation),
      ...row('Fuse', fuse === undefined ? undefined : `${fuse.ratingA} A, ${fuse.form}`),
      ...row('Drop along the cable', unit(choice?.cable?.dropPercent, '%', 2)),
      ...row('Left at the amplifier', unit(choice?.amplifierVoltageV, 'V', 2))
    ]
  }
}

const turnOnTexts: Readonly<Record<string, string>> = {
  'remote-line': 'turn-on wire 0.75 mm²',
  relay: 'turn-on wire 0.75 mm² through a relay',
  'accessory-relay': 'relay on the accessory line'
}

function wiringOf(
  { parts }: SystemPlan,
  { supply, driver, driverCount }: PlanRequest,
  paper: PaperUnits
): SystemWiring | undefined {
  const best = done(parts.matching)?.best
  if (best === undefined) return undefined
  const choice = done(parts.cable)
  const fuse = done(parts.fuse)?.fuse
  const signal = done(parts.signal)
  const wiring = done(parts.wiring)
  const gauge = choice?.cable?.designation ?? 'no cable found'
  const byCable = supply.return.kind === 'cable'
  const returnLengthM = supply.return.kind === 'cable' ? supply.return.lengthM : choice?.ground.leadAtMostM
  const turnOn = signal?.turnOn === undefined ? undefined : turnOnTexts[signal.turnOn.method]
  return {
    battery: `${figure(supply.systemVoltageV, 1)} V`,
    ...(fuse === undefined
      ? {}
      : {
          fuse: `${fuse.ratingA} A, ${fuse.form}`,
          fusePlace: `within ${lengthText(fuse.placement.idealM, paper)} of the source`
        }),
    positive: `${gauge}, ${runText(supply.positiveLengthM, paper)}`,
    negative: `${gauge}${returnLengthM === undefined ? '' : `, ${byCable ? '' : 'at most '}${runText(returnLengthM, paper)}`}${byCable ? ' back to the battery' : ' to the body'}`,
    returnBy: byCable ? 'cable' : 'body',
    amplifier: [
      best.amplifier,
      `${figure(best.loadOhm, 2)} Ω${best.bridged ? ', bridged' : ''}`,
      ...(signal === undefined ? [] : [`gain to ${figure(signal.gain.meterVoltageV, 1)} V RMS`])
    ],
    speakerWire: wiring?.cable === undefined ? 'speaker wire' : `2 × ${wiring.cable.designation}`,
    load: `${figure(best.loadOhm, 2)} Ω`,
    driverCount,
    joints: [
      ...(driver.name === undefined ? [] : [`Drivers: ${driver.name}.`]),
      `${best.join.slice(0, 1).toUpperCase()}${best.join.slice(1)}.`,
      ...(wiring?.chosen?.steps ?? [])
    ].slice(0, 12),
    source:
      signal?.input === undefined ? 'source' : signal.input.connection === 'line' ? 'line output' : 'speaker output',
    signal: 'screened signal cable',
    ...(turnOn === undefined ? {} : { turnOn })
  }
}

function coilsOf({ parts: { wiring } }: SystemPlan): DrawnWiring | undefined {
  const request = wiring.done ? wiring.request : undefined
  const load = request === undefined ? undefined : chosenNetwork(request)
  if (request === undefined || load === undefined) return undefined
  const { driverCount, coilsPerDriver } = request
  return { network: load.network, driverCount, coilsPerDriver, loadOhm: ohmNumber(load), join: load.join }
}

function limitsOf({ parts }: SystemPlan): ChartLimits {
  const response = done(parts.response)
  const driver = done(parts.driver)?.driver
  const speed = parts.port?.request?.airSpeedLimitMPerS
  const best = done(parts.matching)?.best
  return {
    ...(driver?.xmaxM === undefined ? {} : { xmaxM: driver.xmaxM }),
    ...(speed === undefined ? {} : { airSpeedMPerS: speed }),
    ...(best?.lowestOhm === undefined ? {} : { minimumOhm: best.lowestOhm }),
    ...(response?.scalars.tuningHz === undefined ? {} : { tuningHz: response.scalars.tuningHz }),
    ...(response?.scalars.f3Hz === undefined ? {} : { f3Hz: response.scalars.f3Hz }),
    ...(response?.curves.seatLevelDb === undefined ? {} : { cabinLevelDb: response.curves.seatLevelDb })
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
  const curves = done(plan.parts.response)?.curves
  const box = done(plan.parts.box)
  const cutPlan = done(plan.parts.sheets)
  const wiring = wiringOf(plan, request, paper)
  const coils = coilsOf(plan)
  return {
    title: plan.name ?? 'Bass system',
    ...plan.summary,
    cautions,
    facts: [boxFacts(plan, paper), soundFacts(plan), powerFacts(plan), supplyFacts(plan)].filter(
      ({ rows }) => rows.length > 0
    ),
    ...(curves === undefined ? {} : { curves, limits: limitsOf(plan) }),
    ...(box === undefined ? {} : { box }),
    ...(cutPlan === undefined ? {} : { cutPlan }),
    ...(wiring === undefined ? {} : { wiring }),
    ...(coils === undefined ? {} : { coils }),
    bill: plan.billOfMaterials,
    ...(plan.buildOrder === undefined ? {} : { buildOrder: plan.buildOrder }),
    ...(plan.restraint === undefined ? {} : { restraint: plan.restraint }),
    commissioning: plan.commissioning,
    assumed: assumptionsOf(plan.parts, assumed),
    sources: [...new Set(sources)].sort().map(id => ({ id, ...sourceCatalogue[id] }))
  }
}
