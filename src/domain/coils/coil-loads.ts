/** Every load a set of coils can present, with the best network for each. */

import { MOST_COILS_LISTED_IN_FULL, MOST_LOADS_SHOWN } from '../../contract/coils/words.ts'
import type { Said } from '../../contract/sentences/form/template.ts'
import { compare, numberOf, product, type Rational, rational, reciprocal, textOf } from '../../numeric/rational.ts'
import { say } from '../say.ts'
import { arrangementWith, divisors, joinSaid, networkOf } from './arrangements.ts'
import { type Coil, type CoilNetwork, leavesOf, networkOhm, powerShares, relabel, unevenness } from './coil-network.ts'
import type { CoilSet } from './coil-set.ts'
import { evenest } from './evenest-networks.ts'
import { coilSaid } from './joints.ts'
import { seriesParallelNetworks } from './series-parallel.ts'

export interface NetworkLoad {
  readonly ohm: Rational
  readonly network: CoilNetwork<Coil>
  readonly join: Said
  /** Share of the power in each coil, in the order of {@link CoilSet.coils}. */
  readonly shares: readonly Rational[]
  readonly balanced: boolean
  /** Greatest share times number of coils; 1 when balanced. */
  readonly unevenness: number
}

/** A load as far as choosing needs it; its network is only worked out for the one that is chosen or shown. */
export interface PossibleLoad {
  readonly ohm: Rational
  readonly balanced: boolean
  readonly unevenness: number
  readonly made: () => NetworkLoad
}

interface NetworkLoads {
  /** To be shown, ascending; of very many the most even. */
  readonly loads: readonly NetworkLoad[]
  /** One for each distinct load, ascending. */
  readonly every: readonly PossibleLoad[]
  readonly distinctLoadCount: number
  /** Of all series-parallel networks; absent where they are not enumerated. */
  readonly networkCount?: number
}

function networkSaid(network: CoilNetwork<Coil>, coilsPerDriver: number): Said {
  if (network.join === 'coil') return coilSaid(network.leaf, coilsPerDriver)
  const parts = network.parts.map(part => {
    const said = networkSaid(part, coilsPerDriver)
    return part.join === 'coil' ? said : say('coils.group', { network: said })
  })
  const id = network.join === 'series' ? 'coils.in-series' : 'coils.in-parallel'
  return parts.reduceRight((rest, first) => say(id, { first, rest }))
}

function loadOf(set: CoilSet, network: CoilNetwork<Coil>, join: Said): NetworkLoad {
  const place = ({ driver, coil }: Coil) => (driver - 1) * set.coilsPerDriver + coil - 1
  const inTreeOrder = powerShares(network, set.ohmOf)
  const shares: Rational[] = []
  for (const [index, leaf] of leavesOf(network).entries()) shares[place(leaf)] = inTreeOrder[index] ?? rational(0n)
  const [first = rational(1n)] = shares
  return {
    ohm: networkOhm(network, set.ohmOf),
    network,
    join,
    shares,
    balanced: shares.every(share => compare(share, first) === 0),
    unevenness: unevenness(shares)
  }
}

/** Gives the leaves of a network of kinds real coils of those kinds, in the order of the drivers. */
function assign(set: CoilSet, kinds: readonly (readonly Coil[])[], network: CoilNetwork<number>): CoilNetwork<Coil> {
  const used = kinds.map(() => 0)
  return relabel(network, kind => {
    const next = used[kind] ?? 0
    used[kind] = next + 1
    return kinds[kind]?.[next] ?? { driver: set.driverCount, coil: set.coilsPerDriver }
  })
}

function kindsOf(set: CoilSet): readonly (readonly Coil[])[] {
  const kinds = new Map<string, Coil[]>()
  for (const coil of set.coils) {
    const key = textOf(set.ohmOf(coil))
    kinds.set(key, [...(kinds.get(key) ?? []), coil])
  }
  return [...kinds.values()]
}

function balancedLoads(set: CoilSet): readonly NetworkLoad[] {
  const { driverCount, coilsPerDriver } = set
  return divisors(set.coils.length).map(inSeries => {
    const arrangement = arrangementWith(inSeries, driverCount, coilsPerDriver)
    return loadOf(set, networkOf(arrangement, driverCount, coilsPerDriver), joinSaid(arrangement, driverCount))
  })
}

const asPossible = (load: NetworkLoad): PossibleLoad => ({ ...load, made: () => load })

const ascending = (loads: readonly PossibleLoad[]) => [...loads].sort((a, b) => numberOf(a.ohm) - numberOf(b.ohm))

/** Shares are exact, their unevenness is not: equal shares within this. */
const SAME_SHARE = 1e-9

/**
 * All loads of few coils, the balanced loads of many. Balanced networks of like coils are the s by p grids, R/Zc = s/p with
 * s·p = n: equal power in equal coils means equal current, so every path crosses s coils and every cut p.
 */
export function coilLoads(set: CoilSet): NetworkLoads {
  const preferred = set.alike === undefined ? [] : balancedLoads(set)
  if (set.coils.length > MOST_COILS_LISTED_IN_FULL) {
    return { loads: preferred, every: ascending(preferred.map(asPossible)), distinctLoadCount: preferred.length }
  }
  const kinds = kindsOf(set)
  const networks = seriesParallelNetworks(kinds.map(coils => coils.length))
  const best = evenest(
    kinds.map(([coil]) => (coil === undefined ? rational(1n) : set.ohmOf(coil))),
    networks
  )
  const made = new Set(preferred.map(load => textOf(load.ohm)))
  const others = [...best.entries()]
    .filter(([key]) => !made.has(key))
    .map(([, { ohm, unevenness: uneven, network: kindNetwork }]): PossibleLoad => {
      const load = () => {
        const network = assign(set, kinds, kindNetwork)
        return loadOf(set, network, networkSaid(network, set.coilsPerDriver))
      }
      return { ohm, unevenness: uneven, balanced: uneven < 1 + SAME_SHARE, made: load }
    })
    .sort((a, b) => a.unevenness - b.unevenness)
  const shown = others.slice(0, MOST_LOADS_SHOWN - preferred.length).map(load => load.made())
  return {
    loads: [...preferred, ...shown].sort((a, b) => compare(a.ohm, b.ohm)),
    every: ascending([...preferred.map(asPossible), ...others]),
    networkCount: networks.length,
    distinctLoadCount: best.size
  }
}

/** Load over the impedance of one coil, when all are alike. */
export function ratioText(set: CoilSet, ohm: Rational): string | undefined {
  return set.alike === undefined ? undefined : textOf(product(ohm, reciprocal(set.alike)))
}

export const ohmNumber = ({ ohm }: Pick<PossibleLoad, 'ohm'>): number => numberOf(ohm)
