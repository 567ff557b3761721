/** A cable size of one of three series. A gauge number without its series is not a size: SAE 4 holds a tenth less than 4 AWG. */
import type { Said } from '../../../contract/sentences/form/template.ts'
import type { GaugeSystem } from '../../../contract/supply/words.ts'
import { DesignError } from '../../design-error.ts'
import { say } from '../../say.ts'
import { awgArea, awgNumber } from './awg-astm-b258.ts'
import { saeArea, saeJ1127Areas } from './sae-j1127-areas.ts'

export interface CableSize {
  readonly system: GaugeSystem
  /** '4 AWG', 'SAE 4', '25 mm2'. */
  readonly designation: string
  /** Conducting section; of a metric size its nominal one [m²]. */
  readonly areaM2: number
  /** The number of a metric size [mm²], as its tables list it. */
  readonly mm2?: number
}

const LARGEST_MM2 = 500

function metricSize(text: string): CableSize | undefined {
  const mm2 = Number(text)
  if (!/^\d+(\.\d+)?$/.test(text) || !(mm2 >= 0.05 && mm2 <= LARGEST_MM2)) return undefined
  return { system: 'mm2', designation: `${mm2} mm2`, areaM2: mm2 / 1e6, mm2 }
}

function gaugeSize(system: 'awg' | 'sae', text: string): CableSize | undefined {
  if (system === 'sae') {
    const areaM2 = saeArea(text)
    return areaM2 === undefined ? undefined : { system, designation: `SAE ${text}`, areaM2 }
  }
  const gauge = awgNumber(text)
  if (gauge === undefined) return undefined
  return { system, designation: `${gauge > 0 ? gauge : `${1 - gauge}/0`} AWG`, areaM2: awgArea(gauge) }
}

/** The series a designation names, '4 AWG', 'SAE 4', '25 mm2', and the number in it. */
function readSeries(designation: string): { readonly system: GaugeSystem | undefined; readonly text: string } {
  const named: readonly [GaugeSystem, RegExp][] = [
    ['awg', /^(.+?)\s*AWG$|^AWG\s*(.+)$/i],
    ['sae', /^(.+?)\s*SAE$|^SAE\s*(.+)$/i],
    ['mm2', /^(.+?)\s*mm(?:2|²)$/i]
  ]
  for (const [system, pattern] of named) {
    const match = pattern.exec(designation.trim())
    if (match !== null) return { system, text: (match[1] ?? match[2] ?? '').trim() }
  }
  return { system: undefined, text: designation.trim() }
}

/** What a size of each series looks like. */
const listed: Readonly<Record<GaugeSystem, Said | string>> = {
  awg: say('refused.write-awg'),
  sae: `${saeJ1127Areas.rows.map(([gauge]) => gauge).join(', ')}`,
  mm2: say('refused.write-mm2')
}

/** Whether a designation says its series itself. */
export function namesItsSeries(designation: string): boolean {
  return readSeries(designation).system !== undefined
}

/**
 * Reads a size.
 *
 * @param designation  '4 AWG', '1/0 AWG', 'SAE 4', '25 mm2'; the bare number where the system says which series is meant
 * @param system  the series, where the designation does not name it
 * @throws DesignError `unknown-designation` outside the series, `missing-input` for a bare number, `conflicting-input`
 * @source ASTM B258 for AWG, SAE J1127 areas for SAE, the nominal section for mm²
 * @check  '4 AWG' → 21.151 mm²; 'SAE 4' → 18.931 mm²
 */
export function cableSize(designation: string, system: GaugeSystem | undefined, field: string): CableSize {
  const { system: named, text } = readSeries(designation)
  if (named !== undefined && system !== undefined && named !== system) {
    throw new DesignError('conflicting-input', {
      field,
      value: designation,
      detail: say('refused.is-not-of-the-series-awg', { designation, system })
    })
  }
  const series = named ?? system
  if (series === undefined) {
    throw new DesignError('missing-input', {
      field,
      value: designation,
      detail: say('refused.does-not-say-its-series-write', { designation })
    })
  }
  const size = series === 'mm2' ? metricSize(text) : gaugeSize(series, text)
  if (size !== undefined) return size
  throw new DesignError('unknown-designation', {
    field,
    value: designation,
    detail: say('refused.is-no-size-of-the-series', { designation, series, sizes: listed[series] })
  })
}
