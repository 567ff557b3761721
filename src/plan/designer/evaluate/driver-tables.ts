/** All drivers of one box as one, tabled over frequency, so that a design costs a handful of products a frequency. */
import type { Air } from '../../../domain/air/air.ts'
import type { Coil, Driver } from '../../../domain/driver/driver.ts'

export interface DriverTables {
  readonly frequenciesHz: Float64Array
  /** Blocked pressure for one volt, Bl/(Ze·Sd). */
  readonly g: ComplexTable
  /** Acoustic impedance of the cones with the coils across one volt, (Zm + Bl²/Ze)/Sd². */
  readonly m: ComplexTable
  /** The same with open coils, Zm/Sd². */
  readonly n: ComplexTable
  /** Coils and everything in series with them. */
  readonly ze: ComplexTable
  readonly air: Air
  /** Of all drivers. */
  readonly areaM2: number
  readonly vasM3: number
  readonly fsHz: number
  /** With the series resistance counted in. */
  readonly qts: number
  readonly groupOhm: number
  readonly seriesOhm: number
}

interface ComplexTable {
  readonly re: Float64Array
  readonly im: Float64Array
}

export interface DriverWish {
  readonly driver: Driver
  readonly count: number
  /** Drivers that share one current from terminal to terminal. */
  readonly inSeries: number
  readonly seriesOhm: number
  readonly air: Air
}

const table = (length: number): ComplexTable => ({ re: new Float64Array(length), im: new Float64Array(length) })

/** Re + cells of L across R + K·(jω)^n, of one coil. */
function coilImpedance({ reOhm, cells, powerLaw }: Coil, omega: number): readonly [number, number] {
  let [re, im] = [reOhm, 0]
  for (const { inductanceH, parallelOhm } of cells) {
    const reactance = omega * inductanceH
    const ratio = reactance / parallelOhm
    re += (reactance * ratio) / (1 + ratio * ratio)
    im += reactance / (1 + ratio * ratio)
  }
  if (powerLaw === undefined) return [re, im]
  const size = powerLaw.factor * omega ** powerLaw.exponent
  const angle = (powerLaw.exponent * Math.PI) / 2
  return [re + size * Math.cos(angle), im + size * Math.sin(angle)]
}

/**
 * N drivers in P strings of S move alike: Sd·N, Mms·N, Cms/N, Rms·N, Bl·S, Ze·S/P.
 *
 *   g = Bl/(Ze·Sd)   m = (Zm + Bl²/Ze)/Sd²   n = Zm/Sd²   Zm = Rms + j(ωMms − 1/(ωCms))
 *
 * @param wish  `inSeries` divides `count`; `seriesOhm` at least 0
 * @param frequenciesHz  above 0
 * @source derived: equal drivers in one box see one pressure
 * @check  levels and limits of random systems equal those of the network solver to 1e-9 dB
 */
export function driverTables(wish: DriverWish, frequenciesHz: Float64Array): DriverTables {
  const { driver, count, inSeries, seriesOhm, air } = wish
  const [areaM2, bl, scale] = [driver.sdM2 * count, driver.blTm * inSeries, inSeries ** 2 / count]
  const length = frequenciesHz.length
  const [g, m, n, ze] = [table(length), table(length), table(length), table(length)]
  for (let k = 0; k < length; k++) {
    const omega = 2 * Math.PI * (frequenciesHz[k] as number)
    const [coilRe, coilIm] = coilImpedance(driver.coil, omega)
    const [re, im] = [coilRe * scale + seriesOhm, coilIm * scale]
    const square = re * re + im * im
    const mechanicalIm = omega * driver.mmsKg - 1 / (omega * driver.cmsMPerN)
    ze.re[k] = re
    ze.im[k] = im
    g.re[k] = (bl * re) / square / areaM2
    g.im[k] = (-bl * im) / square / areaM2
    n.re[k] = (count * driver.rmsKgPerS) / areaM2 ** 2
    n.im[k] = (count * mechanicalIm) / areaM2 ** 2
    m.re[k] = (n.re[k] as number) + (bl * bl * re) / square / areaM2 ** 2
    m.im[k] = (n.im[k] as number) - (bl * bl * im) / square / areaM2 ** 2
  }
  const groupOhm = driver.coil.reOhm * scale
  const qes = driver.qes * (1 + seriesOhm / groupOhm)
  return {
    frequenciesHz,
    g,
    m,
    n,
    ze,
    air,
    areaM2,
    vasM3: driver.vasM3 * count,
    fsHz: driver.fsHz,
    qts: 1 / (1 / driver.qms + 1 / qes),
    groupOhm,
    seriesOhm
  }
}

/**
 * Total Q of the drivers in a tight box.
 *
 *   Qtc = Qts·√(1 + Vas/V)
 *
 * @param netVolumeM3 above 0
 * @source Small, "Closed-box loudspeaker systems", JAES 20(10), 1972 (from memory)
 * @check  Vas = 3·V doubles Qts
 */
export const closedQ = ({ qts, vasM3 }: DriverTables, netVolumeM3: number): number =>
  qts * Math.sqrt(1 + vasM3 / netVolumeM3)

/**
 * Resonance of the drivers in a tight box.
 *
 *   fc = fs·√(1 + Vas/V)
 *
 * @param netVolumeM3 above 0
 * @source Small, "Closed-box loudspeaker systems", JAES 20(10), 1972 (from memory)
 * @check  Vas = 3·V doubles fs
 */
export const closedHz = ({ fsHz, vasM3 }: DriverTables, netVolumeM3: number): number =>
  fsHz * Math.sqrt(1 + vasM3 / netVolumeM3)
