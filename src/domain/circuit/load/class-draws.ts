/** How amplifiers of each class draw. */
import type { AmplifierClass } from '../../../contract/supply/words.ts'

interface ClassDraw {
  /** Output over input at rated sine output, converter included. */
  readonly efficiency: number
  readonly lowest: number
  readonly highest: number
  /** Idle draw of one amplifier [W]. */
  readonly quiescentW: number
  /** How input power falls with output: straight, with the square root of the output, or not at all. */
  readonly law: 'linear' | 'square-root' | 'constant'
}

/** Efficiencies and idle draws: common practice, no source; π/4 bounds a class B stage (derived). */
export const classDraws: Readonly<Record<AmplifierClass, ClassDraw>> = {
  A: { efficiency: 0.2, lowest: 0.15, highest: 0.25, quiescentW: 40, law: 'constant' },
  AB: { efficiency: 0.6, lowest: 0.45, highest: 0.65, quiescentW: 40, law: 'square-root' },
  B: { efficiency: 0.6, lowest: 0.5, highest: 0.785, quiescentW: 40, law: 'square-root' },
  D: { efficiency: 0.85, lowest: 0.75, highest: 0.92, quiescentW: 15, law: 'linear' },
  G: { efficiency: 0.65, lowest: 0.55, highest: 0.75, quiescentW: 40, law: 'square-root' },
  H: { efficiency: 0.7, lowest: 0.6, highest: 0.75, quiescentW: 40, law: 'square-root' }
}
