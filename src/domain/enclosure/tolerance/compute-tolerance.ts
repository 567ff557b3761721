/** The spread of a response over the tolerances of its parts: many samples, seeded. */
import type { Tolerance, ToleranceBand, ToleranceFigures } from '../../../contract/enclosures/tolerance.ts'
import type { ParameterName } from '../../../contract/enclosures/words.ts'
import type { Basis } from '../../../contract/field/envelope.ts'
import { type RandomStream, randomStream } from '../../../numeric/random-stream.ts'
import { type Assumptions, assumptions } from '../../assume.ts'
import { type Caution, caution } from '../../caution.ts'
import { CELSIUS_ZERO_K } from '../../constants.ts'
import { DesignError } from '../../design-error.ts'
import { fixed } from '../../digits.ts'
import { identityFormula } from '../../driver/formulas.ts'
import { givenDriverCautions } from '../../driver/given-driver-cautions.ts'
import { explain } from '../../formula.ts'
import type { Outcome } from '../../outcome.ts'
import { present } from '../../present.ts'
import { say } from '../../say.ts'
import type { SystemRequest } from '../model/request.ts'
import { frequenciesOf } from '../response/frequencies.ts'
import { FIGURE_POINTS, MOST_POINTS, spreadDefaults, toleranceDefaults } from './defaults.ts'
import { parametersOf, variedRequest } from './tolerance-parameters.ts'
import type { ToleranceRequest } from './tolerance-request.ts'
import { type Figures, type Sample, sampleOf } from './tolerance-sample.ts'
import { type Scatter, sensitivities } from './tolerance-sensitivity.ts'
import { curveStore, type FigureSpread, percentileCurves, spreadOf, storeCurve } from './tolerance-spread.ts'

/** Standard deviations, those of the request before the defaults; the temperature's relative to its absolute value. */
function scattersOf(request: ToleranceRequest, assume: Assumptions): readonly Scatter[] {
  const kelvin = (request.air?.temperatureC ?? 20) + CELSIUS_ZERO_K
  if (request.spread?.temperatureK !== undefined && request.air?.densityKgPerM3 !== undefined) {
    const detail = say('refused.air-that-is-given-by-its')
    throw new DesignError('conflicting-input', { field: 'spread.temperatureK', detail })
  }
  const seen = new Map<string, number>()
  return parametersOf(request).map(parameter => {
    const known = seen.get(parameter.spread)
    const given =
      known ??
      assume.take(request.spread?.[parameter.spread], `spread.${parameter.spread}`, spreadDefaults[parameter.spread])
    seen.set(parameter.spread, given)
    return { ...parameter, relative: parameter.spread === 'temperatureK' ? given / kelvin : given / 100 }
  })
}

/** Log-normal, so that no mass or area turns negative; the absolute temperature normal. */
function draw(stream: RandomStream, scatters: readonly Scatter[]): ReadonlyMap<ParameterName, number> {
  return new Map(
    scatters.map(({ name, spread, relative }) => {
      const deviation = relative * stream.normal()
      return [name, spread === 'temperatureK' ? 1 + deviation : Math.exp(deviation)] as const
    })
  )
}

/** @throws DesignError `out-of-range` where the run would take too long */
function sizeOf(request: ToleranceRequest, { system }: Sample, points: number, assume: Assumptions): number {
  const samples = assume.take(request.samples, 'samples', toleranceDefaults.samples)
  const weight = Math.max(1, system.network.chambers.length / 2)
  const maximum = Math.floor(MOST_POINTS / ((points + FIGURE_POINTS) * weight))
  if (samples <= maximum) return samples
  const detail = say('refused.samples-of-this-enclosure-at-frequencies', { samples, points, maximum })
  throw new DesignError('out-of-range', { field: 'samples', value: samples, maximum, unit: '1', detail })
}

/** The request with its drive as a fixed voltage: parts vary, the amplifier does not. */
function fixedDrive(request: ToleranceRequest, voltageV: number): SystemRequest {
  const { seriesOhm } = request.source
  return { ...request, source: { voltageV, ...present({ seriesOhm }) } }
}

interface Run {
  readonly bands: readonly ToleranceBand[]
  readonly figures: readonly Figures[]
}

function runSamples(
  count: number,
  percents: readonly number[],
  frequenciesHz: Float64Array,
  next: () => SystemRequest
): Run {
  const store = () => curveStore(frequenciesHz.length, count)
  const [level, excursion, impedance] = [store(), store(), store()]
  const figures: Figures[] = []
  for (let sample = 0; sample < count; sample++) {
    const { curves, figures: found } = sampleOf(next(), frequenciesHz, assumptions())
    storeCurve(level, sample, curves.levelDb)
    storeCurve(excursion, sample, curves.coneExcursionM)
    storeCurve(impedance, sample, curves.impedanceOhm)
    figures.push(found)
  }
  const [levels, excursions, impedances] = [level, excursion, impedance].map(of => percentileCurves(of, percents))
  const bands = percents.map((percent, index) => ({
    percent,
    levelDb: levels?.[index] ?? [],
    coneExcursionM: excursions?.[index] ?? [],
    impedanceOhm: impedances?.[index] ?? []
  }))
  return { bands, figures }
}

function figuresOf(nominal: Figures, samples: readonly Figures[], percents: readonly number[]): ToleranceFigures {
  const spread = <Key extends keyof ToleranceFigures, Unit extends string>(
    key: Key,
    name: keyof Figures,
    unit: Unit
  ): { readonly [K in Key]?: FigureSpread<Unit> } => {
    const values = samples.map(figures => figures[name]).filter(value => value !== undefined)
    const at = nominal[name]
    if (at === undefined || values.length < 2) return {}
    return { [key]: spreadOf(unit, at, values, percents) } as { readonly [K in Key]?: FigureSpread<Unit> }
  }
  return {
    ...spread('f3', 'f3', 'Hz'),
    ...spread('f3Upper', 'f3-upper', 'Hz'),
    ...spread('tuning', 'tuning', 'Hz'),
    ...spread('frontTuning', 'front-tuning', 'Hz'),
    ...spread('closedResonance', 'closed-resonance', 'Hz'),
    ...spread('driverResonance', 'driver-resonance', 'Hz'),
    ...spread('driverTotalQ', 'driver-total-q', ''),
    ...spread('peakExcursion', 'peak-excursion', 'M'),
    ...spread('peakAirSpeed', 'peak-air-speed', 'MPerS'),
    ...spread('minimumImpedance', 'minimum-impedance', 'Ohm')
  }
}

function cautionsOf({ system }: Sample, within: number | undefined): readonly Caution[] {
  const held = say('dimensions-held')
  return [
    ...(system.custom ? [caution('dimensions-held', held, { at: 'enclosure' })] : []),
    ...(within !== undefined && within < 95
      ? [
          caution('excursion-by-chance', say('excursion-by-chance', { withinPercent: fixed(within, 0) }), {
            at: 'driver.xmaxM',
            figures: { withinXmaxPercent: within }
          })
        ]
      : [])
  ]
}

function withinXmax({ system }: Sample, figures: readonly Figures[]): number | undefined {
  const { xmaxM } = system.driver
  if (xmaxM === undefined) return undefined
  const within = figures.filter(({ 'peak-excursion': peak = 0 }) => peak <= xmaxM).length
  return (100 * within) / figures.length
}

function basisOf({ system }: Sample): readonly Basis[] {
  const { fsHz, mmsKg: Mms, cmsMPerN: Cms, qts, qms: Qms, qes: Qes } = system.driver
  const resonance = identityFormula('resonance', 'fsHz')
  const totalQ = identityFormula('total-q', 'qts')
  return [
    ...(resonance ? [explain(resonance, 'figures.driverResonance.nominalHz', fsHz, { Mms, Cms })] : []),
    ...(totalQ ? [explain(totalQ, 'figures.driverTotalQ.nominal', qts, { Qms, Qes })] : [])
  ]
}

/**
 * Percentile bands of the curves and figures, and the sensitivity of each figure to each parameter.
 *
 * The mechanical set of the driver, the dimensions of the box and the temperature of the air are drawn; fs, Q and Vas follow
 * from them and move together. All drivers of a group are drawn alike, as from one batch.
 *
 * @throws DesignError `out-of-range`, and as {@link responseSystem}
 * @validity spreads small enough that the parts stay parts: one standard deviation up to a third
 * @source spreads: ours, unless given; Monte Carlo: derived
 */
export function computeTolerance(request: ToleranceRequest): Outcome<Tolerance> {
  const assume = assumptions()
  const frequencies = frequenciesOf(request, assume)
  const frequenciesHz = Float64Array.from(frequencies)
  const nominal = sampleOf(request, frequenciesHz, assume)
  const count = sizeOf(request, nominal, frequencies.length, assume)
  const seed = assume.take(request.seed, 'seed', toleranceDefaults.seed)
  const percents = request.percentiles ?? toleranceDefaults.percentiles.value
  const scatters = scattersOf(request, assume)
  const fixed = fixedDrive(request, nominal.system.voltageV)
  const stream = randomStream(seed)
  const { driver } = nominal.system
  const { bands, figures } = runSamples(count, percents, frequenciesHz, () => {
    const factors = draw(stream, scatters)
    return variedRequest(fixed, driver, name => factors.get(name) ?? 1)
  })
  const within = withinXmax(nominal, figures)
  return {
    result: {
      seed,
      samples: count,
      frequencyHz: frequencies,
      nominal: nominal.curves,
      bands,
      figures: figuresOf(nominal.figures, figures, percents),
      ...present({ withinXmaxPercent: within }),
      sensitivities: sensitivities(fixed, driver, scatters, frequenciesHz)
    },
    cautions: [...givenDriverCautions(request.driver, nominal.system.air), ...cautionsOf(nominal, within)],
    assumed: assume.list,
    sources: ['acoustic-network', 'small-1972-direct-radiator', 'tolerance-spreads', 'tolerance-sampling'],
    basis: basisOf(nominal)
  }
}
