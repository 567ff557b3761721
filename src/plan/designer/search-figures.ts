/** The figures a design is judged by. */
export interface DesignFigures {
  /** Drivers and amplifier; absent where one has no price. */
  readonly price?: number
  readonly loadOhm: number
  /** RMS of all outputs together after the gain is set. */
  readonly powerW: number
  readonly fullSineA: number
  readonly averageA: number
  readonly netVolumeM3: number
  /** Outside, boards and drivers in it. */
  readonly outerVolumeM3: number
  readonly massKg: number
  readonly tuningHz?: number
  readonly f3Hz: number
  /** At the frequency asked for, at the drive, held back where a limit of the parts would be passed. */
  readonly levelDb: number
  readonly coneExcursionM: number
  /** Peak one way. */
  readonly excursionOfXmax: number
  /** Peak. */
  readonly airSpeedMPerS?: number
}
