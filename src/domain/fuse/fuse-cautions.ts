/** Cautions on a chosen fuse, each with the figures that triggered it. */
import { type Caution, caution, cautionCatalogue } from '../caution.ts'
import type { FuseType } from './fuse-families-iso-8820.ts'
import { type TimeBand, timeBand, timeTable } from './fuse-time-current.ts'
import type { Selectivity } from './selectivity.ts'

interface Rated {
  readonly type: FuseType
  readonly ratingA: number
  readonly breakingA: number
}

const plain = (value: number) => String(Number(value.toPrecision(4)))

export function breakingCaution(fuse: Rated, prospectiveA: number): readonly Caution[] {
  if (prospectiveA <= fuse.breakingA) return []
  return [
    caution(
      'breaking-capacity',
      `The source drives ${plain(prospectiveA)} A into a short circuit behind the fuse; type ${fuse.type} breaks ${fuse.breakingA} A. Use a fuse-link of high breaking capacity, such as class T (20 kA, from memory).`,
      { at: 'source', figures: { prospectiveA, breakingA: fuse.breakingA } }
    )
  ]
}

function makerUsed(makerA: number, loadA: number): Caution {
  return caution(
    'maker-fuse-used',
    `The maker's ${makerA} A carries the full sine of ${plain(loadA)} A and is what is chosen.`,
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
    const message = `The maker states ${makerA} A, the wired load draws ${plain(loadA)} A at full sine: it would open. ${ratingA} A was chosen; check load and power.`
    return [caution('maker-fuse-too-small', message, { at: 'makerFuseA', figures })]
  }
  const reason =
    makerA > cableA
      ? `the cable carries only ${plain(cableA)} A`
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
    `${ratingA} A is not a current limit: ${plain(at135PercentA)} A may flow ${long} before it opens.`,
    { at: 'overcurrentA', figures: { ratingA, at135PercentA } }
  )
}

function aboveOnboard(ratingA: number, onboardFusesA: readonly number[]): readonly Caution[] {
  const onboardA = onboardFusesA.reduce((sum, fuseA) => sum + fuseA, 0)
  if (ratingA <= onboardA) return []
  return [
    caution(
      'fuse-above-onboard',
      `The cable's fuse, ${ratingA} A, is above the amplifier's own, ${plain(onboardA)} A together.`,
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
