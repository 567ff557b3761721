/** A whole circuit: solved at every level, and judged. */
import type { SourceId } from '../../../contract/sources/source.ts'
import type { Circuit, CircuitRequest } from '../../../contract/supply/supply-circuit.ts'
import { assumptions } from '../../assume.ts'
import type { Outcome } from '../../outcome.ts'
import { present } from '../../present.ts'
import { ampacitySource } from '../cable/ampacity.ts'
import { capacitorGuards } from './capacitor-guards.ts'
import { circuitCautions } from './circuit-cautions.ts'
import { bareBatteries, cableGuards, farFaults, fuseGuards, fuseSeries } from './circuit-guards.ts'
import { circuitParts } from './circuit-parts.ts'
import { requirePolarity } from './circuit-polarity.ts'
import { requireCircuit } from './circuit-refusals.ts'
import { circuitStates, marginAtFullSine, withoutGuesses } from './circuit-states.ts'
import { failingStates } from './circuit-voltages.ts'

/** @throws DesignError of a graph that is no circuit, of a cable, a battery or an amplifier */
export function computeCircuit(request: CircuitRequest): Outcome<Circuit> {
  requireCircuit(request)
  const assumed = assumptions()
  const parts = circuitParts(request, assumed)
  const reference = request.batteries[0]?.minus ?? ''
  requirePolarity(parts, reference)
  const states = circuitStates(parts, reference)
  const capacitors = capacitorGuards(parts, states, reference, assumed)
  const result: Circuit = {
    states,
    bareSources: bareBatteries(parts),
    cables: cableGuards(parts, states),
    fuses: fuseGuards(parts, states, reference),
    farFaults: farFaults(parts, reference),
    ...(capacitors.length === 0 ? {} : { capacitors }),
    series: fuseSeries(parts),
    ...present({ collapseMargin: marginAtFullSine(parts, states, reference) })
  }
  const failing = failingStates(states, parts)
  const certain = failing.length === 0 ? undefined : withoutGuesses(parts)
  return {
    result,
    cautions: circuitCautions(
      result,
      parts,
      certain === undefined ? undefined : circuitStates(certain, reference, failing)
    ),
    assumed: assumed.list,
    sources: [
      'kirchhoff-networks',
      ...new Set<SourceId>(['33-cfr-183-425', ...parts.cables.map(({ size }) => ampacitySource(size.areaM2))]),
      '33-cfr-183-455',
      'class-efficiency',
      'cold-cranking'
    ],
    basis: []
  }
}
