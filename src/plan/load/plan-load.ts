/** Amplifier and drivers: the match by RMS power, the wiring that presents the load, the cable to the box. */
import type {
  AmplifierMatch,
  AmplifierMatchRequest,
  MatchOption
} from '../../contract/amplifiers/amplifier-matching.ts'
import type { CoilWiring, CoilWiringRequest } from '../../contract/coils/coil-wiring.ts'
import type { SpeakerCableRequest } from '../../contract/supply/speaker-cable.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import { ratingsText } from '../../domain/amplifier/amplifier-sheet.ts'
import { matchAmplifier } from '../../domain/amplifier/match-amplifier.ts'
import { amplifierVoltage } from '../../domain/circuit/load/converter-load.ts'
import { usualRatedVoltageV } from '../../domain/circuit/load/voltage-class.ts'
import { type Arrangement, arrangementWith } from '../../domain/coils/arrangements.ts'
import { wireCoils } from '../../domain/coils/wire-coils.ts'
import { toDigits } from '../../domain/digits.ts'
import { present } from '../../domain/present.ts'
import { type Part, type RunPart, refusedBy, waitingFor } from '../request/part.ts'
import { matchedSheet } from '../request/plan-amplifier.ts'
import type { ResolvedPlan } from '../request/resolved-plan.ts'
import type { JoinedDrivers } from './joined-drivers.ts'
import { withGainFor } from './set-gain.ts'

export interface PlannedLoad {
  readonly matching: Part<AmplifierMatchRequest, AmplifierMatch>
  readonly wiring: Part<CoilWiringRequest, CoilWiring>
  readonly joined?: JoinedDrivers
}

function matchingRequest(request: PlanRequest, powerW: number): AmplifierMatchRequest {
  const { amplifier, driver, driverCount, supply } = request
  const sheet = matchedSheet(amplifier)
  const ratedVoltageV =
    sheet.ratedVoltageV ?? usualRatedVoltageV(amplifierVoltage(supply.systemVoltageV, supply.converter))
  return {
    // its fuses pass the more power the higher the supply
    amplifier: sheet.onboardFusesA === undefined ? sheet : { ...sheet, ratedVoltageV },
    driver: { powerW, coils: driver.coils.count, coilOhm: driver.coils.ratedOhm },
    driverCount
  }
}

function arrangementOf(best: MatchOption, { driver }: PlanRequest): Arrangement {
  const { count, ratedOhm } = driver.coils
  const inSeries = Math.round(Math.sqrt((best.loadOhm / ratedOhm) * best.driversPerOutput * count))
  return arrangementWith(inSeries, best.driversPerOutput, count)
}

function wiringRequest(best: MatchOption, { driver, car }: ResolvedPlan): CoilWiringRequest {
  const cable: SpeakerCableRequest = { lengthM: car.speakerCableLengthM }
  return {
    driverCount: best.driversPerOutput,
    coilsPerDriver: driver.coils.count,
    coilOhm: driver.coils.ratedOhm,
    minimumOhm: best.lowestOhm,
    targetOhm: best.loadOhm,
    ...(best.outputPowerW === undefined ? {} : { totalPowerW: best.outputPowerW, cable })
  }
}

/** What the drivers can present beside what the amplifier's sheet knows, and the ways out. */
function unpublished({ options }: AmplifierMatch, { amplifier }: PlanRequest): string {
  const loads = [...new Set(options.map(({ loadOhm }) => toDigits(loadOhm)))].sort((a, b) => a - b)
  return `No power is published for a load that these drivers can present: they present ${loads.join(' or ')} Ω, the amplifier gives ${ratingsText(amplifier)} and drives ${amplifier.minimumOhm} Ω or more. Take an amplifier rated at one of these loads, drivers with other coils, or another number of drivers.`
}

/** The load with its match at the gain that is set, where a box holds less than amplifier and drivers bear: one gain in all parts. */
export function loadAtGain(
  run: RunPart,
  { matching, ...load }: PlannedLoad,
  joined: JoinedDrivers | undefined
): PlannedLoad {
  const gainPowerW = joined?.gainPowerW
  if (gainPowerW === undefined || !matching.done) return { ...load, matching }
  return { ...load, matching: run({ ...matching.request, gainPowerW }, matchAmplifier), ...present({ joined }) }
}

/** Watts are matched with watts: without the driver's own rating nothing is assumed. */
export function planLoad(request: ResolvedPlan): PlannedLoad {
  const { run, driver } = request
  const { powerW } = driver.sheet
  if (powerW === undefined) {
    const what = 'The plan needs the continuous RMS rating of the driver (driver.sheet.powerW).'
    const matching = refusedBy('missing-input', 'driver.sheet.powerW', what)
    return { matching, wiring: waitingFor('a matched amplifier') }
  }
  const matching = run(matchingRequest(request, powerW), matchAmplifier)
  if (!matching.done) return { matching, wiring: waitingFor('a matched amplifier') }
  const { best, gain } = matching.outcome.result
  if (best === undefined)
    return {
      matching,
      wiring: refusedBy('no-solution', 'amplifier.ratings', unpublished(matching.outcome.result, request))
    }
  const wiring = run(wiringRequest(best, request), wireCoils)
  if (gain === undefined) return { matching, wiring }
  const { coilsInDriver, driversInSeries } = arrangementOf(best, request)
  return {
    matching,
    wiring,
    joined: withGainFor(
      {
        connection: coilsInDriver === 'single' ? 'one-coil' : coilsInDriver,
        driversInSeries,
        loadOhm: best.loadOhm,
        outputs: best.outputs,
        driversPowerW: powerW * best.driversPerOutput,
        bridged: best.bridged,
        targetVoltageV: gain.targetVoltageV,
        amplifierVoltageV: Math.sqrt((best.outputPowerW ?? gain.powerW) * best.loadOhm),
        amplifierPowerW: (best.outputPowerW ?? gain.powerW) * best.outputs,
        supplyPowerW: (best.ratedPowerW ?? best.outputPowerW ?? gain.powerW) * best.outputs,
        powerW: gain.powerW * best.outputs,
        usablePowerW: gain.powerW * best.outputs,
        seriesOhm: wiring.done ? (wiring.outcome.result.cable?.sourceSeriesOhm ?? 0) : 0
      },
      request.signal.gainPowerW
    )
  }
}
