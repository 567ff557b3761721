/** The electrical half of a plan with its bill, steps and picture, on a box laid out beforehand: no enclosure is searched. */

import type { PlanRequest } from '../../src/contract/systems/plan-request.ts'
import { metric } from '../../src/documents/draw/number-text.ts'
import { systemWiring } from '../../src/documents/wiring/system-wiring.ts'
import { wiringOf } from '../../src/documents/wiring/wiring-of-plan.ts'
import { assumptions } from '../../src/domain/assume.ts'
import { toSi } from '../../src/http/wire/request/to-si.ts'
import { planCautions } from '../../src/plan/answer/plan-cautions.ts'
import { planBuild } from '../../src/plan/bill/plan-build.ts'
import { planGraph } from '../../src/plan/electric/graph/plan-graph.ts'
import { planCircuit } from '../../src/plan/electric/plan-circuit.ts'
import { planSignal } from '../../src/plan/electric/plan-signal.ts'
import { planSupply } from '../../src/plan/electric/plan-supply.ts'
import { planLoad } from '../../src/plan/load/plan-load.ts'
import type { SystemPlan } from '../../src/plan/plan-system.ts'
import { planReadings, readingsInOrder } from '../../src/plan/readings/plan-readings.ts'
import { partRunner, waitingFor } from '../../src/plan/request/part.ts'
import { resolvedPlan } from '../../src/plan/request/resolved-plan.ts'
import { supplyBrief } from '../../src/plan/request/supply-brief.ts'
import { commissioning } from '../../src/plan/work/commissioning.ts'
import { inventedBox } from './invented-box.ts'

const outcome = <Result>(result: Result) => ({ result, cautions: [], assumed: [], sources: [], basis: [] })

/** @param wire  a plan as a caller sends it */
export function electricalHalf(wire: unknown, run = partRunner()) {
  const request = resolvedPlan(toSi(wire) as PlanRequest, assumptions(), run)
  const power = supplyBrief(request)
  const { joined, ...load } = planLoad(request)
  const { runs, ...supply } = planSupply(power, joined)
  const signal = planSignal(power, request, joined, waitingFor('an enclosure'))
  const wires = joined === undefined ? load : { ...load, joined }
  const { circuit, ...says } = planCircuit(power, wires, runs, request.signal, signal)
  const graph = planGraph(power, supply.current, runs, joined)
  const parts = { ...load, ...supply, circuit: graph.circuit, signal }
  const box = { done: true, request: {}, outcome: outcome(inventedBox) } as unknown as Parameters<typeof planBuild>[1]
  const { billOfMaterials } = planBuild(
    { ...request, finish: { lined: false, covered: false } },
    box,
    circuit,
    supply,
    assumptions()
  )
  const capacitor = supply.current.done ? supply.current.outcome.result.capacitor : undefined
  const readings = planReadings(
    graph.circuit,
    capacitor !== undefined,
    signal.done && signal.outcome.result.turnOn?.method === 'signal-sensing'
  )
  const steps = commissioning(1, circuit, signal.done ? signal.outcome.result.steps : [], readings, capacitor)
  const wiring = wiringOf({ parts, circuit } as unknown as SystemPlan, request, metric)
  return {
    request,
    parts,
    circuit,
    bill: billOfMaterials,
    cautions: planCautions(parts, undefined, [], says.cautions),
    assumed: [...says.assumed, ...graph.assumed],
    steps,
    readings: readingsInOrder(readings, steps),
    wiring,
    picture: wiring === undefined ? '' : systemWiring(wiring)
  }
}
