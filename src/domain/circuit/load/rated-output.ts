/** The output an amplifier is reckoned with: given for the wired load, or from its ratings. */
import type { AmplifierOnSupply } from '../../../contract/supply/supply-current.ts'
import { DesignError } from '../../design-error.ts'
import { say } from '../../say.ts'

type Rating = NonNullable<AmplifierOnSupply['ratings']>[number]

/** The rating for the wired load, or the nearest below it: at a higher load no amplifier draws more. */
export function ratingFor({ ratings = [], loadOhm = 0 }: AmplifierOnSupply): Rating | undefined {
  return ratings.filter(each => each.loadOhm <= loadOhm + 1e-9).toSorted((a, b) => b.loadOhm - a.loadOhm)[0]
}

/** @throws DesignError `conflicting-input` of peak power and double statements; `missing-input` where no output follows */
export function ratedOutputW(amplifier: AmplifierOnSupply, at: string): number {
  const { powerW, ratings, loadOhm, ratedAs } = amplifier
  if (ratedAs === 'peak') {
    throw new DesignError('conflicting-input', {
      field: `${at}ratedAs`,
      detail: say('refused.peak-maximum-and-total-powers-fix')
    })
  }
  if (powerW !== undefined && ratings !== undefined) {
    throw new DesignError('conflicting-input', {
      field: `${at}ratings`,
      detail: say('refused.give-either-powerw-at-the-wired')
    })
  }
  const rating = ratingFor(amplifier)
  if (powerW !== undefined || rating !== undefined) return powerW ?? rating?.powerW ?? 0
  const published = (ratings ?? []).map(each => `${each.loadOhm} Ω`).join(', ')
  throw new DesignError('missing-input', {
    field: `${at}${ratings === undefined || loadOhm === undefined ? 'powerW' : 'ratings'}`,
    detail:
      ratings === undefined
        ? say('refused.give-the-continuous-rms-power-at')
        : say('refused.no-published-power', { load: loadOhm ?? say('refused.unstated'), published })
  })
}
