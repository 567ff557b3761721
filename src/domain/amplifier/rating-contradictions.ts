/** Ratings of one sheet that cannot all be true. */
import type { AmplifierRating, AmplifierSheet } from '../../contract/amplifiers/amplifier-matching.ts'
import { type Caution, caution } from '../caution.ts'
import { DesignError, type FoundFault } from '../design-error.ts'
import { toDigits } from '../digits.ts'
import { say } from '../say.ts'

/** Prints of the same load differ by rounding: 2.67 Ω is 8/3 Ω. */
export const SAME_LOAD = 0.01
/** Printed powers are rounded and measured one by one; ours. */
const PRINTED = 0.05

const kind = ({ bridged = false }: AmplifierRating) => bridged
const alike = (a: AmplifierRating, b: AmplifierRating) =>
  kind(a) === kind(b) && Math.abs(a.loadOhm / b.loadOhm - 1) <= SAME_LOAD

function twoPowers({ ratings }: AmplifierSheet, at: string): readonly FoundFault[] {
  return ratings.flatMap((rating, index) => {
    const first = ratings.findIndex(other => alike(other, rating))
    const other = ratings[first]
    if (other === undefined || first === index || other.powerW === rating.powerW) return []
    const detail = say('refused.w-and-w-are-both-stated', {
      powerW: toDigits(other.powerW, 4),
      otherPowerW: toDigits(rating.powerW, 4),
      loadOhm: toDigits(rating.loadOhm, 4),
      bridged: kind(rating) ? say('bridged') : []
    })
    return [
      { field: `${at}ratings[${first}].powerW`, detail },
      { field: `${at}ratings[${index}].powerW`, detail: say('refused.the-other-power-at-the-same') }
    ]
  })
}

function bridgedOnOne({ ratings, channels, minimumBridgedOhm }: AmplifierSheet, at: string): readonly FoundFault[] {
  if (channels !== 1) return []
  const detail = say('refused.one-channel-cannot-be-bridged-it')
  return [
    ...ratings.flatMap((rating, index) => (kind(rating) ? [{ field: `${at}ratings[${index}].bridged`, detail }] : [])),
    ...(minimumBridgedOhm === undefined ? [] : [{ field: `${at}minimumBridgedOhm`, detail }])
  ]
}

/** @throws DesignError `conflicting-input` for two powers at one load, or a bridged figure on one channel */
export function requireOneStory(sheet: AmplifierSheet, at: string): void {
  const [first, ...others] = [...twoPowers(sheet, at), ...bridgedOnOne(sheet, at)]
  if (first !== undefined) throw new DesignError('conflicting-input', first, ...others)
}

/**
 * Powers that would need a higher voltage at a lower load: P(R) > P(R')·R'/R with R < R'.
 *
 * @source derived: the voltage an amplifier reaches does not rise when the load draws more, so half the load has at most
 * twice the power
 * @check  300 W at 4 Ω and 900 W at 2 Ω: at most 600 W
 */
function moreThanDouble({ ratings }: AmplifierSheet, at: string): readonly Caution[] {
  return ratings.flatMap((rating, index) => {
    const { loadOhm, powerW } = rating
    const higher = ratings.filter(other => kind(other) === kind(rating) && other.loadOhm > loadOhm * (1 + SAME_LOAD))
    const mosts = higher.map(other => ({ other, mostW: (other.powerW * other.loadOhm) / loadOhm }))
    const least = mosts.toSorted((a, b) => a.mostW - b.mostW)[0]
    if (least === undefined || powerW <= least.mostW * (1 + PRINTED)) return []
    const { other, mostW } = least
    return [
      caution(
        'ratings-contradict',
        say('ratings-contradict', {
          powerW: toDigits(powerW, 4),
          loadOhm: toDigits(loadOhm, 4),
          otherPowerW: toDigits(other.powerW, 4),
          otherLoadOhm: toDigits(other.loadOhm),
          mostW: toDigits(mostW)
        }),
        { at: `${at}ratings[${index}].powerW`, figures: { powerW, mostW, loadOhm } }
      )
    ]
  })
}

const tooLow = ({ minimumOhm, minimumBridgedOhm }: AmplifierSheet) =>
  minimumBridgedOhm !== undefined && minimumBridgedOhm < 2 * minimumOhm * (1 - SAME_LOAD)

/** Lowest load of a bridged pair that its channels allow [Ω]: each sees half of it. @check  4 Ω stated, 4 Ω a channel → 8 Ω */
export function lowestBridged(sheet: AmplifierSheet, statedOhm: number): number {
  return tooLow(sheet) ? 2 * sheet.minimumOhm : statedOhm
}

export function contradictionCautions(sheet: AmplifierSheet, at: string): readonly Caution[] {
  const { minimumOhm, minimumBridgedOhm = 0 } = sheet
  const bridged = tooLow(sheet)
    ? [
        caution(
          'bridged-minimum-low',
          say('bridged-minimum-low', {
            minimumBridgedOhm: toDigits(minimumBridgedOhm),
            channelOhm: toDigits(minimumBridgedOhm / 2),
            minimumOhm: toDigits(minimumOhm),
            leastOhm: toDigits(2 * minimumOhm)
          }),
          {
            at: `${at}minimumBridgedOhm`,
            figures: { minimumBridgedOhm, channelOhm: minimumBridgedOhm / 2, minimumOhm }
          }
        )
      ]
    : []
  return [...bridged, ...moreThanDouble(sheet, at)]
}
