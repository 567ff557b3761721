/** A circuit at one level as a meter finds it: typical batteries, and how every voltage moves with each doubtful input. */

import { twelves } from '../../twelves.ts'
import type { Situation } from '../points/circuit-elements.ts'
import type { BatteryPart, CircuitParts } from '../points/circuit-parts.ts'
import { drawnA, type Element, type Law, partOf } from '../points/element.ts'
import { feedCircuit } from '../points/feed-circuit.ts'
import { type PointVoltages, respondTo, solvePoints } from '../points/solve-points.ts'
import { readingDefaults } from './defaults.ts'

interface Found {
  readonly elements: readonly Element[]
  readonly voltages: PointVoltages
}

export interface SolvedLevel extends Found {
  /** The same with one doubtful input moved to either end of its band. */
  readonly moved: readonly Found[]
}

/** Between its two ends, as far in ratio from either. @check 5.4 and 2 V over 680 A → 4.83 mΩ */
export const typicalOhm = ({ ohm, strong }: Pick<BatteryPart, 'ohm' | 'strong'>): number => Math.sqrt(ohm * strong.ohm)

const typical = (parts: CircuitParts): CircuitParts => ({
  ...parts,
  batteries: parts.batteries.map(battery => ({ ...battery, ohm: typicalOhm(battery) }))
})

/** Ratio of the far end of a battery's resistance to its middle. */
function batteryBand({ ohm, strong }: BatteryPart): number {
  const { statedBand } = readingDefaults
  return Math.max(1 + statedBand.value, Math.sqrt(ohm / strong.ohm))
}

function conductorBand({ id }: Element, { fuses, request }: CircuitParts): number {
  const { cableBand, fuseBand, linkBand, guessBand } = readingDefaults
  if (fuses.some(({ asked }) => asked.id === id)) return fuseBand.value
  const link = request.links?.find(each => each.id === id)
  // the starter is a guess as well
  if (id === 'starter') return guessBand.value
  if (link === undefined) return cableBand.value
  return link.assumed === true ? guessBand.value : linkBand.value
}

/** What the vehicle itself takes is more than that [A]. */
const SMALL_A = 2

/** Each way in which an element may differ from the plan, down and up. */
function variants(element: Element, parts: CircuitParts, { level }: Situation): readonly Law[] {
  const { law } = element
  const { restBandV, setBandV, limitBand, musicBand, loadBand, smallBand, vehicleBandA } = readingDefaults
  const each12 = twelves(parts.request.systemVoltageV)
  const both = (change: (sign: -1 | 1) => Law) => [change(-1), change(1)]
  switch (law.kind) {
    case 'conductor':
      return both(sign => ({ ...law, ohm: law.ohm * (1 + sign * conductorBand(element, parts)) }))
    case 'battery': {
      const part = parts.batteries.find(({ asked }) => asked.id === element.id)
      const ratio = part === undefined ? 1 : batteryBand(part)
      return [
        ...both(sign => ({ ...law, emfV: law.emfV + sign * restBandV.value * each12 })),
        ...both(sign => ({ ...law, givingOhm: law.givingOhm * ratio ** sign }))
      ]
    }
    case 'regulated': {
      // where the vehicle governs it, both ends of what it may hold
      const governed = parts.request.alternators?.find(({ id }) => id === element.id)
      const { lowestSetV = law.setV, highestSetV = law.setV } = governed ?? {}
      return [
        { ...law, setV: Math.min(law.setV - setBandV.value * each12, lowestSetV) },
        { ...law, setV: Math.max(law.setV + setBandV.value * each12, highestSetV) },
        ...both(sign => ({ ...law, limitA: law.limitA * (1 + sign * limitBand.value) }))
      ]
    }
    case 'power': {
      const band = level === 'heavy' || level === 'average' ? musicBand.value : loadBand.value
      return both(sign => ({ ...law, powerW: law.powerW * (1 + sign * band) }))
    }
    case 'current': {
      if (law.currentA === 0) return []
      const asked = parts.request.accessories?.find(({ id }) => id === element.id)
      // coils and turn-on inputs take what they take, more or less
      const bandA = (asked?.currentA ?? 0) < SMALL_A ? smallBand.value * law.currentA : vehicleBandA.value
      return both(sign => ({ ...law, currentA: Math.max(0, law.currentA + sign * bandA) }))
    }
  }
}

const acrossV = (voltages: PointVoltages, { from, to }: Pick<Element, 'from' | 'to'>) =>
  (voltages.get(from) ?? 0) - (voltages.get(to) ?? 0)

/** Whether a source goes over from one part of its law to another, as planned or as changed, where a straight line says nothing. */
const bends = (planned: Found, changed: readonly Element[], after: PointVoltages) =>
  planned.elements.some((element, index) => {
    const law = changed[index]?.law ?? element.law
    const part = partOf(element.law, acrossV(planned.voltages, element))
    return part !== partOf(law, acrossV(after, element)) || part !== partOf(law, acrossV(planned.voltages, element))
  })

/**
 * What a changed element draws beside the planned one: for a resistance that of its Norton equivalent at the same current, which is
 * right for a body of half or twice the resistance too; for all else the difference at the same voltage.
 */
function addedA(planned: Law, changed: Law, voltageV: number): number {
  const nowA = drawnA(planned, voltageV)
  if (planned.kind === 'conductor' && changed.kind === 'conductor') return nowA * (1 - changed.ohm / planned.ohm)
  const sameRest = planned.kind === 'battery' && changed.kind === 'battery' && planned.emfV === changed.emfV
  if (sameRest && nowA < 0) return nowA * (1 - changed.givingOhm / planned.givingOhm)
  return drawnA(changed, voltageV) - nowA
}

/**
 * The level, and the same level once for each doubtful input either way: to first order, and solved anew where a source reaches
 * its limit or a battery turns from taking to giving.
 *
 *   ΔV = −J⁻¹·Δi,  Δi what the changed element draws more
 *
 * @returns undefined where no state stands
 * @source implicit function theorem on Kirchhoff's laws; as adjoint: Director and Rohrer, IEEE Trans. Circuit Theory 16, 1969 (from memory)
 * @check  12.6 V behind 6 mΩ, 100 A: 10 % more resistance takes 60 mV
 */
export function solvedLevel(asked: CircuitParts, situation: Situation, reference: string): SolvedLevel | undefined {
  const parts = typical(asked)
  const { elements, voltages } = feedCircuit(parts, situation, reference)
  if (voltages === undefined) return undefined
  const changes = elements.flatMap((element, index) =>
    variants(element, asked, situation).map(law => ({ element, index, law }))
  )
  const extra = changes.map(({ element: { from, to, law: planned }, law }) => ({
    from,
    to,
    currentA: addedA(planned, law, acrossV(voltages, { from, to }))
  }))
  const shifts = respondTo(elements, reference, voltages, extra)
  const moved = changes.map(({ index, law }, change) => {
    const changed = elements.map((element, place) => (place === index ? { ...element, law } : element))
    const straight = shifts[change] ?? voltages
    const anew = bends({ elements, voltages }, changed, straight) ? solvePoints(changed, reference) : undefined
    return { elements: changed, voltages: anew ?? straight }
  })
  return { elements, voltages, moved }
}
