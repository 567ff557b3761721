/** The box that a leaflet gives by volume and tuning, built without knowing the driver: port, panels and braces, and no word on the sound. */
import { airOf } from '../../domain/air/air.ts'
import { assumptions } from '../../domain/assume.ts'
import type { Assumption } from '../../domain/outcome.ts'
import { sizePort } from '../../domain/port/sizing/size-port.ts'
import { present } from '../../domain/present.ts'
import { say, worded } from '../../domain/say.ts'
import { type BoxBrief, withEnclosure } from '../request/box-brief.ts'
import { planDefaults } from '../request/defaults.ts'
import { refusedBy, waitingFor } from '../request/part.ts'
import type { GivenBox } from '../request/plan-leaflet.ts'
import { pistonAreaM2, pistonDiameterM } from '../request/plan-piston.ts'
import { type BoxPart, bracedBox, clears, type TriedBoxPart, wholeBox } from './parts/plan-box.ts'
import type { PlannedBox } from './parts/plan-candidates.ts'
import { airSpeedsTried, type PortPart, portsTried, sweptPort } from './parts/plan-port.ts'
import { type Attempt, regrownAttempt, type Sized, withBox } from './plan-attempts.ts'
import { type PlannedEnclosure, triedRows, unfitting } from './planned-enclosure.ts'
import { onFewerSheets } from './sheet-saving.ts'

/**
 * Air that all cones move one way: N·Sd·x, x guessed high where the leaflet is silent.
 *
 * @returns none where nothing tells the size of the cone
 * @check  one cone of 254 mm: d 208 mm, Sd 341 cm², x 10.4 mm → 0.355 L
 */
function sweptVolumeM3({ sheet, drivers }: BoxBrief): number | undefined {
  const [areaM2, diameterM] = [pistonAreaM2(sheet), pistonDiameterM(sheet)]
  if (areaM2 === undefined || diameterM === undefined) return undefined
  return drivers.count * areaM2 * (sheet.xmaxM ?? diameterM * planDefaults.portTravelShare.value)
}

/** The travel that only the port was sized by, where it was guessed. */
export function leafletTravel({ sheet }: BoxBrief, port: PortPart | undefined): readonly Assumption[] {
  const diameterM = pistonDiameterM(sheet)
  const isSwept = port?.done === true && port.request.sweptVolumeM3 !== undefined
  if (!isSwept || sheet.xmaxM !== undefined || diameterM === undefined) return []
  const { value, why } = planDefaults.portTravelShare
  return [{ field: 'driver.sheet.xmaxM', value: diameterM * value, why }]
}

/** The brief with each area that the port may have, the quietest first, so that a slot is no wider than it has to be. */
function withAreas(brief: BoxBrief, tuningHz: number): readonly BoxBrief[] {
  const { enclosure, air } = brief
  if (enclosure.portAreaM2 !== undefined) return [brief]
  const swept = { netVolumeM3: 1, tuningHz, ...present({ sweptVolumeM3: sweptVolumeM3(brief), air }) }
  return airSpeedsTried(brief).flatMap(airSpeedLimitMPerS => {
    const areaM2 = sizePort({ ...swept, airSpeedLimitMPerS }).result.demand?.areaM2
    return areaM2 === undefined ? [] : [withEnclosure(brief, { ...enclosure, portAreaM2: areaM2 })]
  })
}

function* sizedPorts(brief: BoxBrief, candidate: PlannedBox): Generator<Sized> {
  const { netVolumeM3, tuningHz } = candidate
  if (tuningHz === undefined) return yield { candidate, leakQ: undefined }
  const sweptM3 = sweptVolumeM3(brief)
  for (const ofArea of withAreas(brief, tuningHz)) {
    for (const wish of portsTried(ofArea)) {
      const port = sweptPort(ofArea, { netVolumeM3, tuningHz, ...wish }, sweptM3)
      yield { candidate, leakQ: undefined, wish, port }
    }
  }
}

function* leafletAttempts(brief: BoxBrief, candidate: PlannedBox): Generator<Attempt> {
  const tight: Attempt[] = []
  for (const sized of sizedPorts(brief, candidate)) {
    const made = withBox({ brief }, sized)
    tight.push(made)
    yield made
  }
  yield* regrownAttempt({ brief }, tight)
}

/**
 * Peak pressure of air pressed by the cones alone, as in a closed box: ρc²·VD/V.
 *
 * @check  0.355 L in 45 L: 1.1 kPa
 */
function pressurePa(brief: BoxBrief, { netVolumeM3 }: GivenBox): number {
  const { stiffnessPa } = airOf(brief.air, assumptions())
  return (stiffnessPa * (sweptVolumeM3(brief) ?? 0)) / netVolumeM3
}

function braced(brief: BoxBrief, box: TriedBoxPart, given: GivenBox): BoxPart {
  if (!box.done) return box
  const next = bracedBox(brief, box, pressurePa(brief, given))
  return (brief.board.bracing !== undefined && next.done) || clears(next) ? next : wholeBox(brief, box)
}

const unknown = waitingFor('the complete data of the driver')

/** A port without the size of the cone would be a guess of a guess. */
const unsized = () => refusedBy('missing-input', 'driver.sheet.nominalDiameterM', say('refused.leaflet-without-size'))

export function leafletEnclosure(brief: BoxBrief, given: GivenBox): PlannedEnclosure {
  const { portAreaM2 } = brief.enclosure
  if (given.kind === 'vented' && portAreaM2 === undefined && sweptVolumeM3(brief) === undefined) {
    return { sizing: unknown, port: unsized(), box: waitingFor('a port'), response: unknown, fits: false, tried: [] }
  }
  const candidate: PlannedBox = { alignment: 'as-asked', ...worded({ name: say('answer.by-the-leaflet') }), ...given }
  const passed: Attempt[] = []
  for (const attempt of leafletAttempts(brief, candidate)) {
    if (attempt.complaint === undefined) {
      const { box, saving } = onFewerSheets(brief, braced(brief, attempt.box, given))
      const made = { box, ...present({ port: attempt.port, saving }) }
      return { sizing: unknown, ...made, response: unknown, chosen: candidate, fits: true, tried: triedRows(passed) }
    }
    passed.push(attempt)
  }
  return unfitting({ brief }, unknown, passed)
}
