/** How cable is laid and bought where nothing is said: clips along a run [m], spare for bends and ends, thin wires. */

export const wiringRule = { clipSpacingM: 0.3, cableSparePercent: 10, wireInsideM: 0.6 } as const

/** Wire of turn-on and of its relay. Common practice, no source: a fraction of an ampere, thick enough to be crimped. */
export const TURN_ON_SIZE = '0.75 mm²'

/** Before the coil of an isolating relay, which takes up to an ampere and a half, or the input of a charger that senses the engine [A]. Common practice, no source. */
export const LINK_FUSE_A = 3
