/** Cases of cable choice by voltage drop alone: the smallest AWG and the smallest metric size of a set. */
import { type CaseAdapter, type Deviation, near, same } from './case.ts'

const exact = { rel: 1e-6 }

// biome-ignore lint/suspicious/noExplicitAny: the layout of the case
function request(input: any, gaugeSystem: 'awg' | 'mm2', sizes: readonly (string | number)[]) {
  const nominal = [12, 24, 48].reduce((best, volts) =>
    Math.abs(volts - input.source_voltage_v) < Math.abs(best - input.source_voltage_v) ? volts : best
  )
  const load =
    typeof input.load_power_w === 'number'
      ? { loadPowerW: input.load_power_w, loadModel: 'constant-power' }
      : { currentA: input.load_current_a }
  return {
    ...load,
    systemVoltageV: nominal,
    sourceVoltageV: input.source_voltage_v,
    positiveLengthM: input.one_way_length_m,
    return: { kind: 'cable', lengthM: input.one_way_length_m },
    conductorTemperatureC: input.temperature_c,
    contactOhm: input.contact_resistance_ohm ?? 0,
    resistivityOhmM: input.resistivity_20c_ohm_m,
    temperatureCoefficientPerK: input.temperature_coefficient_per_k,
    strandingFactor: 1,
    dropLimitV: input.drop_limit_v,
    gaugeSystem,
    sizes: sizes.map(String),
    checks: ['drop']
  }
}

const ask = (body: unknown) => ({ path: '/v1/supply/cables', request: body })

export const adapters: readonly CaseAdapter[] = [
  {
    domain: 'cable_size',
    call: ({ input }) => [ask(request(input, 'awg', input.awg_set)), ask(request(input, 'mm2', input.metric_set_mm2))],
    compare: ({ expected }, [awg, metric]): readonly Deviation[] => {
      const drop = (quantity: string, wanted: number | null, found: number | undefined) =>
        wanted === null ? same(quantity, null, found ?? null) : near(quantity, wanted, found, exact)
      const gauge = awg.result.cable?.designation.replace(' AWG', '') ?? null
      return [
        near('least area', expected.minimum_area_mm2, awg.result.minimumAreaMm2, exact),
        same('AWG size', expected.awg, gauge),
        drop('AWG drop', expected.awg_drop_v, awg.result.cable?.dropV),
        same('metric size', expected.metric_area_mm2, metric.result.cable?.areaMm2 ?? null),
        drop('metric drop', expected.metric_drop_v, metric.result.cable?.dropV)
      ]
    }
  }
]
