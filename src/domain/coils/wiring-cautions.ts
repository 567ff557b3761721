/** What to mind about a load and the way it is joined. */
import { type Caution, caution } from '../caution.ts'
import { toDigits } from '../digits.ts'
import { say } from '../say.ts'
import { nearestInRatio, type Wanted } from './choose-load.ts'
import { type NetworkLoad, ohmNumber, type PossibleLoad } from './coil-loads.ts'
import type { Coil, CoilNetwork } from './coil-network.ts'
import type { CoilSet } from './coil-set.ts'

/** The modulus may fall this far below the rated impedance (IEC 60268-5, from memory). */
const LOWEST_MODULUS = 0.8
const TARGET_TOLERANCE = 0.01

interface WiringFacts {
  readonly set: CoilSet
  readonly loads: readonly PossibleLoad[]
  /** The loads worth wiring. */
  readonly candidates: readonly PossibleLoad[]
  readonly wanted: Wanted
  readonly chosen: NetworkLoad | undefined
}

function noAllowedLoad(loads: readonly PossibleLoad[], minimumOhm: number, at: string): Caution {
  const highestOhm = Math.max(...loads.map(ohmNumber))
  return caution(
    'no-allowed-load',
    say('no-allowed-load.coils', { highestOhm: toDigits(highestOhm), minimumOhm: toDigits(minimumOhm) }),
    { at, figures: { highestOhm, minimumOhm } }
  )
}

function belowMinimum(loads: readonly PossibleLoad[], minimumOhm: number, at: string): readonly Caution[] {
  const below = loads.filter(load => ohmNumber(load) < minimumOhm).length
  if (below === 0) return []
  return [
    caution(
      'load-below-minimum',
      say('load-below-minimum', { belowCount: below, loadCount: loads.length, minimumOhm: toDigits(minimumOhm) }),
      { at, figures: { loads: below, minimumOhm } }
    )
  ]
}

function impedanceDip(loadOhm: number, minimumOhm: number, at: string): readonly Caution[] {
  const dipOhm = LOWEST_MODULUS * loadOhm
  if (dipOhm >= minimumOhm) return []
  return [
    caution(
      'impedance-dip',
      say('impedance-dip', {
        loadOhm: toDigits(loadOhm, 4),
        dipOhm: toDigits(dipOhm),
        minimumOhm: toDigits(minimumOhm)
      }),
      { at, figures: { dipOhm, minimumOhm } }
    )
  ]
}

function limitCautions({ loads, wanted, chosen }: WiringFacts): readonly Caution[] {
  const { lowestLoadOhm, limitField: at = 'minimumOhm' } = wanted
  if (lowestLoadOhm === undefined) return []
  if (chosen === undefined) return [noAllowedLoad(loads, lowestLoadOhm, at)]
  return [...belowMinimum(loads, lowestLoadOhm, at), ...impedanceDip(ohmNumber(chosen), lowestLoadOhm, at)]
}

function shareCautions({ set, loads, chosen }: WiringFacts): readonly Caution[] {
  const uneven = loads.filter(load => !load.balanced)
  const cautions: Caution[] = []
  if (chosen !== undefined && !chosen.balanced) {
    const percent = (100 * chosen.unevenness) / set.coils.length
    cautions.push(
      caution(
        'unequal-power',
        say('unequal-power', {
          hottestPercent: toDigits(percent),
          equalPercent: toDigits(100 / set.coils.length)
        }),
        { figures: { hottestPercent: percent, equalPercent: 100 / set.coils.length } }
      )
    )
  } else if (uneven.length > 0) {
    const worst = Math.max(...uneven.map(load => load.unevenness))
    cautions.push(
      caution(
        'unequal-power',
        say('unequal-power.listed', {
          unevenCount: uneven.length,
          loadCount: loads.length,
          worstTimes: toDigits(worst)
        }),
        { level: 'note', figures: { loads: uneven.length, timesEqualShare: worst } }
      )
    )
  }
  if (set.alike === undefined) {
    cautions.push(caution('unlike-coils', say('unlike-coils'), { at: 'coilsOhm' }))
  }
  return cautions
}

/** The driver's coils in series with each other do not count: only one driver's current through another's coil. */
function hasDriversInSeries(network: CoilNetwork<Coil>): boolean {
  if (network.join === 'coil') return false
  const drivers = (part: CoilNetwork<Coil>): readonly number[] =>
    part.join === 'coil' ? [part.leaf.driver] : part.parts.flatMap(drivers)
  const across = new Set(drivers(network)).size > 1
  return (network.join === 'series' && across) || network.parts.some(hasDriversInSeries)
}

/** The load wired need not be the nearest: where no network balances, even shares come before the target. */
function targetOff({ candidates, wanted: { targetOhm, lowestLoadOhm = 0 }, chosen }: WiringFacts): readonly Caution[] {
  if (chosen === undefined || targetOhm === undefined) return []
  const ohm = ohmNumber(chosen)
  const percentOff = (load: number) => 100 * (load / targetOhm - 1)
  if (Math.abs(percentOff(ohm)) <= 100 * TARGET_TOLERANCE) return []
  const nearest = nearestInRatio(
    candidates.filter(load => ohmNumber(load) >= lowestLoadOhm),
    targetOhm
  )
  const nearestOhm = nearest === undefined ? ohm : ohmNumber(nearest)
  const off = say('target-off.off', { offPercent: toDigits(percentOff(ohm)), targetOhm: toDigits(targetOhm) })
  const message =
    nearestOhm === ohm
      ? say('target-off', { loadOhm: toDigits(ohm), off })
      : say('target-off.uneven', { loadOhm: toDigits(ohm), off, nearestOhm: toDigits(nearestOhm) })
  return [
    caution('target-off', message, {
      at: 'targetOhm',
      figures: { ohm, nearestOhm, targetOhm, offPercent: percentOff(ohm) }
    })
  ]
}

export function wiringCautions(facts: WiringFacts): readonly Caution[] {
  const { set, chosen } = facts
  const cautions = [...limitCautions(facts), ...shareCautions(facts)]
  if (set.coilsPerDriver > 1) {
    cautions.push(
      caution(
        'all-coils-driven',
        say('all-coils-driven', {
          coils: set.coilsPerDriver === 2 ? say('coils.both') : say('coils.all', { coilCount: set.coilsPerDriver })
        })
      )
    )
  }
  if (chosen !== undefined && hasDriversInSeries(chosen.network)) {
    cautions.push(caution('drivers-in-series', say('drivers-in-series')))
  }
  return [...cautions, ...targetOff(facts)]
}
