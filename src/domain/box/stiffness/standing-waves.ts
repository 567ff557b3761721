/** The first standing wave along each inside size, against the band. */

import type { StandingWave } from '../../../contract/boxes/box-result.ts'
import { type Caution, caution } from '../../caution.ts'
import { say } from '../../say.ts'

/** Distance from the band, and likeness of two sizes, below which there is a caution. */
const LEAST_RATIO = 2.5
const LEAST_DIFFERENCE = 0.1

/**
 *   f = c/(2·L)
 *
 * @source any text on room acoustics: axial modes between hard walls
 * @check  604, 364, 344 mm → 284, 471, 499 Hz
 */
export function standingWaves(
  inner: { readonly widthM: number; readonly heightM: number; readonly depthM: number },
  soundSpeedMPerS: number
): readonly StandingWave[] {
  return (['width', 'height', 'depth'] as const).map(along => {
    const insideM = inner[`${along}M`]
    return { along, insideM, frequencyHz: soundSpeedMPerS / (2 * insideM) }
  })
}

export function standingWaveCautions(waves: readonly StandingWave[], upperHz: number): readonly Caution[] {
  const lowest = waves.reduce((a, b) => (b.frequencyHz < a.frequencyHz ? b : a))
  const pairs = waves.flatMap((a, i) => waves.slice(i + 1).map(b => [a, b] as const))
  const alike = pairs.filter(([a, b]) => Math.abs(a.insideM / b.insideM - 1) < LEAST_DIFFERENCE)
  return [
    ...(lowest.frequencyHz >= LEAST_RATIO * upperHz
      ? []
      : [
          caution(
            'standing-wave-near-band',
            say('standing-wave-near-band', {
              along: say(`axis.${lowest.along}`),
              insideMm: Math.round(lowest.insideM * 1e3),
              frequencyHz: Math.round(lowest.frequencyHz),
              upperHz: Math.round(upperHz)
            }),
            { figures: { frequencyHz: lowest.frequencyHz, upperHz } }
          )
        ]),
    ...alike.map(([a, b]) =>
      caution(
        'inside-sizes-alike',
        say('inside-sizes-alike', {
          along: say(`axis.${a.along}`),
          otherAlong: say(`axis.${b.along}`),
          frequencyHz: Math.round(a.frequencyHz)
        }),
        { figures: { firstHz: a.frequencyHz, secondHz: b.frequencyHz } }
      )
    )
  ]
}
