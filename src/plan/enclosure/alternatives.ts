/** Other boxes for the same drivers and space, each best for another wish, none beaten on all counts, far enough apart to be a choice. */
import type { Said } from '../../contract/sentences/form/template.ts'
import type { PlanAlternative, PlanChoice, SystemFigures } from '../../contract/systems/plan-choice.ts'
import { type DesignGoal, designGoals, type PlannedKind } from '../../contract/systems/words.ts'
import { inDigits, toDigits } from '../../domain/digits.ts'
import { COMPARED_HZ } from '../../domain/enclosure/comparison/defaults.ts'
import { portSpeeds } from '../../domain/port/air-speed.ts'
import { present } from '../../domain/present.ts'
import { say, worded } from '../../domain/say.ts'
import { mean } from '../../numeric/mean.ts'
import { attemptResponse } from './attempt-response.ts'
import { enclosurePlanDefaults } from './defaults.ts'
import type { WishDesigner } from './goal-designs.ts'
import type { Setting } from './parts/setting.ts'
import { systemFigures } from './parts/system-figures.ts'
import { wishedAttempts } from './wished-attempts.ts'

const upper = ({ levelDb }: SystemFigures) =>
  mean(levelDb.filter((_, k) => (COMPARED_HZ[k] ?? 0) >= enclosurePlanDefaults.upperFromHz.value))
const lower = ({ levelDb }: SystemFigures) =>
  mean(levelDb.filter((_, k) => (COMPARED_HZ[k] ?? 0) < enclosurePlanDefaults.upperFromHz.value))

interface Difference {
  /** Above 0: better than the planned box, in steps that are noticed. */
  readonly steps: number
  readonly text: Said
}

const moreOr = (difference: number) => say(difference > 0 ? 'answer.more' : 'answer.less')

/** Of one box with a port and one with radiators: whether air is heard in it. */
function airDifference(other: SystemFigures, planned: SystemFigures): readonly Difference[] {
  const ported = [other, planned].find(({ kind }) => kind === 'vented')
  const isAudible = (ported?.airSpeedMPerS ?? 0) > portSpeeds.sharp
  if (!isAudible || ![other, planned].some(({ kind }) => kind === 'passive-radiator')) return []
  const quieter = other.kind === 'passive-radiator'
  return [{ steps: quieter ? 1 : -1, text: say(quieter ? 'answer.no-air-in-a-port' : 'answer.air-in-a-port') }]
}

function differences(other: SystemFigures, planned: SystemFigures): readonly Difference[] {
  const [up, low] = [upper(other) - upper(planned), lower(other) - lower(planned)]
  const room = other.outerVolumeM3 / planned.outerVolumeM3
  const delay = other.groupDelayS - planned.groupDelayS
  return [
    {
      steps: up / enclosurePlanDefaults.noticedLevelDb.value,
      text: say('answer.db-from-40-to-63-hz', { inDigits: inDigits(Math.abs(up), 2), up: moreOr(up) })
    },
    {
      steps: low / enclosurePlanDefaults.noticedLevelDb.value,
      text: say('answer.db-at-25-and-31-5', { inDigits: inDigits(Math.abs(low), 2), low: moreOr(low) })
    },
    {
      steps: (1 - room) / enclosurePlanDefaults.noticedRoomShare.value,
      text: say('answer.times-the-room', { room: inDigits(room, 2) })
    },
    {
      steps: -delay / enclosurePlanDefaults.noticedDelayS.value,
      text: say(delay > 0 ? 'answer.rings-longer' : 'answer.rings-shorter', {
        ring: inDigits(Math.abs(delay) * 1e3, 2)
      })
    },
    ...airDifference(other, planned),
    ...dearer(other, planned)
  ]
}

/** Of what has a price; nothing to say where both cost the same. */
function dearer({ price: is }: SystemFigures, { price: was }: SystemFigures): readonly Difference[] {
  if (is === undefined || was === undefined || is === was) return []
  const by = toDigits(Math.abs(is - was), 3)
  return [
    {
      steps: (1 - is / was) / enclosurePlanDefaults.noticedPriceShare.value,
      text: is > was ? say('answer.costs-more', { by }) : say('answer.costs-less', { by })
    }
  ]
}

/** What is noticed as better, and as worse; of what is worse at least the worst. */
function weighed(against: readonly Difference[]): readonly [readonly Said[], readonly Said[]] {
  const worst = Math.max(-1, Math.min(...against.map(({ steps }) => steps)))
  const texts = (those: readonly Difference[]) => those.map(({ text }) => text)
  return [texts(against.filter(({ steps }) => steps >= 1)), texts(against.filter(({ steps }) => steps <= worst))]
}

/** Two boxes nearer than this are no choice: 2 dB, a third more room, 10 ms or another kind are one apart. Ours. */
function distance(a: SystemFigures, b: SystemFigures): number {
  const { apartLevelDb, apartRoomOctaves, apartDelayS, apartKind } = enclosurePlanDefaults
  return Math.hypot(
    (upper(a) - upper(b)) / apartLevelDb.value,
    (lower(a) - lower(b)) / apartLevelDb.value,
    Math.log2(a.outerVolumeM3 / b.outerVolumeM3) / apartRoomOctaves.value,
    (a.groupDelayS - b.groupDelayS) / apartDelayS.value,
    a.kind === b.kind ? 0 : apartKind.value
  )
}

/** Each of these that is worse than another on all counts is no alternative. */
const beats = (a: SystemFigures, b: SystemFigures) => differences(b, a).every(({ steps }) => steps <= 0)

/** A search that has found a box, to be asked for others. */
export interface Wished {
  readonly setting: Setting
  readonly goal: DesignGoal
  readonly designs: WishDesigner
  readonly roomM3: number
}

interface Asked {
  readonly goal: DesignGoal
  readonly kind?: PlannedKind
}

/** Who has radiators at hand sees them beside the port for the same wish, and the port beside them. */
function otherOpening({ goal, setting }: Wished, { kind }: SystemFigures): readonly Asked[] {
  const { radiators, enclosure } = setting.brief
  if (radiators === undefined || enclosure.kind !== undefined) return []
  return (['vented', 'passive-radiator'] as const).filter(other => other !== kind).map(other => ({ goal, kind: other }))
}

function alternatives(wished: Wished, planned: SystemFigures): readonly PlanAlternative[] {
  const found: PlanAlternative[] = []
  const asked = designGoals.filter(goal => goal !== wished.goal).map((goal): Asked => ({ goal }))
  for (const { goal, kind } of [...asked, ...otherOpening(wished, planned)]) {
    const made = firstBuilt(wished, goal, enclosurePlanDefaults.mostAlternatives.value, kind)
    if (made === undefined) continue
    const { enclosure, figures, gainPowerW } = made
    const others = [planned, ...found.map(each => each.figures)]
    const isNear = (other: SystemFigures) => kind === undefined && distance(figures, other) < 1
    if (others.some(other => isNear(other) || beats(other, figures))) continue
    const [gains, givesUp] = weighed(differences(figures, planned))
    const signal = gainPowerW === undefined ? {} : { signal: { gainPowerW } }
    const patch = { enclosure: { ...enclosure, goal: null }, ...signal }
    if (gains.length > 0) found.push({ goal, figures, ...worded({ gains, givesUp }), patch })
  }
  return found
}

/** The box that is planned in figures, and those beside it. */
export function planChoice(wished: Wished, figures: SystemFigures): PlanChoice {
  return { goal: wished.goal, figures, alternatives: alternatives(wished, figures) }
}

/** The first box of those searched for a wish that can be built, in figures. */
export function firstBuilt(
  { setting, designs, roomM3 }: Wished,
  goal: DesignGoal,
  mostAttempts: number,
  kind?: PlannedKind
) {
  let made = 0
  for (const { enclosure, setting: told, attempt } of wishedAttempts(setting, goal, designs, roomM3, kind)) {
    if (made++ >= mostAttempts) break
    if (attempt.complaint !== undefined) continue
    const { box, response } = attemptResponse(told, attempt, COMPARED_HZ)
    const figures = systemFigures(told.brief, box, response, told.joined)
    if (figures !== undefined) return { enclosure, figures, ...present({ gainPowerW: told.brief.gainPowerW }) }
  }
  return undefined
}
