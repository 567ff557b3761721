/** How the chief figures of a system at work were reached. */
import type { LargeSignal } from '../../../contract/enclosures/large-signal.ts'
import type { Basis } from '../../outcome.ts'
import type { ResponseSystem } from '../model/response-system.ts'
import { resistanceCoefficients } from './coil-heating.ts'
import type { CoilHeating } from './power-compression.ts'

const input = (symbol: string, value: number, unit: string) => ({ symbol, value, unit })

function coilBasis({ coilKPerW, magnetKPerW, ambientC, coilHeatW, steadyCoilC }: CoilHeating): Basis {
  return {
    quantity: 'limits.heating.steadyCoilC',
    formula: 'min(Tamb+(Rcoil+Rmagnet)*P,1000)',
    inputs: [
      input('Tamb', ambientC, '°C'),
      input('Rcoil', coilKPerW, 'K/W'),
      input('Rmagnet', magnetKPerW, 'K/W'),
      input('P', coilHeatW, 'W')
    ],
    value: steadyCoilC,
    unit: '°C',
    source: 'coil-heat-path'
  }
}

function resistanceBasis({ groupOhm }: ResponseSystem, { metal, steadyCoilC, steadyReOhm }: CoilHeating): Basis {
  return {
    quantity: 'limits.heating.steadyReOhm',
    formula: 'Rcold*(1+a*(T-20))',
    inputs: [
      input('Rcold', groupOhm, 'Ω'),
      input('a', resistanceCoefficients[metal], '1/K'),
      input('T', steadyCoilC, '°C')
    ],
    value: steadyReOhm,
    unit: 'Ω',
    source: 'iec-60028'
  }
}

function compressionBasis({ groupOhm, sourceOhm }: ResponseSystem, { steadyReOhm, compressionDb }: CoilHeating): Basis {
  return {
    quantity: 'limits.heating.compressionDb',
    formula: '20*log10((Rhot+Rg)/(Rcold+Rg))',
    inputs: [input('Rhot', steadyReOhm, 'Ω'), input('Rcold', groupOhm, 'Ω'), input('Rg', sourceOhm, 'Ω')],
    value: compressionDb,
    unit: 'dB',
    source: 'linear-limits'
  }
}

function heatingBasis(system: ResponseSystem, { heating }: LargeSignal): readonly Basis[] {
  if (heating === undefined) return []
  return [coilBasis(heating), resistanceBasis(system, heating), compressionBasis(system, heating)]
}

function protectionBasis({ protection }: LargeSignal): readonly Basis[] {
  return (protection?.highPass ?? []).map(({ order, cornerHz, gainAtTuningDb }, index) => ({
    quantity: `limits.protection.highPass[${index}].gainAtTuningDb`,
    formula: '-10*log10(1+(fh/fb)^(2*n))',
    inputs: [input('fh', cornerHz, 'Hz'), input('fb', protection?.belowHz ?? 0, 'Hz'), input('n', order, '1')],
    value: gainAtTuningDb,
    unit: 'dB',
    source: 'butterworth-1930'
  }))
}

export function limitsBasis(system: ResponseSystem, limits: LargeSignal): readonly Basis[] {
  const { voltageV, powerW } = limits.programme
  return [
    {
      quantity: 'limits.programme.powerW',
      formula: 'V^2/Re',
      inputs: [input('V', voltageV, 'V'), input('Re', system.groupOhm, 'Ω')],
      value: powerW,
      unit: 'W',
      source: 'linear-limits'
    },
    ...heatingBasis(system, limits),
    ...protectionBasis(limits)
  ]
}
