/**
 * A circuit in other hands: from the request alone to the laws of its parts, a netlist for a circuit simulator, and a
 * nodal solution of our own. Nothing of the circuit room is imported; the formulas are written here once more.
 */
import type { CircuitRequest } from '../../src/contract/supply/supply-circuit.ts'

type Level = 'silence' | 'average' | 'heavy' | 'full-sine'
type Engine = 'idling' | 'driving' | 'off'
export interface Moment {
  readonly level: Level
  readonly engine: Engine
}

/** Current from a to b as a function of the voltage between them and of the share of the load; its slope; the same for a simulator. */
interface Branch {
  readonly a: string
  readonly b: string
  readonly currentA: (volts: number, ramp: number) => number
  readonly slopeS: (volts: number, ramp: number) => number
  readonly words: (u: string, ramp: string) => string
}

const shareOf: Readonly<Record<Level, number>> = { silence: 0, average: 1 / 8, heavy: 1 / 3, 'full-sine': 1 }
const twelvesOf = (volts: number) => (volts > 40 ? 4 : volts > 18 ? 2 : 1)

/** IEC 60228 class 5 at 20 °C [Ω/m], from the table of a cable maker (read): 0.75 mm² 26.0 Ω/km. */
const thinOhmPerM: Readonly<Record<string, number>> = { '0.75 mm²': 0.026, '1.5 mm²': 0.0133 }

/** ASTM B258: 0.127 mm is 36 gauge, each gauge the 39th root of 92 thicker. */
function awgMm2(designation: string): number {
  const [, ought, number] = /^(?:(\d)\/0|(\d+)) AWG$/.exec(designation) ?? []
  const gauge = ought === undefined ? Number(number) : 1 - Number(ought)
  return (Math.PI / 4) * (0.127 * 92 ** ((36 - gauge) / 39)) ** 2
}

const resistor = (a: string, b: string, ohm: number): Branch => ({
  a,
  b,
  currentA: volts => volts / ohm,
  slopeS: () => 1 / ohm,
  words: u => `${u}/${ohm}`
})

const steady = (a: string, b: string, amperes: number): Branch => ({
  a,
  b,
  currentA: (_, ramp) => ramp * amperes,
  slopeS: () => 0,
  words: (_, ramp) => `${ramp}*${amperes}`
})

const power = (a: string, b: string, watts: number): Branch => ({
  a,
  b,
  currentA: (volts, ramp) => (ramp * watts) / Math.max(0.5, volts),
  slopeS: (volts, ramp) => (volts < 0.5 ? 0 : (-ramp * watts) / volts ** 2),
  words: (u, ramp) => `${ramp}*${watts}/max(${u},0.5)`
})

const bent = (a: string, b: string, emfV: number, givingOhm: number, takingOhm: number): Branch => ({
  a,
  b,
  currentA: volts => (volts - emfV) / (volts < emfV ? givingOhm : takingOhm),
  slopeS: volts => 1 / (volts < emfV ? givingOhm : takingOhm),
  words: u => `(${u}<${emfV}) ? (${u}-${emfV})/${givingOhm} : (${u}-${emfV})/${takingOhm}`
})

const LEAK_S = 1e-6
const limited = (a: string, b: string, setV: number, ohm: number, limitA: number): Branch => ({
  a,
  b,
  currentA: volts => LEAK_S * volts - Math.min(limitA, Math.max(0, (setV - volts) / ohm)),
  slopeS: volts => LEAK_S + (volts < setV && (setV - volts) / ohm < limitA ? 1 / ohm : 0),
  words: u => `${LEAK_S}*${u}-min(${limitA},max(0,(${setV}-${u})/${ohm}))`
})

const usualOf = { A: [0.2, 40], AB: [0.6, 40], B: [0.6, 40], D: [0.85, 15], G: [0.65, 40], H: [0.7, 40] } as const

type Amplifier = CircuitRequest['amplifiers'][number]

function amplifierBranch(amplifier: Amplifier, nominalV: number, share: number): Branch {
  const { plus, minus, powerW = 0, gainPowerW = powerW, class: kind = 'D', regulation } = amplifier
  const [efficiency, idle] = usualOf[kind]
  const full = powerW / (amplifier.efficiency ?? efficiency)
  const idleW = amplifier.quiescentW ?? Math.min(idle, 0.2 * full)
  // the gain is set for less than it can give
  const given = share * Math.min(1, gainPowerW / powerW)
  const law = kind === 'D' ? given : Math.sqrt(given)
  const watts = idleW + (full - idleW) * law
  if (regulation !== 'unregulated') return power(plus, minus, watts)
  const ratedV = amplifier.ratedVoltageV ?? 14.4 * twelvesOf(nominalV)
  return resistor(plus, minus, ratedV ** 2 / watts)
}

export interface Circuit {
  readonly reference: string
  readonly branches: readonly Branch[]
  /** Input of a converter: what its output gives, over its efficiency. */
  readonly couplings: readonly {
    readonly input: readonly [string, string]
    readonly output: Branch
    readonly efficiency: number
    readonly idleW: number
  }[]
}

/** @param given  resistance of a battery that its cold cranking current does not tell, by its place in the list [Ω] */
export function circuitOf(
  request: CircuitRequest,
  { level, engine }: Moment,
  given: (field: string) => number | undefined
): Circuit {
  const { systemVoltageV, batteries, alternators = [], cables = [], fuses = [], links = [], accessories = [] } = request
  const inSeries = twelvesOf(systemVoltageV)
  const runs = engine !== 'off'
  const need = (value: number | undefined, field: string) => {
    const found = value ?? given(field)
    if (found === undefined) throw new Error(`no ${field}`)
    return found
  }
  const converters = (request.converters ?? []).filter(({ onlyWithEngine }) => onlyWithEngine !== true || runs)
  const outputs = converters.map(({ id, outPlus, outMinus, setV, slopeOhm = 0.002, ratedA, ...rest }) => ({
    id,
    ...rest,
    output: limited(outPlus, outMinus, setV, slopeOhm, ratedA)
  }))
  const behind = (plus: string) => {
    const near = new Set([plus])
    for (const point of near)
      for (const { from, to } of [...cables, ...fuses, ...links])
        if (from === point) near.add(to)
        else if (to === point) near.add(from)
    const [first] = (request.converters ?? []).filter(({ outPlus }) => near.has(outPlus))
    return first === undefined ? systemVoltageV : 12 * twelvesOf(first.setV)
  }
  return {
    reference: batteries[0]?.minus ?? '',
    branches: [
      ...batteries.map(({ plus, minus, ...of }, index) => {
        const restV = (of.chemistry === 'lithium' ? 13.2 : 12.6) * inSeries
        const coldOhm = of.coldCrankingA === undefined ? undefined : (5.4 * inSeries) / of.coldCrankingA
        const ohm = need(of.resistanceOhm ?? coldOhm, `batteries[${index}].resistanceOhm`)
        return bent(plus, minus, of.openCircuitV ?? restV, ohm, of.chargingOhm ?? 0.2 * inSeries)
      }),
      ...(runs
        ? alternators.map(({ plus, minus, setV, slopeOhm = 0.002, idleA, drivingA }) =>
            limited(plus, minus, setV, slopeOhm, engine === 'idling' ? idleA : drivingA)
          )
        : []),
      ...cables.map(({ from, to, designation, lengthM, conductor, joints = 2, jointOhm = 0.0002 }) => {
        // copper 1/58, 10 % clad aluminium 0.027411 by ASTM B566 (second-hand), 2 % for the strand
        const ohmMm2PerM = conductor === 'copper-clad-10' ? 0.027411 : 1 / 58
        const ohmPerM = thinOhmPerM[designation] ?? (1.02 * ohmMm2PerM) / awgMm2(designation)
        return resistor(from, to, joints * jointOhm + lengthM * ohmPerM)
      }),
      ...fuses.map(({ from, to, ratingA, resistanceOhm = 0.09 / ratingA }) => resistor(from, to, resistanceOhm)),
      ...links
        .filter(({ opensWithoutEngine }) => opensWithoutEngine !== true || runs)
        .map(({ from, to, resistanceOhm }) => resistor(from, to, resistanceOhm)),
      ...request.amplifiers.map(each => amplifierBranch(each, behind(each.plus), shareOf[level])),
      ...accessories.map(({ plus, minus, currentA, parkedA = 0 }) => steady(plus, minus, runs ? currentA : parkedA)),
      ...outputs.map(({ output }) => output)
    ],
    couplings: outputs.map(({ inPlus, inMinus, output, efficiency = 0.88, idleW = 4 }) => ({
      input: [inPlus, inMinus],
      output,
      efficiency,
      idleW
    }))
  }
}

/** Points that current can reach from the reference over anything but a load. */
export function livePoints({ reference, branches }: Circuit, loads: ReadonlySet<string>): readonly string[] {
  const near = new Set([reference])
  for (const point of near)
    for (const { a, b } of branches)
      if (!loads.has(`${a} ${b}`) && (a === point || b === point)) near.add(a === point ? b : a)
  return [...near].filter(point => point !== reference)
}

/** A dense solver with pivots chosen by size. */
function solved(matrix: number[][], right: number[]): number[] {
  const size = right.length
  for (let column = 0; column < size; column++) {
    const rows = Array.from({ length: size - column }, (_, index) => column + index)
    const best = rows.reduce((one, other) =>
      Math.abs(matrix[other]?.[column] ?? 0) > Math.abs(matrix[one]?.[column] ?? 0) ? other : one
    )
    ;[matrix[column], matrix[best]] = [matrix[best] ?? [], matrix[column] ?? []]
    ;[right[column], right[best]] = [right[best] ?? 0, right[column] ?? 0]
    const pivot = matrix[column] ?? []
    for (let row = column + 1; row < size; row++) {
      const line = matrix[row] ?? []
      const factor = (line[column] ?? 0) / (pivot[column] ?? 1)
      if (factor === 0) continue
      for (let index = column; index < size; index++) line[index] = (line[index] ?? 0) - factor * (pivot[index] ?? 0)
      right[row] = (right[row] ?? 0) - factor * (right[column] ?? 0)
    }
  }
  for (let row = size - 1; row >= 0; row--) {
    const line = matrix[row] ?? []
    const rest = line.slice(row + 1).reduce((sum, value, index) => sum + value * (right[row + 1 + index] ?? 0), 0)
    right[row] = ((right[row] ?? 0) - rest) / (line[row] ?? 1)
  }
  return right
}

const TURNS = 400
const STEPS = 400
const LONGEST_STEP_V = 0.2

/** Of a point to earth while it settles [S]: it then runs down to the nearest state, over most kinks. */
const INERTIA_S = 60

/** Newton with short steps at one share of the load, from the voltages of a lower share; slowed down where that finds none. */
function settled(circuit: Circuit, points: readonly string[], from: readonly number[], ramp: number) {
  const straight = newton(circuit, points, { from, ramp, inertiaS: 0 })
  if (straight.found) return straight.volts
  const slow = newton(circuit, points, { from, ramp, inertiaS: INERTIA_S })
  const last = newton(circuit, points, { from: slow.volts, ramp, inertiaS: 0 })
  return last.found ? last.volts : undefined
}

interface Search {
  readonly from: readonly number[]
  readonly ramp: number
  readonly inertiaS: number
}

function newton(circuit: Circuit, points: readonly string[], { from, ramp, inertiaS }: Search) {
  const place = new Map(points.map((point, index) => [point, index]))
  const volts = [...from]
  const at = (point: string) => volts[place.get(point) ?? -1] ?? 0
  for (let turn = 0; turn < TURNS; turn++) {
    const matrix = points.map((_, row) => points.map((_, column) => (row === column ? inertiaS : 0)))
    const right = points.map(() => 0)
    const stamp = (a: string, b: string, amperes: number, slope: number) => {
      for (const [point, sign] of [
        [a, 1],
        [b, -1]
      ] as const) {
        const row = place.get(point)
        if (row === undefined) continue
        right[row] = (right[row] ?? 0) - sign * amperes
        const line = matrix[row] ?? []
        for (const [other, way] of [
          [a, 1],
          [b, -1]
        ] as const) {
          const column = place.get(other)
          if (column !== undefined) line[column] = (line[column] ?? 0) + sign * way * slope
        }
      }
    }
    for (const { a, b, currentA, slopeS } of circuit.branches) {
      if (a !== circuit.reference && !place.has(a)) continue
      if (b !== circuit.reference && !place.has(b)) continue
      stamp(a, b, currentA(at(a) - at(b), ramp), slopeS(at(a) - at(b), ramp))
    }
    for (const {
      input: [a, b],
      output,
      efficiency,
      idleW
    } of circuit.couplings) {
      const outV = at(output.a) - at(output.b)
      const inV = Math.max(0.5, at(a) - at(b))
      const taken = Math.max(0, -outV * output.currentA(outV, ramp)) / efficiency + ramp * idleW
      stamp(a, b, taken / inV, -taken / inV ** 2)
    }
    const worstA = Math.max(...right.map(Math.abs))
    const step = solved(matrix, [...right])
    const most = Math.max(...step.map(Math.abs))
    if (worstA < 1e-7 && most < 1e-9) return { volts, found: true }
    const short = Math.min(1, LONGEST_STEP_V / most)
    for (const [index, change] of step.entries()) volts[index] = (volts[index] ?? 0) + short * change
  }
  return { volts, found: false }
}

/** Our own nodal solution: the load turned up in 400 steps from nothing; undefined where a step finds no state near the last, as it may where a battery takes over from an alternator. */
export function nodalVolts(circuit: Circuit, points: readonly string[]): ReadonlyMap<string, number> | undefined {
  let volts: readonly number[] | undefined = settled(
    circuit,
    points,
    points.map(() => 12),
    0
  )
  for (let step = 1; step <= STEPS && volts !== undefined; step++) {
    volts = settled(circuit, points, volts, step / STEPS)
  }
  return volts === undefined ? undefined : new Map(points.map((point, index) => [point, volts?.[index] ?? Number.NaN]))
}

/** Words of a circuit simulator: the load rises for eight seconds, 50 mF at every point: with 5 a jump of the supply overshoots and collapses. */
export function netlistOf(circuit: Circuit, points: readonly string[]) {
  const node = (point: string) => (point === circuit.reference ? '0' : `p${points.indexOf(point)}`)
  const known = new Set([circuit.reference, ...points])
  const ramp = 'min(1,time/8)'
  const lines = circuit.branches.flatMap(({ a, b, words }, index) =>
    known.has(a) && known.has(b) ? [`B${index} ${node(a)} ${node(b)} I=${words(`V(${node(a)},${node(b)})`, ramp)}`] : []
  )
  const inputs = circuit.couplings.map(({ input: [a, b], output, efficiency, idleW }, index) => {
    const outV = `V(${node(output.a)},${node(output.b)})`
    const given = `max(0,-1*${outV}*(${output.words(outV, ramp)}))`
    return `Bin${index} ${node(a)} ${node(b)} I=(${given}/${efficiency}+${ramp}*${idleW})/max(V(${node(a)},${node(b)}),0.5)`
  })
  return {
    text: [
      'circuit',
      ...lines,
      ...inputs,
      ...points.map((point, index) => `C${index} ${node(point)} 0 50m`),
      ...points.map(point => `.save v(${node(point)})`),
      '.options reltol=1e-6 abstol=1e-9',
      '.tran 0.02 16 0 0.01',
      '.end'
    ].join('\n'),
    nameOf: (point: string) => `v(${node(point)})`
  }
}
