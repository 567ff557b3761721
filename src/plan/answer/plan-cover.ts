/** The first page of a plan: what it is, its band of use, how far its limits are, what was asked beside what is built. */

import type { BoxLayout } from '../../contract/boxes/box-result.ts'
import type { Response } from '../../contract/enclosures/response.ts'
import type { Figure, Said } from '../../contract/sentences/form/template.ts'
import type { PlanCover } from '../../contract/systems/plan-cover.ts'
import type { PlanHazard } from '../../contract/systems/safety.ts'
import type { PlannedKind } from '../../contract/systems/words.ts'
import type { Caution } from '../../domain/caution.ts'
import { inDigits, inLitres } from '../../domain/digits.ts'
import { airSpeedLevel, portSpeeds } from '../../domain/port/air-speed.ts'
import { present } from '../../domain/present.ts'
import { say, worded } from '../../domain/say.ts'
import type { FittedRadiators } from '../enclosure/parts/fitted-radiators.ts'
import { airIn } from '../enclosure/parts/plan-box.ts'
import type { PlannedBox } from '../enclosure/parts/plan-candidates.ts'
import type { JoinedDrivers } from '../load/joined-drivers.ts'
import type { ResolvedPlan } from '../request/resolved-plan.ts'
import { answerDefaults } from './defaults.ts'
import { pageOne } from './page-one.ts'
import { builtTuningHz } from './plan-figures.ts'
import type { PlanParts } from './plan-parts.ts'
import { isKept } from './plan-promises.ts'

interface Outcomes {
  readonly joined: JoinedDrivers | undefined
  readonly chosen: PlannedBox | undefined
  readonly fits: boolean
  readonly radiators: FittedRadiators | undefined
  /** What the verdict gives as its reasons. */
  readonly reasons: readonly string[]
  readonly cautions: readonly Caution[]
  /** All steps in their order. */
  readonly steps: Parameters<typeof pageOne>[1]
  readonly safety: readonly PlanHazard[]
}

const counts = ['none', 'one', 'two', 'three', 'four'] as const

const inBox = {
  closed: 'answer.in-closed-box',
  vented: 'answer.in-vented-box',
  'passive-radiator': 'answer.in-radiator-box',
  'band-pass-4': 'answer.in-band-pass-box'
} as const satisfies Record<PlannedKind, unknown>

function sentence({ driverCount, driver }: ResolvedPlan, parts: PlanParts, { joined, chosen, fits }: Outcomes): Said {
  const count = counts[driverCount]
  const drivers = say('answer.cover-drivers', {
    count: count === undefined ? driverCount : say(`answer.count-${count}`),
    name: driver.name ?? say(driverCount === 1 ? 'answer.driver-word' : 'answer.drivers-word')
  })
  const power = joined === undefined ? '' : say('answer.on-power', { powerW: joined.powerW.toFixed(0) as Figure })
  if (!fits || chosen === undefined || !parts.box.done) return say('answer.cover-parts', { drivers, power })
  const { netVolumeM3, frontVolumeM3 = 0 } = airIn(parts.box)
  const tuningHz = builtTuningHz(parts)
  const tuned = tuningHz === undefined ? '' : say('answer.tuned-to-hz-2', { tuning: inDigits(tuningHz) })
  return say('answer.cover-sentence', {
    drivers,
    box: say(inBox[chosen.kind], { volume: inLitres(netVolumeM3), front: inLitres(frontVolumeM3) }),
    tuned,
    power: power === '' ? '' : say('answer.then-power', { power })
  })
}

/** Where a level passes the line between two neighbours of a curve, on a logarithmic axis. */
function crossingHz(fromHz: number, toHz: number, fromDb: number, toDb: number, lineDb: number): number {
  return fromHz * (toHz / fromHz) ** ((lineDb - fromDb) / (toDb - fromDb))
}

/** The unbroken stretch around the loudest that stays above the line; an end of the curve where it does not fall. */
function stretch(hz: readonly number[], db: readonly number[], top: number, lineDb: number) {
  const edge = (step: 1 | -1) => {
    let at = top
    while (db[at + step] !== undefined && (db[at + step] as number) >= lineDb) at += step
    const [inner, outer] = [db[at], db[at + step]]
    if (inner === undefined || outer === undefined) return hz[at] as number
    return crossingHz(hz[at] as number, hz[at + step] as number, inner, outer, lineDb)
  }
  return { fromHz: edge(-1), toHz: edge(1) }
}

/**
 * The band of use, at the seat where a cabin is known.
 *
 * @check  a level that falls 12 dB in the octave below and above 40 Hz is within 6 dB from 40/√2 to 40·√2 Hz
 */
export function bandOf({ curves, cabin }: Pick<Response, 'curves' | 'cabin'>): NonNullable<PlanCover['band']> {
  const { frequencyHz, levelDb, seatLevelDb } = curves
  const place = seatLevelDb === undefined ? 'half-space' : 'seat'
  const db = seatLevelDb ?? levelDb
  const top = db.reduce((best, level, at) => (level > (db[best] as number) ? at : best), 0)
  const loudestDb = db[top] as number
  const { fromHz, toHz } = stretch(frequencyHz, db, top, loudestDb - answerDefaults.bandDropDb.value)
  const where = place === 'seat' ? say('answer.at-the-seat') : say('answer.in-half-space')
  return {
    ...worded({
      finding: say('answer.full-bass-from-to-hz', { from: inDigits(fromHz, 2), to: inDigits(toHz, 2), where })
    }),
    place,
    fromHz,
    toHz,
    loudestDb,
    loudestHz: frequencyHz[top] as number,
    ...present({ uncertaintyDb: cabin?.uncertaintyDb })
  }
}

function travelOf({ limits }: Response, xmaxM: number | undefined): Pick<PlanCover, 'travel'> {
  if (limits === undefined) return {}
  const { coneExcursionM: peakM, coneExcursionHz: peakHz } = limits.atDrive
  const held = xmaxM === undefined || peakM <= xmaxM
  const finding =
    xmaxM === undefined
      ? say('answer.the-cone-moves-mm-each-way', { peak: inDigits(peakM * 1e3, 2) })
      : held
        ? say('answer.the-cone-stays-within-its-travel')
        : say('answer.the-cone-is-driven-beyond-its')
  return { travel: { ...worded({ finding }), held, peakM, peakHz, ...present({ limitM: xmaxM }) } }
}

/** At the gain of the plan. */
function radiatorsOf({ limits }: Response, radiators: FittedRadiators | undefined): Pick<PlanCover, 'radiators'> {
  const { passiveRadiatorExcursionM: peakM, passiveRadiatorExcursionHz: peakHz } = limits?.atDrive ?? {}
  if (radiators === undefined || peakM === undefined || peakHz === undefined) return {}
  const { name: _, travelM: limitM, ...set } = radiators
  const held = peakM <= limitM
  const finding = say(held ? 'answer.the-radiators-stay-within' : 'answer.the-radiators-go-beyond')
  return { radiators: { ...worded({ finding }), held, peakM, peakHz, limitM, ...set } }
}

const airFindings = {
  quiet: say('answer.the-port-stays-quiet'),
  note: say('answer.the-port-can-be-heard-at'),
  care: say('answer.the-port-is-loud-at-full'),
  stop: say('answer.the-air-in-the-port-is')
} as const

function portAirOf({ limits }: Response): Pick<PlanCover, 'portAir'> {
  const { portAirSpeedMPerS: peakMPerS, portAirSpeedHz: peakHz } = limits?.atDrive ?? {}
  if (peakMPerS === undefined || peakHz === undefined) return {}
  const level = airSpeedLevel(peakMPerS)
  return {
    portAir: {
      ...worded({ finding: airFindings[level ?? 'quiet'] }),
      held: level !== 'stop',
      peakMPerS,
      peakHz,
      quietMPerS: portSpeeds.sharp,
      limitMPerS: portSpeeds.highest
    }
  }
}

function spaceOf({ car: { space } }: ResolvedPlan, { outer }: BoxLayout): NonNullable<PlanCover['asked']>['space'] {
  const { widthM, heightM, depthM, coveringM = 0 } = space
  const covered = (sizeM: number) => sizeM + 2 * coveringM
  return {
    ...present({ widthM, heightM, depthM }),
    boxWidthM: covered(outer.widthM),
    boxHeightM: covered(outer.heightM),
    boxDepthM: covered(Math.max(outer.depthM, outer.topDepthM ?? 0)),
    coveringM
  }
}

function askedOf(request: ResolvedPlan, parts: PlanParts): Pick<PlanCover, 'asked'> {
  const { box, response } = parts
  if (!box.done) return {}
  const { netVolumeM3: askedM3, tuningHz: askedHz, qtc: askedQtc } = request.enclosure ?? {}
  const { netVolumeM3: builtM3 } = airIn(box)
  const { qtc: builtQtc } = response.done ? response.outcome.result.scalars : {}
  const builtHz = builtTuningHz(parts)
  const tuning =
    builtHz === undefined ? undefined : { ...present({ askedHz }), builtHz, kept: isKept('tuning', askedHz, builtHz) }
  const damping =
    builtQtc === undefined ? undefined : { ...present({ askedQtc }), builtQtc, kept: isKept('qtc', askedQtc, builtQtc) }
  return {
    asked: {
      volume: { ...present({ askedM3 }), builtM3, kept: isKept('volume', askedM3, builtM3) },
      ...present({ tuning, damping }),
      space: spaceOf(request, box.outcome.result)
    }
  }
}

export function planCover(request: ResolvedPlan, parts: PlanParts, outcomes: Outcomes): PlanCover {
  const { response, driver } = parts
  const played = outcomes.fits && response.done ? response.outcome.result : undefined
  const xmaxM = driver.done ? driver.outcome.result.driver.xmaxM : undefined
  return {
    ...worded({ sentence: sentence(request, parts, outcomes) }),
    ...present({ powerW: outcomes.joined?.powerW }),
    ...(played === undefined
      ? {}
      : {
          band: bandOf(played),
          ...travelOf(played, xmaxM),
          ...portAirOf(played),
          ...radiatorsOf(played, outcomes.radiators)
        }),
    ...(outcomes.fits ? askedOf(request, parts) : {}),
    pageOne: pageOne(outcomes.cautions, outcomes.steps, outcomes.reasons, outcomes.safety)
  }
}
