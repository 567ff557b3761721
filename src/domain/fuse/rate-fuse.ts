/** The fuse of a cable: rating between what the load draws and what the cable carries, its family, its place. */
import { type Assumptions, assumptions } from '../assume.ts'
import type { Caution } from '../caution.ts'
import { DesignError } from '../design-error.ts'
import type { Basis, Outcome } from '../outcome.ts'
import type { SourceId } from '../source.ts'
import { type BatterySource, batteryOhm, faultCurrent, openCircuit } from './battery-source.ts'
import {
  type ChosenFuse,
  chosenFuse,
  type LoadOnFuse,
  type RatingBounds,
  ratingBounds,
  withMaker
} from './chosen-fuse.ts'
import { breakingCaution, makerCautions, overcurrentCautions, selectivityCautions } from './fuse-cautions.ts'
import type { FuseType } from './fuse-families-iso-8820.ts'
import { fuseJudgement } from './fuse-judgement.ts'
import { placementCautions } from './fuse-placement.ts'
import { type FuseLink, fuseTemperatureFactor, nextRating } from './fuse-rating.ts'
import { type TimeBand, timeBand } from './fuse-time-current.ts'
import {
  type CableRequest,
  compositionCaution,
  type FusePolicy,
  type ProtectedCable,
  protectedCable
} from './protected-cable.ts'
import { type Selectivity, selectivity } from './selectivity.ts'
import { strongerCable } from './stronger-cable.ts'

export interface FuseRequest extends LoadOnFuse {
  readonly systemVoltageV: number
  readonly cable: CableRequest
  /** Further cables before the next fuse. */
  readonly alsoProtects?: readonly CableRequest[]
  readonly types?: readonly FuseType[]
  readonly policy?: FusePolicy
  readonly makerFuseA?: number
  readonly onboardFusesA?: readonly number[]
  readonly source?: BatterySource & { readonly leadOhm?: number }
  readonly distanceM?: number
  readonly sheathed?: boolean
  readonly linksTwoBatteries?: boolean
  readonly branchFusesA?: readonly number[]
  readonly overcurrentA?: number
}

export interface FuseAnswer {
  readonly fuse: ChosenFuse
  readonly bounds: RatingBounds & { readonly highestA: number }
  readonly cables: readonly {
    readonly designation: string
    readonly ampacityA: number
    readonly highestFuseA: number
  }[]
  readonly prospectiveA: number
  readonly timeCurrent?: TimeBand
  readonly selectivity?: readonly Selectivity[]
}

function refuseRating(link: FuseLink | undefined, lowestA: number, cable: ProtectedCable, at: string): never {
  if (link === undefined) {
    throw new DesignError('no-solution', {
      field: 'currentA',
      value: lowestA,
      unit: 'A',
      detail: `No fuse-link of the allowed families reaches ${lowestA.toFixed(1)} A: split the load into runs with a fuse each.`
    })
  }
  const stronger = strongerCable(cable, link.ratingA)
  const advice =
    stronger === undefined
      ? 'no size of this series carries it here: use parallel runs with a fuse each'
      : `use ${stronger.designation}, which carries ${stronger.ampacityA.toFixed(1)} A`
  throw new DesignError('no-solution', {
    field: `${at}designation`,
    value: cable.size.designation,
    detail: `The load needs a ${link.ratingA} A fuse, but ${cable.size.designation} may be fused at ${cable.highestFuseA.toFixed(1)} A here: ${advice}. A smaller fuse would open on the load, a larger one would not protect the cable.`
  })
}

function sourcesOf(request: FuseRequest, type: FuseType): readonly SourceId[] {
  const byType: Readonly<Record<FuseType, SourceId>> = {
    F: 'iso-8820-3',
    C: 'iso-8820-3',
    E: 'iso-8820-3',
    SF30: 'iso-8820-5',
    SF51: 'iso-8820-5',
    'single-bolt': 'iso-8820-6'
  }
  return [
    '33-cfr-183-425',
    'ambient-square-root',
    byType[type],
    'fuse-load-ratio',
    'fuse-derating',
    '33-cfr-183-455',
    'fuse-placement-practice',
    ...(request.branchFusesA === undefined ? [] : (['fuse-selectivity'] as const)),
    ...(request.overcurrentA === undefined ? [] : (['fuse-time-current'] as const))
  ]
}

function ampacityBasis({ ampacity, ampacityA }: ProtectedCable): Basis {
  const { tableA = 0, ambientFactor, bundleFactor, metalFactor } = ampacity
  return {
    quantity: 'cables[0].ampacityA',
    formula: 'I30*Fa*Fb*Fm',
    inputs: [
      { symbol: 'I30', value: tableA, unit: 'A' },
      { symbol: 'Fa', value: ambientFactor, unit: '1' },
      { symbol: 'Fb', value: bundleFactor, unit: '1' },
      { symbol: 'Fm', value: metalFactor, unit: '1' }
    ],
    value: ampacityA,
    unit: 'A',
    source: '33-cfr-183-425'
  }
}

/** The inputs as they were settled: given, or the default that was recorded. */
function thermalBasis(request: FuseRequest, thermalA: number, assumed: Assumptions): Basis {
  const settled = (field: string) => Number(assumed.list.find(entry => entry.field === field)?.value)
  const heavyA = request.continuousTone ? request.currentA : (request.heavyCurrentA ?? settled('heavyCurrentA'))
  const factor = fuseTemperatureFactor(request.fuseAmbientC ?? settled('fuseAmbientC'), 'fuseAmbientC')
  return {
    quantity: 'bounds.thermalA',
    formula: 'I/(ratio*F)',
    inputs: [
      { symbol: 'I', value: heavyA, unit: 'A' },
      { symbol: 'ratio', value: request.loadRatio ?? settled('loadRatio'), unit: '1' },
      { symbol: 'F', value: factor, unit: '1' }
    ],
    value: thermalA,
    unit: 'A',
    source: 'fuse-load-ratio'
  }
}

interface Settled {
  readonly cables: readonly [ProtectedCable, ...ProtectedCable[]]
  readonly weakest: ProtectedCable
  readonly weakestAt: string
}

function settleCables(request: FuseRequest, policy: FusePolicy, assumed: Assumptions): Settled {
  const first = protectedCable(request.cable, policy, request.systemVoltageV, assumed, 'cable.')
  const others = (request.alsoProtects ?? []).map((cable, index) =>
    protectedCable(cable, policy, request.systemVoltageV, assumed, `alsoProtects[${index}].`)
  )
  const cables = [first, ...others] as const
  const index = cables.reduce(
    (best, cable, here) => (cable.highestFuseA < (cables[best] ?? first).highestFuseA ? here : best),
    0
  )
  return { cables, weakest: cables[index] ?? first, weakestAt: index === 0 ? 'cable.' : `alsoProtects[${index - 1}].` }
}

function prospectiveCurrent({ source = {}, systemVoltageV }: FuseRequest, assumed: Assumptions): number {
  const sourceOhm = batteryOhm(source, systemVoltageV, assumed, 'source.')
  const openV = openCircuit(source, systemVoltageV, assumed, 'source.')
  return faultCurrent(openV, sourceOhm, source.leadOhm ?? 0)
}

function linkFor(request: FuseRequest, bounds: RatingBounds, prospectiveA: number): FuseLink | undefined {
  const { systemVoltageV, types, makerFuseA } = request
  const ask = { systemVoltageV, prospectiveA, lowestA: bounds.lowestA, ...(types === undefined ? {} : { types }) }
  const ruled = nextRating(ask, 'types')
  return ruled && withMaker(ruled, makerFuseA, bounds.loadA)
}

/** How it behaves under overload and beside the fuses behind it, where that is asked. */
function behaviour({ overcurrentA, branchFusesA }: FuseRequest, { type, ratingA }: ChosenFuse) {
  return {
    ...(overcurrentA === undefined ? {} : { timeCurrent: timeBand(type, ratingA, overcurrentA) }),
    ...(branchFusesA === undefined ? {} : { selectivity: branchFusesA.map(branchA => selectivity(ratingA, branchA)) })
  }
}

/**
 * Rates the fuse of a cable.
 *
 *   I_fullSine ≤ In, I_heavy/(ratio·F_T) ≤ In, In ≤ Iz of every cable up to the next fuse
 *
 * @param request  currentA the full-sine current [A] > 0
 * @throws DesignError `no-solution` where no rating lies between load and cable, `fuse-voltage`, and those of the cable
 * @validity The fuse protects cables; amplifiers are protected by their own fuses.
 * @source ISO 8820 families; 33 CFR 183.425 and 183.455
 * @check  48.3 A on 4 AWG, 105 °C at 50 °C → 50 A
 */
export function rateFuse(request: FuseRequest): Outcome<FuseAnswer> {
  const assumed = assumptions()
  const why = 'rating at most the ampacity of the cable'
  const policy = assumed.or<FusePolicy>(request.policy, 'policy', fuseJudgement.policy, why)
  const { cables, weakest, weakestAt } = settleCables(request, policy, assumed)
  const bounds = ratingBounds(request, cables[0].surroundings.ambientC, assumed)
  const prospectiveA = prospectiveCurrent(request, assumed)
  const link = linkFor(request, bounds, prospectiveA)
  if (link === undefined || link.ratingA > weakest.highestFuseA * (1 + 1e-12)) {
    return refuseRating(link, bounds.lowestA, weakest, weakestAt)
  }
  const fuse = chosenFuse(link, request.systemVoltageV, request.linksTwoBatteries ?? false)
  const result: FuseAnswer = {
    fuse,
    bounds: { ...bounds, highestA: weakest.highestFuseA },
    cables: cables.map(({ size, ampacityA, highestFuseA }) => ({
      designation: size.designation,
      ampacityA,
      highestFuseA
    })),
    prospectiveA,
    ...behaviour(request, fuse)
  }
  return {
    result,
    cautions: cautionsOf(request, result, cables),
    assumed: assumed.list,
    sources: sourcesOf(request, fuse.type),
    basis: [ampacityBasis(cables[0]), thermalBasis(request, bounds.thermalA, assumed)]
  }
}

function cautionsOf(request: FuseRequest, result: FuseAnswer, cables: readonly ProtectedCable[]): readonly Caution[] {
  const { fuse, bounds, prospectiveA } = result
  return [
    ...placementCautions(request.distanceM, request.sheathed ?? false, request.linksTwoBatteries ?? false),
    ...breakingCaution(fuse, prospectiveA),
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
