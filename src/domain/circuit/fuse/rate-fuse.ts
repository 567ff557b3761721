/** The fuse of a cable: rating between what the load draws and what the cable carries, its family, its place. */

import type { ChosenFuse } from '../../../contract/supply/fuse.ts'
import type { FuseAnswer, FuseRequest } from '../../../contract/supply/supply-fuses.ts'
import type { FusePolicy } from '../../../contract/supply/words.ts'
import { type Assumptions, assumptions } from '../../assume.ts'
import type { Caution } from '../../caution.ts'
import { DesignError } from '../../design-error.ts'
import { fixed } from '../../digits.ts'
import type { Outcome } from '../../outcome.ts'
import { present } from '../../present.ts'
import { say } from '../../say.ts'
import { conductorLaw, conductorOhmPerM } from '../cable/conductor-resistance.ts'
import { type Breaking, breakingCurrent, strongestSource } from './battery-source.ts'
import { chosenFuse, fuseHeating, type RatingBounds, ratingBounds, withMaker } from './chosen-fuse.ts'
import { fuseDefaults } from './defaults.ts'
import { ampacityBasis, fuseSources, thermalBasis } from './fuse-basis.ts'
import { breakingCaution, makerCautions, overcurrentCautions, selectivityCautions } from './fuse-cautions.ts'
import { placementCautions } from './fuse-placement.ts'
import { type FuseLink, nextRating } from './fuse-rating.ts'
import { timeBand } from './fuse-time-current.ts'
import { compositionCaution, type ProtectedCable, protectedCable } from './protected-cable.ts'
import { selectivity } from './selectivity.ts'
import { strongerCable } from './stronger-cable.ts'

interface Task {
  readonly policy: FusePolicy
  readonly systemVoltageV: number
  readonly loadA: number
}

function refuseLoad(lowestA: number): never {
  throw new DesignError('no-solution', {
    field: 'currentA',
    value: lowestA,
    unit: 'A',
    detail: say('refused.no-fuse-link-of-the-allowed', { lowestA: fixed(lowestA, 1) })
  })
}

/** The cable is too thin for the load, or for the fuse that the load needs; says by which of the two, and what would do. */
function refuseCable(
  { ratingA }: FuseLink,
  cable: ProtectedCable,
  { policy, systemVoltageV, loadA }: Task,
  at: string
) {
  const { ampacityA, highestFuseA, size } = cable
  const stronger = strongerCable(cable, ratingA, loadA, policy, systemVoltageV)
  const advice =
    stronger === undefined
      ? say('refused.parallel-runs')
      : say('refused.use-stronger', {
          designation: stronger.designation,
          ampacityA: fixed(stronger.ampacityA, 1),
          policy:
            policy === 'strict' ? [] : say('refused.by-policy', { fuseA: fixed(stronger.highestFuseA, 1), policy })
        })
  const detail =
    loadA > ampacityA
      ? say('refused.the-load-draws-a-but-carries', {
          loadA: fixed(loadA, 1),
          designation: size.designation,
          ampacityA: fixed(ampacityA, 1),
          advice
        })
      : say('refused.the-load-draws-a-but-carries.2', {
          ratingA,
          designation: size.designation,
          highestFuseA: fixed(highestFuseA, 1),
          advice
        })
  return new DesignError('no-solution', { field: `${at}designation`, value: size.designation, detail })
}

interface FuseTask {
  /** The thinnest first. */
  readonly cables: readonly ProtectedCable[]
  readonly places: readonly string[]
}

/** In the order of the request. */
function protectedCables(request: FuseRequest, policy: FusePolicy, assumed: Assumptions) {
  const first = protectedCable(request.cable, policy, request.systemVoltageV, assumed, 'cable.')
  const others = (request.alsoProtects ?? []).map((cable, index) =>
    protectedCable(cable, policy, request.systemVoltageV, assumed, `alsoProtects[${index}].`)
  )
  return [first, ...others] as const
}

function weakestFirst(cables: readonly ProtectedCable[]): FuseTask {
  const placed = cables
    .map((cable, index) => ({ cable, place: index === 0 ? 'cable.' : `alsoProtects[${index - 1}].` }))
    .toSorted((one, other) => one.cable.highestFuseA - other.cable.highestFuseA)
  return { cables: placed.map(({ cable }) => cable), places: placed.map(({ place }) => place) }
}

/** Battery and way to the fuse: stated, or the planned piece of cable, once out. */
function breakingOf(request: FuseRequest, { size, material }: ProtectedCable, assumed: Assumptions): Breaking {
  const { source = {}, distanceM = 0, systemVoltageV } = request
  const law = conductorLaw({ conductor: material }, assumptions())
  const plannedOhm = distanceM * conductorOhmPerM(size, law, 20)
  const rule = distanceM > 0 ? fuseDefaults.tailOhm : fuseDefaults.onThePost
  const tailOhm = assumed.work(source.leadOhm, 'source.leadOhm', plannedOhm, rule)
  return strongestSource(source, systemVoltageV, tailOhm, assumed)
}

function linkFor(request: FuseRequest, bounds: RatingBounds, breaking: Breaking): FuseLink {
  const { systemVoltageV, types, makerFuseA } = request
  const ask = { systemVoltageV, breaking, lowestA: bounds.lowestA, ...present({ types }) }
  const ruled = nextRating(ask, 'types')
  return ruled === undefined ? refuseLoad(bounds.lowestA) : withMaker(ruled, makerFuseA, bounds.loadA)
}

const HAIR = 1 + 1e-12

/** @throws DesignError `no-solution` for the first cable that the load or its fuse is too much for */
function requireCables(link: FuseLink, { cables, places }: FuseTask, task: Task): void {
  for (const [index, cable] of cables.entries()) {
    if (task.loadA <= cable.ampacityA * HAIR && link.ratingA <= cable.highestFuseA * HAIR) continue
    throw refuseCable(link, cable, task, places[index] ?? '')
  }
}

/** How it behaves under overload and beside the fuses behind it, where that is asked. */
function behaviour({ overcurrentA, branchFusesA }: FuseRequest, { type, ratingA }: ChosenFuse) {
  return {
    ...present({
      timeCurrent: overcurrentA === undefined ? undefined : timeBand(type, ratingA, overcurrentA),
      selectivity: branchFusesA === undefined ? undefined : branchFusesA.map(branchA => selectivity(ratingA, branchA))
    })
  }
}

/**
 * Rates the fuse of a cable.
 *
 *   I_fullSine ≤ In, I_heavy/(ratio·F_T) ≤ In, In ≤ Iz of every cable up to the next fuse (1.5 times the table by policy), I_fullSine ≤ Iz by any policy
 *
 * @param request  currentA the full-sine current [A] > 0
 * @throws DesignError `no-solution` where no rating lies between load and cable, `fuse-voltage`, and those of the cable
 * @validity The fuse protects cables; amplifiers are protected by their own fuses.
 * @source ISO 8820 families; 33 CFR 183.425 and 183.455
 * @check  48.3 A on 4 AWG, 105 °C at 50 °C → 50 A
 */
export function rateFuse(request: FuseRequest): Outcome<FuseAnswer> {
  const assumed = assumptions()
  const policy = assumed.take<FusePolicy>(request.policy, 'policy', fuseDefaults.policy)
  const cables = protectedCables(request, policy, assumed)
  const heating = fuseHeating(request, cables[0].surroundings.ambientC, assumed)
  const bounds = ratingBounds(request.currentA, heating)
  const breaking = breakingOf(request, cables[0], assumed)
  const link = linkFor(request, bounds, breaking)
  const weakest = weakestFirst(cables)
  requireCables(link, weakest, { policy, systemVoltageV: request.systemVoltageV, loadA: bounds.loadA })
  const fuse = chosenFuse(link, request.systemVoltageV, request.linksTwoBatteries ?? false)
  const result: FuseAnswer = {
    fuse,
    bounds: { ...bounds, highestA: weakest.cables[0]?.highestFuseA ?? 0 },
    cables: cables.map(({ size, ampacityA, highestFuseA }) => ({
      designation: size.designation,
      ampacityA,
      highestFuseA
    })),
    prospectiveA: breakingCurrent(breaking, link.ratingA),
    ...behaviour(request, fuse)
  }
  return {
    result,
    cautions: cautionsOf(request, result, cables, breaking),
    assumed: assumed.list,
    sources: fuseSources(request, fuse.type),
    basis: [ampacityBasis(cables[0]), thermalBasis(bounds.thermalA, heating)]
  }
}

function cautionsOf(
  request: FuseRequest,
  result: FuseAnswer,
  cables: readonly ProtectedCable[],
  breaking: Breaking
): readonly Caution[] {
  const { fuse, bounds } = result
  return [
    ...placementCautions(request.distanceM, request.sheathed ?? false, request.linksTwoBatteries ?? false),
    ...breakingCaution(fuse, breaking, request.systemVoltageV),
    ...cables.flatMap(({ compositionUnknown, size }, index) =>
      compositionUnknown
        ? [compositionCaution(index === 0 ? 'cable' : `alsoProtects[${index - 1}]`, size.designation)]
        : []
    ),
    ...makerCautions(request.makerFuseA, fuse.ratingA, bounds.loadA, bounds.highestA),
    ...overcurrentCautions(fuse, result.timeCurrent, request.onboardFusesA),
    ...selectivityCautions(fuse.ratingA, result.selectivity ?? [])
  ]
}
