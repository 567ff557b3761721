/** Judgement values of sizing an enclosure, in one place; those that stand in for an absent field are echoed as assumed. */

/** Damping of closed boxes to offer: flattest delay, flattest level, small box. Common practice, no source. */
// biome-ignore lint/suspicious/noApproximativeNumericConstant: the figure as the trade prints it
export const USUAL_QTC = [0.577, 0.707, 0.9] as const
/** Leak Q of a vented box of 25 to 100 L lies at 5 to 10; 7 is the usual start (Small 1973 part III, opening read). */
export const USUAL_LEAK_Q = 7
/** More ripple than this is heard as one-note bass [dB]. Ours. */
export const RIPPLE_LIMIT_DB = 1
/** Peak that a tuning chosen for a given volume may have [dB]. Ours. */
export const CHOSEN_PEAK_DB = 0.5
/** A box whose half power lies above this carries no bass of its own [Hz]. Ours. */
export const HIGHEST_F3_HZ = 80
/** A closed box larger than this many Vas hardly stiffens the cone: an infinite baffle does the same. Ours. */
export const LARGEST_VOLUMES = 5
/** Compliance of passive radiators over that of the box where none is given, at least. Common practice, no source: δ ≥ α. */
export const SMALLEST_DELTA = 2
/** Board of a box whose outer size is estimated [m], and what driver, port and braces take of the net volume. Practice. */
export const ROUGH_BOARD_M = 0.018
export const ROUGH_DISPLACEMENT_SHARE = 0.08
/** Tunings tried for a given volume [Hz]: the step a builder can cut to. Ours. */
export const TUNING_STEP_HZ = 0.5
export const TUNING_SPAN_HZ = [15, 100] as const
/** Efficiency bandwidth product fs/Qes [Hz]: below, closed; above, vented or band-pass. Common practice, no source. */
export const EBP_LIMITS_HZ = [50, 100] as const
/** Frequencies at which candidates are compared [Hz]. */
export const COMPARED_HZ = [20, 25, 31.5, 40, 50, 63, 80] as const
