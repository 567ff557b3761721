/** What a person should know before trusting or building a response at its drive. */
import { type Caution, caution } from '../../caution.ts'
import { toDigits } from '../../digits.ts'
import { airSpeedLevel } from '../../port/air-speed.ts'
import { say } from '../../say.ts'
import { loadedFromHz } from '../limits/protection.ts'
import type { ResponseSystem } from '../model/response-system.ts'
import type { ResponseCurves } from '../response/curves.ts'
import type { UnitDrive } from '../response/response-at-one-volt.ts'

/** Peak quantities at the drive, over some frequencies. */
interface Traces {
  readonly frequencyHz: ArrayLike<number>
  readonly coneM: ArrayLike<number>
  readonly ports: readonly { readonly name: string; readonly values: ArrayLike<number> }[]
}

export function tracesOfCurves(curves: ResponseCurves): Traces {
  const ports = [
    { name: 'rear', values: curves.rearPortAirSpeedMPerS },
    { name: 'front', values: curves.frontPortAirSpeedMPerS }
  ] as const
  return {
    frequencyHz: curves.frequencyHz,
    coneM: curves.coneExcursionM,
    ports: ports.flatMap(({ name, values }) => (values === undefined ? [] : [{ name, values }]))
  }
}

export function tracesOfDrive({ frequenciesHz, coneM, ports }: UnitDrive, voltageV: number): Traces {
  const times = (perVolt: readonly number[]) => perVolt.map(value => value * voltageV)
  return {
    frequencyHz: frequenciesHz,
    coneM: times(coneM),
    ports: ports.map(({ name, perVolt }) => ({ name, values: times(perVolt) }))
  }
}

/** Beyond this multiple of Xmax the suspension or the coil former is at its end; an engineering choice. */
const DESTRUCTIVE = 2

type At = (frequencyHz: number) => boolean

/** The highest value where the condition holds; nothing where it never does. */
function highest(values: ArrayLike<number>, frequencyHz: ArrayLike<number>, where: At = () => true) {
  let best: { readonly value: number; readonly frequencyHz: number } | undefined
  for (let k = 0; k < values.length; k++) {
    const here = { value: values[k] as number, frequencyHz: frequencyHz[k] as number }
    if (where(here.frequencyHz) && here.value > (best?.value ?? Number.NEGATIVE_INFINITY)) best = here
  }
  return best
}

const opens = ({ chambers }: ResponseSystem) => Object.values(chambers).some(({ opening }) => opening !== undefined)

function excursionCautions(system: ResponseSystem, { coneM, frequencyHz }: Traces): readonly Caution[] {
  const { xmaxM } = system.driver
  if (xmaxM === undefined) return []
  const loadedHz = opens(system) ? loadedFromHz(system) : 0
  const below = highest(coneM, frequencyHz, frequency => frequency < loadedHz)
  const above = highest(coneM, frequencyHz, frequency => frequency >= loadedHz)
  return [below, above].flatMap(worst => {
    if (worst === undefined || worst.value <= xmaxM) return []
    const where = { excursionMm: toDigits(worst.value * 1e3), frequencyHz: toDigits(worst.frequencyHz) }
    const figures = { ...where, xmaxMm: toDigits(xmaxM * 1e3) }
    const travel = say('excursion-above-xmax', {
      excursionMm: figures.excursionMm,
      frequencyHz: figures.frequencyHz,
      xmaxMm: figures.xmaxMm
    })
    if (worst !== below) return [caution('excursion-above-xmax', travel, { at: 'driver.xmaxM', figures })]
    const tuningHz = toDigits(loadedHz)
    const message = say('unprotected-below-tuning', { travel, tuningHz })
    const level = worst.value > DESTRUCTIVE * xmaxM ? 'stop' : 'care'
    const place = { at: 'driver.xmaxM', figures: { ...figures, tuningHz }, level } as const
    return [caution('unprotected-below-tuning', message, place)]
  })
}

function airSpeedCautions({ custom }: ResponseSystem, { ports, frequencyHz: at }: Traces): readonly Caution[] {
  return ports.flatMap(({ name, values }) => {
    const { value, frequencyHz } = highest(values, at) ?? { value: 0, frequencyHz: 0 }
    const level = airSpeedLevel(value)
    if (level === undefined) return []
    const figures = { airSpeedMPerS: toDigits(value), frequencyHz: toDigits(frequencyHz) }
    const message =
      ports.length === 1 ? say('port-air-speed', figures) : say('port-air-speed.named', { name, ...figures })
    return [caution('port-air-speed', message, { at: custom ? 'enclosure' : `enclosure.${name}.port`, figures, level })]
  })
}

export function driveCautions(system: ResponseSystem, traces: Traces): readonly Caution[] {
  return [...excursionCautions(system, traces), ...airSpeedCautions(system, traces)]
}
