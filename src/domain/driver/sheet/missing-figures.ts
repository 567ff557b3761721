/** The refusal of a sheet that does not determine its driver: what is usual, what was given, what is missing. */
import type { Said } from '../../../contract/sentences/form/template.ts'
import { DesignError, type FoundFault } from '../../design-error.ts'
import { say } from '../../say.ts'
import { smallestAdditions } from './complete-set.ts'
import {
  type PartialSmallSignalSet,
  printedQuantities,
  type SmallSignalQuantity,
  smallSignalQuantities
} from './small-signal-quantities.ts'

/** What a builder finds soonest on a sheet comes first. */
const soonest: readonly SmallSignalQuantity[] = [
  'fsHz',
  'vasM3',
  'sdM2',
  'reOhm',
  'qes',
  'qms',
  'qts',
  'mmsKg',
  'blTm',
  'cmsMPerN',
  'rmsKgPerS'
]

type Way = readonly SmallSignalQuantity[]

const effort = (way: Way) => way.reduce((sum, name) => sum + soonest.indexOf(name), 0)

function listed(names: Way, last: 'and' | 'or'): string | Said {
  const symbols = names.map(name => printedQuantities[name].symbol)
  const end = symbols.at(-1) ?? say('refused.none-of-them')
  return symbols.length < 2 ? end : say(`refused.list-${last}`, { first: symbols.slice(0, -1).join(', '), last: end })
}

/** What could stand in the place of one figure of a way, the others staying. */
function insteadOf(name: SmallSignalQuantity, way: Way, ways: readonly Way[]): Way {
  const others = way.filter(other => other !== name)
  return ways
    .filter(other => others.every(kept => other.includes(kept)))
    .flatMap(other => other.filter(tried => !way.includes(tried)))
    .sort((a, b) => soonest.indexOf(a) - soonest.indexOf(b))
}

function faultOf(name: SmallSignalQuantity, way: Way, ways: readonly Way[]): FoundFault {
  const instead = insteadOf(name, way, ways)
  const or = instead.length === 0 ? [] : say('refused.in-its-place', { names: listed(instead, 'or') })
  return { field: `driver.${name}`, detail: say('refused.is-missing', { symbol: printedQuantities[name].symbol, or }) }
}

/**
 * @param given  what the sheet gives and what could be assumed
 * @returns one fault for each figure of the shortest way that a sheet is likely to print
 */
export function missingFigures(given: PartialSmallSignalSet): DesignError {
  const ways = smallestAdditions(given)
  const [way = []] = [...ways].sort((a, b) => effort(a) - effort(b))
  const known = smallSignalQuantities.filter(name => given[name] !== undefined)
  const detail = say('refused.not-enough-figures-for-this-driver', {
    usual: say('refused.usual-figures'),
    given: listed(known, 'and')
  })
  return new DesignError('missing-input', { field: 'driver', detail }, ...way.map(name => faultOf(name, way, ways)))
}
