/** The air of a chamber as a spring: how far it is compressed, and what is said where that is too far or the chamber too small. */
import { type Caution, caution } from '../../caution.ts'
import { toDigits } from '../../digits.ts'
import type { Solution } from '../../network/solution.ts'
import { say } from '../../say.ts'
import { type ResponseSystem, solveGrid } from './response-system.ts'

/** Compression from which the second harmonic of the air is worth a word (5 %), and from which it is a fault (10 %). Ours. */
const STIFFENS_FROM = 0.08
const STIFF_FROM = 0.16
/** Ratio of the specific heats of air. */
const GAMMA = 1.4
/**
 * Least air in swept volumes Sd·Xmax. Air squeezed by ε = ΔV/V bends as (1 − ε)^−γ: its second harmonic over the fundamental
 * is (γ + 1)/4·ε = 0.6·ε. Xmax itself is commonly read at 10 % of distortion (IEC 62458, from memory); air that distorts as
 * much alone leaves nothing for motor and suspension: ε = 1/6. Derived; that limit is ours.
 */
export const SWEPT_VOLUMES = 6
/** Room a cone itself takes, over its area to the power 3/2: where no Xmax is known. Ours. */
const CONE_ROOM = 0.1

interface ChamberSwing {
  readonly name: string
  /** Peak of ΔV/V for one volt. */
  readonly perVolt: readonly number[]
}

/**
 * Compression of the air in every chamber.
 *
 *   ΔV/V = √2·|p|/(ρc²)
 *
 * @source derived: adiabatic air, small swing
 * @check  a tight chamber: N·Sd·x/V of the cones that face it
 */
function chamberSwings({ air, chamberNames }: ResponseSystem, { pressures }: Solution): readonly ChamberSwing[] {
  return chamberNames.map((name, node) => {
    const { re, im } = pressures[node] as Solution['pressures'][number]
    const perVolt = Array.from(re, (r, k) => (Math.SQRT2 * Math.hypot(r, im[k] as number)) / air.stiffnessPa)
    return { name, perVolt }
  })
}

function placeOf({ custom }: ResponseSystem, name: string): string {
  if (custom) return 'enclosure'
  return name === 'coupling' ? 'drivers.isobaric' : `enclosure.${name}`
}

/**
 * Second harmonic of the pressure, (γ+1)/4·ΔV/V, from p ∝ V^−γ to second order.
 *
 * @param frequenciesHz  within the programme, or of the curves
 * @validity an estimate: of the air alone, the suspension and the motor add theirs
 * @source derived; the share from which it is told is an engineering choice
 * @check  ΔV/V 0.08 → 4.8 %
 */
export function springCautions(system: ResponseSystem, frequenciesHz: ArrayLike<number>): readonly Caution[] {
  return chamberSwings(system, solveGrid(system, frequenciesHz)).flatMap(({ name, perVolt }) => {
    const share = Math.max(...perVolt) * system.voltageV
    if (share <= STIFFENS_FROM) return []
    const frequencyHz = toDigits(frequenciesHz[perVolt.indexOf(Math.max(...perVolt))] as number)
    const figures = {
      sharePercent: toDigits(share * 100),
      harmonicPercent: toDigits(share * 25 * (GAMMA + 1)),
      pressureKpa: toDigits((share * system.air.stiffnessPa) / Math.SQRT2 / 1e3),
      frequencyHz
    }
    const message = say('air-spring-stiffens', {
      name,
      sharePercent: figures.sharePercent,
      frequencyHz,
      harmonicPercent: figures.harmonicPercent,
      pressureKpa: figures.pressureKpa
    })
    const level = share > STIFF_FROM ? 'care' : 'note'
    return [caution('air-spring-stiffens', message, { at: placeOf(system, name), figures, level })]
  })
}

/** Cone area that pushes a chamber, those on its other side taken off: the air between an isobaric pair moves with both. */
function facing({ network }: ResponseSystem, node: number): number {
  const areas = network.drivers.map(({ front, rear, driver, count, polarity }) => {
    const side = (rear === node ? 1 : 0) - (front === node ? 1 : 0)
    return side * polarity * count * driver.sdM2
  })
  return Math.abs(areas.reduce((sum, area) => sum + area, 0))
}

export function smallChamberCautions(system: ResponseSystem): readonly Caution[] {
  const { air, driver, network, chamberNames } = system
  return network.chambers.flatMap(({ complianceM3PerPa }, node) => {
    const volumeM3 = complianceM3PerPa * air.stiffnessPa
    const areaM2 = facing(system, node)
    const depthM = driver.xmaxM === undefined ? CONE_ROOM * Math.sqrt(driver.sdM2) : SWEPT_VOLUMES * driver.xmaxM
    const leastM3 = areaM2 * depthM
    if (volumeM3 >= leastM3) return []
    const name = chamberNames[node] ?? ''
    const figures = { volumeL: toDigits(volumeM3 * 1e3), leastL: toDigits(leastM3 * 1e3) }
    const measure =
      driver.xmaxM === undefined
        ? say('chamber-too-small.cones')
        : say('chamber-too-small.sweep', { sweptTimes: SWEPT_VOLUMES })
    const message = say('chamber-too-small', { name, volumeL: figures.volumeL, measure, leastL: figures.leastL })
    return [caution('chamber-too-small', message, { at: placeOf(system, name), figures })]
  })
}
