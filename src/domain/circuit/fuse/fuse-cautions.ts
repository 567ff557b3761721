/** Cautions on a chosen fuse, each with the figures that triggered it. */
import { cautionCatalogue } from '../../../contract/cautions/catalogue.ts'
import type { Selectivity } from '../../../contract/supply/supply-fuses.ts'
import type { FuseType } from '../../../contract/supply/words.ts'
import { type Caution, caution } from '../../caution.ts'
import { inDigits } from '../../digits.ts'
import { type Breaking, breakingCurrent } from './battery-source.ts'
import { familyThatBreaks } from './fuse-rating.ts'
import { type TimeBand, timeBand, timeTable } from './fuse-time-current.ts'

interface Rated {
  readonly type: FuseType
  readonly ratingA: number
  readonly breakingA: number
}

/** Why the battery is taken to be as strong as it is. */
function strengthOf({ stated }: Breaking): string {
  return stated
    ? 'by the resistance given for the battery'
    : 'if the battery is as strong as it may be (its measured resistance or its maker’s short-circuit current settles it)'
}

/** A stop only where the resistance was given and a family of the list would do: what is assumed is for the caller to settle. */
export function breakingCaution(fuse: Rated, breaking: Breaking, systemVoltageV: number): readonly Caution[] {
  const prospectiveA = breakingCurrent(breaking, fuse.ratingA)
  if (prospectiveA <= fuse.breakingA) return []
  const other = familyThatBreaks(breaking, fuse.ratingA, systemVoltageV)
  const way =
    other === undefined
      ? `None of the families listed here breaks that at this rating: use a fuse-link whose maker states at least ${inDigits(Math.ceil(prospectiveA / 100) * 100, 4)} A of direct current at this voltage, or feed the load from behind a larger fuse and a length of cable.`
      : `A ${other.form} (${other.standard}) breaks ${other.breakingA} A.`
  return [
    caution(
      'breaking-capacity',
      `Up to ${inDigits(prospectiveA, 3)} A flow into a dead short right behind the ${fuse.ratingA} A fuse, ${strengthOf(breaking)}; type ${fuse.type} breaks ${fuse.breakingA} A. ${way}`,
      {
        at: 'source',
        level: breaking.stated && other !== undefined ? 'stop' : 'care',
        figures: { prospectiveA, breakingA: fuse.breakingA }
      }
    )
  ]
}

function makerUsed(makerA: number, loadA: number): Caution {
  return caution(
    'maker-fuse-used',
    `The maker's ${makerA} A carries the full sine of ${inDigits(loadA, 4)} A and is what is chosen.`,
    { at: 'makerFuseA', figures: { makerA, loadA } }
  )
}

/** A maker's fuse that contradicts is reported; it is obeyed only where it is smaller and still carries the load. */
export function makerCautions(
  makerA: number | undefined,
  ratingA: number,
  loadA: number,
  cableA: number
): readonly Caution[] {
  if (makerA === undefined) return []
  if (makerA === ratingA) return [makerUsed(makerA, loadA)]
  const figures = { makerA, ratingA, loadA, cableA }
  if (makerA < loadA) {
    const message = `The maker states ${makerA} A, the wired load draws ${inDigits(loadA, 4)} A at full sine: it would open. ${ratingA} A was chosen; check load and power.`
    return [caution('maker-fuse-too-small', message, { at: 'makerFuseA', figures })]
  }
  const reason =
    makerA > cableA
      ? `the cable carries only ${inDigits(cableA, 4)} A`
      : `${ratingA} A carries the load and protects the cable sooner`
  return [
    caution('maker-fuse-not-obeyed', `The maker states ${makerA} A; ${ratingA} A was chosen: ${reason}.`, {
      at: 'makerFuseA',
      level: makerA > cableA ? 'care' : 'note',
      figures
    })
  ]
}

function overcurrentCaution({ type, ratingA }: Rated): Caution {
  const at135PercentA = 1.35 * ratingA
  const longestS = timeBand(type, ratingA, at135PercentA).maximumS
  const long = longestS === undefined ? 'for minutes' : `for up to ${longestS} s`
  return caution(
    'fuse-overcurrent',
    `${ratingA} A is not a current limit: ${inDigits(at135PercentA, 4)} A may flow ${long} before it opens.`,
    { at: 'overcurrentA', figures: { ratingA, at135PercentA } }
  )
}

function aboveOnboard(ratingA: number, onboardFusesA: readonly number[]): readonly Caution[] {
  const onboardA = onboardFusesA.reduce((sum, fuseA) => sum + fuseA, 0)
  if (ratingA <= onboardA) return []
  return [
    caution(
      'fuse-above-onboard',
      `The cable's fuse, ${ratingA} A, is above the amplifier's own, ${inDigits(onboardA, 4)} A together.`,
      { at: 'onboardFusesA', figures: { ratingA, onboardA } }
    )
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
    ...(band !== undefined && recalled
      ? [caution('time-current-uncertain', cautionCatalogue['time-current-uncertain'].meaning, { at: 'overcurrentA' })]
      : [])
  ]
}

export function selectivityCautions(mainA: number, branches: readonly Selectivity[]): readonly Caution[] {
  return branches.flatMap(({ selective, branchRatingA, ratio }, index) =>
    selective
      ? []
      : [
          caution(
            'selectivity-poor',
            `Main ${mainA} A over branch ${branchRatingA} A is a ratio of ${ratio.toFixed(2)}, below 1.6: a fault behind the branch may open the main fuse too.`,
            {
              at: `branchFusesA[${index}]`,
              figures: { mainA, branchA: branchRatingA, ratio }
            }
          )
        ]
  )
}
