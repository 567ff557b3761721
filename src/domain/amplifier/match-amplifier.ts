/** Whether amplifier and drivers fit, at which load, with which headroom, and the voltage to set the gain to. */
import type {
  AmplifierHeat,
  AmplifierMatch,
  AmplifierMatchRequest,
  AmplifierSheet,
  MatchOption,
  MatchWiring
} from '../../contract/amplifiers/amplifier-matching.ts'
import { MOST_OPTIONS_SHOWN, type Ranking } from '../../contract/amplifiers/words.ts'
import type { Basis } from '../../contract/field/envelope.ts'
import type { SourceId } from '../../contract/sources/source.ts'
import { type Assumptions, assumptions } from '../assume.ts'
import { arrangementWith, networkOf } from '../coils/arrangements.ts'
import { jointsOf, terminalName, wiringSteps } from '../coils/joints.ts'
import {
  chooseSpeakerCable,
  type SpeakerCableChoice,
  speakerCableBasis,
  speakerCableSources
} from '../coils/speaker-cable.ts'
import { DesignError, requirePositive } from '../design-error.ts'
import type { Outcome } from '../outcome.ts'
import { present } from '../present.ts'
import { say, worded } from '../say.ts'
import { type ResolvedAmplifier, resolveAmplifier } from './amplifier-sheet.ts'
import { amplifierDefaults } from './defaults.ts'
import { type GainTarget, gainTarget, meterReading, setPower } from './gain-target.ts'
import { amplifierHeat, heatCautions } from './heat.ts'
import { matchBasis } from './match-basis.ts'
import { matchCautions } from './match-cautions.ts'
import { type CoilRating, matchOptions } from './match-options.ts'
import { ratingFault, requireContinuous } from './power-rating.ts'
import { ranked } from './rank-options.ts'
import { touchVoltageCautions } from './touch-voltage.ts'

interface NamedAmplifier {
  readonly sheet: AmplifierSheet
  readonly at: string
  readonly name: string
}

interface Offered extends NamedAmplifier {
  readonly resolved: ResolvedAmplifier
}

function amplifiersOf({ amplifier, otherAmplifiers = [] }: AmplifierMatchRequest): readonly NamedAmplifier[] {
  return [amplifier, ...otherAmplifiers].map((sheet, index) => ({
    sheet,
    at: index === 0 ? 'amplifier.' : `otherAmplifiers[${index - 1}].`,
    name: sheet.name ?? (index === 0 ? 'amplifier' : `amplifier ${index + 1}`)
  }))
}

function requireNames(amplifiers: readonly NamedAmplifier[]): void {
  const again = amplifiers.find((each, index) => amplifiers.findIndex(({ name }) => name === each.name) < index)
  if (again === undefined) return
  const detail = say('refused.two-of-the-amplifiers-are-called', { name: again.name })
  throw new DesignError('conflicting-input', { field: `${again.at}name`, detail })
}

function requireComparable(request: AmplifierMatchRequest, rankBy: Ranking): void {
  requireContinuous([
    ...amplifiersOf(request).flatMap(({ sheet, at }) => ratingFault(`${at}ratingKind`, sheet.ratingKind ?? 'rms')),
    ...ratingFault('driver.ratingKind', request.driver.ratingKind ?? 'rms')
  ])
  requireNames(amplifiersOf(request))
  requirePositive('driver.powerW', request.driver.powerW, 'W')
  requirePositive('driver.coilOhm', request.driver.coilOhm, 'Ω')
  const key = rankBy === 'price' ? 'price' : 'footprintM2'
  const without = amplifiersOf(request).find(({ sheet }) => rankBy !== 'power' && sheet[key] === undefined)
  if (without !== undefined) {
    throw new DesignError('missing-input', {
      field: `${without.at}${key}`,
      detail: say('refused.ranking-by-needs-the-of-every', { rankBy })
    })
  }
}

function wiringOf(best: MatchOption, { coils, coilOhm }: CoilRating): MatchWiring {
  const inSeries = Math.round(Math.sqrt((best.loadOhm / coilOhm) * best.driversPerOutput * coils))
  const arrangement = arrangementWith(inSeries, best.driversPerOutput, coils)
  const joints = jointsOf(networkOf(arrangement, best.driversPerOutput, coils))
  return {
    joints: joints.map(({ name, terminals }) => ({
      name,
      terminals: terminals.map(terminal => terminalName(terminal, coils))
    })),
    ...worded({ steps: wiringSteps(joints, coils, best.loadOhm) })
  }
}

/** Gain of one output: the amplifier's power or the drivers', whichever ends first, unless less is asked for. */
function gainOf(best: MatchOption, { driver, gainPowerW }: AmplifierMatchRequest): GainTarget | undefined {
  if (best.outputPowerW === undefined) return undefined
  const { powerW, limitedBy } = setPower(best.outputPowerW, driver.powerW * best.driversPerOutput, gainPowerW)
  return { ...gainTarget(powerW, best.loadOhm, best.bridged), limitedBy }
}

function heatOf(
  amplifiers: readonly NamedAmplifier[],
  best: MatchOption,
  gain: GainTarget,
  assumed: Assumptions
): AmplifierHeat | undefined {
  const chosen = amplifiers.find(({ name }) => name === best.amplifier)
  const { outputPowerW = gain.powerW, outputs } = best
  return chosen && amplifierHeat(chosen.sheet, outputPowerW * outputs, gain.powerW * outputs, assumed, chosen.at)
}

function resolvedDefaults(request: AmplifierMatchRequest, assumed: Assumptions) {
  assumed.take(request.driver.ratingKind, 'driver.ratingKind', amplifierDefaults.driverRatingKind)
  return {
    amplifierCount: assumed.take(request.amplifierCount, 'amplifierCount', amplifierDefaults.amplifierCount),
    rankBy: assumed.take<Ranking>(request.rankBy, 'rankBy', amplifierDefaults.rankBy)
  }
}

function optionsOf(request: AmplifierMatchRequest, amplifiers: readonly Offered[], by: Ranking, count: number) {
  const { driver, driverCount } = request
  const all = amplifiers.flatMap(({ resolved, name }) => matchOptions(resolved, name, driver, driverCount))
  return ranked(all, by, count)
}

function cableOf(
  { cable }: AmplifierMatchRequest,
  best: MatchOption | undefined,
  assumed: Assumptions
): SpeakerCableChoice | undefined {
  if (cable === undefined || best?.outputPowerW === undefined) return undefined
  return chooseSpeakerCable(cable, best.loadOhm, best.outputPowerW, assumed)
}

function sourcesOf(
  { gain, heat }: AmplifierMatch,
  cable: SpeakerCableChoice | undefined,
  basis: readonly Basis[]
): readonly SourceId[] {
  return [
    'kirchhoff-networks',
    'equal-power-practice',
    'cta-2006',
    ...(gain === undefined ? [] : (['gain-practice'] as const)),
    ...(cable === undefined ? [] : speakerCableSources),
    ...(heat === undefined ? [] : (['class-efficiency', 'iec-60065-eighth'] as const)),
    ...basis.map(({ source }) => source)
  ]
}

/**
 * Matches by continuous RMS power at the load that is wired.
 *
 * @param request  ratings as published, drivers all alike
 * @throws DesignError `undefined-rating` for peak, maximum and total figures; `missing-input` when ranked by what is not given
 * @validity Balanced wiring of like drivers; power as published for the load, never scaled to a lower one; above the rated
 * loads a lower bound.
 * @source common practice, no source: equal power, 0.75 to 1.5 accepted; loads derived from Kirchhoff's laws
 * @check  500 W at 4 Ω on one driver of 2 × 2 Ω and 500 W → 4 Ω, ratio 1, 44.72 V
 */
export function matchAmplifier(request: AmplifierMatchRequest): Outcome<AmplifierMatch> {
  const assumed = assumptions()
  const { amplifierCount, rankBy } = resolvedDefaults(request, assumed)
  requireComparable(request, rankBy)
  const amplifiers = amplifiersOf(request).map(each => ({
    ...each,
    resolved: resolveAmplifier(each.sheet, assumed, each.at)
  }))
  const options = optionsOf(request, amplifiers, rankBy, amplifierCount)
  const best = options.find(option => option.powerRatio !== undefined && option.amplifiersNeeded <= amplifierCount)
  const target = best && gainOf(best, request)
  const gain = target && { ...target, ...meterReading(target, request.tone ?? {}, 0, assumed) }
  const heat = best && gain && heatOf(amplifiers, best, gain, assumed)
  const cable = cableOf(request, best, assumed)
  const result: AmplifierMatch = {
    ...(best === undefined ? {} : { best, wiring: wiringOf(best, request.driver) }),
    ...present({ gain, heat }),
    ...present({ cable: cable?.cable }),
    options: options.slice(0, MOST_OPTIONS_SHOWN)
  }
  const basis = [...matchBasis(request.driver, best, gain), ...speakerCableBasis(best?.loadOhm, cable?.cable)]
  return {
    result,
    cautions: [
      ...matchCautions({ request, amplifiers, options, best, amplifierCount }),
      ...touchVoltageCautions(gain?.targetVoltageV ?? 0),
      ...heatCautions(heat),
      ...(cable?.cautions ?? [])
    ],
    assumed: assumed.list,
    sources: sourcesOf(result, cable, basis),
    basis
  }
}
