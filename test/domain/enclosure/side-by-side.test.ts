/**
 * Two boxes alike side by side on one amplifier are one box of twice the air, twice the drivers and twice the openings: each cone
 * and each port moves as before, the pressure doubles (6.02 dB) and the load halves. Symmetry, no formula; over random systems of
 * every kind.
 */
import { describe, expect, it } from 'vitest'
import { computeResponse } from '../../../src/domain/enclosure/answer/compute-response.ts'
import type { SystemRequest } from '../../../src/domain/enclosure/model/request.ts'
import { draws, randomSystem, type SystemKind } from '../../support/random-systems.ts'

const doubles = new Set(['netVolumeM3', 'couplingVolumeM3', 'count'])

/** Twice of all that is counted or filled with air; one that is not counted is one. */
function doubled<Value>(value: Value, key = ''): Value {
  if (Array.isArray(value)) return value.map(each => doubled(each)) as Value
  if (typeof value !== 'object' || value === null) return value
  const fields = Object.entries(value).map(([name, inner]) =>
    typeof inner === 'number' && doubles.has(name) ? [name, inner * 2] : [name, doubled(inner, name)]
  )
  const counted = ['port', 'passiveRadiators', 'drivers'].includes(key) ? [['count', 2], ...fields] : fields
  return Object.fromEntries(counted) as Value
}

function twice({ drivers = {}, source, ...request }: SystemRequest): SystemRequest {
  const { seriesOhm } = source
  return {
    ...doubled({ ...request, drivers }),
    driver: request.driver,
    source: { ...source, ...(seriesOhm === undefined ? {} : { seriesOhm: seriesOhm / 2 }) }
  } as SystemRequest
}

const frequenciesHz = [12, 20, 27, 36, 50, 75, 120]
/** Of the whole pair of boxes; what a cone, a port or a turn of phase does stays. */
const shares: Readonly<Record<string, number>> = { impedanceOhm: 0.5, currentA: 2, apparentPowerVa: 2 }
const SIX_DB = 20 * Math.log10(2)

describe('two boxes side by side', () => {
  for (const kind of [
    'closed',
    'vented',
    'passive-radiator',
    'band-pass-4',
    'band-pass-6-parallel',
    'band-pass-6-series',
    'isobaric'
  ] as const satisfies readonly SystemKind[])
    it(`are one of twice everything: ${kind}`, () => {
      const draw = draws(5)
      for (let n = 0; n < 6; n++) {
        const request = randomSystem(kind, draw)
        const one = computeResponse({ ...request, frequenciesHz }).result
        const two = computeResponse({ ...twice(request), frequenciesHz }).result
        const [before, after] = [one.curves, two.curves].map(
          curves => curves as never as Record<string, readonly number[]>
        )
        for (const [name, values] of Object.entries(before ?? {})) {
          if (name === 'frequencyHz') continue
          const rise = /[lL]evelDb$/.test(name) ? SIX_DB : 0
          const share = shares[name] ?? 1
          values.forEach((value, k) => {
            expect(after?.[name]?.[k], `${name} ${JSON.stringify(request)}`).toBeCloseTo(value * share + rise, 6)
          })
        }
        for (const name of [
          'fcHz',
          'qtc',
          'tuningHz',
          'frontTuningHz',
          'f3Hz',
          'f3UpperHz',
          'alpha',
          'peakLevelHz'
        ] as const) {
          const [before, after] = [one.scalars, two.scalars].map(
            each => (each as never as Record<string, number>)[name]
          )
          if (before === undefined) expect(after).toBeUndefined()
          else expect((after ?? 0) / before, name).toBeCloseTo(1, 5)
        }
      }
    })
})
