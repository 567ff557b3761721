/** Of many networks, the one for each distinct load that shares the power most evenly. */
import { numberOf, type Rational, rational, reciprocal, sum, textOf } from '../../numeric/rational.ts'
import type { CoilNetwork } from './coil-network.ts'

interface Sketch {
  readonly ohm: Rational
  readonly network: CoilNetwork<number>
  readonly unevenness: number
}

interface Facts {
  readonly ohm: Rational
  /** Greatest share of one coil. */
  readonly greatest: number
  readonly coils: number
}

function factsOfParts(join: 'series' | 'parallel', parts: readonly Facts[]): Facts {
  const weights = parts.map(({ ohm }) => (join === 'series' ? ohm : reciprocal(ohm)))
  const total = sum(weights)
  return {
    ohm: join === 'series' ? total : reciprocal(total),
    greatest: Math.max(
      ...parts.map(({ greatest }, index) => (greatest * numberOf(weights[index] ?? total)) / numberOf(total))
    ),
    coils: parts.reduce((coils, part) => coils + part.coils, 0)
  }
}

/** Networks have parts in common; each part is worked out once. */
function sketcher(ohmOfKind: readonly Rational[]): (network: CoilNetwork<number>) => Sketch {
  const known = new Map<CoilNetwork<number>, Facts>()
  const factsOf = (network: CoilNetwork<number>): Facts => {
    const found = known.get(network)
    if (found !== undefined) return found
    const made =
      network.join === 'coil'
        ? { ohm: ohmOfKind[network.leaf] ?? rational(1n), greatest: 1, coils: 1 }
        : factsOfParts(network.join, network.parts.map(factsOf))
    known.set(network, made)
    return made
  }
  return network => {
    const { ohm, greatest, coils } = factsOf(network)
    return { ohm, network, unevenness: greatest * coils }
  }
}

/** @returns the networks by the text of their exact load */
export function evenest(
  ohmOfKind: readonly Rational[],
  networks: readonly CoilNetwork<number>[]
): ReadonlyMap<string, Sketch> {
  const sketch = sketcher(ohmOfKind)
  const best = new Map<string, Sketch>()
  for (const network of networks) {
    const made = sketch(network)
    const key = textOf(made.ohm)
    const known = best.get(key)
    if (known === undefined || made.unevenness < known.unevenness - 1e-12) best.set(key, made)
  }
  return best
}
