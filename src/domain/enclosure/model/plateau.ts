/** The mass-controlled plateau a response is measured against. */
import { DISTANCE_M, type ResponseSystem } from './response-system.ts'

/** Pressure at 1 m over ω·|U|·E. */
export const pressureScale = ({ air, voltageV }: ResponseSystem) =>
  (air.densityKgPerM3 * voltageV) / (2 * Math.PI * DISTANCE_M)

interface PlateauDriver {
  readonly blTm: number
  readonly sdM2: number
  readonly mmsKg: number
  readonly reOhm: number
}

interface PlateauDrive {
  /** Faces that radiate, of all drivers. */
  readonly faces: number
  readonly densityKgPerM3: number
  /** At each driver and the resistance before it. */
  readonly voltageV: number
  readonly seriesOhm: number
}

/**
 * Pressure of the mass-controlled plateau, half space [Pa].
 *
 *   p = ρ·Bl·Sd·F·V1/(2πr·(Re + Rg1)·Mms)    V1 = E/S    Rg1 = Rg·N/S²    F faces of N drivers
 *
 * @source Small, "Direct-radiator loudspeaker system analysis", JAES 20(5), 1972 (from memory); inductance left out
 */
export function plateauPressurePa({ blTm, sdM2, mmsKg, reOhm }: PlateauDriver, drive: PlateauDrive): number {
  const { faces, densityKgPerM3, voltageV, seriesOhm } = drive
  return (densityKgPerM3 * blTm * sdM2 * faces * voltageV) / (2 * Math.PI * DISTANCE_M * (reOhm + seriesOhm) * mmsKg)
}

export function plateauPressure({ air, driver, wiring, voltageV, sourceOhm }: ResponseSystem): number {
  const { count, inSeries, faces } = wiring
  return plateauPressurePa(
    { ...driver, reOhm: driver.coil.reOhm },
    {
      faces,
      densityKgPerM3: air.densityKgPerM3,
      voltageV: voltageV / inSeries,
      seriesOhm: (sourceOhm * count) / inSeries ** 2
    }
  )
}
