/** What a solved circuit costs: one state, and the whole answer with its judgement: `npx tsx scripts/bench/circuit.ts`. */

import type { CircuitRequest } from '../../src/contract/supply/supply-circuit.ts'
import { assumptions } from '../../src/domain/assume.ts'
import { circuitParts } from '../../src/domain/circuit/points/circuit-parts.ts'
import { computeCircuit } from '../../src/domain/circuit/points/compute-circuit.ts'
import { feedCircuit } from '../../src/domain/circuit/points/feed-circuit.ts'
import { alderPlan, doors } from '../../test/support/alder-plan.ts'
import { electricalHalf } from '../../test/support/electrical-half.ts'
import { fortyElements } from '../../test/support/forty-elements.ts'
import { seeded } from '../../test/support/random-requests.ts'
import { type Candidate, timings } from './timing.ts'

const agm = {
  battery: { capacityAh: 92, chemistry: 'agm' },
  secondBattery: { arrangement: 'isolated', capacityAh: 95, chemistry: 'agm', coldCrankingA: 860 }
}
const others = Array.from({ length: 4 }, (_, index) => ({ ...doors, name: `doors ${index + 1}`, powerW: 250 }))
const cases = {
  'one amplifier': alderPlan(1500),
  'second battery, five amplifiers': alderPlan(1500, { otherAmplifiers: others, branchLengthM: 1.2, ...agm }),
  'lorry with converter': alderPlan(650, { systemVoltageV: 24, converter: {} })
}

function requestOf(name: string, plan: object): CircuitRequest {
  const { circuit } = electricalHalf(plan).parts
  if (!circuit.done) throw new Error(`${name}: ${circuit.refusal.message}`)
  return circuit.request
}

function candidatesOf(name: string, request: CircuitRequest): readonly Candidate[] {
  const parts = circuitParts(request, assumptions())
  const reference = request.batteries[0]?.minus ?? ''
  const state = () => feedCircuit(parts, { level: 'heavy', engine: 'idling' }, reference)
  return [
    { name: `${name}, ${state().elements.length} elements, one state`, run: state },
    { name: `${name}, whole answer`, run: () => computeCircuit(request) }
  ]
}

const candidates = [
  ...Object.entries(cases).flatMap(([name, plan]) => candidatesOf(name, requestOf(name, plan))),
  ...candidatesOf('three amplifiers, relay and second battery', fortyElements(seeded(1)))
]
for (const { name, minimum, median } of timings(candidates, 60)) {
  process.stdout.write(`${name}: ${minimum.toFixed(0)} µs least, ${median.toFixed(0)} µs median\n`)
}
