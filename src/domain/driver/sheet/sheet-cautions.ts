/** What a person should know before trusting a driver's data sheet. */
import type { DriverParameters, DriverSheet } from '../../../contract/drivers/driver-parameters.ts'
import { type Caution, caution } from '../../caution.ts'
import { toDigits } from '../../digits.ts'
import { present } from '../../present.ts'
import { phrased, say } from '../../say.ts'
import { surfaceDensityIsUnusual, unusualValues } from './consistency.ts'
import { driverDefaults } from './defaults.ts'
import type { SetJudgement } from './judge-set.ts'
import { type PartialSmallSignalSet, printedQuantities } from './small-signal-quantities.ts'

/** Whether the figures of the set can be believed, wherever a driver comes in. */
export function setCautions(judged: SetJudgement, known: PartialSmallSignalSet): readonly Caution[] {
  return [...disagreements(judged), ...slipCautions(judged), ...unusual(known)]
}

/** And what else a sheet prints. */
export function sheetCautions(result: DriverParameters, sheet: DriverSheet): readonly Caution[] {
  return [
    ...setCautions(result, result.driver),
    ...impedance(result, sheet),
    ...level(result, sheet),
    ...inductance(sheet)
  ]
}

function disagreements({ checks }: SetJudgement): readonly Caution[] {
  return checks.flatMap(({ relation, detail, ratio, verdict }) =>
    verdict === 'agrees'
      ? []
      : [
          caution('driver-figures-disagree', say('driver-figures-disagree', { relation, detail: phrased(detail) }), {
            at: 'driver',
            level: verdict,
            // Qms stated as Qts leaves nothing for Qes: there is no per cent of nothing.
            ...present({
              figures: Number.isFinite(ratio) ? { deviationPercent: Math.abs(ratio - 1) * 100 } : undefined
            })
          })
        ]
  )
}

function slipCautions({ slips }: SetJudgement): readonly Caution[] {
  return slips.map(({ detail, mended }) => {
    const [name = ''] = Object.keys(mended)
    return caution('driver-unit-slip', say('driver-unit-slip', { detail: phrased(detail) }), {
      at: `driver.${name}`
    })
  })
}

function unusual(known: PartialSmallSignalSet): readonly Caution[] {
  const values = unusualValues(known).map(({ name, value, usual: [low, high] }) => {
    const { symbol, perSi, unit } = printedQuantities[name]
    const said = say('driver-value-unusual', {
      symbol,
      valueRatio: toDigits(value * perSi, 4),
      lowRatio: toDigits(low * perSi),
      highRatio: toDigits(high * perSi),
      unit
    })
    return caution('driver-value-unusual', said, { at: `driver.${name}` })
  })
  const { mmsKg, sdM2 } = known
  if (mmsKg === undefined || sdM2 === undefined || !surfaceDensityIsUnusual(known)) return values
  const density = mmsKg / sdM2
  const message = say('driver-value-unusual.density', { densityKgPerM2: toDigits(density) })
  return [...values, caution('driver-value-unusual', message, { at: 'driver', figures: { densityKgPerM2: density } })]
}

function impedance({ driver }: DriverParameters, { ratedImpedanceOhm, reOhm }: DriverSheet): readonly Caution[] {
  if (ratedImpedanceOhm === undefined || reOhm === undefined) return []
  const ratio = reOhm / ratedImpedanceOhm
  const [low, high] = driverDefaults.resistanceRatioRange.value
  if (ratio >= low && ratio <= high) return []
  const hint = ratio > high ? say('rated-impedance-odd.series') : say('rated-impedance-odd.parallel')
  const message = say('rated-impedance-odd', {
    reOhm: toDigits(reOhm),
    ratio: toDigits(ratio),
    ratedImpedanceOhm: toDigits(ratedImpedanceOhm),
    lowRatio: low,
    highRatio: high,
    hint
  })
  return [
    caution('rated-impedance-odd', message, { at: 'driver.ratedImpedanceOhm', figures: { reOhm: driver.reOhm, ratio } })
  ]
}

function level({ figures }: DriverParameters, { level1WDb, level2V83Db }: DriverSheet): readonly Caution[] {
  const pairs = [
    { stated: level1WDb, computed: figures.level1WDb, at: 'driver.level1WDb', name: '1 W' },
    { stated: level2V83Db, computed: figures.level2V83Db, at: 'driver.level2V83Db', name: '2.83 V' }
  ]
  return pairs.flatMap(({ stated, computed, at, name }) => {
    if (stated === undefined || Math.abs(stated - computed) <= 3) return []
    const message = say('sensitivity-disagrees', { statedDb: stated, drive: name, computedDb: toDigits(computed) })
    return [caution('sensitivity-disagrees', message, { at, figures: { computedDb: computed } })]
  })
}

function inductance({ leH }: DriverSheet): readonly Caution[] {
  if (leH !== undefined) return []
  const message = say('inductance-missing')
  return [caution('inductance-missing', message, { at: 'driver' })]
}
