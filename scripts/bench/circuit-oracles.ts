/**
 * How far solved circuits lie from a circuit simulator and from a nodal solution of our own, both written from the request
 * alone: `npx tsx scripts/bench/circuit-oracles.ts [RANDOM] [SEED]`. A state that one finds and the other does not counts apart.
 */
import { Simulation } from 'eecircuit-engine'
import type { CircuitRequest, CircuitState } from '../../src/contract/supply/supply-circuit.ts'
import { computeCircuit } from '../../src/domain/circuit/points/compute-circuit.ts'
import { circuitOf, type Moment, netlistOf, nodalVolts } from '../../test/support/circuit-oracle.ts'
import { electricalHalf } from '../../test/support/electrical-half.ts'
import { randomCircuit } from '../../test/support/random-circuits.ts'
import { seeded } from '../../test/support/random-requests.ts'
import { vehicles } from '../../test/support/twelve-vehicles.ts'

const moments: readonly Moment[] = [
  { level: 'silence', engine: 'idling' },
  { level: 'heavy', engine: 'idling' },
  { level: 'full-sine', engine: 'driving' },
  { level: 'average', engine: 'off' }
]

interface Tally {
  readonly states: number
  readonly collapses: number
  readonly nodalV: number
  readonly simulatorV: number
  /** States that stand in one and not in the other. */
  readonly apart: readonly string[]
}
const nothing: Tally = { states: 0, collapses: 0, nodalV: 0, simulatorV: 0, apart: [] }

const worst = (points: CircuitState['points'], volts: ReadonlyMap<string, number>) =>
  Math.max(...points.map(({ point, voltageV }) => Math.abs(voltageV - (volts.get(point) ?? 0))))

async function simulated(simulation: Simulation, text: string): Promise<ReadonlyMap<string, number> | undefined> {
  simulation.setNetList(text)
  const result = await simulation.runSim()
  if (result.dataType !== 'real') return undefined
  return new Map(result.data.map(({ name, values }) => [name.toLowerCase(), values.at(-1) ?? Number.NaN]))
}

async function compared(name: string, request: CircuitRequest, simulation: Simulation, before: Tally): Promise<Tally> {
  const { result, assumed } = computeCircuit(request)
  const given = (field: string) => assumed.find(each => each.field === field)?.value as number | undefined
  let tally = before
  for (const moment of moments) {
    const state = result.states.find(each => each.level === moment.level && each.engine === moment.engine)
    if (state === undefined) continue
    const label = `${name}, ${moment.level} ${moment.engine}`
    const circuit = circuitOf(request, moment, given)
    // a state that stands names its points; of one that does not, those of silence are asked
    const named = (state.stands ? state : result.states[0])?.points.map(({ point }) => point) ?? []
    const points = named.filter(point => point !== circuit.reference)
    const nodal = nodalVolts(circuit, points)
    const { text, nameOf } = netlistOf(circuit, points)
    const volts = await simulated(simulation, text)
    if (!state.stands) {
      const apart = nodal === undefined ? [] : [`${label}: we say collapse, the nodal solution stands`]
      tally = { ...tally, collapses: tally.collapses + 1, apart: [...tally.apart, ...apart] }
      continue
    }
    const missing = [
      ...(nodal === undefined ? [`${label}: the nodal solution finds none`] : []),
      ...(volts === undefined ? [`${label}: the simulator did not start`] : [])
    ]
    const ofSimulator = new Map(points.map(point => [point, volts?.get(nameOf(point)) ?? Number.NaN]))
    const simulatorV = volts === undefined ? 0 : worst(state.points, ofSimulator)
    const far = simulatorV > 0.01 ? [`${label}: ${simulatorV.toFixed(3)} V from the simulator`] : []
    tally = {
      states: tally.states + 1,
      collapses: tally.collapses,
      nodalV: Math.max(tally.nodalV, nodal === undefined ? 0 : worst(state.points, nodal)),
      simulatorV: Math.max(tally.simulatorV, far.length > 0 ? 0 : simulatorV),
      apart: [...tally.apart, ...missing, ...far]
    }
  }
  return tally
}

function told(title: string, { states, collapses, nodalV, simulatorV, apart }: Tally): void {
  process.stdout.write(
    `${title}: ${states} states stand, ${collapses} collapse; largest deviation ${nodalV.toExponential(1)} V from our nodal solution, ${simulatorV.toExponential(1)} V from the simulator; ${apart.length} apart\n`
  )
  for (const line of apart) process.stdout.write(`  ${line}\n`)
}

const [count = 100, seed = 1] = process.argv.slice(2).map(Number)
const simulation = new Simulation()
await simulation.start()

let twelve = nothing
for (const [name, { plan }] of Object.entries(vehicles)) {
  const { circuit } = electricalHalf(plan).parts
  if (circuit.done) twelve = await compared(name, circuit.request, simulation, twelve)
}
told('the twelve vehicles', twelve)

const random = seeded(seed)
let graphs = nothing
for (let turn = 0; turn < count; turn++) {
  graphs = await compared(`graph ${turn}`, randomCircuit(random), simulation, graphs)
}
told(`${count} random graphs, seed ${seed}`, graphs)
