/** Coils joined in series and in parallel: what the amplifier sees, and how the power divides. */
import { numberOf, product, type Rational, rational, reciprocal, sum } from '../../numeric/rational.ts'

/** A leaf holds whatever names the coil: its kind while networks are counted, the coil itself once it is chosen. */
export type CoilNetwork<Leaf> =
  | { readonly join: 'coil'; readonly leaf: Leaf }
  | { readonly join: 'series' | 'parallel'; readonly parts: readonly CoilNetwork<Leaf>[] }

/** One coil of one driver, both counted from 1. */
export interface Coil {
  readonly driver: number
  readonly coil: number
}

/**
 * Resistance of a network, exact.
 *
 *   series  Z = ΣZi        parallel  1/Z = Σ1/Zi
 *
 * @param ohmOf  exact resistance of a leaf [Ω] > 0
 * @validity Rated impedances taken as equal pure resistances: right for the load rating and, for like coils, for the shares.
 * @source derived: Kirchhoff's laws
 * @check  4 ∥ 2 → 4/3; 4 + (4 ∥ 4) → 6
 */
export function networkOhm<Leaf>(network: CoilNetwork<Leaf>, ohmOf: (leaf: Leaf) => Rational): Rational {
  if (network.join === 'coil') return ohmOf(network.leaf)
  const parts = network.parts.map(part => networkOhm(part, ohmOf))
  return network.join === 'series' ? sum(parts) : reciprocal(sum(parts.map(reciprocal)))
}

/**
 * Share of the total power in each leaf, leaves in order of the tree; the shares add up to 1.
 *
 *   series child  Zi/ΣZ        parallel child  (1/Zi)/Σ(1/Z)
 *
 * @source derived: same current in series, same voltage in parallel
 * @check  4 ∥ 2 → 1/3, 2/3; 4 + 2 → 2/3, 1/3; 4 + (4 ∥ 4) → 2/3, 1/6, 1/6
 */
export function powerShares<Leaf>(
  network: CoilNetwork<Leaf>,
  ohmOf: (leaf: Leaf) => Rational,
  whole: Rational = rational(1n)
): readonly Rational[] {
  if (network.join === 'coil') return [whole]
  const weights = network.parts.map(part => {
    const ohm = networkOhm(part, ohmOf)
    return network.join === 'series' ? ohm : reciprocal(ohm)
  })
  const total = reciprocal(sum(weights))
  return network.parts.flatMap((part, index) => {
    const weight = weights[index] ?? rational(0n)
    return powerShares(part, ohmOf, product(whole, product(weight, total)))
  })
}

export function leavesOf<Leaf>(network: CoilNetwork<Leaf>): readonly Leaf[] {
  return network.join === 'coil' ? [network.leaf] : network.parts.flatMap(leavesOf)
}

/** The same tree with other leaves, visited in order. */
export function relabel<From, To>(network: CoilNetwork<From>, name: (leaf: From) => To): CoilNetwork<To> {
  if (network.join === 'coil') return { join: 'coil', leaf: name(network.leaf) }
  return { join: network.join, parts: network.parts.map(part => relabel(part, name)) }
}

/** One part stands for itself; there is no series or parallel connection of one thing. */
export function joined<Leaf>(join: 'series' | 'parallel', parts: readonly CoilNetwork<Leaf>[]): CoilNetwork<Leaf> {
  const [only] = parts
  return only !== undefined && parts.length === 1 ? only : { join, parts }
}

/** How much more than an equal share the hottest coil takes; 1 when balanced. */
export function unevenness(shares: readonly Rational[]): number {
  return Math.max(...shares.map(numberOf)) * shares.length
}
