/** What guards a circuit: flows that fuses let through, faults that they must break, faults that must open them. */

import type {
  CircuitCable,
  CircuitCableGuard,
  CircuitFuseGuard,
  CircuitState,
  FarFault,
  FuseSeries
} from '../../../contract/supply/supply-circuit.ts'
import { present } from '../../present.ts'
import { fuseDefaults } from '../fuse/defaults.ts'
import { fuseFamily } from '../fuse/fuse-families-iso-8820.ts'
import { bareSources } from './bare-sources.ts'
import { strongElements, weakElements } from './circuit-elements.ts'
import type { CircuitParts } from './circuit-parts.ts'
import { acrossV, lastingAt } from './circuit-states.ts'
import { drawnA, type Element } from './element.ts'
import { type Feed, largestFlowA, type Way } from './largest-flow.ts'
import { reached } from './reach.ts'
import { sideOf } from './sides.ts'
import { solvePoints } from './solve-points.ts'

const NOTHING_A = 1e-3

const feeds = ({ request: { batteries, alternators = [], converters = [] } }: CircuitParts): readonly Feed[] => [
  ...[...batteries, ...alternators].map(({ plus }) => ({ point: plus, limitA: Number.POSITIVE_INFINITY })),
  ...converters.map(({ outPlus, ratedA }) => ({ point: outPlus, limitA: ratedA }))
]
const plusPoles = (parts: CircuitParts) => feeds(parts).map(({ point }) => point)

function plusWays({ request }: CircuitParts): readonly (Way & { readonly id: string })[] {
  const { cables = [], links = [] } = request
  return [
    ...cables.map(({ id, from, to }) => ({ id, from, to, limitA: Number.POSITIVE_INFINITY })),
    ...links.map(({ id, from, to, limitA = Number.POSITIVE_INFINITY }) => ({ id, from, to, limitA })),
    ...(request.fuses ?? []).map(({ id, from, to, ratingA }) => ({ id, from, to, limitA: ratingA }))
  ]
}

/** In a conduit more of it may go unfused. */
const bareLength = ({ from, to, lengthM, sheathed }: CircuitCable) => ({
  from,
  to,
  lengthM: sheathed === true ? (lengthM * fuseDefaults.usualM.value) / fuseDefaults.sheathedM.value : lengthM
})

/** Batteries without a fuse at their end; a link has no length, and one that limits its current guards what lies behind. */
export function bareBatteries(parts: CircuitParts): readonly string[] {
  const { batteries, cables = [], links = [], amplifiers, converters = [] } = parts.request
  const endless = links.filter(({ limitA }) => limitA === undefined)
  const unfused = [...cables.map(bareLength), ...endless.map(link => ({ ...link, lengthM: 0 }))]
  const loads = [...amplifiers.map(({ plus }) => plus), ...converters.map(({ inPlus }) => inPlus)]
  return bareSources({ sources: batteries, unfused, loads }, fuseDefaults.usualM.value)
}

/** Cables of the plus side; a tail before the first fuse is judged by its length alone. */
export function cableGuards(parts: CircuitParts, states: readonly CircuitState[]): readonly CircuitCableGuard[] {
  const ways = plusWays(parts)
  const sources = feeds(parts)
  const live = reached(plusPoles(parts), ways)
  const bare = reached(
    sources.filter(({ limitA }) => limitA === Number.POSITIVE_INFINITY).map(({ point }) => point),
    ways.filter(({ limitA }) => limitA === Number.POSITIVE_INFINITY)
  )
  const currents = lastingAt('full-sine', states, parts)
  return parts.cables.flatMap(({ asked: { id, from, to }, carries: { ampacityA } }) => {
    if (!live.has(from) || bare.has(from)) return []
    const others = ways.filter(way => way.id !== id)
    const [fromStartA, fromEndA] = [largestFlowA(others, sources, from), largestFlowA(others, sources, to)]
    return [
      {
        id,
        ...present({
          ampacityA,
          loadA: currents.get(id),
          fromStartA: Number.isFinite(fromStartA) ? fromStartA : undefined,
          fromEndA: Number.isFinite(fromEndA) ? fromEndA : undefined
        }),
        guarded: Math.max(fromStartA, fromEndA) <= (ampacityA ?? 0) * (1 + 1e-12)
      }
    ]
  })
}

/** What a dead short between two points drives through each element [A]: the two are one point then. */
function shorted(elements: readonly Element[], from: string, to: string, reference: string): (id: string) => number {
  const joined = (point: string) => (point === from ? to : point)
  const rest = elements.map(element => ({ ...element, from: joined(element.from), to: joined(element.to) }))
  const voltages = solvePoints(
    rest.filter(element => element.from !== element.to),
    reference
  )
  return id => {
    const element = rest.find(each => each.id === id)
    if (element === undefined || voltages === undefined) return 0
    const voltageV = element.from === element.to ? 0 : acrossV(voltages, element)
    return voltageV === undefined ? 0 : Math.abs(drawnA(element.law, voltageV))
  }
}

/** The largest current is that to the nearest battery's own post: through the body it would look smaller. */
export function fuseGuards(
  parts: CircuitParts,
  states: readonly CircuitState[],
  reference: string
): readonly CircuitFuseGuard[] {
  const elements = strongElements(parts)
  const [fullSine, heavy] = [lastingAt('full-sine', states, parts), lastingAt('heavy', states, parts)]
  return parts.fuses.map(({ asked: { id, from, to, type, breakingA } }) => {
    const currents = parts.batteries.flatMap(({ asked: { minus } }) =>
      [from, to].filter(end => end !== minus).map(end => shorted(elements, end, minus, reference)(id))
    )
    const known = breakingA ?? fuseFamily(type)?.breakingA
    const carried = present({ loadA: fullSine.get(id), heavyA: heavy.get(id) })
    return { id, ...carried, prospectiveA: Math.max(0, ...currents), ...present({ breakingA: known }) }
  })
}

export function farFaults(parts: CircuitParts, reference: string): readonly FarFault[] {
  const elements = weakElements(parts)
  const { request } = parts
  return request.amplifiers.map(({ id, plus, minus }) => {
    const currentThrough = shorted(elements, plus, minus, reference)
    const driven = parts.fuses.map(({ asked }) => {
      const currentA = currentThrough(asked.id)
      return { fuse: asked.id, currentA, multiple: currentA / asked.ratingA }
    })
    // what solving leaves of nothing is nothing
    const hardest = driven
      .filter(({ currentA }) => currentA > NOTHING_A)
      .toSorted((one, other) => other.multiple - one.multiple)[0]
    const limitedBy = sideOf(request, plus).converter
    return { amplifier: id, ...(hardest ?? { currentA: 0, multiple: 0 }), ...present({ limitedBy }) }
  })
}

/** Pairs down the tree: without the first the second has no source left, on either side since it joins both. Fuses side by side are none. */
export function fuseSeries(parts: CircuitParts): readonly FuseSeries[] {
  const fuses = parts.request.fuses ?? []
  const [ways, poles] = [plusWays(parts), plusPoles(parts)]
  return fuses.flatMap(first => {
    const live = reached(
      poles,
      ways.filter(({ id }) => id !== first.id)
    )
    return fuses
      .filter(({ id, from }) => id !== first.id && !live.has(from))
      .map(({ id, ratingA }) => ({ before: first.id, behind: id, ratio: first.ratingA / ratingA }))
  })
}
