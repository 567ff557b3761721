/** Completes a partial small-signal set: each relation either yields one unknown or, when nothing is left, checks the rest. */
import { type DriverIdentity, driverIdentities } from './driver-identities.ts'
import {
  type PartialSmallSignalSet,
  type SmallSignalQuantity,
  smallSignalQuantities
} from './small-signal-quantities.ts'

interface Derivation {
  readonly member: SmallSignalQuantity
  readonly identity: DriverIdentity
}

export interface CompletedSet {
  readonly known: PartialSmallSignalSet
  readonly derivations: readonly Derivation[]
  /** Relations that nothing was taken from, so that they can contradict the sheet. */
  readonly redundant: readonly DriverIdentity[]
}

const isKnown = (known: PartialSmallSignalSet, name: SmallSignalQuantity) => known[name] !== undefined

function nextStep(known: PartialSmallSignalSet, unused: readonly DriverIdentity[]): Derivation | undefined {
  for (const identity of unused) {
    const unknown = identity.members.filter(name => !isKnown(known, name))
    const [member] = unknown
    if (member !== undefined && unknown.length === 1) return { member, identity }
  }
  return undefined
}

/**
 * Propagates the relations until nothing changes. Each is used once, so a value is never checked against itself.
 *
 * @param given        SI values > 0
 * @param stiffnessPa  ρc² of the air [Pa] > 0
 * @validity Small signals; the piston range of the cone.
 * @source derived: elimination over the relations of driver-identities.ts
 */
export function completeSet(given: PartialSmallSignalSet, stiffnessPa: number): CompletedSet {
  const known: { [Name in SmallSignalQuantity]?: number } = { ...given }
  const derivations: Derivation[] = []
  let unused = driverIdentities
  for (let step = nextStep(known, unused); step !== undefined; step = nextStep(known, unused)) {
    const { member, identity } = step
    known[member] = identity.solve(member, known, stiffnessPa)
    derivations.push(step)
    unused = unused.filter(other => other !== identity)
  }
  const redundant = unused.filter(({ members }) => members.every(name => isKnown(known, name)))
  return { known, derivations, redundant }
}

export function unknownOf(known: PartialSmallSignalSet): readonly SmallSignalQuantity[] {
  return smallSignalQuantities.filter(name => !isKnown(known, name))
}

/**
 * The smallest additions that would make a set complete, e.g. `[['vasM3'], ['cmsMPerN'], ['mmsKg']]`: any one list will do.
 */
export function smallestAdditions(given: PartialSmallSignalSet): readonly (readonly SmallSignalQuantity[])[] {
  const absent = unknownOf(given)
  const completes = (names: readonly SmallSignalQuantity[]) => {
    const tried = { ...given, ...Object.fromEntries(names.map(name => [name, 1])) }
    return unknownOf(completeSet(tried, 1).known).length === 0
  }
  let candidates: readonly (readonly SmallSignalQuantity[])[] = [[]]
  while (candidates.length > 0) {
    const enough = candidates.filter(completes)
    if (enough.length > 0) return enough
    candidates = candidates.flatMap(names => {
      const from = absent.indexOf(names.at(-1) as SmallSignalQuantity) + 1
      return absent.slice(from).map(name => [...names, name])
    })
  }
  return []
}
