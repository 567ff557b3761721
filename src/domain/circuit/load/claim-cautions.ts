/** What is to be said of a claimed power before anything is sized by it. */
import type { AmplifierOnSupply } from '../../../contract/supply/supply-current.ts'
import { type Caution, catalogued, caution } from '../../caution.ts'
import { fixed, toDigits } from '../../digits.ts'
import { say } from '../../say.ts'
import { type AmplifierDraw, plausiblePower } from './amplifier-draw.ts'
import { ratingFor } from './rated-output.ts'

const whole = (value: number) => fixed(value, 0)

function implausible({ onboardFusesA }: AmplifierOnSupply, draw: AmplifierDraw, at: string): readonly Caution[] {
  const { claimedW, efficiency, ratedVoltageV } = draw
  if (onboardFusesA === undefined || claimedW === undefined) return []
  const plausibleW = plausiblePower(efficiency, ratedVoltageV, onboardFusesA)
  return [
    caution(
      'rating-implausible',
      say('rating-implausible.supply', {
        claimedW: whole(claimedW),
        plausibleW: whole(plausibleW),
        fuses: onboardFusesA.join(' + '),
        ratedVoltageV: toDigits(ratedVoltageV),
        efficiencyRatio: fixed(efficiency, 2)
      }),
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
    caution('power-bounded', say('power-bounded.supply', { loadOhm, ratedPowerW, ratedOhm }), {
      at: `${at}.loadOhm`,
      figures: { loadOhm, ratedOhm, ratedPowerW }
    })
  ]
}

/** @param at  path of the amplifier in the request */
export function claimCautions(amplifier: AmplifierOnSupply, draw: AmplifierDraw, at: string): readonly Caution[] {
  const unknown = catalogued('rating-kind-unknown', `${at}.ratedAs`)
  return [
    ...implausible(amplifier, draw, at),
    ...bounded(amplifier, at),
    ...(amplifier.ratedAs === 'unknown' ? [unknown] : [])
  ]
}
