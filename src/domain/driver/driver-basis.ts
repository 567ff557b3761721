/** How each derived figure of a driver was reached, so that a reader can work it out again. */
import type { CompletedDriver, DriverFigures } from '../../contract/drivers/driver-parameters.ts'
import type { Basis } from '../../contract/field/envelope.ts'
import type { Air } from '../air/air.ts'
import { explain } from '../formula.ts'
import { efficiencyBandwidth, efficiencyPercent, identityFormula, levelOfOneWatt } from './formulas.ts'
import type { CompletedSet } from './sheet/complete-set.ts'
import { symbolOf } from './sheet/driver-identities.ts'

export function setBasis({ derivations }: CompletedSet, driver: CompletedDriver, air: Air): readonly Basis[] {
  return derivations.flatMap(({ member, identity }) => {
    const record = identityFormula(identity.id, member)
    if (record === undefined) return []
    const given = Object.fromEntries(identity.members.map(name => [symbolOf[name], driver[name]]))
    return [explain(record, `driver.${member}`, driver[member], { ...given, K: air.stiffnessPa })]
  })
}

export function figuresBasis(
  figures: DriverFigures,
  driver: CompletedDriver,
  air: Air,
  sheetAir: Air
): readonly Basis[] {
  const { fsHz: fs, qes: Qes } = driver
  const Vas = (driver.vasM3 * air.stiffnessPa) / sheetAir.stiffnessPa
  const radiating = { fs, Vas, c: air.soundSpeedMPerS, Qes }
  return [
    explain(efficiencyBandwidth, 'figures.ebpHz', figures.ebpHz, { fs, Qes }),
    explain(efficiencyPercent, 'figures.efficiencyPercent', figures.efficiencyPercent, radiating),
    explain(levelOfOneWatt, 'figures.level1WDb', figures.level1WDb, { ...radiating, rho: air.densityKgPerM3 })
  ]
}
