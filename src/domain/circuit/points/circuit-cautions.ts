/** What a solved circuit says to the one who builds it. */
import type { Circuit, CircuitState } from '../../../contract/supply/supply-circuit.ts'
import { type Caution, caution } from '../../caution.ts'
import { inDigits } from '../../digits.ts'
import { fuseJudgement } from '../fuse/fuse-judgement.ts'
import type { CircuitParts } from './circuit-parts.ts'

function stateCautions(state: CircuitState, { request, dropOutsV }: CircuitParts): readonly Caution[] {
  const { level, engine, stands, sustainableShare = 0, parts, withoutSupply } = state
  const when = `at level ${level}, engine ${engine}`
  if (!stands) {
    const message = `No steady state ${when}: about ${inDigits(100 * sustainableShare, 3)} % of the regulated power could be fed.`
    return [caution('circuit-collapse', message, { at: 'amplifiers', figures: { sustainableShare } })]
  }
  return [
    ...withoutSupply.map(id => caution('no-supply', `Nothing feeds ${id} ${when}.`, { at: 'links' })),
    ...request.amplifiers.flatMap(({ id }, index) => {
      const voltageV = parts.find(part => part.id === id)?.voltageV
      const dropOutV = dropOutsV[index] ?? 0
      if (voltageV === undefined || voltageV >= dropOutV) return []
      const message = `${id} has ${inDigits(voltageV, 4)} V ${when}; it stops at ${inDigits(dropOutV, 4)} V.`
      return [caution('below-drop-out', message, { at: `amplifiers[${index}]`, figures: { voltageV, dropOutV } })]
    })
  ]
}

function cableCautions({ cables }: Circuit, { request }: CircuitParts): readonly Caution[] {
  return cables.flatMap(({ id, guarded, ampacityA, fromStartA, fromEndA }) => {
    if (guarded) return []
    const flows = [fromStartA, fromEndA].map(flow => (flow === undefined ? 'no limit' : `${inDigits(flow, 4)} A`))
    const carries = ampacityA === undefined ? 'an unknown current' : `${inDigits(ampacityA, 4)} A`
    const message = `Cable ${id} carries ${carries}; with every fuse whole a fault on it draws ${flows[0]} from its first end, ${flows[1]} from its second.`
    const index = (request.cables ?? []).findIndex(cable => cable.id === id)
    return [caution('cable-unguarded', message, { at: `cables[${index}]` })]
  })
}

function fuseCautions({ fuses, farFaults }: Circuit, { request, batteries }: CircuitParts): readonly Caution[] {
  const level = batteries.every(({ strong }) => strong.stated) ? 'stop' : 'care'
  const { clearingMultiple } = fuseJudgement
  return [
    ...fuses.flatMap(({ id, prospectiveA, breakingA }, index) => {
      if (breakingA === undefined || prospectiveA <= breakingA) return []
      const message = `Up to ${inDigits(prospectiveA, 4)} A flow through fuse ${id} into a dead short; it breaks ${breakingA} A.`
      return [
        caution('breaking-capacity', message, { at: `fuses[${index}]`, level, figures: { prospectiveA, breakingA } })
      ]
    }),
    ...farFaults.flatMap(({ amplifier, currentA, multiple }) => {
      if (multiple >= clearingMultiple) return []
      const index = request.amplifiers.findIndex(({ id }) => id === amplifier)
      const message = `A dead short at ${amplifier} drives ${inDigits(currentA, 4)} A through the fuse it loads most, ${inDigits(multiple, 3)} times its rating: too little to open it in time.`
      return [caution('fault-current-low', message, { at: `amplifiers[${index}]`, figures: { currentA } })]
    })
  ]
}

export function circuitCautions(result: Circuit, parts: CircuitParts): readonly Caution[] {
  const { batteries } = parts.request
  return [
    ...result.bareSources.map(bare => {
      const index = batteries.findIndex(({ id }) => id === bare)
      const message = `No fuse at the end of ${bare}: put one within ${1000 * fuseJudgement.idealM} mm of its plus pole, before any branch.`
      return caution('bare-source', message, { at: `batteries[${index}]` })
    }),
    ...cableCautions(result, parts),
    ...fuseCautions(result, parts),
    ...result.states.flatMap(state => stateCautions(state, parts))
  ]
}
