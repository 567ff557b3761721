/** Two operations that answer the same figures for the same question. */
import type { Random } from '../random-requests.ts'

// biome-ignore lint/suspicious/noExplicitAny: answers as a caller reads them, off the wire
export type Answer = any

type Figures = Readonly<Record<string, number | string | undefined>>

export interface Pair {
  readonly asked: readonly [one: string, other: string]
  /** A question for the one, drawn at random. */
  readonly question: (random: Random) => object
  /** The same question for the other, which may need what the one chose; none where the one found nothing to compare. */
  readonly same: (question: Answer, result: Answer, random: Random) => Asked | undefined
  /** How far apart they may be, relative; they are computed alike or nearly so. */
  readonly within?: number
}

export interface Asked {
  readonly question: object
  /** What the one said, and how the other says it. */
  readonly said: Figures
  readonly heard: (result: Answer) => Figures
}

export const between = (random: Random, low: number, high: number): number => low + (high - low) * random()

/** Figures of a driver's sheet, drawn within what is usual for bass. */
export const driverSheet = (random: Random) => ({
  fsHz: between(random, 20, 45),
  qms: between(random, 3, 9),
  qes: between(random, 0.32, 0.55),
  vasL: between(random, 30, 150),
  sdCm2: between(random, 200, 900),
  reOhm: between(random, 1, 6),
  leMh: between(random, 0.2, 2),
  xmaxMm: between(random, 8, 20),
  powerW: between(random, 200, 900)
})
