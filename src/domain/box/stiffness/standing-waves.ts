/** The first standing wave along each inside size, against the band. */
import { type Caution, caution } from '../../caution.ts'

interface StandingWave {
  readonly along: 'width' | 'height' | 'depth'
  readonly insideM: number
  readonly frequencyHz: number
}

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
            `A standing wave along the inside ${lowest.along} of ${Math.round(lowest.insideM * 1e3)} mm falls at ${Math.round(lowest.frequencyHz)} Hz, close to the band (up to ${Math.round(upperHz)} Hz). Line both ends.`,
            { figures: { frequencyHz: lowest.frequencyHz, upperHz } }
          )
        ]),
    ...alike.map(([a, b]) =>
      caution(
        'inside-sizes-alike',
        `Inside ${a.along} and ${b.along} differ by less than a tenth, so that their standing waves fall together near ${Math.round(a.frequencyHz)} Hz, well above the bass.`,
        { figures: { firstHz: a.frequencyHz, secondHz: b.frequencyHz } }
      )
    )
  ]
}
