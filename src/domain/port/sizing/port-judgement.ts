/** Judgement values of the port room, in one place; those that stand in for an absent field are echoed as assumed. */

/** A slot flatter than this, or lower than this [m], is braked by its walls and hangs on every millimetre. Common practice, no source. */
export const FLATTEST_SLOT = 10
export const LOWEST_SLOT_M = 0.04
/** Width over height of a slot that is closed in with a cheek instead. Ours. */
export const CHEEKED_SLOT = 6
/** Share of the volume that a smaller box with a higher tuning is offered at. Ours. */
export const SMALLER_BOX_SHARE = 0.75
/** The high-pass of a vented box lies at 0.7 to 0.9 of its tuning. Common practice, no source. */
export const HIGH_PASS_SHARE = 0.8
/** Usual end of the range of a subwoofer [Hz]. Common practice, no source. */
export const USUAL_LOW_PASS_HZ = 80
/** Pipe resonance over the low-pass corner: below the first it is told, below the second it counts against. Ours. */
export const RESONANCE_CLEAR = 4
export const RESONANCE_CLOSE = 2
/** Longest straight run over the cube root of the net volume, where no space is given. Ours. */
export const STRAIGHT_SHARE = 1.25
/** Air in the ports over net volume from which the lumped tuning is 3 % high. Derived from the waveguide. */
export const LARGE_PORT_SHARE = 0.2
/** Clear widths of round ports to choose from [m]; ours, whole tens and the usual pipe widths between. */
export const roundDiametersM = [
  0.04, 0.05, 0.06, 0.07, 0.075, 0.08, 0.09, 0.1, 0.11, 0.12, 0.125, 0.14, 0.15, 0.16, 0.18, 0.2, 0.25
] as const
/** Steps of slot heights [m], and the largest number of equal ports to offer. Ours. */
export const SLOT_STEP_M = 0.005
export const MOST_PORTS = 4
/** Leak Q where none is given (Small 1973 part III, opening read: 5 to 10). */
export const USUAL_LEAK_Q = 7
