/** How the chief figures of a match were reached. */
import type { MatchOption } from '../../contract/amplifiers/amplifier-matching.ts'
import type { Basis } from '../outcome.ts'
import type { GainTarget } from './gain-target.ts'
import type { DriverSheet } from './match-options.ts'

type Input = Basis['inputs'][number]

/** A wired load is that of one coil, times the square of those in series, over all of them. */
function loadBasis({ coilOhm, coils }: DriverSheet, { loadOhm, driversPerOutput }: MatchOption): Basis {
  const count = driversPerOutput * coils
  return {
    quantity: 'best.loadOhm',
    formula: 'Zc*s*s/n',
    inputs: [
      { symbol: 'Zc', value: coilOhm, unit: 'Ω' },
      { symbol: 's', value: Math.round(Math.sqrt((loadOhm / coilOhm) * count)), unit: '1' },
      { symbol: 'n', value: count, unit: '1' }
    ],
    value: loadOhm,
    unit: 'Ω',
    source: 'kirchhoff-networks'
  }
}

function ratioBasis(powerRatio: number, powers: readonly Input[]): Basis {
  return {
    quantity: 'best.powerRatio',
    formula: 'Pa/(N*Pd)',
    inputs: powers,
    value: powerRatio,
    unit: '1',
    source: 'equal-power-practice'
  }
}

function gainBasis({ targetVoltageV }: GainTarget, { loadOhm }: MatchOption, powers: readonly Input[]): Basis {
  return {
    quantity: 'gain.targetVoltageV',
    formula: 'sqrt(min(Pa, N*Pd)*Z)',
    inputs: [...powers, { symbol: 'Z', value: loadOhm, unit: 'Ω' }],
    value: targetVoltageV,
    unit: 'V',
    source: 'ohms-law'
  }
}

/** V²/Z with the voltage of the rating. */
function boundBasis({
  powerFrom,
  claimedPowerW,
  outputPowerW = 0,
  ratedOhm = 0,
  ratedPowerW = 0,
  loadOhm
}: MatchOption) {
  if (powerFrom !== 'voltage-bound' || claimedPowerW !== undefined) return []
  const basis: Basis = {
    quantity: 'best.outputPowerW',
    formula: 'Pr*Zr/Z',
    inputs: [
      { symbol: 'Pr', value: ratedPowerW, unit: 'W' },
      { symbol: 'Zr', value: ratedOhm, unit: 'Ω' },
      { symbol: 'Z', value: loadOhm, unit: 'Ω' }
    ],
    value: outputPowerW,
    unit: 'W',
    source: 'ohms-law'
  }
  return [basis]
}

export function matchBasis(
  driver: DriverSheet,
  best: MatchOption | undefined,
  gain: GainTarget | undefined
): readonly Basis[] {
  if (best?.powerRatio === undefined || best.outputPowerW === undefined || gain === undefined) return []
  const powers = [
    { symbol: 'Pa', value: best.outputPowerW, unit: 'W' },
    { symbol: 'N', value: best.driversPerOutput, unit: '1' },
    { symbol: 'Pd', value: driver.powerW, unit: 'W' }
  ]
  return [
    ...boundBasis(best),
    loadBasis(driver, best),
    ratioBasis(best.powerRatio, powers),
    gainBasis(gain, best, powers)
  ]
}
