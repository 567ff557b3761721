/** Every system of one driver in closed form: what it would be, or the first limit it breaks. */
import type { DesignLimits, SearchRequest } from '../../../contract/systems/design-search.ts'
import type { ForeseenFigures, LimitReading, RejectedDesign } from '../../../contract/systems/design-system.ts'
import type { SearchedKind } from '../../../contract/systems/words.ts'
import { REFERENCE_PRESSURE_PA } from '../../../domain/constants.ts'
import { inLitres } from '../../../domain/digits.ts'
import { present } from '../../../domain/present.ts'
import { sixDigitsThroughout } from '../../../numeric/six-digits.ts'
import { drivenGroup, plateauAtOneVolt } from '../../enclosure/driven-group.ts'
import { wishProblem } from '../../enclosure/goal-designs.ts'
import { roomForAir } from '../../enclosure/parts/plan-box.ts'
import { shellRequest } from '../../enclosure/parts/plan-shell.ts'
import type { Setting } from '../../enclosure/parts/setting.ts'
import { partRunner, type RunPart } from '../../request/part.ts'
import type { PlacedBox } from '../room/box-room.ts'
import type { Room } from '../search/design-problem.ts'
import { type Combination, kindsOf } from '../search-combinations.ts'
import { type Joined, joinedWith } from '../search-electrics.ts'
import { broken, overshoot, readLimits } from '../search-limits.ts'
import { hindered, type Rejection, rejectionBy } from '../search-rejection.ts'
import { systemDefaults } from './defaults.ts'
import { type ForeseenBox, type WiredBoxes, wiredBoxes } from './foreseen-boxes.ts'
import type { Question } from './question.ts'
import type { System } from './rank.ts'

export interface Standing extends System {
  readonly figures: ForeseenFigures
}

export type Foresight =
  | { readonly standing: Standing; readonly rejected?: undefined }
  | { readonly standing?: undefined; readonly rejected: RejectedDesign }

/** What a system is foreseen to break; money and amperes are known to the digit, what the box decides is not. */
export function foreseenBreaks(limits: DesignLimits, figures: Partial<ForeseenFigures>): readonly LimitReading[] {
  const exact = (limit: LimitReading['limit']) =>
    limit === 'price' || limit === 'full-sine-current' || limit === 'average-current'
  return broken(readLimits(limits, figures)).filter(
    reading => exact(reading.limit) || overshoot(reading) > systemDefaults.foreseenSlack.value
  )
}

export const worst = (readings: readonly LimitReading[]): number => Math.max(0, ...readings.map(overshoot))

interface Space {
  readonly roomM3: number
  readonly room?: Room<PlacedBox>
}

interface Bench {
  readonly run: RunPart
  readonly question: Question
  /** Every system is foreseen to its end, whatever it breaks: for who looks for what breaks least. */
  readonly whole: boolean
  readonly kinds: readonly SearchedKind[]
  /** By shell, and by shell and wiring: amplifiers ask for the same. */
  readonly spaces: Map<string, Space | undefined>
  readonly wired: Map<string, WiredBoxes>
}

const plateau2Of = (setting: Setting): number =>
  (plateauAtOneVolt(drivenGroup(setting).wish) / REFERENCE_PRESSURE_PA) ** 2

function wiredFor(found: Joined, { question, spaces, wired }: Bench): WiredBoxes | undefined {
  const { setting, joined } = found
  const shell = JSON.stringify(shellRequest(setting.brief))
  if (!spaces.has(shell)) {
    const roomM3 = roomForAir(setting.brief)
    spaces.set(shell, roomM3 === undefined ? undefined : { roomM3 })
  }
  const space = spaces.get(shell)
  if (space === undefined) return undefined
  const key = [shell, joined.connection, joined.driversInSeries, joined.loadOhm, joined.seriesOhm].join(' ')
  const known = wired.get(key)
  if (known !== undefined) return known
  const problem = wishProblem(setting, space.roomM3)
  const room = space.room ?? problem.room
  spaces.set(shell, { ...space, room })
  const breaks = (figures: Partial<ForeseenFigures>) => worst(foreseenBreaks(question.limits, figures))
  const made = wiredBoxes({ ...problem, room }, plateau2Of(setting), question.levelHz, breaks)
  wired.set(key, made)
  return made
}

function figuresOf({ figures }: Joined, { design, heard }: ForeseenBox): ForeseenFigures {
  const { netVolumeM3, tuningHz, place } = design
  return sixDigitsThroughout({
    ...figures,
    netVolumeM3,
    outerVolumeM3: place.outerM3,
    ...present({ tuningHz }),
    ...heard
  })
}

function foreseenIn(system: System, found: Joined, bench: Bench): Foresight {
  const { limits, goal } = bench.question
  const rejected = (rejection: Rejection, figures?: ForeseenFigures) => ({
    rejected: sixDigitsThroughout({ ...system, ...rejection, ...present({ figures }) })
  })
  const boxes = wiredFor(found, bench)
  if (boxes === undefined) return rejected(hindered('space', 'The space does not hold the drivers.'))
  const best = boxes(system.kind, goal, Math.min(found.joined.targetVoltageV, found.joined.amplifierVoltageV))
  if (best === undefined) {
    return rejected(hindered('enclosure', `No ${system.kind} box for the goal ${goal} stands in the space.`))
  }
  const figures = figuresOf(found, best)
  if (best.keeps || bench.whole) return { standing: { ...system, figures } }
  const beyond = rejectionBy(foreseenBreaks(limits, figures))
  return rejected(beyond ?? hindered('space', `Only ${inLitres(figures.netVolumeM3)} stand in the space.`), figures)
}

function foreseen(combination: Combination, bench: Bench): readonly Foresight[] {
  const { driver, driverCount, amplifier, price } = combination
  const { limits } = bench.question
  const systems = bench.kinds.map(kind => ({ driver: driver.name, driverCount, amplifier: amplifier.name, kind }))
  const all = (rejection: Rejection) =>
    systems.map(system => ({ rejected: sixDigitsThroughout({ ...system, ...rejection }) }))
  const early = bench.whole ? {} : limits
  const expensive = rejectionBy(foreseenBreaks(early, present({ price })))
  if (expensive !== undefined) return all(expensive)
  const { found, rejection } = joinedWith(combination, bench.run)
  if (found === undefined) return all(rejection)
  const thirsty = rejectionBy(foreseenBreaks(early, found.figures))
  return thirsty === undefined ? systems.map(system => foreseenIn(system, found, bench)) : all(thirsty)
}

/** A function that foresees combinations of one driver; what they share is worked out once. */
export function foresight(
  request: SearchRequest,
  question: Question,
  whole = false
): (combination: Combination) => readonly Foresight[] {
  const run = partRunner()
  const bench: Bench = { run, question, whole, kinds: kindsOf(request), spaces: new Map(), wired: new Map() }
  return combination => foreseen(combination, bench)
}
