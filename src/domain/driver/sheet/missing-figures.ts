/** The refusal of a sheet that does not determine its driver: what is usual, what was given, what is missing. */
import { DesignError, type Fault } from '../../design-error.ts'
import { smallestAdditions } from './complete-set.ts'
import {
  type PartialSmallSignalSet,
  printedQuantities,
  type SmallSignalQuantity,
  smallSignalQuantities
} from './small-signal-quantities.ts'

const USUAL = 'A sheet usually gives fs, Qms, Qes (or Qts), Vas, Sd and Re'

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

function listed(names: Way, last: 'and' | 'or'): string {
  const symbols = names.map(name => printedQuantities[name].symbol)
  const end = symbols.at(-1) ?? 'none of them'
  return symbols.length < 2 ? end : `${symbols.slice(0, -1).join(', ')} ${last} ${end}`
}

/** What could stand in the place of one figure of a way, the others staying. */
function insteadOf(name: SmallSignalQuantity, way: Way, ways: readonly Way[]): Way {
  const others = way.filter(other => other !== name)
  return ways
    .filter(other => others.every(kept => other.includes(kept)))
    .flatMap(other => other.filter(tried => !way.includes(tried)))
    .sort((a, b) => soonest.indexOf(a) - soonest.indexOf(b))
}

function faultOf(name: SmallSignalQuantity, way: Way, ways: readonly Way[]): Fault {
  const instead = insteadOf(name, way, ways)
  const or = instead.length === 0 ? '' : `; ${listed(instead, 'or')} would do in its place`
  return { field: `driver.${name}`, detail: `${printedQuantities[name].symbol} is missing${or}.` }
}

/**
 * @param given  what the sheet gives and what could be assumed
 * @returns one fault for each figure of the shortest way that a sheet is likely to print
 */
export function missingFigures(given: PartialSmallSignalSet): DesignError {
  const ways = smallestAdditions(given)
  const [way = []] = [...ways].sort((a, b) => effort(a) - effort(b))
  const known = smallSignalQuantities.filter(name => given[name] !== undefined)
  const detail = `Not enough figures for this driver. ${USUAL}; this one gives ${listed(known, 'and')}.`
  return new DesignError('missing-input', { field: 'driver', detail }, ...way.map(name => faultOf(name, way, ways)))
}
