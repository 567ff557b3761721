/** What one part of a plan hands to the next, read from the finished plan and worked out again from the request alone. */
import type { PlanRequest } from '../../src/contract/systems/plan-request.ts'
import type { SystemPlan } from '../../src/plan/plan-system.ts'

// biome-ignore lint/suspicious/noExplicitAny: a test reads whatever the parts hold
type Part = any

/** Requests are rounded to six digits before a part is asked. */
const same = (a: number | undefined, b: number | undefined) =>
  a === b || Math.abs((a ?? Number.NaN) / (b ?? Number.NaN) - 1) < 5.1e-6

type Row = readonly [what: string, got: number | undefined, wanted: number | undefined]

const cornerOf = (filters: readonly Part[] | undefined, kind: string) =>
  filters?.find(filter => filter.kind === kind)?.cornerHz

const needOf = ({ billOfMaterials }: SystemPlan, part: string) =>
  billOfMaterials.filter(row => row.part === part && row.needed).reduce((sum, { need }) => sum + need, 0)

function electricalRows({ supply, driverCount }: PlanRequest, plan: SystemPlan): readonly Row[] {
  const { matching, wiring, current, cable, fuse, circuit } = plan.parts as Part
  if (!circuit.done) return []
  const { best } = matching.outcome.result
  const drawn = current.outcome.result
  const { trunk, speakerWire, insideWire } = plan.circuit
  const { alternators, accessories, batteries, amplifiers } = circuit.request
  const alone = supply.secondBattery === undefined && supply.converter === undefined
  const runs = trunk?.runs ?? 1
  return [
    ['drivers wired', (best.driversPerOutput ?? 0) * best.outputs, driverCount],
    ['load wired for', wiring.request.targetOhm, best.loadOhm],
    [
      'power at the load, supplied',
      current.request.amplifiers[0].powerW,
      (best.ratedPowerW ?? best.outputPowerW) * best.outputs
    ],
    ['load supplied', current.request.amplifiers[0].loadOhm, best.loadOhm],
    ['length of the run', cable.request.positiveLengthM, supply.positiveLengthM],
    ...(alone
      ? ([
          ['current of the cable', cable.request.currentA, drawn.sizing.fullSineA],
          ['dense bass of the cable', cable.request.heavyCurrentA, drawn.sizing.heavyA]
        ] as const)
      : []),
    ...(trunk === undefined || !fuse.done
      ? []
      : ([
          ['current of a fuse', fuse.request.currentA * runs, cable.request.currentA],
          ['dense bass of a fuse', fuse.request.heavyCurrentA * runs, cable.request.heavyCurrentA],
          ['fuse laid', trunk.fuse?.ratingA, fuse.outcome.result.fuse?.ratingA],
          ['way before the fuse', fuse.request.distanceM, supply.fuseDistanceM]
        ] as const)),
    ['metres of power cable', bareRun(plan) ? needOf(plan, 'power-cable') : 0, bareRun(plan) ? metresOf(plan) : 0],
    ['alternator idling', alternators[0].idleA, drawn.charging?.idleAvailableA ?? alternators[0].idleA],
    ['alternator driving', alternators[0].drivingA, drawn.charging?.cruiseAvailableA ?? alternators[0].drivingA],
    ['vehicle itself', accessories[0].currentA, drawn.charging?.baseLoadA ?? 0],
    ['cold cranking', batteries[0].coldCrankingA, supply.source?.coldCrankingA ?? supply.battery?.coldCrankingA],
    ['amplifiers in the circuit', amplifiers.length, 1 + (supply.otherAmplifiers?.length ?? 0)],
    [
      'metres of loudspeaker wire',
      needOf(plan, 'speaker-wire'),
      plan.billOfMaterials.length > 0 && speakerWire ? speakerWire.lengthM * best.outputs : 0
    ],
    ['wires inside', insideWire?.count, insideWire && driverCount]
  ]
}

/** The bill counts the leads of other pieces as power cable too. */
const bareRun = (plan: SystemPlan) => {
  const { secondBattery, converter, capacitor, trunk } = plan.circuit
  return (
    trunk !== undefined &&
    [secondBattery, converter, capacitor].every(each => each === undefined) &&
    needOf(plan, 'power-cable') > 0
  )
}
const metresOf = ({ circuit: { trunk, branches } }: SystemPlan) =>
  [...(trunk === undefined ? [] : [trunk]), ...branches].reduce((sum, run) => sum + run.positiveLengthM * run.runs, 0)

const toldPortMm = (lines: readonly string[]) => {
  const told = /(\d+) mm long/.exec(lines.join(' '))?.[1]
  return told === undefined ? undefined : Number(told)
}

function acousticRows(request: PlanRequest, { parts, summary }: SystemPlan): readonly Row[] {
  const { matching, wiring, box, response, signal } = parts as Part
  if (!box.done || !response.done) return []
  const { best } = matching.outcome.result
  const asked = response.request
  const { rear } = asked.enclosure
  const { volume, outer, massKg, port } = box.outcome.result
  const { scalars, limits } = response.outcome.result
  const { figures } = summary
  const setting = signal.done ? signal.request.filters : undefined
  return [
    ['drivers heard', asked.drivers.count, request.driverCount],
    [
      'drivers in the box',
      box.request.drivers.reduce((sum: number, { count = 1 }: Part) => sum + count, 0),
      request.driverCount
    ],
    ['air heard', rear.netVolumeM3, volume.netM3],
    [
      'length of the port told',
      toldPortMm(summary.lines),
      toldPortMm(summary.lines) && Math.round(1e3 * port?.lengthM)
    ],
    ['tuning built and heard', port && Math.round(100 * Math.log2(port.tuningHz / scalars.tuningHz)), port && 0],
    ['wire heard', asked.source.seriesOhm, wiring.outcome.result.cable?.sourceSeriesOhm ?? 0],
    [
      'volts heard',
      asked.source.voltageV,
      signal.done ? signal.outcome.result.gain.targetVoltageV : asked.source.voltageV
    ],
    ['load of the limits', asked.limits.ratedOhm, best.loadOhm],
    ['cabin heard', asked.cabin?.lengthM, request.car.cabin?.lengthM],
    ['air of the day', asked.air?.temperatureC, request.air?.temperatureC],
    ['low-pass set', setting?.lowPass?.cornerHz, setting && cornerOf(asked.filters, 'low-pass')],
    ['high-pass set', setting?.highPass?.cornerHz, setting && cornerOf(asked.filters, 'high-pass')],
    ['tuning told to the filters', setting?.acoustic?.tuningHz, setting && scalars.tuningHz],
    ['volume told', figures.netVolumeM3, volume.netM3],
    ['width told', figures.widthM, outer.widthM],
    ['mass told', figures.massKg, massKg],
    ['travel told', figures.coneExcursionM, limits?.atDrive.coneExcursionM],
    ['air speed told', figures.airSpeedMPerS, limits?.atDrive.portAirSpeedMPerS]
  ]
}

function woodRows(request: PlanRequest, plan: SystemPlan): readonly Row[] {
  const { box, sheets } = plan.parts as Part
  const { restraint } = plan
  if (restraint === undefined || !box.done) return []
  const { panels, massKg, boardMassKg, inner, volume } = box.outcome.result
  const { displacementM3, massKg: driverKg, screwCount = 8, rebateDepthM = 0 } = request.driver.mounting ?? {}
  const { driverCount, board, car } = request
  const lined = volume.displaced.liningM3 > 0
  const vehicleKg = car.massKg ?? 0
  const screws = plan.billOfMaterials.find(({ part }) => part === 'driver-screw')
  const layers = panels
    .filter(({ role }: Part) => role === 'front')
    .reduce((sum: number, { quantity }: Part) => sum + quantity, 0)
  const frontM = layers * board.thicknessM - rebateDepthM
  return [
    ['mass held', restraint.massKg, massKg],
    ['boards and drivers', massKg, boardMassKg + driverCount * (driverKg ?? 0)],
    ['share held forward', restraint.drivingForwardN / (9.80665 * massKg), vehicleKg > 2000 ? 0.8 : 0.9],
    ['straps bought', needOf(plan, 'strap'), restraint.strapCount],
    [
      'air of the drivers',
      volume.displaced.driversM3,
      displacementM3 === undefined ? volume.displaced.driversM3 : displacementM3 * driverCount
    ],
    ['drivers bought', needOf(plan, 'driver'), driverCount],
    ['amplifiers bought', needOf(plan, 'amplifier'), plan.circuit.amplifiers.length],
    ['screws of the drivers', screws?.need, screws && driverCount * screwCount],
    ['screws as long as the front is thick', Math.min(screws?.specification?.lengthM ?? 9, frontM), frontM],
    ['receptacles', needOf(plan, 'receptacle'), needOf(plan, 'receptacle') && 4 * driverCount],
    [
      'lining bought',
      needOf(plan, 'lining'),
      lined ? inner.widthM * inner.heightM + 2 * inner.depthM * (inner.widthM + inner.heightM) : 0
    ],
    ['lining thickness in air and bill', box.request.fittings?.lining?.thicknessM, lined ? 0.025 : undefined],
    [
      'panels sawn',
      sheets.done ? sheets.outcome.result.total.panelCount : 0,
      sheets.done ? panels.reduce((sum: number, { quantity }: Part) => sum + quantity, 0) : 0
    ],
    ['kerf of the saw', sheets.request?.kerfM, sheets.request && (board.sheet?.kerfM ?? sheets.request.kerfM)],
    [
      'length of the sheet',
      sheets.request?.sheets[0]?.lengthM,
      sheets.request && (board.sheet?.lengthM ?? sheets.request.sheets[0]?.lengthM)
    ]
  ]
}

/** Every join whose two sides differ. */
export function joinFaults(request: PlanRequest, plan: SystemPlan): readonly string[] {
  return [...electricalRows(request, plan), ...acousticRows(request, plan), ...woodRows(request, plan)]
    .filter(([, got, wanted]) => !same(got, wanted))
    .map(([what, got, wanted]) => `${what}: ${got}, not ${wanted}`)
}
