/** What a solved circuit says to the one who builds it. */
import type { Circuit, CircuitState } from '../../../contract/supply/supply-circuit.ts'
import { type Caution, caution } from '../../caution.ts'
import { inDigits } from '../../digits.ts'
import { fuseJudgement } from '../fuse/fuse-judgement.ts'
import { unlike } from '../source/unlike-batteries.ts'
import type { CircuitParts } from './circuit-parts.ts'
import { fullSineCurrents } from './circuit-states.ts'
import { reached } from './reach.ts'

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

/** Returns and tails before the first fuse as well: a load needs no fault to heat them. A stop rests on a given class and place. */
function loadCautions({ states }: Circuit, { cables }: CircuitParts): readonly Caution[] {
  const currents = fullSineCurrents(states)
  return cables.flatMap(({ asked, carries: { ampacityA } }, index) => {
    const { id, designation, insulationC, ambientC, spaces } = asked
    const currentA = currents.get(id) ?? 0
    if (ampacityA === undefined || currentA <= ampacityA * (1 + 1e-12)) return []
    const given = insulationC !== undefined && (ambientC !== undefined || spaces !== undefined)
    const settle = given
      ? ''
      : ' Its insulation class or place is assumed: read the print on the cable, say where it lies.'
    const message = `Cable ${id}, ${designation}, carries ${inDigits(ampacityA)} A for good here; at full sine ${inDigits(currentA)} A flow in it.${settle}`
    return [
      caution('cable-overloaded', message, {
        at: `cables[${index}]`,
        level: given ? 'stop' : 'care',
        figures: { ampacityA, currentA }
      })
    ]
  })
}

/** Batteries that cables, fuses and closed links tie together, each with the first of its bank. */
function bankCautions({ request }: CircuitParts): readonly Caution[] {
  const { batteries, cables = [], fuses = [], links = [] } = request
  const ways = [...cables, ...fuses, ...links]
  return batteries.flatMap((second, index) => {
    const bank = reached([second.plus], ways)
    const first = batteries.find(({ plus }) => bank.has(plus))
    if (first === undefined || first === second || !unlike(first, second)) return []
    const stated = first.chemistry !== undefined && second.chemistry !== undefined
    const said = (chemistry: string | undefined) => chemistry ?? 'kind not said'
    const message = `${first.id} (${said(first.chemistry)}) and ${second.id} (${said(second.chemistry)}) are tied together: they do not want the same charging voltage. Join them by a charger made for the second one, with a fuse at each end, or take two of one kind.`
    return [
      caution('unlike-batteries-parallel', message, { at: `batteries[${index}]`, level: stated ? 'stop' : 'care' })
    ]
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
    ...bankCautions(parts),
    ...cableCautions(result, parts),
    ...loadCautions(result, parts),
    ...fuseCautions(result, parts),
    ...result.states.flatMap(state => stateCautions(state, parts))
  ]
}
