/** What cables and fuses of a circuit carry and break, said where it is too much. */

import type { Said } from '../../../contract/sentences/form/template.ts'
import type { Circuit, CircuitFuse } from '../../../contract/supply/supply-circuit.ts'
import { type Caution, caution } from '../../caution.ts'
import { fixed, toDigits } from '../../digits.ts'
import { listed, say } from '../../say.ts'
import { fuseDefaults } from '../fuse/defaults.ts'
import { fuseFamilies, voltageClass } from '../fuse/fuse-families-iso-8820.ts'
import type { FuseFamily } from '../fuse/fuse-family.ts'
import type { CablePart, CircuitParts } from './circuit-parts.ts'
import { lastingAt } from './circuit-states.ts'
import { circuitDefaults } from './defaults.ts'

/** A name that says what it is stands alone. */
const called = (kind: 'cable' | 'fuse', id: string): Said =>
  id.toLowerCase().includes(kind) ? say('part.own-name', { id }) : say(`part.${kind}`, { id })
const start = (kind: 'cable' | 'fuse', id: string): Said =>
  id.toLowerCase().includes(kind)
    ? say('part.own-name', { id: `${id.slice(0, 1).toUpperCase()}${id.slice(1)}` })
    : say(`part.${kind}-first`, { id })

/** A stop rests on a given class and place. */
const isGiven = ({ asked }: CablePart) =>
  asked.insulationC !== undefined && (asked.ambientC !== undefined || asked.spaces !== undefined)
const readIt = (given: boolean) => (given ? [] : say('read-the-print'))

function guardCautions({ cables: guards }: Circuit, { cables }: CircuitParts): readonly Caution[] {
  return guards.flatMap(({ id, guarded, ampacityA, fromStartA, fromEndA }) => {
    const index = cables.findIndex(({ asked }) => asked.id === id)
    const cable = cables[index]
    if (guarded || cable === undefined) return []
    const [first = [], second = []] = [fromStartA, fromEndA].map(flow =>
      flow === undefined ? say('fault-flow.no-limit') : say('current.flowing', { flowA: toDigits(flow) })
    )
    const carries =
      ampacityA === undefined ? say('current.unknown') : say('current.known', { ampacityA: toDigits(ampacityA) })
    const endless = fromStartA === undefined || fromEndA === undefined
    const certain = endless || isGiven(cable)
    const message = say('cable-unguarded', {
      cable: start('cable', id),
      carries,
      first,
      second,
      readIt: readIt(certain)
    })
    return [caution('cable-unguarded', message, { at: `cables[${index}]`, level: certain ? 'stop' : 'care' })]
  })
}

/** Returns and tails before the first fuse as well: a load needs no fault to heat them. */
function loadCautions({ states }: Circuit, parts: CircuitParts): readonly Caution[] {
  const currents = lastingAt('full-sine', states, parts)
  return parts.cables.flatMap((cable, index) => {
    const { ampacityA } = cable.carries
    const { id, designation } = cable.asked
    const currentA = currents.get(id) ?? 0
    if (ampacityA === undefined || currentA <= ampacityA * (1 + 1e-12)) return []
    const given = isGiven(cable)
    const far = currentA > ampacityA * circuitDefaults.fuseOverload.value
    const message = say('cable-overloaded', {
      cable: start('cable', id),
      designation,
      ampacityA: toDigits(ampacityA),
      currentA: toDigits(currentA),
      readIt: readIt(given)
    })
    const level = given && far ? 'stop' : 'care'
    return [caution('cable-overloaded', message, { at: `cables[${index}]`, level, figures: { ampacityA, currentA } })]
  })
}

function fuseLoadCautions({ fuses }: Circuit, { request }: CircuitParts): readonly Caution[] {
  return fuses.flatMap(({ id, loadA = 0, heavyA = 0 }, index) => {
    const ratingA = request.fuses?.[index]?.ratingA ?? Number.POSITIVE_INFINITY
    const mostA = circuitDefaults.fuseOverload.value * ratingA
    if (loadA <= mostA && heavyA <= fuseDefaults.loadRatio.value * mostA) return []
    const message = say('fuse-below-load', {
      fuse: start('fuse', id),
      ratingA,
      loadA: toDigits(loadA),
      heavyA: toDigits(heavyA)
    })
    return [caution('fuse-below-load', message, { at: `fuses[${index}]`, figures: { ratingA, loadA, heavyA } })]
  })
}

/** A family of the list that breaks this current and has the rating, or one at most twice as large. */
function stronger({ ratingA }: CircuitFuse, prospectiveA: number, systemVoltageV: number): FuseFamily | undefined {
  return fuseFamilies.find(
    ({ breakingA, voltagesV, ratingsA }: FuseFamily) =>
      breakingA >= prospectiveA &&
      Math.max(...voltagesV) >= voltageClass(systemVoltageV) &&
      ratingsA.some(rating => rating >= ratingA && rating <= 2 * ratingA)
  )
}

/** One for all fuses: a stop only where each battery's resistance is given and a family of the list would do. */
function breakingCautions({ fuses }: Circuit, { batteries, request }: CircuitParts): readonly Caution[] {
  const weak = fuses
    .map((guard, index) => ({ ...guard, index, asked: request.fuses?.[index] }))
    .filter(({ prospectiveA, breakingA }) => breakingA !== undefined && prospectiveA > breakingA)
    .toSorted((one, other) => other.prospectiveA - one.prospectiveA)
  const [worst] = weak
  if (worst?.asked === undefined || worst.breakingA === undefined) return []
  const { prospectiveA, breakingA, index, asked } = worst
  const family = stronger(asked, prospectiveA, request.systemVoltageV)
  const stated = batteries.every(({ strong }) => strong.stated)
  const each = weak.map(({ id, prospectiveA: flowA, breakingA: brokenA = 0 }) =>
    say('breaking-capacity.each', { fuse: called('fuse', id), flowA: toDigits(flowA, 3), brokenA })
  )
  const why = stated ? say('battery-strength.given') : say('battery-strength.may-be')
  const way =
    family === undefined
      ? say('breaking-capacity.none-listed', { leastA: toDigits(Math.ceil(prospectiveA / 100) * 100) })
      : say('breaking-capacity.family', {
          form: say(`fuse-form.${family.type}`),
          standard: family.standard,
          breakingA: family.breakingA
        })
  const message = say('breaking-capacity.several', { strength: why, each: listed(each, 'list.clauses'), way })
  return [
    caution('breaking-capacity', message, {
      at: `fuses[${index}]`,
      level: stated && family !== undefined ? 'stop' : 'care',
      figures: { prospectiveA, breakingA }
    })
  ]
}

function faultCautions({ farFaults }: Circuit, { request }: CircuitParts): readonly Caution[] {
  return farFaults.flatMap(({ amplifier, fuse, currentA, multiple, limitedBy }, index) => {
    // what a converter gives at most its cables carry for good: that is their guard
    if (multiple >= fuseDefaults.clearingMultiple.value || limitedBy !== undefined) return []
    const { name = amplifier } = request.amplifiers[index] ?? {}
    const message =
      fuse === undefined
        ? say('fault-current-low', { name })
        : say('fault-current-low.through', {
            name,
            currentA: toDigits(currentA, 3),
            fuse: called('fuse', fuse),
            multipleTimes: toDigits(multiple, 3)
          })
    return [caution('fault-current-low', message, { at: `amplifiers[${index}]`, figures: { currentA } })]
  })
}

function seriesCautions({ series }: Circuit): readonly Caution[] {
  return series.flatMap(({ before, behind, ratio }) => {
    if (ratio >= fuseDefaults.selectivityRatio.value) return []
    const message = say('selectivity-poor.series', {
      before: start('fuse', before),
      behind: called('fuse', behind),
      ratio: fixed(ratio, 2),
      wantedRatio: fuseDefaults.selectivityRatio.value
    })
    return [caution('selectivity-poor', message, { at: 'fuses', figures: { ratio } })]
  })
}

/** What a source switches, in any state. */
function outputCautions({ states }: Circuit, { request: { links = [] } }: CircuitParts): readonly Caution[] {
  return links.flatMap(({ id, limitA }, index) => {
    const flows = states.flatMap(({ parts }) => parts.filter(part => part.id === id))
    const currentA = Math.max(0, ...flows.map(part => Math.abs(part.currentA)))
    if (limitA === undefined || currentA <= limitA * (1 + 1e-6)) return []
    const message = say('output-overloaded', {
      id: say('part.own-name', { id: `${id.slice(0, 1).toUpperCase()}${id.slice(1)}` }),
      limitMa: Math.round(1000 * limitA),
      currentMa: Math.round(1000 * currentA)
    })
    return [caution('output-overloaded', message, { at: `links[${index}]`, figures: { currentA, limitA } })]
  })
}

export function guardsSay(result: Circuit, parts: CircuitParts): readonly Caution[] {
  return [
    ...guardCautions(result, parts),
    ...loadCautions(result, parts),
    ...fuseLoadCautions(result, parts),
    ...breakingCautions(result, parts),
    ...faultCautions(result, parts),
    ...seriesCautions(result),
    ...outputCautions(result, parts)
  ]
}
