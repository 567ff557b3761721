/** Words that requests and answers of this resource choose from. */
export const alignmentIds = [
  'closed-qtc',
  'sbb4',
  'sc4',
  'be4',
  'qb3',
  'b4',
  'c4',
  'band-pass-4-flat',
  'band-pass-4-ripple',
  'band-pass-4-edges',
  'band-pass-6-search',
  'as-asked',
  'in-your-space'
] as const
export type AlignmentId = (typeof alignmentIds)[number]
export const sizedKinds = [
  'closed',
  'vented',
  'passive-radiator',
  'band-pass-4',
  'band-pass-6-parallel',
  'band-pass-6-series'
] as const
export type SizedKind = (typeof sizedKinds)[number]
/** An infinite baffle needs no sizing. */
const presetKinds = ['infinite-baffle', ...sizedKinds] as const
export type PresetKind = (typeof presetKinds)[number]
/** `coil-heat`: |i|²·Re ≤ P. `rated-voltage`: voltage ≤ √(P·Z). `lower`: whichever allows less. */
export const thermalReadings = ['lower', 'coil-heat', 'rated-voltage'] as const
export const chamberNames = ['rear', 'front'] as const
export type ChamberName = (typeof chamberNames)[number]
export const driverParameters = [
  'coil-resistance',
  'force-factor',
  'moving-mass',
  'suspension-compliance',
  'suspension-resistance',
  'cone-area',
  'coil-inductance'
] as const
export type DriverParameter = (typeof driverParameters)[number]
export const chamberParts = [
  'volume',
  'port-length',
  'port-area',
  'radiator-mass',
  'radiator-compliance',
  'losses'
] as const
export type ChamberPart = (typeof chamberParts)[number]
export type ParameterName = DriverParameter | `${ChamberName}-${ChamberPart}` | 'air-temperature'
export const parameterNames: readonly ParameterName[] = [
  ...driverParameters,
  ...chamberNames.flatMap(name => chamberParts.map(part => `${name}-${part}` as const)),
  'air-temperature'
]
export const figureNames = [
  'f3',
  'f3-upper',
  'tuning',
  'front-tuning',
  'closed-resonance',
  'driver-resonance',
  'driver-total-q',
  'peak-excursion',
  'peak-air-speed',
  'minimum-impedance'
] as const
export type FigureName = (typeof figureNames)[number]
export const liningAmounts = ['bare', 'walls', 'filled'] as const
export type LiningAmount = (typeof liningAmounts)[number]
export const filterFamilies = ['butterworth', 'linkwitz-riley', 'bessel', 'chosen-q'] as const
export const limitNames = [
  'cone-excursion',
  'passive-radiator-excursion',
  'coil-heat',
  'rated-voltage',
  'amplifier-voltage',
  'amplifier-current',
  'port-air-speed'
] as const
export type LimitName = (typeof limitNames)[number]

/** What may differ between two designs; one alone is put into the other to see what it does. */
export const comparedParameters = [
  'driver',
  'drivers',
  'enclosure',
  'rear-volume',
  'rear-port',
  'rear-passive-radiators',
  'rear-losses',
  'front-volume',
  'front-port',
  'front-passive-radiators',
  'front-losses',
  'source',
  'filters'
] as const
export type ComparedParameter = (typeof comparedParameters)[number]
/** Rows of the table of differences. */
export const comparedFigures = [
  'levels',
  'most-levels',
  'half-power',
  'tuning',
  'qtc',
  'net-volume',
  'voltage',
  'cone-excursion',
  'port-air-speed',
  'group-delay',
  'impedance'
] as const
export type ComparedFigure = (typeof comparedFigures)[number]
