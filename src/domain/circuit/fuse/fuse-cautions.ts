/** Cautions on a chosen fuse, each with the figures that triggered it. */
import type { Said } from '../../../contract/sentences/form/template.ts'
import type { ChosenFuse } from '../../../contract/supply/fuse.ts'
import type { Selectivity, TimeBand } from '../../../contract/supply/supply-fuses.ts'
import { type Caution, catalogued, caution } from '../../caution.ts'
import { fixed, toDigits } from '../../digits.ts'
import { present } from '../../present.ts'
import { say } from '../../say.ts'
import { type Breaking, breakingCurrent } from './battery-source.ts'
import { familyThatBreaks } from './fuse-rating.ts'
import { timeBand, timeTable } from './fuse-time-current.ts'

type Rated = Pick<ChosenFuse, 'type' | 'ratingA' | 'breakingA'>

/** Why the battery is taken to be as strong as it is. */
function strengthOf({ stated }: Breaking): Said {
  return stated ? say('battery-strength.given') : say('battery-strength.assumed')
}

/** A stop only where the resistance was given and a family of the list would do: what is assumed is for the caller to settle. */
export function breakingCaution(fuse: Rated, breaking: Breaking, systemVoltageV: number): readonly Caution[] {
  const prospectiveA = breakingCurrent(breaking, fuse.ratingA)
  if (prospectiveA <= fuse.breakingA) return []
  const other = familyThatBreaks(breaking, fuse.ratingA, systemVoltageV)
  const way =
    other === undefined
      ? say('breaking-capacity.none', { leastA: toDigits(Math.ceil(prospectiveA / 100) * 100) })
      : say('breaking-capacity.family', {
          form: say(`fuse-form.${other.type}`),
          standard: other.standard,
          breakingA: other.breakingA
        })
  return [
    caution(
      'breaking-capacity',
      say('breaking-capacity', {
        prospectiveA: toDigits(prospectiveA, 3),
        ratingA: fuse.ratingA,
        strength: strengthOf(breaking),
        type: fuse.type,
        breakingA: fuse.breakingA,
        way
      }),
      {
        at: 'source',
        level: breaking.stated && other !== undefined ? 'stop' : 'care',
        figures: { prospectiveA, breakingA: fuse.breakingA }
      }
    )
  ]
}

function makerUsed(makerA: number, loadA: number): Caution {
  return caution('maker-fuse-used', say('maker-fuse-used', { makerA, loadA: toDigits(loadA) }), {
    at: 'makerFuseA',
    figures: { makerA, loadA }
  })
}

/** A maker's fuse that contradicts is reported; it is obeyed only where it is smaller and still carries the load. Where no cable passes only the load judges it. */
export function makerCautions(
  makerA: number | undefined,
  ratingA: number,
  loadA: number,
  cableA: number | undefined
): readonly Caution[] {
  if (makerA === undefined) return []
  if (makerA === ratingA) return [makerUsed(makerA, loadA)]
  const figures = { makerA, ratingA, loadA, ...present({ cableA }) }
  if (makerA < loadA) {
    const message = say('maker-fuse-too-small.chosen', { makerA, loadA: toDigits(loadA), ratingA })
    return [caution('maker-fuse-too-small', message, { at: 'makerFuseA', figures })]
  }
  if (cableA === undefined) return []
  const reason =
    makerA > cableA
      ? say('maker-fuse-not-obeyed.cable', { cableA: toDigits(cableA) })
      : say('maker-fuse-not-obeyed.sooner', { ratingA })
  return [
    caution('maker-fuse-not-obeyed', say('maker-fuse-not-obeyed', { makerA, ratingA, reason }), {
      at: 'makerFuseA',
      level: makerA > cableA ? 'care' : 'note',
      figures
    })
  ]
}

function overcurrentCaution({ type, ratingA }: Rated): Caution {
  const at135PercentA = 1.35 * ratingA
  const longestS = timeBand(type, ratingA, at135PercentA).maximumS
  const long = longestS === undefined ? say('fuse-overcurrent.minutes') : say('fuse-overcurrent.seconds', { longestS })
  return caution(
    'fuse-overcurrent',
    say('fuse-overcurrent', { ratingA, at135PercentA: toDigits(at135PercentA), long }),
    { at: 'overcurrentA', figures: { ratingA, at135PercentA } }
  )
}

function aboveOnboard(ratingA: number, onboardFusesA: readonly number[]): readonly Caution[] {
  const onboardA = onboardFusesA.reduce((sum, fuseA) => sum + fuseA, 0)
  if (ratingA <= onboardA) return []
  return [
    caution('fuse-above-onboard', say('fuse-above-onboard', { ratingA, onboardA: toDigits(onboardA) }), {
      at: 'onboardFusesA',
      figures: { ratingA, onboardA }
    })
  ]
}

export function overcurrentCautions(
  fuse: Rated,
  band: TimeBand | undefined,
  onboardA: readonly number[] | undefined
): readonly Caution[] {
  const recalled = timeTable(fuse.type).source === 'fuse-time-current-strip'
  return [
    ...(onboardA === undefined ? [] : aboveOnboard(fuse.ratingA, onboardA)),
    ...(band === undefined ? [] : [overcurrentCaution(fuse)]),
    ...(band !== undefined && recalled ? [catalogued('time-current-uncertain', 'overcurrentA')] : [])
  ]
}

export function selectivityCautions(mainA: number, branches: readonly Selectivity[]): readonly Caution[] {
  return branches.flatMap(({ selective, branchRatingA, ratio }, index) =>
    selective
      ? []
      : [
          caution('selectivity-poor', say('selectivity-poor', { mainA, branchRatingA, ratio: fixed(ratio, 2) }), {
            at: `branchFusesA[${index}]`,
            figures: { mainA, branchA: branchRatingA, ratio }
          })
        ]
  )
}
