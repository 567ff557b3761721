/** The resistor through which a small loudspeaker may listen to an amplifier at full level. */

const TEST_RESISTOR_OHM = 1000
/** Room between what flows and what is printed on it. Common practice, no source. */
const RATING_ROOM = 2
/** Ratings that are sold [W]. Common practice, no source. */
const soldRatingsW = [0.5, 1, 2, 5, 10, 17, 25, 50, 100] as const

interface TestResistor {
  readonly ohm: number
  /** Heat in it at the target voltage. */
  readonly heatW: number
  /** Rating to buy. */
  readonly ratedW: number
}

/**
 * Series resistor for listening at the terminals.
 *
 *   P = V²/R, with the whole voltage across it: a small loudspeaker is no load beside 1 kΩ
 *
 * @param targetVoltageV  RMS [V] > 0
 * @source derived; twice the heat as rating: common practice, no source
 * @check  52 V → 2.70 W, buy 10 W; 110 V → 12.1 W, buy 25 W
 */
export function testResistor(targetVoltageV: number): TestResistor {
  const heatW = targetVoltageV ** 2 / TEST_RESISTOR_OHM
  const ratedW = soldRatingsW.find(rating => rating >= RATING_ROOM * heatW) ?? RATING_ROOM * heatW
  return { ohm: TEST_RESISTOR_OHM, heatW, ratedW }
}
