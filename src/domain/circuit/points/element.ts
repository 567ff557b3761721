/** Two-terminal elements between named points, and the law of each: the current drawn from its first point to its second. */

export type Law =
  | { readonly kind: 'conductor'; readonly ohm: number }
  | { readonly kind: 'battery'; readonly emfV: number; readonly givingOhm: number; readonly takingOhm: number }
  | { readonly kind: 'regulated'; readonly setV: number; readonly slopeOhm: number; readonly limitA: number }
  | { readonly kind: 'power'; readonly powerW: number }
  | { readonly kind: 'current'; readonly currentA: number }

export interface Element {
  readonly id: string
  readonly from: string
  readonly to: string
  readonly law: Law
}

/** A source with nothing behind it would else have no state at all [S]. */
const BLEED_S = 1e-6

/** True for what draws whatever the voltage is: absent from the unloaded state. */
export const isLoad = ({ kind }: Law): boolean => kind === 'power' || kind === 'current'

/** Current at a voltage [A]; a source that gives draws a negative one. */
export function drawnA(law: Law, voltageV: number): number {
  switch (law.kind) {
    case 'conductor':
      return voltageV / law.ohm
    case 'battery':
      return (voltageV - law.emfV) / (voltageV <= law.emfV ? law.givingOhm : law.takingOhm)
    case 'regulated':
      return BLEED_S * voltageV - Math.min(law.limitA, Math.max(0, (law.setV - voltageV) / law.slopeOhm))
    case 'power':
      return law.powerW === 0 ? 0 : law.powerW / voltageV
    case 'current':
      return law.currentA
  }
}

/** Change of that current with the voltage [S]. */
export function slopeS(law: Law, voltageV: number): number {
  switch (law.kind) {
    case 'conductor':
      return 1 / law.ohm
    case 'battery':
      return 1 / (voltageV <= law.emfV ? law.givingOhm : law.takingOhm)
    case 'regulated': {
      const free = (law.setV - voltageV) / law.slopeOhm
      return BLEED_S + (free > 0 && free < law.limitA ? 1 / law.slopeOhm : 0)
    }
    case 'power':
      return law.powerW === 0 ? 0 : -law.powerW / voltageV ** 2
    case 'current':
      return 0
  }
}

/** The largest slope it can still have at this voltage or below [S]: a step with it never passes the state. */
export function steepestS(law: Law, voltageV: number): number {
  if (law.kind === 'battery') return 1 / Math.min(law.givingOhm, voltageV <= law.emfV ? law.givingOhm : law.takingOhm)
  if (law.kind !== 'regulated') return slopeS(law, voltageV)
  return BLEED_S + ((law.setV - voltageV) / law.slopeOhm < law.limitA ? 1 / law.slopeOhm : 0)
}

/** Which straight part of its law a source is on. */
export function partOf(law: Law, voltageV: number): 'giving' | 'limited' | 'taking' | 'only' {
  if (law.kind === 'battery') return voltageV <= law.emfV ? 'giving' : 'taking'
  if (law.kind !== 'regulated') return 'only'
  const freeA = (law.setV - voltageV) / law.slopeOhm
  return freeA >= law.limitA ? 'limited' : freeA > 0 ? 'giving' : 'taking'
}

/** The voltage below which a source that was silent or was charged gives [V]; undefined for what never does. */
export function helpsBelowV(law: Law): number | undefined {
  if (law.kind === 'battery') return law.emfV
  return law.kind === 'regulated' ? law.setV : undefined
}
