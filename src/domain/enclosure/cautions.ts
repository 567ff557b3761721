/** What a person should know before trusting or building a response. */
import { type Caution, caution } from '../caution.ts'
import type { Curve, ResponseCurves } from './curves.ts'
import type { ResponseSystem } from './response-system.ts'

/** Peak air speed above which a port is likely to be heard [m/s]; common practice, no source. */
const AUDIBLE_AIR_SPEED = 17

const round = (value: number) => Number(value.toPrecision(3))

function highest(curve: Curve, frequencyHz: readonly number[]) {
  let at = 0
  for (let k = 1; k < curve.length; k++) if ((curve[k] as number) > (curve[at] as number)) at = k
  return { value: curve[at] as number, frequencyHz: frequencyHz[at] as number }
}

function excursionCautions({ driver }: ResponseSystem, curves: ResponseCurves): readonly Caution[] {
  if (driver.xmaxM === undefined) return []
  const { value, frequencyHz } = highest(curves.coneExcursionM, curves.frequencyHz)
  if (value <= driver.xmaxM) return []
  const figures = {
    excursionMm: round(value * 1e3),
    xmaxMm: round(driver.xmaxM * 1e3),
    frequencyHz: round(frequencyHz)
  }
  return [
    caution(
      'excursion-above-xmax',
      `The cone would travel ${figures.excursionMm} mm one way at ${figures.frequencyHz} Hz; its Xmax is ${figures.xmaxMm} mm.`,
      { at: 'driver.xmaxM', figures }
    )
  ]
}

function airSpeedCautions(curves: ResponseCurves): readonly Caution[] {
  const ports = [
    { name: 'rear', speed: curves.rearPortAirSpeedMPerS },
    { name: 'front', speed: curves.frontPortAirSpeedMPerS }
  ]
  return ports.flatMap(({ name, speed }) => {
    if (speed === undefined) return []
    const { value, frequencyHz } = highest(speed, curves.frequencyHz)
    if (value <= AUDIBLE_AIR_SPEED) return []
    const figures = { airSpeedMPerS: round(value), frequencyHz: round(frequencyHz) }
    const message = `Air in the ${name} port reaches ${figures.airSpeedMPerS} m/s at ${figures.frequencyHz} Hz.`
    return [caution('port-air-speed', message, { at: `enclosure.${name}.port`, figures })]
  })
}

export function responseCautions(system: ResponseSystem, curves: ResponseCurves): readonly Caution[] {
  return [...excursionCautions(system, curves), ...airSpeedCautions(curves)]
}
