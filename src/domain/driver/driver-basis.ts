/** How each derived figure of a driver was reached, so that a reader can work it out again. */
import type { CompletedDriver, DriverFigures } from '../../contract/drivers/driver-parameters.ts'
import type { Air } from '../air/air.ts'
import type { Basis } from '../outcome.ts'
import type { CompletedSet } from './complete-set.ts'
import { symbolOf } from './driver-identities.ts'
import type { SmallSignalQuantity } from './small-signal-quantities.ts'

const units: Readonly<Record<SmallSignalQuantity, string>> = {
  fsHz: 'Hz',
  qms: '1',
  qes: '1',
  qts: '1',
  vasM3: 'm3',
  sdM2: 'm2',
  reOhm: 'ohm',
  blTm: 'T m',
  mmsKg: 'kg',
  cmsMPerN: 'm/N',
  rmsKgPerS: 'kg/s'
}

export function setBasis({ derivations }: CompletedSet, driver: CompletedDriver, air: Air): readonly Basis[] {
  const stiffness = { symbol: 'K', value: air.stiffnessPa, unit: 'Pa' }
  return derivations.flatMap(({ member, identity }) => {
    const formula = identity.formulas[member]
    if (formula === undefined) return []
    const inputs = identity.members
      .filter(name => name !== member)
      .map(name => ({ symbol: symbolOf[name], value: driver[name], unit: units[name] }))
    return [
      {
        quantity: `driver.${member}`,
        formula,
        inputs: identity.id === 'compliance-volume' ? [...inputs, stiffness] : inputs,
        value: driver[member],
        unit: units[member],
        source: 'small-1972-direct-radiator' as const
      }
    ]
  })
}

export function figuresBasis(
  figures: DriverFigures,
  driver: CompletedDriver,
  air: Air,
  sheetAir: Air
): readonly Basis[] {
  const fs = { symbol: 'fs', value: driver.fsHz, unit: 'Hz' }
  const qes = { symbol: 'Qes', value: driver.qes, unit: '1' }
  const vas = { symbol: 'Vas', value: (driver.vasM3 * air.stiffnessPa) / sheetAir.stiffnessPa, unit: 'm3' }
  const c = { symbol: 'c', value: air.soundSpeedMPerS, unit: 'm/s' }
  const rho = { symbol: 'rho', value: air.densityKgPerM3, unit: 'kg/m3' }
  const efficiency = '4*pi^2*fs^3*Vas/(c^3*Qes)'
  const source = 'small-1972-direct-radiator' as const
  return [
    {
      quantity: 'figures.ebpHz',
      formula: 'fs/Qes',
      inputs: [fs, qes],
      value: figures.ebpHz,
      unit: 'Hz',
      source: 'practice-driver-choice'
    },
    {
      quantity: 'figures.efficiencyPercent',
      formula: `100*${efficiency}`,
      inputs: [fs, vas, c, qes],
      value: figures.efficiencyPercent,
      unit: '%',
      source
    },
    {
      quantity: 'figures.level1WDb',
      formula: `10*log10(${efficiency}*rho*c/(2*pi)/(20e-6)^2)`,
      inputs: [fs, vas, c, qes, rho],
      value: figures.level1WDb,
      unit: 'dB',
      source
    }
  ]
}
