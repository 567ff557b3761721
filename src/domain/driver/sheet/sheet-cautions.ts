/** What a person should know before trusting a driver's data sheet. */
import type { DriverParameters, DriverSheet } from '../../../contract/drivers/driver-parameters.ts'
import { type Caution, caution } from '../../caution.ts'
import { inDigits } from '../../digits.ts'
import { surfaceDensityIsUnusual, unusualValues } from './consistency.ts'
import { driverDefaults } from './defaults.ts'
import type { SetJudgement } from './judge-set.ts'
import { type PartialSmallSignalSet, printedQuantities, printedValue } from './small-signal-quantities.ts'

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
          caution('driver-figures-disagree', `${relation} does not hold on this sheet: ${detail}.`, {
            at: 'driver',
            level: verdict,
            figures: { deviationPercent: Math.abs(ratio - 1) * 100 }
          })
        ]
  )
}

function slipCautions({ slips }: SetJudgement): readonly Caution[] {
  return slips.map(({ detail, mended }) => {
    const [name = ''] = Object.keys(mended)
    return caution('driver-unit-slip', `${detail}. Nothing was changed: check the sheet and send the right figure.`, {
      at: `driver.${name}`
    })
  })
}

function unusual(known: PartialSmallSignalSet): readonly Caution[] {
  const values = unusualValues(known).map(({ name, value, usual: [low, high] }) => {
    const { perSi, unit } = printedQuantities[name]
    const range = `${inDigits(low * perSi)} to ${inDigits(high * perSi)} ${unit}`.trim()
    return caution('driver-value-unusual', `${printedValue(name, value)} lies outside the usual ${range}.`, {
      at: `driver.${name}`
    })
  })
  const { mmsKg, sdM2 } = known
  if (mmsKg === undefined || sdM2 === undefined || !surfaceDensityIsUnusual(known)) return values
  const density = mmsKg / sdM2
  const message = `Mms over Sd is ${inDigits(density)} kg/m²: unusual for a bass driver; Vas, Sd or Mms may be wrong.`
  return [...values, caution('driver-value-unusual', message, { at: 'driver', figures: { densityKgPerM2: density } })]
}

function impedance({ driver }: DriverParameters, { ratedImpedanceOhm, reOhm }: DriverSheet): readonly Caution[] {
  if (ratedImpedanceOhm === undefined || reOhm === undefined) return []
  const ratio = reOhm / ratedImpedanceOhm
  const [low, high] = driverDefaults.resistanceRatioRange.value
  if (ratio >= low && ratio <= high) return []
  const hint =
    ratio > high
      ? 'a rating per coil beside the Re of coils in series'
      : 'a rating in series beside the Re of coils in parallel or of one'
  const message = `Re ${inDigits(reOhm)} Ω is ${inDigits(ratio)} of the rated ${inDigits(ratedImpedanceOhm)} Ω, usually ${low} to ${high}: perhaps ${hint}.`
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
    const message = `The sheet says ${stated} dB at ${name}, its parameters give ${inDigits(computed, 4)} dB in half space at 1 m: 1 W and 2.83 V may be mixed up, or the figure is a peak or an in-car one.`
    return [caution('sensitivity-disagrees', message, { at, figures: { computedDb: computed } })]
  })
}

function inductance({ leH }: DriverSheet): readonly Caution[] {
  if (leH !== undefined) return []
  const message = 'No coil inductance is given: levels above about 80 Hz will look better than they are.'
  return [caution('inductance-missing', message, { at: 'driver' })]
}
