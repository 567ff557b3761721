/** The loads that drivers and coils can present, each coil's share of the power, and how to join them. */
import type { ArrangementRow, ChosenWiring, CoilWiring, CoilWiringRequest } from '../../contract/coils/coil-wiring.ts'
import type { Basis } from '../../contract/field/envelope.ts'
import type { Said } from '../../contract/sentences/form/template.ts'
import type { SourceId } from '../../contract/sources/source.ts'
import { numberOf } from '../../numeric/rational.ts'
import { type Assumptions, assumptions } from '../assume.ts'
import { DesignError } from '../design-error.ts'
import { explain } from '../formula.ts'
import type { Outcome } from '../outcome.ts'
import { present } from '../present.ts'
import { say, worded } from '../say.ts'
import { arrangementsOf, joinSaid, networkOf } from './arrangements.ts'
import { chooseLoad, type LoadChoice, nearestInRatio, type Wanted } from './choose-load.ts'
import { loadRow } from './coil-load-row.ts'
import { coilLoads, type NetworkLoad, ohmNumber, ratioText } from './coil-loads.ts'
import { networkOhm } from './coil-network.ts'
import { type CoilSet, coilSet } from './coil-set.ts'
import { coilPower, wiredLoad } from './formulas.ts'
import { jointsOf, terminalName, wiringSteps } from './joints.ts'
import { chooseSpeakerCable, speakerCableBasis, speakerCableSources } from './speaker-cable.ts'
import { wiringCautions } from './wiring-cautions.ts'

function arrangementRows(set: CoilSet, lowestLoadOhm: number | undefined): readonly ArrangementRow[] {
  const { driverCount, coilsPerDriver } = set
  return arrangementsOf(driverCount, coilsPerDriver)
    .map(arrangement => {
      const { coilsInSeries: _, ...row } = arrangement
      const exact = networkOhm(networkOf(arrangement, driverCount, coilsPerDriver), set.ohmOf)
      const ohm = numberOf(exact)
      return {
        ohm,
        ratio: ratioText(set, exact) ?? '',
        ...row,
        ...worded({ join: joinSaid(arrangement, driverCount) }),
        ...(lowestLoadOhm === undefined ? {} : { allowed: ohm >= lowestLoadOhm })
      }
    })
    .sort((a, b) => a.ohm - b.ohm || a.driversInSeries - b.driversInSeries)
}

/** Direct-current resistances divide as the rated impedances of like coils do. */
function loadReOhm(set: CoilSet, load: NetworkLoad | undefined, coilReOhm: number | undefined): number | undefined {
  if (coilReOhm === undefined || load === undefined) return undefined
  if (set.alikeOhm !== undefined) return (coilReOhm * ohmNumber(load)) / set.alikeOhm
  throw new DesignError('conflicting-input', {
    field: 'coilReOhm',
    detail: say('refused.one-direct-current-resistance-stands-for')
  })
}

function chosenWiring(
  { coilsPerDriver }: CoilSet,
  load: NetworkLoad,
  why: Said,
  reOhm: number | undefined
): ChosenWiring {
  const joints = jointsOf(load.network)
  return {
    ohm: ohmNumber(load),
    ...present({ reOhm }),
    joints: joints.map(({ name, terminals }) => ({
      name,
      terminals: terminals.map(terminal => terminalName(terminal, coilsPerDriver))
    })),
    ...worded({ join: load.join, why, steps: wiringSteps(joints, coilsPerDriver, ohmNumber(load), reOhm) })
  }
}

/** The stricter of the two ways of stating the limit; a bridged pair puts half the load on each channel. */
function wantedOf({ minimumOhm, channelMinimumOhm, targetOhm }: CoilWiringRequest): Wanted {
  const limits = [
    ...(minimumOhm === undefined ? [] : [{ limitField: 'minimumOhm', lowestLoadOhm: minimumOhm } as const]),
    ...(channelMinimumOhm === undefined
      ? []
      : [{ limitField: 'channelMinimumOhm', lowestLoadOhm: 2 * channelMinimumOhm } as const])
  ].sort((a, b) => b.lowestLoadOhm - a.lowestLoadOhm)
  return { ...limits[0], ...present({ targetOhm }) }
}

function basisOf(set: CoilSet, chosen: NetworkLoad | undefined, totalPowerW: number | undefined): readonly Basis[] {
  const n = set.coils.length
  const basis: Basis[] = []
  if (chosen?.balanced && set.alikeOhm !== undefined) {
    const s = Math.round(Math.sqrt((ohmNumber(chosen) / set.alikeOhm) * n))
    basis.push(explain(wiredLoad, 'chosen.ohm', ohmNumber(chosen), { Zc: set.alikeOhm, s, n }))
  }
  if (totalPowerW !== undefined && set.alike !== undefined) {
    basis.push(explain(coilPower, 'coilPowerW', totalPowerW / n, { P: totalPowerW, n }))
  }
  return basis
}

function cableFor(
  { cable, totalPowerW }: CoilWiringRequest,
  load: NetworkLoad | undefined,
  reOhm: number | undefined,
  assumed: Assumptions
) {
  if (cable === undefined || load === undefined) return undefined
  const known = reOhm === undefined ? cable : { reOhm, ...cable }
  if (totalPowerW !== undefined) return chooseSpeakerCable(known, ohmNumber(load), totalPowerW, assumed)
  throw new DesignError('missing-input', {
    field: 'totalPowerW',
    detail: say('refused.a-loudspeaker-cable-is-chosen-by')
  })
}

function powers(set: CoilSet, totalPowerW: number | undefined) {
  if (totalPowerW === undefined || set.alike === undefined) return {}
  return { coilPowerW: totalPowerW / set.coils.length, driverPowerW: totalPowerW / set.driverCount }
}

/** Where the limits lie among the loads, for who wants to choose another. */
function landmarks({ candidates }: LoadChoice, { lowestLoadOhm, targetOhm }: Wanted) {
  const nearest = targetOhm === undefined ? undefined : nearestInRatio(candidates, targetOhm)
  const allowed = lowestLoadOhm === undefined ? undefined : candidates.find(load => ohmNumber(load) >= lowestLoadOhm)
  return {
    ...present({
      lowestLoadOhm,
      lowestAllowedOhm: allowed === undefined ? undefined : ohmNumber(allowed),
      nearestOhm: nearest === undefined ? undefined : ohmNumber(nearest)
    })
  }
}

function sourcesOf({ networkCount, cableCandidates }: CoilWiring): readonly SourceId[] {
  return [
    'kirchhoff-networks',
    'equal-coil-power',
    ...(networkCount === undefined ? [] : (['oeis-a000084', 'oeis-a048211'] as const)),
    ...(cableCandidates === undefined ? [] : speakerCableSources)
  ]
}

/** The network {@link wireCoils} chooses, for drawing it; undefined when no load is allowed. */
export function chosenNetwork(request: CoilWiringRequest): NetworkLoad | undefined {
  const set = coilSet(request)
  return chooseLoad(set, coilLoads(set).every, wantedOf(request), assumptions()).load
}

/**
 * Balanced networks of any number of equal coils, all series-parallel networks of up to six coils, and the wiring of one.
 *
 *   Z = Zc·s/p   for every s·p = n, when all coils take the same power
 *
 * @param request  coil counts and impedances [Ω] > 0; limits and target [Ω], power [W] optional
 * @throws DesignError `missing-input`, `conflicting-input`, `not-positive`, `out-of-range`
 * @validity Rated impedances as pure resistances, every coil driven and in phase.
 * @source derived from Kirchhoff's laws; ranking common practice, no source
 * @check  2 drivers of 1 coil of 4 Ω, 800 W → 2 Ω and 8 Ω, 400 W a coil
 */
export function wireCoils(request: CoilWiringRequest): Outcome<CoilWiring> {
  const assumed = assumptions()
  const { totalPowerW, coilReOhm } = request
  const set = coilSet(request)
  const { loads, every, networkCount, distinctLoadCount } = coilLoads(set)
  const wanted = wantedOf(request)
  const choice = chooseLoad(set, every, wanted, assumed)
  const chosen = choice.load
  const reOhm = loadReOhm(set, chosen, coilReOhm)
  const cable = cableFor(request, chosen, reOhm, assumed)
  const result: CoilWiring = {
    coilCount: set.coils.length,
    loads: loads.map(load => loadRow(set, load, wanted.lowestLoadOhm, totalPowerW)),
    ...present({
      arrangements: set.alike === undefined ? undefined : arrangementRows(set, wanted.lowestLoadOhm),
      networkCount
    }),
    distinctLoadCount,
    ...powers(set, totalPowerW),
    ...landmarks(choice, wanted),
    ...present({
      chosen: chosen === undefined ? undefined : chosenWiring(set, chosen, choice.why, reOhm),
      cable: cable?.cable,
      cableCandidates: cable?.candidates
    })
  }
  return {
    result,
    cautions: [
      ...wiringCautions({ set, loads: every, candidates: choice.candidates, wanted, chosen }),
      ...(cable?.cautions ?? [])
    ],
    assumed: assumed.list,
    sources: sourcesOf(result),
    basis: [...basisOf(set, chosen, totalPowerW), ...speakerCableBasis(chosen && ohmNumber(chosen), cable?.cable)]
  }
}
