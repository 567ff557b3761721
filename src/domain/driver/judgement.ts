/** Judgement values of the driver room, in one place; every one that is used is echoed as assumed. */

/** Mechanical Q where a sheet gives only Qts. Qms 2.5 instead moves Qes by +10 %, 7.5 by −3 %, at Qts 0.4. Ours. */
export const USUAL_QMS = 5
/** Coil resistance over rated impedance where a sheet gives only the latter. Common practice, no source. */
export const USUAL_RESISTANCE_RATIO = 0.85
/** Rated impedance is at most 1/0.8 of the lowest modulus, and that is hardly below Re (IEC 60268-5, from memory). */
export const RESISTANCE_RATIO_RANGE = [0.6, 1] as const
/** Share of the nominal diameter that moves as a piston. Common practice, no source: 12 in → 0.049 m². */
export const PISTON_DIAMETER_SHARE = 0.82
/** Sd over the circle of the nominal diameter from which on it was probably reckoned from that diameter; real cones lie near 0.67. Ours. */
export const NOMINAL_AREA_SHARE = [0.9, 1.1] as const
/** One-way excursion beyond which a sheet probably means peak to peak [m], and the same as a share of the cone radius. Ours. */
export const XMAX_DOUBTFUL_M = 0.04
export const XMAX_DOUBTFUL_RADIUS_SHARE = 0.25
/** Below this a driver for low frequencies is hardly described [m]; an inch figure typed as millimetres lands here. Ours. */
export const XMAX_TINY_M = 0.001
/** Coil inductance of drivers for low frequencies [H]. Ours. */
export const INDUCTANCE_RANGE_H = [0.02e-3, 30e-3] as const
/** Efficiency bandwidth product fs/Qes [Hz]: below, closed; above, vented or band-pass. Common practice, no source. */
export const EBP_LIMITS_HZ = [50, 100] as const
