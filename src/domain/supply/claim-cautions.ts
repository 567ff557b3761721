/** What is to be said of a claimed power before anything is sized by it. */
import { type Caution, caution, cautionCatalogue } from '../caution.ts'
import { type AmplifierDraw, type AmplifierOnSupply, plausiblePower } from './amplifier-draw.ts'

const whole = (value: number) => value.toFixed(0)

function implausible({ onboardFusesA }: AmplifierOnSupply, draw: AmplifierDraw, at: string): readonly Caution[] {
  const { claimedW, efficiency, ratedVoltageV } = draw
  if (onboardFusesA === undefined || claimedW === undefined) return []
  const plausibleW = plausiblePower(efficiency, ratedVoltageV, onboardFusesA)
  return [
    caution(
      'rating-implausible',
      `${whole(claimedW)} W is claimed, but ${whole(plausibleW)} W is all its on-board fuses of ${onboardFusesA.join(' + ')} A pass at ${Number(ratedVoltageV.toPrecision(3))} V with efficiency ${efficiency.toFixed(2)}: current, cable and fuse are reckoned for ${whole(plausibleW)} W.`,
      { at, figures: { claimedW, plausibleW } }
    )
  ]
}

/** @param at  path of the amplifier in the request */
export function claimCautions(amplifier: AmplifierOnSupply, draw: AmplifierDraw, at: string): readonly Caution[] {
  const unknown = caution('rating-kind-unknown', cautionCatalogue['rating-kind-unknown'].meaning, {
    at: `${at}.ratedAs`
  })
  return [...implausible(amplifier, draw, at), ...(amplifier.ratedAs === 'unknown' ? [unknown] : [])]
}
