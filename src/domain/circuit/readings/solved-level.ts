/** A circuit at one level as a meter finds it: typical batteries, and how every voltage moves with each doubtful input. */
import { twelves } from '../../twelves.ts'
import type { Situation } from '../points/circuit-elements.ts'
import type { BatteryPart, CircuitParts } from '../points/circuit-parts.ts'
import { drawnA, type Element, type Law } from '../points/element.ts'
import { feedCircuit } from '../points/feed-circuit.ts'
import { type PointVoltages, respondTo } from '../points/solve-points.ts'
import { readingJudgement } from './reading-judgement.ts'

interface Found {
  readonly elements: readonly Element[]
  readonly voltages: PointVoltages
}

export interface SolvedLevel extends Found {
  /** The same with one doubtful input moved to the end of its band. */
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
  const { statedBand } = readingJudgement
  return Math.max(1 + statedBand, Math.sqrt(ohm / strong.ohm))
}

function conductorBand({ id }: Element, { fuses, request }: CircuitParts): number {
  const { cableBand, fuseBand, linkBand, guessBand } = readingJudgement
  if (fuses.some(({ asked }) => asked.id === id)) return fuseBand
  const link = request.links?.find(each => each.id === id)
  if (link === undefined) return cableBand
  return link.assumed === true ? guessBand : linkBand
}

/** Each way in which an element may differ from the plan. */
function variants(element: Element, parts: CircuitParts, { level }: Situation): readonly Law[] {
  const { law } = element
  const { restBandV, setBandV, limitBand, musicBand, loadBand, vehicleBandA } = readingJudgement
  const each12 = twelves(parts.request.systemVoltageV)
  switch (law.kind) {
    case 'conductor':
      return [{ ...law, ohm: law.ohm * (1 + conductorBand(element, parts)) }]
    case 'battery': {
      const part = parts.batteries.find(({ asked }) => asked.id === element.id)
      const givingOhm = law.givingOhm * (part === undefined ? 1 : batteryBand(part))
      return [
        { ...law, emfV: law.emfV - restBandV * each12 },
        { ...law, givingOhm }
      ]
    }
    case 'regulated':
      return [
        { ...law, setV: law.setV - setBandV * each12 },
        { ...law, limitA: law.limitA * (1 - limitBand) }
      ]
    case 'power':
      return [{ ...law, powerW: law.powerW * (1 + (level === 'heavy' || level === 'average' ? musicBand : loadBand)) }]
    case 'current':
      return law.currentA === 0 ? [] : [{ ...law, currentA: law.currentA + vehicleBandA }]
  }
}

const acrossV = (voltages: PointVoltages, { from, to }: Element) => (voltages.get(from) ?? 0) - (voltages.get(to) ?? 0)

/**
 * The level, and the same level once for each doubtful input, to first order.
 *
 *   ΔV = −J⁻¹·Δi,  Δi what the changed element draws more at the same voltage
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
  const extra = changes.map(({ element: { from, to, ...element }, law }) => {
    const voltageV = acrossV(voltages, { from, to, ...element })
    return { from, to, currentA: drawnA(law, voltageV) - drawnA(element.law, voltageV) }
  })
  const shifts = respondTo(elements, reference, voltages, extra)
  return {
    elements,
    voltages,
    moved: changes.map(({ index, law }, change) => ({
      elements: elements.map((element, place) => (place === index ? { ...element, law } : element)),
      voltages: shifts[change] ?? voltages
    }))
  }
}
