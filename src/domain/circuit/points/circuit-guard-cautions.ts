/** What cables and fuses of a circuit carry and break, said where it is too much. */
import type { Circuit, CircuitFuse } from '../../../contract/supply/supply-circuit.ts'
import { type Caution, caution } from '../../caution.ts'
import { inDigits } from '../../digits.ts'
import { type FuseFamily, fuseFamilies, voltageClass } from '../fuse/fuse-families-iso-8820.ts'
import { fuseJudgement } from '../fuse/fuse-judgement.ts'
import { circuitJudgement } from './circuit-judgement.ts'
import type { CablePart, CircuitParts } from './circuit-parts.ts'
import { lastingAt } from './circuit-states.ts'

/** A name that says what it is stands alone. */
const called = (kind: 'cable' | 'fuse', id: string) => (id.toLowerCase().includes(kind) ? id : `${kind} ${id}`)
const start = (text: string) => `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`

/** A stop rests on a given class and place. */
const isGiven = ({ asked }: CablePart) =>
  asked.insulationC !== undefined && (asked.ambientC !== undefined || asked.spaces !== undefined)
const readIt = (given: boolean) =>
  given ? '' : ' Its insulation class or place is assumed: read the print on the cable, say where it lies.'

function guardCautions({ cables: guards }: Circuit, { cables }: CircuitParts): readonly Caution[] {
  return guards.flatMap(({ id, guarded, ampacityA, fromStartA, fromEndA }) => {
    const index = cables.findIndex(({ asked }) => asked.id === id)
    const cable = cables[index]
    if (guarded || cable === undefined) return []
    const flows = [fromStartA, fromEndA].map(flow => (flow === undefined ? 'no limit' : `${inDigits(flow, 4)} A`))
    const carries = ampacityA === undefined ? 'an unknown current' : `${inDigits(ampacityA, 4)} A`
    const endless = fromStartA === undefined || fromEndA === undefined
    const certain = endless || isGiven(cable)
    const message = `${start(called('cable', id))} carries ${carries}; with every fuse whole a fault on it draws ${flows[0]} from its first end, ${flows[1]} from its second.${readIt(certain)}`
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
    const far = currentA > ampacityA * circuitJudgement.fuseOverload
    const message = `${start(called('cable', id))}, ${designation}, carries ${inDigits(ampacityA)} A for good here; at full sine ${inDigits(currentA)} A flow in it.${readIt(given)}`
    const level = given && far ? 'stop' : 'care'
    return [caution('cable-overloaded', message, { at: `cables[${index}]`, level, figures: { ampacityA, currentA } })]
  })
}

function fuseLoadCautions({ fuses }: Circuit, { request }: CircuitParts): readonly Caution[] {
  return fuses.flatMap(({ id, loadA = 0, heavyA = 0 }, index) => {
    const ratingA = request.fuses?.[index]?.ratingA ?? Number.POSITIVE_INFINITY
    const mostA = circuitJudgement.fuseOverload * ratingA
    if (loadA <= mostA && heavyA <= fuseJudgement.loadRatio.value * mostA) return []
    const message = `${start(called('fuse', id))}, ${ratingA} A, carries ${inDigits(loadA)} A at full sine and ${inDigits(heavyA)} A with dense bass: it opens while it is used. Take the next rating that its cable carries, or a lower gain.`
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
  const each = weak.map(
    ({ id, prospectiveA: flowA, breakingA: brokenA }) =>
      `${called('fuse', id)} ${inDigits(flowA, 3)} A, breaks ${brokenA} A`
  )
  const why = stated ? 'by the resistance given for the battery' : 'if the battery is as strong as it may be'
  const way =
    family === undefined
      ? `None of the families listed here breaks that: use a fuse-link whose maker states at least ${inDigits(Math.ceil(prospectiveA / 100) * 100, 4)} A of direct current at this voltage.`
      : `A ${family.form} (${family.standard}) breaks ${family.breakingA} A.`
  const message = `A dead short right behind a fuse may drive more than it breaks, ${why}: ${each.join('; ')}. ${way}`
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
    if (multiple >= fuseJudgement.clearingMultiple || limitedBy !== undefined) return []
    const { name = amplifier } = request.amplifiers[index] ?? {}
    const message =
      fuse === undefined
        ? `A dead short at ${name} drives no current through any fuse: none can open.`
        : `A dead short at ${name} drives ${inDigits(currentA, 3)} A through ${called('fuse', fuse)}, ${inDigits(multiple, 3)} times its rating: too little to open it in time.`
    return [caution('fault-current-low', message, { at: `amplifiers[${index}]`, figures: { currentA } })]
  })
}

function seriesCautions({ series }: Circuit): readonly Caution[] {
  return series.flatMap(({ before, behind, ratio }) => {
    if (ratio >= fuseJudgement.selectivityRatio) return []
    const message = `${start(called('fuse', before))} over ${called('fuse', behind)} is a ratio of ${ratio.toFixed(2)}, below ${fuseJudgement.selectivityRatio}: a fault behind the second may open the first too.`
    return [caution('selectivity-poor', message, { at: 'fuses', figures: { ratio } })]
  })
}

export function guardsSay(result: Circuit, parts: CircuitParts): readonly Caution[] {
  return [
    ...guardCautions(result, parts),
    ...loadCautions(result, parts),
    ...fuseLoadCautions(result, parts),
    ...breakingCautions(result, parts),
    ...faultCautions(result, parts),
    ...seriesCautions(result)
  ]
}
