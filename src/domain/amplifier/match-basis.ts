/** How the chief figures of a match were reached. */
import type { Basis } from '../outcome.ts'
import type { GainTarget } from './gain-target.ts'
import type { DriverSheet, MatchOption } from './match-options.ts'

export function matchBasis(
  driver: DriverSheet,
  best: MatchOption | undefined,
  gain: GainTarget | undefined
): readonly Basis[] {
  if (best?.powerRatio === undefined || best.outputPowerW === undefined || gain === undefined) return []
  const coils = best.driversPerOutput * driver.coils
  const output = { symbol: 'Pa', value: best.outputPowerW, unit: 'W' }
  const rated = { symbol: 'Pd', value: driver.powerW, unit: 'W' }
  const drivers = { symbol: 'N', value: best.driversPerOutput, unit: '1' }
  return [
    {
      quantity: 'best.loadOhm',
      formula: 'Zc*s*s/n',
      inputs: [
        { symbol: 'Zc', value: driver.coilOhm, unit: 'Ω' },
        { symbol: 's', value: Math.round(Math.sqrt((best.loadOhm / driver.coilOhm) * coils)), unit: '1' },
        { symbol: 'n', value: coils, unit: '1' }
      ],
      value: best.loadOhm,
      unit: 'Ω',
      source: 'kirchhoff-networks'
    },
    {
      quantity: 'best.powerRatio',
      formula: 'Pa/(N*Pd)',
      inputs: [output, drivers, rated],
      value: best.powerRatio,
      unit: '1',
      source: 'equal-power-practice'
    },
    {
      quantity: 'gain.targetVoltageV',
      formula: 'sqrt(min(Pa, N*Pd)*Z)',
      inputs: [output, drivers, rated, { symbol: 'Z', value: best.loadOhm, unit: 'Ω' }],
      value: gain.targetVoltageV,
      unit: 'V',
      source: 'ohms-law'
    }
  ]
}
