/** How the chief figures of a system at work were reached. */
import type { LargeSignal } from '../../../contract/enclosures/large-signal.ts'
import type { Basis } from '../../../contract/field/envelope.ts'
import { explain } from '../../formula.ts'
import type { ResponseSystem } from '../model/response-system.ts'
import { resistanceCoefficients } from './coil-heating.ts'
import { drivePower, heatCompression, highPassLevel, steadyCoil, warmResistance } from './formulas.ts'

function heatingBasis({ groupOhm: Rcold, sourceOhm: Rg }: ResponseSystem, { heating }: LargeSignal): readonly Basis[] {
  if (heating === undefined) return []
  const { coilKPerW, magnetKPerW, ambientC, coilHeatW, steadyCoilC, metal, steadyReOhm, compressionDb } = heating
  const path = { Tamb: ambientC, Rcoil: coilKPerW, Rmagnet: magnetKPerW, P: coilHeatW }
  const warm = { Rcold, a: resistanceCoefficients[metal], T: steadyCoilC }
  return [
    explain(steadyCoil, 'limits.heating.steadyCoilC', steadyCoilC, path),
    explain(warmResistance, 'limits.heating.steadyReOhm', steadyReOhm, warm),
    explain(heatCompression, 'limits.heating.compressionDb', compressionDb, { Rhot: steadyReOhm, Rcold, Rg })
  ]
}

function protectionBasis({ protection }: LargeSignal): readonly Basis[] {
  return (protection?.highPass ?? []).map(({ order, cornerHz, gainAtTuningDb }, index) =>
    explain(highPassLevel, `limits.protection.highPass[${index}].gainAtTuningDb`, gainAtTuningDb, {
      fh: cornerHz,
      fb: protection?.belowHz ?? 0,
      n: order
    })
  )
}

export function limitsBasis(system: ResponseSystem, limits: LargeSignal): readonly Basis[] {
  const { voltageV: V, powerW } = limits.programme
  return [
    explain(drivePower, 'limits.programme.powerW', powerW, { V, Re: system.groupOhm }),
    ...heatingBasis(system, limits),
    ...protectionBasis(limits)
  ]
}
