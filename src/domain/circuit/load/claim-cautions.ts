/** What is to be said of a claimed power before anything is sized by it. */
import { cautionCatalogue } from '../../../contract/cautions/catalogue.ts'
import type { AmplifierOnSupply } from '../../../contract/supply/supply-current.ts'
import { type Caution, caution } from '../../caution.ts'
import { inDigits } from '../../digits.ts'
import { type AmplifierDraw, plausiblePower } from './amplifier-draw.ts'
import { ratingFor } from './rated-output.ts'

const whole = (value: number) => value.toFixed(0)

function implausible({ onboardFusesA }: AmplifierOnSupply, draw: AmplifierDraw, at: string): readonly Caution[] {
  const { claimedW, efficiency, ratedVoltageV } = draw
  if (onboardFusesA === undefined || claimedW === undefined) return []
  const plausibleW = plausiblePower(efficiency, ratedVoltageV, onboardFusesA)
  return [
    caution(
      'rating-implausible',
      `${whole(claimedW)} W is claimed, but ${whole(plausibleW)} W is all its on-board fuses of ${onboardFusesA.join(' + ')} A pass at ${inDigits(ratedVoltageV)} V with efficiency ${efficiency.toFixed(2)}: current, cable and fuse are reckoned for ${whole(plausibleW)} W.`,
      { at, figures: { claimedW, plausibleW } }
    )
  ]
}

function bounded(amplifier: AmplifierOnSupply, at: string): readonly Caution[] {
  const { loadOhm = 0, ratings } = amplifier
  const rating = ratings === undefined ? undefined : ratingFor(amplifier)
  if (rating === undefined || Math.abs(rating.loadOhm - loadOhm) < 1e-9) return []
  const { loadOhm: ratedOhm, powerW: ratedPowerW } = rating
  return [
    caution(
      'power-bounded',
      `No power is published for ${loadOhm} Ω; current, cable and fuse are reckoned for the ${ratedPowerW} W at ${ratedOhm} Ω, for no higher load draws more.`,
      { at: `${at}.loadOhm`, figures: { loadOhm, ratedOhm, ratedPowerW } }
    )
  ]
}

/** @param at  path of the amplifier in the request */
export function claimCautions(amplifier: AmplifierOnSupply, draw: AmplifierDraw, at: string): readonly Caution[] {
  const unknown = caution('rating-kind-unknown', cautionCatalogue['rating-kind-unknown'].meaning, {
    at: `${at}.ratedAs`
  })
  return [
    ...implausible(amplifier, draw, at),
    ...bounded(amplifier, at),
    ...(amplifier.ratedAs === 'unknown' ? [unknown] : [])
  ]
}
