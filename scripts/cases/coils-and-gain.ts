/** Cases of coil wiring and gain setting. */
import { type CaseAdapter, type Deviation, near, same, type WorkedCase } from './case.ts'

// biome-ignore lint/suspicious/noExplicitAny: the layout of the case and whatever the contract promises
type Fields = any

const given = (fields: Readonly<Record<string, Fields>>) =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined && value !== null))

const tolerance = ({ tolerance: stated }: WorkedCase) => ({ rel: stated?.relative ?? 1e-6, abs: stated?.absolute ?? 0 })

function list(
  name: string,
  expected: readonly number[],
  actual: readonly number[],
  allowed: Fields
): readonly Deviation[] {
  if (expected.length !== actual.length) return [same(`${name}.length`, expected.length, actual.length)]
  return expected.map((value, index) => near(`${name}[${index}]`, value, actual[index], allowed))
}

const arrangementKey = (fields: Fields) =>
  [fields.ratio, fields.coils, fields.series, fields.strings].map(String).join(' | ')

function arrangements(expected: Fields, actual: Fields): readonly Deviation[] {
  const theirs = expected.map((row: Fields) =>
    arrangementKey({
      ratio: row.ratio_to_coil,
      coils: row.coils_in_driver,
      series: row.drivers_in_series,
      strings: row.parallel_strings
    })
  )
  const ours = (actual ?? []).map((row: Fields) =>
    arrangementKey({
      ratio: row.ratio,
      coils: row.coilsInDriver,
      series: row.driversInSeries,
      strings: row.parallelStrings
    })
  )
  return [same('arrangements', [...theirs].sort(), [...ours].sort())]
}

type Compare = (expected: Fields, result: Fields, allowed: Fields) => readonly Deviation[]

const balanced = (result: Fields) => result.loads.filter((load: Fields) => load.balanced)

/** Figure of the case → how it stands in the answer. */
const wiringFigures: Readonly<Record<string, Compare>> = {
  equal_power_impedances_ohm: (expected, result, allowed) =>
    list(
      'equal_power_impedances_ohm',
      expected,
      balanced(result).map((load: Fields) => load.ohm),
      allowed
    ),
  equal_power_ratios: (expected, result) => [
    same(
      'equal_power_ratios',
      expected,
      balanced(result).map((load: Fields) => load.ratio)
    )
  ],
  arrangements: (expected, result) => arrangements(expected, result.arrangements),
  all_series_parallel_distinct_count: (expected, result) => [
    same('all_series_parallel_distinct_count', expected, result.distinctLoadCount)
  ],
  all_series_parallel_ratios: (expected, result) => [
    same(
      'all_series_parallel_ratios',
      expected,
      result.loads.map((load: Fields) => load.ratio)
    )
  ],
  power_per_coil_w: (expected, result, allowed) => [near('power_per_coil_w', expected, result.coilPowerW, allowed)],
  power_per_driver_w: (expected, result, allowed) => [
    near('power_per_driver_w', expected, result.driverPowerW, allowed)
  ],
  nearest_equal_power_impedance_ohm: (expected, result, allowed) => [
    near('nearest_equal_power_impedance_ohm', expected, result.nearestOhm, allowed)
  ],
  lowest_allowed_impedance_ohm: (expected, result, allowed) => [
    expected === null
      ? same('lowest_allowed_impedance_ohm', undefined, result.lowestAllowedOhm)
      : near('lowest_allowed_impedance_ohm', expected, result.lowestAllowedOhm, allowed)
  ]
}

const gainFigures: Readonly<Record<string, (gain: Fields) => unknown>> = {
  voltage_v_rms: gain => gain.targetVoltageV,
  target_voltage_v_rms: gain => gain.targetVoltageV,
  target_voltage_v: gain => gain.targetVoltageV,
  meter_voltage_v_rms: gain => gain.meterVoltageV,
  meter_voltage_v: gain => gain.meterVoltageV,
  current_a_rms: gain => gain.currentA,
  voltage_per_channel_v_rms: gain => gain.channelVoltageV,
  channel_voltage_v_rms: gain => gain.channelVoltageV,
  channel_load_ohm: gain => gain.channelLoadOhm,
  load_per_channel_ohm: gain => gain.channelLoadOhm
}

function compareFigures(
  worked: WorkedCase,
  figures: Readonly<Record<string, Compare>>,
  result: Fields
): readonly Deviation[] {
  return Object.entries<Fields>(worked.expected).flatMap(([name, value]) =>
    value === null && name.startsWith('all_series_parallel')
      ? []
      : figures[name] === undefined
        ? [same(name, value, 'the adapter knows no such figure')]
        : figures[name](value, result, tolerance(worked))
  )
}

export const adapters: readonly CaseAdapter[] = [
  {
    domain: 'coil_wiring',
    call: ({ input }) => ({
      path: '/v1/coils/wiring',
      request: given({
        driverCount: input.driver_count,
        coilsPerDriver: input.coils_per_driver,
        coilOhm: input.coil_impedance_ohm,
        totalPowerW: input.total_power_w,
        targetOhm: input.target_impedance_ohm,
        minimumOhm: input.minimum_impedance_ohm
      })
    }),
    compare: (worked, { result }) => compareFigures(worked, wiringFigures, result)
  },
  {
    domain: 'gain_setting',
    call: ({ input }) => ({
      path: '/v1/signal/setup',
      request: {
        amplifier: given({
          powerW: input.power_w ?? input.target_power_w,
          loadOhm: input.load_ohm ?? input.impedance_ohm ?? input.load_impedance_ohm,
          bridged: input.bridged
        }),
        tone: given({ levelDb: input.tone_level_db ?? input.tone_level_dbfs })
      }
    }),
    compare: (worked, { result }) =>
      Object.entries<Fields>(worked.expected).map(([name, value]) => {
        const read = gainFigures[name]
        return read === undefined
          ? same(name, value, 'the adapter knows no such figure')
          : near(name, value, read(result.gain), tolerance(worked))
      })
  }
]
