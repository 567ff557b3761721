/** Clips along a cable run [m]; spare length of cable for bends and ends. */

export const wiringRule = { clipSpacingM: 0.3, cableSparePercent: 10, wireInsideM: 0.6 } as const
