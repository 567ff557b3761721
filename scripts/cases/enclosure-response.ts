/** Cases of the acoustic response. */
import { type CaseAdapter, type Deviation, near, same, type WorkedCase } from './case.ts'

const kinds: Readonly<Record<string, string>> = {
  infinite_baffle: 'infinite-baffle',
  closed: 'closed',
  vented: 'vented',
  passive_radiator: 'passive-radiator',
  bandpass4: 'band-pass-4',
  bandpass6_parallel: 'band-pass-6-parallel',
  bandpass6_series: 'band-pass-6-series'
}

/** Fields that are not null. */
function given(fields: Readonly<Record<string, number | null | undefined>>): Record<string, number> {
  return Object.fromEntries(
    Object.entries(fields).flatMap(([name, value]) => (typeof value === 'number' ? [[name, value]] : []))
  )
}

// biome-ignore lint/suspicious/noExplicitAny: the layout of the case
type Fields = any

function chamber(fields: Fields) {
  if (fields === undefined || fields === null) return undefined
  const { port, passive_radiator: radiator } = fields
  return {
    netVolumeL: fields.net_volume_m3 * 1e3,
    ...given({ leakQ: fields.leak_q, absorptionQ: fields.absorption_q }),
    ...(port && {
      port: {
        count: port.count,
        areaCm2: port.area_each_m2 * 1e4,
        lengthMm: port.length_m * 1e3,
        ...given({ endFactor: port.end_correction_k, lossQ: port.loss_q })
      }
    }),
    ...(radiator && {
      passiveRadiators: {
        count: radiator.count,
        areaCm2: radiator.area_each_m2 * 1e4,
        massG: radiator.moving_mass_each_kg * 1e3,
        complianceMmPerN: radiator.compliance_each_m_per_n * 1e3,
        ...given({ qm: radiator.qm })
      }
    })
  }
}

const thousand = (value: number | null | undefined) => (typeof value === 'number' ? value * 1e3 : value)

function driver(d: Fields, mechanical: boolean) {
  const shared = {
    sdCm2: d.sd_m2 * 1e4,
    reOhm: d.re_ohm,
    ...given({ leMh: thousand(d.le_h), leParallelOhm: d.le_parallel_ohm, xmaxMm: thousand(d.xmax_peak_m) })
  }
  return mechanical
    ? { ...shared, mmsG: d.mms_kg * 1e3, cmsMmPerN: d.cms_m_per_n * 1e3, rmsKgPerS: d.rms_kg_per_s, blTm: d.bl_t_m }
    : { ...shared, fsHz: d.fs_hz, qms: d.qms, qes: d.qes, vasL: d.vas_m3 * 1e3 }
}

export function responseRequest(worked: WorkedCase, mechanical = false) {
  const { air, enclosure, source } = worked
  const rear = chamber(enclosure.rear)
  const front = chamber(enclosure.front)
  return {
    driver: driver(worked.driver, mechanical),
    drivers: { count: worked.driver_count, inSeries: worked.drivers_in_series },
    enclosure: { kind: kinds[enclosure.type], ...(rear && { rear }), ...(front && { front }) },
    source: { voltageV: source.voltage_v_rms, seriesOhm: source.series_resistance_ohm },
    air: { densityKgPerM3: air.density_kg_per_m3, soundSpeedMPerS: air.sound_speed_m_per_s },
    frequenciesHz: worked.frequencies_hz
  }
}

/** Curve of the case → curve of the service, and the name of its tolerance. */
const curves: Readonly<Record<string, readonly [string, string]>> = {
  spl_db: ['levelDb', 'spl_db'],
  cone_excursion_peak_mm: ['coneExcursionMm', 'cone_excursion_peak_mm'],
  impedance_ohm: ['impedanceOhm', 'impedance_ohm'],
  impedance_phase_deg: ['impedancePhaseDeg', 'impedance_phase_deg'],
  group_delay_ms: ['groupDelayMs', 'group_delay_ms'],
  rear_port_air_speed_peak_m_per_s: ['rearPortAirSpeedMPerS', 'port_air_speed_peak_m_per_s'],
  front_port_air_speed_peak_m_per_s: ['frontPortAirSpeedMPerS', 'port_air_speed_peak_m_per_s'],
  rear_passive_radiator_excursion_peak_mm: ['passiveRadiatorExcursionMm', 'passive_radiator_excursion_peak_mm'],
  front_passive_radiator_excursion_peak_mm: ['frontPassiveRadiatorExcursionMm', 'passive_radiator_excursion_peak_mm']
}

/** Scalar of the case → path in the scalars of the service, and its scale there. */
const scalars: Readonly<Record<string, readonly [string, number]>> = {
  reference_level_db: ['referenceLevelDb', 1],
  f3_hz: ['f3Hz', 1],
  peak_level_db: ['peakLevelDb', 1],
  peak_level_hz: ['peakLevelHz', 1],
  f_low_3db_hz: ['f3Hz', 1],
  f_high_3db_hz: ['f3UpperHz', 1],
  upward_crossings: ['upwardCrossings', 1],
  downward_crossings: ['downwardCrossings', 1],
  alpha: ['alpha', 1],
  fc_hz: ['fcHz', 1],
  qtc_without_box_loss: ['qtc', 1],
  qec: ['qec', 1],
  qmc_without_box_loss: ['qmc', 1],
  rear_tuning_hz: ['tuningHz', 1],
  front_tuning_hz: ['frontTuningHz', 1],
  rear_alpha: ['alpha', 1],
  front_alpha: ['frontAlpha', 1],
  tuning_ratio_h: ['tuningRatio', 1],
  passive_radiator_free_resonance_hz: ['passiveRadiatorResonanceHz', 1],
  passive_radiator_vas_total_m3: ['passiveRadiatorVasL', 1e3],
  rear_port_effective_length_m: ['portEffectiveLengthMm', 1e3],
  front_port_effective_length_m: ['frontPortEffectiveLengthMm', 1e3],
  rear_port_length_for_tuning_flanged_free_m: ['portLengths.flangedFreeMm', 1e3],
  rear_port_length_for_tuning_flanged_flanged_m: ['portLengths.bothFlangedMm', 1e3],
  rear_port_length_for_tuning_free_free_m: ['portLengths.bothFreeMm', 1e3],
  front_port_length_for_tuning_flanged_free_m: ['frontPortLengths.flangedFreeMm', 1e3],
  front_port_length_for_tuning_flanged_flanged_m: ['frontPortLengths.bothFlangedMm', 1e3],
  front_port_length_for_tuning_free_free_m: ['frontPortLengths.bothFreeMm', 1e3]
}

const extremeLists: Readonly<Record<string, readonly [string, string, string]>> = {
  impedance_maxima: ['impedancePeaks', 'ohm', 'ohm'],
  impedance_minima: ['impedanceMinima', 'ohm', 'ohm'],
  cone_excursion_maxima: ['excursionPeaks', 'peak_mm', 'excursionMm'],
  cone_excursion_minima: ['excursionMinima', 'peak_mm', 'excursionMm']
}

const at = (from: Fields, path: string) => path.split('.').reduce((inner, name) => inner?.[name], from)

function compareExtremes(name: string, expected: Fields, actual: Fields, tolerance: Fields): readonly Deviation[] {
  const [field, theirs, ours] = extremeLists[name] as readonly [string, string, string]
  const found = actual[field] ?? []
  if (found.length !== expected.length) return [same(`${name}.length`, expected.length, found.length)]
  return expected.flatMap((extreme: Fields, index: number) => [
    near(`${name}[${index}].hz`, extreme.hz, found[index].frequencyHz, tolerance.scalar_frequency_hz),
    near(`${name}[${index}]`, extreme[theirs], found[index][ours], {
      ...tolerance.scalar_other,
      abs: ours === 'excursionMm' ? 0.001 : 0
    })
  ])
}

function compareScalar(name: string, expected: Fields, actual: Fields, tolerance: Fields): readonly Deviation[] {
  if (extremeLists[name] !== undefined) return compareExtremes(name, expected, actual, tolerance)
  const known = scalars[name]
  if (known === undefined) return [same(name, expected, 'the service has no such figure')]
  const [path, scale] = known
  const value = at(actual, path)
  if (expected === null) return [same(name, undefined, value)]
  if (name.endsWith('_crossings')) return [same(name, expected, value)]
  const allowed = name.endsWith('_db')
    ? tolerance.scalar_level_db
    : name.endsWith('_hz')
      ? tolerance.scalar_frequency_hz
      : tolerance.scalar_other
  return [near(name, expected * scale, value, allowed)]
}

function compareResponse({ expected, tolerance }: WorkedCase, answer: Fields): readonly Deviation[] {
  const { result } = answer
  return Object.entries<Fields>(expected).flatMap(([name, values]) => {
    if (name === 'scalars') {
      return Object.entries(values).flatMap(([scalar, value]) =>
        compareScalar(scalar, value, result.scalars, tolerance)
      )
    }
    const [curve, allowed] = curves[name] ?? [name, name]
    return values.map((value: number, index: number) =>
      near(`${name}[${index}]`, value, result.curves[curve]?.[index], tolerance[allowed] ?? {})
    )
  })
}

const path = '/v1/enclosures/response'

export const adapters: readonly CaseAdapter[] = [
  {
    domain: 'enclosure_response',
    call: worked => ({ path, request: responseRequest(worked) }),
    compare: compareResponse
  }
]
